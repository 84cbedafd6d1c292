import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correctedDistance } from '../../src/distance/index.ts';
import { DomainError, m, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const distance = evenly(0, 20000).map(m);
const factors = fc.array(evenly(0.2, 5), { maxLength: 15 });

describe('correctedDistance', () => {
  it('without factors is the distance itself', () => {
    fc.assert(
      fc.property(distance, (d) => {
        expect(correctedDistance({ distance: d, factors: [] })).toBe(d);
      }),
    );
  });

  it('does not depend on the order of the factors', () => {
    fc.assert(
      fc.property(distance, factors, (d, list) => {
        const forwards: number = correctedDistance({ distance: d, factors: list });
        const backwards: number = correctedDistance({ distance: d, factors: [...list].reverse() });
        expect(Math.abs(forwards - backwards)).toBeLessThanOrEqual(1e-12 * (1 + forwards));
      }),
    );
  });

  it('applies a list as it applies its factors one after the other', () => {
    const short = evenly(0, 5).map(m);
    const four = fc.array(evenly(0.2, 5), { maxLength: 4 });
    fc.assert(
      fc.property(short, four, (d, list) => {
        let stepwise = d;
        for (const factor of list) stepwise = correctedDistance({ distance: stepwise, factors: [factor] });
        expect(correctedDistance({ distance: d, factors: list })).toBe(stepwise);
      }),
    );
  });

  it('multiplies and does not add: 20 % and 10 % are 32 %', () => {
    expect(correctedDistance({ distance: m(100), factors: [ratio(1.2), 1.1] })).toBeCloseTo(132, 12);
  });

  it('takes a factor at each end of its range and the longest list', () => {
    expect(correctedDistance({ distance: m(100), factors: [0.2, 5] })).toBeCloseTo(100, 12);
    expect(correctedDistance({ distance: m(20000), factors: new Array<number>(30).fill(5) })).toSatisfy(
      Number.isFinite,
    );
  });

  it.each([
    ['distance', { distance: -0.1, factors: [1.2] }],
    ['distance', { distance: 20000.1, factors: [1.2] }],
    ['distance', { distance: Number.NaN, factors: [1.2] }],
    ['factors\\[0\\]', { distance: 400, factors: [0.19] }],
    ['factors\\[1\\]', { distance: 400, factors: [1.2, 5.01] }],
    ['factors\\[1\\]', { distance: 400, factors: [1.2, Number.NaN] }],
    ['factors\\[0\\]', { distance: 400, factors: ['1.2'] }],
    ['factors\\[0\\]', { distance: 400, factors: [undefined] }],
    ['factors', { distance: 400 }],
    ['factors', { distance: 400, factors: 1.2 }],
    ['factors.length', { distance: 400, factors: new Array(31).fill(1) }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => correctedDistance(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
