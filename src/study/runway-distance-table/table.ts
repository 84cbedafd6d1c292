import { limitsOfUse } from '../../assessment/index.ts';
import type { ReadResult } from '../../documents/index.ts';
import { version } from '../../version.ts';
import { type AnyRequest, assessAny, isTakeoff } from '../any-request.ts';
import { withoutRepeats } from '../argument-faults.ts';
import { studySentence } from '../sentences.ts';
import { axisFaults, type RunwayDistanceAxes, rowsAsked } from './axes.ts';
import { conditionsInWords } from './conditions.ts';
import type { RunwayDistanceTable } from './data.ts';
import { rowOf } from './row.ts';

/**
 * The distance required and the metres to spare over masses and temperatures, or over winds along the runway and
 * temperatures, with everything else as the request says. Each cell is a whole assessment.
 *
 * @param request - a take-off or a landing request; mass or wind, and temperature, are replaced. A reported dew point is
 *   left out, unless the tables are read at the virtual temperature.
 * @param axes - rows and columns, at most 20 of each.
 * @returns the table as data, or the faults of the request and of the axes.
 *
 * @example
 * runwayDistanceTable({ schema: 'groundroll/takeoff-request/1' } as never, { masses: [], temperatures: [] }).ok // => false
 */
export function runwayDistanceTable(request: AnyRequest, axes: RunwayDistanceAxes): ReadResult<RunwayDistanceTable> {
  const assessed = assessAny(request);
  const faults = [...(assessed.ok ? [] : assessed.faults), ...axisFaults(axes)];
  if (faults.length > 0 || !assessed.ok) return { ok: false, faults };
  const { request: read } = assessed.value;
  const found = rowsAsked(read, axes).map((row, i) => rowOf(row, axes.temperatures, i));
  // A temperature is as bad in every row, and a wind in speed and gust.
  const cellFaults = withoutRepeats(found.flatMap((row) => row.faults));
  if (cellFaults.length > 0) return { ok: false, faults: cellFaults };
  const assessments = found.flatMap((row) => row.assessments);
  const notes = new Map(assessments.flatMap(({ headline }) => headline.slice(1).map((each) => [each.text, each])));
  const { runway, runwayInUse, performanceData } = read;
  const names = { aeroplane: performanceData.identity.name, aerodrome: runway.aerodrome, designator: runwayInUse };
  const rowsAlong = axes.masses === undefined ? 'headwind' : 'mass';
  return {
    ok: true,
    value: {
      schema: 'groundroll/runway-distance-table/1',
      version,
      phase: isTakeoff(read) ? 'takeoff' : 'landing',
      ...names,
      title: studySentence('table-title', { phase: isTakeoff(read) ? 'Take-off' : 'Landing', ...names }),
      validOnlyIf: studySentence('table-valid-only-if', { conditions: conditionsInWords(read, rowsAlong) }),
      rowsAlong,
      temperatures: axes.temperatures,
      rows: found.map(({ row }) => row),
      reading: studySentence(rowsAlong === 'mass' ? 'table-reading-mass' : 'table-reading-headwind'),
      notes: [...notes.values()].map(({ steps: _, ...note }) => note),
      notAssessed: [...new Set(assessments.flatMap(({ notAssessed }) => notAssessed))],
      limitsOfUse,
    },
  };
}
