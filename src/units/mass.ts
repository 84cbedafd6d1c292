import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Masses.

/** A quantity in kilograms: a mass. */
export type Kilograms = Quantity<'kg'>;
/** A quantity in pounds: a mass. */
export type Pounds = Quantity<'lb'>;

/** A bare number as kilograms (a mass); refuses NaN and infinities. */
export function kg(value: Untagged): Kilograms {
  return tagged(value, 'kg');
}

/** A bare number as pounds (a mass); refuses NaN and infinities. */
export function lb(value: Untagged): Pounds {
  return tagged(value, 'lb');
}

/** From lb to kg. */
export function kilogramsFromPounds(value: Pounds): Kilograms {
  const x: number = value;
  return (x * 0.45359237) as Kilograms;
}

/** From kg to lb. */
export function poundsFromKilograms(value: Kilograms): Pounds {
  const x: number = value;
  return (x / 0.45359237) as Pounds;
}
