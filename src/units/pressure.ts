import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Pressures. The inch of mercury is the conventional one (0 °C, standard gravity).

/** A quantity in hectopascals: a pressure. */
export type Hectopascals = Quantity<'hPa'>;
/** A quantity in inches of mercury: a pressure. */
export type InchesOfMercury = Quantity<'inHg'>;

/** A bare number as hectopascals (a pressure); refuses NaN and infinities. */
export function hPa(value: Untagged): Hectopascals {
  return tagged(value, 'hPa');
}

/** A bare number as inches of mercury (a pressure); refuses NaN and infinities. */
export function inHg(value: Untagged): InchesOfMercury {
  return tagged(value, 'inHg');
}

/** From inHg to hPa. */
export function hectopascalsFromInchesOfMercury(value: InchesOfMercury): Hectopascals {
  const x: number = value;
  return (x * 33.86388640341) as Hectopascals;
}

/** From hPa to inHg. */
export function inchesOfMercuryFromHectopascals(value: Hectopascals): InchesOfMercury {
  const x: number = value;
  return (x / 33.86388640341) as InchesOfMercury;
}
