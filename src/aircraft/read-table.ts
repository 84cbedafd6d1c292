import { convert } from '../units/unit-table.ts';
import type { InterpolateCellInputs } from './interpolate-cell.ts';
import { type AxisQuantity, type Cell, type CellUnit, cellAt, type Table, type TableAxis } from './table.ts';

/** Where a table is read: a value for each axis it has, in kg, ft pressure altitude, °C and KIAS. */
export type TablePoint = { readonly [Q in AxisQuantity]?: number };

/** How a table is read. */
export interface ReadingMode {
  /** Off the favourable edge (lighter, lower, colder, slower): read at the edge, or refuse. */
  readonly favourableEdge: 'read-at-edge' | 'refuse';
  /** Between printed values: interpolate, or take the next worse printed figure as it stands. */
  readonly between: 'interpolate' | 'next-worse';
  /** Which way the printed figures get worse along every axis; decides whether an edge may be read. */
  readonly worse: 'greater' | 'less';
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

const axisUnits = { mass: 'kg', pressureAltitude: 'ftPA', temperature: 'degC', indicatedAirspeed: 'kias' } as const;

/** Finds the printed figures around a point. */
export function bracketTable(table: Table<CellUnit>, point: TablePoint, mode: ReadingMode): TableReading {
  const lowerIndex: number[] = [];
  const upperIndex: number[] = [];
  const at: number[] = [];
  const edges: number[] = [];
  for (const [k, axis] of table.axes.entries()) {
    const given = point[axis.quantity];
    const x =
      given === undefined ? undefined : onPrintedValue(convert(given, axisUnits[axis.quantity], axis.unit), axis);
    if (x === undefined) return { ok: false, reason: 'axis-missing', axis };
    const first = axis.values[0] as number;
    const last = axis.values[axis.values.length - 1] as number;
    if (x > last || (x < first && mode.favourableEdge === 'refuse'))
      return { ok: false, reason: 'off-edge', axis, at: x };
    if (x < first) edges.push(k);
    const inside = Math.max(x, first);
    const above = axis.values.findIndex((value) => value >= inside);
    const isPrinted = axis.values[above] === inside;
    lowerIndex.push(isPrinted || mode.between === 'next-worse' ? above : above - 1);
    upperIndex.push(above);
    at.push(mode.between === 'next-worse' ? (axis.values[above] as number) : inside);
  }
  const corners = cornersOf(table, lowerIndex, upperIndex);
  if (corners === undefined) return { ok: false, reason: 'blank', at: point };
  for (const k of edges) {
    const axis = table.axes[k] as TableAxis;
    if (!worsensFromEdge(table, lowerIndex, upperIndex, k, mode)) {
      return { ok: false, reason: 'not-monotonic', axis, at: axis.values[0] as number };
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

/** Whether the figures get no better from the first printed value of an axis to the second, so that the edge is the safe side. */
function worsensFromEdge(
  table: Table,
  lower: readonly number[],
  upper: readonly number[],
  k: number,
  mode: ReadingMode,
): boolean {
  const second = (indices: readonly number[]) => indices.map((index, axis) => (axis === k ? 1 : index));
  const edge = cornersOf(table, lower, upper);
  const next = cornersOf(table, second(lower), second(upper));
  if (edge === undefined || next === undefined) return false;
  return edge.every((figure, i) => {
    const other = next[i] as number;
    return mode.worse === 'greater' ? other >= figure : other <= figure;
  });
}
