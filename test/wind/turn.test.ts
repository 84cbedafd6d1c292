import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, degrees, ktas, ktGS, m, mpsTAS, trueAirspeedFromMetresPerSecond } from '../../src/units/index.ts';
import { bankAroundPoint, rateOfTurn, turnRadius, turnTime } from '../../src/wind/index.ts';
import { evenly } from '../evenly.ts';

const trueAirspeed = evenly(10, 500).map(ktas);
const bank = evenly(1, 75).map(degrees);

/** A tenth of a part in a million million: the noise of a few roundings. */
function expectSame(a: number, b: number): void {
  expect(Math.abs(a / b - 1)).toBeLessThan(1e-12);
}

describe('turnRadius, rateOfTurn and turnTime', () => {
  it('go around the whole circle in the time that its circumference takes', () => {
    fc.assert(
      fc.property(trueAirspeed, bank, (speed, angle) => {
        const turn = { trueAirspeed: speed, bank: angle };
        const around_m = 2 * Math.PI * turnRadius(turn);
        const time_s = turnTime({ ...turn, headingChange: degrees(360) });
        expectSame(around_m / time_s, (speed * 1852) / 3600);
        expectSame(rateOfTurn(turn) * time_s, 360);
      }),
    );
  });

  it('turn at 45° of bank with the acceleration of free fall', () => {
    const trueAirspeed45 = trueAirspeedFromMetresPerSecond(mpsTAS(9.80665));
    expect(turnRadius({ trueAirspeed: trueAirspeed45, bank: degrees(45) })).toBeCloseTo(9.80665, 9);
    expect(rateOfTurn({ trueAirspeed: trueAirspeed45, bank: degrees(45) })).toBeCloseTo(180 / Math.PI, 9);
  });

  it('take four times the radius at twice the speed, and half the rate', () => {
    const slow = { trueAirspeed: ktas(60), bank: degrees(25) };
    const fast = { trueAirspeed: ktas(120), bank: degrees(25) };
    expectSame(turnRadius(fast), 4 * turnRadius(slow));
    expectSame(rateOfTurn(fast), rateOfTurn(slow) / 2);
  });

  it('do not turn with the wings level, and take no time for no turn', () => {
    expect(rateOfTurn({ trueAirspeed: ktas(80), bank: degrees(0) })).toBe(0);
    expect(turnTime({ trueAirspeed: ktas(80), bank: degrees(20), headingChange: degrees(0) })).toBe(0);
  });

  const good = { trueAirspeed: 80, bank: 20, headingChange: 90 };
  it.each([
    ['trueAirspeed', { trueAirspeed: 9.9 }],
    ['trueAirspeed', { trueAirspeed: 501 }],
    ['trueAirspeed', { trueAirspeed: Number.NaN }],
    ['bank', { bank: -0.1 }],
    ['bank', { bank: 75.1 }],
    ['bank', { bank: undefined }],
  ])('refuse a bad %s and name it', (parameter, inputs) => {
    for (const formula of [turnRadius, rateOfTurn, turnTime]) {
      const call = () => formula({ ...good, ...inputs } as never);
      expect(call).toThrow(DomainError);
      expect(call).toThrow(new RegExp(`^${parameter}: `));
    }
  });

  it('refuse wings level where the radius or the time would be infinite', () => {
    for (const formula of [turnRadius, turnTime]) {
      expect(() => formula({ ...good, bank: 0.9 } as never)).toThrow(/^bank: /);
      expect(() => formula({ ...good, bank: 1 } as never)).not.toThrow();
    }
  });

  it.each([-0.1, 360.1, Number.NaN, undefined])('refuse a change of heading of %s', (headingChange) => {
    expect(() => turnTime({ ...good, headingChange } as never)).toThrow(/^headingChange: /);
  });
});

describe('bankAroundPoint', () => {
  it('is in calm the bank of the turn of that radius', () => {
    fc.assert(
      fc.property(evenly(10, 300), evenly(5, 75), (speed, angle) => {
        const radius = turnRadius({ trueAirspeed: ktas(speed), bank: degrees(angle) });
        fc.pre(radius >= 20 && radius <= 20000);
        expect(bankAroundPoint({ groundSpeed: ktGS(speed), radius })).toBeCloseTo(angle, 9);
      }),
    );
  });

  it('is steeper with the wind from behind than with the wind from ahead', () => {
    const radius = m(400);
    const downwind = bankAroundPoint({ groundSpeed: ktGS(100), radius });
    expect(downwind).toBeGreaterThan(bankAroundPoint({ groundSpeed: ktGS(80), radius }));
  });

  it.each([
    ['groundSpeed', { groundSpeed: 9.9 }],
    ['groundSpeed', { groundSpeed: 301 }],
    ['groundSpeed', { groundSpeed: Number.NaN }],
    ['radius', { radius: 19 }],
    ['radius', { radius: 20001 }],
    ['radius', { radius: undefined }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => bankAroundPoint({ groundSpeed: 90, radius: 500, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
