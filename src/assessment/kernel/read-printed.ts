import {
  axisFacts,
  bracketPrepared,
  type Chart,
  type InterpolateCellInputs,
  interpolateCell,
  interpolateCurves,
  readChart,
  type TablePoint,
} from '../../aircraft/index.ts';
import type { ReadyFigures } from '../request/ready-figures.ts';
import type { Reason } from '../result/reason.ts';
import { edgeReasons, noChartReading, noReading } from './no-reading.ts';
import type { Recorder } from './step.ts';

/** A figure in the unit in which it is printed, or why there is none. */
export type PrintedFigure = number | Reason;

/** Reads figures of the manual, from a table or a chart, noting each formula and each favourable edge. */
export function readPrinted(
  r: Recorder,
  { name, figures, mode, table }: ReadyFigures,
  point: TablePoint,
): PrintedFigure {
  if (mode.between === 'next-worse') r.decide('read-next-worse', {});
  if (table === undefined) {
    const reading = readChart(figures as Chart, point, mode, ({ quantity }, inputs) =>
      r.step(
        'aircraft.interpolate-curves',
        `${name}, panel of ${axisFacts[quantity].words}`,
        interpolateCurves,
        inputs,
      ),
    );
    if (!reading.ok) return noChartReading(reading, name);
    for (const { scale, at, edge } of reading.atEdge) {
      r.decide('read-at-edge', {
        table: name,
        quantity: axisFacts[scale.quantity].words,
        given: at,
        edge,
        unit: scale.unit,
      });
    }
    return reading.value;
  }
  const reading = bracketPrepared(table, point);
  if (!reading.ok) return noReading(reading, name);
  const { cell, atEdge } = reading;
  if (atEdge.length > 0)
    for (const { code, parameters } of edgeReasons(atEdge, point, name)) r.decide(code, parameters);
  // The next reading of the table writes over its bracket; a note keeps its own.
  const noted = r.explains ? copyOf(cell) : cell;
  return r.step('aircraft.interpolate-cell', name, interpolateCell, noted);
}

function copyOf({ lower, upper, at, corners }: InterpolateCellInputs): InterpolateCellInputs {
  return { lower: listOf(lower), upper: listOf(upper), at: listOf(at), corners: listOf(corners) };
}

function listOf(figures: ArrayLike<number>): number[] {
  const list = new Array<number>(figures.length);
  for (let i = 0; i < figures.length; i += 1) list[i] = figures[i] as number;
  return list;
}
