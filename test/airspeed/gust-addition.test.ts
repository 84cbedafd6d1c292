import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { approachSpeed, gustIncrement } from '../../src/airspeed/index.ts';
import { DomainError, kias, kt } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const wind = evenly(0, 200);

describe('gustIncrement', () => {
  it('is what must be added to the mean to reach the gust', () => {
    fc.assert(
      fc.property(wind, wind, (a, b) => {
        const mean = Math.min(a, b);
        const gust = Math.max(a, b);
        const increment: number = gustIncrement({ meanSpeed: kt(mean), gust: kt(gust) });
        expect(mean + increment).toBeCloseTo(gust, 9);
        expect(increment).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('is zero where the gust equals the mean', () => {
    expect(gustIncrement({ meanSpeed: kt(12), gust: kt(12) })).toBe(0);
  });

  it('refuses a gust below the mean', () => {
    expect(() => gustIncrement({ meanSpeed: kt(12), gust: kt(11.9) })).toThrow(
      expect.objectContaining({
        detail: expect.objectContaining({ code: 'inconsistent', parameter: 'gust', received: 11.9, min: 12 }),
      }),
    );
  });

  it.each([
    ['meanSpeed', { meanSpeed: -0.1, gust: 10 }],
    ['meanSpeed', { meanSpeed: 200.1, gust: 200 }],
    ['meanSpeed', { gust: 10 }],
    ['gust', { meanSpeed: 0, gust: -0.1 }],
    ['gust', { meanSpeed: 10, gust: 200.1 }],
    ['gust', { meanSpeed: 10, gust: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => gustIncrement(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('approachSpeed', () => {
  it('is the published speed without gusts', () => {
    expect(approachSpeed({ publishedSpeed: kias(62), gustIncrement: kt(0) })).toBe(62);
  });

  it('takes half of the gust increment and does not round it', () => {
    expect(approachSpeed({ publishedSpeed: kias(70), gustIncrement: kt(15) })).toBe(77.5);
    fc.assert(
      fc.property(evenly(20, 200), wind, (published, increment) => {
        const speed: number = approachSpeed({ publishedSpeed: kias(published), gustIncrement: kt(increment) });
        expect(2 * (speed - published)).toBeCloseTo(increment, 9);
      }),
    );
  });

  it.each([
    ['publishedSpeed', { publishedSpeed: 19.9, gustIncrement: 10 }],
    ['publishedSpeed', { publishedSpeed: 200.1, gustIncrement: 10 }],
    ['publishedSpeed', { gustIncrement: 10 }],
    ['gustIncrement', { publishedSpeed: 62, gustIncrement: -0.1 }],
    ['gustIncrement', { publishedSpeed: 62, gustIncrement: 200.1 }],
    ['gustIncrement', { publishedSpeed: 62, gustIncrement: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => approachSpeed(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
