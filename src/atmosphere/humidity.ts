import { type Celsius, type Domain, demand, inconsistent, type Numbers, type Percent } from '../units/index.ts';
import { boltonTemperature, humidAirTemperature } from './standard-atmosphere-bounds.ts';
import { vapourPressureOver_hPa } from './vapour-pressure.ts';

/** Inputs of {@link relativeHumidity}. */
export interface RelativeHumidityInputs {
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
  /** Dew point, at most the temperature. */
  readonly dewPoint: Celsius;
}

/** Inputs of {@link dewPoint}. */
export interface DewPointInputs {
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
  readonly relativeHumidity: Percent;
}

export const relativeHumidityDomain = {
  temperature: humidAirTemperature,
  dewPoint: boltonTemperature,
} satisfies Domain<RelativeHumidityInputs>;

export const dewPointDomain = {
  temperature: humidAirTemperature,
  relativeHumidity: { unit: 'percent', min: 1, max: 100, source: 'library range' },
} satisfies Domain<DewPointInputs>;

/**
 * Relative humidity from temperature and dew point.
 *
 * U = 100 e(t_d)/e(t), e = 6.112 exp(17.67 t/(t + 243.5)) after Bolton: t the temperature and t_d the dew point in °C.
 *
 * @param x - `temperature` −40 °C to 50 °C, `dewPoint` −40 °C to 50 °C and at most the temperature.
 * @returns Relative humidity in percent.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the dew
 * point is above the temperature.
 * @record atmosphere.relative-humidity
 *
 * @example
 * relativeHumidity({ temperature: degC(30), dewPoint: degC(15) }) // ≈ 40.137 ± 0.001
 */
export function relativeHumidity(x: RelativeHumidityInputs): Percent {
  demand('temperature', x.temperature, relativeHumidityDomain.temperature);
  demand('dewPoint', x.dewPoint, relativeHumidityDomain.dewPoint);
  const { temperature, dewPoint: td_degC }: Numbers<RelativeHumidityInputs> = x;
  if (td_degC > temperature) {
    const { unit, min } = relativeHumidityDomain.dewPoint;
    throw inconsistent('dewPoint', td_degC, unit, min, temperature, 'a dew point is not above the temperature');
  }
  const e_hPa = vapourPressureOver_hPa(td_degC);
  const es_hPa = vapourPressureOver_hPa(temperature);
  return ((100 * e_hPa) / es_hPa) as Percent;
}

/**
 * Dew point from temperature and relative humidity.
 *
 * t_d = 243.5 w/(17.67 − w), w = ln(e/6.112), e = (U/100) 6.112 exp(17.67 t/(t + 243.5)), the inverse of the formula of
 * Bolton: t the temperature in °C, U the relative humidity in percent.
 *
 * @param x - `temperature` −40 °C to 50 °C, `relativeHumidity` 1 % to 100 %.
 * @returns Dew point in °C.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the dew
 * point would be below −40 °C.
 * @record atmosphere.dew-point
 *
 * @example
 * dewPoint({ temperature: degC(30), relativeHumidity: percent(40) }) // ≈ 14.95 ± 0.01
 */
export function dewPoint(x: DewPointInputs): Celsius {
  demand('temperature', x.temperature, dewPointDomain.temperature);
  demand('relativeHumidity', x.relativeHumidity, dewPointDomain.relativeHumidity);
  const { temperature: t_degC, relativeHumidity: u_percent }: Numbers<DewPointInputs> = x;
  const w = Math.log(u_percent / 100) + (17.67 * t_degC) / (t_degC + 243.5);
  const td_degC = (243.5 * w) / (17.67 - w);
  if (td_degC < boltonTemperature.min - 1e-9) {
    const { unit, max } = dewPointDomain.relativeHumidity;
    const driest = relativeHumidity({ temperature: x.temperature, dewPoint: boltonTemperature.min as Celsius });
    throw inconsistent('relativeHumidity', u_percent, unit, driest, max, 'dew point of -40 degC and above');
  }
  // The last bit must not lift the dew point of saturated air above its temperature, nor take it below the range.
  return Math.max(boltonTemperature.min, Math.min(t_degC, td_degC)) as Celsius;
}
