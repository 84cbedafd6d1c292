import { L_KPerFt, P0_hPa, pressureExponent, T0_K } from './standard-atmosphere-constants.ts';

/** Density ratio of dry air: σ = (p/P0) (T0/T). */
export function ratioOfDensity(p_hPa: number, T_K: number): number {
  return (p_hPa / P0_hPa) * (T0_K / T_K);
}

/** Altitude in ft at which the standard troposphere has a density ratio: H = (T0/L) (1 − σ^(1/(g0/(R L) − 1))). */
export function altitudeOfDensity_ft(sigma: number): number {
  return (T0_K / L_KPerFt) * (1 - sigma ** (1 / (pressureExponent - 1)));
}
