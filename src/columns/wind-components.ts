import type { Knots, MagneticDirection, TrueDirection } from '../units/index.ts';
import { windComponents } from '../wind/index.ts';
import { at, type Column, demandOutput, demandOutputColumn, type PerRow, rowsOf, type Same } from './column.ts';
import { eachRow, type RefusedRows } from './refused-rows.ts';

/** Headwinds and crosswinds, row by row. */
export interface WindComponentsColumns {
  /** Positive a headwind, negative a tailwind. */
  readonly headwind: Column<'kt'>;
  /** Positive from the right, negative from the left. */
  readonly crosswind: Column<'kt'>;
  /** 1 where the row has its figures; 0 where it was refused, and both figures are 0. */
  readonly hasFigure: Uint8Array;
}

/** Inputs of {@link windComponentsColumns}. */
export interface WindComponentsColumnsInputs<U extends 'degTrue' | 'degMagnetic' = 'degTrue' | 'degMagnetic'> {
  /** Directions the wind blows from. */
  readonly from: PerRow<U>;
  readonly speed: PerRow<'kt'>;
  /** Of the runway or track, against the same north as the wind. */
  readonly direction: PerRow<Same<U>>;
  /** Columns to write to instead of new ones, such as those of an earlier call. */
  readonly into?: WindComponentsColumns | undefined;
}

const norths = ['degTrue', 'degMagnetic'] as const;

/**
 * Headwind and crosswind components of many winds: {@link windComponents} row by row, with the very same results.
 *
 * A row that the formula refuses (a figure outside its range, NaN) has no figure: `hasFigure` is 0 there, and `refused`
 * counts such rows.
 *
 * @param x - `from` 0° to 360°, `speed` 0 kt to 200 kt, `direction` 0° to 360°: columns of one length, or one quantity
 * for all rows; `into` columns to write to.
 * @returns `headwind` in kt, negative when it is a tailwind; `crosswind` in kt, positive from the right; `hasFigure`, and
 * the `refused` rows.
 * @throws {@link DomainError} when columns differ in length, are no `Float64Array`, or have another unit, and when wind and
 * runway are not against the same north; never for a figure in a row.
 * @record wind.components
 *
 * @example
 * const from = { unit: 'degMagnetic', values: Float64Array.of(140, 361) } as const
 * const speed = { unit: 'kt', values: Float64Array.of(25, 25) } as const
 * const { crosswind, hasFigure, refused } = windComponentsColumns({ from, speed, direction: degMagnetic(170) })
 * crosswind.values[0] ?? 0 // ≈ -12.5 ± 0.01
 * Array.from(hasFigure) // => [1, 0]
 * refused.first[0]?.detail.parameter // => 'from'
 */
export function windComponentsColumns<U extends 'degTrue' | 'degMagnetic'>(
  x: WindComponentsColumnsInputs<U>,
): WindComponentsColumns & { readonly refused: RefusedRows } {
  const { from, speed, direction } = x as WindComponentsColumnsInputs;
  // Two columns must be against one north; a single quantity has its north in its type alone.
  const north = typeof from === 'object' && norths.includes(from?.unit) ? [from.unit] : norths;
  const rows = rowsOf({
    from: { given: from, units: norths },
    speed: { given: speed, units: ['kt'] },
    direction: { given: direction, units: north },
  });
  const { headwind, crosswind, hasFigure } = x.into ?? newColumns(rows);
  demandOutputColumn('into.headwind', headwind, 'kt', rows);
  demandOutputColumn('into.crosswind', crosswind, 'kt', rows);
  demandOutput('into.hasFigure', hasFigure, 'Uint8Array', rows);
  const write = (row: number, ahead: number, across: number, has: 0 | 1) => {
    headwind.values[row] = ahead;
    crosswind.values[row] = across;
    hasFigure[row] = has;
  };
  const refused = eachRow(
    rows,
    (row) => {
      const found = windComponents<TrueDirection | MagneticDirection>({
        from: at(from, row) as TrueDirection,
        speed: at(speed, row) as Knots,
        direction: at(direction, row) as TrueDirection,
      });
      write(row, found.headwind, found.crosswind, 1);
    },
    (row) => write(row, 0, 0, 0),
  );
  return { headwind, crosswind, hasFigure, refused };
}

function newColumns(rows: number): WindComponentsColumns {
  return {
    headwind: { unit: 'kt', values: new Float64Array(rows) },
    crosswind: { unit: 'kt', values: new Float64Array(rows) },
    hasFigure: new Uint8Array(rows),
  };
}
