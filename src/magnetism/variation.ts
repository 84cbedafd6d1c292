import { type DecimalYear, type Domain, demand } from '../units/index.ts';
import { type MagneticVariation, variationOn } from './declination.ts';
import { fieldAt, type MagneticSite, magneticDateDomain, magneticSiteDomain } from './site.ts';

/** Inputs of {@link magneticVariation}. */
export interface MagneticVariationInputs extends MagneticSite {
  /** The date for which the variation is wanted; there is no default. */
  readonly date: DecimalYear;
}

export const magneticVariationDomain = {
  ...magneticSiteDomain,
  ...magneticDateDomain,
} satisfies Domain<MagneticVariationInputs>;

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
 * east per year, `uncertainty` in degrees, `horizontalIntensity` in nT, the `date` and the `model`.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record magnetism.variation
 *
 * @example
 * magneticVariation({ latitude: degLatitude(54), longitude: degLongitude(-120), date: decimalYear(2028.5), elevation: mElevation(28000) }).zone // => 'normal'
 * magneticVariation({ latitude: degLatitude(54), longitude: degLongitude(-120), date: decimalYear(2028.5), elevation: mElevation(28000) }).horizontalIntensity // ≈ 15286.1 ± 0.1
 */
export function magneticVariation(x: MagneticVariationInputs): MagneticVariation {
  demand('date', x.date, magneticDateDomain.date);
  return variationOn(fieldAt(x), x.date);
}
