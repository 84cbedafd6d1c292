import { type Domain, demand, type Hectopascals, type Numbers, type PressureAltitude } from '../units/index.ts';
import { pressureOfAltitude_hPa } from './pressure-law.ts';
import { troposphere } from './standard-atmosphere-bounds.ts';

/** Inputs of {@link standardPressure}. */
export interface StandardPressureInputs {
  readonly pressureAltitude: PressureAltitude;
}

export const standardPressureDomain = { pressureAltitude: troposphere } satisfies Domain<StandardPressureInputs>;

/**
 * Static pressure at a pressure altitude in the troposphere.
 *
 * p = P0 (1 − L H/T0)^(g0/(R L)): H the pressure altitude in ft, P0 = 1013.25 hPa, T0 = 288.15 K, L = 0.0019812 K/ft,
 * g0/(R L) about 5.255880.
 *
 * @param x - `pressureAltitude` −5000 ft to 36 089 ft.
 * @returns Pressure in hPa.
 * @throws {@link DomainError} when the pressure altitude is not within its range.
 * @record atmosphere.standard-pressure
 *
 * @example
 * standardPressure({ pressureAltitude: ftPA(5000) }) // ≈ 843.0726 ± 0.0001
 */
export function standardPressure(x: StandardPressureInputs): Hectopascals {
  demand('pressureAltitude', x.pressureAltitude, standardPressureDomain.pressureAltitude);
  const { pressureAltitude: altitude_ft }: Numbers<StandardPressureInputs> = x;
  return pressureOfAltitude_hPa(altitude_ft) as Hectopascals;
}
