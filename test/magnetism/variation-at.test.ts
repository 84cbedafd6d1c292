import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { magneticModel, magneticVariation, variationAt } from '../../src/magnetism/index.ts';
import { checkValues, compareCheckValues, formulaRecords } from '../../src/register/index.ts';
import {
  DomainError,
  decimalYear,
  degLatitude,
  degLongitude,
  type ElevationInMetres,
  mElevation,
} from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';
import { isInstrumented } from '../instrumented.ts';

const latitude = evenly(-89.999, 89.999);
const longitude = evenly(-180, 360);
const date = evenly(2025, 2029.999);
const elevation = evenly(-1000, 850_000);

function site(north: number, east: number, metres?: number) {
  const above: ElevationInMetres | undefined = metres === undefined ? undefined : mElevation(metres);
  return { latitude: degLatitude(north), longitude: degLongitude(east), elevation: above };
}

afterEach(() => vi.useRealTimers());

describe('variationAt', () => {
  it('gives on every date the very answer of magneticVariation', () => {
    fc.assert(
      fc.property(latitude, longitude, elevation, fc.array(date, { maxLength: 5 }), (north, east, metres, years) => {
        const place = site(north, east, metres);
        const variation = variationAt(place);
        for (const year of years) {
          const asked = decimalYear(year);
          expect(variation({ date: asked })).toEqual(magneticVariation({ ...place, date: asked }));
        }
      }),
    );
  });

  it('reproduces every published value of the variation', () => {
    const record = formulaRecords.find(({ id }) => id === 'magnetism.variation');
    expect(record).toBeDefined();
    if (record === undefined) return;
    const formula = ({ date: asked, ...place }: Parameters<typeof magneticVariation>[0]) =>
      variationAt(place)({ date: asked });
    const published = checkValues.filter((value) => value.record === record.id);
    const rows = compareCheckValues([{ ...record, formula }], published);
    expect(rows.length).toBeGreaterThan(200);
    for (const { share, checkValue, output } of rows) expect(share, `${checkValue} ${output}`).toBeLessThanOrEqual(1);
  });

  it('keeps its place whatever is asked of another', () => {
    const here = variationAt(site(51.5, 0));
    const there = variationAt(site(-34, 18.5));
    const first = here({ date: decimalYear(2026) });
    expect(there({ date: decimalYear(2026) })).not.toEqual(first);
    expect(here({ date: decimalYear(2026) })).toEqual(first);
  });

  it('answers on the last day of the validity, which the evaluator alone refuses', () => {
    const variation = variationAt(site(-77.85, 166.67));
    const last = variation({ date: decimalYear(2029.9) });
    expect(last.zone === 'normal' && last.variation).toBeCloseTo(139.48257, 5);
    expect(variation({ date: decimalYear(2030 - 2 ** -42) }).zone).toBe('normal');
  });

  it.skipIf(isInstrumented)('costs for a further date a small part of a new place', () => {
    const places = Array.from({ length: 50 }, (_, i) => site(-60 + 2.4 * i, 7 * i));
    const dates = Array.from({ length: 1000 }, (_, i) => ({ date: decimalYear(2025 + 0.0049 * i) }));
    let kept = 0;
    const ns = (turns: number, work: (turn: number) => void) => {
      const begin = performance.now();
      for (let turn = 0; turn < turns; turn += 1) work(turn);
      return ((performance.now() - begin) * 1e6) / turns;
    };
    const variation = variationAt(site(51.5, 0));
    const further = (turn: number) => {
      kept += variation(dates[turn % 1000] as { date: never }).horizontalIntensity;
    };
    const anew = (turn: number) => {
      kept += variationAt(places[turn % 50] as ReturnType<typeof site>)(
        dates[turn % 1000] as { date: never },
      ).uncertainty;
    };
    // Interleaved, and the best of several rounds, so that a busy machine does not decide.
    const rounds = Array.from({ length: 7 }, () => [ns(20_000, further), ns(1000, anew)] as const);
    const best = (i: 0 | 1) => Math.min(...rounds.map((round) => round[i]));
    expect(kept).toBeGreaterThan(0);
    expect(best(1) / best(0)).toBeGreaterThan(20);
  });

  it.each([
    ['latitude', { latitude: 90, longitude: 0 }],
    ['latitude', { latitude: -90, longitude: 0 }],
    ['latitude', { latitude: Number.NaN, longitude: 0 }],
    ['longitude', { latitude: 0, longitude: -180.01 }],
    ['longitude', { latitude: 0, longitude: 360.01 }],
    ['elevation', { latitude: 0, longitude: 0, elevation: -1001 }],
    ['elevation', { latitude: 0, longitude: 0, elevation: 850_001 }],
    ['elevation', { latitude: 0, longitude: 0, elevation: '10' }],
  ])('refuses a bad %s before any date is asked', (parameter, place) => {
    expect(() => variationAt(place as never)).toThrow(DomainError);
    expect(() => variationAt(place as never)).toThrow(new RegExp(`^${parameter}: `));
  });

  it.each([2025 - 2 ** -41, 2030, Number.NaN, undefined, '2026'])('refuses the date %s', (asked) => {
    const variation = variationAt(site(45, 10));
    expect(() => variation({ date: asked as never })).toThrow(DomainError);
    expect(() => variation({ date: asked as never })).toThrow(/^date: /);
  });
});

/** Whether there is more than a year left to bring in the model's successor. */
function holdsForAnotherYear(now: Date): boolean {
  return now.getTime() < Date.UTC(magneticModel.validTo - 1, 0, 1);
}

describe('the validity of the magnetic model', () => {
  it('ends in more than a year: its successor must be brought in before', () => {
    vi.useRealTimers();
    const message = `${magneticModel.name} holds until ${magneticModel.validTo}.0; bring in the model that follows it`;
    expect(holdsForAnotherYear(new Date()), message).toBe(true);
  });

  it('would be found too short from 1 January 2029', () => {
    expect(holdsForAnotherYear(new Date('2028-12-31T23:59:59Z'))).toBe(true);
    expect(holdsForAnotherYear(new Date('2029-01-01T00:00:00Z'))).toBe(false);
  });
});
