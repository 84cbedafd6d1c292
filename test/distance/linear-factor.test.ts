import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slopeFactor, windFactor } from '../../src/distance/index.ts';
import { DomainError, kt, percent } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

describe('windFactor', () => {
  it('is 1 in calm', () => {
    fc.assert(
      fc.property(evenly(-10, 25), (p) => {
        expect(windFactor({ wind: kt(0), percentPerKnot: percent(p) })).toBe(1);
      }),
    );
  });

  it('changes by the same share for each knot', () => {
    fc.assert(
      fc.property(evenly(0, 25), evenly(-1.5, 25), (w, p) => {
        const percentPerKnot = percent(p);
        const once: number = windFactor({ wind: kt(w), percentPerKnot });
        const twice: number = windFactor({ wind: kt(2 * w), percentPerKnot });
        expect(twice - once).toBeCloseTo(once - 1, 9);
      }),
    );
  });

  it('shortens in a headwind by a negative law and lengthens by a positive one', () => {
    expect(windFactor({ wind: kt(9), percentPerKnot: percent(-10 / 9) })).toBeCloseTo(0.9, 12);
    expect(windFactor({ wind: kt(2), percentPerKnot: percent(5) })).toBeCloseTo(1.1, 12);
  });

  it('refuses a wind that would leave less than a fifth of the distance', () => {
    expect(windFactor({ wind: kt(31.9), percentPerKnot: percent(-2.5) })).toBeCloseTo(0.2025, 12);
    const call = () => windFactor({ wind: kt(32.1), percentPerKnot: percent(-2.5) });
    expect(call).toThrow(/^wind: 32\.1 kt is inconsistent with 0 to 32 kt/);
  });

  it.each([
    ['wind', { wind: -0.1, percentPerKnot: 5 }],
    ['wind', { wind: 50.1, percentPerKnot: 5 }],
    ['wind', { percentPerKnot: 5 }],
    ['percentPerKnot', { wind: 5, percentPerKnot: -10.1 }],
    ['percentPerKnot', { wind: 5, percentPerKnot: 25.1 }],
    ['percentPerKnot', { wind: 5, percentPerKnot: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => windFactor(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('slopeFactor', () => {
  it('is 1 on the level and changes by the same share for each percent', () => {
    fc.assert(
      fc.property(evenly(0, 5), evenly(-5, 25), (s, p) => {
        const percentPerPercent = percent(p);
        const once: number = slopeFactor({ slope: percent(s), percentPerPercent });
        const twice: number = slopeFactor({ slope: percent(2 * s), percentPerPercent });
        expect(slopeFactor({ slope: percent(0), percentPerPercent })).toBe(1);
        expect(twice - once).toBeCloseTo(once - 1, 9);
      }),
    );
  });

  it('refuses a credit that would leave less than a fifth of the distance', () => {
    expect(slopeFactor({ slope: percent(7.9), percentPerPercent: percent(-10) })).toBeCloseTo(0.21, 12);
    const call = () => slopeFactor({ slope: percent(8.1), percentPerPercent: percent(-10) });
    expect(call).toThrow(/^slope: 8\.1 percent is inconsistent with 0 to 8 percent/);
  });

  it.each([
    ['slope', { slope: -0.1, percentPerPercent: 5 }],
    ['slope', { slope: 10.1, percentPerPercent: 5 }],
    ['slope', { slope: Number.NaN, percentPerPercent: 5 }],
    ['percentPerPercent', { slope: 1, percentPerPercent: -10.1 }],
    ['percentPerPercent', { slope: 1, percentPerPercent: 25.1 }],
    ['percentPerPercent', { slope: 1 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => slopeFactor(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
