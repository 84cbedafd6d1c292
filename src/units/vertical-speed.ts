import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Vertical speed.

/** A quantity in feet per minute: upwards. */
export type FeetPerMinute = Quantity<'ftPerMin'>;
/** A quantity in metres per second: upwards. */
export type ClimbInMetresPerSecond = Quantity<'mpsVertical'>;

/** A bare number as feet per minute (upwards); refuses NaN and infinities. */
export function ftPerMin(value: Untagged): FeetPerMinute {
  return tagged(value, 'ftPerMin');
}

/** A bare number as metres per second (upwards); refuses NaN and infinities. */
export function mpsVertical(value: Untagged): ClimbInMetresPerSecond {
  return tagged(value, 'mpsVertical');
}

/** From mpsVertical to ftPerMin. */
export function feetPerMinuteFromMetresPerSecond(value: ClimbInMetresPerSecond): FeetPerMinute {
  const x: number = value;
  return ((x * 60) / 0.3048) as FeetPerMinute;
}

/** From ftPerMin to mpsVertical. */
export function climbInMetresPerSecondFromFeetPerMinute(value: FeetPerMinute): ClimbInMetresPerSecond {
  const x: number = value;
  return ((x * 0.3048) / 60) as ClimbInMetresPerSecond;
}
