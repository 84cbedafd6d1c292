import {
  type BreakEvenFound,
  type Criterion,
  type LandingAssessment,
  type MarkFound,
  marginInWords,
  type TakeoffAssessment,
  verdictInWords,
} from '../assessment/index.ts';
import { formatNumber, formatValue, type Measure } from '../units/index.ts';
import type { UnitWord } from '../units/unit-table.ts';

/** Either finished assessment. */
export type Assessment = TakeoffAssessment | LandingAssessment;

/** A line of the ledger: a sentence, and at its right edge the metres that it adds and the running total. */
export interface LedgerLine {
  readonly sentence: string;
  readonly added?: string;
  readonly total?: string;
}

const shown = (measured: Measure, decimals = 0) => formatValue(measured.value, measured.unit as UnitWord, { decimals });
const metres = (value: number) => `${value < 0 ? '\u2212' : ''}${formatNumber(Math.abs(value), { decimals: 1 })} m`;

const stairWords: Readonly<Record<string, string>> = {
  manual: "The manual's figure for mass, altitude and temperature",
  technique: 'as the pilot flies it',
  mass: 'for the mass above the table',
  elevation: 'for the altitude above the table',
  temperature: 'for the temperature above the table',
  wind: 'with the wind used',
  surface: 'on this surface',
  slope: 'on this slope',
  'speed addition': 'for the speed above the table speed',
  'excess height': 'for passing the threshold too high',
  'safety factor': 'with the safety factor',
  'no safety factor': 'without a safety factor',
};

/** The stairs in metres, one sentence a tread. */
export function stairLines(assessment: Assessment): LedgerLine[] {
  const { stairs } = assessment;
  if (stairs === undefined) return [{ sentence: 'The distance required', total: 'undetermined' }];
  return stairs.steps.map(({ step, factor, added, total }, i) => ({
    sentence: `${stairWords[step] ?? step}${i === 0 ? '' : `, x ${formatNumber(factor, { decimals: 3 })}`}`,
    ...(i === 0 ? {} : { added: `${added.value < 0 ? '' : '+'}${metres(added.value)}` }),
    total: metres(total.value),
  }));
}

/** A criterion as a closing sentence: `Needs 771 m of 830 m: within limits, 59 m to spare`. */
export function criterionSentence(criterion: Criterion): string {
  const status = criterion.limitStatus === 'distance available' ? '' : ` (${criterion.limitStatus})`;
  if (criterion.verdict === 'undetermined') {
    const known = criterion.atLeast
      ? ` It is at least ${shown(criterion.atLeast)}.`
      : criterion.atMost
        ? ` It is at most ${shown(criterion.atMost)}.`
        : '';
    return `${capital(criterion.quantity)}${status}: undetermined.${known}`;
  }
  const decimals = criterion.value.unit === 'percent' ? 1 : 0;
  const verb = criterion.sense === 'at most' ? 'of' : 'against';
  const margin = marginInWords(criterion.margin.value, criterion.margin.unit as UnitWord);
  return `${capital(criterion.quantity)}${status}: ${shown(criterion.value, decimals)} ${verb} ${shown(criterion.limit, decimals)}, ${verdictInWords(criterion.verdict)}, ${margin}.`;
}

/** A break-even as sentences, with what else limits the same quantity. */
export function breakEvenSentence(found: BreakEvenFound): string {
  return [distanceAlone(found), ...found.otherLimits.map(({ text }) => text)].join(' ');
}

function distanceAlone({ quantity, answer, value, range }: BreakEvenFound): string {
  const decimals = quantity === 'surface factor' ? 3 : quantity === 'tailwind' ? 1 : 0;
  const between = `${shown(range.from, decimals)} to ${shown(range.to, decimals)}`;
  if (answer === 'withinThroughoutRange') return `${capital(quantity)}: within throughout the range, ${between}.`;
  if (answer === 'undetermined') return `${capital(quantity)}: undetermined throughout the range, ${between}.`;
  if (answer === 'outsideThroughoutRange' || value === undefined)
    return `${capital(quantity)}: not within anywhere in the range, ${between}.`;
  return `${capital(quantity)}: within up to ${shown(value, decimals)}.`;
}

const markWords: Readonly<Record<string, string>> = {
  'latest-lift-off': 'Latest lift-off',
  'acceleration-check': 'Acceleration check',
  'latest-reject-point': 'Latest reject point',
  'latest-touchdown-point': 'Latest touchdown point',
  'latest-go-around-point': 'Latest go-around point',
  'aiming-point': 'Aiming point',
};

/** A mark on the ground as a sentence. */
export function markSentence({ id, at, shareOfRunway, speed, reasons }: MarkFound): string {
  const name = markWords[id] ?? id;
  if (at === undefined) return `${name}: none. ${reasons.map(({ text }) => text).join(' ')}`;
  const basis = reasons.map(({ text }) => ` ${text}`).join('');
  if (at.value < 0) return `${name}: ${formatNumber(-at.value)} m before the threshold.${basis}`;
  const due = speed === undefined ? '' : `, where ${shown(speed)} are due`;
  const share = shareOfRunway === undefined ? '' : ` (${shown(shareOfRunway)} of the runway)`;
  return `${name}: ${shown(at)}${share}${due}.${basis}`;
}

/** Whom and what the worksheet is completed for. */
export function completedFor({ request }: Assessment): string {
  const { performanceData, runway, runwayInUse, mass, weather } = request;
  const { wind, temperature } = weather;
  const from = typeof wind.from === 'string' ? wind.from : shown(wind.from);
  const gust = wind.gust === undefined ? '' : ` gusting ${shown(wind.gust)}`;
  return `Completed for ${performanceData.identity.name}, ${shown(mass)}, ${runway.aerodrome} ${runwayInUse}; wind ${from} ${shown(wind.speed)}${gust}, ${shown(temperature)}.`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
