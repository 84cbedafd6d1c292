import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Strength of the magnetic field, and how fast it changes.

/** A magnetic flux density in nanotesla. */
export type Nanotesla = Quantity<'nT'>;
/** The change of a magnetic flux density in nanotesla per year. */
export type NanoteslaPerYear = Quantity<'nTPerYear'>;

/**
 * A magnetic flux density in nanotesla.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * nanotesla(48500) // => 48500
 */
export function nanotesla(value: Untagged): Nanotesla {
  return tagged(value, 'nT');
}

/**
 * The change of a magnetic flux density in nanotesla per year.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * nanoteslaPerYear(-8.3) // => -8.3
 */
export function nanoteslaPerYear(value: Untagged): NanoteslaPerYear {
  return tagged(value, 'nTPerYear');
}
