import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Pressures. The inch of mercury is the conventional one (0 °C, standard gravity).

/** A pressure in hectopascals. */
export type Hectopascals = Quantity<'hPa'>;
/** A pressure in inches of mercury. */
export type InchesOfMercury = Quantity<'inHg'>;
/** A pressure in pounds-force per square inch, as tyre pressures are placarded. */
export type PoundsPerSquareInch = Quantity<'psi'>;

/**
 * A pressure in hectopascals.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * hPa(1013.25) // => 1013.25
 */
export function hPa(value: Untagged): Hectopascals {
  return tagged(value, 'hPa');
}

/**
 * A pressure in inches of mercury.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * inHg(29.92) // => 29.92
 */
export function inHg(value: Untagged): InchesOfMercury {
  return tagged(value, 'inHg');
}

/**
 * A pressure in pounds-force per square inch.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * psi(29) // => 29
 */
export function psi(value: Untagged): PoundsPerSquareInch {
  return tagged(value, 'psi');
}

/**
 * Inches of mercury in hectopascals (1 inHg = 33.86388640341 hPa: mercury at 0 °C under standard gravity).
 *
 * @example
 * hectopascalsFromInchesOfMercury(inHg(29.92)) // ≈ 1013.2075 ± 0.0001
 */
export function hectopascalsFromInchesOfMercury(value: InchesOfMercury): Hectopascals {
  const x: number = value;
  return (x * 33.86388640341) as Hectopascals;
}

/**
 * Hectopascals in inches of mercury (1 inHg = 33.86388640341 hPa: mercury at 0 °C under standard gravity).
 *
 * @example
 * inchesOfMercuryFromHectopascals(hPa(1013.25)) // ≈ 29.9213 ± 0.0001
 */
export function inchesOfMercuryFromHectopascals(value: Hectopascals): InchesOfMercury {
  const x: number = value;
  return (x / 33.86388640341) as InchesOfMercury;
}
