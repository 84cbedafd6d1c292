import {
  type Degrees,
  type Domain,
  demand,
  inconsistent,
  type Knots,
  type NauticalMiles,
  type Numbers,
  type TrueAirspeed,
} from '../units/index.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link trackErrorByOneInSixty}. */
export interface TrackErrorByOneInSixtyInputs {
  /** Distance from the intended track, at right angles to it. */
  readonly distanceOff: NauticalMiles;
  /** Distance flown along the intended track. */
  readonly distanceAlong: NauticalMiles;
}

/** Inputs of {@link driftByOneInSixty}. */
export interface DriftByOneInSixtyInputs {
  /** Component of the wind across the track, without its side. */
  readonly crosswind: Knots;
  readonly trueAirspeed: TrueAirspeed;
}

export const trackErrorByOneInSixtyDomain = {
  distanceOff: { unit: 'NM', min: 0, max: 500, source: 'library range' },
  distanceAlong: { unit: 'NM', min: 0.1, max: 1000, source: 'library range' },
} satisfies Domain<TrackErrorByOneInSixtyInputs>;

export const driftByOneInSixtyDomain = {
  crosswind: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  trueAirspeed: { unit: 'ktas', min: 10, max: 500, source: 'library range' },
} satisfies Domain<DriftByOneInSixtyInputs>;

/**
 * Track error by the one-in-sixty rule: one mile off after sixty is one degree.
 *
 * δ ≈ 60 y/x, δ in degrees: y the distance off and x the distance along the track, both in NM.
 *
 * @param x - `distanceOff` 0 NM to 500 NM and no more than the distance along, `distanceAlong` 0.1 NM to 1000 NM.
 * @returns Angle in degrees, without its side.
 * @throws {@link DomainError} when a parameter is not within its range, or the distance off exceeds that along.
 * @record rules-of-thumb.track-error-by-one-in-sixty
 *
 * @example
 * trackErrorByOneInSixty({ distanceOff: NM(2), distanceAlong: NM(30) }) // => 4
 */
export function trackErrorByOneInSixty(x: TrackErrorByOneInSixtyInputs): Degrees {
  demand('distanceOff', x.distanceOff, trackErrorByOneInSixtyDomain.distanceOff);
  demand('distanceAlong', x.distanceAlong, trackErrorByOneInSixtyDomain.distanceAlong);
  const { distanceOff: off_NM, distanceAlong: along_NM }: Numbers<TrackErrorByOneInSixtyInputs> = x;
  if (off_NM > along_NM) {
    const { unit, min } = trackErrorByOneInSixtyDomain.distanceOff;
    refuseGreater('distanceOff', off_NM, unit, min, along_NM, 'no farther off than along: a small angle');
  }
  return ((60 * off_NM) / along_NM) as Degrees;
}

/**
 * Drift by the one-in-sixty rule: the same with speeds.
 *
 * δ ≈ 60 X/V, δ in degrees: X the crosswind and V the true airspeed, both in kt.
 *
 * @param x - `crosswind` 0 kt to 200 kt and no more than the airspeed, `trueAirspeed` 10 kt to 500 kt.
 * @returns Angle in degrees, without its side.
 * @throws {@link DomainError} when a parameter is not within its range, or the crosswind exceeds the airspeed.
 * @record rules-of-thumb.drift-by-one-in-sixty
 *
 * @example
 * driftByOneInSixty({ crosswind: kt(12), trueAirspeed: ktas(90) }) // => 8
 */
export function driftByOneInSixty(x: DriftByOneInSixtyInputs): Degrees {
  demand('crosswind', x.crosswind, driftByOneInSixtyDomain.crosswind);
  demand('trueAirspeed', x.trueAirspeed, driftByOneInSixtyDomain.trueAirspeed);
  const { crosswind: crosswind_kt, trueAirspeed: v_kt }: Numbers<DriftByOneInSixtyInputs> = x;
  if (crosswind_kt > v_kt) {
    const { unit, min } = driftByOneInSixtyDomain.crosswind;
    refuseGreater('crosswind', crosswind_kt, unit, min, v_kt, 'the track can be held');
  }
  return ((60 * crosswind_kt) / v_kt) as Degrees;
}

/**
 * One in sixty beside the arctangent.
 *
 * @example
 * ruleOfThumbError(oneInSixtyTrackRule, { distanceOff: NM(5), distanceAlong: NM(30) }).difference // ≈ 0.54 ± 0.01
 */
export const oneInSixtyTrackRule: RuleOfThumb<TrackErrorByOneInSixtyInputs> = {
  id: 'one-in-sixty-track',
  title: 'One in sixty for the track error',
  words: 'Each mile off the track after sixty is one degree of track error.',
  rule: trackErrorByOneInSixty,
  exact: (x) => {
    const { distanceOff: off_NM, distanceAlong: along_NM }: Numbers<TrackErrorByOneInSixtyInputs> = x;
    return (Math.atan2(off_NM, along_NM) * 180) / Math.PI;
  },
  unit: 'deg',
  errorIn: 'percent',
  domain: {
    distanceOff: { words: 'a distance off', unit: 'NM', min: 1, max: 5, step: 1 },
    distanceAlong: { words: 'a distance along', unit: 'NM', min: 15, max: 60, step: 5 },
  },
  unsafeSide: 'either',
  because: 'a heading changed by too much or too little misses the track',
  unsafeWhere: 'It reads high at every angle: the correction is a little too large.',
  citation: { source: 'trade-practice', locator: 'one-in-sixty rule', access: 'common-practice' },
};

/**
 * One in sixty beside the arcsine.
 *
 * @example
 * ruleOfThumbError(oneInSixtyDriftRule, { crosswind: kt(15), trueAirspeed: ktas(75) }).difference // ≈ 0.46 ± 0.01
 */
export const oneInSixtyDriftRule: RuleOfThumb<DriftByOneInSixtyInputs> = {
  id: 'one-in-sixty-drift',
  title: 'One in sixty for the drift',
  words: 'The drift in degrees is sixty times the share that the crosswind is of the airspeed.',
  rule: driftByOneInSixty,
  exact: (x) => {
    const { crosswind: crosswind_kt, trueAirspeed: v_kt }: Numbers<DriftByOneInSixtyInputs> = x;
    return (Math.asin(crosswind_kt / v_kt) * 180) / Math.PI;
  },
  unit: 'deg',
  errorIn: 'percent',
  domain: {
    crosswind: { words: 'a crosswind', unit: 'kt', min: 1, max: 25, step: 1 },
    trueAirspeed: { words: 'a true airspeed', unit: 'ktas', min: 60, max: 120, step: 5 },
  },
  unsafeSide: 'either',
  because: 'a heading changed by too much or too little misses the track',
  unsafeWhere: 'It reads high at every drift below 30°, by 0.6° at most.',
  citation: { source: 'trade-practice', locator: 'one-in-sixty rule', access: 'common-practice' },
};

function refuseGreater(
  parameter: string,
  received: number,
  unit: string,
  min: number,
  max: number,
  source: string,
): never {
  throw inconsistent(parameter, received, unit, min, max, source);
}
