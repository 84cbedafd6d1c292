import { speedOfSound, standardPressure } from '../atmosphere/index.ts';
import { type Bound, DomainError, degC, ftPA, type PressureAltitude } from '../units/index.ts';

// The laws of subsonic compressible flow that all conversions between airspeeds share, on bare numbers.

/** Standard pressure at mean sea level in hPa. */
export function seaLevelPressure_hPa(): number {
  return standardPressure({ pressureAltitude: ftPA(0) });
}

/** Speed of sound at mean sea level in standard air, in kt. */
export function seaLevelSound_kt(): number {
  return speedOfSound({ temperature: degC(15) });
}

/** Static pressure at a pressure altitude as a ratio of the standard one at mean sea level. */
export function pressureRatio(pressureAltitude: PressureAltitude): number {
  const p_hPa: number = standardPressure({ pressureAltitude });
  return p_hPa / seaLevelPressure_hPa();
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
export function machOfCalibrated(vc_kt: number, delta: number): number {
  return machOfImpactRatio(impactRatio(vc_kt / seaLevelSound_kt()) / delta);
}

/** Calibrated airspeed in kt of a Mach number at a pressure ratio. */
export function calibratedOfMach(mach: number, delta: number): number {
  return seaLevelSound_kt() * machOfImpactRatio(delta * impactRatio(mach));
}

/** Equivalent airspeed in kt of a Mach number at a pressure ratio: M a0 √δ. */
export function equivalentOfMach(mach: number, delta: number): number {
  return mach * seaLevelSound_kt() * Math.sqrt(delta);
}

/** Refuses a speed that reaches Mach 1, and names the one that does. */
export function refuseSupersonic(parameter: string, received: number, bound: Bound, limit: number): never {
  const { unit, min } = bound;
  const source = 'below Mach 1 at the pressure altitude and temperature';
  throw new DomainError({ code: 'inconsistent', parameter, received, unit, min, max: limit, source });
}
