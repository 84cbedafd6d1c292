import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, kt, ratio } from '../../src/units/index.ts';
import { windUsed } from '../../src/wind/index.ts';
import { evenly } from '../evenly.ts';

const wind = evenly(-60, 60);

/** The shares of the regulation. */
function halfOrHalfMore(mean: number, gust: number): number {
  const winds = { leastHeadwind: kt(mean), leastHeadwindAtGust: kt(gust) };
  return windUsed({ ...winds, headwindShare: ratio(0.5), tailwindShare: ratio(1.5) });
}

describe('windUsed', () => {
  it('counts half of a headwind, whatever its gusts', () => {
    expect(halfOrHalfMore(12, 12)).toBe(6);
    expect(halfOrHalfMore(12, 25)).toBe(6);
  });

  it('counts one and a half times a steady tailwind', () => {
    expect(halfOrHalfMore(-6, -6)).toBe(-9);
  });

  it('counts the whole gust where that is more', () => {
    expect(halfOrHalfMore(-6, -10)).toBe(-10);
    expect(halfOrHalfMore(-6, -8)).toBe(-9);
  });

  it('counts a tailwind that only the gusts bring', () => {
    expect(halfOrHalfMore(0, -4)).toBe(-4);
    expect(halfOrHalfMore(2, -4)).toBe(-4);
  });

  it('never counts on more wind from ahead than is reported', () => {
    fc.assert(
      fc.property(wind, wind, (mean, gust) => {
        expect(halfOrHalfMore(mean, gust)).toBeLessThanOrEqual(mean);
        expect(halfOrHalfMore(mean, gust)).toBeLessThanOrEqual(Math.max(gust, mean));
      }),
    );
  });

  it('uses the shares that it is given', () => {
    const shares = { headwindShare: ratio(0.25), tailwindShare: ratio(2) };
    expect(windUsed({ leastHeadwind: kt(8), leastHeadwindAtGust: kt(8), ...shares })).toBe(2);
    expect(windUsed({ leastHeadwind: kt(-8), leastHeadwindAtGust: kt(-8), ...shares })).toBe(-16);
  });

  const good = { leastHeadwind: 5, leastHeadwindAtGust: 5, headwindShare: 0.5, tailwindShare: 1.5 };
  it.each([
    ['leastHeadwind', { ...good, leastHeadwind: -201 }],
    ['leastHeadwind', { ...good, leastHeadwind: Number.NaN }],
    ['leastHeadwindAtGust', { ...good, leastHeadwindAtGust: 201 }],
    ['leastHeadwindAtGust', { ...good, leastHeadwindAtGust: undefined }],
    ['headwindShare', { ...good, headwindShare: 1.01 }],
    ['headwindShare', { ...good, headwindShare: -0.01 }],
    ['tailwindShare', { ...good, tailwindShare: 0.99 }],
    ['tailwindShare', { ...good, tailwindShare: 3.01 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => windUsed(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
