import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Temperatures, and temperature differences as types of their own: 10 °C of air and 10 °C above standard are not the same thing.

/** A temperature in degrees Celsius. */
export type Celsius = Quantity<'degC'>;
/** A temperature in degrees Fahrenheit. */
export type Fahrenheit = Quantity<'degF'>;
/** An absolute temperature in degrees Rankine. */
export type Rankine = Quantity<'degR'>;
/** An absolute temperature in kelvins. */
export type Kelvin = Quantity<'K'>;
/** A difference of two temperatures in degrees Celsius, such as the deviation from standard. */
export type CelsiusDifference = Quantity<'degCDifference'>;

/**
 * A temperature in degrees Celsius.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degC(28) // => 28
 */
export function degC(value: Untagged): Celsius {
  return tagged(value, 'degC');
}

/**
 * A temperature in degrees Fahrenheit.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degF(82) // => 82
 */
export function degF(value: Untagged): Fahrenheit {
  return tagged(value, 'degF');
}

/**
 * An absolute temperature in kelvins.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * kelvin(288.15) // => 288.15
 */
export function kelvin(value: Untagged): Kelvin {
  return tagged(value, 'K');
}

/**
 * An absolute temperature in degrees Rankine.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degR(518.67) // => 518.67
 */
export function degR(value: Untagged): Rankine {
  return tagged(value, 'degR');
}

/**
 * A difference of two temperatures in degrees Celsius, such as the deviation from standard.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * degCDifference(15) // => 15
 */
export function degCDifference(value: Untagged): CelsiusDifference {
  return tagged(value, 'degCDifference');
}

/**
 * Degrees Celsius in kelvins (0 °C = 273.15 K exactly).
 *
 * @example
 * kelvinFromCelsius(degC(15)) // ≈ 288.15 ± 1e-9
 */
export function kelvinFromCelsius(value: Celsius): Kelvin {
  const x: number = value;
  return (x + 273.15) as Kelvin;
}

/**
 * Kelvins in degrees Celsius (0 °C = 273.15 K exactly).
 *
 * @example
 * celsiusFromKelvin(kelvin(288.15)) // ≈ 15 ± 1e-9
 */
export function celsiusFromKelvin(value: Kelvin): Celsius {
  const x: number = value;
  return (x - 273.15) as Celsius;
}

/**
 * Degrees Fahrenheit in degrees Celsius.
 *
 * @example
 * celsiusFromFahrenheit(degF(86)) // => 30
 */
export function celsiusFromFahrenheit(value: Fahrenheit): Celsius {
  const x: number = value;
  return (((x - 32) * 5) / 9) as Celsius;
}

/**
 * Degrees Celsius in degrees Fahrenheit.
 *
 * @example
 * fahrenheitFromCelsius(degC(30)) // => 86
 */
export function fahrenheitFromCelsius(value: Celsius): Fahrenheit {
  const x: number = value;
  return ((x * 9) / 5 + 32) as Fahrenheit;
}

/**
 * Kelvins in degrees Rankine (1 K = 1.8 °R exactly).
 *
 * @example
 * rankineFromKelvin(kelvin(288.15)) // ≈ 518.67 ± 1e-9
 */
export function rankineFromKelvin(value: Kelvin): Rankine {
  const x: number = value;
  return (x * 1.8) as Rankine;
}

/**
 * Degrees Rankine in kelvins (1 K = 1.8 °R exactly).
 *
 * @example
 * kelvinFromRankine(degR(518.67)) // ≈ 288.15 ± 1e-9
 */
export function kelvinFromRankine(value: Rankine): Kelvin {
  const x: number = value;
  return (x / 1.8) as Kelvin;
}
