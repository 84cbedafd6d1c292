import {
  axisFacts,
  bracketTable,
  type Figures,
  interpolateCell,
  interpolateCurves,
  isChart,
  type ReadingMode,
  readChart,
  type TablePoint,
} from '../../aircraft/index.ts';
import type { Reason } from '../result/reason.ts';
import { edgeReasons, noChartReading, noReading } from './no-reading.ts';
import type { Recorder } from './step.ts';

/** A figure in the unit in which it is printed, or why there is none. */
export type PrintedFigure =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly reason: Reason };

/** Reads figures of the manual, from a table or a chart, noting each formula and each favourable edge. */
export function readPrinted(
  r: Recorder,
  figures: Figures,
  point: TablePoint,
  mode: ReadingMode,
  name: string,
): PrintedFigure {
  if (mode.between === 'next-worse') r.decide('read-next-worse', {});
  if (isChart(figures)) {
    const reading = readChart(figures, point, mode, ({ quantity }, inputs) =>
      r.step(
        'aircraft.interpolate-curves',
        `${name}, panel of ${axisFacts[quantity].words}`,
        interpolateCurves,
        inputs,
      ),
    );
    if (!reading.ok) return { ok: false, reason: noChartReading(reading, name) };
    for (const { scale, at, edge } of reading.atEdge) {
      r.decide('read-at-edge', {
        table: name,
        quantity: axisFacts[scale.quantity].words,
        given: at,
        edge,
        unit: scale.unit,
      });
    }
    return { ok: true, value: reading.value };
  }
  const reading = bracketTable(figures, point, mode);
  if (!reading.ok) return { ok: false, reason: noReading(reading, name) };
  const { atEdge, ...cell } = reading.bracket;
  for (const { code, parameters } of edgeReasons(atEdge, point, name)) r.decide(code, parameters);
  return { ok: true, value: r.step('aircraft.interpolate-cell', name, interpolateCell, cell) };
}
