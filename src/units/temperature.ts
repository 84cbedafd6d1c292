import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Temperatures, and temperature differences as types of their own: 10 °C of air and 10 °C above standard are not the same thing.

/** A quantity in degrees Celsius: a temperature. */
export type Celsius = Quantity<'degC'>;
/** A quantity in degrees Fahrenheit: a temperature. */
export type Fahrenheit = Quantity<'degF'>;
/** A quantity in kelvins: an absolute temperature. */
export type Kelvin = Quantity<'K'>;
/** A quantity in degrees Celsius: a difference of temperatures. */
export type CelsiusDifference = Quantity<'degCDifference'>;

/** A bare number as degrees Celsius (a temperature); refuses NaN and infinities. */
export function degC(value: Untagged): Celsius {
  return tagged(value, 'degC');
}

/** A bare number as degrees Fahrenheit (a temperature); refuses NaN and infinities. */
export function degF(value: Untagged): Fahrenheit {
  return tagged(value, 'degF');
}

/** A bare number as kelvins (an absolute temperature); refuses NaN and infinities. */
export function kelvin(value: Untagged): Kelvin {
  return tagged(value, 'K');
}

/** A bare number as degrees Celsius (a difference of temperatures); refuses NaN and infinities. */
export function degCDifference(value: Untagged): CelsiusDifference {
  return tagged(value, 'degCDifference');
}

/** From degC to K. */
export function kelvinFromCelsius(value: Celsius): Kelvin {
  const x: number = value;
  return (x + 273.15) as Kelvin;
}

/** From K to degC. */
export function celsiusFromKelvin(value: Kelvin): Celsius {
  const x: number = value;
  return (x - 273.15) as Celsius;
}

/** From degF to degC. */
export function celsiusFromFahrenheit(value: Fahrenheit): Celsius {
  const x: number = value;
  return (((x - 32) * 5) / 9) as Celsius;
}

/** From degC to degF. */
export function fahrenheitFromCelsius(value: Celsius): Fahrenheit {
  const x: number = value;
  return ((x * 9) / 5 + 32) as Fahrenheit;
}
