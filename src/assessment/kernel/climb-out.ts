import { trueAirspeed } from '../../airspeed/index.ts';
import { climbGradient, heightForSpeedGain, latestPathStart } from '../../flight-path/index.ts';
import type { CalibratedAirspeed, FeetPerMinute, HeightInMetres, Knots, Metres, Ratio } from '../../units/index.ts';
import { groundSpeed } from '../../wind/index.ts';
import type { PlacedObstacle } from '../request/placed-obstacle.ts';
import type { Situation } from '../request/situation.ts';
import { flownSpeed, type SpeedReading } from '../request/speeds.ts';
import type { Reason } from '../result/reason.ts';
import type { Air } from './air-and-wind.ts';
import { readPrinted } from './read-printed.ts';
import type { Recorder } from './step.ts';
import { pointOf } from './table-point.ts';

const foot = 0.3048;

/** A climb over the ground, or why there is none. */
export interface Climb {
  readonly gradient: number | undefined;
  /** Height given up to gain the climb speed from the speed at the 50 ft point. */
  readonly heightLost_m: number;
  readonly missing: readonly Reason[];
}

/** The speed of the climb row at today's mass, rounded up; none without climb data. */
export function climbSpeedOf(situation: Situation): SpeedReading | undefined {
  const { climb, ready } = situation;
  if (climb === undefined || ready.climbSpeed === undefined) return undefined;
  return flownSpeed(situation, ready.climbSpeed, 0, climb.flap);
}

/** The gradient over the ground from the climb table: rate, speed and flap of one row, the speed rounded up first. */
export function climbOf(
  r: Recorder,
  situation: Situation,
  air: Air,
  used_kt: number,
  start: SpeedReading,
  speed: SpeedReading | undefined,
): Climb {
  const { climb, ready } = situation;
  if (climb === undefined || ready.rateOfClimb === undefined || speed === undefined)
    return notKnown({ code: 'no-climb-data', parameters: { configuration: situation.configuration } });
  const point = pointOf(r, ready.rateOfClimb, situation.mass_kg, air);
  const reading = readPrinted(r, ready.rateOfClimb, point);
  if (typeof reading !== 'number') return notKnown(reading);
  const rateOfClimb = reading as FeetPerMinute;
  if (!speed.ok) return notKnown(speed.reason);
  if (speed.kcas === undefined) return noCalibration(climb.flap, speed.kias);
  const { pressureAltitude_ft: pressureAltitude, temperature_degC: temperature } = air;
  const trueSpeed = r.step('airspeed.true-airspeed', 'true airspeed in the climb', trueAirspeed, {
    calibratedAirspeed: speed.kcas as CalibratedAirspeed,
    pressureAltitude,
    temperature,
  });
  const ground = r.step('wind.ground-speed', 'ground speed in the climb', groundSpeed, {
    trueAirspeed: trueSpeed,
    headwind: used_kt as Knots,
  });
  const gradient = r.step('flight-path.climb-gradient', 'gradient over the ground', climbGradient, {
    rateOfClimb,
    groundSpeed: ground,
  });
  // Without the start speed the height given up to gain the climb speed is unknown; it is never taken as nothing.
  if (!start.ok) return notKnown(start.reason);
  const isSameOrFaster = climb.flap === situation.flap && start.kias >= speed.kias;
  if (!isSameOrFaster && start.kcas === undefined) return noCalibration(situation.flap, start.kias);
  if (isSameOrFaster || start.kcas === undefined || start.kcas >= speed.kcas)
    return { gradient, heightLost_m: 0, missing: nothingMissing };
  const from = r.step('airspeed.true-airspeed', 'true airspeed at the 50 ft point', trueAirspeed, {
    calibratedAirspeed: start.kcas as CalibratedAirspeed,
    pressureAltitude,
    temperature,
  });
  const heightLost_m = r.step('flight-path.height-for-speed-gain', 'height given up for speed', heightForSpeedGain, {
    from,
    to: trueSpeed,
  });
  return { gradient, heightLost_m, missing: nothingMissing };
}

function notKnown(reason: Reason): Climb {
  return { gradient: undefined, heightLost_m: 0, missing: [reason] };
}

function noCalibration(flap: string, kias: number): Climb {
  return notKnown({ code: 'no-calibration', parameters: { flap, speed_kias: kias, purpose: 'the climb gradient' } });
}

const nothingMissing: readonly Reason[] = [];

/** An obstacle from where the roll starts: distance along the centreline, and top above the surface there. */
export function placeOf({ runway }: Situation, obstacle: PlacedObstacle): { distance_m: number; top_m: number } {
  const rollStart_mElevation = runway.start_mElevation + (runway.slope_percent / 100) * runway.offset_m;
  return {
    distance_m: runway.length_m + obstacle.beyond_m - runway.offset_m,
    top_m: obstacle.top_mElevation - rollStart_mElevation,
  };
}

/** Height of the surface above where the roll starts; beyond the far end no further than that end. */
export function surfaceHeight({ runway }: Situation, along_m: number): number {
  return (runway.slope_percent / 100) * Math.min(along_m, runway.length_m - runway.offset_m);
}

/** The farthest 50 ft point from which every obstacle ahead is still cleared; Infinity where none is listed. */
export function latestScreenPoint(r: Recorder, situation: Situation, climb: Climb): number | undefined {
  const { runway, policies, screen_m } = situation;
  const { gradient, heightLost_m } = climb;
  const end_m = runway.length_m - runway.offset_m;
  let latest = Number.POSITIVE_INFINITY;
  for (const obstacle of runway.ahead ?? []) {
    const slope = runway.slope_percent / 100;
    if (gradient === undefined || gradient < 0 || gradient <= slope + 1e-6 || gradient <= 1e-6) return undefined;
    const place = placeOf(situation, obstacle);
    const startOn = (surface: { slope: number; rise_m: number }) =>
      r.step('flight-path.latest-path-start', `latest 50 ft point for ${obstacle.name}`, latestPathStart, {
        // What is given up to gain speed counts as if the obstacle stood that much taller.
        obstacleTop: (place.top_m + heightLost_m - surface.rise_m) as HeightInMetres,
        clearance: (policies.verticalClearance * foot) as HeightInMetres,
        screenHeight: screen_m as HeightInMetres,
        distance: place.distance_m as Metres,
        gradient: gradient as Ratio,
        slope: surface.slope as Ratio,
      });
    const onRunway = startOn({ slope, rise_m: 0 });
    // Beyond the far end the surface is taken no further than that end, as for the criterion.
    const start = onRunway <= end_m ? onRunway : Math.max(end_m, startOn({ slope: 0, rise_m: slope * end_m }));
    latest = Math.min(latest, start);
  }
  return latest;
}
