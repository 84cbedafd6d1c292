import { formatValue } from './format.ts';
import type { Measure } from './measure.ts';
import type { UnitWord } from './unit-table.ts';

/** The decimals with which a figure was put in; a binary tail is none. */
export function decimalsGiven(value: number): number {
  return String(Number(value.toPrecision(12))).split('.')[1]?.length ?? 0;
}

/** A measure in words as it was put in, rounded to neither side. */
export function asGiven({ value, unit }: Measure): string {
  return formatValue(value, unit as UnitWord, { decimals: decimalsGiven(value) });
}
