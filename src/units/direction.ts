import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Directions against one north, and the variation between the two. They convert through `trueFromMagnetic` and `magneticFromTrue` only.

/** A direction in degrees clockwise from true north. */
export type TrueDirection = Quantity<'degTrue'>;
/** A direction in degrees clockwise from magnetic north. */
export type MagneticDirection = Quantity<'degMagnetic'>;
/** The variation in degrees: how far magnetic north lies east of true north; west is negative. */
export type Variation = Quantity<'degEast'>;
/** The change of the variation in degrees per year, positive when it moves eastward. */
export type VariationChange = Quantity<'degEastPerYear'>;

/**
 * A direction in degrees clockwise from true north.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degTrue(187) // => 187
 */
export function degTrue(value: Untagged): TrueDirection {
  return tagged(value, 'degTrue');
}

/**
 * A direction in degrees clockwise from magnetic north.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degMagnetic(190) // => 190
 */
export function degMagnetic(value: Untagged): MagneticDirection {
  return tagged(value, 'degMagnetic');
}

/**
 * The variation in degrees: how far magnetic north lies east of true north; west is negative.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degEast(-3) // => -3
 */
export function degEast(value: Untagged): Variation {
  return tagged(value, 'degEast');
}

/**
 * The change of the variation in degrees per year, positive when it moves eastward.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degEastPerYear(0.2) // => 0.2
 */
export function degEastPerYear(value: Untagged): VariationChange {
  return tagged(value, 'degEastPerYear');
}
