import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Areas.

/** An area in square metres. */
export type SquareMetres = Quantity<'m2'>;

/**
 * An area in square metres.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * m2(15) // => 15
 */
export function m2(value: Untagged): SquareMetres {
  return tagged(value, 'm2');
}
