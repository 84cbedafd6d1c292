import {
  type DecimalYear,
  type Degrees,
  type Domain,
  demand,
  type ElevationInMetres,
  type Latitude,
  type Longitude,
  type Nanotesla,
  type Numbers,
  type Variation,
  type VariationChange,
} from '../units/index.ts';
import { horizontalField } from './horizontal-field.ts';
import { type MagneticModel, magneticModel } from './model.ts';

/** Inputs of {@link magneticVariation}. */
export interface MagneticVariationInputs {
  readonly latitude: Latitude;
  readonly longitude: Longitude;
  /** The date for which the variation is wanted; there is no default. */
  readonly date: DecimalYear;
  /** Elevation of the place; 0 if not given, which costs up to 0.08° at 3000 m in the normal zone. */
  readonly elevation?: ElevationInMetres | undefined;
}

interface ModelledField {
  /** How fast the declination changes, eastward positive. */
  readonly annualChange: VariationChange;
  /** One standard deviation of the declination from the real field, without local disturbances and magnetic storms. */
  readonly uncertainty: Degrees;
  /** The part of the field that turns a compass. */
  readonly horizontalIntensity: Nanotesla;
  readonly model: MagneticModel;
}

/** A variation where a compass is usable; in the caution zone with care. */
export interface UsableVariation extends ModelledField {
  /** `normal`: horizontal intensity 6000 nT or more; `caution`: 2000 nT or more, below 6000 nT. */
  readonly zone: 'normal' | 'caution';
  /** Magnetic north east of true north, above −180° up to 180°; west is negative. */
  readonly variation: Variation;
}

/** Near a magnetic pole, where a compass is not usable: there is no variation to fly by. */
export interface UnusableVariation extends ModelledField {
  /** `blackout`: horizontal intensity below 2000 nT. */
  readonly zone: 'blackout';
  /** What the model gives, east positive, above −180° up to 180°; for comparison with published values only. */
  readonly modelledDeclination: Degrees;
}

/** The variation at a place, after its zone has been asked. */
export type MagneticVariation = UsableVariation | UnusableVariation;

export const magneticVariationDomain = {
  // The last doubles before the poles.
  latitude: {
    unit: 'degLatitude',
    min: -90 + 2 ** -46,
    max: 90 - 2 ** -46,
    source: 'WGS 84, without the poles, where no true north exists',
  },
  longitude: { unit: 'degLongitude', min: -180, max: 360, source: 'WGS 84, counted to 180 or to 360' },
  // The last double before 2030.
  date: { unit: 'year', min: 2025, max: 2030 - 2 ** -42, source: 'validity of WMM2025, 2030.0 excluded' },
  elevation: { unit: 'mElevation', min: -1000, max: 850_000, source: 'height range of WMM2025' },
} satisfies Domain<MagneticVariationInputs>;

const blackoutBelow_nT = 2000;
const cautionBelow_nT = 6000;

/**
 * Magnetic variation at a place and date by the World Magnetic Model 2025.
 *
 * D = atan2(Y, X), dD/dt = (X Ẏ − Y Ẋ)/H², σ = √(0.26² + (5417/H)²): X and Y the north and east component of the
 * field in nT, linear in time, Ẋ and Ẏ their change in nT per year, H = √(X² + Y²); D east positive in degrees and σ
 * one standard deviation of it. The model asks for the height above the WGS 84 ellipsoid; the elevation stands in for
 * it, which costs less than 0.003° in the normal zone.
 *
 * @param x - `latitude` between the poles, which are refused, north positive; `longitude` −180° to 360°, east
 * positive, 240° being 120° west; `date` 2025.0 to before 2030.0; `elevation` −1000 m to 850 000 m, 0 m if not given.
 * @returns By `zone`: `variation` outside the blackout zone, `modelledDeclination` inside it; `annualChange` in degrees
 * east per year, `uncertainty` in degrees, `horizontalIntensity` in nT, and the `model`.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record magnetism.variation
 *
 * @example
 * magneticVariation({ latitude: degLatitude(54), longitude: degLongitude(-120), date: decimalYear(2028.5), elevation: mElevation(28000) }).zone // => 'normal'
 * magneticVariation({ latitude: degLatitude(54), longitude: degLongitude(-120), date: decimalYear(2028.5), elevation: mElevation(28000) }).horizontalIntensity // ≈ 15286.1 ± 0.1
 */
export function magneticVariation(x: MagneticVariationInputs): MagneticVariation {
  const { latitude, longitude, date }: Numbers<MagneticVariationInputs> = x;
  const elevation_m: number = x.elevation === undefined ? 0 : x.elevation;
  demand('latitude', latitude, magneticVariationDomain.latitude);
  demand('longitude', longitude, magneticVariationDomain.longitude);
  demand('date', date, magneticVariationDomain.date);
  demand('elevation', elevation_m, magneticVariationDomain.elevation);
  const field = horizontalField(latitude, canonical(longitude), elevation_m / 1000);
  const { northChange_nT, eastChange_nT } = field;
  const years = date - magneticModel.epoch;
  const north_nT = field.north_nT + years * northChange_nT;
  const east_nT = field.east_nT + years * eastChange_nT;
  const intensity_nT = Math.hypot(north_nT, east_nT);
  const declination = canonical((Math.atan2(east_nT, north_nT) * 180) / Math.PI);
  const change_radPerYear = (north_nT * eastChange_nT - east_nT * northChange_nT) / intensity_nT ** 2;
  const uncertainty = Math.sqrt(0.26 ** 2 + (5417 / intensity_nT) ** 2);
  const modelled = {
    annualChange: ((change_radPerYear * 180) / Math.PI) as VariationChange,
    uncertainty: uncertainty as Degrees,
    horizontalIntensity: intensity_nT as Nanotesla,
    model: magneticModel,
  };
  if (intensity_nT < blackoutBelow_nT) {
    return { zone: 'blackout', modelledDeclination: declination as Degrees, ...modelled };
  }
  const zone = intensity_nT < cautionBelow_nT ? 'caution' : 'normal';
  return { zone, variation: declination as Variation, ...modelled };
}

/** The same angle above −180° up to 180°; exact for −180° to 360°. */
function canonical(angle: number): number {
  if (angle > 180) return angle - 360;
  return angle === -180 ? 180 : angle;
}
