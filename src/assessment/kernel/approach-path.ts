import { trueAirspeed } from '../../airspeed/index.ts';
import {
  aimingPointDistance,
  approachDescentLimit,
  pathAngleForClearance,
  rateOfDescent,
} from '../../flight-path/index.ts';
import {
  type CalibratedAirspeed,
  type Degrees,
  type GroundSpeed,
  type HeightInMetres,
  type Knots,
  type Metres,
  roundUp,
} from '../../units/index.ts';
import { groundSpeed } from '../../wind/index.ts';
import type { Reason } from '../result/reason.ts';
import type { LandingFigures } from './landing-kernel.ts';
import type { LandingSituation } from './landing-situation.ts';
import type { Mark } from './mark.ts';
import type { Recorder } from './step.ts';

const foot = 0.3048;

/** Steeper than this an approach may lengthen the landing (AIM 2-1-2, read). */
const steep_deg = 3.5;

/** What is to be said of the approach path: where it aims, how fast it goes down, and whether that is steep. */
export interface ApproachPath {
  readonly marks: readonly Mark[];
  readonly notes: readonly Reason[];
  readonly hazards: readonly Reason[];
}

export function approachPathOf(r: Recorder, situation: LandingSituation, figures: LandingFigures): ApproachPath {
  const { policies, screen_m } = situation;
  const angle_deg = policies.approachAngle;
  const toAimingPoint_m = r.step('flight-path.aiming-point-distance', 'aiming point', aimingPointDistance, {
    height: screen_m as HeightInMetres,
    pathAngle: angle_deg as Degrees,
  });
  const marks = [aimingPoint(Math.ceil(figures.lost_m + toAimingPoint_m - 1e-9), situation)];
  const hazards: Reason[] = [];
  if (angle_deg > steep_deg) hazards.push({ code: 'hazard-steep-approach', parameters: { angle_deg } });
  const ground = approachGroundSpeed(r, figures);
  if (ground === undefined) return { marks, notes: [], hazards };
  const rate = rateAt(r, ground, angle_deg, 'rate of descent on the approach');
  const notes: Reason[] = [
    {
      code: 'approach-rate',
      parameters: { angle_deg, groundSpeed_kt: roundUp(ground), rate_ftPerMin: roundUp(rate, 10) },
    },
  ];
  const { rateOfDescent: limit, below } = approachDescentLimit;
  if (rate > limit) {
    const parameters = { rate_ftPerMin: roundUp(rate, 10), limit_ftPerMin: limit, below_ft: below };
    hazards.push({ code: 'hazard-approach-rate', parameters });
  }
  const steeper_deg = figures.lost_m > 0 ? angleWithoutLoss(r, situation) : undefined;
  if (steeper_deg !== undefined) {
    const parameters = {
      angle_deg: roundUp(steeper_deg, 0.1),
      rate_ftPerMin: roundUp(rateAt(r, ground, steeper_deg, 'rate of descent without loss'), 10),
    };
    notes.push({ code: 'approach-angle-without-loss', parameters });
  }
  return { marks, notes, hazards };
}

/** Beyond the far end there is nothing to aim at. */
function aimingPoint(at_m: number, { runway }: LandingSituation): Mark {
  const id = 'aiming-point';
  if (at_m > runway.length_m - runway.displaced_m)
    return { id, at_m: undefined, share: undefined, reason: { code: 'mark-aiming-beyond', parameters: {} } };
  const share = (at_m + runway.displaced_m) / runway.length_m;
  return { id, at_m, share, reason: { code: 'mark-aiming-basis', parameters: {} } };
}

/** With the wind used, as everything else that counts against the landing. */
function approachGroundSpeed(r: Recorder, { approach, air, wind }: LandingFigures): GroundSpeed | undefined {
  if (!approach.ok || approach.flown.kcas === undefined) return undefined;
  const trueSpeed = r.step('airspeed.true-airspeed', 'true airspeed on the approach', trueAirspeed, {
    calibratedAirspeed: approach.flown.kcas as CalibratedAirspeed,
    pressureAltitude: air.pressureAltitude_ft,
    temperature: air.temperature_degC,
  });
  if (wind.used_kt > trueSpeed / 2) return undefined;
  return r.step('wind.ground-speed', 'ground speed on the approach', groundSpeed, {
    trueAirspeed: trueSpeed,
    headwind: wind.used_kt as Knots,
  });
}

function rateAt(r: Recorder, ground: GroundSpeed, angle_deg: number, label: string): number {
  return r.step('flight-path.rate-of-descent', label, rateOfDescent, {
    groundSpeed: ground,
    pathAngle: angle_deg as Degrees,
  });
}

/** The least angle that passes every obstacle and still crosses the threshold at the height of the table. */
function angleWithoutLoss(r: Recorder, { runway, policies, screen_m }: LandingSituation): number | undefined {
  const threshold_m = runway.start_mElevation + (runway.slope_percent / 100) * runway.displaced_m;
  const angles = (runway.behind ?? []).map((obstacle) => {
    const distance = obstacle.beyond_m + runway.displaced_m;
    if (distance < 1) return 90;
    return r.step(
      'flight-path.path-angle-for-clearance',
      `path angle over ${obstacle.name} without loss`,
      pathAngleForClearance,
      {
        // Counted from the height at which the threshold is crossed, which the path has to end at there.
        obstacleHeight: (obstacle.top_mElevation - threshold_m - screen_m) as HeightInMetres,
        clearance: (policies.approachClearance * foot) as HeightInMetres,
        distance: distance as Metres,
      },
    );
  });
  const steepest = Math.max(0, ...angles);
  // Beyond this nobody flies a path to a runway, and no rate of descent is given for it.
  return steepest > 0 && steepest <= 15 ? steepest : undefined;
}
