import { version } from '../../version.ts';
import type { Air, Wind } from '../kernel/air-and-wind.ts';
import type { BreakEven } from '../kernel/break-even.ts';
import { type Judged, overall } from '../kernel/criterion.ts';
import type { Chain } from '../kernel/distance-chain.ts';
import type { Mark } from '../kernel/mark.ts';
import { windAdvice } from '../kernel/shared-criteria.ts';
import type { TraceRecorder } from '../kernel/step.ts';
import type { Conditions } from '../request/conditions.ts';
import type { Situation } from '../request/situation.ts';
import type { AssessmentBase, SpeedFound } from './assessment.ts';
import { directionSpread } from './direction-spread.ts';
import { limitsOfUse, notAssessed } from './limits-of-use.ts';
import {
  breakEvenFound,
  commonHazards,
  commonNotes,
  criterionOf,
  headlineOf,
  markFound,
  namedSpeeds,
  stairsOf,
  worded,
  workingOf,
} from './present.ts';
import type { Reason } from './reason.ts';

/** What a phase of flight brings to its finished assessment. */
export interface Findings {
  readonly air: Air;
  readonly wind: Wind;
  readonly chain: Chain;
  readonly judged: readonly Judged[];
  /** The distance criterion among those judged. */
  readonly distance: Judged;
  readonly factor: number;
  readonly available_m: number;
  readonly used: Chain['used'];
  readonly breakEvens: readonly BreakEven[];
  readonly marks: readonly Mark[];
  readonly speeds: readonly SpeedFound[];
  /** Beside what both phases beware of. */
  readonly hazards: readonly Reason[];
  readonly missing: readonly string[];
  readonly distanceAt: (conditions: Conditions) => Judged;
}

/** Words the findings of either phase; the last step of every explained assessment. */
export function finished(
  r: TraceRecorder,
  situation: Situation,
  conditions: Conditions,
  findings: Findings,
): AssessmentBase {
  const { air, wind, chain, judged, distance } = findings;
  const advice = windAdvice(r, situation, wind, judged);
  const stairs = stairsOf(chain, findings.factor, findings.available_m);
  const spread = directionSpread(situation, conditions, findings.distanceAt);
  const surface = findings.breakEvens.find(({ quantity }) => quantity === 'surface factor')?.value;
  const hint: Reason[] =
    surface !== undefined && distance.verdict === 'undetermined'
      ? [{ code: 'break-even-surface', parameters: { factor: surface } }]
      : [];
  return {
    version,
    verdict: overall(judged),
    headline: headlineOf(situation, conditions, air, chain, judged, findings.used),
    reasons: worded([...judged.flatMap(({ reasons }) => reasons), ...hint]),
    criteria: judged.map(criterionOf),
    ...(stairs === undefined ? {} : { stairs }),
    breakEvens: findings.breakEvens.map(breakEvenFound),
    marks: findings.marks.map(markFound),
    speeds: [...findings.speeds, ...namedSpeeds(situation)],
    advice: worded(advice),
    hazards: worded([...commonHazards(situation, conditions, wind), ...findings.hazards]),
    dataNotes: worded([...commonNotes(situation, conditions, air, wind), ...spread]),
    notAssessed: notAssessed(findings.missing),
    limitsOfUse,
    trace: workingOf(r.trace),
  };
}
