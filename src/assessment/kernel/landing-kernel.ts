import { approachSpeed, gustIncrement } from '../../airspeed/index.ts';
import { correctedDistance, distanceForExcessHeight, type FactorOrigin, speedFactor } from '../../distance/index.ts';
import { landingDistanceLost } from '../../flight-path/index.ts';
import {
  type CalibratedAirspeed,
  type Degrees,
  type HeightInMetres,
  type IndicatedAirspeed,
  type Knots,
  type Metres,
  type Percent,
  type Ratio,
  roundDown,
  roundUp,
} from '../../units/index.ts';
import type { Conditions } from '../request/conditions.ts';
import { calibrated, type FlownSpeed } from '../request/speeds.ts';
import type { Reason } from '../result/reason.ts';
import { type Air, airOf, type Wind, windOf } from './air-and-wind.ts';
import { type Chain, lengthened, withoutFigure } from './chain.ts';
import { atMost, type Judged, named, undetermined, withheldFor } from './criterion.ts';
import { distanceChain, type Overrides } from './distance-chain.ts';
import type { LandingSituation } from './landing-situation.ts';
import { addWindCriteria, notConfirmed } from './shared-criteria.ts';
import { callThrough, type Recorder } from './step.ts';

const foot = 0.3048;

/** What the landing kernel finds, in plain figures. */
export interface LandingFigures {
  readonly air: Air;
  readonly wind: Wind;
  readonly approach: Approach;
  readonly chain: Chain;
  readonly distance: Judged;
  readonly used: readonly FactorOrigin[];
  readonly factor: number;
  readonly available_m: number;
  /** What obstacles before the threshold take off the distance available. */
  readonly lost_m: number;
  readonly judged: readonly Judged[];
}

/** The approach of the day: the speed the table belongs to, the speed flown, and whether anything is added; or why there is none. */
export type Approach =
  | {
      readonly ok: true;
      readonly hasAddition: boolean;
      readonly table: FlownSpeed;
      readonly flown: FlownSpeed;
      readonly edges: readonly Reason[];
    }
  | { readonly ok: false; readonly reason: Reason; readonly hasAddition: boolean };

/** The published approach speed with its addition: half the gust increment unless the request says otherwise. */
export function approachOf(
  r: Recorder,
  situation: LandingSituation,
  conditions: Conditions,
  addition_kt: number | undefined,
): Approach {
  const { published } = situation;
  const hasAddition = (addition_kt ?? conditions.gust_kt - conditions.speed_kt) > 0;
  if (!published.ok) return { ok: false, hasAddition, reason: published.reason };
  const ofTable = hasAddition ? situation.ofTable : published;
  if (!ofTable.ok) return { ok: false, hasAddition, reason: ofTable.reason };
  const increment = r.step('airspeed.gust-increment', 'gust increment', gustIncrement, {
    meanSpeed: conditions.speed_kt as Knots,
    gust: conditions.gust_kt as Knots,
  });
  const withGust = r.step('airspeed.approach-speed', 'approach speed', approachSpeed, {
    publishedSpeed: published.kias as IndicatedAirspeed,
    gustIncrement: increment,
  });
  if (addition_kt !== undefined && addition_kt < increment / 2) {
    r.decide('addition-below-half-gust', { addition_kt, half_kt: increment / 2 });
  }
  const kias = roundUp(addition_kt === undefined ? withGust : published.kias + addition_kt);
  const flown = { kias, kcas: calibrated(situation, situation.flap, kias) };
  return { ok: true, hasAddition, table: ofTable, flown, edges: published.edges };
}

/** The corrected landing distance of the day; break-evens come through here as well. */
export function landingChain(
  r: Recorder,
  situation: LandingSituation,
  air: Air,
  used_kt: number,
  speeds: Approach,
  overrides?: Overrides,
): Chain {
  const chain = distanceChain(r, situation, air, used_kt, overrides);
  return withExcessHeight(r, situation, withSpeedAddition(r, situation, chain, speeds));
}

function withSpeedAddition(r: Recorder, situation: LandingSituation, chain: Chain, speeds: Approach): Chain {
  if (chain.missing.length > 0) return chain;
  if (!speeds.ok) return speeds.hasAddition ? withoutFigure(chain, speeds.reason) : chain;
  if (!speeds.hasAddition) return chain;
  if (situation.policies.speedAdditionInDistance === 'ignored') {
    r.decide('speed-addition-ignored', {});
    return chain;
  }
  const { flown, table } = speeds;
  if (flown.kcas === undefined || table.kcas === undefined) {
    const missing = {
      code: 'no-calibration',
      parameters: { flap: situation.flap, speed_kias: flown.kias, purpose: 'the cost of the speed addition' },
    } as const;
    return withoutFigure(chain, missing);
  }
  // Lighter than the mass that the table states, even the faster approach may be slower than the table's: no credit.
  if (flown.kcas <= table.kcas) return chain;
  const factor = r.step('distance.speed-factor', 'factor for the speed addition', speedFactor, {
    speed: flown.kcas as CalibratedAirspeed,
    tableSpeed: table.kcas as CalibratedAirspeed,
  });
  r.decide('speed-addition-paid', {
    speed_kias: flown.kias,
    table_kias: table.kias,
    speed_kcas: flown.kcas,
    table_kcas: table.kcas,
  });
  const distance_m = r.step('distance.corrected-distance', 'distance with speed addition', correctedDistance, {
    distance: chain.distance_m as Metres,
    factors: [factor],
  });
  // What the addition costs lies on the ground.
  const roll_m = chain.roll_m + (distance_m - chain.distance_m);
  return lengthened(r, chain, 'speed addition', { factor, distance_m, roll_m });
}

/** What is flown over before the height of the table is reached lengthens the distance, and lies in the air. */
function withExcessHeight(r: Recorder, situation: LandingSituation, chain: Chain): Chain {
  const { excessHeight_m, policies } = situation;
  if (chain.missing.length > 0 || excessHeight_m === 0) return chain;
  const angle_deg = policies.approachAngle;
  const flownOver_m = r.step('distance.excess-height', 'distance for excess height', distanceForExcessHeight, {
    excessHeight: excessHeight_m as HeightInMetres,
    pathAngle: angle_deg as Degrees,
  });
  r.decide('excess-height-paid', { height_ft: excessHeight_m / foot, angle_deg });
  return lengthened(r, chain, 'excess height', { distance_m: chain.distance_m + flownOver_m, roll_m: chain.roll_m });
}

const notLooked = named(
  'approach-obstacles',
  'approach obstacles',
  'obstacles on the approach',
  'm',
  'clearance asked',
);

const required = named('landing-distance', 'landing distance', 'landing distance required', 'm', 'distance available');

/** The landing of one situation in one weather. */
export function landingFigures(
  r: Recorder,
  situation: LandingSituation,
  conditions: Conditions,
  addition_kt: number | undefined,
  overrides: Overrides = {},
): LandingFigures {
  const air = airOf(r, situation, conditions);
  const wind = windOf(r, situation, conditions);
  const speeds = approachOf(r, situation, conditions, addition_kt);
  const chain = landingChain(r, situation, air, wind.inTables_kt, speeds, overrides);
  const { judged: distance, used, factor, available_m, lost_m } = landingDistance(r, situation, chain);
  const judged = [situation.massCriterion, distance];
  if (situation.runway.behind === undefined) {
    judged.push(undetermined(notLooked, 'at least', [{ code: 'obstacles-not-assessed', parameters: {} }]));
  }
  addWindCriteria(judged, situation, wind);
  return { air, wind, approach: speeds, chain, distance, used, factor, available_m, lost_m, judged };
}

/** The factored landing distance against what the approach obstacles leave of the distance available. */
function landingDistance(r: Recorder, situation: LandingSituation, chain: Chain) {
  const { runway, set, safety, table } = situation;
  const lost = lostOnApproach(r, situation);
  const lost_m: number = lost.lost_m;
  // Where the path reaches the height of the table beyond the runway, none of it is available; the loss is stated in full.
  const available_m = Math.max(0, runway.lda_m - lost_m);
  const isUnfactored = safety === 'none' || table?.includes.safetyFactor === true;
  if (safety === 'none') r.decide('safety-factor-none', {});
  else if (isUnfactored) r.decide('safety-factor-included', {});
  const factor = isUnfactored ? 1 : set.landing.safety.factor;
  const used: FactorOrigin[] = [...chain.used, ...(isUnfactored ? [] : [set.landing.safety])];
  const missing = [...chain.missing, ...lost.missing];
  if (missing.length > 0)
    return {
      judged: undetermined(required, 'at most', missing, roundDown(available_m)),
      used,
      factor,
      available_m,
      lost_m,
    };
  const required_m = r.step('distance.corrected-distance', 'landing distance factored', correctedDistance, {
    distance: chain.distance_m as Metres,
    factors: [factor as Ratio],
  });
  const judged = atMost(required, required_m, available_m, chain.kind, lost.notes);
  return { judged: withheldFor(judged, notConfirmed(situation, used)), used, factor, available_m, lost_m };
}

/** The distance criterion alone, for break-evens and for the spread of a reported direction. */
export function judgeLandingDistance(
  situation: LandingSituation,
  conditions: Conditions,
  addition_kt: number | undefined,
  overrides: Overrides,
): Judged {
  const air = airOf(callThrough, situation, conditions);
  const wind = windOf(callThrough, situation, conditions);
  const speeds = approachOf(callThrough, situation, conditions, addition_kt);
  return landingDistance(
    callThrough,
    situation,
    landingChain(callThrough, situation, air, wind.inTables_kt, speeds, overrides),
  ).judged;
}

const nothingLost: { lost_m: number; notes: readonly Reason[]; missing: readonly Reason[] } = {
  lost_m: 0,
  notes: [],
  missing: [],
};

/** The most that any obstacle before the threshold takes off the landing distance available. */
function lostOnApproach(r: Recorder, situation: LandingSituation): typeof nothingLost {
  const { runway, policies } = situation;
  const obstacles = runway.behind ?? [];
  if (obstacles.length === 0) return nothingLost;
  const angle_deg = policies.approachAngle;
  const downslope = Math.max(0, -runway.slope_percent);
  const isTooFlat = Math.tan((angle_deg * Math.PI) / 180) <= downslope / 100 + 1e-6;
  if (isTooFlat) {
    return {
      lost_m: 0,
      notes: [],
      missing: [{ code: 'approach-too-flat', parameters: { angle_deg, slope_percent: downslope } }],
    };
  }
  const threshold_m = runway.start_mElevation + (runway.slope_percent / 100) * runway.displaced_m;
  let lost_m = 0;
  let notes: Reason[] = [];
  for (const obstacle of obstacles) {
    const lost = r.step('flight-path.landing-distance-lost', obstacle.labels.lost, landingDistanceLost, {
      obstacleHeight: (obstacle.top_mElevation - threshold_m) as HeightInMetres,
      clearance: (policies.approachClearance * foot) as HeightInMetres,
      screenHeight: situation.screen_m as HeightInMetres,
      distance: (obstacle.beyond_m + runway.displaced_m) as Metres,
      pathAngle: angle_deg as Degrees,
      downslope: downslope as Percent,
    });
    if (lost <= lost_m) continue;
    lost_m = lost;
    notes = [{ code: 'approach-loss', parameters: { lost_m: roundUp(lost), obstacle: obstacle.name, angle_deg } }];
  }
  return { lost_m, notes, missing: [] };
}
