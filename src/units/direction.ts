import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Directions against one north, and the variation between the two. They convert through `trueFromMagnetic` and `magneticFromTrue` only.

/** A quantity in degrees: clockwise from true north. */
export type TrueDirection = Quantity<'degTrue'>;
/** A quantity in degrees: clockwise from magnetic north. */
export type MagneticDirection = Quantity<'degMagnetic'>;
/** A quantity in degrees: of magnetic north east of true north; west is negative. */
export type Variation = Quantity<'degEast'>;
/** A quantity in degrees per year: change of the variation, eastward positive. */
export type VariationChange = Quantity<'degEastPerYear'>;

/** A bare number as degrees (clockwise from true north); refuses NaN and infinities. */
export function degTrue(value: Untagged): TrueDirection {
  return tagged(value, 'degTrue');
}

/** A bare number as degrees (clockwise from magnetic north); refuses NaN and infinities. */
export function degMagnetic(value: Untagged): MagneticDirection {
  return tagged(value, 'degMagnetic');
}

/** A bare number as degrees (of magnetic north east of true north; west is negative); refuses NaN and infinities. */
export function degEast(value: Untagged): Variation {
  return tagged(value, 'degEast');
}

/** A bare number as degrees per year (change of the variation, eastward positive); refuses NaN and infinities. */
export function degEastPerYear(value: Untagged): VariationChange {
  return tagged(value, 'degEastPerYear');
}
