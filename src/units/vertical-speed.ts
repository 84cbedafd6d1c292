import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Vertical speed.

/** A vertical speed in feet per minute, upwards positive. */
export type FeetPerMinute = Quantity<'ftPerMin'>;
/** A vertical speed in metres per second, upwards positive. */
export type ClimbInMetresPerSecond = Quantity<'mpsVertical'>;

/**
 * A vertical speed in feet per minute, upwards positive.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftPerMin(650) // => 650
 */
export function ftPerMin(value: Untagged): FeetPerMinute {
  return tagged(value, 'ftPerMin');
}

/**
 * A vertical speed in metres per second, upwards positive.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * mpsVertical(3.3) // => 3.3
 */
export function mpsVertical(value: Untagged): ClimbInMetresPerSecond {
  return tagged(value, 'mpsVertical');
}

/**
 * A vertical speed given in metres per second, in feet per minute (1 ft = 0.3048 m exactly).
 *
 * @example
 * feetPerMinuteFromMetresPerSecond(mpsVertical(3)) // ≈ 590.55 ± 0.01
 */
export function feetPerMinuteFromMetresPerSecond(value: ClimbInMetresPerSecond): FeetPerMinute {
  const x: number = value;
  return ((x * 60) / 0.3048) as FeetPerMinute;
}

/**
 * A vertical speed given in feet per minute, in metres per second (1 ft = 0.3048 m exactly).
 *
 * @example
 * climbInMetresPerSecondFromFeetPerMinute(ftPerMin(500)) // ≈ 2.54 ± 1e-9
 */
export function climbInMetresPerSecondFromFeetPerMinute(value: FeetPerMinute): ClimbInMetresPerSecond {
  const x: number = value;
  return ((x * 0.3048) / 60) as ClimbInMetresPerSecond;
}
