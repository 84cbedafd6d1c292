import * as v from 'valibot';
import type { Measure, UnitWord } from '../units/index.ts';
import { convert } from '../units/unit-table.ts';

/** A quantity in one of the units named first to last, within bounds stated in the first. */
export function measureSchema<const U extends UnitWord>(
  units: readonly [U, ...U[]],
  min: number,
  max: number,
): v.GenericSchema<unknown, Measure<U>> {
  const [first] = units;
  const options = units.map((unit) => {
    const bounds = { min: bound(min, first, unit), max: bound(max, first, unit) };
    return v.strictObject({ value: numberWithin(bounds.min, bounds.max, unit), unit: v.literal(unit) });
  });
  const [only] = options;
  const schema = options.length === 1 ? only : v.variant('unit', options as never);
  return schema as unknown as v.GenericSchema<unknown, Measure<U>>;
}

/** A bare number within bounds; for the figures of a list whose unit stands beside it. */
export function numberWithin(min: number, max: number, unit: string) {
  const outside = (issue: { input: number }) => `${issue.input} ${unit} is not within ${min} to ${max} ${unit}`;
  return v.pipe(v.number(), v.minValue(min, outside), v.maxValue(max, outside));
}

/** A number that JSON can hold; a text like 1e999 is read as infinite by its parser. */
export const finiteNumber = v.pipe(v.number(), v.finite('is not a finite number'));

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
