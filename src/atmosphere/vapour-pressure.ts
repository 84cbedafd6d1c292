import { type Celsius, type Domain, demand, type Hectopascals, type Numbers } from '../units/index.ts';
import { boltonTemperature } from './standard-atmosphere-bounds.ts';

/** Inputs of {@link saturationVapourPressure}. */
export interface SaturationVapourPressureInputs {
  /** Temperature of the air; give the dew point for the vapour pressure of air that is not saturated. */
  readonly temperature: Celsius;
}

export const saturationVapourPressureDomain = {
  temperature: boltonTemperature,
} satisfies Domain<SaturationVapourPressureInputs>;

/**
 * Saturation vapour pressure over water.
 *
 * e = 6.112 exp(17.67 t/(t + 243.5)): t the temperature in °C, e in hPa.
 *
 * @param x - `temperature` −40 °C to 50 °C; the source states its accuracy of 0.3 % for −35 °C to 35 °C.
 * @returns Pressure in hPa.
 * @throws {@link DomainError} when the temperature is not within its range.
 * @record atmosphere.saturation-vapour-pressure
 *
 * @example
 * saturationVapourPressure({ temperature: degC(25) }) // ≈ 31.67429 ± 0.00001
 */
export function saturationVapourPressure(x: SaturationVapourPressureInputs): Hectopascals {
  demand('temperature', x.temperature, saturationVapourPressureDomain.temperature);
  const { temperature: t_degC }: Numbers<SaturationVapourPressureInputs> = x;
  return vapourPressureOver_hPa(t_degC) as Hectopascals;
}

/** The same on bare numbers, for formulas that have checked the temperature. */
export function vapourPressureOver_hPa(t_degC: number): number {
  return 6.112 * Math.exp((17.67 * t_degC) / (t_degC + 243.5));
}
