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
  return pressureOfRoot_hPa(rootLower(rootOfPressure(p_hPa), lower_ft));
}

/** The root (p/P0)^(R L/g0) of a pressure, which rises evenly on the way down. */
export function rootOfPressure(p_hPa: number): number {
  return (p_hPa / P0_hPa) ** (1 / pressureExponent);
}

/** The root so many feet lower (negative: higher) than where it is known. */
export function rootLower(root: number, lower_ft: number): number {
  return root + (L_KPerFt * lower_ft) / T0_K;
}

/** The pressure in hPa that has the root. */
export function pressureOfRoot_hPa(root: number): number {
  return P0_hPa * root ** pressureExponent;
}
