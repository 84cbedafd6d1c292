import { trueAirspeed } from '../../airspeed/index.ts';
import type { Surface } from '../../distance/index.ts';
import {
  effectiveThrust,
  factorFromRollRatio,
  type RollingSurface,
  rollingFriction,
  rollRatio,
  standardGravity,
} from '../../dynamics/index.ts';
import type { CalibratedAirspeed, Kilograms, Knots, Metres, Percent, Ratio } from '../../units/index.ts';
import type { Situation } from '../request/situation.ts';
import type { SpeedReading } from '../request/speeds.ts';
import type { Air } from './air-and-wind.ts';
import { airAsRead } from './air-as-read.ts';
import type { Chain } from './chain.ts';
import { type Judged, withheldFor } from './criterion.ts';
import type { Recorder } from './step.ts';

/** What a surface may cost by first principles, as factors on the distance; beside the factors, never instead of them. */
export interface SurfaceEstimate {
  readonly surface: RollingSurface;
  /** Missing where even the least friction leaves no acceleration. */
  readonly low: number | undefined;
  /** Missing where the greatest friction leaves none. */
  readonly high: number | undefined;
}

/**
 * Compares the friction of today's surface with that of the manual's, for the roll that the manual gives in calm air: by
 * its law for the wind the same aeroplane may be as good as stronger in one wind than in another, and a surface costs in
 * every wind the same.
 */
export function surfaceEstimate(
  r: Recorder,
  situation: Situation & { readonly liftOff: SpeedReading },
  { air, chain }: { readonly air: Air; readonly chain: Chain },
): SurfaceEstimate | undefined {
  const surface = rollingSurfaceOf(situation.runway.surface);
  const { liftOff } = situation;
  const groundRoll = chain.calmRoll_m as Metres;
  const distance = chain.calmDistance_m as Metres;
  const mass = situation.mass_kg as Kilograms;
  if (surface === undefined || !liftOff.ok || liftOff.kcas === undefined) return undefined;
  // Outside the bounds of the formulas nothing is estimated: a roll that short or an aeroplane that light is not meant.
  if (!(groundRoll >= 10) || mass < 100) return undefined;
  const liftOffSpeed = r.step('airspeed.true-airspeed', 'true airspeed at lift-off', trueAirspeed, {
    calibratedAirspeed: liftOff.kcas as CalibratedAirspeed,
    ...airAsRead(situation, air),
  });
  const calm = 0 as Knots;
  const level = 0 as Percent;
  const known = rollingFriction[manualSurface];
  const other = rollingFriction[surface];
  const thrust = r.step('dynamics.effective-thrust', "thrust that gives back the manual's roll", effectiveThrust, {
    groundRoll,
    mass,
    liftOffSpeed,
    rollingFriction: known.high,
    slope: level,
    headwind: calm,
  });
  if (thrust <= other.low * mass * standardGravity * (1 + 1e-9)) return { surface, low: undefined, high: undefined };
  const ratios = r.step('dynamics.roll-ratio', `ground roll on ${surface} over that of the manual`, rollRatio, {
    groundRoll,
    mass,
    liftOffSpeed,
    leastFriction: known.low,
    greatestFriction: known.high,
    slope: level,
    headwind: calm,
    otherMass: mass,
    otherLeastFriction: other.low,
    otherGreatestFriction: other.high,
    otherSlope: level,
    otherHeadwind: calm,
  });
  const factor = (ratio: Ratio | undefined): number | undefined =>
    ratio === undefined || ratio > 100
      ? undefined
      : r.step('dynamics.factor-from-roll-ratio', 'estimate as a factor on the distance', factorFromRollRatio, {
          ratio,
          groundRoll,
          distance,
        });
  return { surface, low: factor(ratios.low), high: factor(ratios.high) };
}

/** The surface that the manual's figures hold for. */
export const manualSurface = 'dry paved' satisfies RollingSurface;

/** The surface of the friction data that today's comes nearest to; none where nothing is known or nothing differs. */
function rollingSurfaceOf(surface: Surface): RollingSurface | undefined {
  if (surface.kind === 'gravel') return 'hard turf';
  if (surface.kind !== 'grass') return undefined;
  if (surface.ground === 'soft') return 'soft ground';
  if (surface.length === 'over 20 cm') return 'long grass';
  return surface.condition === 'wet' ? 'wet grass' : 'short dry grass';
}

/** By choice of the request: an estimate that is worse than the verdict takes it away; it never gives one. */
export function moreAdverse(judged: Judged, atLeast: Judged | undefined, atMost: Judged | undefined): Judged {
  const reason = (bound: string) => ({ code: 'estimate-more-adverse', parameters: { bound } }) as const;
  if (atLeast === undefined || (atLeast.verdict === 'outside' && judged.verdict !== 'outside')) {
    const bound = 'more than there is, even with the least friction';
    if (judged.verdict === 'outside') return judged;
    return atLeast === undefined
      ? withheldFor(judged, [reason(bound)])
      : { ...atLeast, reasons: [...atLeast.reasons, reason(bound)] };
  }
  if (judged.verdict !== 'within' || atMost?.verdict === 'within') return judged;
  return withheldFor(judged, [reason('more than there is, with the greatest friction')]);
}
