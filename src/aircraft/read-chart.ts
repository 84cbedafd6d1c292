import { convert } from '../units/unit-table.ts';
import { axisFacts } from './axis.ts';
import type { Chart, ChartPoint, ChartScale, CurvePanel, GuidePanel } from './chart.ts';
import { type CurvePiece, type InterpolateCurvesInputs, interpolateCurves } from './interpolate-curves.ts';
import type { ReadingMode } from './reading-mode.ts';
import type { TablePoint } from './table-point.ts';

/** Why a chart has no figure: off a scale, off the drawn curves, or a value that the chart asks for is missing. */
export interface NoChartReading {
  readonly reason: 'off-edge' | 'off-curves' | 'axis-missing' | 'not-monotonic';
  readonly scale: ChartScale;
  readonly at: number;
  readonly min: number;
  readonly max: number;
}

/** A figure with the scales that were read at their favourable end, or why there is none. */
export type ChartReading =
  | {
      readonly ok: true;
      readonly value: number;
      readonly atEdge: readonly { scale: ChartScale; at: number; edge: number }[];
    }
  | ({ readonly ok: false } & NoChartReading);

/** How the formula of a panel is called; an assessment notes each call. */
export type CallPanel = (panel: ChartScale, inputs: InterpolateCurvesInputs) => number;

interface Curve {
  readonly at: number;
  readonly points: readonly ChartPoint[];
}

/** Reads a chart panel by panel: each ordinate meets the reference line of the next. */
export function readChart(
  chart: Chart,
  point: TablePoint,
  mode: ReadingMode,
  call: CallPanel = (_panel, inputs) => interpolateCurves(inputs),
): ChartReading {
  const atEdge: { scale: ChartScale; at: number; edge: number }[] = [];
  const [first, ...guides] = chart.panels;
  let ordinate: number | undefined;
  for (const panel of [first, ...guides] as (CurvePanel | GuidePanel)[]) {
    const family = 'family' in panel ? panel.family : undefined;
    const curves = 'family' in panel ? panel.curves : onReferenceLine(panel);
    const at = family === undefined ? (ordinate as number) : valueOn(family, point);
    const along = valueOn(panel.along, point);
    if (along === undefined || at === undefined)
      return missing(along === undefined ? panel.along : (family as ChartScale));
    const place = placeOn(panel.along, along, curves, mode);
    if (!place.ok) return place;
    if (place.edge !== undefined) atEdge.push({ scale: panel.along, at: along, edge: place.edge });
    const lowIsGood =
      family === undefined ? mode.worse === 'greater' : !mode.highIsFavourable.includes(family.quantity);
    const between = curvesAround(family ?? panel.along, at, { along: place.along, lowIsGood }, curves, mode);
    if (!between.ok) return between;
    if (between.edge !== undefined && family !== undefined) atEdge.push({ scale: family, at, edge: between.edge });
    const inputs = {
      along: place.along,
      at: between.at,
      lower: pieceAt(between.lower, place.along),
      upper: pieceAt(between.upper, place.along),
    };
    ordinate = call(panel.along, inputs);
  }
  return { ok: true, value: ordinate as number, atEdge };
}

/** The guide lines as curves of the ordinate at which they cross the reference line. */
function onReferenceLine({ guides, referenceLine }: GuidePanel): Curve[] {
  return guides.map((points) => ({ at: ordinateOn(points, referenceLine), points }));
}

function valueOn({ quantity, unit }: ChartScale, point: TablePoint): number | undefined {
  const given = point[quantity];
  return given === undefined ? undefined : convert(given, axisFacts[quantity].readingUnit, unit);
}

type Place =
  | { readonly ok: true; readonly along: number; readonly edge: number | undefined }
  | ({ readonly ok: false } & NoChartReading);

/** Where along the panel: inside the part that every curve is drawn for, or at its favourable end. */
function placeOn(scale: ChartScale, along: number, curves: readonly Curve[], mode: ReadingMode): Place {
  const min = Math.max(...curves.map(({ points }) => (points[0] as ChartPoint)[0]));
  const max = Math.min(...curves.map(({ points }) => (points[points.length - 1] as ChartPoint)[0]));
  const near = [min, max].find((end) => Math.abs(end - along) <= 1e-9 * Math.max(1, Math.abs(end)));
  if (near !== undefined) return { ok: true, along: near, edge: undefined };
  if (along >= min && along <= max) return { ok: true, along, edge: undefined };
  const highIsGood = mode.highIsFavourable.includes(scale.quantity);
  const isOffGood = highIsGood ? along > max : along < min;
  if (!isOffGood || !Number.isFinite(along) || mode.favourableEdge === 'refuse')
    return { ok: false, reason: 'off-edge', scale, at: along, min, max };
  const edge = highIsGood ? max : min;
  const getsNoBetter = curves.every(({ points }) => {
    const ordinates = points.map(([, ordinate]) => ordinate);
    const [end, inner] = highIsGood ? [ordinates.at(-1), ordinates.at(-2)] : [ordinates[0], ordinates[1]];
    return mode.worse === 'greater' ? (inner as number) >= (end as number) : (inner as number) <= (end as number);
  });
  if (!getsNoBetter) return { ok: false, reason: 'not-monotonic', scale, at: along, min, max };
  return { ok: true, along: edge, edge };
}

type Around =
  | {
      readonly ok: true;
      readonly at: number;
      readonly lower: Curve;
      readonly upper: Curve;
      readonly edge: number | undefined;
    }
  | ({ readonly ok: false } & NoChartReading);

/**
 * The drawn curves around a value. Beyond the last on the favourable side that one is read, where it is no better than
 * the next; beyond the other there is no figure. Of the family the low end is favourable (or the high one, as for a
 * headwind); of an ordinate carried over, the better one.
 */
function curvesAround(
  scale: ChartScale,
  at: number,
  place: Placed,
  curves: readonly Curve[],
  mode: ReadingMode,
): Around {
  const lowest = curves[0] as Curve;
  const highest = curves[curves.length - 1] as Curve;
  const { lowIsGood, along } = place;
  const exact = curves.find((curve) => Math.abs(curve.at - at) <= 1e-9 * Math.max(1, Math.abs(curve.at)));
  if (exact !== undefined) return { ok: true, at: exact.at, lower: exact, upper: exact, edge: undefined };
  if (!(at >= lowest.at && at <= highest.at)) {
    const refused = { ok: false, scale, at, min: lowest.at, max: highest.at } as const;
    if (!Number.isFinite(at) || at < lowest.at !== lowIsGood || mode.favourableEdge === 'refuse')
      return { ...refused, reason: 'off-curves' };
    const [edge, inner] = lowIsGood ? [lowest, curves[1]] : [highest, curves[curves.length - 2]];
    if (inner !== undefined && isBetter(ordinateOn(inner.points, along), ordinateOn(edge.points, along), mode)) {
      return { ...refused, reason: 'not-monotonic' };
    }
    return { ok: true, at: edge.at, lower: edge, upper: edge, edge: edge.at };
  }
  const above = curves.findIndex((curve) => curve.at >= at);
  const upper = curves[above] as Curve;
  const lower = curves[above - 1] as Curve;
  if (mode.between === 'interpolate') return { ok: true, at, lower, upper, edge: undefined };
  const worse = lowIsGood ? upper : lower;
  return { ok: true, at: worse.at, lower: worse, upper: worse, edge: undefined };
}

interface Placed {
  readonly along: number;
  readonly lowIsGood: boolean;
}

function isBetter(ordinate: number, than: number, mode: ReadingMode): boolean {
  return mode.worse === 'greater' ? ordinate < than : ordinate > than;
}

/** The ordinate of a digitised curve where it is drawn. */
export function ordinateOn(points: readonly ChartPoint[], along: number): number {
  const piece = pieceAt({ at: 0, points }, along);
  return interpolateCurves({ along, at: 0, lower: piece, upper: piece });
}

/** The piece of a curve around a place along the panel. */
function pieceAt({ at, points }: Curve, along: number): CurvePiece {
  const end = points.findIndex(([x], i) => i > 0 && x >= along);
  const to = points[end] as ChartPoint;
  return { at, from: points[end - 1] as ChartPoint, to };
}

function missing(scale: ChartScale): ChartReading {
  return { ok: false, reason: 'axis-missing', scale, at: 0, min: 0, max: 0 };
}
