import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Strength of the magnetic field.

/** A quantity in nanoteslas: a magnetic field strength. */
export type Nanotesla = Quantity<'nT'>;

/** A bare number as nanoteslas (a magnetic field strength); refuses NaN and infinities. */
export function nanotesla(value: Untagged): Nanotesla {
  return tagged(value, 'nT');
}
