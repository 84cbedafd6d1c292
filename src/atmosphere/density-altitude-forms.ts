import {
  type CelsiusDifference,
  type DensityAltitude,
  type Domain,
  demand,
  type InchesOfMercury,
  type Numbers,
  type PressureAltitude,
  type Rankine,
} from '../units/index.ts';
import { lowerTroposphere } from './standard-atmosphere-bounds.ts';
import { L_KPerFt, pressureExponent } from './standard-atmosphere-constants.ts';

// Other forms of the density altitude in use, beside densityAltitude and humidDensityAltitude, which are exact.

/** Inputs of {@link densityAltitudeNws}. */
export interface DensityAltitudeNwsInputs {
  /** Pressure at the point itself. */
  readonly stationPressure: InchesOfMercury;
  /** Virtual temperature; the temperature itself for dry air. */
  readonly virtualTemperature: Rankine;
}

/** Inputs of {@link densityAltitudeNearStandard}. */
export interface DensityAltitudeNearStandardInputs {
  readonly pressureAltitude: PressureAltitude;
  /** How much warmer than standard the air is. */
  readonly isaDeviation: CelsiusDifference;
}

export const densityAltitudeNwsDomain = {
  stationPressure: { unit: 'inHg', min: 13.8, max: 35.4, source: 'library range' },
  virtualTemperature: { unit: 'degR', min: 400, max: 620, source: 'library range' },
} satisfies Domain<DensityAltitudeNwsInputs>;

export const densityAltitudeNearStandardDomain = {
  pressureAltitude: lowerTroposphere,
  isaDeviation: { unit: 'degCDifference', min: -60, max: 60, source: 'library range' },
} satisfies Domain<DensityAltitudeNearStandardInputs>;

/**
 * Density altitude in the form of the National Weather Service of the United States.
 *
 * DA = 145366 (1 − (17.326 P/Tv)^0.235): P the pressure at the point in inHg, Tv the virtual temperature in °R. Its
 * rounded constants give 16.7 ft at mean sea level in the standard atmosphere, where the exact form gives 0.
 *
 * @param x - `stationPressure` 13.8 inHg to 35.4 inHg, `virtualTemperature` 400 °R to 620 °R.
 * @returns Density altitude in ft.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.density-altitude-nws
 *
 * @example
 * densityAltitudeNws({ stationPressure: inHg(29.9213), virtualTemperature: degR(518.67) }) // ≈ 16.75 ± 0.05
 */
export function densityAltitudeNws(x: DensityAltitudeNwsInputs): DensityAltitude {
  demand('stationPressure', x.stationPressure, densityAltitudeNwsDomain.stationPressure);
  demand('virtualTemperature', x.virtualTemperature, densityAltitudeNwsDomain.virtualTemperature);
  const { stationPressure: p_inHg, virtualTemperature: Tv_degR }: Numbers<DensityAltitudeNwsInputs> = x;
  return (145366 * (1 - ((17.326 * p_inHg) / Tv_degR) ** 0.235)) as DensityAltitude;
}

/**
 * Density altitude near standard temperature: the exact form to the first order in the deviation.
 *
 * DA = PA + ΔT/(L (g0/(R L) − 1)): PA the pressure altitude in ft, ΔT the deviation from standard in °C,
 * L = 0.0019812 K/ft; 118.60 ft for each degree at every pressure altitude.
 *
 * @param x - `pressureAltitude` −5000 ft to 20 000 ft, `isaDeviation` −60 °C to 60 °C.
 * @returns Density altitude in ft; the exact one is lower, warm or cold.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.density-altitude-near-standard
 *
 * @example
 * densityAltitudeNearStandard({ pressureAltitude: ftPA(5000), isaDeviation: degCDifference(20) }) // ≈ 7372 ± 0.1
 */
export function densityAltitudeNearStandard(x: DensityAltitudeNearStandardInputs): DensityAltitude {
  demand('pressureAltitude', x.pressureAltitude, densityAltitudeNearStandardDomain.pressureAltitude);
  demand('isaDeviation', x.isaDeviation, densityAltitudeNearStandardDomain.isaDeviation);
  const { pressureAltitude: altitude_ft, isaDeviation: deviation_degC }: Numbers<DensityAltitudeNearStandardInputs> = x;
  return (altitude_ft + deviation_degC / (L_KPerFt * (pressureExponent - 1))) as DensityAltitude;
}
