import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Lengths, heights and altitudes. An elevation is measured from mean sea level, a height from the surface, a pressure or density altitude from the standard datum: four different types.

/** A quantity in metres: a length along the ground. */
export type Metres = Quantity<'m'>;
/** A quantity in feet: a length along the ground. */
export type Feet = Quantity<'ft'>;
/** A quantity in kilometres: a length along the ground. */
export type Kilometres = Quantity<'km'>;
/** A quantity in nautical miles: a length along the ground. */
export type NauticalMiles = Quantity<'NM'>;
/** A quantity in feet: above mean sea level, of a point on the surface. */
export type Elevation = Quantity<'ftElevation'>;
/** A quantity in metres: above mean sea level, of a point on the surface. */
export type ElevationInMetres = Quantity<'mElevation'>;
/** A quantity in feet: above the surface at a stated point. */
export type Height = Quantity<'ftHeight'>;
/** A quantity in metres: above the surface at a stated point. */
export type HeightInMetres = Quantity<'mHeight'>;
/** A quantity in feet: the altitude of this pressure in the standard atmosphere. */
export type PressureAltitude = Quantity<'ftPA'>;
/** A quantity in feet: the altitude of this air density in the standard atmosphere. */
export type DensityAltitude = Quantity<'ftDA'>;

/** A bare number as metres (a length along the ground); refuses NaN and infinities. */
export function m(value: Untagged): Metres {
  return tagged(value, 'm');
}

/** A bare number as feet (a length along the ground); refuses NaN and infinities. */
export function ft(value: Untagged): Feet {
  return tagged(value, 'ft');
}

/** A bare number as kilometres (a length along the ground); refuses NaN and infinities. */
export function km(value: Untagged): Kilometres {
  return tagged(value, 'km');
}

/** A bare number as nautical miles (a length along the ground); refuses NaN and infinities. */
export function NM(value: Untagged): NauticalMiles {
  return tagged(value, 'NM');
}

/** A bare number as feet (above mean sea level, of a point on the surface); refuses NaN and infinities. */
export function ftElevation(value: Untagged): Elevation {
  return tagged(value, 'ftElevation');
}

/** A bare number as metres (above mean sea level, of a point on the surface); refuses NaN and infinities. */
export function mElevation(value: Untagged): ElevationInMetres {
  return tagged(value, 'mElevation');
}

/** A bare number as feet (above the surface at a stated point); refuses NaN and infinities. */
export function ftHeight(value: Untagged): Height {
  return tagged(value, 'ftHeight');
}

/** A bare number as metres (above the surface at a stated point); refuses NaN and infinities. */
export function mHeight(value: Untagged): HeightInMetres {
  return tagged(value, 'mHeight');
}

/** A bare number as feet (the altitude of this pressure in the standard atmosphere); refuses NaN and infinities. */
export function ftPA(value: Untagged): PressureAltitude {
  return tagged(value, 'ftPA');
}

/** A bare number as feet (the altitude of this air density in the standard atmosphere); refuses NaN and infinities. */
export function ftDA(value: Untagged): DensityAltitude {
  return tagged(value, 'ftDA');
}

/** From m to ft. */
export function feetFromMetres(value: Metres): Feet {
  const x: number = value;
  return (x / 0.3048) as Feet;
}

/** From ft to m. */
export function metresFromFeet(value: Feet): Metres {
  const x: number = value;
  return (x * 0.3048) as Metres;
}

/** From m to km. */
export function kilometresFromMetres(value: Metres): Kilometres {
  const x: number = value;
  return (x / 1000) as Kilometres;
}

/** From km to m. */
export function metresFromKilometres(value: Kilometres): Metres {
  const x: number = value;
  return (x * 1000) as Metres;
}

/** From NM to m. */
export function metresFromNauticalMiles(value: NauticalMiles): Metres {
  const x: number = value;
  return (x * 1852) as Metres;
}

/** From m to NM. */
export function nauticalMilesFromMetres(value: Metres): NauticalMiles {
  const x: number = value;
  return (x / 1852) as NauticalMiles;
}

/** From NM to ft. */
export function feetFromNauticalMiles(value: NauticalMiles): Feet {
  const x: number = value;
  return ((x * 1852) / 0.3048) as Feet;
}

/** From ft to NM. */
export function nauticalMilesFromFeet(value: Feet): NauticalMiles {
  const x: number = value;
  return ((x * 0.3048) / 1852) as NauticalMiles;
}

/** From mElevation to ftElevation. */
export function elevationFromMetres(value: ElevationInMetres): Elevation {
  const x: number = value;
  return (x / 0.3048) as Elevation;
}

/** From ftElevation to mElevation. */
export function elevationInMetresFromFeet(value: Elevation): ElevationInMetres {
  const x: number = value;
  return (x * 0.3048) as ElevationInMetres;
}

/** From mHeight to ftHeight. */
export function heightFromMetres(value: HeightInMetres): Height {
  const x: number = value;
  return (x / 0.3048) as Height;
}

/** From ftHeight to mHeight. */
export function heightInMetresFromFeet(value: Height): HeightInMetres {
  const x: number = value;
  return (x * 0.3048) as HeightInMetres;
}
