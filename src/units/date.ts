import { DomainError } from './domain-error.ts';
import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

/** A date as a decimal year, UTC: 2026.5 is the middle of 2026. */
export type DecimalYear = Quantity<'year'>;

/**
 * A date as a decimal year, UTC.
 *
 * @param value - A bare number; one that already has a unit does not compile.
 * @throws {@link DomainError} for NaN, an infinity and anything but a number.
 *
 * @example
 * decimalYear(2026.5) // => 2026.5
 */
export function decimalYear(value: Untagged): DecimalYear {
  return tagged(value, 'year');
}

/**
 * The decimal year at the beginning (UTC) of a calendar date: year + (day of the year - 1) / days in that year.
 *
 * @param date - A calendar date written as `YYYY-MM-DD`.
 * @throws {@link DomainError} with code `not-a-number` for any other text and for a day that does not exist.
 *
 * @example
 * decimalYearFromDate('2026-07-02') // ≈ 2026.49863 ± 0.00001
 */
export function decimalYearFromDate(date: string): DecimalYear {
  const day = beginning(date);
  if (day === undefined) throw new DomainError(refusedDate(date));
  const year = Number(date.slice(0, 4));
  const daysInYear = beginning(`${date.slice(0, 4)}-02-29`) === undefined ? 365 : 366;
  const daysGone = (day - Date.parse(`${date.slice(0, 4)}-01-01T00:00:00Z`)) / 86400000;
  return decimalYear(year + daysGone / daysInYear);
}

/** Milliseconds at the beginning of a date; undefined for a text that is none and for a day that does not exist. */
function beginning(date: string): number | undefined {
  if (typeof date !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(date)) return undefined;
  const time = Date.parse(`${date}T00:00:00Z`);
  // The 30th of February parses as the 2nd of March.
  return Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== date ? undefined : time;
}

function refusedDate(date: string) {
  const received = String(date);
  const source = 'ISO 8601 calendar date';
  return {
    code: 'not-a-number',
    parameter: 'date',
    received,
    unit: 'YYYY-MM-DD',
    min: '0000-01-01',
    max: '9999-12-31',
    source,
  } as const;
}
