import type { UnitWord } from '../units/unit-table.ts';
import { type AxisQuantity, axisFacts, axisQuantities } from './axis.ts';
import type { InterpolateCellInputs } from './interpolate-cell.ts';
import type { ReadingMode } from './reading-mode.ts';
import type { Cells, CellUnit, Table, TableAxis } from './table.ts';
import type { TablePoint } from './table-point.ts';

/** One axis with everything about it that no point changes. */
export interface PreparedAxis {
  readonly axis: TableAxis;
  /** The word as this library writes it: one that came out of a document is another string, slower to compare. */
  readonly quantity: AxisQuantity;
  readonly readingUnit: UnitWord;
  readonly isInReadingUnit: boolean;
  readonly highIsFavourable: boolean;
  /** How many cells one step along this axis is. */
  readonly stride: number;
}

/**
 * The axes of one or more tables, and where on them the last point lay. The places are written over by each reading:
 * new lists for every reading cost more than the reading itself, and on most axes (the mass, of a sweep through
 * weathers) the next point lies where the last one lay.
 */
export interface PreparedAxes {
  readonly printed: readonly TableAxis[];
  readonly mode: ReadingMode;
  readonly axes: readonly PreparedAxis[];
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  readonly at: Float64Array;
  readonly lowIndex: Int32Array;
  readonly highIndex: Int32Array;
  /** Where the cells at the corners stand, for every table on these axes. */
  readonly offsets: Int32Array;
  /** The axes on which the point lay at the favourable edge. */
  readonly edges: number[];
  readonly last: {
    /** The point itself, once it was found on every axis: where the next table is read there, nothing is to be looked for. */
    point: TablePoint | undefined;
    /** Whether the offsets are those of the places; a reading that ends early leaves them behind. */
    areOffsetsPlaced: boolean;
    /** How often the offsets have changed, so that each table knows whether its corners are still the figures there. */
    moves: number;
  };
}

/** A table made ready for many readings in one mode: cells in one row, the last axis running fastest, a blank one NaN. */
export interface PreparedTable {
  readonly along: PreparedAxes;
  readonly mode: ReadingMode;
  readonly cells: Float64Array | undefined;
  /** As printed; a table that is read once is left so, because laying it out takes as long as it is large. */
  readonly printed: Cells;
  /** At which move of the axes the corners were filled; before the first, and where one is blank, at none. */
  readonly filled: { at: number };
  /** The last reading that was within what is printed; its lists are those of the axes. */
  readonly within: {
    readonly ok: true;
    readonly cell: InterpolateCellInputs & { readonly corners: Float64Array };
    readonly atEdge: readonly never[];
  };
}

/**
 * Makes a table ready for readings in one mode. A ground roll and a distance on the same axes share them (`like`), so
 * that the second reading of a point need not look for its place again.
 */
export function prepareTable(table: Table<CellUnit>, mode: ReadingMode, like?: PreparedTable): PreparedTable {
  return { ...prepareForOneReading(table, mode, like), cells: cellsInOneRow(table) };
}

/** As `prepareTable`, with the cells left where they are. */
export function prepareForOneReading(table: Table<CellUnit>, mode: ReadingMode, like?: PreparedTable): PreparedTable {
  const along =
    like !== undefined && isSamePlacing(mode, like.along.mode) && isSameAxes(table.axes, like.along.printed)
      ? like.along
      : prepareAxes(table.axes, mode);
  const corners = new Float64Array(2 ** table.axes.length);
  const { lower, upper, at } = along;
  return {
    along,
    mode,
    cells: undefined,
    printed: table.cells,
    filled: { at: 0 },
    within: { ok: true, cell: { lower, upper, at, corners }, atEdge: [] },
  };
}

function prepareAxes(axes: readonly TableAxis[], mode: ReadingMode): PreparedAxes {
  const rank = axes.length;
  return {
    printed: axes,
    mode,
    axes: axes.map((axis, k) => ({
      axis,
      quantity: axisQuantities.find((each) => each === axis.quantity) as AxisQuantity,
      readingUnit: axisFacts[axis.quantity].readingUnit,
      isInReadingUnit: axisFacts[axis.quantity].readingUnit === axis.unit,
      highIsFavourable: mode.highIsFavourable.includes(axis.quantity),
      stride: axes.slice(k + 1).reduce((cells, { values }) => cells * values.length, 1),
    })),
    lower: new Float64Array(rank),
    upper: new Float64Array(rank),
    at: new Float64Array(rank),
    lowIndex: new Int32Array(rank),
    highIndex: new Int32Array(rank),
    offsets: new Int32Array(2 ** rank),
    edges: [],
    last: { point: undefined, areOffsetsPlaced: false, moves: 0 },
  };
}

/** Whether two modes find the same place on an axis; which figures are worse is another matter. */
function isSamePlacing(a: ReadingMode, b: ReadingMode): boolean {
  return a.favourableEdge === b.favourableEdge && a.between === b.between && a.highIsFavourable === b.highIsFavourable;
}

/** Whether two tables are printed for the same values of the same quantities. */
export function isSameAxes(axes: readonly TableAxis[], others: readonly TableAxis[]): boolean {
  return (
    axes.length === others.length &&
    axes.every(({ quantity, unit, values }, k) => {
      const other = others[k] as TableAxis;
      return (
        quantity === other.quantity &&
        unit === other.unit &&
        values.length === other.values.length &&
        values.every((value, i) => value === other.values[i])
      );
    })
  );
}

/** The cells of a table in the order of their axes; what is blank or missing is NaN here, and never read as a figure. */
export function cellsInOneRow({ axes, cells }: Table): Float64Array {
  const row = new Float64Array(axes.reduce((count, { values }) => count * values.length, 1));
  let next = 0;
  const visit = (part: Cells | undefined, axis: number) => {
    const count = axes[axis]?.values.length;
    if (count === undefined) {
      row[next] = typeof part === 'number' ? part : Number.NaN;
      next += 1;
      return;
    }
    for (let i = 0; i < count; i += 1) visit((part as readonly Cells[] | null | undefined)?.[i], axis + 1);
  };
  visit(cells, 0);
  return row;
}
