import { demandWord, inconsistent, type Quantity } from '../units/index.ts';

/** The figures of many rows in one unit. The array may lie in memory that threads share. */
export interface Column<U extends string> {
  readonly unit: U;
  readonly values: Float64Array;
}

/** A figure for each row, or one quantity that holds for all of them. */
export type PerRow<U extends string> = Column<U> | Quantity<U>;

/** Uses a north that another column has decided, without letting this one widen it. */
export type Same<U> = [U][U extends unknown ? 0 : never];

const sourceOfRows = 'one figure of each column for one row';

/** The columns among the inputs by name, each with the unit words that it may have. */
export type ColumnsAsked = Readonly<
  Record<string, { readonly given: PerRow<string> | undefined; readonly units: readonly string[] }>
>;

/** How many rows the columns have in common; throws unless they are columns of one length in the units asked for. */
export function rowsOf(asked: ColumnsAsked): number {
  let rows: number | undefined;
  for (const [name, { given, units }] of Object.entries(asked)) {
    if (given === undefined || typeof given === 'number') continue;
    demandWord(`${name}.unit`, given?.unit, units, 'the unit of the column');
    demandArray(`${name}.values`, given.values, 'Float64Array');
    rows ??= given.values.length;
    demandRows(`${name}.values`, given.values.length, rows);
  }
  if (rows !== undefined) return rows;
  const names = Object.keys(asked).join(', ');
  throw inconsistent(names, 'no column', 'columns', 1, 'any', 'one input at least says how many rows there are');
}

/** Throws unless an output has a place for each row. */
export function demandOutput(
  parameter: string,
  array: Float64Array | Uint8Array,
  kind: 'Float64Array' | 'Uint8Array',
  rows: number,
): void {
  demandArray(parameter, array, kind);
  demandRows(parameter, array.length, rows);
}

/** Throws unless a column for results has their unit and a place for each row. */
export function demandOutputColumn<U extends string>(
  parameter: string,
  column: Column<U>,
  unit: U,
  rows: number,
): void {
  demandWord(`${parameter}.unit`, column.unit, [unit], 'the unit of the results');
  demandOutput(`${parameter}.values`, column.values, 'Float64Array', rows);
}

/** By the name of the class, so that an array of another realm is one too. */
function demandArray(parameter: string, array: unknown, kind: 'Float64Array' | 'Uint8Array'): void {
  const received = Object.prototype.toString.call(array).slice('[object '.length, -1);
  demandWord(parameter, received, [kind], 'the class of the array');
}

function demandRows(parameter: string, received: number, rows: number): void {
  if (received !== rows) throw inconsistent(parameter, received, 'rows', rows, rows, sourceOfRows);
}

/** The figure of one row. */
export function at(given: PerRow<string>, row: number): number {
  return typeof given === 'number' ? given : (given.values[row] as number);
}
