import { version } from '../../version.ts';
import type { Air, Wind } from '../kernel/air-and-wind.ts';
import type { BreakEven } from '../kernel/break-even.ts';
import type { Chain } from '../kernel/chain.ts';
import { type Judged, overall } from '../kernel/criterion.ts';
import type { Mark } from '../kernel/mark.ts';
import { windAdvice } from '../kernel/shared-criteria.ts';
import type { TraceRecorder } from '../kernel/step.ts';
import type { SurfaceEstimate } from '../kernel/surface-estimate.ts';
import { wheelHazards } from '../kernel/wheels.ts';
import type { Conditions } from '../request/conditions.ts';
import type { Situation } from '../request/situation.ts';
import type { AssessmentBase, SpeedFound } from './assessment.ts';
import { directionSpread } from './direction-spread.ts';
import { estimateReasons } from './estimate-reasons.ts';
import { limitsOfUse, notAssessed } from './limits-of-use.ts';
import {
  breakEvenFound,
  commonHazards,
  commonNotes,
  criterionOf,
  headlineOf,
  markFound,
  namedSpeeds,
  stairsKnownOf,
  stairsOf,
  worded,
  workingOf,
} from './present.ts';
import type { Reason } from './reason.ts';
import { Working } from './steps-behind.ts';
import { windOnRunway } from './wind-on-runway.ts';

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
  /** Beside what there is to know about the figures of both phases. */
  readonly notes: readonly Reason[];
  readonly estimate: SurfaceEstimate | undefined;
  readonly missing: readonly string[];
  /** The speeds read, with the axes on which they were read at an edge. */
  readonly edges: readonly ({ ok: true; edges: readonly Reason[] } | { ok: false })[];
  /** Every criterion under other conditions. */
  readonly judgedAt: (conditions: Conditions) => readonly Judged[];
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
  const wheels = wheelHazards(r, situation);
  const isFactored =
    situation.safety === 'of the set' &&
    situation.set.hasSafetyFactor &&
    situation.table?.includes.safetyFactor !== true;
  const working = new Working(r.trace);
  const stairs = stairsOf(chain, findings.factor, findings.available_m, isFactored, working);
  const stairsKnown = stairsKnownOf(chain, working);
  const said = (reasons: readonly Reason[]) => working.worded(worded(reasons));
  const safetySteps = stairs?.steps.at(-1)?.steps ?? [];
  const spread = directionSpread(situation, conditions, judged, findings.judgedAt);
  const surface = findings.breakEvens.find(({ quantity }) => quantity === 'surface factor')?.value;
  const edges = findings.edges.flatMap((each) => (each.ok ? each.edges : []));
  const hint: Reason[] =
    surface !== undefined && distance.verdict === 'undetermined'
      ? [{ code: 'break-even-surface', parameters: { factor: surface } }]
      : [];
  return {
    version,
    verdict: overall(judged),
    headline: working.worded(headlineOf(situation, conditions, air, chain, judged, findings.used)),
    // Run and distance share theirs: each once.
    reasons: said([...new Set([...judged.flatMap(({ reasons }) => reasons), ...hint])]),
    criteria: judged.map((each) => criterionOf(each, working, safetySteps)),
    ...(stairs === undefined ? {} : { stairs }),
    ...(stairsKnown === undefined ? {} : { stairsKnown }),
    factorSet: { title: situation.set.title, edition: situation.set.edition },
    slope: { value: situation.runway.slope_percent, unit: 'percent' },
    windOnRunway: windOnRunway(situation, conditions, wind),
    breakEvens: findings.breakEvens.map((each) => breakEvenFound(situation, each)),
    marks: findings.marks.map((each) => markFound(each, working.mark(each.id))),
    speeds: [
      ...findings.speeds.map((each) => ({ ...each, steps: working.speed(each.name, each.speed.value) })),
      ...namedSpeeds(situation),
    ],
    advice: said(advice),
    estimates: said(estimateReasons(findings.estimate)),
    hazards: said([...commonHazards(situation, conditions, wind), ...wheels, ...findings.hazards]),
    dataNotes: said([...commonNotes(situation, conditions, air, wind), ...findings.notes, ...edges, ...spread]),
    notAssessed: notAssessed(findings.missing),
    limitsOfUse,
    trace: workingOf(r.trace, working),
  };
}
