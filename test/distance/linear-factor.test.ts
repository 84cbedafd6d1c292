import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printedLawFactor, slopeFactor, windFactor } from '../../src/distance/index.ts';
import { DomainError, kt, percent, ratio } from '../../src/units/index.ts';
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

describe('printedLawFactor', () => {
  it('is the straight line through what the manual prints', () => {
    // Ten per cent for each two knots, printed at 2, 4 and 6 kt.
    const at = (steps: number) => printedLawFactor({ percentPerStep: percent(10), steps: ratio(steps) });
    expect([0, 1, 2, 3].map(at)).toEqual([1, 1.1, 1.2, 1.3].map((k) => expect.closeTo(k, 12)));
    expect(at(1.5)).toBeCloseTo(1.15, 12);
    expect(printedLawFactor({ percentPerStep: percent(0), steps: ratio(20) })).toBe(1);
  });

  it.each([
    ['percentPerStep', { percentPerStep: -0.1, steps: 1 }],
    ['percentPerStep', { percentPerStep: 100.1, steps: 1 }],
    ['steps', { percentPerStep: 10, steps: -0.1 }],
    ['steps', { percentPerStep: 10, steps: 20.1 }],
    ['steps', { percentPerStep: 10, steps: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => printedLawFactor(inputs as Parameters<typeof printedLawFactor>[0]);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
