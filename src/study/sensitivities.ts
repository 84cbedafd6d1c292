import { type Comparison, type LimitStatus, limitsOfUse } from '../assessment/index.ts';
import type { Fault, ReadResult } from '../documents/index.ts';
import { formatNumber, formatValue, type Measure, roundUp, type UnitWord } from '../units/index.ts';
import { convert, isUnitWord } from '../units/unit-table.ts';
import { type AnyRequest, assessAny, prepareAny, weatherOf } from './any-request.ts';
import { objectFaults } from './argument-faults.ts';
import { comparisonsOf } from './comparisons.ts';
import { inputsOf } from './inputs/all.ts';
import type { StudyInput } from './inputs/study-input.ts';
import { differenceIn, plausibleChanges, type SensitivityInputId } from './plausible-changes.ts';
import { type StudySentence, studySentence } from './sentences.ts';
import { capital, inWords, named, stepOf } from './words.ts';

/** What one input does to the margin of one criterion. */
export interface MarginSensitivity {
  readonly id: string;
  readonly subject: string;
  readonly limitStatus: LimitStatus;
  /** Today's, as the assessment prints it. */
  readonly margin: Measure<UnitWord>;
  /** Change of the margin, in its unit, for one unit of the input more; not rounded. Absent without a figure to either side. */
  readonly perUnit?: number;
  /** From both sides of today's value; from one alone where the other has no figure or cannot be. */
  readonly difference: 'central' | 'upwards only' | 'downwards only' | 'none';
  /** To which side the plausible change leaves the criterion without a figure, so that it is undetermined there. */
  readonly undetermined?: 'upwards' | 'downwards' | 'both ways';
  /**
   * The most that the plausible change takes off the margin, to whichever side; 0 where it takes nothing. Not rounded; the
   * sentence rounds it up.
   */
  readonly eaten: number;
  /**
   * What is eaten as a share of the margin before it is rounded; absent where there is no margin left to eat. The order is
   * by this one; the sentence has the share of the margin that it prints, which is greater.
   */
  readonly share?: number;
}

/** What one input does to every criterion that is decided today; what has no figure after the change comes first. */
export interface Sensitivity {
  readonly input: SensitivityInputId;
  readonly quantity: string;
  readonly today: Measure<UnitWord>;
  /** The change that is looked at, to either side, in the unit of the input. */
  readonly change: number;
  readonly why: string;
  /** The one that it eats most of first. */
  readonly criteria: readonly MarginSensitivity[];
  readonly sentence: StudySentence;
}

/** Which inputs matter most today. */
export interface Sensitivities {
  /** By the greatest share of a margin that their plausible change eats. */
  readonly inputs: readonly Sensitivity[];
  readonly limitsOfUse: readonly string[];
}

/** Other plausible changes than the defaults. */
export type ChangesGiven = { readonly [K in SensitivityInputId]?: Measure<UnitWord> };

/**
 * What matters most: how each margin changes with each input, for one unit and for a plausible change, found by assessing
 * again to either side of today's value.
 *
 * @param request - a take-off or a landing request.
 * @param changes - plausible changes that differ from `plausibleChanges`, by the id of the input.
 * @returns the inputs in the order in which they eat the margins, or the faults of the request and of the changes.
 *
 * @example
 * sensitivities({ schema: 'groundroll/takeoff-request/1' } as never).ok // => false
 */
export function sensitivities(request: AnyRequest, changes: ChangesGiven = {}): ReadResult<Sensitivities> {
  const assessed = assessAny(request);
  const faults = [...(assessed.ok ? [] : assessed.faults), ...changeFaults(changes)];
  if (faults.length > 0 || !assessed.ok) return { ok: false, faults };
  const { request: read } = assessed.value;
  const prepared = prepareAny(read);
  if (!prepared.ok) return prepared;
  const today = prepared.value.compare(weatherOf(read));
  const inputs = inputsOf(read).map((input) => sensitivityOf(read, input, today, changes));
  return { ok: true, value: { inputs: inputs.sort((a, b) => most(b) - most(a)), limitsOfUse } };
}

/** A change must be more than nothing and of the kind of its input. */
function changeFaults(changes: ChangesGiven): Fault[] {
  const unreadable = objectFaults('changes', changes);
  if (unreadable.length > 0) return unreadable;
  return Object.entries(changes).flatMap(([id, change]) => {
    const path = `changes.${id}`;
    if (!Object.hasOwn(plausibleChanges, id)) return [{ path, message: 'is not an input of a sensitivity' }];
    const known: { change: Measure<UnitWord> } = plausibleChanges[id as SensitivityInputId];
    const { value, unit } = (change ?? {}) as { value: unknown; unit: unknown };
    if (typeof value !== 'number' || !(value > 0) || !Number.isFinite(value)) {
      return [{ path: `${path}.value`, message: `${value} is not more than 0` }];
    }
    const fits = typeof unit === 'string' && isUnitWord(unit) && convert(1, unit, known.change.unit) !== undefined;
    return fits ? [] : [{ path: `${path}.unit`, message: `${unit} does not convert to ${known.change.unit}` }];
  });
}

type Judged = Comparison['criteria'][number];

function sensitivityOf(request: AnyRequest, input: StudyInput, today: Comparison, changes: ChangesGiven): Sensitivity {
  const id = input.id as SensitivityInputId;
  const { change: byDefault, why } = plausibleChanges[id];
  const change = differenceIn(input, changes[id] ?? byDefault);
  const at = input.today as number;
  const compare = comparisonsOf(request, input);
  const up = at + change <= input.max ? compare(at + change) : undefined;
  const down = at - change >= input.min ? compare(at - change) : undefined;
  const found = today.criteria.flatMap((criterion) => marginSensitivity(criterion, change, up, down) ?? []);
  const criteria = found.sort((a, b) => b.weight - a.weight).map(({ weight: _, isUp: __, ...each }) => each);
  const { isUp = true } = found[0] ?? {};
  return {
    input: id,
    quantity: input.quantity,
    today: { value: at, unit: input.unit },
    change,
    why,
    criteria,
    sentence: sentenceOf(input, change, isUp, criteria[0]),
  };
}

/** With its weight in the order, and whether it is the upward change that eats. */
type Weighted = MarginSensitivity & { readonly weight: number; readonly isUp: boolean };

function marginSensitivity(
  { id, subject, limitStatus, unit, margin, unroundedMargin: today, limit }: Judged,
  change: number,
  up: Comparison | undefined,
  down: Comparison | undefined,
): Weighted | undefined {
  if (margin === undefined || today === undefined || limit === undefined) return undefined;
  const same = (comparison: Comparison | undefined) =>
    comparison?.criteria.find(
      (each) => each.id === id && each.subject === subject && each.limitStatus === limitStatus && each.unit === unit,
    )?.unroundedMargin;
  const above = same(up);
  const below = same(down);
  const openAbove = up !== undefined && above === undefined;
  const openBelow = down !== undefined && below === undefined;
  const lostAbove = above === undefined ? 0 : today - above;
  const lostBelow = below === undefined ? 0 : today - below;
  // The last bits of two ways to the same figure are no loss.
  const noise = 1e-9 * Math.max(1, Math.abs(limit));
  const lost = Math.max(lostAbove, lostBelow);
  const eaten = lost > noise ? lost : 0;
  const perUnit = slope(today, above, below, change);
  return {
    id,
    subject,
    limitStatus,
    margin: { value: margin, unit },
    ...perUnit,
    ...(openAbove || openBelow
      ? { undetermined: openAbove && openBelow ? 'both ways' : openAbove ? 'upwards' : 'downwards' }
      : {}),
    eaten,
    ...(today > noise ? { share: eaten / today } : {}),
    weight:
      openAbove || openBelow ? Number.POSITIVE_INFINITY : eaten === 0 ? 0 : eaten / Math.max(Math.abs(today), noise),
    isUp: openAbove || (!openBelow && lostAbove >= lostBelow),
  };
}

/** The change for one unit, by the sides that have a figure. */
function slope(
  today: number,
  above: number | undefined,
  below: number | undefined,
  change: number,
): Pick<MarginSensitivity, 'perUnit' | 'difference'> {
  if (above !== undefined && below !== undefined)
    return { perUnit: (above - below) / (2 * change), difference: 'central' };
  if (above !== undefined) return { perUnit: (above - today) / change, difference: 'upwards only' };
  if (below !== undefined) return { perUnit: (today - below) / change, difference: 'downwards only' };
  return { difference: 'none' };
}

/** By the greatest share that an input eats of any margin; of one that is spent already, of what is missing. */
function most({ criteria }: Sensitivity): number {
  const [first] = criteria;
  if (first === undefined) return -1;
  if (first.undetermined !== undefined) return Number.MAX_VALUE;
  return first.share ?? (first.eaten === 0 ? 0 : first.eaten / Math.max(Math.abs(first.margin.value), 1e-9));
}

function sentenceOf(
  input: StudyInput,
  change: number,
  isUp: boolean,
  first: MarginSensitivity | undefined,
): StudySentence {
  const isDirection = input.id === 'windDirection';
  const moved = isDirection ? (isUp ? 'veered' : 'backed') : isUp ? 'more' : 'less';
  const head = { quantity: capital(input.quantity), change: changeInWords(input.unit, change), moved };
  if (first?.undetermined !== undefined)
    return studySentence('sensitivity-undetermined', { ...head, subject: named(first.subject) });
  if (first === undefined || first.eaten === 0) return studySentence('sensitivity-none', { ...head });
  const { unit, value: margin } = first.margin;
  const amount = roundUp(first.eaten, unit === 'percent' || first.eaten < 10 ? 0.1 : 1);
  const eaten = amountInWords(amount, unit);
  const subject = named(first.subject);
  if (first.share === undefined) return studySentence('sensitivity-no-margin', { ...head, eaten, subject });
  return studySentence('sensitivity', {
    ...head,
    eaten,
    subject,
    margin: unit === 'percent' ? amountInWords(margin, unit) : inWords(first.margin),
    // Of what is printed, so that the sentence agrees with itself; less than a whole step to spare is printed as 0.
    ...(margin > 0 ? { percent: formatNumber((amount / margin) * 100, { rounding: 'up' }) } : {}),
  });
}

/** A change of an input in words; that of a height or a direction without the word of its reference. */
function changeInWords(unit: UnitWord, change: number): string {
  const plainUnit = ({ ftElevation: 'ft', mElevation: 'm', degTrue: 'deg', degMagnetic: 'deg' } as const)[
    unit as 'ftElevation'
  ];
  const step = stepOf(unit);
  return formatValue(change, plainUnit ?? unit, {
    decimals: unit === 'ratio' ? 2 : Number.isInteger(change) || step < 1 ? (step < 1 ? 2 : 0) : 1,
  });
}

/** What is eaten of a margin; a share of two percentages is counted in points. */
function amountInWords(eaten: number, unit: UnitWord): string {
  if (unit === 'percent') return `${formatNumber(eaten, { decimals: 1 })} percentage points`;
  return formatValue(eaten, unit, { decimals: eaten < 10 ? 1 : 0 });
}
