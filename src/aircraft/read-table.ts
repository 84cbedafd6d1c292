import { convert } from '../units/unit-table.ts';
import { type AxisQuantity, axisFacts } from './axis.ts';
import type { InterpolateCellInputs } from './interpolate-cell.ts';
import type { Cells, CellUnit, Table, TableAxis } from './table.ts';

/** Where a table is read: a value for each axis it has, in the reading unit of that quantity. */
export type TablePoint = { readonly [Q in AxisQuantity]?: number | undefined };

/** How a table is read. */
export interface ReadingMode {
  /** Off the favourable edge (lighter, lower, colder, more headwind): read at the edge, or refuse. */
  readonly favourableEdge: 'read-at-edge' | 'refuse';
  /** Between printed values: interpolate, or take the next worse printed figure as it stands. */
  readonly between: 'interpolate' | 'next-worse';
  /** Which way the printed figures get worse; decides whether an edge may be read. */
  readonly worse: 'greater' | 'less';
  /** The axes whose high end is the favourable one; the low end is on every other. */
  readonly highIsFavourable: readonly AxisQuantity[];
}

/** Why a table has no figure for a point. */
export type NoReading =
  | { readonly reason: 'off-edge' | 'not-monotonic'; readonly axis: TableAxis; readonly at: number }
  | { readonly reason: 'blank'; readonly at: TablePoint }
  | { readonly reason: 'axis-missing'; readonly axis: TableAxis };

/** The bracket found in a table, ready for `interpolateCell`, and the axes on which it was read at the favourable edge. */
export interface TableBracket extends InterpolateCellInputs {
  readonly atEdge: readonly TableAxis[];
}

/** A bracket, or why there is none. A returned case, not an exception: reading is in the path of every assessment. */
export type TableReading = { readonly ok: true; readonly bracket: TableBracket } | ({ readonly ok: false } & NoReading);

/**
 * Finds the printed figures around a point. Plain loops without closures: this runs several times in every assessment,
 * and a planner runs a great many of those.
 */
export function bracketTable(table: Table<CellUnit>, point: TablePoint, mode: ReadingMode): TableReading {
  const { axes } = table;
  const isNextWorse = mode.between === 'next-worse';
  const lowerIndex: number[] = [];
  const upperIndex: number[] = [];
  const at: number[] = [];
  const lower: number[] = [];
  const upper: number[] = [];
  let edges: number[] | undefined;
  for (let k = 0; k < axes.length; k += 1) {
    const axis = axes[k] as TableAxis;
    const { values } = axis;
    const given = point[axis.quantity];
    const x = given === undefined ? undefined : convert(given, axisFacts[axis.quantity].readingUnit, axis.unit);
    if (x === undefined) return { ok: false, reason: 'axis-missing', axis };
    if (Number.isNaN(x)) return { ok: false, reason: 'off-edge', axis, at: x };
    const last = values.length - 1;
    let above = 0;
    while (above <= last && isAbove(x, values[above] as number)) above += 1;
    // A value that a conversion of units has moved off a printed one by its last bits is put back on it.
    const isPrinted = above <= last && !isAbove(values[above] as number, x);
    const isBelowFirst = above === 0 && !isPrinted;
    const isBeyondLast = above > last;
    const highIsGood = mode.highIsFavourable.includes(axis.quantity);
    if (isBelowFirst || isBeyondLast) {
      if (isBeyondLast !== highIsGood || mode.favourableEdge === 'refuse')
        return { ok: false, reason: 'off-edge', axis, at: x };
      edges = edges === undefined ? [k] : [...edges, k];
    }
    const to = isBeyondLast ? last : above;
    const from = isPrinted || isBelowFirst || isBeyondLast ? to : to - 1;
    const worse = highIsGood ? from : to;
    const low = isNextWorse ? worse : from;
    const high = isNextWorse ? worse : to;
    lowerIndex.push(low);
    upperIndex.push(high);
    lower.push(values[low] as number);
    upper.push(values[high] as number);
    at.push(low === high ? (values[low] as number) : x);
  }
  const corners = cornersOf(table, lowerIndex, upperIndex);
  if (corners === undefined) return { ok: false, reason: 'blank', at: point };
  if (edges === undefined) return { ok: true, bracket: { lower, upper, at, corners, atEdge: noEdges } };
  for (const k of edges) {
    if (!worsensFromEdge(table, lowerIndex, upperIndex, k, mode))
      return { ok: false, reason: 'not-monotonic', axis: axes[k] as TableAxis, at: at[k] as number };
  }
  const atEdge = edges.map((k) => axes[k] as TableAxis);
  return { ok: true, bracket: { lower, upper, at, corners, atEdge } };
}

const noEdges: readonly TableAxis[] = [];

/** Above it by more than the last bits of a conversion. */
function isAbove(value: number, printed: number): boolean {
  return value - printed > 1e-9 * Math.max(1, Math.abs(printed));
}

/** The figures at the corners, the last axis running fastest; none if one that counts is blank. */
function cornersOf(table: Table, lower: readonly number[], upper: readonly number[]): number[] | undefined {
  const rank = lower.length;
  const corners: number[] = [];
  for (let bits = 0; bits < 2 ** rank; bits += 1) {
    let part: Cells = table.cells;
    for (let k = 0; k < rank; k += 1) {
      const isUpper = ((bits >> (rank - 1 - k)) & 1) === 1;
      part = (part as readonly Cells[])[(isUpper ? upper[k] : lower[k]) as number] as Cells;
    }
    if (part === null) return undefined;
    corners.push(part as number);
  }
  return corners;
}

/** Whether the figures get no better from the edge of an axis to the value next to it, so that the edge is the safe side. */
function worsensFromEdge(
  table: Table,
  lower: readonly number[],
  upper: readonly number[],
  k: number,
  mode: ReadingMode,
): boolean {
  const axis = table.axes[k] as TableAxis;
  const inner = mode.highIsFavourable.includes(axis.quantity) ? axis.values.length - 2 : 1;
  const second = (indices: readonly number[]) => indices.map((index, other) => (other === k ? inner : index));
  const edge = cornersOf(table, lower, upper);
  const next = cornersOf(table, second(lower), second(upper));
  if (edge === undefined || next === undefined) return false;
  return edge.every((figure, i) => {
    const other = next[i] as number;
    return mode.worse === 'greater' ? other >= figure : other <= figure;
  });
}
