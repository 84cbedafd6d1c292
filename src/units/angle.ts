import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Angles without a north: path angles, bank angles, and position on the Earth.

/** A quantity in degrees: an angle. */
export type Degrees = Quantity<'deg'>;
/** A quantity in radians: an angle. */
export type Radians = Quantity<'rad'>;
/** A quantity in degrees: north positive, WGS 84. */
export type Latitude = Quantity<'degLatitude'>;
/** A quantity in degrees: east positive, WGS 84. */
export type Longitude = Quantity<'degLongitude'>;

/** A bare number as degrees (an angle); refuses NaN and infinities. */
export function degrees(value: Untagged): Degrees {
  return tagged(value, 'deg');
}

/** A bare number as radians (an angle); refuses NaN and infinities. */
export function radians(value: Untagged): Radians {
  return tagged(value, 'rad');
}

/** A bare number as degrees (north positive, WGS 84); refuses NaN and infinities. */
export function degLatitude(value: Untagged): Latitude {
  return tagged(value, 'degLatitude');
}

/** A bare number as degrees (east positive, WGS 84); refuses NaN and infinities. */
export function degLongitude(value: Untagged): Longitude {
  return tagged(value, 'degLongitude');
}

/** From deg to rad. */
export function radiansFromDegrees(value: Degrees): Radians {
  const x: number = value;
  return ((x * Math.PI) / 180) as Radians;
}

/** From rad to deg. */
export function degreesFromRadians(value: Radians): Degrees {
  const x: number = value;
  return ((x * 180) / Math.PI) as Degrees;
}
