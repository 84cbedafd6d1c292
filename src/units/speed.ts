import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Speeds in their references. `kt` is the speed of the wind or any speed whose reference does not matter; an airspeed always names its own.

/** A speed in knots that is not an airspeed: of the wind, or one component of it. */
export type Knots = Quantity<'kt'>;
/** A speed in statute miles per hour that is not an airspeed. */
export type MilesPerHour = Quantity<'mph'>;
/** A speed in metres per second that is not an airspeed. */
export type MetresPerSecond = Quantity<'mps'>;
/** A speed in feet per second. */
export type FeetPerSecond = Quantity<'ftPerS'>;
/** An indicated airspeed in knots: as read from the indicator. */
export type IndicatedAirspeed = Quantity<'kias'>;
/** A calibrated airspeed in knots: indicated, corrected for position and instrument error. */
export type CalibratedAirspeed = Quantity<'kcas'>;
/** An equivalent airspeed in knots: calibrated, corrected for compressibility. */
export type EquivalentAirspeed = Quantity<'keas'>;
/** A true airspeed in knots: through the air. */
export type TrueAirspeed = Quantity<'ktas'>;
/** A true airspeed in metres per second. */
export type TrueAirspeedInMetresPerSecond = Quantity<'mpsTAS'>;
/** A true airspeed in feet per second. */
export type TrueAirspeedInFeetPerSecond = Quantity<'ftPerSTAS'>;
/** A ground speed in knots. */
export type GroundSpeed = Quantity<'ktGS'>;

/**
 * A speed in knots that is not an airspeed: of the wind, or one component of it.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * kt(12) // => 12
 */
export function kt(value: Untagged): Knots {
  return tagged(value, 'kt');
}

/**
 * A speed in statute miles per hour that is not an airspeed.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * mph(15) // => 15
 */
export function mph(value: Untagged): MilesPerHour {
  return tagged(value, 'mph');
}

/**
 * A speed in metres per second that is not an airspeed.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * mps(5) // => 5
 */
export function mps(value: Untagged): MetresPerSecond {
  return tagged(value, 'mps');
}

/**
 * A speed in feet per second.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftPerS(1116.5) // => 1116.5
 */
export function ftPerS(value: Untagged): FeetPerSecond {
  return tagged(value, 'ftPerS');
}

/**
 * An indicated airspeed in knots: as read from the indicator.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * kias(65) // => 65
 */
export function kias(value: Untagged): IndicatedAirspeed {
  return tagged(value, 'kias');
}

/**
 * A calibrated airspeed in knots: indicated, corrected for position and instrument error.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * kcas(67) // => 67
 */
export function kcas(value: Untagged): CalibratedAirspeed {
  return tagged(value, 'kcas');
}

/**
 * An equivalent airspeed in knots: calibrated, corrected for compressibility.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * keas(66) // => 66
 */
export function keas(value: Untagged): EquivalentAirspeed {
  return tagged(value, 'keas');
}

/**
 * A true airspeed in knots: through the air.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ktas(72) // => 72
 */
export function ktas(value: Untagged): TrueAirspeed {
  return tagged(value, 'ktas');
}

/**
 * A true airspeed in metres per second.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * mpsTAS(30) // => 30
 */
export function mpsTAS(value: Untagged): TrueAirspeedInMetresPerSecond {
  return tagged(value, 'mpsTAS');
}

/**
 * A true airspeed in feet per second.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ftPerSTAS(100) // => 100
 */
export function ftPerSTAS(value: Untagged): TrueAirspeedInFeetPerSecond {
  return tagged(value, 'ftPerSTAS');
}

/**
 * A ground speed in knots.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * ktGS(60) // => 60
 */
export function ktGS(value: Untagged): GroundSpeed {
  return tagged(value, 'ktGS');
}

/**
 * Statute miles per hour in knots (1 mph = 1609.344 m/h, 1 kt = 1852 m/h, both exactly).
 *
 * @example
 * knotsFromMilesPerHour(mph(15)) // ≈ 13.035 ± 0.001
 */
export function knotsFromMilesPerHour(value: MilesPerHour): Knots {
  const x: number = value;
  return ((x * 1609.344) / 1852) as Knots;
}

/**
 * Knots in statute miles per hour (1 mph = 1609.344 m/h, 1 kt = 1852 m/h, both exactly).
 *
 * @example
 * milesPerHourFromKnots(kt(10)) // ≈ 11.508 ± 0.001
 */
export function milesPerHourFromKnots(value: Knots): MilesPerHour {
  const x: number = value;
  return ((x * 1852) / 1609.344) as MilesPerHour;
}

/**
 * Metres per second in knots (1 kt = 1852 m in 3600 s exactly).
 *
 * @example
 * knotsFromMetresPerSecond(mps(5)) // ≈ 9.719 ± 0.001
 */
export function knotsFromMetresPerSecond(value: MetresPerSecond): Knots {
  const x: number = value;
  return ((x * 3600) / 1852) as Knots;
}

/**
 * Knots in metres per second (1 kt = 1852 m in 3600 s exactly).
 *
 * @example
 * metresPerSecondFromKnots(kt(10)) // ≈ 5.144 ± 0.001
 */
export function metresPerSecondFromKnots(value: Knots): MetresPerSecond {
  const x: number = value;
  return ((x * 1852) / 3600) as MetresPerSecond;
}

/**
 * A true airspeed given in metres per second, in knots (1 kt = 1852 m in 3600 s exactly).
 *
 * @example
 * trueAirspeedFromMetresPerSecond(mpsTAS(30)) // ≈ 58.315 ± 0.001
 */
export function trueAirspeedFromMetresPerSecond(value: TrueAirspeedInMetresPerSecond): TrueAirspeed {
  const x: number = value;
  return ((x * 3600) / 1852) as TrueAirspeed;
}

/**
 * A true airspeed given in knots, in metres per second (1 kt = 1852 m in 3600 s exactly).
 *
 * @example
 * trueAirspeedInMetresPerSecondFromKnots(ktas(60)) // ≈ 30.867 ± 0.001
 */
export function trueAirspeedInMetresPerSecondFromKnots(value: TrueAirspeed): TrueAirspeedInMetresPerSecond {
  const x: number = value;
  return ((x * 1852) / 3600) as TrueAirspeedInMetresPerSecond;
}
