import type { AxisQuantity, AxisUnit } from './axis.ts';

/** What one scale of a chart shows. */
export interface ChartScale {
  readonly quantity: AxisQuantity;
  readonly unit: AxisUnit;
}

/** A point of a digitised curve: the value on the scale along the panel, and the ordinate. */
export type ChartPoint = readonly [along: number, ordinate: number];

/** One curve of the first panel, for one value of the family's quantity; points rise along the scale. */
export interface ChartCurve {
  readonly at: number;
  readonly points: readonly ChartPoint[];
}

/** The first panel: entered along its scale, read on the curve of the family's quantity. */
export interface CurvePanel {
  readonly along: ChartScale;
  readonly family: ChartScale;
  /** At least one; the values of the family rise. */
  readonly curves: readonly ChartCurve[];
}

/**
 * Every further panel: the ordinate of the panel before meets the reference line, and from there follows the guide
 * lines to today's value of the scale along the panel.
 */
export interface GuidePanel {
  readonly along: ChartScale;
  readonly referenceLine: number;
  /** Each crosses the reference line; from the lowest there to the highest, and none crosses another. */
  readonly guides: readonly (readonly ChartPoint[])[];
}

/** A chart of the flight manual, digitised: its panels in the order in which they are read. */
export interface Chart<U extends 'm' | 'ft' | 'ftPerMin' = 'm' | 'ft' | 'ftPerMin'> {
  readonly panels: readonly [CurvePanel, ...GuidePanel[]];
  /** The unit of the last scale. */
  readonly unit: U;
}
