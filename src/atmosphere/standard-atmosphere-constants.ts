// Defining constants of the ICAO standard atmosphere, Doc 7488/3 (1993), technically identical with ISO 2533:1975.
// The U.S. Standard Atmosphere, 1976 has another gas constant; the two differ from the sixth digit on.

/** Pressure at mean sea level. */
export const P0_hPa = 1013.25;
/** Temperature at mean sea level. */
export const T0_K = 288.15;
/** Density at mean sea level. */
export const rho0_kgPerM3 = 1.225;
/** The ice point: 0 °C. */
export const Ti_K = 273.15;
/** Standard acceleration of free fall. */
export const g0_mPerS2 = 9.80665;
/** Specific gas constant of dry air. */
export const R_JPerKgK = 287.05287;
/** Ratio of the specific heats of air. */
export const kappa = 1.4;
/** Nominal radius of the Earth, which ties geometric to geopotential altitude. */
export const r_m = 6356766;
/** Coefficient of Sutherland's law of viscosity, in kg/(m s K^½). */
export const betaS = 1.458e-6;
/** Temperature of Sutherland's law of viscosity. */
export const S_K = 110.4;
/** Decrease of temperature with altitude in the troposphere, 0.0065 K/m. */
const L_KPerM = 0.0065;
/** The same, per foot of 0.3048 m. */
export const L_KPerFt = L_KPerM * 0.3048;
/** Exponent of the tropospheric pressure law, g0/(R L), about 5.255880. */
export const pressureExponent = g0_mPerS2 / (R_JPerKgK * L_KPerM);
/** One knot: 1852 m in an hour. */
export const kt_mPerS = 1852 / 3600;

/** A layer of the standard atmosphere: its base and the change of temperature with geopotential altitude above it. */
export interface Layer {
  readonly H_m: number;
  readonly T_K: number;
  /** Follows from the layers below; written out so that no reading goes through them all. */
  readonly p_hPa: number;
  readonly beta_KPerM: number;
}

/** The layers of the standard atmosphere; the lowest reaches down to −5 000 m, the highest up to 80 000 m. */
export const layers: readonly [Layer, ...Layer[]] = [
  { H_m: 0, T_K: 288.15, p_hPa: P0_hPa, beta_KPerM: -0.0065 },
  { H_m: 11000, T_K: 216.65, p_hPa: 226.32040095007793, beta_KPerM: 0 },
  { H_m: 20000, T_K: 216.65, p_hPa: 54.748774242810455, beta_KPerM: 0.001 },
  { H_m: 32000, T_K: 228.65, p_hPa: 8.680157766202152, beta_KPerM: 0.0028 },
  { H_m: 47000, T_K: 270.65, p_hPa: 1.1090577336731011, beta_KPerM: 0 },
  { H_m: 51000, T_K: 270.65, p_hPa: 0.6693852812117977, beta_KPerM: -0.0028 },
  { H_m: 71000, T_K: 214.65, p_hPa: 0.03956392160396607, beta_KPerM: -0.002 },
];
