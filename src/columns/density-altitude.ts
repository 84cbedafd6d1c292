import { densityAltitude } from '../atmosphere/index.ts';
import type { Celsius, PressureAltitude } from '../units/index.ts';
import { at, type Column, demandOutput, demandOutputColumn, type PerRow, rowsOf } from './column.ts';
import { eachRow, type RefusedRows } from './refused-rows.ts';

/** Density altitudes, row by row. */
export interface DensityAltitudeColumn {
  readonly densityAltitude: Column<'ftDA'>;
  /** 1 where the row has its figure; 0 where it was refused, and the figure is 0. */
  readonly hasFigure: Uint8Array;
}

/** Inputs of {@link densityAltitudeColumn}. */
export interface DensityAltitudeColumnInputs {
  readonly pressureAltitude: PerRow<'ftPA'>;
  /** Temperatures of the outside air. */
  readonly temperature: PerRow<'degC'>;
  /** Columns to write to instead of new ones, such as those of an earlier call. */
  readonly into?: DensityAltitudeColumn | undefined;
}

/**
 * Density altitudes of dry air: {@link densityAltitude} row by row, with the very same results.
 *
 * A row that the formula refuses (a figure outside its range, NaN) has no figure: `hasFigure` is 0 there, and `refused`
 * counts such rows.
 *
 * @param x - `pressureAltitude` −5000 ft to 20 000 ft, `temperature` −50 °C to 60 °C: columns of one length, or one
 * quantity for all rows; `into` columns to write to.
 * @returns `densityAltitude` in ft, `hasFigure`, and the `refused` rows.
 * @throws {@link DomainError} when columns differ in length, are no `Float64Array`, or have another unit; never for a
 * figure in a row.
 * @record atmosphere.density-altitude
 *
 * @example
 * const temperature = { unit: 'degC', values: Float64Array.of(30, Number.NaN) } as const
 * const column = densityAltitudeColumn({ pressureAltitude: ftPA(5000), temperature })
 * column.densityAltitude.values[0] ?? 0 // ≈ 7800.7 ± 0.1
 * Array.from(column.hasFigure) // => [1, 0]
 * column.refused.count // => 1
 */
export function densityAltitudeColumn(
  x: DensityAltitudeColumnInputs,
): DensityAltitudeColumn & { readonly refused: RefusedRows } {
  const { pressureAltitude, temperature } = x;
  const rows = rowsOf({
    pressureAltitude: { given: pressureAltitude, units: ['ftPA'] },
    temperature: { given: temperature, units: ['degC'] },
  });
  const { densityAltitude: column, hasFigure } = x.into ?? newColumn(rows);
  demandOutputColumn('into.densityAltitude', column, 'ftDA', rows);
  demandOutput('into.hasFigure', hasFigure, 'Uint8Array', rows);
  const refused = eachRow(
    rows,
    (row) => {
      column.values[row] = densityAltitude({
        pressureAltitude: at(pressureAltitude, row) as PressureAltitude,
        temperature: at(temperature, row) as Celsius,
      });
      hasFigure[row] = 1;
    },
    (row) => {
      column.values[row] = 0;
      hasFigure[row] = 0;
    },
  );
  return { densityAltitude: column, hasFigure, refused };
}

function newColumn(rows: number): DensityAltitudeColumn {
  return { densityAltitude: { unit: 'ftDA', values: new Float64Array(rows) }, hasFigure: new Uint8Array(rows) };
}
