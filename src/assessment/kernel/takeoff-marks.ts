import { trueAirspeed } from '../../airspeed/index.ts';
import { accelerationCheckSpeed, latestLiftOff, latestRejectPoint } from '../../distance/index.ts';
import {
  type CalibratedAirspeed,
  type GroundSpeed,
  type IndicatedAirspeed,
  type Knots,
  type Metres,
  type Ratio,
  roundDown,
  roundUp,
  type Seconds,
} from '../../units/index.ts';
import { groundSpeed } from '../../wind/index.ts';
import type { Reason } from '../result/reason.ts';
import { latestScreenPoint } from './climb-out.ts';
import type { Mark } from './mark.ts';
import type { Recorder } from './step.ts';
import type { TakeoffFigures } from './takeoff-kernel.ts';
import type { TakeoffSituation } from './takeoff-situation.ts';

/** The longest roll that would still do, and what follows from it. */
export function takeoffMarks(
  r: Recorder,
  situation: TakeoffSituation,
  figures: TakeoffFigures,
  braking: number | undefined,
): Mark[] {
  const { chain, climb, wind, air } = figures;
  const { runway, liftOff } = situation;
  const none = (code: Reason['code']): Mark[] =>
    (['latest-lift-off', 'acceleration-check', 'latest-reject-point'] as const).map((id) => ({
      id,
      at_m: undefined,
      share: undefined,
      reason: { code, parameters: {} },
    }));
  if (runway.ahead === undefined) return none('obstacles-not-assessed');
  if (chain.missing.length > 0 || !liftOff.ok || liftOff.kcas === undefined) return none('mark-not-known');
  if (runway.ahead.length > 0 && climb.gradient === undefined) return none('mark-not-known');
  const screenPoint_m = latestScreenPoint(r, situation, climb);
  if (screenPoint_m === undefined) return none('mark-none-obstacles');
  const airborneDistance = (chain.distance_m - chain.roll_m) as Metres;
  // A clearway is flown over, not rolled on: lift-off is within the take-off run available.
  const liftOffOnRunway_m = runway.tora_m + airborneDistance;
  const distanceAvailable = Math.max(0, Math.min(runway.toda_m, screenPoint_m, liftOffOnRunway_m)) as Metres;
  const roll_m = r.step('distance.latest-lift-off', 'latest lift-off', latestLiftOff, {
    distanceAvailable,
    airborneDistance,
  });
  if (roll_m < 1) return none('mark-none-obstacles');
  if (roll_m < chain.roll_m) return none('mark-none-roll');
  // In a wind near the lift-off speed itself a share of that speed at a mark says nothing.
  if (Math.abs(wind.components.leastHeadwind) > liftOff.kias / 2) return none('mark-wind-too-strong');
  const mark = (id: Mark['id'], at_m: number): Mark => ({
    id,
    at_m: roundDown(at_m),
    share: (at_m + runway.offset_m) / runway.length_m,
  });
  const half = (roll_m / 2) as Metres;
  const due = r.step('distance.acceleration-check-speed', 'speed due at the mark', accelerationCheckSpeed, {
    liftOffSpeed: liftOff.kias as IndicatedAirspeed,
    headwind: wind.components.leastHeadwind,
    distance: half,
    roll: roll_m,
  });
  const basis: Reason = { code: 'mark-acceleration-basis', parameters: {} };
  const check = { ...mark('acceleration-check', half), speed_kias: roundUp(due), reason: basis };
  const marks = [mark('latest-lift-off', roll_m), check];
  if (braking === undefined) {
    return [
      ...marks,
      {
        id: 'latest-reject-point',
        at_m: undefined,
        share: undefined,
        reason: { code: 'mark-needs-braking', parameters: {} },
      },
    ];
  }
  const trueSpeed = r.step('airspeed.true-airspeed', 'true airspeed at lift-off', trueAirspeed, {
    calibratedAirspeed: liftOff.kcas as CalibratedAirspeed,
    pressureAltitude: air.pressureAltitude_ft,
    temperature: air.temperature_degC,
  });
  const ground: GroundSpeed = r.step('wind.ground-speed', 'ground speed at lift-off', groundSpeed, {
    trueAirspeed: trueSpeed,
    headwind: wind.used_kt as Knots,
  });
  const reject = r.step('distance.latest-reject-point', 'latest reject point', latestRejectPoint, {
    longestRoll: roll_m,
    liftOffGroundSpeed: ground,
    reactionTime: situation.policies.reactionTime as Seconds,
    brakingCoefficient: braking as Ratio,
    stopDistanceAvailable: runway.asda_m as Metres,
  });
  return [...marks, mark('latest-reject-point', reject)];
}
