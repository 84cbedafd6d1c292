import { marginInWords, verdictInWords } from '../../assessment/index.ts';
import type { Fault } from '../../documents/index.ts';
import type { Measure } from '../../units/index.ts';
import { type AnyAssessment, type AnyRequest, assessAny } from '../any-request.ts';
import { temperatureInput } from '../inputs/air.ts';
import { inUnit, plain } from '../inputs/study-input.ts';
import { temperatureQuestion } from '../questions.ts';
import { studySentence } from '../sentences.ts';
import { solve } from '../solve.ts';
import { capital, criterionInWords, named, tightestFirst } from '../words.ts';
import type { RowAsked } from './axes.ts';
import type { RunwayDistanceCell, RunwayDistanceRow, WarmestTemperature } from './data.ts';

/** A row with the assessments behind it, or what is wrong with some of them. */
export interface RowFound {
  readonly row: RunwayDistanceRow;
  readonly assessments: readonly AnyAssessment[];
  readonly faults: readonly Fault[];
}

/** Assesses every cell of a row, and finds its warmest temperature. */
export function rowOf(asked: RowAsked, temperatures: readonly Measure<'degC'>[], place: number): RowFound {
  const { at, words, loading, request } = asked;
  const { at: changed } = temperatureInput(inCelsius(request));
  const cells: RunwayDistanceCell[] = [];
  const assessments: AnyAssessment[] = [];
  const faults: Fault[] = [];
  for (const [i, temperature] of temperatures.entries()) {
    const assessed = assessAny(changed(temperature.value));
    if (assessed.ok) {
      assessments.push(assessed.value);
      cells.push(cellOf(assessed.value, temperature));
      continue;
    }
    const path = (each: Fault) =>
      /^weather\.(temperature|dewPoint)/.test(each.path) ? `axes.temperatures[${i}]` : `axes.${asked.path}[${place}]`;
    faults.push(...assessed.faults.map((each) => ({ path: path(each), message: each.message })));
  }
  const speeds = (assessments[0]?.speeds ?? [])
    .filter(({ name }) => !name.startsWith('V_'))
    .map(({ steps: _, ...speed }) => speed);
  const row = {
    at,
    words,
    ...(loading === undefined ? {} : { loading }),
    cells,
    speeds,
    warmest: warmestOf(request, words),
  };
  return { row, assessments, faults };
}

function cellOf({ criteria, verdict }: AnyAssessment, temperature: Measure<'degC'>): RunwayDistanceCell {
  const distance = criteria.find(({ id }) => id.endsWith('-distance'));
  const [limiting] = tightestFirst(criteria);
  const what =
    limiting === undefined
      ? ''
      : limiting.verdict === 'undetermined'
        ? named(limiting.subject)
        : criterionInWords(limiting);
  const notWithin = studySentence('cell-not-within', { verdict: verdictInWords(verdict), what });
  if (distance === undefined || distance.verdict === 'undetermined')
    return { temperature, verdict, sentence: notWithin };
  const { value, limit, margin } = distance;
  return {
    temperature,
    verdict,
    required: value as Measure<'m'>,
    available: limit as Measure<'m'>,
    spare: margin as Measure<'m'>,
    sentence:
      verdict === 'within' ? studySentence('cell-within', { margin: marginInWords(margin.value, 'm') }) : notWithin,
  };
}

/** Searched from the cold end, whatever the temperature of the request. */
function warmestOf(request: AnyRequest, words: string): WarmestTemperature {
  const question = temperatureQuestion(inCelsius(request));
  const {
    answer,
    value,
    range,
    sentence: solved,
  } = solve({ ...question, input: { ...question.input, today: undefined } });
  const row = capital(words);
  const { from = '', to = '', value: temperature = '' } = solved.parameters;
  const found = { answer, range: range as WarmestTemperature['range'] };
  if (answer === 'value' && value !== undefined) {
    const sentence = studySentence('warmest-value', { row, temperature });
    return { ...found, value: value as Measure<'degC'>, sentence };
  }
  const code = answer === 'withinThroughoutRange' ? 'warmest-throughout' : 'warmest-none';
  return { ...found, sentence: studySentence(code, { row, from, to }) };
}

/** The columns are in degrees Celsius, whatever the request states. */
function inCelsius(request: AnyRequest): AnyRequest {
  const temperature = { value: plain(inUnit(request.weather.temperature, 'degC')), unit: 'degC' } as const;
  return { ...request, weather: { ...request.weather, temperature } };
}
