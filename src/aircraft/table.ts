import type { AxisQuantity, AxisUnit } from './axis.ts';

/** One axis as printed: at least two values, rising. */
export interface TableAxis {
  readonly quantity: AxisQuantity;
  readonly unit: AxisUnit;
  readonly values: readonly number[];
}

/** A printed cell, or `null` for a blank one: a blank is a limit of the aeroplane, not a gap to fill. */
export type Cell = number | null;

/** Cells nested as deep as there are axes, the first axis outermost; one bare number where there is no axis. */
export type Cells = Cell | readonly Cells[];

/** The units in which manuals count fuel. */
export type FuelUnit = 'L' | 'USgal' | 'kg' | 'lb';

/** The units a table's cells may be printed in. */
export type CellUnit = 'm' | 'ft' | 'ftPerMin' | 'kias' | 'kcas' | 'min' | 'NM' | FuelUnit;

/** A table of the flight manual as printed, on up to four axes. */
export interface Table<U extends CellUnit = CellUnit> {
  readonly axes: readonly TableAxis[];
  readonly unit: U;
  readonly cells: Cells;
}

/** The printed cell at the given place of each axis. */
export function cellAt(cells: Cells, indices: readonly number[]): Cell {
  let part: Cells | undefined = cells;
  for (const index of indices) part = (part as readonly Cells[])[index];
  return part as Cell;
}
