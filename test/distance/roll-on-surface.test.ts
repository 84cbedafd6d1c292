import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correctedDistance, rollWithSurface } from '../../src/distance/index.ts';
import { DomainError, m, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

describe('rollWithSurface', () => {
  it('leaves the airborne distance as it is', () => {
    fc.assert(
      fc.property(evenly(0, 1), evenly(0, 20000), evenly(1, 5), (share, d, k) => {
        const groundRoll = m(share * d);
        const distance = m(d);
        const roll: number = rollWithSurface({ groundRoll, distance, factor: ratio(k) });
        const whole: number = correctedDistance({ distance, factors: [k] });
        expect(whole - roll).toBeCloseTo(d - groundRoll, 8);
      }),
    );
  });

  it('costs the roll a larger share than the distance', () => {
    const roll: number = rollWithSurface({ groundRoll: m(300), distance: m(500), factor: ratio(1.2) });
    expect(roll / 300).toBeGreaterThan(1.2);
  });

  it('refuses a roll longer than the distance', () => {
    expect(rollWithSurface({ groundRoll: m(500), distance: m(500), factor: ratio(1) })).toBe(500);
    const call = () => rollWithSurface({ groundRoll: m(500.1), distance: m(500), factor: ratio(1) });
    expect(call).toThrow(/^groundRoll: 500\.1 m is inconsistent with 0 to 500 m/);
  });

  it.each([
    ['groundRoll', { groundRoll: -0.1, distance: 500, factor: 1.2 }],
    ['groundRoll', { groundRoll: 20000.1, distance: 500, factor: 1.2 }],
    ['groundRoll', { distance: 500, factor: 1.2 }],
    ['distance', { groundRoll: 0, distance: -0.1, factor: 1.2 }],
    ['distance', { groundRoll: 300, distance: 20000.1, factor: 1.2 }],
    ['distance', { groundRoll: 300, distance: Number.NaN, factor: 1.2 }],
    ['factor', { groundRoll: 300, distance: 500, factor: 0.99 }],
    ['factor', { groundRoll: 300, distance: 500, factor: 5.1 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => rollWithSurface(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
