import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Wing loading: weight, not mass, over area, so that it needs no gravity.

/** A wing loading in newtons per square metre: weight over wing area. */
export type NewtonsPerSquareMetre = Quantity<'NPerM2'>;
/** A wing loading in pounds-force per square foot: weight over wing area. */
export type PoundsForcePerSquareFoot = Quantity<'lbfPerFt2'>;

/**
 * A wing loading in newtons per square metre: weight over wing area.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * NPerM2(600) // => 600
 */
export function NPerM2(value: Untagged): NewtonsPerSquareMetre {
  return tagged(value, 'NPerM2');
}

/**
 * A wing loading in pounds-force per square foot: weight over wing area.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * lbfPerFt2(12.5) // => 12.5
 */
export function lbfPerFt2(value: Untagged): PoundsForcePerSquareFoot {
  return tagged(value, 'lbfPerFt2');
}
