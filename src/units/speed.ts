import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

// Speeds in their references. `kt` is the speed of the wind or any speed whose reference does not matter; an airspeed always names its own.

/** A quantity in knots: of the wind. */
export type Knots = Quantity<'kt'>;
/** A quantity in statute miles per hour: of the wind. */
export type MilesPerHour = Quantity<'mph'>;
/** A quantity in metres per second: of the wind. */
export type MetresPerSecond = Quantity<'mps'>;
/** A quantity in knots: as read from the indicator. */
export type IndicatedAirspeed = Quantity<'kias'>;
/** A quantity in knots: indicated, corrected for position and instrument error. */
export type CalibratedAirspeed = Quantity<'kcas'>;
/** A quantity in knots: calibrated, corrected for compressibility. */
export type EquivalentAirspeed = Quantity<'keas'>;
/** A quantity in knots: through the air mass. */
export type TrueAirspeed = Quantity<'ktas'>;
/** A quantity in knots: over the ground. */
export type GroundSpeed = Quantity<'ktGS'>;

/** A bare number as knots (of the wind); refuses NaN and infinities. */
export function kt(value: Untagged): Knots {
  return tagged(value, 'kt');
}

/** A bare number as statute miles per hour (of the wind); refuses NaN and infinities. */
export function mph(value: Untagged): MilesPerHour {
  return tagged(value, 'mph');
}

/** A bare number as metres per second (of the wind); refuses NaN and infinities. */
export function mps(value: Untagged): MetresPerSecond {
  return tagged(value, 'mps');
}

/** A bare number as knots (as read from the indicator); refuses NaN and infinities. */
export function kias(value: Untagged): IndicatedAirspeed {
  return tagged(value, 'kias');
}

/** A bare number as knots (indicated, corrected for position and instrument error); refuses NaN and infinities. */
export function kcas(value: Untagged): CalibratedAirspeed {
  return tagged(value, 'kcas');
}

/** A bare number as knots (calibrated, corrected for compressibility); refuses NaN and infinities. */
export function keas(value: Untagged): EquivalentAirspeed {
  return tagged(value, 'keas');
}

/** A bare number as knots (through the air mass); refuses NaN and infinities. */
export function ktas(value: Untagged): TrueAirspeed {
  return tagged(value, 'ktas');
}

/** A bare number as knots (over the ground); refuses NaN and infinities. */
export function ktGS(value: Untagged): GroundSpeed {
  return tagged(value, 'ktGS');
}

/** From mph to kt. */
export function knotsFromMilesPerHour(value: MilesPerHour): Knots {
  const x: number = value;
  return ((x * 1609.344) / 1852) as Knots;
}

/** From kt to mph. */
export function milesPerHourFromKnots(value: Knots): MilesPerHour {
  const x: number = value;
  return ((x * 1852) / 1609.344) as MilesPerHour;
}

/** From mps to kt. */
export function knotsFromMetresPerSecond(value: MetresPerSecond): Knots {
  const x: number = value;
  return ((x * 3600) / 1852) as Knots;
}

/** From kt to mps. */
export function metresPerSecondFromKnots(value: Knots): MetresPerSecond {
  const x: number = value;
  return ((x * 1852) / 3600) as MetresPerSecond;
}
