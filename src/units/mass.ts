import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Masses.

/** A mass in kilograms. */
export type Kilograms = Quantity<'kg'>;
/** A mass in pounds. */
export type Pounds = Quantity<'lb'>;

/**
 * A mass in kilograms.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * kg(1050) // => 1050
 */
export function kg(value: Untagged): Kilograms {
  return tagged(value, 'kg');
}

/**
 * A mass in pounds.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * lb(2300) // => 2300
 */
export function lb(value: Untagged): Pounds {
  return tagged(value, 'lb');
}

/**
 * Pounds in kilograms (1 lb = 0.45359237 kg exactly).
 *
 * @example
 * kilogramsFromPounds(lb(2300)) // ≈ 1043.262 ± 0.001
 */
export function kilogramsFromPounds(value: Pounds): Kilograms {
  const x: number = value;
  return (x * 0.45359237) as Kilograms;
}

/**
 * Kilograms in pounds (1 lb = 0.45359237 kg exactly).
 *
 * @example
 * poundsFromKilograms(kg(1050)) // ≈ 2314.854 ± 0.001
 */
export function poundsFromKilograms(value: Kilograms): Pounds {
  const x: number = value;
  return (x / 0.45359237) as Pounds;
}
