import {
  type DecimalYear,
  type Degrees,
  type DegreesPerYear,
  type Domain,
  demand,
  type Nanotesla,
  type NanoteslaPerYear,
} from '../units/index.ts';
import { type MagneticModel, magneticModel } from './model.ts';
import { fieldAt, type MagneticSite, magneticDateDomain, magneticSiteDomain } from './site.ts';

/** Inputs of {@link magneticField}. */
export interface MagneticFieldInputs extends MagneticSite {
  /** The date for which the field is wanted; there is no default. */
  readonly date: DecimalYear;
}

/** The magnetic field at a place and date. Its declination is asked of {@link magneticVariation}, which knows the zones. */
export interface MagneticField {
  /** Component towards true north. */
  readonly north: Nanotesla;
  /** Component towards true east. */
  readonly east: Nanotesla;
  /** Component straight down. */
  readonly down: Nanotesla;
  /** The part of the field that turns a compass. */
  readonly horizontalIntensity: Nanotesla;
  readonly totalIntensity: Nanotesla;
  /** How far the field dips below the horizontal; negative where it rises above it. */
  readonly inclination: Degrees;
  readonly northChange: NanoteslaPerYear;
  readonly eastChange: NanoteslaPerYear;
  readonly downChange: NanoteslaPerYear;
  readonly horizontalIntensityChange: NanoteslaPerYear;
  readonly totalIntensityChange: NanoteslaPerYear;
  readonly inclinationChange: DegreesPerYear;
  readonly date: DecimalYear;
  readonly model: MagneticModel;
}

export const magneticFieldDomain = {
  ...magneticSiteDomain,
  ...magneticDateDomain,
} satisfies Domain<MagneticFieldInputs>;

/**
 * The magnetic field at a place and date by the World Magnetic Model 2025, with its change in a year.
 *
 * X, Y and Z are linear in time; H = √(X² + Y²), F = √(H² + Z²), I = atan2(Z, H); Ḣ = (X Ẋ + Y Ẏ)/H,
 * Ḟ = (X Ẋ + Y Ẏ + Z Ż)/F, İ = (H Ż − Z Ḣ)/F²: components in nT, changes in nT per year, I in degrees. The elevation
 * stands in for the height above the WGS 84 ellipsoid.
 *
 * @param x - `latitude` between the poles, which are refused, north positive; `longitude` −180° to 360°, east
 * positive; `date` 2025.0 to before 2030.0; `elevation` −1000 m to 850 000 m, 0 m if not given.
 * @returns `north`, `east`, `down`, `horizontalIntensity` and `totalIntensity` in nT, `inclination` in degrees, the
 * change of each per year, the `date`, and the `model` with one standard deviation of each.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record magnetism.field
 *
 * @example
 * magneticField({ latitude: degLatitude(80), longitude: degLongitude(0), date: decimalYear(2027.5) }).totalIntensity // ≈ 55253.9 ± 0.05
 * magneticField({ latitude: degLatitude(80), longitude: degLongitude(0), date: decimalYear(2027.5) }).inclination // ≈ 83.24 ± 0.005
 */
export function magneticField(x: MagneticFieldInputs): MagneticField {
  demand('date', x.date, magneticDateDomain.date);
  const field = fieldAt(x);
  const years = (x.date as number) - magneticModel.epoch;
  const { northChange_nT, eastChange_nT, downChange_nT } = field;
  const north_nT = field.north_nT + years * northChange_nT;
  const east_nT = field.east_nT + years * eastChange_nT;
  const down_nT = field.down_nT + years * downChange_nT;
  const horizontal_nT = Math.sqrt(north_nT * north_nT + east_nT * east_nT);
  const total_nT = Math.sqrt(horizontal_nT * horizontal_nT + down_nT * down_nT);
  const inclination_rad = Math.atan2(down_nT, horizontal_nT);
  const horizontalChange_nT = (north_nT * northChange_nT + east_nT * eastChange_nT) / horizontal_nT;
  const totalChange_nT = (horizontal_nT * horizontalChange_nT + down_nT * downChange_nT) / total_nT;
  const inclinationChange_rad = (horizontal_nT * downChange_nT - down_nT * horizontalChange_nT) / (total_nT * total_nT);
  return {
    north: north_nT as Nanotesla,
    east: east_nT as Nanotesla,
    down: down_nT as Nanotesla,
    horizontalIntensity: horizontal_nT as Nanotesla,
    totalIntensity: total_nT as Nanotesla,
    inclination: ((inclination_rad * 180) / Math.PI) as Degrees,
    northChange: northChange_nT as NanoteslaPerYear,
    eastChange: eastChange_nT as NanoteslaPerYear,
    downChange: downChange_nT as NanoteslaPerYear,
    horizontalIntensityChange: horizontalChange_nT as NanoteslaPerYear,
    totalIntensityChange: totalChange_nT as NanoteslaPerYear,
    inclinationChange: ((inclinationChange_rad * 180) / Math.PI) as DegreesPerYear,
    date: x.date,
    model: magneticModel,
  };
}
