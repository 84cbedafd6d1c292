import {
  type BreakEvenFound,
  type Criterion,
  type LandingAssessment,
  type MarkFound,
  marginInWords,
  type SentenceCode,
  type StairStep,
  type TakeoffAssessment,
  type Verdict,
  verdictInWords,
} from '../assessment/index.ts';
import { surfaceInWords } from '../distance/index.ts';
import { asGiven } from '../units/as-given.ts';
import { comparisonDecimals } from '../units/comparison-step.ts';
import {
  type FormatOptions,
  formatNumber,
  formatSlope,
  formatValue,
  type Measure,
  type Percent,
} from '../units/index.ts';
import type { UnitWord } from '../units/unit-table.ts';

/** Either finished assessment. */
export type Assessment = TakeoffAssessment | LandingAssessment;

/** A line of a worksheet: a sentence, and in the ledger at its right edge the metres that it adds and the running total. */
export interface WorksheetLine {
  readonly sentence: string;
  /** What the sentence speaks of today, where there is room for it. */
  readonly detail?: string;
  /** By which the total before is multiplied. */
  readonly factor?: string;
  readonly added?: string;
  readonly total?: string;
  readonly verdict?: Verdict;
  /** Where its figures come from: places in the trace. */
  readonly steps: readonly number[];
}

/** A measure with its unit in words. */
export const shown = (measured: Measure, decimals = 0, rounding: FormatOptions['rounding'] = 'nearest') =>
  formatValue(measured.value, measured.unit as UnitWord, { decimals, rounding });
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

/** The stairs in metres, one sentence a tread; where one has no figure, the last sentence says so. */
export function stairLines(assessment: Assessment): WorksheetLine[] {
  const { stairs, stairsKnown = [] } = assessment;
  if (stairs !== undefined) return treadLines(stairs.steps, assessment);
  const open = { sentence: 'The distance required', total: 'undetermined', steps: [] };
  return [...treadLines(stairsKnown, assessment), open];
}

function treadLines(treads: readonly StairStep[], assessment: Assessment): WorksheetLine[] {
  return treads.map(({ step, factor, added, total, steps }, i) => {
    const detail = todays(step, assessment);
    return {
      sentence: stairInWords(step),
      ...(detail === undefined ? {} : { detail }),
      ...(i === 0 ? {} : { factor: formatNumber(factor, { decimals: 3 }), added: addedMetres(added.value) }),
      total: metres(total.value),
      steps,
    };
  });
}

/** The name of a tread as it reads in the ledger. */
export function stairInWords(step: string): string {
  return stairWords[step] ?? step;
}

function addedMetres(value: number): string {
  return `${value < 0 ? '' : '+'}${metres(value)}`;
}

/** What a tread speaks of today: the wind used, the surface, the slope. */
function todays(step: string, assessment: Assessment): string | undefined {
  const { request, windOnRunway, slope, factorSet, headline, trace } = assessment;
  const { mass, weather, runway, runwayInUse, performanceData, configuration } = request;
  const air = headline.find(({ code }) => code.startsWith('pressure-altitude'))?.parameters['pressureAltitude_ft'];
  const altitude = shown({ value: Number(air), unit: 'ftPA' }, 0, 'up');
  const temperature = asGiven(weather.temperature);
  const said = (code: SentenceCode) =>
    trace.flatMap((entry) => (entry.kind === 'decision' && entry.code === code ? [entry.text] : []))[0];
  switch (step) {
    case 'manual': {
      const flown = performanceData.configurations.find(({ id }) => id === configuration)?.name;
      return [performanceData.identity.name, flown, asGiven(mass), altitude, temperature].filter(Boolean).join(', ');
    }
    case 'mass':
      return asGiven(mass);
    case 'elevation':
      return altitude;
    case 'temperature':
      return temperature;
    case 'wind':
      return windInWords(windOnRunway.along.inTables.value);
    case 'surface':
      return surfaceInWords(runway.surface);
    case 'slope':
      return `${formatSlope(slope.value as Percent)} in the direction of ${runwayInUse}`;
    case 'speed addition':
      return said('speed-addition-paid');
    case 'excess height':
      return said('excess-height-paid');
    case 'safety factor':
      return factorSet.title;
    default:
      return undefined;
  }
}

/** To two decimals, as the working has it. */
function windInWords(along_kt: number): string {
  if (along_kt === 0) return 'none along the runway';
  return `${formatNumber(Math.abs(along_kt), { decimals: 2 })} kt ${along_kt < 0 ? 'tailwind' : 'headwind'}`;
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
  const decimals = comparisonDecimals(criterion.value.unit as UnitWord);
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
  // Nothing beyond what was searched.
  const between = `${shown(range.from, decimals, 'up')} to ${shown(range.to, decimals, 'down')}`;
  if (answer === 'withinThroughoutRange') return `${capital(quantity)}: within throughout the range, ${between}.`;
  // Some of it may be outside, today's value too.
  if (answer === 'undetermined')
    return `${capital(quantity)}: not within anywhere in the range, ${between}; undetermined in some or all of it.`;
  if (answer === 'outsideThroughoutRange' || value === undefined)
    return `${capital(quantity)}: not within anywhere in the range, ${between}.`;
  return `${capital(quantity)}: within up to ${shown(value, decimals, 'down')}.`;
}

/** The name of a mark: `Latest reject point`. */
export function markInWords(id: string): string {
  return markWords[id] ?? id;
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
  const name = markInWords(id);
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
  const from = typeof wind.from === 'string' ? wind.from : asGiven(wind.from);
  const gust = wind.gust === undefined ? '' : ` gusting ${asGiven(wind.gust)}`;
  return `Completed for ${performanceData.identity.name}, ${asGiven(mass)}, ${runway.aerodrome} ${runwayInUse}; wind ${from} ${asGiven(wind.speed)}${gust}, ${asGiven(temperature)}.`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
