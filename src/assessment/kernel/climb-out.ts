import { trueAirspeed } from '../../airspeed/index.ts';
import {
  climbGradient,
  heightForSpeedGain,
  latestPathStart,
  obstacleClearance,
  requiredGradient,
} from '../../flight-path/index.ts';
import type { CalibratedAirspeed, FeetPerMinute, HeightInMetres, Knots, Metres, Ratio } from '../../units/index.ts';
import { groundSpeed } from '../../wind/index.ts';
import type { PlacedObstacle, Situation } from '../request/situation.ts';
import { flownSpeed, type SpeedReading } from '../request/speeds.ts';
import type { Reason } from '../result/reason.ts';
import type { Air } from './air-and-wind.ts';
import { atLeast, type Judged, type Named, named, undetermined } from './criterion.ts';
import type { Chain } from './distance-chain.ts';
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

/** The gradient over the ground from the climb table: rate, speed and flap of one row, the speed rounded up first. */
export function climbOf(r: Recorder, situation: Situation, air: Air, used_kt: number, start: SpeedReading): Climb {
  const { climb, ready } = situation;
  const none = (code: Reason['code'], parameters: Reason['parameters']): Climb => ({
    gradient: undefined,
    heightLost_m: 0,
    missing: [{ code, parameters }],
  });
  if (climb === undefined || ready.rateOfClimb === undefined || ready.climbSpeed === undefined)
    return none('no-climb-data', { configuration: situation.configuration });
  const point = pointOf(r, ready.rateOfClimb, situation.mass_kg, air);
  const reading = readPrinted(r, ready.rateOfClimb, point);
  if (typeof reading !== 'number') return { gradient: undefined, heightLost_m: 0, missing: [reading] };
  const rateOfClimb = reading as FeetPerMinute;
  const speed = flownSpeed(situation, ready.climbSpeed, 0, climb.flap);
  if (!speed.ok) return { gradient: undefined, heightLost_m: 0, missing: [speed.reason] };
  const noCalibration = (flap: string, kias: number) =>
    none('no-calibration', { flap, speed_kias: kias, purpose: 'the climb gradient' });
  if (speed.kcas === undefined) return noCalibration(climb.flap, speed.kias);
  const at = { pressureAltitude: air.pressureAltitude_ft, temperature: air.temperature_degC };
  const trueSpeed = r.step('airspeed.true-airspeed', 'true airspeed in the climb', trueAirspeed, {
    calibratedAirspeed: speed.kcas as CalibratedAirspeed,
    ...at,
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
  if (!start.ok) return { gradient: undefined, heightLost_m: 0, missing: [start.reason] };
  const isSameOrFaster = climb.flap === situation.flap && start.kias >= speed.kias;
  if (!isSameOrFaster && start.kcas === undefined) return noCalibration(situation.flap, start.kias);
  if (isSameOrFaster || start.kcas === undefined || start.kcas >= speed.kcas)
    return { gradient, heightLost_m: 0, missing: [] };
  const from = r.step('airspeed.true-airspeed', 'true airspeed at the 50 ft point', trueAirspeed, {
    calibratedAirspeed: start.kcas as CalibratedAirspeed,
    ...at,
  });
  const heightLost_m = r.step('flight-path.height-for-speed-gain', 'height given up for speed', heightForSpeedGain, {
    from,
    to: trueSpeed,
  });
  return { gradient, heightLost_m, missing: [] };
}

/** How one obstacle stands to the climb-out path. */
export interface ClimbOutObstacle {
  /** Its place in the list of obstacles ahead. */
  readonly place: number;
  readonly name: string;
  readonly required_percent: number;
  readonly achieved_percent: number;
  readonly factored_ft: number;
  readonly unfactored_ft: number;
}

const nothingAhead: { judged: readonly Judged[]; obstacles: readonly ClimbOutObstacle[] } = {
  judged: [],
  obstacles: [],
};

/** Every obstacle ahead against the path that starts 50 ft above the surface at the end of the factored distance. */
export function obstacleCriteria(
  r: Recorder,
  situation: Situation,
  climb: Climb,
  distances: { factored_m: number; unfactored_m: number; kind: Chain['kind']; missing: readonly Reason[] },
): { readonly judged: readonly Judged[]; readonly obstacles: readonly ClimbOutObstacle[] } {
  const { runway, policies } = situation;
  if (runway.ahead?.length === 0) return nothingAhead;
  if (runway.ahead === undefined) {
    return {
      judged: [
        undetermined(gradientOver('obstacles'), 'at least', [{ code: 'obstacles-not-assessed', parameters: {} }]),
      ],
      obstacles: [],
    };
  }
  const obstacles: ClimbOutObstacle[] = [];
  const judged = runway.ahead.map((obstacle, i) => {
    const { gradient } = climb;
    if (gradient === undefined) return undetermined(gradientOver(obstacle.name), 'at least', climb.missing);
    if (distances.missing.length > 0)
      return undetermined(gradientOver(obstacle.name), 'at least', [{ code: 'distance-unknown', parameters: {} }]);
    const place = placeOf(situation, obstacle);
    const clearance = (policies.verticalClearance * foot) as HeightInMetres;
    const path = (start_m: number) => ({
      startHeight: (situation.screen_m - climb.heightLost_m + surfaceHeight(situation, start_m)) as HeightInMetres,
      distance: (place.distance_m - start_m) as Metres,
    });
    const factored = path(distances.factored_m);
    const obstacleTop = place.top_m as HeightInMetres;
    if (factored.distance < 1)
      return beforeScreen(
        gradientOver(obstacle.name),
        place.top_m,
        clearance,
        surfaceHeight(situation, place.distance_m),
        obstacle.name,
      );
    const required = r.step(
      'flight-path.required-gradient',
      `gradient required over ${obstacle.name}`,
      requiredGradient,
      { obstacleTop, clearance, ...factored },
    );
    const above = (from: typeof factored, label: string) =>
      r.step('flight-path.obstacle-clearance', label, obstacleClearance, {
        obstacleTop,
        ...from,
        gradient: gradient as Ratio,
      }) / foot;
    const factored_ft = Math.floor(above(factored, `clearance over ${obstacle.name}, factored`) + 1e-9);
    const unfactored_ft = Math.floor(
      above(path(distances.unfactored_m), `clearance over ${obstacle.name}, unfactored`) + 1e-9,
    );
    obstacles.push({
      place: i,
      name: obstacle.name,
      required_percent: required * 100,
      achieved_percent: gradient * 100,
      factored_ft,
      unfactored_ft,
    });
    const reason = {
      code: 'obstacle-clearance',
      parameters: { obstacle: obstacle.name, factored_ft, unfactored_ft, clearance_ft: policies.verticalClearance },
    } as const;
    return atLeast(gradientOver(obstacle.name), gradient * 100, required * 100, distances.kind, [reason]);
  });
  return { judged, obstacles };
}

function gradientOver(what: string): Named {
  return named('obstacle', `the gradient over ${what}`, `gradient over ${what}`, 'percent', 'clearance asked');
}

/** Nothing is interpolated before the 50 ft point: an obstacle there is outside if it reaches that height, else unknown. */
function beforeScreen(words: Named, top_m: number, clearance_m: number, surface_m: number, obstacle: string): Judged {
  const reasons: Reason[] = [{ code: 'obstacle-before-screen', parameters: { obstacle } }];
  const asked_ft = (top_m - surface_m + clearance_m) / foot;
  if (asked_ft < 50 - 1e-9) return undetermined(words, 'at least', reasons);
  // Before that point the aeroplane is lower than 50 ft: in whole feet, rounded down, at best 49.
  return atLeast(
    named(words.id, words.subject, words.quantity, 'ftHeight', words.limitStatus),
    49,
    asked_ft,
    'value',
    reasons,
  );
}

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
