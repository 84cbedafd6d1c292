import {
  type Celsius,
  type DensityAltitude,
  type Domain,
  demand,
  inconsistent,
  type Numbers,
  type PressureAltitude,
} from '../units/index.ts';
import { altitudeOfDensity_ft, ratioOfDensity } from './density-law.ts';
import { epsilon } from './humid-air-constants.ts';
import { pressureOfAltitude_hPa } from './pressure-law.ts';
import { boltonTemperature, humidAirTemperature, lowerTroposphere } from './standard-atmosphere-bounds.ts';
import { Ti_K } from './standard-atmosphere-constants.ts';
import { vapourPressureOver_hPa } from './vapour-pressure.ts';

/** Inputs of {@link virtualTemperature} and {@link humidDensityAltitude}. */
export interface HumidAirInputs {
  readonly pressureAltitude: PressureAltitude;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
  /** Dew point, at most the temperature. */
  readonly dewPoint: Celsius;
}

export const humidAirDomain = {
  pressureAltitude: lowerTroposphere,
  temperature: humidAirTemperature,
  dewPoint: boltonTemperature,
} satisfies Domain<HumidAirInputs>;

/**
 * Virtual temperature: the temperature at which dry air would be as thin as this humid air.
 *
 * Tv = T/(1 − (1 − ε) e/p), e = 6.112 exp(17.67 t_d/(t_d + 243.5)): T the outside air temperature in K, here given in
 * °C, t_d the dew point in °C, p the pressure in hPa at the pressure altitude, ε = 0.62198.
 *
 * @param x - `pressureAltitude` −5000 ft to 20 000 ft, `temperature` −40 °C to 50 °C, `dewPoint` −40 °C to 50 °C and at
 * most the temperature.
 * @returns Temperature in °C.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the dew
 * point is above the temperature.
 * @record atmosphere.virtual-temperature
 *
 * @example
 * virtualTemperature({ pressureAltitude: ftPA(5000), temperature: degC(30), dewPoint: degC(15) }) // ≈ 32.334 ± 0.001
 */
export function virtualTemperature(x: HumidAirInputs): Celsius {
  demandHumidAir(x);
  const { pressureAltitude: altitude_ft, temperature: t_degC, dewPoint: td_degC }: Numbers<HumidAirInputs> = x;
  const p_hPa = pressureOfAltitude_hPa(altitude_ft);
  return virtual_degC(t_degC, vapourPressureOver_hPa(td_degC), p_hPa) as Celsius;
}

/**
 * Density altitude of humid air: that of dry air at the virtual temperature.
 *
 * DA = (T0/L) (1 − σ^(1/(g0/(R L) − 1))), σ = (p/P0) (T0/Tv), Tv = T/(1 − (1 − ε) e/p): T the outside air temperature
 * in K, here given in °C, e the vapour pressure in hPa at the dew point, p the pressure in hPa at the pressure
 * altitude, P0 = 1013.25 hPa, T0 = 288.15 K, T0/L about 145 442.156 ft, ε = 0.62198.
 *
 * @param x - `pressureAltitude` −5000 ft to 20 000 ft, `temperature` −40 °C to 50 °C, `dewPoint` −40 °C to 50 °C and at
 * most the temperature.
 * @returns Density altitude in ft.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the dew
 * point is above the temperature.
 * @record atmosphere.humid-density-altitude
 *
 * @example
 * humidDensityAltitude({ pressureAltitude: ftPA(5000), temperature: degC(30), dewPoint: degC(15) }) // ≈ 8048.6 ± 0.1
 */
export function humidDensityAltitude(x: HumidAirInputs): DensityAltitude {
  demandHumidAir(x);
  const { pressureAltitude: altitude_ft, temperature: t_degC, dewPoint: td_degC }: Numbers<HumidAirInputs> = x;
  const p_hPa = pressureOfAltitude_hPa(altitude_ft);
  const tv_degC = virtual_degC(t_degC, vapourPressureOver_hPa(td_degC), p_hPa);
  const sigma = ratioOfDensity(p_hPa, tv_degC + Ti_K);
  return altitudeOfDensity_ft(sigma) as DensityAltitude;
}

function virtual_degC(t_degC: number, e_hPa: number, p_hPa: number): number {
  const T_K = t_degC + Ti_K;
  const Tv_K = T_K / (1 - (1 - epsilon) * (e_hPa / p_hPa));
  return Tv_K - Ti_K;
}

function demandHumidAir(x: HumidAirInputs): void {
  demand('pressureAltitude', x.pressureAltitude, humidAirDomain.pressureAltitude);
  demand('temperature', x.temperature, humidAirDomain.temperature);
  demand('dewPoint', x.dewPoint, humidAirDomain.dewPoint);
  const { temperature, dewPoint }: Numbers<HumidAirInputs> = x;
  if (dewPoint > temperature) {
    const { unit, min } = humidAirDomain.dewPoint;
    throw inconsistent('dewPoint', dewPoint, unit, min, temperature, 'a dew point is not above the temperature');
  }
}
