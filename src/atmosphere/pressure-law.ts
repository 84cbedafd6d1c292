import { L_KPerFt, P0_hPa, pressureExponent, T0_K } from './standard-atmosphere-constants.ts';

/** Pressure in hPa of the standard troposphere at an altitude in ft: p = P0 (1 − L H/T0)^(g0/(R L)). */
export function pressureOfAltitude_hPa(H_ft: number): number {
  return P0_hPa * (1 - (L_KPerFt * H_ft) / T0_K) ** pressureExponent;
}

/** Altitude in ft at which the standard troposphere has a pressure: H = (T0/L) (1 − (p/P0)^(R L/g0)). */
export function altitudeOfPressure_ft(p_hPa: number): number {
  return (T0_K / L_KPerFt) * (1 - (p_hPa / P0_hPa) ** (1 / pressureExponent));
}

/** Pressure in hPa of the standard troposphere so many feet lower (negative: higher) than where it is known. */
export function pressureLower_hPa(p_hPa: number, lower_ft: number): number {
  return P0_hPa * ((p_hPa / P0_hPa) ** (1 / pressureExponent) + (L_KPerFt * lower_ft) / T0_K) ** pressureExponent;
}
