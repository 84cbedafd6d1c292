import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Pressures. The inch of mercury is the conventional one (0 °C, standard gravity); that of water is the one in which
// airspeed indicators are tested: at 20 °C, 407.513 of it to a standard atmosphere.

/** A pressure in hectopascals. */
export type Hectopascals = Quantity<'hPa'>;
/** A pressure in inches of mercury. */
export type InchesOfMercury = Quantity<'inHg'>;
/** A pressure in pascals. */
export type Pascals = Quantity<'Pa'>;
/** A pressure in pounds-force per square foot. */
export type PoundsForcePerSquareFootOfPressure = Quantity<'psf'>;
/** A pressure in pounds-force per square inch, as tyre pressures are placarded. */
export type PoundsPerSquareInch = Quantity<'psi'>;
/** A pressure in inches of water. */
export type InchesOfWater = Quantity<'inH2O'>;
/** A height in feet for each hectopascal of pressure. */
export type FeetPerHectopascal = Quantity<'ftPerHPa'>;

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
 * A pressure in pascals.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * Pa(101325) // => 101325
 */
export function Pa(value: Untagged): Pascals {
  return tagged(value, 'Pa');
}

/**
 * A pressure in pounds-force per square foot.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * psf(2116.2) // => 2116.2
 */
export function psf(value: Untagged): PoundsForcePerSquareFootOfPressure {
  return tagged(value, 'psf');
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
 * A pressure in inches of water.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * inH2O(6.56) // => 6.56
 */
export function inH2O(value: Untagged): InchesOfWater {
  return tagged(value, 'inH2O');
}

/**
 * A height in feet for each hectopascal of pressure.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftPerHPa(30) // => 30
 */
export function ftPerHPa(value: Untagged): FeetPerHectopascal {
  return tagged(value, 'ftPerHPa');
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

/**
 * Pascals in hectopascals (1 hPa = 100 Pa exactly).
 *
 * @example
 * hectopascalsFromPascals(Pa(101325)) // => 1013.25
 */
export function hectopascalsFromPascals(value: Pascals): Hectopascals {
  const x: number = value;
  return (x / 100) as Hectopascals;
}

/**
 * Hectopascals in pascals (1 hPa = 100 Pa exactly).
 *
 * @example
 * pascalsFromHectopascals(hPa(1013.25)) // => 101325
 */
export function pascalsFromHectopascals(value: Hectopascals): Pascals {
  const x: number = value;
  return (x * 100) as Pascals;
}

/**
 * Inches of water in hectopascals (407.513 inH2O = 1013.25 hPa: water at 20 °C).
 *
 * @example
 * hectopascalsFromInchesOfWater(inH2O(407.513)) // ≈ 1013.25 ± 1e-9
 */
export function hectopascalsFromInchesOfWater(value: InchesOfWater): Hectopascals {
  const x: number = value;
  return ((x * 1013.25) / 407.513) as Hectopascals;
}

/**
 * Hectopascals in inches of water (407.513 inH2O = 1013.25 hPa: water at 20 °C).
 *
 * @example
 * inchesOfWaterFromHectopascals(hPa(16.30283)) // ≈ 6.5567 ± 0.0001
 */
export function inchesOfWaterFromHectopascals(value: Hectopascals): InchesOfWater {
  const x: number = value;
  return ((x * 407.513) / 1013.25) as InchesOfWater;
}
