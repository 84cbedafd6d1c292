import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Viscosity of the air: dynamic, and kinematic, which is the dynamic one over the density.

/** A dynamic viscosity in pascal seconds. */
export type PascalSeconds = Quantity<'PaS'>;
/** A dynamic viscosity in slugs per foot and second. */
export type SlugsPerFootSecond = Quantity<'slugPerFtS'>;
/** A kinematic viscosity in square metres per second. */
export type SquareMetresPerSecond = Quantity<'m2PerS'>;
/** A kinematic viscosity in square feet per second. */
export type SquareFeetPerSecond = Quantity<'ft2PerS'>;

/**
 * A dynamic viscosity in pascal seconds.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * PaS(1.7894e-5) // => 1.7894e-5
 */
export function PaS(value: Untagged): PascalSeconds {
  return tagged(value, 'PaS');
}

/**
 * A dynamic viscosity in slugs per foot and second.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * slugPerFtS(3.74e-7) // => 3.74e-7
 */
export function slugPerFtS(value: Untagged): SlugsPerFootSecond {
  return tagged(value, 'slugPerFtS');
}

/**
 * A kinematic viscosity in square metres per second.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * m2PerS(1.4607e-5) // => 1.4607e-5
 */
export function m2PerS(value: Untagged): SquareMetresPerSecond {
  return tagged(value, 'm2PerS');
}

/**
 * A kinematic viscosity in square feet per second.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ft2PerS(1.57e-4) // => 1.57e-4
 */
export function ft2PerS(value: Untagged): SquareFeetPerSecond {
  return tagged(value, 'ft2PerS');
}
