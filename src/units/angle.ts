import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Angles without a north: path angles, bank angles, and position on the Earth.

/** An angle in degrees, without a north: bank, path, aspect. */
export type Degrees = Quantity<'deg'>;
/** An angle in radians, without a north. */
export type Radians = Quantity<'rad'>;
/** The change of an angle without a north, in degrees per year. */
export type DegreesPerYear = Quantity<'degPerYear'>;
/** A geographic latitude in degrees (WGS 84), north positive. */
export type Latitude = Quantity<'degLatitude'>;
/** A geographic longitude in degrees (WGS 84), east positive. */
export type Longitude = Quantity<'degLongitude'>;

/**
 * An angle in degrees, without a north: bank, path, aspect.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degrees(30) // => 30
 */
export function degrees(value: Untagged): Degrees {
  return tagged(value, 'deg');
}

/**
 * An angle in radians, without a north.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * radians(0.5) // => 0.5
 */
export function radians(value: Untagged): Radians {
  return tagged(value, 'rad');
}

/**
 * The change of an angle without a north, in degrees per year.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degPerYear(0.01) // => 0.01
 */
export function degPerYear(value: Untagged): DegreesPerYear {
  return tagged(value, 'degPerYear');
}

/**
 * A geographic latitude in degrees (WGS 84), north positive.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degLatitude(47.25) // => 47.25
 */
export function degLatitude(value: Untagged): Latitude {
  return tagged(value, 'degLatitude');
}

/**
 * A geographic longitude in degrees (WGS 84), east positive.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degLongitude(-11.5) // => -11.5
 */
export function degLongitude(value: Untagged): Longitude {
  return tagged(value, 'degLongitude');
}

/**
 * Degrees in radians (180° = π rad).
 *
 * @example
 * radiansFromDegrees(degrees(180)) // ≈ 3.14159265 ± 1e-8
 */
export function radiansFromDegrees(value: Degrees): Radians {
  const x: number = value;
  return ((x * Math.PI) / 180) as Radians;
}

/**
 * Radians in degrees (180° = π rad).
 *
 * @example
 * degreesFromRadians(radians(1)) // ≈ 57.2957795 ± 1e-7
 */
export function degreesFromRadians(value: Radians): Degrees {
  const x: number = value;
  return ((x * 180) / Math.PI) as Degrees;
}
