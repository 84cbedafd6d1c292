import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Angular speeds: rates of turn.

/** An angular speed in degrees per second, without regard to its side. */
export type DegreesPerSecond = Quantity<'degPerS'>;
/** An angular speed in radians per second, without regard to its side. */
export type RadiansPerSecond = Quantity<'radPerS'>;

/**
 * An angular speed in degrees per second.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degPerS(3) // => 3
 */
export function degPerS(value: Untagged): DegreesPerSecond {
  return tagged(value, 'degPerS');
}

/**
 * An angular speed in radians per second.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * radPerS(0.3) // => 0.3
 */
export function radPerS(value: Untagged): RadiansPerSecond {
  return tagged(value, 'radPerS');
}
