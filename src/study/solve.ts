import { type Criterion, greatestWithin, limitsOfUse, type Verdict } from '../assessment/index.ts';
import { faultLine } from '../documents/index.ts';
import { type Measure, roundDown, type UnitWord } from '../units/index.ts';
import { type AnyRequest, assessAny } from './any-request.ts';
import { comparisonsOf } from './comparisons.ts';
import type { StudyInput } from './inputs/study-input.ts';
import { type StudySentence, studySentence } from './sentences.ts';
import { capital, criterionInWords, inWords, stepOf, tightestFirst } from './words.ts';

/** Where the whole verdict turns while one input changes and everything else stays. */
export interface SolvedLimit {
  readonly quantity: string;
  /** `undetermined` where nothing that was tried is within and not all of it is outside. */
  readonly answer: 'value' | 'withinThroughoutRange' | 'outsideThroughoutRange' | 'undetermined';
  /** The last value that is within, rounded to the safe side. */
  readonly value?: Measure<UnitWord>;
  /** What was searched, from its favourable end, or today's value where that is within, to its adverse one. */
  readonly range: { readonly from: Measure<UnitWord>; readonly to: Measure<UnitWord> };
  /** The step to which the value is rounded: one step beyond it the verdict is not within. */
  readonly tolerance: number;
  /** The criteria that turn: all that are not within just beyond the value, the limiting one first. */
  readonly limitedBy: readonly Criterion[];
  /** How many values were tried, each by assessing the whole request. */
  readonly evaluations: number;
  /** The working: every value that was tried, with its verdict. */
  readonly working: readonly { readonly at: number; readonly verdict: Verdict }[];
  readonly sentence: StudySentence;
  readonly limitsOfUse: readonly string[];
}

/** What to search for: the input, and the ends of the search, favourable and adverse. */
export interface Question {
  readonly request: AnyRequest;
  readonly input: StudyInput;
  readonly favourable: number;
  readonly adverse: number;
  /** The step of the answer; that of the unit if not given. */
  readonly step?: number;
}

/**
 * In so many strides the range is walked before the bisection. Speeds that are rounded up to a whole knot make a verdict
 * step a little: the walk finds the first place where it turns, not just any.
 */
const strides = 16;

/**
 * Walks from the favourable end, or from today's value where that is within, to the first value that is not within, and
 * bisects there. What is undetermined does not count as within.
 */
export function solve({ request, input, favourable, adverse, step = stepOf(input.unit) }: Question): SolvedLimit {
  const { today } = input;
  // The search runs upwards along the adversity of the input, whichever way its own figures run.
  const sign = adverse >= favourable ? 1 : -1;
  const compare = comparisonsOf(request, input);
  const tried = new Map<number, Verdict>();
  const verdictAt = (adversity: number): Verdict => {
    const value = adversity * sign + 0;
    const verdict = tried.get(value) ?? compare(value).verdict;
    tried.set(value, verdict);
    return verdict;
  };
  const isWithin = (adversity: number) => verdictAt(adversity) === 'within';
  const end = adverse * sign;
  const fromToday = today !== undefined && today * sign <= end && isWithin(today * sign);
  const begin = (fromToday ? today : favourable) * sign;
  // On whole steps, so that the bisection between two of them ends on one.
  const stops = Array.from({ length: strides + 1 }, (_, i) => {
    if (i === 0 || i === strides) return i === 0 ? begin : end;
    return Math.max(begin, roundDown(begin + ((end - begin) * i) / strides, step));
  });
  const first = stops.findIndex(isWithin);
  const search: Search = { input, sign, step, from: begin, to: end, tried };
  if (first < 0) {
    const isOutside = stops.every((stop) => verdictAt(stop) === 'outside');
    return limitOf(search, isOutside ? 'outsideThroughoutRange' : 'undetermined', undefined, begin);
  }
  const from = stops[first] as number;
  const turn = stops.findIndex((stop, i) => i > first && !isWithin(stop));
  if (turn < 0) return limitOf({ ...search, from }, 'withinThroughoutRange', undefined, undefined);
  const not = stops[turn] as number;
  const found = greatestWithin({ from: stops[turn - 1] as number, to: not, step }, verdictAt);
  let value = found.value as number;
  // Today's value need not be a whole step: what is printed is, on the side that needs less.
  const whole = roundDown(value, step);
  if (whole < value && isWithin(whole)) value = whole;
  // The bisection stops a little short of where the verdict turns; that may be just short of a whole step.
  const next = () => Math.min(not, roundDown(value, step) + step);
  while (next() < not && isWithin(next())) value = next();
  return limitOf({ ...search, from }, 'value', value, next());
}

interface Search {
  readonly input: StudyInput;
  readonly sign: 1 | -1;
  readonly step: number;
  readonly from: number;
  readonly to: number;
  readonly tried: ReadonlyMap<number, Verdict>;
}

/** The answer with what turns at `beyond`. */
function limitOf(
  { input, sign, step, from, to, tried }: Search,
  answer: SolvedLimit['answer'],
  value: number | undefined,
  beyond: number | undefined,
): SolvedLimit {
  const measured = (adversity: number): Measure<UnitWord> => ({ value: adversity * sign + 0, unit: input.unit });
  const turning = beyond === undefined ? { criteria: [], words: '' } : notWithin(input, beyond * sign + 0);
  const range = { from: measured(from), to: measured(to) };
  // What is not whole is said towards what was searched, and a value towards what needs less.
  const [inwards, favourably] = sign > 0 ? (['up', 'down'] as const) : (['down', 'up'] as const);
  return {
    quantity: input.quantity,
    answer,
    ...(value === undefined ? {} : { value: measured(value) }),
    range,
    tolerance: step,
    limitedBy: turning.criteria,
    evaluations: tried.size,
    working: [...tried].map(([at, verdict]) => ({ at, verdict })),
    sentence: studySentence(codes[answer], {
      quantity: capital(input.quantity),
      from: inWords(range.from, step, inwards),
      to: inWords(range.to, step, favourably),
      ...(value === undefined ? {} : { value: inWords(measured(value), step, favourably) }),
      way: sign > 0 ? 'up to' : 'down to',
      turning: turning.words,
    }),
    limitsOfUse,
  };
}

const codes = {
  value: 'limit-value',
  withinThroughoutRange: 'limit-within-throughout',
  outsideThroughoutRange: 'limit-outside-throughout',
  undetermined: 'limit-undetermined',
} as const;

/** What is not within at a value, by the explained assessment; or why there is none. */
function notWithin(input: StudyInput, value: number): { criteria: readonly Criterion[]; words: string } {
  const assessed = assessAny(input.at(value));
  if (!assessed.ok) return { criteria: [], words: assessed.faults.map(faultLine).join('; ') };
  const criteria = tightestFirst(assessed.value.criteria.filter(({ verdict }) => verdict !== 'within'));
  return { criteria, words: criteria.slice(0, 1).map(criterionInWords).join() };
}
