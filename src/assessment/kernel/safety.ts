import { correctedDistance, type FactorOrigin, type SafetyAlternative, type SafetyTest } from '../../distance/index.ts';
import { type Metres, type Ratio, roundDown } from '../../units/index.ts';
import type { RunwayInUse, Situation } from '../request/situation.ts';
import type { Reason } from '../result/reason.ts';
import type { Chain } from './chain.ts';
import { atMost, isTighter, type Judged, named, undetermined, withheldFor, worse } from './criterion.ts';
import { notConfirmed } from './shared-criteria.ts';
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
  /** Why whatever rests on the chain and these is to be withheld. */
  readonly notConfirmed: readonly Reason[];
}

const distance = named(
  'takeoff-distance',
  'take-off distance',
  'take-off distance required',
  'm',
  'distance available',
);

/** The ways in which this runway may satisfy the set; they do not change with the weather. */
export interface SafetyRule {
  readonly isIncluded: boolean;
  readonly usable: readonly SafetyAlternative[];
  /** The set's plain factor, from which the climb-out starts even where another alternative decides: the later start. */
  readonly climbOutFactor: number;
}

const unfactored = { id: 'none', against: 'TORA', factor: 1, locator: 'none', access: 'policy' } as const;
const noSafetyFactor: readonly SafetyAlternative[] = [{ needs: 'nothing', tests: [unfactored] }];

/** What of the set applies to this runway and this table. */
export function safetyRuleOf({ runway, set, safety, table }: Situation): SafetyRule {
  const isIncluded = table?.includes.safetyFactor === true;
  const alternatives = safety === 'none' || isIncluded ? noSafetyFactor : set.takeoff.safety;
  return {
    isIncluded,
    usable: alternatives.filter(
      ({ needs }) =>
        needs === 'nothing' || runway.hasClearway || (needs === 'stopway or clearway' && runway.hasStopway),
    ),
    climbOutFactor: Math.max(...(alternatives[0] as SafetyAlternative).tests.map((test) => test.factor)),
  };
}

const labels = {
  TORA: 'factored against TORA',
  TODA: 'factored against TODA',
  ASDA: 'factored against ASDA',
} as const;

/** Tries each way to satisfy the set; passing one is enough, all tests within one must pass. */
export function takeoffSafety(
  r: Recorder,
  situation: Situation & { readonly safetyRule: SafetyRule },
  chain: Chain,
): TakeoffSafety {
  const { runway, safety, safetyRule } = situation;
  if (chain.missing.length > 0) {
    return {
      judged: undetermined(distance, 'at most', chain.missing, roundDown(runway.tora_m)),
      factored_m: 0,
      factor: 1,
      available_m: runway.tora_m,
      runFactor: 1,
      used: [],
      notConfirmed: [],
    };
  }
  const { usable, isIncluded, climbOutFactor } = safetyRule;
  if (safety === 'none') r.decide('safety-factor-none', {});
  if (isIncluded) r.decide('safety-factor-included', {});
  let best = tryAlternative(r, runway, chain, usable[0] as SafetyAlternative);
  // Equally good ones keep their order: which of two is better by the rounding of a metre must not turn with every metre.
  for (let i = 1; i < usable.length; i += 1) {
    const tried = tryAlternative(r, runway, chain, usable[i] as SafetyAlternative);
    if (tried.rank > best.rank + 1e-9) best = tried;
  }
  if (usable.length > 1) {
    r.decide('safety-alternative', {
      tests: best.tests.map(({ factor, against }) => `${factor} x distance against ${against}`).join(', '),
    });
  }
  const { test, tests } = best;
  const judged = r.explains && tests.length > 1 ? saying(best) : best.judged;
  const open = joined(notConfirmed(situation, chain.used), notConfirmed(situation, tests));
  return {
    judged: withheldFor(judged, open),
    factored_m: chain.distance_m * climbOutFactor,
    factor: test.factor,
    available_m: availableFor(runway, test),
    runFactor: runFactorOf(tests) ?? test.factor,
    used: tests,
    notConfirmed: open,
  };
}

/** Of several tests the reader sees one comparison, and is told which. */
function saying({ judged, test: { factor, against } }: Tried): Judged {
  return { ...judged, reasons: [{ code: 'tightest-test', parameters: { factor, against } }, ...judged.reasons] };
}

function joined(first: readonly Reason[], second: readonly Reason[]): readonly Reason[] {
  return second.length === 0 ? first : [...first, ...second];
}

interface Tried {
  readonly tests: readonly SafetyTest[];
  /** The tightest comparison, and the test that it belongs to. */
  readonly judged: Judged;
  readonly test: SafetyTest;
  readonly rank: number;
}

function tryAlternative(r: Recorder, runway: RunwayInUse, chain: Chain, { tests }: SafetyAlternative): Tried {
  let test = tests[0] as SafetyTest;
  let judged = judgeTest(r, runway, chain, test);
  let verdict = judged.verdict;
  let left = shareLeft(runway, chain, test);
  for (let i = 1; i < tests.length; i += 1) {
    const next = tests[i] as SafetyTest;
    const other = judgeTest(r, runway, chain, next);
    verdict = worse(verdict, other.verdict);
    left = Math.min(left, shareLeft(runway, chain, next));
    if (!isTighter(other, judged)) continue;
    judged = other;
    test = next;
  }
  return { tests, judged, test, rank: rank(verdict, left) };
}

function judgeTest(r: Recorder, runway: RunwayInUse, chain: Chain, test: SafetyTest): Judged {
  const required = r.step('distance.corrected-distance', labels[test.against], correctedDistance, {
    distance: chain.distance_m as Metres,
    factors: [test.factor as Ratio],
  });
  return atMost(distance, required, availableFor(runway, test), chain.kind);
}

/** The share of the distance available that is left, unrounded; negative where there is none. */
function shareLeft(runway: RunwayInUse, { distance_m }: Chain, test: SafetyTest): number {
  return 1 - (test.factor * distance_m) / Math.max(availableFor(runway, test), 1);
}

/** Within before undetermined before outside; then by the least share of a distance available that is left, unrounded. */
function rank(verdict: Judged['verdict'], left: number): number {
  if (verdict === 'undetermined') return 1e3;
  return (verdict === 'within' ? 2e3 : 0) + left;
}

function availableFor({ tora_m, toda_m, asda_m }: RunwayInUse, { against }: SafetyTest): number {
  if (against === 'TORA') return tora_m;
  return against === 'TODA' ? toda_m : asda_m;
}

function runFactorOf(tests: readonly SafetyTest[]): number | undefined {
  for (const { against, factor } of tests) if (against === 'TORA') return factor;
  return undefined;
}
