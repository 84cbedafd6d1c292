import type { Comparison, Verdict } from '../assessment/index.ts';
import { demandWhole, demandWord, inconsistent } from '../units/index.ts';
import { demandOutput } from './column.ts';

/**
 * What the codes in a column of verdicts stand for: `verdictWords[code]`. Undetermined comes first, so that memory to
 * which nothing has been written says so.
 */
export const verdictWords = ['undetermined', 'within', 'outside'] as const satisfies readonly Verdict[];

type Criterion = Comparison['criteria'][number];

/** A criterion in the comparison of one weather. */
export type CriterionId = Criterion['id'];

/** One criterion row by row, in the terms of {@link Comparison}. */
export interface CriterionColumns extends Pick<Criterion, 'id' | 'subject' | 'limitStatus' | 'unit'> {
  /** Codes of {@link verdictWords}. Undetermined also where the row has no such criterion, or was refused. */
  readonly verdict: Uint8Array;
  /** The figure that is compared, rounded as it is compared: of a distance criterion the distance required. */
  readonly value: Float64Array;
  /** What is left to the limit; positive is favourable. */
  readonly margin: Float64Array;
  /**
   * 1 where the row has value and margin; 0 where it has none, and both are 0: the verdict is undetermined, or the figure
   * is in another unit, as for an obstacle that stands before the 50 ft point, which is compared in feet.
   */
  readonly hasFigure: Uint8Array;
}

/** The verdict of each row, and each of the chosen criteria. */
export interface ComparisonColumns {
  /** Codes of {@link verdictWords}: of all criteria, also of those that were not chosen. */
  readonly verdict: Uint8Array;
  readonly criteria: readonly CriterionColumns[];
}

/** Where memory for columns comes from, such as `(bytes) => new SharedArrayBuffer(bytes)`. */
export type Allocate = (bytes: number) => ArrayBufferLike;

/** A criterion that a situation has, and where it stands in a comparison. */
export interface PlacedCriterion extends Pick<Criterion, 'id' | 'subject' | 'limitStatus' | 'unit'> {
  readonly place: number;
  /** How many criteria there are in all. */
  readonly of: number;
  /** Among those of the same words, from 0: two limits may differ in nothing but their figure. */
  readonly ordinal: number;
}

/** The criteria of a comparison with their places. */
export function placedCriteria(criteria: readonly Criterion[]): PlacedCriterion[] {
  return criteria.map((each, place) => {
    const { id, subject, limitStatus } = each;
    const ordinal = criteria.slice(0, place).filter((other) => isSame(other, each)).length;
    // An obstacle is compared by gradients; one before the 50 ft point is the exception.
    const unit = id === 'obstacle' ? 'percent' : each.unit;
    return { id, subject, limitStatus, unit, place, of: criteria.length, ordinal };
  });
}

/** New columns for the criteria with these ids; all where none are named. */
export function newComparisonColumns(
  placed: readonly PlacedCriterion[],
  rows: number,
  ids: readonly CriterionId[] | undefined,
  allocate: Allocate | undefined,
): ComparisonColumns {
  const known = [...new Set(placed.map(({ id }) => id))];
  for (const [i, id] of (ids ?? []).entries()) {
    demandWord(`criteria[${i}]`, id, known, 'criteria of this take-off or landing');
  }
  const chosen = ids === undefined ? placed : placed.filter(({ id }) => ids.includes(id));
  const figures = (): Float64Array =>
    allocate === undefined ? new Float64Array(rows) : new Float64Array(allocate(rows * Float64Array.BYTES_PER_ELEMENT));
  const codes = (): Uint8Array => (allocate === undefined ? new Uint8Array(rows) : new Uint8Array(allocate(rows)));
  return {
    verdict: codes(),
    criteria: chosen.map(({ id, subject, limitStatus, unit }) => ({
      id,
      subject,
      limitStatus,
      unit,
      verdict: codes(),
      value: figures(),
      margin: figures(),
      hasFigure: codes(),
    })),
  };
}

/**
 * Some rows of columns for results, in the same memory: the part of one runway, or of one thread.
 *
 * @param columns - columns of a prepared take-off or landing.
 * @param first - the first row, from 0.
 * @param end - the row after the last.
 * @returns columns of those rows; what is written to them stands in the whole.
 * @throws {@link DomainError} when the columns have no such rows.
 *
 * @example
 * const columns = { verdict: new Uint8Array(3), criteria: [] }
 * rowsBetween(columns, 1, 3).verdict.fill(verdictWords.indexOf('within'))
 * Array.from(columns.verdict) // => [0, 1, 1]
 * rowsBetween(columns, 1, 4) // throws end: 4 rows
 */
export function rowsBetween(columns: ComparisonColumns, first: number, end: number): ComparisonColumns {
  const rows = columns.verdict.length;
  demandCount('first', first, 0, rows);
  demandCount('end', end, first, rows);
  const part = <A extends Float64Array | Uint8Array>(array: A) => array.subarray(first, end) as A;
  return {
    verdict: part(columns.verdict),
    criteria: columns.criteria.map(({ id, subject, limitStatus, unit, verdict, value, margin, hasFigure }) => ({
      id,
      subject,
      limitStatus,
      unit,
      verdict: part(verdict),
      value: part(value),
      margin: part(margin),
      hasFigure: part(hasFigure),
    })),
  };
}

/** Throws unless a number of rows is a whole number from `min` to `max`. */
export function demandCount(parameter: string, rows: number, min: number, max: number): void {
  demandWhole(parameter, rows, { unit: 'rows', min, max, source: 'a number of rows' });
}

/** Each of the columns with the criterion that goes there; throws where there is none, or no place for each row. */
export function demandPlaces(
  { verdict, criteria }: ComparisonColumns,
  placed: readonly PlacedCriterion[],
  rows: number,
): PlacedCriterion[] {
  demandOutput('into.verdict', verdict, 'Uint8Array', rows);
  return criteria.map((column, i) => {
    const name = `into.criteria[${i}]`;
    demandOutput(`${name}.verdict`, column.verdict, 'Uint8Array', rows);
    demandOutput(`${name}.value`, column.value, 'Float64Array', rows);
    demandOutput(`${name}.margin`, column.margin, 'Float64Array', rows);
    demandOutput(`${name}.hasFigure`, column.hasFigure, 'Uint8Array', rows);
    const ordinal = criteria.slice(0, i).filter((other) => isSame(other, column)).length;
    const found = placed.find((each) => isSame(each, column) && each.ordinal === ordinal && each.unit === column.unit);
    if (found !== undefined) return found;
    const received = `${column.id}, ${column.subject}, ${column.limitStatus}, ${column.unit}`;
    throw inconsistent(name, received, 'criterion', 'any', 'any', 'no such criterion in this take-off or landing');
  });
}

/** Writes the verdicts and figures of one row; a refused one has no criteria. */
export function writeRow(
  into: ComparisonColumns,
  places: readonly PlacedCriterion[],
  row: number,
  { verdict, criteria }: Comparison,
): void {
  into.verdict[row] = codeOf(verdict);
  for (let i = 0; i < places.length; i += 1) {
    const column = into.criteria[i] as CriterionColumns;
    const found = criterionAt(criteria, places[i] as PlacedCriterion);
    const hasFigure = found?.value !== undefined && found.margin !== undefined && found.unit === column.unit;
    column.verdict[row] = found === undefined ? 0 : codeOf(found.verdict);
    column.value[row] = hasFigure ? (found.value as number) : 0;
    column.margin[row] = hasFigure ? (found.margin as number) : 0;
    column.hasFigure[row] = hasFigure ? 1 : 0;
  }
}

/** A calm has no criterion against a missing limit, so those after it may stand further in front. */
function criterionAt(criteria: readonly Criterion[], placed: PlacedCriterion): Criterion | undefined {
  const there = criteria.length === placed.of ? criteria[placed.place] : undefined;
  if (there !== undefined && isSame(there, placed)) return there;
  let ordinal = 0;
  for (const each of criteria) {
    if (!isSame(each, placed)) continue;
    if (ordinal === placed.ordinal) return each;
    ordinal += 1;
  }
  return undefined;
}

type Words = Pick<Criterion, 'id' | 'subject' | 'limitStatus'>;

function isSame(a: Words, b: Words): boolean {
  return a.id === b.id && a.subject === b.subject && a.limitStatus === b.limitStatus;
}

function codeOf(verdict: Verdict): number {
  return verdict === 'within' ? 1 : verdict === 'outside' ? 2 : 0;
}
