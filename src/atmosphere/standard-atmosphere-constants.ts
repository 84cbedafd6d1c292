// Defining constants of the ICAO standard atmosphere, Doc 7488/3 (1993), technically identical with ISO 2533:1975.
// The U.S. Standard Atmosphere, 1976 has another gas constant; the two differ from the sixth digit on.

/** Pressure at mean sea level. */
export const P0_hPa = 1013.25;
/** Temperature at mean sea level. */
export const T0_K = 288.15;
/** The ice point: 0 °C. */
export const Ti_K = 273.15;
/** Standard acceleration of free fall. */
const g0_mPerS2 = 9.80665;
/** Specific gas constant of dry air. */
export const R_JPerKgK = 287.05287;
/** Ratio of the specific heats of air. */
export const kappa = 1.4;
/** Decrease of temperature with altitude in the troposphere, 0.0065 K/m. */
const L_KPerM = 0.0065;
/** The same, per foot of 0.3048 m. */
export const L_KPerFt = L_KPerM * 0.3048;
/** Exponent of the tropospheric pressure law, g0/(R L), about 5.255880. */
export const pressureExponent = g0_mPerS2 / (R_JPerKgK * L_KPerM);
/** One knot: 1852 m in an hour. */
export const kt_mPerS = 1852 / 3600;
