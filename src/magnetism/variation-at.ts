import { type DecimalYear, demand } from '../units/index.ts';
import { type MagneticVariation, variationOn } from './declination.ts';
import { fieldAt, type MagneticSite, magneticDateDomain } from './site.ts';

/** The variation at one place on any date of the model's validity. */
export type VariationOnDate = (x: { readonly date: DecimalYear }) => MagneticVariation;

/**
 * Magnetic variation at one place for many dates: the model is evaluated once, and each date costs as much as an
 * arctangent.
 *
 * X = X₀ + (t − t₀) Ẋ and Y = Y₀ + (t − t₀) Ẏ exactly, because every coefficient of the model is linear in time; the
 * rest is that of {@link magneticVariation}, which gives the very same answer.
 *
 * @param site - `latitude` between the poles, which are refused, north positive; `longitude` −180° to 360°, east
 * positive; `elevation` −1000 m to 850 000 m, 0 m if not given.
 * @returns A function of `date`, 2025.0 to before 2030.0, with the result of {@link magneticVariation}.
 * @throws {@link DomainError} when a parameter is not within its range; the function it returns, for the date.
 * @record magnetism.variation
 *
 * @example
 * const variation = variationAt({ latitude: degLatitude(54), longitude: degLongitude(-120), elevation: mElevation(28000) });
 * variation({ date: decimalYear(2028.5) }).horizontalIntensity // ≈ 15286.1 ± 0.1
 * variation({ date: decimalYear(2028.5) }).annualChange // ≈ -0.147623 ± 0.000001
 * variation({ date: decimalYear(2030) }) // throws date: 2030 year
 */
export function variationAt(site: MagneticSite): VariationOnDate {
  const field = fieldAt(site);
  return ({ date }) => {
    demand('date', date, magneticDateDomain.date);
    return variationOn(field, date);
  };
}
