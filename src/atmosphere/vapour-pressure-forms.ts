import { type Celsius, type Domain, demand, type Hectopascals, type Numbers } from '../units/index.ts';
import { humidAirTemperature } from './standard-atmosphere-bounds.ts';

// Other formulas for the saturation vapour pressure over water, by name. From −20 °C to 40 °C they lie within 0.9 % of
// that of Bolton, which the library uses for humid air.

/** Inputs of the formulas for the saturation vapour pressure that are not Bolton's. */
export interface VapourPressureInputs {
  /** Temperature of the air; give the dew point for the vapour pressure of air that is not saturated. */
  readonly temperature: Celsius;
}

export const vapourPressureDomain = { temperature: humidAirTemperature } satisfies Domain<VapourPressureInputs>;

/**
 * Saturation vapour pressure over water after Tetens, with the constants of Murray.
 *
 * e = 6.1078·10^(7.5 t/(t + 237.3)): t the temperature in °C, e in hPa.
 *
 * @param x - `temperature` −40 °C to 50 °C.
 * @returns Pressure in hPa.
 * @throws {@link DomainError} when the temperature is not within its range.
 * @record atmosphere.saturation-vapour-pressure-tetens
 *
 * @example
 * saturationVapourPressureTetens({ temperature: degC(25) }) // ≈ 31.6749 ± 0.0001
 */
export function saturationVapourPressureTetens(x: VapourPressureInputs): Hectopascals {
  const t_degC = demandTemperature(x);
  return (6.1078 * 10 ** ((7.5 * t_degC) / (t_degC + 237.3))) as Hectopascals;
}

/**
 * Saturation vapour pressure over water in the form of the National Weather Service of the United States.
 *
 * e = 6.11·10^(7.5 t/(t + 237.7)): t the temperature in °C, e in hPa. Copies of the source disagree: some print 6.112.
 *
 * @param x - `temperature` −40 °C to 50 °C.
 * @returns Pressure in hPa.
 * @throws {@link DomainError} when the temperature is not within its range.
 * @record atmosphere.saturation-vapour-pressure-nws
 *
 * @example
 * saturationVapourPressureNws({ temperature: degC(25) }) // ≈ 31.607 ± 0.0001
 */
export function saturationVapourPressureNws(x: VapourPressureInputs): Hectopascals {
  const t_degC = demandTemperature(x);
  return (6.11 * 10 ** ((7.5 * t_degC) / (t_degC + 237.7))) as Hectopascals;
}

/**
 * Saturation vapour pressure over water after Buck, 1981.
 *
 * e = 6.1121 exp(17.502 t/(t + 240.97)): t the temperature in °C, e in hPa.
 *
 * @param x - `temperature` −40 °C to 50 °C.
 * @returns Pressure in hPa.
 * @throws {@link DomainError} when the temperature is not within its range.
 * @record atmosphere.saturation-vapour-pressure-buck-1981
 *
 * @example
 * saturationVapourPressureBuck1981({ temperature: degC(25) }) // ≈ 31.6703 ± 0.0001
 */
export function saturationVapourPressureBuck1981(x: VapourPressureInputs): Hectopascals {
  const t_degC = demandTemperature(x);
  return (6.1121 * Math.exp((17.502 * t_degC) / (t_degC + 240.97))) as Hectopascals;
}

/**
 * Saturation vapour pressure over water after Buck, 1996.
 *
 * e = 6.1121 exp((18.678 − t/234.5) t/(t + 257.14)): t the temperature in °C, e in hPa.
 *
 * @param x - `temperature` −40 °C to 50 °C.
 * @returns Pressure in hPa.
 * @throws {@link DomainError} when the temperature is not within its range.
 * @record atmosphere.saturation-vapour-pressure-buck-1996
 *
 * @example
 * saturationVapourPressureBuck1996({ temperature: degC(25) }) // ≈ 31.6853 ± 0.0001
 */
export function saturationVapourPressureBuck1996(x: VapourPressureInputs): Hectopascals {
  const t_degC = demandTemperature(x);
  return (6.1121 * Math.exp(((18.678 - t_degC / 234.5) * t_degC) / (t_degC + 257.14))) as Hectopascals;
}

function demandTemperature(x: VapourPressureInputs): number {
  demand('temperature', x.temperature, vapourPressureDomain.temperature);
  const { temperature }: Numbers<VapourPressureInputs> = x;
  return temperature;
}
