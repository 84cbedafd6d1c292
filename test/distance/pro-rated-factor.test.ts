import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proRatedFactor } from '../../src/distance/index.ts';
import { DomainError, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const factorPerStep = evenly(1, 2).map(ratio);
const steps = evenly(0, 20).map(ratio);

describe('proRatedFactor', () => {
  it('is 1 for no step and the printed factor for one', () => {
    fc.assert(
      fc.property(factorPerStep, (k) => {
        expect(proRatedFactor({ factorPerStep: k, steps: ratio(0) })).toBe(1);
        expect(proRatedFactor({ factorPerStep: k, steps: ratio(1) })).toBeCloseTo(k, 12);
      }),
    );
  });

  it('is a straight line within the step and never below one anywhere', () => {
    fc.assert(
      fc.property(factorPerStep, steps, (k, n) => {
        const line = 1 + n * (k - 1);
        const result: number = proRatedFactor({ factorPerStep: k, steps: n });
        expect(result).toBeGreaterThanOrEqual(line);
        if (n <= 1) expect(result).toBeCloseTo(line, 12);
      }),
    );
  });

  it('compounds whole steps beyond the first', () => {
    fc.assert(
      fc.property(factorPerStep, fc.integer({ min: 2, max: 20 }), (k, n) => {
        let compound = 1;
        for (let i = 0; i < n; i += 1) compound *= k;
        const result: number = proRatedFactor({ factorPerStep: k, steps: ratio(n) });
        expect(result / compound).toBeCloseTo(1, 12);
      }),
    );
  });

  it('grows with the number of steps', () => {
    fc.assert(
      fc.property(factorPerStep, steps, steps, (k, n1, n2) => {
        const fewer: number = proRatedFactor({ factorPerStep: k, steps: ratio(Math.min(n1, n2)) });
        const more: number = proRatedFactor({ factorPerStep: k, steps: ratio(Math.max(n1, n2)) });
        expect(more).toBeGreaterThanOrEqual(fewer * (1 - 1e-15));
      }),
    );
  });

  it.each([
    ['factorPerStep', { factorPerStep: 0.99, steps: 1 }],
    ['factorPerStep', { factorPerStep: 2.01, steps: 1 }],
    ['factorPerStep', { steps: 1 }],
    ['steps', { factorPerStep: 1.1, steps: -0.1 }],
    ['steps', { factorPerStep: 1.1, steps: 20.1 }],
    ['steps', { factorPerStep: 1.1, steps: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => proRatedFactor(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
