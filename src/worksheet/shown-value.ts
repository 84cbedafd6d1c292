import type { TraceStep } from '../assessment/index.ts';
import type { Citation, Source } from '../sources/index.ts';
import { formatNumber, formatValue } from '../units/index.ts';
import { isUnitWord } from '../units/unit-table.ts';

/** A value of the working in words, in the unit named; lists stand in the units of the manual's table. */
export function shownValue(value: unknown, unit: string | undefined): string {
  if (Array.isArray(value)) return `[${value.map((each) => shownValue(each, undefined)).join(', ')}]`;
  if (typeof value === 'object' && value !== null) {
    if (isMeasure(value)) return shownValue(value.value, value.unit);
    return `(${named(value, {}, unit).join(', ')})`;
  }
  if (typeof value !== 'number') return String(value);
  // Up to four decimals, without a tail of noughts on what was printed whole.
  const decimals = Math.max(0, Math.min(4, decimalsOf(value)));
  return unit !== undefined && isUnitWord(unit)
    ? formatValue(value, unit, { decimals })
    : formatNumber(value, { decimals });
}

/** A source and the place in it; what has no edition is not said to have none. */
export function shownSource({ title, edition, locator }: Citation & Source): string {
  return `${edition === 'none' ? title : `${title}, ${edition}`}; ${locator}`;
}

/** `name value` for each value that there is, each in its own unit or else in the one for all. */
export function named(values: object, units: Readonly<Record<string, string>>, unitOfAll?: string): string[] {
  return Object.entries(values)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => `${name} ${shownValue(value, units[name] ?? unitOfAll)}`);
}

/** What came out of a step, in words. */
export function shownOutput({ output }: TraceStep, units: Readonly<Record<string, string>>): string {
  return typeof output === 'object' && output !== null
    ? named(output, units).join(', ')
    : shownValue(output, units['result']);
}

function isMeasure(value: object): value is { value: number; unit: string } {
  return 'value' in value && 'unit' in value;
}

function decimalsOf(value: number): number {
  return String(Number(value.toFixed(4))).split('.')[1]?.length ?? 0;
}
