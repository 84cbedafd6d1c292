import {
  type Celsius,
  type Domain,
  demand,
  type Hectopascals,
  inconsistent,
  type KilogramsPerCubicMetre,
  type Numbers,
  type Percent,
  type Ratio,
} from '../units/index.ts';
import { ratioOfDensity } from './density-law.ts';
import { epsilon } from './humid-air-constants.ts';
import { airPressure, airTemperature, boltonTemperature, humidAirTemperature } from './standard-atmosphere-bounds.ts';
import { R_JPerKgK, Ti_K } from './standard-atmosphere-constants.ts';
import { vapourPressureOver_hPa } from './vapour-pressure.ts';

/** Inputs of {@link airDensity}. */
export interface AirDensityInputs {
  readonly pressure: Hectopascals;
  /** Temperature of the air. */
  readonly temperature: Celsius;
}

/** Inputs of {@link humidAirDensity}. */
export interface HumidAirDensityInputs extends AirDensityInputs {
  /** Dew point, at most the temperature. */
  readonly dewPoint: Celsius;
}

/** Inputs of {@link humidDensityRatio}. */
export interface HumidDensityRatioInputs extends AirDensityInputs {
  readonly relativeHumidity: Percent;
}

export const airDensityDomain = {
  pressure: airPressure,
  temperature: airTemperature,
} satisfies Domain<AirDensityInputs>;

export const humidAirDensityDomain = {
  pressure: airPressure,
  temperature: humidAirTemperature,
  dewPoint: boltonTemperature,
} satisfies Domain<HumidAirDensityInputs>;

export const humidDensityRatioDomain = {
  pressure: airPressure,
  temperature: humidAirTemperature,
  relativeHumidity: { unit: 'percent', min: 0, max: 100, source: 'dry to saturated' },
} satisfies Domain<HumidDensityRatioInputs>;

/**
 * Density of dry air.
 *
 * ρ = p/(R T): p the pressure in Pa, here given in hPa, T the temperature in K, here given in °C,
 * R = 287.05287 J/(kg K).
 *
 * @param x - `pressure` 226 hPa to 1220 hPa, `temperature` −80 °C to 60 °C.
 * @returns Density in kg/m³.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.air-density
 *
 * @example
 * airDensity({ pressure: hPa(1013.25), temperature: degC(15) }) // ≈ 1.225 ± 1e-7
 */
export function airDensity(x: AirDensityInputs): KilogramsPerCubicMetre {
  demand('pressure', x.pressure, airDensityDomain.pressure);
  demand('temperature', x.temperature, airDensityDomain.temperature);
  const { pressure: p_hPa, temperature: t_degC }: Numbers<AirDensityInputs> = x;
  return ((100 * p_hPa) / (R_JPerKgK * (t_degC + Ti_K))) as KilogramsPerCubicMetre;
}

/**
 * Density of humid air.
 *
 * ρ = (p − (1 − ε) e)/(R T), e = 6.112 exp(17.67 t_d/(t_d + 243.5)) after Bolton: p the pressure and e the vapour
 * pressure in Pa, here in hPa, T the temperature in K, here given in °C, t_d the dew point in °C, ε = 0.62198,
 * R = 287.05287 J/(kg K).
 *
 * @param x - `pressure` 226 hPa to 1220 hPa, `temperature` −40 °C to 50 °C, `dewPoint` −40 °C to 50 °C and at most the
 * temperature.
 * @returns Density in kg/m³.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the dew
 * point is above the temperature.
 * @record atmosphere.humid-air-density
 *
 * @example
 * humidAirDensity({ pressure: hPa(1013.25), temperature: degC(30), dewPoint: degC(25) }) // ≈ 1.15063 ± 0.00001
 */
export function humidAirDensity(x: HumidAirDensityInputs): KilogramsPerCubicMetre {
  demand('pressure', x.pressure, humidAirDensityDomain.pressure);
  demand('temperature', x.temperature, humidAirDensityDomain.temperature);
  demand('dewPoint', x.dewPoint, humidAirDensityDomain.dewPoint);
  const { pressure: p_hPa, temperature: t_degC, dewPoint: td_degC }: Numbers<HumidAirDensityInputs> = x;
  if (td_degC > t_degC) {
    const { unit, min } = humidAirDensityDomain.dewPoint;
    throw inconsistent('dewPoint', td_degC, unit, min, t_degC, 'a dew point is not above the temperature');
  }
  const e_hPa = vapourPressureOver_hPa(td_degC);
  const dryEquivalent_hPa = p_hPa - (1 - epsilon) * e_hPa;
  return ((100 * dryEquivalent_hPa) / (R_JPerKgK * (t_degC + Ti_K))) as KilogramsPerCubicMetre;
}

/**
 * Density of humid air as a ratio of the standard density at mean sea level, from its relative humidity.
 *
 * σ = ((p − (1 − ε) (U/100) e(t))/P0) (T0/T), e = 6.112 exp(17.67 t/(t + 243.5)) after Bolton: p the pressure in hPa,
 * U the relative humidity in percent, t the temperature in °C and T in K, ε = 0.62198, P0 = 1013.25 hPa, T0 = 288.15 K.
 *
 * @param x - `pressure` 226 hPa to 1220 hPa, `temperature` −40 °C to 50 °C, `relativeHumidity` 0 % to 100 %.
 * @returns Ratio, 1 at mean sea level in the standard atmosphere, which is dry.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.humid-density-ratio
 *
 * @example
 * humidDensityRatio({ pressure: hPa(1013.25), temperature: degC(15), relativeHumidity: percent(78) }) // ≈ 0.99504 ± 0.00001
 */
export function humidDensityRatio(x: HumidDensityRatioInputs): Ratio {
  demand('pressure', x.pressure, humidDensityRatioDomain.pressure);
  demand('temperature', x.temperature, humidDensityRatioDomain.temperature);
  demand('relativeHumidity', x.relativeHumidity, humidDensityRatioDomain.relativeHumidity);
  const { pressure: p_hPa, temperature: t_degC, relativeHumidity: u_percent }: Numbers<HumidDensityRatioInputs> = x;
  const es_hPa = vapourPressureOver_hPa(t_degC);
  const dryEquivalent_hPa = p_hPa - (1 - epsilon) * (u_percent / 100) * es_hPa;
  return ratioOfDensity(dryEquivalent_hPa, t_degC + Ti_K) as Ratio;
}
