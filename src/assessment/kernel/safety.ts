import { correctedDistance, type FactorOrigin, type SafetyAlternative } from '../../distance/index.ts';
import { type Metres, type Ratio, roundDown } from '../../units/index.ts';
import type { Situation } from '../request/situation.ts';
import { atMost, type Judged, limiting, overall, undetermined } from './criterion.ts';
import type { Chain } from './distance-chain.ts';
import { withholdRecalled } from './shared-criteria.ts';
import type { Recorder } from './step.ts';

/** The take-off distance judged by the better of the set's alternatives. */
export interface TakeoffSafety {
  readonly judged: Judged;
  /** The factored distance from which the climb-out starts. */
  readonly factored_m: number;
  readonly factor: number;
  readonly available_m: number;
  /** By which the ground roll is multiplied before it is compared with the TORA. */
  readonly runFactor: number;
  readonly used: readonly FactorOrigin[];
}

const named = {
  id: 'takeoff-distance',
  subject: 'take-off distance',
  quantity: 'take-off distance required',
  unit: 'm',
  limitStatus: 'distance available',
} as const;

/** Tries each way to satisfy the set; passing one is enough, all tests within one must pass. */
export function takeoffSafety(r: Recorder, situation: Situation, chain: Chain): TakeoffSafety {
  const { runway, set, safety, table } = situation;
  const available = { TORA: runway.tora_m, TODA: runway.toda_m, ASDA: runway.asda_m };
  if (chain.missing.length > 0) {
    return {
      judged: undetermined(named, 'at most', chain.missing, roundDown(runway.tora_m)),
      factored_m: 0,
      factor: 1,
      available_m: runway.tora_m,
      runFactor: 1,
      used: [],
    };
  }
  const isIncluded = table?.includes.safetyFactor === true;
  if (safety === 'none') r.decide('safety-factor-none', {});
  if (isIncluded) r.decide('safety-factor-included', {});
  const unfactored = { id: 'none', against: 'TORA', factor: 1, locator: 'none', access: 'policy' } as const;
  const alternatives: readonly SafetyAlternative[] =
    safety === 'none' || isIncluded ? [{ needs: 'nothing', tests: [unfactored] }] : set.takeoff.safety;
  const usable = alternatives.filter(
    ({ needs }) => needs === 'nothing' || runway.hasClearway || (needs === 'stopway or clearway' && runway.hasStopway),
  );
  const tried = usable.map(({ tests }) => {
    const judged = tests.map((test) => {
      const required = r.step('distance.corrected-distance', `factored against ${test.against}`, correctedDistance, {
        distance: chain.distance_m as Metres,
        factors: [test.factor as Ratio],
      });
      return { test, judged: atMost(named, required, available[test.against], chain.kind) };
    });
    const tightest = limiting(judged.map((each) => each.judged));
    const found = judged.find((each) => each.judged === tightest) as (typeof judged)[number];
    const left = tests.map((test) => 1 - (test.factor * chain.distance_m) / Math.max(available[test.against], 1));
    return { tests, verdict: overall(judged.map((each) => each.judged)), tightest, test: found.test, left };
  });
  // Equally good ones keep their order: which of two is better by the rounding of a metre must not turn with every metre.
  const best = tried.reduce((a, b) => (rank(b) > rank(a) + 1e-9 ? b : a));
  if (usable.length > 1) {
    r.decide('safety-alternative', {
      tests: best.tests.map(({ factor, against }) => `${factor} x distance against ${against}`).join(', '),
    });
  }
  // The climb-out starts from the set's plain factor even where another alternative decides: the later start is the safer side.
  const factor = Math.max(...(alternatives[0]?.tests ?? []).map((test) => test.factor));
  return {
    judged: withholdRecalled(situation, best.tightest, [...chain.used, ...best.tests]),
    factored_m: chain.distance_m * factor,
    factor: best.test.factor,
    available_m: available[best.test.against],
    runFactor: best.tests.find(({ against }) => against === 'TORA')?.factor ?? best.test.factor,
    used: best.tests,
  };
}

/** Within before undetermined before outside; then by the least share of a distance available that is left, unrounded. */
function rank({ verdict, left }: { verdict: Judged['verdict']; left: readonly number[] }): number {
  if (verdict === 'undetermined') return 1e3;
  return (verdict === 'within' ? 2e3 : 0) + Math.min(...left);
}
