import { convert } from '../units/unit-table.ts';
import type { AxisQuantity } from './axis.ts';
import type { InterpolateCellInputs } from './interpolate-cell.ts';
import { type PreparedAxes, type PreparedAxis, type PreparedTable, prepareForOneReading } from './prepared-table.ts';
import type { ReadingMode } from './reading-mode.ts';
import type { Cells, CellUnit, Table, TableAxis } from './table.ts';
import type { TablePoint } from './table-point.ts';

/** Why a table has no figure for a point. */
export type NoReading =
  | { readonly reason: 'off-edge' | 'not-monotonic'; readonly axis: TableAxis; readonly at: number }
  | { readonly reason: 'blank'; readonly at: TablePoint }
  | { readonly reason: 'axis-missing'; readonly axis: TableAxis };

/** A bracket ready for `interpolateCell`, with the axes on which it was read at the favourable edge; or why there is none. */
export type TableReading =
  | { readonly ok: true; readonly cell: InterpolateCellInputs; readonly atEdge: readonly TableAxis[] }
  | ({ readonly ok: false } & NoReading);

/** Finds the printed figures around a point. A returned case, not an exception: reading is in the path of every assessment. */
export function bracketTable(table: Table<CellUnit>, point: TablePoint, mode: ReadingMode): TableReading {
  return bracketPrepared(prepareForOneReading(table, mode), point);
}

/**
 * As `bracketTable`, of a table that is read many times; what it returns holds until the next reading. Plain loops
 * without closures: this runs several times in every assessment, and a planner runs a great many of those.
 */
export function bracketPrepared(table: PreparedTable, point: TablePoint): TableReading {
  const { along, within, filled } = table;
  if (point !== along.last.point) {
    const refused = findPlaces(along, point);
    if (refused !== undefined) return refused;
  }
  const { axes, at, edges, last } = along;
  if (filled.at !== last.moves) {
    const areFilled = fillCorners(table, along.offsets, within.cell.corners);
    filled.at = areFilled ? last.moves : 0;
    if (!areFilled) return { ok: false, reason: 'blank', at: point };
  }
  if (edges.length === 0) return within;
  for (const k of edges) {
    const { axis } = axes[k] as PreparedAxis;
    if (!worsensFromEdge(table, k)) return { ok: false, reason: 'not-monotonic', axis, at: at[k] as number };
  }
  return { ok: true, cell: within.cell, atEdge: edges.map((k) => (axes[k] as PreparedAxis).axis) };
}

/** Finds the point on every axis, or why it lies nowhere on one. */
function findPlaces(along: PreparedAxes, point: TablePoint): Extract<TableReading, { ok: false }> | undefined {
  const { axes, lower, upper, at, edges, last } = along;
  last.point = undefined;
  if (edges.length > 0) edges.length = 0;
  for (let k = 0; k < axes.length; k += 1) {
    const { axis, quantity, readingUnit, isInReadingUnit } = axes[k] as PreparedAxis;
    const given = valueAlong(point, quantity);
    const x = given === undefined || isInReadingUnit ? given : convert(given, readingUnit, axis.unit);
    if (x === undefined) return { ok: false, reason: 'axis-missing', axis };
    // Between the same printed values as the last point, which is where most weathers of a sweep lie.
    if (isAbove(x, lower[k] as number) && isAbove(upper[k] as number, x)) {
      at[k] = x;
      continue;
    }
    const place = placeOnAxis(along, k, x);
    if (place === 'off-edge') return { ok: false, reason: 'off-edge', axis, at: x };
    if (place === 'at-edge') edges.push(k);
  }
  if (!last.areOffsetsPlaced) findOffsets(along);
  last.point = point;
  return undefined;
}

/** Notes between which printed values of one axis a figure lies: within what is printed, at its favourable edge, or nowhere. */
function placeOnAxis(
  { axes, mode, lower, upper, at, lowIndex, highIndex, last }: PreparedAxes,
  k: number,
  x: number,
): 'within' | 'at-edge' | 'off-edge' {
  const { axis, highIsFavourable } = axes[k] as PreparedAxis;
  const { values } = axis;
  if (Number.isNaN(x)) return 'off-edge';
  const end = values.length - 1;
  const above = firstNotBelow(values, x);
  // A value that a conversion of units has moved off a printed one by its last bits is put back on it.
  const isPrinted = above <= end && !isAbove(values[above] as number, x);
  const isBelowFirst = above === 0 && !isPrinted;
  const isBeyondLast = above > end;
  const isOff = isBelowFirst || isBeyondLast;
  if (isOff && (isBeyondLast !== highIsFavourable || mode.favourableEdge === 'refuse')) return 'off-edge';
  const to = isBeyondLast ? end : above;
  const from = isPrinted || isOff ? to : to - 1;
  const isNextWorse = mode.between === 'next-worse';
  const worse = highIsFavourable ? from : to;
  const low = isNextWorse ? worse : from;
  const high = isNextWorse ? worse : to;
  if (low !== lowIndex[k] || high !== highIndex[k]) last.areOffsetsPlaced = false;
  lowIndex[k] = low;
  highIndex[k] = high;
  lower[k] = values[low] as number;
  upper[k] = values[high] as number;
  at[k] = low === high ? (values[low] as number) : x;
  return isOff ? 'at-edge' : 'within';
}

/** Each quantity by its name: a computed key would be looked up anew in every reading. */
function valueAlong(point: TablePoint, quantity: AxisQuantity): number | undefined {
  switch (quantity) {
    case 'mass':
      return point.mass;
    case 'pressureAltitude':
      return point.pressureAltitude;
    case 'densityAltitude':
      return point.densityAltitude;
    case 'temperature':
      return point.temperature;
    case 'isaDeviation':
      return point.isaDeviation;
    case 'headwind':
      return point.headwind;
    case 'slope':
      return point.slope;
    case 'indicatedAirspeed':
      return point.indicatedAirspeed;
    case 'height':
      return point.height;
  }
}

/** The place of the first printed value that a figure is not above; one past the last where it is above all. */
function firstNotBelow(values: readonly number[], x: number): number {
  let from = 0;
  let to = values.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if (isAbove(x, values[middle] as number)) from = middle + 1;
    else to = middle;
  }
  return from;
}

/** Above it by more than the last bits of a conversion. */
function isAbove(value: number, printed: number): boolean {
  return value - printed > 1e-9 * Math.max(1, Math.abs(printed));
}

/** Where the cells at the corners stand, the last axis running fastest. */
function findOffsets({ axes, lowIndex, highIndex, offsets, last }: PreparedAxes): void {
  last.areOffsetsPlaced = true;
  last.moves += 1;
  let count = 1;
  offsets[0] = 0;
  for (let k = 0; k < axes.length; k += 1) {
    const { stride } = axes[k] as PreparedAxis;
    const low = (lowIndex[k] as number) * stride;
    const high = (highIndex[k] as number) * stride;
    // From the last on, so that none is written over before it is read.
    for (let i = count - 1; i >= 0; i -= 1) {
      const offset = offsets[i] as number;
      offsets[2 * i] = offset + low;
      offsets[2 * i + 1] = offset + high;
    }
    count *= 2;
  }
}

/** The figures at the corners; false if one that counts is blank. */
function fillCorners(table: PreparedTable, offsets: Int32Array, corners: Float64Array): boolean {
  const { cells } = table;
  for (let i = 0; i < offsets.length; i += 1) {
    const offset = offsets[i] as number;
    const figure = cells === undefined ? printedAt(table, offset) : (cells[offset] as number);
    if (Number.isNaN(figure)) return false;
    corners[i] = figure;
  }
  return true;
}

/** The printed cell that stands so many cells after the first; NaN for a blank or missing one. */
function printedAt({ printed, along }: PreparedTable, offset: number): number {
  let part: Cells | undefined = printed;
  for (const { stride, axis } of along.axes) {
    part = (part as readonly Cells[] | null | undefined)?.[Math.floor(offset / stride) % axis.values.length];
  }
  return typeof part === 'number' ? part : Number.NaN;
}

/** Whether the figures get no better from the edge of an axis to the value next to it, so that the edge is the safe side. */
function worsensFromEdge(table: PreparedTable, k: number): boolean {
  const { along, within, mode } = table;
  const { axis, highIsFavourable } = along.axes[k] as PreparedAxis;
  const inner = highIsFavourable ? axis.values.length - 2 : 1;
  const beside = {
    ...along,
    lowIndex: along.lowIndex.slice().fill(inner, k, k + 1),
    highIndex: along.highIndex.slice().fill(inner, k, k + 1),
    offsets: along.offsets.slice(),
    last: { ...along.last },
  };
  findOffsets(beside);
  const next = within.cell.corners.slice();
  return (
    fillCorners(table, beside.offsets, next) &&
    next.every((figure, i) => {
      const atEdge = within.cell.corners[i] as number;
      return mode.worse === 'greater' ? figure >= atEdge : figure <= atEdge;
    })
  );
}
