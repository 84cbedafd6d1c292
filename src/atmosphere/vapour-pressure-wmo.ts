import {
  type Celsius,
  type Domain,
  demand,
  type Hectopascals,
  inconsistent,
  type Numbers,
  type Percent,
  type Ratio,
} from '../units/index.ts';
import { epsilon } from './humid-air-constants.ts';
import { airPressure, humidAirTemperature } from './standard-atmosphere-bounds.ts';

// The formulas of the guide of the World Meteorological Organization, WMO-No. 8, 2008.

/** Inputs of {@link saturationVapourPressureWmo}. */
export interface SaturationVapourPressureWmoInputs {
  /** Temperature of the air; give the dew point for the vapour pressure of air that is not saturated. */
  readonly temperature: Celsius;
}

/** Inputs of {@link saturationVapourPressureOfMoistAirWmo}. */
export interface SaturationVapourPressureOfMoistAirWmoInputs extends SaturationVapourPressureWmoInputs {
  /** Pressure of the air. */
  readonly pressure: Hectopascals;
}

/** Inputs of {@link relativeHumidityWmo}. */
export interface RelativeHumidityWmoInputs extends SaturationVapourPressureOfMoistAirWmoInputs {
  /** Mass of vapour over mass of dry air. */
  readonly mixingRatio: Ratio;
}

export const saturationVapourPressureWmoDomain = {
  temperature: humidAirTemperature,
} satisfies Domain<SaturationVapourPressureWmoInputs>;

export const saturationVapourPressureOfMoistAirWmoDomain = {
  temperature: humidAirTemperature,
  pressure: airPressure,
} satisfies Domain<SaturationVapourPressureOfMoistAirWmoInputs>;

export const relativeHumidityWmoDomain = {
  temperature: humidAirTemperature,
  pressure: airPressure,
  mixingRatio: { unit: 'ratio', min: 0, max: 0.3, source: 'library range' },
} satisfies Domain<RelativeHumidityWmoInputs>;

/**
 * Saturation vapour pressure of pure water after WMO-No. 8.
 *
 * e = 6.112 exp(17.62 t/(t + 243.12)): t the temperature in °C, e in hPa.
 *
 * @param x - `temperature` −40 °C to 50 °C.
 * @returns Pressure in hPa.
 * @throws {@link DomainError} when the temperature is not within its range.
 * @record atmosphere.saturation-vapour-pressure-wmo
 *
 * @example
 * saturationVapourPressureWmo({ temperature: degC(25) }) // ≈ 31.6006 ± 0.0001
 */
export function saturationVapourPressureWmo(x: SaturationVapourPressureWmoInputs): Hectopascals {
  demand('temperature', x.temperature, saturationVapourPressureWmoDomain.temperature);
  return overWater_hPa(x.temperature) as Hectopascals;
}

/**
 * Saturation vapour pressure in air, which is slightly above that of pure water, after WMO-No. 8.
 *
 * e′ = f(p) e(t), f(p) = 1.0016 + 3.15e-6 p − 0.074/p: p the pressure of the air in hPa, e that of pure water in hPa.
 *
 * @param x - `temperature` −40 °C to 50 °C, `pressure` 226 hPa to 1220 hPa.
 * @returns Pressure in hPa.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.saturation-vapour-pressure-of-moist-air-wmo
 *
 * @example
 * saturationVapourPressureOfMoistAirWmo({ temperature: degC(15), pressure: hPa(1013.25) }) // ≈ 17.097 ± 0.0001
 */
export function saturationVapourPressureOfMoistAirWmo(x: SaturationVapourPressureOfMoistAirWmoInputs): Hectopascals {
  demand('pressure', x.pressure, saturationVapourPressureOfMoistAirWmoDomain.pressure);
  demand('temperature', x.temperature, saturationVapourPressureOfMoistAirWmoDomain.temperature);
  const { pressure: p_hPa }: Numbers<SaturationVapourPressureOfMoistAirWmoInputs> = x;
  const e_hPa = overWater_hPa(x.temperature);
  return ((1.0016 + 3.15e-6 * p_hPa - 0.074 / p_hPa) * e_hPa) as Hectopascals;
}

/**
 * Relative humidity from a mixing ratio, after WMO-No. 8.
 *
 * U = 100 e′/e′w, e′ = r p/(ε + r): r the mixing ratio, p the pressure in hPa, e′w the saturation vapour pressure in
 * moist air in hPa, ε = 0.62198.
 *
 * @param x - `temperature` −40 °C to 50 °C, `pressure` 226 hPa to 1220 hPa, `mixingRatio` 0 to 0.3.
 * @returns Relative humidity in percent.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the mixing
 * ratio is above that of saturated air.
 * @record atmosphere.relative-humidity-wmo
 *
 * @example
 * relativeHumidityWmo({ temperature: degC(10), pressure: hPa(1000), mixingRatio: ratio(0.001) }) // ≈ 13.0316 ± 0.0001
 */
export function relativeHumidityWmo(x: RelativeHumidityWmoInputs): Percent {
  demand('mixingRatio', x.mixingRatio, relativeHumidityWmoDomain.mixingRatio);
  const { mixingRatio: r, pressure: p_hPa }: Numbers<RelativeHumidityWmoInputs> = x;
  const ew_hPa: number = saturationVapourPressureOfMoistAirWmo(x);
  const e_hPa = (r * p_hPa) / (epsilon + r);
  if (e_hPa > ew_hPa) {
    const { unit, min } = relativeHumidityWmoDomain.mixingRatio;
    const max = (epsilon * ew_hPa) / (p_hPa - ew_hPa);
    const source = 'mixing ratio of saturated air';
    throw inconsistent('mixingRatio', r, unit, min, max, source);
  }
  return ((100 * e_hPa) / ew_hPa) as Percent;
}

function overWater_hPa(t_degC: number): number {
  return 6.112 * Math.exp((17.62 * t_degC) / (t_degC + 243.12));
}
