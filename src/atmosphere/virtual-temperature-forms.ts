import { type Celsius, type Domain, demand, type Numbers, type Ratio } from '../units/index.ts';
import { epsilon } from './humid-air-constants.ts';
import { airTemperature } from './standard-atmosphere-bounds.ts';
import { Ti_K } from './standard-atmosphere-constants.ts';

/** Inputs of {@link virtualTemperatureFromSpecificHumidity}. */
export interface VirtualTemperatureFromSpecificHumidityInputs {
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
  /** Mass of vapour over mass of humid air. */
  readonly specificHumidity: Ratio;
}

/** Inputs of {@link virtualTemperatureFromMixingRatio}. */
export interface VirtualTemperatureFromMixingRatioInputs {
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
  /** Mass of vapour over mass of dry air. */
  readonly mixingRatio: Ratio;
}

export const virtualTemperatureFromSpecificHumidityDomain = {
  temperature: airTemperature,
  specificHumidity: { unit: 'ratio', min: 0, max: 0.1, source: 'library range' },
} satisfies Domain<VirtualTemperatureFromSpecificHumidityInputs>;

export const virtualTemperatureFromMixingRatioDomain = {
  temperature: airTemperature,
  mixingRatio: { unit: 'ratio', min: 0, max: 0.1, source: 'library range' },
} satisfies Domain<VirtualTemperatureFromMixingRatioInputs>;

/**
 * Virtual temperature from the specific humidity.
 *
 * Tv = T (1 + (1/ε − 1) q): T the temperature in K, here given in °C, q the specific humidity, ε = 0.62198.
 *
 * @param x - `temperature` −80 °C to 60 °C, `specificHumidity` 0 to 0.1.
 * @returns Temperature in °C.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.virtual-temperature-from-specific-humidity
 *
 * @example
 * virtualTemperatureFromSpecificHumidity({ temperature: degC(20), specificHumidity: ratio(0.01) }) // ≈ 21.7817 ± 0.0001
 */
export function virtualTemperatureFromSpecificHumidity(x: VirtualTemperatureFromSpecificHumidityInputs): Celsius {
  demand('temperature', x.temperature, virtualTemperatureFromSpecificHumidityDomain.temperature);
  demand('specificHumidity', x.specificHumidity, virtualTemperatureFromSpecificHumidityDomain.specificHumidity);
  const { temperature: t_degC, specificHumidity: q }: Numbers<VirtualTemperatureFromSpecificHumidityInputs> = x;
  const Tv_K = (t_degC + Ti_K) * (1 + (1 / epsilon - 1) * q);
  return (Tv_K - Ti_K) as Celsius;
}

/**
 * Virtual temperature from the mixing ratio.
 *
 * Tv = T (1 + r/ε)/(1 + r): T the temperature in K, here given in °C, r the mixing ratio, ε = 0.62198.
 *
 * @param x - `temperature` −80 °C to 60 °C, `mixingRatio` 0 to 0.1.
 * @returns Temperature in °C.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.virtual-temperature-from-mixing-ratio
 *
 * @example
 * virtualTemperatureFromMixingRatio({ temperature: degC(20), mixingRatio: ratio(0.01) }) // ≈ 21.7641 ± 0.0001
 */
export function virtualTemperatureFromMixingRatio(x: VirtualTemperatureFromMixingRatioInputs): Celsius {
  demand('temperature', x.temperature, virtualTemperatureFromMixingRatioDomain.temperature);
  demand('mixingRatio', x.mixingRatio, virtualTemperatureFromMixingRatioDomain.mixingRatio);
  const { temperature: t_degC, mixingRatio: r }: Numbers<VirtualTemperatureFromMixingRatioInputs> = x;
  const Tv_K = ((t_degC + Ti_K) * (1 + r / epsilon)) / (1 + r);
  return (Tv_K - Ti_K) as Celsius;
}
