import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { climbGradient } from '../../src/flight-path/index.ts';
import { DomainError, feetPerNauticalMileFromRatio, ftPerMin, ktGS } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const rate = evenly(-3000, 6000).map(ftPerMin);
const groundSpeed = evenly(1, 300).map(ktGS);

describe('climbGradient', () => {
  it('in feet per nautical mile is the height gained in the minutes that a mile takes', () => {
    fc.assert(
      fc.property(rate, groundSpeed, (rateOfClimb, gs) => {
        const gradient: number = feetPerNauticalMileFromRatio(climbGradient({ rateOfClimb, groundSpeed: gs }));
        const minutesPerMile = 60 / gs;
        const expected = rateOfClimb * minutesPerMile;
        expect(Math.abs(gradient - expected)).toBeLessThanOrEqual(1e-12 * (1 + Math.abs(expected)));
      }),
    );
  });

  it('is negative in a descent', () => {
    expect(climbGradient({ rateOfClimb: ftPerMin(-300), groundSpeed: ktGS(60) })).toBeLessThan(0);
  });

  it.each([
    ['rateOfClimb', { rateOfClimb: -3000.1, groundSpeed: 60 }],
    ['rateOfClimb', { rateOfClimb: 6000.1, groundSpeed: 60 }],
    ['rateOfClimb', { groundSpeed: 60 }],
    ['groundSpeed', { rateOfClimb: 500, groundSpeed: 0.9 }],
    ['groundSpeed', { rateOfClimb: 500, groundSpeed: 300.1 }],
    ['groundSpeed', { rateOfClimb: 500, groundSpeed: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => climbGradient(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
