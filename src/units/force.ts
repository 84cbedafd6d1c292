import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Forces: weight, thrust and drag.

/** A force in newtons. */
export type Newtons = Quantity<'N'>;
/** A force for each square of a speed, in newtons per (m/s)², which are kilograms per metre. */
export type KilogramsPerMetre = Quantity<'kgPerM'>;

/**
 * A force in newtons.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * newtons(9800) // => 9800
 */
export function newtons(value: Untagged): Newtons {
  return tagged(value, 'N');
}

/**
 * A force for each square of a speed, in newtons per (m/s)², which are kilograms per metre.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * kgPerM(-0.4) // => -0.4
 */
export function kgPerM(value: Untagged): KilogramsPerMetre {
  return tagged(value, 'kgPerM');
}
