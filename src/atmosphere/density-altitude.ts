import {
  type Celsius,
  type DensityAltitude,
  type Domain,
  demand,
  type Numbers,
  type PressureAltitude,
  type Ratio,
} from '../units/index.ts';
import { altitudeOfDensity_ft, ratioOfDensity } from './density-law.ts';
import { pressureOfAltitude_hPa } from './pressure-law.ts';
import { airTemperature, lowerTroposphere, troposphere } from './standard-atmosphere-bounds.ts';
import { Ti_K } from './standard-atmosphere-constants.ts';

/** Inputs of {@link densityRatio}. */
export interface DensityRatioInputs {
  readonly pressureAltitude: PressureAltitude;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

/** Inputs of {@link densityAltitude}. */
export interface DensityAltitudeInputs {
  readonly pressureAltitude: PressureAltitude;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

export const densityRatioDomain = {
  pressureAltitude: troposphere,
  temperature: airTemperature,
} satisfies Domain<DensityRatioInputs>;

// Narrower than the troposphere, so that the result lies within it at both ends of the temperature.
export const densityAltitudeDomain = {
  pressureAltitude: lowerTroposphere,
  temperature: { unit: 'degC', min: -50, max: 60, source: 'library range' },
} satisfies Domain<DensityAltitudeInputs>;

/**
 * Density of dry air as a ratio of the standard density at mean sea level.
 *
 * σ = (p/P0) (T0/T), p = P0 (1 − L H/T0)^(g0/(R L)): H the pressure altitude in ft, T the outside air temperature in
 * K, here given in °C, P0 = 1013.25 hPa, T0 = 288.15 K, L = 0.0019812 K/ft.
 *
 * @param x - `pressureAltitude` −5000 ft to 36 089 ft, `temperature` −80 °C to 60 °C.
 * @returns Ratio, 1 at mean sea level in the standard atmosphere.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.density-ratio
 *
 * @example
 * densityRatio({ pressureAltitude: ftPA(0), temperature: degC(15) }) // => 1
 * densityRatio({ pressureAltitude: ftPA(5000), temperature: degC(30) }) // ≈ 0.790878 ± 0.000001
 */
export function densityRatio(x: DensityRatioInputs): Ratio {
  demand('pressureAltitude', x.pressureAltitude, densityRatioDomain.pressureAltitude);
  demand('temperature', x.temperature, densityRatioDomain.temperature);
  const { pressureAltitude: altitude_ft, temperature: t_degC }: Numbers<DensityRatioInputs> = x;
  const p_hPa = pressureOfAltitude_hPa(altitude_ft);
  const T_K = t_degC + Ti_K;
  return ratioOfDensity(p_hPa, T_K) as Ratio;
}

/**
 * Density altitude of dry air: the altitude at which the standard atmosphere is as thin.
 *
 * DA = (T0/L) (1 − σ^(1/(g0/(R L) − 1))), σ = (p/P0) (T0/T): p the pressure at the pressure altitude, T the outside
 * air temperature in K, here given in °C, P0 = 1013.25 hPa, T0 = 288.15 K, T0/L about 145 442.156 ft, the exponent
 * about 0.234969.
 *
 * @param x - `pressureAltitude` −5000 ft to 20 000 ft, `temperature` −50 °C to 60 °C.
 * @returns Density altitude in ft.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.density-altitude
 *
 * @example
 * densityAltitude({ pressureAltitude: ftPA(5000), temperature: degC(30) }) // ≈ 7800.7 ± 0.1
 */
export function densityAltitude(x: DensityAltitudeInputs): DensityAltitude {
  demand('pressureAltitude', x.pressureAltitude, densityAltitudeDomain.pressureAltitude);
  demand('temperature', x.temperature, densityAltitudeDomain.temperature);
  const { pressureAltitude: altitude_ft, temperature: t_degC }: Numbers<DensityAltitudeInputs> = x;
  const sigma = ratioOfDensity(pressureOfAltitude_hPa(altitude_ft), t_degC + Ti_K);
  return altitudeOfDensity_ft(sigma) as DensityAltitude;
}
