import { correctedDistance, speedFactor } from '../../distance/index.ts';
import { type CalibratedAirspeed, type Metres, roundDown } from '../../units/index.ts';
import type { Conditions } from '../request/conditions.ts';
import { type Air, airOf, type Wind, windOf } from './air-and-wind.ts';
import { type Chain, lengthened, withoutFigure } from './chain.ts';
import { type Climb, climbOf } from './climb-out.ts';
import { atMost, type Judged, named, undetermined, withheldFor } from './criterion.ts';
import { distanceChain, type Overrides } from './distance-chain.ts';
import { type ClimbOutObstacle, obstacleCriteria } from './obstacle-criteria.ts';
import { type TakeoffSafety, takeoffSafety } from './safety.ts';
import { addWindCriteria } from './shared-criteria.ts';
import { callThrough, type Recorder } from './step.ts';
import { moreAdverse, type SurfaceEstimate, surfaceEstimate } from './surface-estimate.ts';
import type { TakeoffSituation } from './takeoff-situation.ts';

/** What the take-off kernel finds, in plain figures. */
export interface TakeoffFigures {
  readonly air: Air;
  readonly wind: Wind;
  readonly chain: Chain;
  readonly safety: TakeoffSafety;
  readonly climb: Climb;
  readonly obstacles: readonly ClimbOutObstacle[];
  readonly judged: readonly Judged[];
  /** What the surface may cost by first principles, where the policy lets it take a verdict away. */
  readonly estimate?: SurfaceEstimate;
}

/** The corrected take-off distance of the day; break-evens come through here as well. */
export function takeoffChain(
  r: Recorder,
  situation: TakeoffSituation,
  air: Air,
  used_kt: number,
  overrides?: Overrides,
): Chain {
  const chain = distanceChain(r, situation, air, used_kt, overrides);
  const { liftOff, tableLiftOff, policies } = situation;
  if (chain.missing.length > 0 || !situation.hasAddition) return chain;
  if (policies.speedAdditionInDistance === 'ignored') {
    r.decide('speed-addition-ignored', {});
    return chain;
  }
  if (!liftOff.ok) return withoutFigure(chain, liftOff.reason);
  if (!tableLiftOff.ok) return withoutFigure(chain, tableLiftOff.reason);
  if (liftOff.kcas === undefined || tableLiftOff.kcas === undefined) {
    const missing = {
      code: 'no-calibration',
      parameters: { flap: situation.flap, speed_kias: liftOff.kias, purpose: 'the cost of the speed addition' },
    } as const;
    return withoutFigure(chain, missing);
  }
  // Lighter than the mass that the table states, even the faster lift-off may be slower than the table's: no credit.
  if (liftOff.kcas <= tableLiftOff.kcas) return chain;
  const speeds = { speed: liftOff.kcas as CalibratedAirspeed, tableSpeed: tableLiftOff.kcas as CalibratedAirspeed };
  const factor = r.step('distance.speed-factor', 'factor for the speed addition', speedFactor, speeds);
  r.decide('speed-addition-paid', {
    speed_kias: liftOff.kias,
    table_kias: tableLiftOff.kias,
    speed_kcas: liftOff.kcas,
    table_kcas: tableLiftOff.kcas,
  });
  // The addition costs ground roll only; the airborne distance is flown at the screen speed.
  const roll_m = r.step('distance.corrected-distance', 'ground roll with speed addition', correctedDistance, {
    distance: chain.roll_m as Metres,
    factors: [factor],
  });
  const distance_m = chain.distance_m + roll_m - chain.roll_m;
  return lengthened(r, chain, 'speed addition', { distance_m, roll_m });
}

/** The take-off of one situation in one weather: every criterion, by one path for fast and explained results. */
export function takeoffFigures(
  r: Recorder,
  situation: TakeoffSituation,
  conditions: Conditions,
  overrides: Overrides = {},
): TakeoffFigures {
  const figures = figuresWith(r, situation, conditions, overrides);
  if (situation.policies.firstPrinciples === 'information') return figures;
  const estimate = surfaceEstimate(r, situation, figures);
  if (estimate === undefined) return figures;
  // An estimate below 1 makes nothing more adverse; one beyond any factor is as if the roll did not end.
  const judgedAt = (factor: number | undefined) =>
    factor === undefined || factor > greatestFactor
      ? undefined
      : figuresWith(callThrough, situation, conditions, { ...overrides, surfaceFactor: Math.max(1, factor) }).judged;
  const atLeast = judgedAt(estimate.low);
  const atMost = judgedAt(estimate.high);
  const judged = figures.judged.map((each, i) =>
    restsOnDistance.has(each.id) ? moreAdverse(each, atLeast?.[i], atMost?.[i]) : each,
  );
  return { ...figures, estimate, judged };
}

/** The greatest factor that a surface may have on a distance. */
const greatestFactor = 5;

/** The distance criterion alone, the same as among all of them. */
export function judgeTakeoffDistance(
  situation: TakeoffSituation,
  conditions: Conditions,
  overrides: Overrides,
): Judged {
  // What first principles may take away rests on more than the distance.
  if (situation.policies.firstPrinciples === 'more adverse') {
    const { judged } = takeoffFigures(callThrough, situation, conditions, overrides);
    return judged.find(({ id }) => id === 'takeoff-distance') as Judged;
  }
  const air = airOf(callThrough, situation, conditions);
  const wind = windOf(callThrough, situation, conditions);
  const chain = takeoffChain(callThrough, situation, air, wind.inTables_kt, overrides);
  return takeoffSafety(callThrough, situation, chain).judged;
}

const run = named('takeoff-run', 'take-off run', 'ground roll with the safety factor', 'm', 'distance available');
/** Without a factor, or where the test against the TORA has none. */
const unfactoredRun = named('takeoff-run', 'take-off run', 'ground roll', 'm', 'distance available');

const notAsked: Climb = { gradient: undefined, heightLost_m: 0, missing: [] };

/** What a longer ground roll changes. */
const restsOnDistance: ReadonlySet<Judged['id']> = new Set(['takeoff-run', 'takeoff-distance', 'obstacle']);

function figuresWith(
  r: Recorder,
  situation: TakeoffSituation,
  conditions: Conditions,
  overrides: Overrides,
): TakeoffFigures {
  const air = airOf(r, situation, conditions);
  const wind = windOf(r, situation, conditions);
  const chain = takeoffChain(r, situation, air, wind.inTables_kt, overrides);
  const safety = takeoffSafety(r, situation, chain);
  // Where nothing stands ahead the climb only informs: nobody waits for it where nobody reads.
  const climb =
    r.explains || (situation.runway.ahead?.length ?? 0) > 0
      ? climbOf(r, situation, air, wind.used_kt, situation.atScreen, situation.climbSpeed)
      : notAsked;
  const distances = {
    factored_m: safety.factored_m,
    unfactored_m: chain.distance_m,
    kind: chain.kind,
    missing: chain.missing,
  };
  const { judged: overObstacles, obstacles } = obstacleCriteria(r, situation, climb, distances);
  const words = safety.runFactor === 1 ? unfactoredRun : run;
  const runCriterion =
    chain.missing.length > 0
      ? undetermined(words, 'at most', chain.missing, roundDown(situation.runway.tora_m))
      : atMost(words, chain.roll_m * safety.runFactor, situation.runway.tora_m, chain.kind);
  const judged = [situation.massCriterion, withheldFor(runCriterion, safety.notConfirmed), safety.judged];
  for (const each of overObstacles) judged.push(withheldFor(each, safety.notConfirmed));
  addWindCriteria(judged, situation, wind);
  return { air, wind, chain, safety, climb, obstacles, judged };
}
