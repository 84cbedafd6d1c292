import type { Measure } from '../../units/index.ts';
import type { LimitStatus, Verdict } from '../kernel/criterion.ts';
import type { TraceStep } from '../kernel/step.ts';
import type { LandingRequest, TakeoffRequest } from '../request/request.ts';
import type { Sentence } from './sentences.ts';
import type { WindOnRunway } from './wind-on-runway.ts';

interface CriterionBase {
  readonly id: string;
  /** What it is about: `take-off distance`, or the name of an obstacle. */
  readonly subject: string;
  readonly quantity: string;
  readonly sense: 'at most' | 'at least';
  readonly limitStatus: LimitStatus;
  readonly reasons: readonly Sentence[];
  /** Where the figure comes from: places in the trace. */
  readonly steps: readonly number[];
}

/** A comparison that could be made. */
export interface DecidedCriterion extends CriterionBase {
  readonly verdict: 'within' | 'outside';
  readonly value: Measure;
  readonly limit: Measure;
  /** Positive is favourable, whatever the sense. */
  readonly margin: Measure;
}

/** A comparison that could not be made; it has no margin, but reasons, and bounds where they are known. */
export interface UndeterminedCriterion extends CriterionBase {
  readonly verdict: 'undetermined';
  readonly limit?: Measure;
  readonly atLeast?: Measure;
  readonly atMost?: Measure;
}

/** Ask for the verdict first: only a decided criterion has a margin. */
export type Criterion = DecidedCriterion | UndeterminedCriterion;

/** One tread of the stairs in metres. */
export interface StairStep {
  readonly step: string;
  readonly factor: number;
  readonly added: Measure<'m'>;
  readonly total: Measure<'m'>;
  /** Where it comes from: places in the trace. */
  readonly steps: readonly number[];
}

/** The distance required built up from the manual's figure, against the distance available. */
export interface Stairs {
  readonly steps: readonly StairStep[];
  readonly required: Measure<'m'>;
  readonly available: Measure<'m'>;
}

/** Where the distance criterion turns while everything else stays. */
export interface BreakEvenFound {
  readonly quantity: string;
  /** `undetermined` where nothing is within and not all that was tried is outside; it may be outside today. */
  readonly answer: 'value' | 'withinThroughoutRange' | 'outsideThroughoutRange' | 'undetermined';
  readonly value?: Measure;
  readonly range: { readonly from: Measure; readonly to: Measure };
  /** What else limits the same quantity; the break-even looks at the distance alone. */
  readonly otherLimits: readonly Sentence[];
}

/** A mark on the ground, from where the roll starts or from the landing threshold. */
export interface MarkFound {
  readonly id: string;
  readonly at?: Measure<'m'>;
  readonly shareOfRunway?: Measure<'percent'>;
  readonly speed?: Measure<'kias'>;
  readonly reasons: readonly Sentence[];
  /** Where it comes from: places in the trace. */
  readonly steps: readonly number[];
}

/** A speed, by name, with how it is flown. */
export interface SpeedFound {
  readonly name: string;
  readonly speed: Measure<'kias'>;
  readonly calibrated?: Measure<'kcas'>;
  /** Where it comes from: places in the trace; empty where it is read from the data. */
  readonly steps: readonly number[];
}

/** The climb-out as gradients over the ground. */
export interface ClimbOutFound {
  /** From the climb table and the wind used; absent where it is undetermined. */
  readonly achieved?: Measure<'percent'>;
  readonly obstacles: readonly ObstacleAhead[];
}

/** An obstacle ahead, in the order of the request. */
export interface ObstacleAhead {
  readonly name: string;
  /** The gradient it demands from the 50 ft point; absent where it is undetermined or the obstacle stands before that point. */
  readonly required?: Measure<'percent'>;
}

/** One step of the working, or one decision in words. */
export type WorkingEntry = TraceStep | ({ readonly kind: 'decision' } & Sentence);

/** What both phases of flight share. */
export interface AssessmentBase {
  readonly version: string;
  readonly verdict: Verdict;
  readonly headline: readonly Sentence[];
  /** Those of all criteria, each once. */
  readonly reasons: readonly Sentence[];
  readonly criteria: readonly Criterion[];
  /** Absent where the distance is undetermined. */
  readonly stairs?: Stairs;
  /** Where the distance is undetermined: the treads before the first that has no figure. */
  readonly stairsKnown?: readonly StairStep[];
  /** The factor set used, as it names itself. */
  readonly factorSet: { readonly title: string; readonly edition: string };
  /** Of the runway in the direction of use; uphill is positive. */
  readonly slope: Measure<'percent'>;
  readonly windOnRunway: WindOnRunway;
  readonly breakEvens: readonly BreakEvenFound[];
  readonly marks: readonly MarkFound[];
  readonly speeds: readonly SpeedFound[];
  readonly advice: readonly Sentence[];
  /** What physics says beside the figures of manual and factor set; empty where nothing is estimated. */
  readonly estimates: readonly Sentence[];
  readonly hazards: readonly Sentence[];
  readonly dataNotes: readonly Sentence[];
  readonly notAssessed: readonly string[];
  readonly limitsOfUse: readonly string[];
  readonly trace: readonly WorkingEntry[];
}

/** A finished take-off assessment with its working. */
export interface TakeoffAssessment extends AssessmentBase {
  readonly schema: 'groundroll/takeoff-assessment/1';
  readonly request: TakeoffRequest;
  /** Absent where no list of obstacles was given. */
  readonly climbOut?: ClimbOutFound;
}

/** A finished landing assessment with its working. */
export interface LandingAssessment extends AssessmentBase {
  readonly schema: 'groundroll/landing-assessment/1';
  readonly request: LandingRequest;
}
