import type { AxisQuantity } from './axis.ts';
import type { Chart, ChartPoint, ChartScale } from './chart.ts';
import type { CellUnit, Table } from './table.ts';

/** Figures as the manual prints them: in a table, or in a chart. */
export type Figures<U extends CellUnit & ('m' | 'ft' | 'ftPerMin') = 'm' | 'ft' | 'ftPerMin'> = Table<U> | Chart<U>;

/** Whether figures stand in a chart. */
export function isChart(figures: Table | Chart): figures is Chart {
  return 'panels' in figures;
}

/** A quantity that figures run along, with the ends to which they are printed. */
export interface PrintedRange extends ChartScale {
  readonly from: number;
  readonly to: number;
}

/** Whether figures run along a quantity. */
export function runsAlong(figures: Table | Chart, quantity: AxisQuantity): boolean {
  if (!isChart(figures)) return figures.axes.some((axis) => axis.quantity === quantity);
  const [first] = figures.panels;
  return first.family.quantity === quantity || figures.panels.some(({ along }) => along.quantity === quantity);
}

/** Everything that figures run along, in printed order. */
export function printedRanges(figures: Table | Chart): PrintedRange[] {
  if (!isChart(figures)) {
    return figures.axes.map(({ quantity, unit, values }) => ({
      quantity,
      unit,
      from: values[0] as number,
      to: values[values.length - 1] as number,
    }));
  }
  const [first, ...guides] = figures.panels;
  const curves = first.curves;
  return [
    { ...first.along, ...extent(curves.map(({ points }) => points)) },
    { ...first.family, from: (curves[0] as { at: number }).at, to: (curves[curves.length - 1] as { at: number }).at },
    ...guides.map(({ along, guides: lines }) => ({ ...along, ...extent(lines) })),
  ];
}

/** The ends to which figures are printed along one quantity; none where they do not run along it. */
export function printedRange(figures: Table | Chart, quantity: AxisQuantity): PrintedRange | undefined {
  return printedRanges(figures).find((range) => range.quantity === quantity);
}

/** The part of a panel for which every curve is drawn. */
function extent(curves: readonly (readonly ChartPoint[])[]): { from: number; to: number } {
  return {
    from: Math.max(...curves.map((points) => (points[0] as ChartPoint)[0])),
    to: Math.min(...curves.map((points) => (points[points.length - 1] as ChartPoint)[0])),
  };
}
