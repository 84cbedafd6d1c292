import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  climbGradient,
  gradientAngle,
  gradientFromAngle,
  heightAtDistance,
  rateForGradient,
  stillAirGradient,
} from '../../src/flight-path/index.ts';
import { DomainError, degrees, ftPerMin, ktas, ktGS, m, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

describe('gradientAngle and gradientFromAngle', () => {
  it('undo each other', () => {
    fc.assert(
      fc.property(evenly(-1, 2), (gradient) => {
        const angle = Math.min(gradientAngle({ gradient: ratio(gradient) }), 63.4);
        expect(gradientFromAngle({ angle: degrees(angle) })).toBeCloseTo(Math.min(gradient, 1.9969), 3);
        expect(gradientFromAngle({ angle: degrees(Math.min(angle, 60)) })).toBeCloseTo(
          Math.min(gradient, Math.sqrt(3)),
          9,
        );
      }),
    );
  });

  it('agree with the sides of known triangles', () => {
    expect(gradientAngle({ gradient: ratio(1) })).toBeCloseTo(45, 12);
    expect(gradientAngle({ gradient: ratio(-1 / Math.sqrt(3)) })).toBeCloseTo(-30, 12);
    expect(gradientFromAngle({ angle: degrees(30) })).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(gradientFromAngle({ angle: degrees(0) })).toBe(0);
  });

  it.each([-1.01, 2.01, Number.NaN, Number.POSITIVE_INFINITY, undefined])('refuse a gradient of %s', (gradient) => {
    expect(() => gradientAngle({ gradient } as never)).toThrow(/^gradient: /);
    expect(() => gradientAngle({ gradient } as never)).toThrow(DomainError);
  });

  it.each([-45.1, 63.5, Number.NaN, undefined])('refuse an angle of %s', (angle) => {
    expect(() => gradientFromAngle({ angle } as never)).toThrow(/^angle: /);
    expect(() => gradientFromAngle({ angle } as never)).toThrow(DomainError);
  });
});

describe('rateForGradient', () => {
  it('is what climbGradient answers, the other way round', () => {
    fc.assert(
      fc.property(evenly(-0.09, 0.19), evenly(1, 300).map(ktGS), (gradient, groundSpeed) => {
        const rateOfClimb = rateForGradient({ gradient: ratio(gradient), groundSpeed });
        expect(climbGradient({ rateOfClimb, groundSpeed })).toBeCloseTo(gradient, 12);
      }),
    );
  });

  it('is above the rule of percent times knots, which is 1.25 % low', () => {
    const exact: number = rateForGradient({ gradient: ratio(0.033), groundSpeed: ktGS(150) });
    expect(3.3 * 150).toBeLessThan(exact);
    expect(exact / (3.3 * 150)).toBeCloseTo(1.0127, 4);
  });

  it.each([
    ['gradient', { gradient: -1.01 }],
    ['gradient', { gradient: 2.01 }],
    ['gradient', { gradient: undefined }],
    ['groundSpeed', { groundSpeed: 0.9 }],
    ['groundSpeed', { groundSpeed: 300.1 }],
    ['groundSpeed', { groundSpeed: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => rateForGradient({ gradient: 0.05, groundSpeed: 60, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('stillAirGradient', () => {
  const rate = evenly(-2000, 2000);
  const speed = evenly(40, 300);

  it('is the gradient over the ground at the level part of the airspeed', () => {
    fc.assert(
      fc.property(rate, speed, (roc, tas) => {
        const roc_kt = (roc * 60 * 0.3048) / 1852;
        const level_kt = Math.sqrt(tas ** 2 - roc_kt ** 2);
        const still: number = stillAirGradient({ rateOfClimb: ftPerMin(roc), trueAirspeed: ktas(tas) });
        expect(still).toBeCloseTo(climbGradient({ rateOfClimb: ftPerMin(roc), groundSpeed: ktGS(level_kt) }), 10);
      }),
    );
  });

  it('is less than over the ground in a headwind and more in a tailwind', () => {
    const rateOfClimb = ftPerMin(650);
    const still: number = stillAirGradient({ rateOfClimb, trueAirspeed: ktas(70) });
    expect(still).toBeLessThan(climbGradient({ rateOfClimb, groundSpeed: ktGS(60) }));
    expect(still).toBeGreaterThan(climbGradient({ rateOfClimb, groundSpeed: ktGS(80) }));
  });

  it('exceeds rate over airspeed by less than 1 % up to 8 degrees', () => {
    fc.assert(
      fc.property(evenly(50, 300), evenly(0.001, 0.139), (tas, sine) => {
        const rateOfClimb = ftPerMin((tas * sine * 1852) / 60 / 0.3048);
        const still: number = stillAirGradient({ rateOfClimb, trueAirspeed: ktas(tas) });
        expect(still / sine).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(still / sine).toBeLessThan(1.01);
      }),
    );
  });

  it('refuses a rate of climb near the airspeed, up and down', () => {
    const call = (roc: number, tas: number) => () =>
      stillAirGradient({ rateOfClimb: ftPerMin(roc), trueAirspeed: ktas(tas) });
    expect(call(4550, 50)()).toSatisfy(Number.isFinite);
    expect(call(4560, 50)).toThrow(/^rateOfClimb: 4560 ftPerMin is inconsistent with -4557\.\d+ to 4557\./);
    expect(call(6000, 25)).toThrow(DomainError);
    expect(call(-2000, 25)()).toSatisfy(Number.isFinite);
  });

  it.each([
    ['rateOfClimb', { rateOfClimb: -2000.1 }],
    ['rateOfClimb', { rateOfClimb: 6000.1 }],
    ['rateOfClimb', { rateOfClimb: undefined }],
    ['trueAirspeed', { trueAirspeed: 24.9 }],
    ['trueAirspeed', { trueAirspeed: 300.1 }],
    ['trueAirspeed', { trueAirspeed: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => stillAirGradient({ rateOfClimb: 500, trueAirspeed: 70, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('heightAtDistance', () => {
  it('is the gradient over the ground times the distance', () => {
    fc.assert(
      fc.property(evenly(-2000, 3000), evenly(20, 200), evenly(0, 5000), (roc, gs, distance) => {
        const inputs = { rateOfClimb: ftPerMin(roc), groundSpeed: ktGS(gs) };
        const seconds = distance / ((gs * 1852) / 3600);
        const expected = ((roc * 0.3048) / 60) * seconds;
        expect(heightAtDistance({ ...inputs, distance: m(distance) })).toBeCloseTo(expected, 8);
      }),
    );
  });

  it.each([
    ['rateOfClimb', { rateOfClimb: -3000.1 }],
    ['rateOfClimb', { rateOfClimb: 6000.1 }],
    ['groundSpeed', { groundSpeed: 0.9 }],
    ['groundSpeed', { groundSpeed: 300.1 }],
    ['groundSpeed', { groundSpeed: undefined }],
    ['distance', { distance: -0.1 }],
    ['distance', { distance: 100000.1 }],
    ['distance', { distance: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => heightAtDistance({ rateOfClimb: 500, groundSpeed: 60, distance: 1000, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
