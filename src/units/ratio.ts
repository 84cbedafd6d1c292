import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Ratios: bare, in percent, and as gradients.

/** A ratio of two like quantities. */
export type Ratio = Quantity<'ratio'>;
/** A ratio of two like quantities, in percent. */
export type Percent = Quantity<'percent'>;
/** A climb or descent gradient in feet per nautical mile over the ground. */
export type FeetPerNauticalMile = Quantity<'ftPerNM'>;

/**
 * A ratio of two like quantities.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ratio(1.15) // => 1.15
 */
export function ratio(value: Untagged): Ratio {
  return tagged(value, 'ratio');
}

/**
 * A ratio of two like quantities, in percent.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * percent(1.9) // => 1.9
 */
export function percent(value: Untagged): Percent {
  return tagged(value, 'percent');
}

/**
 * A climb or descent gradient in feet per nautical mile over the ground.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftPerNM(200) // => 200
 */
export function ftPerNM(value: Untagged): FeetPerNauticalMile {
  return tagged(value, 'ftPerNM');
}

/**
 * A ratio in percent.
 *
 * @example
 * percentFromRatio(ratio(0.5)) // => 50
 */
export function percentFromRatio(value: Ratio): Percent {
  const x: number = value;
  return (x * 100) as Percent;
}

/**
 * Percent as a bare ratio.
 *
 * @example
 * ratioFromPercent(percent(50)) // => 0.5
 */
export function ratioFromPercent(value: Percent): Ratio {
  const x: number = value;
  return (x / 100) as Ratio;
}

/**
 * A gradient given as a ratio, in feet per nautical mile (1 NM = 1852 m, 1 ft = 0.3048 m, both exactly).
 *
 * @example
 * feetPerNauticalMileFromRatio(ratio(0.05)) // ≈ 303.806 ± 0.001
 */
export function feetPerNauticalMileFromRatio(value: Ratio): FeetPerNauticalMile {
  const x: number = value;
  return ((x * 1852) / 0.3048) as FeetPerNauticalMile;
}

/**
 * A gradient given in feet per nautical mile, as a ratio (1 NM = 1852 m, 1 ft = 0.3048 m, both exactly).
 *
 * @example
 * ratioFromFeetPerNauticalMile(ftPerNM(200)) // ≈ 0.032916 ± 0.000001
 */
export function ratioFromFeetPerNauticalMile(value: FeetPerNauticalMile): Ratio {
  const x: number = value;
  return ((x * 0.3048) / 1852) as Ratio;
}
