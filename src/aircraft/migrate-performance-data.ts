import { type ReadResult, readPlain, schemaVersion } from '../documents/index.ts';

/** A part of a document whose shape is not known yet. */
type Part = Readonly<Record<string, unknown>>;

/** From each version to the next, by its number; the last leads to what `readPerformanceData` reads. */
const steps: readonly ((document: Part) => Part)[] = [printedLaws];

/**
 * Brings a performance data document of an earlier version up to the one that {@link readPerformanceData} reads. It
 * changes the shape, never a figure; what was wrong in the document stays wrong, and reading it says so.
 *
 * @param json - a document of any version up to the present one.
 * @returns the document in the present version, or why there is none.
 *
 * @example
 * migratePerformanceData({ schema: 'groundroll/performance-data/0', takeoff: [], landing: [] }) // => { ok: true, value: { schema: 'groundroll/performance-data/1', takeoff: [], landing: [] } }
 * migratePerformanceData({ schema: 'groundroll/performance-data/99' }).ok // => false
 */
export function migratePerformanceData(json: unknown): ReadResult<unknown> {
  return readPlain(json, () => migrated(json));
}

function migrated(json: unknown): ReadResult<unknown> {
  const version = schemaVersion(json, 'performance-data');
  if (version === undefined) {
    return { ok: false, faults: [{ path: 'schema', message: 'is not that of performance data' }] };
  }
  if (version > steps.length) {
    const message = `version ${version} is newer than version ${steps.length}, the one that is read here`;
    return { ok: false, faults: [{ path: 'schema', message }] };
  }
  const present = steps.slice(version).reduce((document, step) => step(document), json as Part);
  return { ok: true, value: { ...present, schema: `groundroll/performance-data/${steps.length}` } };
}

/** Version 0 stated a law as percent for one knot or one percent of slope; since version 1 it stands as printed. */
function printedLaws(document: Part): Part {
  const tables = (phase: unknown) => (Array.isArray(phase) ? phase.map(withPrintedLaws) : phase);
  return { ...document, takeoff: tables(document['takeoff']), landing: tables(document['landing']) };
}

function withPrintedLaws(table: unknown): unknown {
  if (!isPart(table) || !isPart(table['corrections'])) return table;
  const { headwind, tailwind, adverseSlope, ...rest } = table['corrections'];
  const corrections = {
    ...rest,
    ...law('headwind', headwind, 'percentPerKnot', 'kt'),
    ...law('tailwind', tailwind, 'percentPerKnot', 'kt'),
    ...law('adverseSlope', adverseSlope, 'percentPerPercent', 'percent'),
  };
  return { ...table, corrections };
}

function law(name: string, before: unknown, change: string, unit: string): Part {
  if (before === undefined) return {};
  if (!isPart(before) || !(change in before)) return { [name]: before };
  const { [change]: printed, ...rest } = before;
  return { [name]: { change: printed, per: { value: 1, unit }, ...rest } };
}

function isPart(json: unknown): json is Part {
  return typeof json === 'object' && json !== null && !Array.isArray(json);
}
