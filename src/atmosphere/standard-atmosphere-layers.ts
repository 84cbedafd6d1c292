import { g0_mPerS2, type Layer, layers, P0_hPa, R_JPerKgK } from './standard-atmosphere-constants.ts';

/** Temperature and pressure of the standard atmosphere at a geopotential altitude. */
export function standardAir(H_m: number): { T_K: number; p_hPa: number } {
  const { layer, p_hPa } = topmost((base) => H_m >= base.H_m);
  return { T_K: temperatureIn(layer, H_m), p_hPa: p_hPa * pressureRatioIn(layer, H_m) };
}

/** Geopotential altitude in m at which the standard atmosphere has a pressure. */
export function altitudeOfPressure_m(p_hPa: number): number {
  const { layer, p_hPa: pb_hPa } = topmost((_base, pBase_hPa) => p_hPa <= pBase_hPa);
  const { H_m, T_K, beta_KPerM } = layer;
  if (beta_KPerM === 0) return H_m - ((R_JPerKgK * T_K) / g0_mPerS2) * Math.log(p_hPa / pb_hPa);
  return H_m + (T_K / beta_KPerM) * ((p_hPa / pb_hPa) ** (-(beta_KPerM * R_JPerKgK) / g0_mPerS2) - 1);
}

/** Geopotential altitude in m at which the standard atmosphere has a density. */
export function altitudeOfDensity_m(rho_kgPerM3: number): number {
  const { layer, p_hPa: pb_hPa } = topmost((base, pBase_hPa) => rho_kgPerM3 <= density(pBase_hPa, base.T_K));
  const { H_m, T_K, beta_KPerM } = layer;
  const ratio = rho_kgPerM3 / density(pb_hPa, T_K);
  if (beta_KPerM === 0) return H_m - ((R_JPerKgK * T_K) / g0_mPerS2) * Math.log(ratio);
  return H_m + (T_K / beta_KPerM) * (ratio ** (-1 / (g0_mPerS2 / (beta_KPerM * R_JPerKgK) + 1)) - 1);
}

/** Density of dry air in kg/m³: ρ = p/(R T). */
export function density(p_hPa: number, T_K: number): number {
  return (100 * p_hPa) / (R_JPerKgK * T_K);
}

/** The highest layer whose base is reached, with the pressure at that base; the lowest layer where none is. */
function topmost(isReached: (base: Layer, p_hPa: number) => boolean): { layer: Layer; p_hPa: number } {
  let [layer] = layers;
  let p_hPa = P0_hPa;
  for (const next of layers.slice(1)) {
    const pNext_hPa = p_hPa * pressureRatioIn(layer, next.H_m);
    if (!isReached(next, pNext_hPa)) break;
    layer = next;
    p_hPa = pNext_hPa;
  }
  return { layer, p_hPa };
}

function temperatureIn(layer: Layer, H_m: number): number {
  return layer.T_K + layer.beta_KPerM * (H_m - layer.H_m);
}

/** Pressure at an altitude over that at the base of its layer. */
function pressureRatioIn(layer: Layer, H_m: number): number {
  const { T_K, beta_KPerM } = layer;
  const rise_m = H_m - layer.H_m;
  if (beta_KPerM === 0) return Math.exp((-g0_mPerS2 * rise_m) / (R_JPerKgK * T_K));
  return (1 + (beta_KPerM * rise_m) / T_K) ** (-g0_mPerS2 / (beta_KPerM * R_JPerKgK));
}
