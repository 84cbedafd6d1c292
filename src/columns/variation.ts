import { type VariationOnDate, variationAt } from '../magnetism/index.ts';
import type { DecimalYear, ElevationInMetres, Latitude, Longitude } from '../units/index.ts';
import { at, type Column, demandOutput, demandOutputColumn, type PerRow, rowsOf } from './column.ts';
import { eachRow, type RefusedRows } from './refused-rows.ts';

/** What the codes in a column of zones stand for: `variationZones[code]`. A row that was refused has none. */
export const variationZones = ['none', 'normal', 'caution', 'blackout'] as const;

/** Magnetic variations, row by row. */
export interface VariationColumn {
  /** Magnetic north east of true north, west negative. */
  readonly variation: Column<'degEast'>;
  /** One standard deviation. */
  readonly uncertainty: Column<'deg'>;
  /** Codes of {@link variationZones}. */
  readonly zone: Uint8Array;
  /** 1 where there is a variation; 0 in the blackout zone and where the row was refused, and both figures are 0. */
  readonly hasFigure: Uint8Array;
}

/** Inputs of {@link variationColumn}. */
export interface VariationColumnInputs {
  readonly latitude: PerRow<'degLatitude'>;
  readonly longitude: PerRow<'degLongitude'>;
  /** 0 m where not given. */
  readonly elevation?: PerRow<'mElevation'> | undefined;
  readonly date: PerRow<'year'>;
  /** Columns to write to instead of new ones, such as those of an earlier call. */
  readonly into?: VariationColumn | undefined;
}

/**
 * Magnetic variations at many places or on many dates: {@link magneticVariation} row by row, with the very same results.
 * The model is evaluated when the place differs from that of the row before, so rows of one place belong together.
 *
 * In the blackout zone, where a compass is not usable, there is no variation; nor is there in a row that the formula
 * refuses (a figure outside its range, NaN): `hasFigure` is 0 there, and `refused` counts the refused rows.
 *
 * @param x - `latitude` between the poles, which are refused, north positive; `longitude` −180° to 360°, east positive;
 * `date` 2025.0 to before 2030.0; `elevation` −1000 m to 850 000 m, 0 m if not given: columns of one length, or one
 * quantity for all rows; `into` columns to write to.
 * @returns `variation` in degrees east, `uncertainty` in degrees, `zone` as codes of {@link variationZones}, `hasFigure`,
 * and the `refused` rows.
 * @throws {@link DomainError} when columns differ in length, are no `Float64Array`, or have another unit; never for a
 * figure in a row.
 * @record magnetism.variation
 *
 * @example
 * const latitude = { unit: 'degLatitude', values: Float64Array.of(54, 54, 90) } as const
 * const date = { unit: 'year', values: Float64Array.of(2028.5, 2029, 2029) } as const
 * const column = variationColumn({ latitude, longitude: degLongitude(-120), date })
 * Array.from(column.zone, (code) => variationZones[code]) // => ['normal', 'normal', 'none']
 * column.refused.first[0]?.detail.parameter // => 'latitude'
 */
export function variationColumn(x: VariationColumnInputs): VariationColumn & { readonly refused: RefusedRows } {
  const { latitude, longitude, elevation, date } = x;
  const rows = rowsOf({
    latitude: { given: latitude, units: ['degLatitude'] },
    longitude: { given: longitude, units: ['degLongitude'] },
    elevation: { given: elevation, units: ['mElevation'] },
    date: { given: date, units: ['year'] },
  });
  const { variation, uncertainty, zone, hasFigure } = x.into ?? newColumn(rows);
  demandOutputColumn('into.variation', variation, 'degEast', rows);
  demandOutputColumn('into.uncertainty', uncertainty, 'deg', rows);
  demandOutput('into.zone', zone, 'Uint8Array', rows);
  demandOutput('into.hasFigure', hasFigure, 'Uint8Array', rows);
  const atPlace = placeKept();
  const refused = eachRow(
    rows,
    (row) => {
      const onDate = atPlace(
        at(latitude, row),
        at(longitude, row),
        elevation === undefined ? undefined : at(elevation, row),
      );
      const found = onDate({ date: at(date, row) as DecimalYear });
      const isUsable = found.zone !== 'blackout';
      variation.values[row] = isUsable ? found.variation : 0;
      uncertainty.values[row] = isUsable ? found.uncertainty : 0;
      zone[row] = variationZones.indexOf(found.zone);
      hasFigure[row] = isUsable ? 1 : 0;
    },
    (row) => {
      variation.values[row] = 0;
      uncertainty.values[row] = 0;
      zone[row] = 0;
      hasFigure[row] = 0;
    },
  );
  return { variation, uncertainty, zone, hasFigure, refused };
}

/** The variation at a place; of two calls in a row for one place the second costs nothing. */
function placeKept() {
  let last: { latitude: number; longitude: number; elevation: number | undefined; onDate: VariationOnDate } | undefined;
  return (latitude: number, longitude: number, elevation: number | undefined): VariationOnDate => {
    if (last?.latitude === latitude && last.longitude === longitude && last.elevation === elevation) return last.onDate;
    const onDate = variationAt({
      latitude: latitude as Latitude,
      longitude: longitude as Longitude,
      elevation: elevation as ElevationInMetres | undefined,
    });
    last = { latitude, longitude, elevation, onDate };
    return onDate;
  };
}

function newColumn(rows: number): VariationColumn {
  return {
    variation: { unit: 'degEast', values: new Float64Array(rows) },
    uncertainty: { unit: 'deg', values: new Float64Array(rows) },
    zone: new Uint8Array(rows),
    hasFigure: new Uint8Array(rows),
  };
}
