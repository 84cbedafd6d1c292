import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Durations.

/** A duration in seconds. */
export type Seconds = Quantity<'s'>;
/** A duration in minutes. */
export type Minutes = Quantity<'min'>;

/**
 * A duration in seconds.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * seconds(3) // => 3
 */
export function seconds(value: Untagged): Seconds {
  return tagged(value, 's');
}

/**
 * A duration in minutes.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * minutes(10) // => 10
 */
export function minutes(value: Untagged): Minutes {
  return tagged(value, 'min');
}

/**
 * Minutes in seconds.
 *
 * @example
 * secondsFromMinutes(minutes(2)) // => 120
 */
export function secondsFromMinutes(value: Minutes): Seconds {
  const x: number = value;
  return (x * 60) as Seconds;
}

/**
 * Seconds in minutes.
 *
 * @example
 * minutesFromSeconds(seconds(90)) // => 1.5
 */
export function minutesFromSeconds(value: Seconds): Minutes {
  const x: number = value;
  return (x / 60) as Minutes;
}
