import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Accelerations.

/** An acceleration in metres per second squared. */
export type MetresPerSecondSquared = Quantity<'mps2'>;
/** An acceleration in feet per second squared. */
export type FeetPerSecondSquared = Quantity<'ftPerS2'>;

/**
 * An acceleration in metres per second squared.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * mps2(9.80665) // => 9.80665
 */
export function mps2(value: Untagged): MetresPerSecondSquared {
  return tagged(value, 'mps2');
}

/**
 * An acceleration in feet per second squared.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftPerS2(32.174) // => 32.174
 */
export function ftPerS2(value: Untagged): FeetPerSecondSquared {
  return tagged(value, 'ftPerS2');
}
