import {
  type DomainError,
  hPa,
  inchesOfMercuryFromHectopascals,
  inconsistent,
  roundDown,
  roundUp,
} from '../units/index.ts';
import { altitudeOfPressure_ft, pressureLower_hPa } from './pressure-law.ts';
import { likelyQnh } from './standard-atmosphere-bounds.ts';

// A pressure on the ground that stands for no QNH ever met is a wrong elevation, a wrong unit, or one kind of pressure in
// the place of another.

/**
 * Whether a QNH is likely beyond doubt, and with it the pressure that it was found from; any form of the altimeter
 * setting will do, since they differ by less than 2 hPa. Only nearer to the ends are the bounds at the elevation
 * needed, which take four powers.
 */
export function isPlainlyLikely(qnh_hPa: number): boolean {
  return qnh_hPa >= 852 && qnh_hPa <= 1083;
}

/** The same of the root (QNH/P0)^(R L/g0), whose ends are 0.96713 and 1.01310. */
export function hasPlainlyLikelyRoot(root: number): boolean {
  return root >= 0.9675 && root <= 1.0127;
}

/** Refuses a pressure at an elevation that stands for a QNH out of bounds. */
export function demandLikelyQnh(parameter: string, value: number, unit: 'hPa' | 'inHg', elevation_ft: number): void {
  const inUnit = (p_hPa: number): number => (unit === 'hPa' ? p_hPa : inchesOfMercuryFromHectopascals(hPa(p_hPa)));
  const min = inUnit(pressureLower_hPa(likelyQnh.min, -elevation_ft));
  const max = inUnit(pressureLower_hPa(likelyQnh.max, -elevation_ft));
  if (!(value >= min && value <= max)) throw unlikely(parameter, value, unit, min, max);
}

/** Refuses a pressure altitude at an elevation that stands for a QNH out of bounds. */
export function demandPressureAltitudeOfLikelyQnh(pressureAltitude_ft: number, elevation_ft: number): void {
  const min = elevation_ft + altitudeOfPressure_ft(likelyQnh.max);
  const max = elevation_ft + altitudeOfPressure_ft(likelyQnh.min);
  const isLikely = pressureAltitude_ft >= min && pressureAltitude_ft <= max;
  if (!isLikely) throw unlikely('pressureAltitude', pressureAltitude_ft, 'ftPA', min, max);
}

function unlikely(parameter: string, received: number, unit: string, min: number, max: number): DomainError {
  const source = `QNH ${likelyQnh.min} hPa to ${likelyQnh.max} hPa at this elevation`;
  return inconsistent(parameter, received, unit, roundUp(min, 0.01), roundDown(max, 0.01), source);
}
