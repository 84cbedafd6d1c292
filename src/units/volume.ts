import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Volumes of fuel.

/** A volume in litres. */
export type Litres = Quantity<'L'>;
/** A volume in gallons of the United States. */
export type USGallons = Quantity<'USgal'>;

/**
 * A volume in litres.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * litres(95) // => 95
 */
export function litres(value: Untagged): Litres {
  return tagged(value, 'L');
}

/**
 * A volume in gallons of the United States, not imperial ones.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * usGallons(25) // => 25
 */
export function usGallons(value: Untagged): USGallons {
  return tagged(value, 'USgal');
}

/**
 * Gallons of the United States in litres (231 cubic inches: exactly 3.785411784 L).
 *
 * @example
 * litresFromUsGallons(usGallons(10)) // ≈ 37.85411784 ± 1e-9
 */
export function litresFromUsGallons(value: USGallons): Litres {
  const x: number = value;
  return (x * 3.785411784) as Litres;
}

/**
 * Litres in gallons of the United States (231 cubic inches: exactly 3.785411784 L).
 *
 * @example
 * usGallonsFromLitres(litres(100)) // ≈ 26.417 ± 0.001
 */
export function usGallonsFromLitres(value: Litres): USGallons {
  const x: number = value;
  return (x / 3.785411784) as USGallons;
}
