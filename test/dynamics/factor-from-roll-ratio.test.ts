import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rollWithSurface } from '../../src/distance/index.ts';
import { factorFromRollRatio } from '../../src/dynamics/index.ts';
import { DomainError, m, ratio } from '../../src/units/index.ts';

describe('factorFromRollRatio', () => {
  it('undoes the rule that a factor on the distance lies wholly on the ground', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 50, max: 500 }),
        fc.integer({ min: 20, max: 800 }),
        fc.integer({ min: 100, max: 300 }),
        (roll, airborne, percent) => {
          const [groundRoll, distance] = [m(roll), m(roll + airborne)];
          const factor = factorFromRollRatio({ ratio: ratio(percent / 100), groundRoll, distance });
          const rolled = rollWithSurface({ groundRoll, distance, factor });
          expect(rolled).toBeCloseTo((roll * percent) / 100, 9);
        },
      ),
    );
  });

  it.each([
    ['ratio', { ratio: -0.1 }],
    ['ratio', { ratio: 100.1 }],
    ['groundRoll', { groundRoll: 0.9 }],
    ['groundRoll', { groundRoll: 20000.1 }],
    ['distance', { distance: 0.9 }],
    ['distance', { distance: 20000.1 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => factorFromRollRatio({ ratio: 1.2, groundRoll: 200, distance: 400, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
