import { type Criterion, limitsOfUse, type Verdict, verdictInWords } from '../assessment/index.ts';
import type { ReadResult } from '../documents/index.ts';
import { type AnyRequest, assessAny, isTakeoff } from './any-request.ts';
import { pressureInput } from './inputs/air.ts';
import { gustInput, turned, windDirectionInput, windSpeedInput } from './inputs/wind.ts';
import { worseSurfaces } from './inputs/worse-surfaces.ts';
import { massQuestion, temperatureQuestion } from './questions.ts';
import { type StudySentence, type StudySentenceCode, studySentence } from './sentences.ts';
import { type Question, type SolvedLimit, solve } from './solve.ts';
import { inWords, tightestFirst } from './words.ts';

/** One change that takes the verdict of within away. */
export interface ReassessTrigger {
  readonly sentence: StudySentence;
  /** What the change turns the verdict into, just beyond the limit. */
  readonly verdict: Verdict;
  /** The criteria that turn, the limiting one first. */
  readonly limitedBy: readonly Criterion[];
  /** The limit from which the sentence comes; none for a surface. */
  readonly limit?: SolvedLimit;
}

/** What calls for another assessment, in words, each from a limit that was solved. */
export interface ReassessTriggers {
  readonly verdict: Verdict;
  /** All of them in one sentence. */
  readonly sentence: StudySentence;
  /** Wind, surface, temperature, pressure, mass; empty unless the verdict is within. */
  readonly triggers: readonly ReassessTrigger[];
  /** Each is solved with everything else as it stands; two changes together may turn the verdict sooner. */
  readonly limitsOfUse: readonly string[];
}

const oneAtATime =
  'Each of these limits holds while everything else stays as assessed; two changes together may turn the verdict sooner.';

/**
 * What must change, by itself, for the verdict to turn: wind direction either way, wind speed either way, gusts, a surface
 * one step worse, temperature, pressure and mass.
 *
 * @param request - a take-off or a landing request.
 * @returns the sentence to carry along with each limit behind it, or the faults of the request.
 *
 * @example
 * reassessTriggers({ schema: 'groundroll/takeoff-request/1' } as never).ok // => false
 */
export function reassessTriggers(request: AnyRequest): ReadResult<ReassessTriggers> {
  const assessed = assessAny(request);
  if (!assessed.ok) return assessed;
  const { request: read, verdict } = assessed.value;
  const limits = [oneAtATime, ...limitsOfUse];
  if (verdict !== 'within') {
    const head = `${isTakeoff(read) ? 'Take-off' : 'Landing'} on ${read.runwayInUse}: ${verdictInWords(verdict)}`;
    const sentence = studySentence('triggers-not-within', { verdict: head });
    return { ok: true, value: { verdict, sentence, triggers: [], limitsOfUse: limits } };
  }
  const triggers = [...windTriggers(read), ...surfaceTriggers(read), ...otherTriggers(read)];
  const texts = triggers.map(({ sentence }) => sentence.text);
  const sentence =
    texts.length === 0
      ? studySentence('triggers-none')
      : studySentence('triggers', {
          triggers: [texts.slice(0, -1).join(', '), ...texts.slice(-1)].filter(Boolean).join(', or '),
        });
  return { ok: true, value: { verdict, sentence, triggers, limitsOfUse: limits } };
}

/** A trigger where the search found a value; nothing where the verdict holds throughout. */
function triggerOf(
  code: StudySentenceCode,
  question: Question,
  words?: (limit: SolvedLimit) => string,
): ReassessTrigger[] {
  const limit = solve(question);
  const { limitedBy } = limit;
  const { value } = limit.sentence.parameters;
  if (limit.answer !== 'value' || value === undefined) return [];
  const quantity = question.input.id === 'pressure' ? limit.quantity : limit.quantity.toLowerCase();
  const sentence = studySentence(code, { quantity, value: words?.(limit) ?? value });
  return [{ sentence, verdict: limitedBy[0]?.verdict ?? 'undetermined', limitedBy, limit }];
}

function windTriggers(request: AnyRequest): ReassessTrigger[] {
  const direction = windDirectionInput(request);
  const speed = windSpeedInput(request);
  const gust = gustInput(request);
  const today = speed.today as number;
  const turns =
    direction === undefined
      ? []
      : (['trigger-backs', 'trigger-veers'] as const).flatMap((code) => {
          const from = direction.today as number;
          const question = {
            request,
            input: direction,
            favourable: from,
            adverse: from + (code === 'trigger-backs' ? -180 : 180),
          };
          // A search counts on beyond north; a pilot does not.
          return triggerOf(code, question, ({ value }) =>
            inWords({ value: turned(value?.value ?? 0, 0), unit: direction.unit }),
          );
        });
  const within = (value: number) => Math.min(speed.max, value);
  return [
    ...turns,
    ...triggerOf('trigger-wind-above', { request, input: speed, favourable: today, adverse: within(today + 40) }),
    ...triggerOf('trigger-wind-below', { request, input: speed, favourable: today, adverse: 0 }),
    ...triggerOf('trigger-gust', {
      request,
      input: gust,
      favourable: gust.today as number,
      adverse: Math.min(gust.max, (gust.today as number) + 40),
    }),
  ];
}

function surfaceTriggers(request: AnyRequest): ReassessTrigger[] {
  return worseSurfaces(request.runway.surface).flatMap(({ surface, words }) => {
    const assessed = assessAny({ ...request, runway: { ...request.runway, surface } });
    if (!assessed.ok || assessed.value.verdict === 'within') return [];
    const { verdict, criteria } = assessed.value;
    const limitedBy = tightestFirst(criteria.filter((each) => each.verdict !== 'within'));
    return [{ sentence: studySentence('trigger-surface', { words }), verdict, limitedBy }];
  });
}

function otherTriggers(request: AnyRequest): ReassessTrigger[] {
  const pressure = pressureInput(request);
  return [
    ...triggerOf('trigger-above', temperatureQuestion(request)),
    ...triggerOf('trigger-below', {
      request,
      input: pressure,
      favourable: pressure.today as number,
      adverse: pressure.min,
    }),
    ...triggerOf('trigger-above', massQuestion(request)),
  ];
}
