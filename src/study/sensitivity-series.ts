import { type LimitStatus, limitsOfUse, type Verdict } from '../assessment/index.ts';
import type { Fault, ReadResult } from '../documents/index.ts';
import type { Measure, UnitWord } from '../units/index.ts';
import { type AnyRequest, assessAny } from './any-request.ts';
import { numberFaults, objectFaults, strayFaults, wholeFaults } from './argument-faults.ts';
import { comparisonsOf } from './comparisons.ts';
import { inputsOf } from './inputs/all.ts';
import { plain, type StudyInput } from './inputs/study-input.ts';
import { differenceIn, plausibleChanges, type SensitivityInputId } from './plausible-changes.ts';

/** The margin of one criterion at one value of the input. */
export interface SeriesMargin {
  readonly id: string;
  readonly subject: string;
  readonly limitStatus: LimitStatus;
  readonly unit: UnitWord;
  readonly verdict: Verdict;
  /** Not rounded; absent where it is undetermined. */
  readonly margin?: number;
}

/** Every margin at one value of the input. */
export interface SeriesPoint {
  readonly at: number;
  readonly verdict: Verdict;
  readonly criteria: readonly SeriesMargin[];
}

/** The margins against one input, for a chart. */
export interface SensitivitySeries {
  readonly input: SensitivityInputId;
  readonly quantity: string;
  readonly today: Measure<UnitWord>;
  readonly points: readonly SeriesPoint[];
  readonly limitsOfUse: readonly string[];
}

/** What the series runs along. */
export interface SeriesAlong {
  readonly input: SensitivityInputId;
  /** The name of the obstacle, where the input belongs to one of several. */
  readonly obstacle?: string;
  /** In the unit in which the request states the input; five plausible changes to either side of today if not given. */
  readonly from?: number;
  readonly to?: number;
  /** 41 if not given; at least 2 and at most 1 001. */
  readonly points?: number;
}

/**
 * Every margin over a range of one input, with everything else held; the data of a chart.
 *
 * @param request - a take-off or a landing request.
 * @param along - the input and its range.
 * @returns evenly spaced points, or the faults of the request and of the range.
 *
 * @example
 * sensitivitySeries({ schema: 'groundroll/takeoff-request/1' } as never, { input: 'mass' }).ok // => false
 */
export function sensitivitySeries(request: AnyRequest, along: SeriesAlong): ReadResult<SensitivitySeries> {
  const assessed = assessAny(request);
  if (!assessed.ok) return assessed;
  const unreadable = objectFaults('along', along);
  if (unreadable.length > 0) return { ok: false, faults: unreadable };
  const stray = strayFaults('along', along, choices);
  if (stray.length > 0) return { ok: false, faults: stray };
  const { request: read } = assessed.value;
  const [input, ...others] = inputsOf(read).filter(
    ({ id, obstacle }) => id === along.input && (along.obstacle === undefined || obstacle === along.obstacle),
  );
  if (input === undefined) {
    const of = along.obstacle === undefined ? '' : ` of "${along.obstacle}"`;
    return { ok: false, faults: [{ path: 'along.input', message: `this request has no ${along.input}${of}` }] };
  }
  if (others.length > 0) {
    const names = [input, ...others].map(({ obstacle }) => `"${obstacle}"`).join(', ');
    return { ok: false, faults: [{ path: 'along.obstacle', message: `one of several is needed: ${names}` }] };
  }
  const range = rangeOf(input, along);
  const faults = rangeFaults(input, range);
  if (faults.length > 0) return { ok: false, faults };
  const { from, to, points } = range;
  const compare = comparisonsOf(read, input);
  const values = Array.from({ length: points }, (_, i) => plain(from + ((to - from) * i) / (points - 1)));
  return {
    ok: true,
    value: {
      input: along.input,
      quantity: input.quantity,
      today: { value: input.today as number, unit: input.unit },
      points: values.map((at) => {
        const { verdict, criteria } = compare(at);
        return {
          at,
          verdict,
          criteria: criteria.map(({ id, subject, limitStatus, unit, verdict: each, unroundedMargin: margin }) => ({
            id,
            subject,
            limitStatus,
            unit,
            verdict: each,
            ...(margin === undefined ? {} : { margin }),
          })),
        };
      }),
      limitsOfUse,
    },
  };
}

const choices: readonly (keyof SeriesAlong)[] = ['input', 'obstacle', 'from', 'to', 'points'];

interface Range {
  readonly from: number;
  readonly to: number;
  readonly points: number;
}

/** Five plausible changes to either side, as far as a request takes them. */
function rangeOf(input: StudyInput, { from, to, points = 41 }: SeriesAlong): Range {
  const today = input.today as number;
  const reach = 5 * differenceIn(input, plausibleChanges[input.id as SensitivityInputId].change);
  return {
    from: from ?? plain(Math.max(input.min, today - reach)),
    to: to ?? plain(Math.min(input.max, today + reach)),
    points,
  };
}

function rangeFaults({ min, max, unit }: StudyInput, { from, to, points }: Range): Fault[] {
  const ends = [
    ...numberFaults('along.from', from, min, max, ` ${unit}`),
    ...numberFaults('along.to', to, min, max, ` ${unit}`),
  ];
  if (ends.length === 0 && !(from < to))
    ends.push({ path: 'along.to', message: `${to} ${unit} is not above ${from} ${unit}` });
  return [...ends, ...wholeFaults('along.points', points, 2, 1001)];
}
