import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Lengths, heights and altitudes. An elevation is measured from mean sea level, a height from the surface, a pressure or density altitude from the standard datum: four different types. A geopotential altitude counts the work against gravity, a geometric one the metres; both start at mean sea level.

/** A length in metres, along the ground. */
export type Metres = Quantity<'m'>;
/** A length in feet, along the ground; never a height or an altitude. */
export type Feet = Quantity<'ft'>;
/** A length in kilometres, along the ground. */
export type Kilometres = Quantity<'km'>;
/** A length in nautical miles, along the ground. */
export type NauticalMiles = Quantity<'NM'>;
/** An elevation in feet: how high a point of the surface lies above mean sea level. */
export type Elevation = Quantity<'ftElevation'>;
/** An elevation in metres: how high a point of the surface lies above mean sea level. */
export type ElevationInMetres = Quantity<'mElevation'>;
/** A height in feet above the surface at a stated point. */
export type Height = Quantity<'ftHeight'>;
/** A height in metres above the surface at a stated point. */
export type HeightInMetres = Quantity<'mHeight'>;
/** A pressure altitude in feet: where the standard atmosphere has this pressure. */
export type PressureAltitude = Quantity<'ftPA'>;
/** A pressure altitude in metres: where the standard atmosphere has this pressure. */
export type PressureAltitudeInMetres = Quantity<'mPA'>;
/** A density altitude in feet: where the standard atmosphere has this air density. */
export type DensityAltitude = Quantity<'ftDA'>;
/** A density altitude in metres: where the standard atmosphere has this air density. */
export type DensityAltitudeInMetres = Quantity<'mDA'>;
/** A geopotential altitude in standard geopotential feet above mean sea level: the argument of the standard atmosphere. */
export type GeopotentialAltitude = Quantity<'ftGeopotential'>;
/** A geopotential altitude in standard geopotential metres above mean sea level: the argument of the standard atmosphere. */
export type GeopotentialAltitudeInMetres = Quantity<'mGeopotential'>;
/** A geometric altitude in feet above mean sea level: what a tape would measure. */
export type GeometricAltitude = Quantity<'ftGeometric'>;
/** A geometric altitude in metres above mean sea level: what a tape would measure. */
export type GeometricAltitudeInMetres = Quantity<'mGeometric'>;

/**
 * A length in metres, along the ground.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * m(830) // => 830
 */
export function m(value: Untagged): Metres {
  return tagged(value, 'm');
}

/**
 * A length in feet, along the ground; never a height or an altitude.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ft(1370) // => 1370
 */
export function ft(value: Untagged): Feet {
  return tagged(value, 'ft');
}

/**
 * A length in kilometres, along the ground.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * km(3.5) // => 3.5
 */
export function km(value: Untagged): Kilometres {
  return tagged(value, 'km');
}

/**
 * A length in nautical miles, along the ground.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * NM(2) // => 2
 */
export function NM(value: Untagged): NauticalMiles {
  return tagged(value, 'NM');
}

/**
 * An elevation in feet: how high a point of the surface lies above mean sea level.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftElevation(1200) // => 1200
 */
export function ftElevation(value: Untagged): Elevation {
  return tagged(value, 'ftElevation');
}

/**
 * An elevation in metres: how high a point of the surface lies above mean sea level.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * mElevation(366) // => 366
 */
export function mElevation(value: Untagged): ElevationInMetres {
  return tagged(value, 'mElevation');
}

/**
 * A height in feet above the surface at a stated point.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftHeight(50) // => 50
 */
export function ftHeight(value: Untagged): Height {
  return tagged(value, 'ftHeight');
}

/**
 * A height in metres above the surface at a stated point.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * mHeight(15) // => 15
 */
export function mHeight(value: Untagged): HeightInMetres {
  return tagged(value, 'mHeight');
}

/**
 * A pressure altitude in feet: where the standard atmosphere has this pressure.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftPA(1095) // => 1095
 */
export function ftPA(value: Untagged): PressureAltitude {
  return tagged(value, 'ftPA');
}

/**
 * A pressure altitude in metres: where the standard atmosphere has this pressure.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * mPA(1500) // => 1500
 */
export function mPA(value: Untagged): PressureAltitudeInMetres {
  return tagged(value, 'mPA');
}

/**
 * A density altitude in feet: where the standard atmosphere has this air density.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftDA(2600) // => 2600
 */
export function ftDA(value: Untagged): DensityAltitude {
  return tagged(value, 'ftDA');
}

/**
 * A density altitude in metres: where the standard atmosphere has this air density.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * mDA(790) // => 790
 */
export function mDA(value: Untagged): DensityAltitudeInMetres {
  return tagged(value, 'mDA');
}

/**
 * A geopotential altitude in standard geopotential feet above mean sea level.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftGeopotential(5000) // => 5000
 */
export function ftGeopotential(value: Untagged): GeopotentialAltitude {
  return tagged(value, 'ftGeopotential');
}

/**
 * A geopotential altitude in standard geopotential metres above mean sea level.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * mGeopotential(11000) // => 11000
 */
export function mGeopotential(value: Untagged): GeopotentialAltitudeInMetres {
  return tagged(value, 'mGeopotential');
}

/**
 * A geometric altitude in feet above mean sea level.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftGeometric(5000) // => 5000
 */
export function ftGeometric(value: Untagged): GeometricAltitude {
  return tagged(value, 'ftGeometric');
}

/**
 * A geometric altitude in metres above mean sea level.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * mGeometric(11019) // => 11019
 */
export function mGeometric(value: Untagged): GeometricAltitudeInMetres {
  return tagged(value, 'mGeometric');
}

/**
 * Metres in feet (1 ft = 0.3048 m exactly).
 *
 * @example
 * feetFromMetres(m(15)) // ≈ 49.2126 ± 0.0001
 */
export function feetFromMetres(value: Metres): Feet {
  const x: number = value;
  return (x / 0.3048) as Feet;
}

/**
 * Feet in metres (1 ft = 0.3048 m exactly).
 *
 * @example
 * metresFromFeet(ft(1000)) // ≈ 304.8 ± 1e-9
 */
export function metresFromFeet(value: Feet): Metres {
  const x: number = value;
  return (x * 0.3048) as Metres;
}

/**
 * Metres in kilometres.
 *
 * @example
 * kilometresFromMetres(m(1500)) // => 1.5
 */
export function kilometresFromMetres(value: Metres): Kilometres {
  const x: number = value;
  return (x / 1000) as Kilometres;
}

/**
 * Kilometres in metres.
 *
 * @example
 * metresFromKilometres(km(1.5)) // => 1500
 */
export function metresFromKilometres(value: Kilometres): Metres {
  const x: number = value;
  return (x * 1000) as Metres;
}

/**
 * Nautical miles in metres (1 NM = 1852 m exactly).
 *
 * @example
 * metresFromNauticalMiles(NM(2)) // => 3704
 */
export function metresFromNauticalMiles(value: NauticalMiles): Metres {
  const x: number = value;
  return (x * 1852) as Metres;
}

/**
 * Metres in nautical miles (1 NM = 1852 m exactly).
 *
 * @example
 * nauticalMilesFromMetres(m(3704)) // => 2
 */
export function nauticalMilesFromMetres(value: Metres): NauticalMiles {
  const x: number = value;
  return (x / 1852) as NauticalMiles;
}

/**
 * Nautical miles in feet (1 NM = 1852 m, 1 ft = 0.3048 m, both exactly).
 *
 * @example
 * feetFromNauticalMiles(NM(1)) // ≈ 6076.1155 ± 0.0001
 */
export function feetFromNauticalMiles(value: NauticalMiles): Feet {
  const x: number = value;
  return ((x * 1852) / 0.3048) as Feet;
}

/**
 * Feet in nautical miles (1 NM = 1852 m, 1 ft = 0.3048 m, both exactly).
 *
 * @example
 * nauticalMilesFromFeet(ft(6000)) // ≈ 0.98747 ± 0.00001
 */
export function nauticalMilesFromFeet(value: Feet): NauticalMiles {
  const x: number = value;
  return ((x * 0.3048) / 1852) as NauticalMiles;
}

/**
 * An elevation given in metres, in feet (1 ft = 0.3048 m exactly).
 *
 * @example
 * elevationFromMetres(mElevation(366)) // ≈ 1200.787 ± 0.001
 */
export function elevationFromMetres(value: ElevationInMetres): Elevation {
  const x: number = value;
  return (x / 0.3048) as Elevation;
}

/**
 * An elevation given in feet, in metres (1 ft = 0.3048 m exactly).
 *
 * @example
 * elevationInMetresFromFeet(ftElevation(1200)) // ≈ 365.76 ± 1e-9
 */
export function elevationInMetresFromFeet(value: Elevation): ElevationInMetres {
  const x: number = value;
  return (x * 0.3048) as ElevationInMetres;
}

/**
 * A height given in metres, in feet (1 ft = 0.3048 m exactly).
 *
 * @example
 * heightFromMetres(mHeight(15)) // ≈ 49.2126 ± 0.0001
 */
export function heightFromMetres(value: HeightInMetres): Height {
  const x: number = value;
  return (x / 0.3048) as Height;
}

/**
 * A height given in feet, in metres (1 ft = 0.3048 m exactly).
 *
 * @example
 * heightInMetresFromFeet(ftHeight(50)) // ≈ 15.24 ± 1e-9
 */
export function heightInMetresFromFeet(value: Height): HeightInMetres {
  const x: number = value;
  return (x * 0.3048) as HeightInMetres;
}

/**
 * A pressure altitude given in metres, in feet (1 ft = 0.3048 m exactly).
 *
 * @example
 * pressureAltitudeFromMetres(mPA(1500)) // ≈ 4921.26 ± 0.001
 */
export function pressureAltitudeFromMetres(value: PressureAltitudeInMetres): PressureAltitude {
  const x: number = value;
  return (x / 0.3048) as PressureAltitude;
}

/**
 * A pressure altitude given in feet, in metres (1 ft = 0.3048 m exactly).
 *
 * @example
 * pressureAltitudeInMetresFromFeet(ftPA(5000)) // ≈ 1524 ± 1e-9
 */
export function pressureAltitudeInMetresFromFeet(value: PressureAltitude): PressureAltitudeInMetres {
  const x: number = value;
  return (x * 0.3048) as PressureAltitudeInMetres;
}

/**
 * A density altitude given in metres, in feet (1 ft = 0.3048 m exactly).
 *
 * @example
 * densityAltitudeFromMetres(mDA(2000)) // ≈ 6561.680 ± 0.001
 */
export function densityAltitudeFromMetres(value: DensityAltitudeInMetres): DensityAltitude {
  const x: number = value;
  return (x / 0.3048) as DensityAltitude;
}

/**
 * A density altitude given in feet, in metres (1 ft = 0.3048 m exactly).
 *
 * @example
 * densityAltitudeInMetresFromFeet(ftDA(5000)) // ≈ 1524 ± 1e-9
 */
export function densityAltitudeInMetresFromFeet(value: DensityAltitude): DensityAltitudeInMetres {
  const x: number = value;
  return (x * 0.3048) as DensityAltitudeInMetres;
}

/**
 * A geopotential altitude given in metres, in feet (1 ft = 0.3048 m exactly).
 *
 * @example
 * geopotentialAltitudeFromMetres(mGeopotential(11000)) // ≈ 36089.239 ± 0.001
 */
export function geopotentialAltitudeFromMetres(value: GeopotentialAltitudeInMetres): GeopotentialAltitude {
  const x: number = value;
  return (x / 0.3048) as GeopotentialAltitude;
}

/**
 * A geopotential altitude given in feet, in metres (1 ft = 0.3048 m exactly).
 *
 * @example
 * geopotentialAltitudeInMetresFromFeet(ftGeopotential(5000)) // ≈ 1524 ± 1e-9
 */
export function geopotentialAltitudeInMetresFromFeet(value: GeopotentialAltitude): GeopotentialAltitudeInMetres {
  const x: number = value;
  return (x * 0.3048) as GeopotentialAltitudeInMetres;
}

/**
 * A geometric altitude given in metres, in feet (1 ft = 0.3048 m exactly).
 *
 * @example
 * geometricAltitudeFromMetres(mGeometric(11000)) // ≈ 36089.239 ± 0.001
 */
export function geometricAltitudeFromMetres(value: GeometricAltitudeInMetres): GeometricAltitude {
  const x: number = value;
  return (x / 0.3048) as GeometricAltitude;
}

/**
 * A geometric altitude given in feet, in metres (1 ft = 0.3048 m exactly).
 *
 * @example
 * geometricAltitudeInMetresFromFeet(ftGeometric(5000)) // ≈ 1524 ± 1e-9
 */
export function geometricAltitudeInMetresFromFeet(value: GeometricAltitude): GeometricAltitudeInMetres {
  const x: number = value;
  return (x * 0.3048) as GeometricAltitudeInMetres;
}
