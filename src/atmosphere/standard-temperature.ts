import {
  type Celsius,
  type CelsiusDifference,
  type Domain,
  demand,
  type Numbers,
  type PressureAltitude,
} from '../units/index.ts';
import { airTemperature, troposphere } from './standard-atmosphere-bounds.ts';
import { L_KPerFt, T0_K, Ti_K } from './standard-atmosphere-constants.ts';

/** Inputs of {@link standardTemperature}. */
export interface StandardTemperatureInputs {
  readonly pressureAltitude: PressureAltitude;
}

/** Inputs of {@link isaDeviation}. */
export interface IsaDeviationInputs {
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
  readonly pressureAltitude: PressureAltitude;
}

export const standardTemperatureDomain = { pressureAltitude: troposphere } satisfies Domain<StandardTemperatureInputs>;

export const isaDeviationDomain = {
  temperature: airTemperature,
  pressureAltitude: troposphere,
} satisfies Domain<IsaDeviationInputs>;

/**
 * Temperature of the ICAO standard atmosphere at a pressure altitude in the troposphere.
 *
 * T = T0 − L H: H the pressure altitude in ft, T0 = 15 °C, L = 0.0019812 °C/ft.
 *
 * @param x - `pressureAltitude` −5000 ft to 36 089 ft.
 * @returns Temperature in °C.
 * @throws {@link DomainError} when the pressure altitude is not within its range.
 * @record atmosphere.standard-temperature
 *
 * @example
 * standardTemperature({ pressureAltitude: ftPA(5000) }) // ≈ 5.094 ± 1e-9
 */
export function standardTemperature(x: StandardTemperatureInputs): Celsius {
  demand('pressureAltitude', x.pressureAltitude, standardTemperatureDomain.pressureAltitude);
  const { pressureAltitude: altitude_ft }: Numbers<StandardTemperatureInputs> = x;
  const T_K = T0_K - L_KPerFt * altitude_ft;
  return (T_K - Ti_K) as Celsius;
}

/**
 * How much warmer than standard the air is at its pressure altitude.
 *
 * ΔT = T − T_ISA, T_ISA = T0 − L H: T the outside air temperature in °C, H the pressure altitude in ft, T0 = 15 °C,
 * L = 0.0019812 °C/ft.
 *
 * @param x - `temperature` −80 °C to 60 °C, `pressureAltitude` −5000 ft to 36 089 ft.
 * @returns Difference in °C, positive when the air is warmer than standard.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.isa-deviation
 *
 * @example
 * isaDeviation({ temperature: degC(25), pressureAltitude: ftPA(5000) }) // ≈ 19.906 ± 1e-9
 */
export function isaDeviation(x: IsaDeviationInputs): CelsiusDifference {
  demand('temperature', x.temperature, isaDeviationDomain.temperature);
  demand('pressureAltitude', x.pressureAltitude, isaDeviationDomain.pressureAltitude);
  const { temperature: t_degC, pressureAltitude: altitude_ft }: Numbers<IsaDeviationInputs> = x;
  const standard_degC = T0_K - L_KPerFt * altitude_ft - Ti_K;
  return (t_degC - standard_degC) as CelsiusDifference;
}
