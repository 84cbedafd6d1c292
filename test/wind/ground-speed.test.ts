import { describe, expect, it } from 'vitest';
import { DomainError, kt, ktas } from '../../src/units/index.ts';
import { groundSpeed } from '../../src/wind/index.ts';

describe('groundSpeed', () => {
  it('is the true airspeed less a headwind and more a tailwind', () => {
    expect(groundSpeed({ trueAirspeed: ktas(70), headwind: kt(12) })).toBe(58);
    expect(groundSpeed({ trueAirspeed: ktas(70), headwind: kt(-12) })).toBe(82);
  });

  it.each([70, 71])('refuses a headwind of %i kt that leaves no ground speed of 70 kt', (headwind) => {
    const call = () => groundSpeed({ trueAirspeed: ktas(70), headwind: kt(headwind) });
    expect(call).toThrow(
      expect.objectContaining({ detail: expect.objectContaining({ code: 'inconsistent', max: 70 }) }),
    );
    expect(call).toThrow(/^headwind: /);
  });

  it.each([
    ['trueAirspeed', { trueAirspeed: -1, headwind: -10 }],
    ['trueAirspeed', { trueAirspeed: 501, headwind: 0 }],
    ['trueAirspeed', { trueAirspeed: Number.NaN, headwind: 0 }],
    ['headwind', { trueAirspeed: 100, headwind: -201 }],
    ['headwind', { trueAirspeed: 100 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => groundSpeed(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
