import * as v from 'valibot';
import type { Measure, UnitWord } from '../units/index.ts';
import { convert } from '../units/unit-table.ts';
import { quickly } from './quickly.ts';

interface Bounds {
  readonly min: number;
  readonly max: number;
}

/** A quantity in one of the units named first to last, within bounds stated in the first. */
export function measureSchema<const U extends UnitWord>(
  units: readonly [U, ...U[]],
  min: number,
  max: number,
): v.GenericSchema<unknown, Measure<U>> {
  const [first] = units;
  const bounds = new Map<unknown, Bounds>(
    units.map((unit) => [unit, { min: bound(min, first, unit), max: bound(max, first, unit) }]),
  );
  const options = units.map((unit) => {
    const { min: least, max: most } = bounds.get(unit) as Bounds;
    return v.strictObject({ value: numberWithin(least, most, unit), unit: v.literal(unit) });
  });
  const [only] = options;
  const schema = options.length === 1 ? only : v.variant('unit', options as never);
  return quickly(schema as unknown as v.GenericSchema<unknown, Measure<U>>, (given) => measureWithin(given, bounds));
}

/** A copy of what is a value and a unit, nothing else, and within the bounds of that unit. */
function measureWithin<U extends UnitWord>(
  given: unknown,
  bounds: ReadonlyMap<unknown, Bounds>,
): Measure<U> | undefined {
  if (typeof given !== 'object' || given === null) return undefined;
  const { value, unit } = given as Measure<U>;
  const within = bounds.get(unit);
  if (within === undefined || typeof value !== 'number') return undefined;
  if (!(value >= within.min && value <= within.max)) return undefined;
  for (const key in given) if (key !== 'value' && key !== 'unit') return undefined;
  return { value, unit };
}

/** A bare number within bounds; for the figures of a list whose unit stands beside it. */
export function numberWithin(min: number, max: number, unit: string) {
  const outside = (issue: { input: number }) => `${issue.input} ${unit} is not within ${min} to ${max} ${unit}`;
  return v.pipe(v.number(), v.minValue(min, outside), v.maxValue(max, outside));
}

/** A number that JSON can hold; a text like 1e999 is read as infinite by its parser. */
export const finiteNumber = v.pipe(v.number(), v.finite('is not a finite number'));

/** A list of such numbers. */
export const finiteNumbers = quickly(v.array(finiteNumber), (given) =>
  Array.isArray(given) && isFiniteList(given) ? given.slice() : undefined,
);

/** By index, so that a hole in a list is seen. */
function isFiniteList(list: readonly unknown[]): list is readonly number[] {
  for (let i = 0; i < list.length; i += 1) if (!Number.isFinite(list[i])) return false;
  return true;
}

/** A text of at least one character. */
export const text = v.pipe(v.string(), v.nonEmpty('is empty'));

/** A calendar date, YYYY-MM-DD. */
export const calendarDate = v.pipe(
  v.string(),
  v.isoDate((issue) => `${issue.received} is not a date YYYY-MM-DD`),
);

/** A bound in another unit, to six digits: a bound is a round number, not a measurement. */
function bound(value: number, from: UnitWord, to: UnitWord): number {
  return Number((convert(value, from, to) ?? value).toPrecision(6));
}
