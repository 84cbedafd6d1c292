import { type Fault, type ReadResult, readDocument } from '../../documents/index.ts';
import type { RunwayDistanceTable } from './data.ts';
import { runwayDistanceTableSchema } from './runway-distance-table-schema.ts';

/**
 * Reads a runway distance table that was stored: all faults at once, each with its path; never a throw.
 *
 * @example
 * readRunwayDistanceTable({ schema: 'groundroll/runway-distance-table/1' }).ok // => false
 */
export function readRunwayDistanceTable(json: unknown): ReadResult<RunwayDistanceTable> {
  const read = readDocument(runwayDistanceTableSchema, json);
  if (!read.ok) return read;
  const { rows, temperatures } = read.value;
  const faults: Fault[] = rows.flatMap(({ cells }, i) =>
    cells.length === temperatures.length
      ? []
      : [{ path: `rows[${i}].cells`, message: `${cells.length} cells for ${temperatures.length} temperatures` }],
  );
  // The words of a stored table are those of the version that wrote it.
  return faults.length === 0
    ? { ok: true, value: read.value as unknown as RunwayDistanceTable }
    : { ok: false, faults };
}
