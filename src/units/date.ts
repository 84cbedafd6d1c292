import { DomainError } from './domain-error.ts';
import { tagged } from './quantity.ts';
import type { Quantity, Untagged } from './tag.ts';

/** A date as a decimal year, UTC: 2026.5 is the middle of 2026. */
export type DecimalYear = Quantity<'year'>;

/** A bare number as a decimal year; refuses NaN and infinities. */
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
  const midnight = /^\d{4}-\d{2}-\d{2}$/.test(date) ? new Date(`${date}T00:00:00Z`) : undefined;
  if (midnight?.toISOString().slice(0, 10) !== date) throw new DomainError(refusedDate(date));
  const year = midnight.getUTCFullYear();
  const start = Date.UTC(year, 0, 1);
  return decimalYear(year + (midnight.getTime() - start) / (Date.UTC(year + 1, 0, 1) - start));
}

function refusedDate(date: string) {
  const received = String(date);
  const source = 'ISO 8601 calendar date';
  return { code: 'not-a-number', parameter: 'date', received, unit: 'YYYY-MM-DD', min: '0001-01-01', max: '9999-12-31', source } as const;
}
