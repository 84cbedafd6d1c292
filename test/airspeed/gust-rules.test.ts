import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  approachSpeed,
  gustIncrement,
  gustRules,
  halfGustIncrement,
  publishedSpeedMultiples,
  quarterMeanOrHalfIncrement,
  stallSpeedMultiple,
} from '../../src/airspeed/index.ts';
import { bibliography } from '../../src/sources/index.ts';
import { DomainError, kcas, kias, kt } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const wind = fc
  .tuple(evenly(0, 100), evenly(0, 100))
  .map(([mean, more]) => ({ meanSpeed: kt(mean), gust: kt(mean + more) }));

describe('halfGustIncrement', () => {
  it('is what approachSpeed adds', () => {
    fc.assert(
      fc.property(wind, (w) => {
        const addition: number = halfGustIncrement(w);
        const flown: number = approachSpeed({ publishedSpeed: kias(62), gustIncrement: gustIncrement(w) });
        expect(62 + addition).toBeCloseTo(flown, 9);
      }),
    );
  });
});

describe('quarterMeanOrHalfIncrement', () => {
  it('adds nothing up to 16 kt of mean wind, and the larger of its parts above', () => {
    expect(quarterMeanOrHalfIncrement({ meanSpeed: kt(16), gust: kt(40) })).toBe(0);
    expect(quarterMeanOrHalfIncrement({ meanSpeed: kt(16.001), gust: kt(17) })).toBeCloseTo(4, 3);
    expect(quarterMeanOrHalfIncrement({ meanSpeed: kt(17), gust: kt(37) })).toBe(10);
    expect(quarterMeanOrHalfIncrement({ meanSpeed: kt(20), gust: kt(20) })).toBe(5);
  });
});

describe('gustRules', () => {
  it('have ids of their own, words, and a place in a source of the bibliography', () => {
    expect(gustRules.map(({ id }) => id)).toEqual([
      'none',
      'quarter-mean-or-half-increment',
      'half-increment',
      'whole-increment',
    ]);
    for (const { title, words, citation } of gustRules) {
      expect(title.trim()).not.toBe('');
      expect(words.trim()).not.toBe('');
      expect(Object.keys(bibliography)).toContain(citation.source);
      expect(citation.locator.trim()).not.toBe('');
    }
  });

  it('never take speed away, and the whole increment is never less than its half', () => {
    fc.assert(
      fc.property(wind, (w) => {
        const additions = Object.fromEntries(gustRules.map(({ id, addition }) => [id, addition(w) as number]));
        expect(additions['none']).toBe(0);
        expect(additions['quarter-mean-or-half-increment']).toBeGreaterThanOrEqual(0);
        expect(additions['half-increment']).toBeGreaterThanOrEqual(0);
        expect(additions['whole-increment']).toBeGreaterThanOrEqual(additions['half-increment'] ?? Number.NaN);
      }),
    );
  });

  it('all refuse a gust below the mean wind and a wind out of range', () => {
    for (const { addition } of gustRules) {
      expect(() => addition({ meanSpeed: kt(20), gust: kt(19) })).toThrow(/^gust: 19 kt is inconsistent/);
      expect(() => addition({ meanSpeed: -0.1, gust: 19 } as never)).toThrow(/^meanSpeed: /);
      expect(() => addition({ meanSpeed: 200.1, gust: 200 } as never)).toThrow(/^meanSpeed: /);
      expect(() => addition({ meanSpeed: 20, gust: 200.1 } as never)).toThrow(/^gust: /);
      expect(() => addition({ meanSpeed: 20, gust: Number.NaN } as never)).toThrow(DomainError);
      expect(() => addition({ meanSpeed: 20 } as never)).toThrow(/^gust: /);
    }
  });
});

describe('publishedSpeedMultiples', () => {
  it('have ids of their own, a source of the bibliography and a place in it', () => {
    const ids = publishedSpeedMultiples.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const row of publishedSpeedMultiples) {
      expect(Object.keys(bibliography)).toContain(row.source);
      expect(row.locator.trim(), row.id).not.toBe('');
      expect(row.condition.trim(), row.id).not.toBe('');
      expect(stallSpeedMultiple({ stallSpeed: kcas(40), multiple: row.multiple })).toBeGreaterThan(0);
    }
  });

  it('mark the one figure that was not seen', () => {
    expect(publishedSpeedMultiples.filter(({ access }) => access !== 'read').map(({ id }) => id)).toEqual([
      'cfr-23-73-a',
    ]);
  });

  it('bound the approach from below in the rule and from above in the handbook', () => {
    const approach = publishedSpeedMultiples.filter(({ speed }) => speed === 'approach');
    expect(approach.map(({ sense, multiple }) => [sense, multiple])).toEqual([
      ['at least', 1.3],
      ['at most', 1.3],
    ]);
  });
});
