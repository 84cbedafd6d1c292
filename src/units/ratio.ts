import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Ratios: bare, in percent, and as gradients.

/** A ratio of two like quantities. */
export type Ratio = Quantity<'ratio'>;
/** A quantity in percent: of a like quantity. */
export type Percent = Quantity<'percent'>;
/** A quantity in feet per nautical mile: a climb or descent gradient. */
export type FeetPerNauticalMile = Quantity<'ftPerNM'>;

/** A bare number as a ratio of two like quantities; refuses NaN and infinities. */
export function ratio(value: Untagged): Ratio {
  return tagged(value, 'ratio');
}

/** A bare number as percent (of a like quantity); refuses NaN and infinities. */
export function percent(value: Untagged): Percent {
  return tagged(value, 'percent');
}

/** A bare number as feet per nautical mile (a climb or descent gradient); refuses NaN and infinities. */
export function ftPerNM(value: Untagged): FeetPerNauticalMile {
  return tagged(value, 'ftPerNM');
}

/** From ratio to percent. */
export function percentFromRatio(value: Ratio): Percent {
  const x: number = value;
  return (x * 100) as Percent;
}

/** From percent to ratio. */
export function ratioFromPercent(value: Percent): Ratio {
  const x: number = value;
  return (x / 100) as Ratio;
}

/** From ratio to ftPerNM. */
export function feetPerNauticalMileFromRatio(value: Ratio): FeetPerNauticalMile {
  const x: number = value;
  return ((x * 1852) / 0.3048) as FeetPerNauticalMile;
}

/** From ftPerNM to ratio. */
export function ratioFromFeetPerNauticalMile(value: FeetPerNauticalMile): Ratio {
  const x: number = value;
  return ((x * 0.3048) / 1852) as Ratio;
}
