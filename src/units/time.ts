import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Durations.

/** A quantity in seconds: a duration. */
export type Seconds = Quantity<'s'>;
/** A quantity in minutes: a duration. */
export type Minutes = Quantity<'min'>;

/** A bare number as seconds (a duration); refuses NaN and infinities. */
export function seconds(value: Untagged): Seconds {
  return tagged(value, 's');
}

/** A bare number as minutes (a duration); refuses NaN and infinities. */
export function minutes(value: Untagged): Minutes {
  return tagged(value, 'min');
}

/** From min to s. */
export function secondsFromMinutes(value: Minutes): Seconds {
  const x: number = value;
  return (x * 60) as Seconds;
}

/** From s to min. */
export function minutesFromSeconds(value: Seconds): Minutes {
  const x: number = value;
  return (x / 60) as Minutes;
}
