import { convert } from '../units/unit-table.ts';
import { type AxisQuantity, axisFacts } from './axis.ts';
import type { InterpolateCellInputs } from './interpolate-cell.ts';
import { type Cell, type CellUnit, cellAt, type Table, type TableAxis } from './table.ts';

/** Where a table is read: a value for each axis it has, in the reading unit of that quantity. */
export type TablePoint = { readonly [Q in AxisQuantity]?: number };

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

/** Finds the printed figures around a point. */
export function bracketTable(table: Table<CellUnit>, point: TablePoint, mode: ReadingMode): TableReading {
  const lowerIndex: number[] = [];
  const upperIndex: number[] = [];
  const at: number[] = [];
  const edges: number[] = [];
  for (const [k, axis] of table.axes.entries()) {
    const given = point[axis.quantity];
    const x =
      given === undefined
        ? undefined
        : onPrintedValue(convert(given, axisFacts[axis.quantity].readingUnit, axis.unit), axis);
    if (x === undefined) return { ok: false, reason: 'axis-missing', axis };
    const first = axis.values[0] as number;
    const last = axis.values[axis.values.length - 1] as number;
    const highIsGood = mode.highIsFavourable.includes(axis.quantity);
    const isOffGood = highIsGood ? x > last : x < first;
    const isOffBad = highIsGood ? x < first : x > last;
    if (isOffBad || (isOffGood && mode.favourableEdge === 'refuse'))
      return { ok: false, reason: 'off-edge', axis, at: x };
    if (isOffGood) edges.push(k);
    const inside = Math.min(Math.max(x, first), last);
    const above = axis.values.findIndex((value) => value >= inside);
    const below = axis.values[above] === inside ? above : above - 1;
    const worse = highIsGood ? below : above;
    const isNextWorse = mode.between === 'next-worse';
    lowerIndex.push(isNextWorse ? worse : below);
    upperIndex.push(isNextWorse ? worse : above);
    at.push(isNextWorse ? (axis.values[worse] as number) : inside);
  }
  const corners = cornersOf(table, lowerIndex, upperIndex);
  if (corners === undefined) return { ok: false, reason: 'blank', at: point };
  for (const k of edges) {
    const axis = table.axes[k] as TableAxis;
    if (!worsensFromEdge(table, lowerIndex, upperIndex, k, mode)) {
      return { ok: false, reason: 'not-monotonic', axis, at: at[k] as number };
    }
  }
  const valuesAt = (indices: number[]) =>
    indices.map((index, k) => (table.axes[k] as TableAxis).values[index] as number);
  const atEdge = edges.map((k) => table.axes[k] as TableAxis);
  return { ok: true, bracket: { lower: valuesAt(lowerIndex), upper: valuesAt(upperIndex), at, corners, atEdge } };
}

/** A value that a conversion of units has moved off a printed one by its last bits, put back on it. */
function onPrintedValue(value: number | undefined, axis: TableAxis): number | undefined {
  if (value === undefined) return undefined;
  return axis.values.find((printed) => Math.abs(printed - value) <= 1e-9 * Math.max(1, Math.abs(printed))) ?? value;
}

/** The figures at the corners, the last axis running fastest; none if one that counts is blank. */
function cornersOf(table: Table, lower: readonly number[], upper: readonly number[]): number[] | undefined {
  const rank = lower.length;
  const corners: number[] = [];
  for (let bits = 0; bits < 2 ** rank; bits += 1) {
    const indices = lower.map((low, k) => (((bits >> (rank - 1 - k)) & 1) === 1 ? (upper[k] as number) : low));
    const cell: Cell = cellAt(table.cells, indices);
    if (cell === null) return undefined;
    corners.push(cell);
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
