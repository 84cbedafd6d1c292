import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Air density.

/** A quantity in kilograms per cubic metre: a density. */
export type KilogramsPerCubicMetre = Quantity<'kgPerM3'>;

/** A bare number as kilograms per cubic metre (a density); refuses NaN and infinities. */
export function kgPerM3(value: Untagged): KilogramsPerCubicMetre {
  return tagged(value, 'kgPerM3');
}
