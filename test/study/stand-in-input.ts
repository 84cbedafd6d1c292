import type { Verdict } from '../../src/assessment/index.ts';
import type { AnyRequest } from '../../src/study/any-request.ts';
import type { StudyInput } from '../../src/study/inputs/study-input.ts';
import type { Question } from '../../src/study/solve.ts';
import { type Changes, takeoffRequest } from '../assessment/scenario.ts';

/** The ends of a search, the favourable first, and what the request says today. */
export interface Limits {
  readonly from: number;
  readonly to: number;
  readonly today?: number;
  readonly step?: number;
  /** The weather alone, which is quicker; the request where it may not be readable. */
  readonly changes?: 'weather' | 'request';
}

/**
 * A request of every verdict: within is published with the scenario; 30 kt from 202° are all across 292°, where 18 are
 * the limit; the tables end at 40 °C.
 */
const changesFor: Record<Verdict | 'unreadable', Changes> = {
  within: {},
  outside: { 'weather.wind.from.value': 202, 'weather.wind.speed.value': 30, 'weather.wind.gust.value': 30 },
  undetermined: { 'weather.temperature.value': 45 },
  unreadable: { 'mass.value': -1 },
};
const requests = new Map<string, AnyRequest>();

function requestOf(verdict: Verdict | 'unreadable'): AnyRequest {
  const known = requests.get(verdict) ?? takeoffRequest('takeoff-28', changesFor[verdict]);
  requests.set(verdict, known);
  return known;
}

/** What cannot be read is undetermined. */
export function assessed(verdict: Verdict | 'unreadable'): Verdict {
  return verdict === 'unreadable' ? 'undetermined' : verdict;
}

/** A question about a figure whose verdict is known at every value. */
export function questionOf(verdictAt: (value: number) => Verdict | 'unreadable', limits: Limits): Question {
  const { from, to, today, step, changes = 'weather' } = limits;
  const input: StudyInput = {
    id: 'mass',
    changes,
    quantity: 'figure',
    unit: 'kg',
    today,
    min: Math.min(from, to),
    max: Math.max(from, to),
    at: (value) => requestOf(verdictAt(value)),
  };
  const question = { request: requestOf('within'), input, favourable: from, adverse: to };
  return step === undefined ? question : { ...question, step };
}
