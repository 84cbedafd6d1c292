import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// One over the square of a speed: what is multiplied by V² to become a ratio.

/** A share of the weight for each square of a speed, in s²/m². */
export type PerMetrePerSecondSquared = Quantity<'s2PerM2'>;
/** A share of the weight for each square of a speed, in s²/ft². */
export type PerFootPerSecondSquared = Quantity<'s2PerFt2'>;

/**
 * A share of the weight for each square of a speed, in s²/m².
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * s2PerM2(-4.9e-6) // => -4.9e-6
 */
export function s2PerM2(value: Untagged): PerMetrePerSecondSquared {
  return tagged(value, 's2PerM2');
}

/**
 * A share of the weight for each square of a speed, in s²/ft².
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * s2PerFt2(-4.5e-7) // => -4.5e-7
 */
export function s2PerFt2(value: Untagged): PerFootPerSecondSquared {
  return tagged(value, 's2PerFt2');
}
