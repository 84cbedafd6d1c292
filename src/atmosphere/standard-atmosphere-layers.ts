import { g0_mPerS2, type Layer, layers, R_JPerKgK } from './standard-atmosphere-constants.ts';

/** The layer in which a geopotential altitude lies. */
export function layerAt(altitude_m: number): Layer {
  let layer: Layer = layers[0];
  for (let i = 1; i < layers.length; i += 1) {
    const next = layers[i] as Layer;
    if (altitude_m < next.H_m) break;
    layer = next;
  }
  return layer;
}

/** Geopotential altitude in m at which the standard atmosphere has a pressure. */
export function altitudeOfPressure_m(p_hPa: number): number {
  let layer: Layer = layers[0];
  for (let i = 1; i < layers.length; i += 1) {
    const next = layers[i] as Layer;
    if (p_hPa > next.p_hPa) break;
    layer = next;
  }
  const { H_m, T_K, p_hPa: pb_hPa, beta_KPerM } = layer;
  if (beta_KPerM === 0) return H_m - ((R_JPerKgK * T_K) / g0_mPerS2) * Math.log(p_hPa / pb_hPa);
  return H_m + (T_K / beta_KPerM) * ((p_hPa / pb_hPa) ** (-(beta_KPerM * R_JPerKgK) / g0_mPerS2) - 1);
}

/** Geopotential altitude in m at which the standard atmosphere has a density. */
export function altitudeOfDensity_m(rho_kgPerM3: number): number {
  let layer: Layer = layers[0];
  for (let i = 1; i < layers.length; i += 1) {
    const next = layers[i] as Layer;
    if (rho_kgPerM3 > density(next.p_hPa, next.T_K)) break;
    layer = next;
  }
  const { H_m, T_K, p_hPa: pb_hPa, beta_KPerM } = layer;
  const ratio = rho_kgPerM3 / density(pb_hPa, T_K);
  if (beta_KPerM === 0) return H_m - ((R_JPerKgK * T_K) / g0_mPerS2) * Math.log(ratio);
  return H_m + (T_K / beta_KPerM) * (ratio ** (-1 / (g0_mPerS2 / (beta_KPerM * R_JPerKgK) + 1)) - 1);
}

/** Density of dry air in kg/m³: ρ = p/(R T). */
export function density(p_hPa: number, T_K: number): number {
  return (100 * p_hPa) / (R_JPerKgK * T_K);
}

/** Temperature of the standard atmosphere at a geopotential altitude in the layer. */
export function temperatureIn(layer: Layer, H_m: number): number {
  return layer.T_K + layer.beta_KPerM * (H_m - layer.H_m);
}

/** Pressure of the standard atmosphere at a geopotential altitude in the layer. */
export function pressureIn({ H_m: base_m, T_K, p_hPa, beta_KPerM }: Layer, H_m: number): number {
  const rise_m = H_m - base_m;
  if (beta_KPerM === 0) return p_hPa * Math.exp((-g0_mPerS2 * rise_m) / (R_JPerKgK * T_K));
  return p_hPa * (1 + (beta_KPerM * rise_m) / T_K) ** (-g0_mPerS2 / (beta_KPerM * R_JPerKgK));
}
