import { standardPressure } from '../atmosphere/index.ts';
import { type Bound, inconsistent, type PressureAltitude } from '../units/index.ts';
import { calibratedBound, equivalentBound, trueBound } from './airspeed-bounds.ts';

// The laws of subsonic compressible flow that all conversions between airspeeds share, on bare numbers.

/** Standard pressure at mean sea level in hPa. */
export const seaLevelPressure_hPa = 1013.25;

/** Speed of sound at mean sea level in standard air, in kt; what `speedOfSound` finds, once and for all. */
export const seaLevelSound_kt = 661.4785944351621;

/** Static pressure at a pressure altitude as a ratio of the standard one at mean sea level. */
export function pressureRatio(pressureAltitude: PressureAltitude): number {
  const p_hPa: number = standardPressure({ pressureAltitude });
  return p_hPa / seaLevelPressure_hPa;
}

/** Speed of sound in kt at a temperature, as `speedOfSound` finds it. */
export function soundAt_kt(t_degC: number): number {
  return Math.sqrt(1.4 * 287.05287 * (t_degC + 273.15)) / (1852 / 3600);
}

/** Mach number of a true airspeed in kt at a temperature, below 1 only. */
export function machOfTrue(v_kt: number, t_degC: number): number {
  const a_kt = soundAt_kt(t_degC);
  if (v_kt >= a_kt) refuseSupersonic('trueAirspeed', v_kt, trueBound, a_kt);
  return v_kt / a_kt;
}

/** Density of the air as a ratio of the standard one at mean sea level, of a pressure ratio and a temperature. */
export function densityRatioAt(delta: number, t_degC: number): number {
  return delta * (288.15 / (t_degC + 273.15));
}

/**
 * Impact pressure over static pressure: (1 + 0.2 M²)^3.5 − 1. By way of logarithms, because near zero a power less one
 * would lose half its digits.
 */
export function impactRatio(mach: number): number {
  return Math.expm1(3.5 * Math.log1p(0.2 * mach ** 2));
}

/** Mach number of an impact pressure over static pressure: √(5 ((r + 1)^(2/7) − 1)). */
export function machOfImpactRatio(ratio: number): number {
  return Math.sqrt(5 * Math.expm1((2 / 7) * Math.log1p(ratio)));
}

/** Mach number of a calibrated airspeed in kt at a pressure ratio. */
function machOfCalibrated(vc_kt: number, delta: number): number {
  return machOfImpactRatio(impactRatio(vc_kt / seaLevelSound_kt) / delta);
}

/** Calibrated airspeed in kt of a Mach number at a pressure ratio. */
export function calibratedOfMach(mach: number, delta: number): number {
  return seaLevelSound_kt * machOfImpactRatio(delta * impactRatio(mach));
}

/** Equivalent airspeed in kt of a Mach number at a pressure ratio: M a0 √δ. */
export function equivalentOfMach(mach: number, delta: number): number {
  return mach * seaLevelSound_kt * Math.sqrt(delta);
}

/** Mach number of an equivalent airspeed in kt at a pressure ratio, below 1 only. */
export function machOfEquivalent(ve_kt: number, delta: number): number {
  const atMach1_kt = equivalentOfMach(1, delta);
  if (ve_kt >= atMach1_kt) refuseSupersonic('equivalentAirspeed', ve_kt, equivalentBound, atMach1_kt);
  return ve_kt / atMach1_kt;
}

/** Mach number of a calibrated airspeed in kt at a pressure ratio, below 1 only. */
export function machBelow1OfCalibrated(vc_kt: number, delta: number): number {
  const mach = machOfCalibrated(vc_kt, delta);
  if (mach >= 1) refuseSupersonic('calibratedAirspeed', vc_kt, calibratedBound, calibratedOfMach(1, delta));
  return mach;
}

/** Refuses a speed that reaches Mach 1, and names the one that does. */
function refuseSupersonic(parameter: string, received: number, bound: Bound, limit: number): never {
  const { unit, min } = bound;
  const source = 'below Mach 1 at the pressure altitude and temperature';
  throw inconsistent(parameter, received, unit, min, limit, source);
}
