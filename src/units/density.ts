import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Air density.

/** A density in kilograms per cubic metre. */
export type KilogramsPerCubicMetre = Quantity<'kgPerM3'>;
/** A density in slugs per cubic foot. */
export type SlugsPerCubicFoot = Quantity<'slugPerFt3'>;

/**
 * A density in kilograms per cubic metre.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * kgPerM3(1.225) // => 1.225
 */
export function kgPerM3(value: Untagged): KilogramsPerCubicMetre {
  return tagged(value, 'kgPerM3');
}

/**
 * A density in slugs per cubic foot.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * slugPerFt3(0.002377) // => 0.002377
 */
export function slugPerFt3(value: Untagged): SlugsPerCubicFoot {
  return tagged(value, 'slugPerFt3');
}
