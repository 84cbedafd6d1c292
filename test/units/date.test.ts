import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, decimalYearFromDate } from '../../src/units/index.ts';

describe('decimalYearFromDate', () => {
  it.each([
    ['2025-01-01', 2025],
    ['2026-01-01', 2026],
    // Day 183 of 365, and day 183 of 366.
    ['2026-07-02', 2026 + 182 / 365],
    ['2028-07-01', 2028 + 182 / 366],
    ['2027-12-31', 2027 + 364 / 365],
    ['2028-02-29', 2028 + 59 / 366],
    ['2028-12-31', 2028 + 365 / 366],
    ['2100-12-31', 2100 + 364 / 365],
    ['0050-01-01', 50],
  ])('%s', (date, expected) => expect(decimalYearFromDate(date)).toBeCloseTo(expected, 10));

  it('grows from day to day and stays within its year', () => {
    const day = fc.integer({ min: 0, max: 36500 }).map((days) => Date.UTC(2000, 0, 1) + days * 86400000);
    const iso = (time: number) => new Date(time).toISOString().slice(0, 10);
    fc.assert(
      fc.property(day, (time) => {
        const here = decimalYearFromDate(iso(time));
        expect(Math.floor(here)).toBe(new Date(time).getUTCFullYear());
        expect(decimalYearFromDate(iso(time + 86400000))).toBeGreaterThan(here);
      }),
    );
  });

  it.each([
    '2026-02-29',
    '2026-13-01',
    '2026-1-1',
    '01.07.2026',
    '2026-07-02T00:00Z',
    '',
    '+002026-07-02',
    2026,
    undefined,
    null,
  ])('refuses %o', (date) => {
    expect(() => decimalYearFromDate(date as string)).toThrow(DomainError);
    expect(() => decimalYearFromDate(date as string)).toThrow(/^date: /);
  });
});
