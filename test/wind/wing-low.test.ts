import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, degTrue, kt, ktas, ratio } from '../../src/units/index.ts';
import { crabAngle, sideslipAngle, sideslipBank, windTriangle } from '../../src/wind/index.ts';
import { evenly } from '../evenly.ts';

const wind = fc.record({ crosswind: evenly(-24, 24).map(kt), trueAirspeed: evenly(25, 300).map(ktas) });
const aeroplane = { sideForceDerivative: ratio(-0.5), liftCoefficient: ratio(1.1) };

describe('crabAngle and sideslipAngle', () => {
  it('are one angle, seen from the track and from the nose', () => {
    fc.assert(
      fc.property(wind, (x) => {
        expect(sideslipAngle(x)).toBe(crabAngle(x));
      }),
    );
  });

  it('point as far into the wind as the wind triangle does, whatever blows along the runway', () => {
    fc.assert(
      fc.property(evenly(0, 360), evenly(0, 24), evenly(0, 360), evenly(50, 300), (from, speed, runway, v) => {
        const track = degTrue(runway);
        const triangle = windTriangle({ from: degTrue(from), speed: kt(speed), track, trueAirspeed: ktas(v) });
        const crosswind = kt(speed * Math.sin(((from - runway) * Math.PI) / 180));
        expect(crabAngle({ crosswind, trueAirspeed: ktas(v) })).toBeCloseTo(triangle.windCorrectionAngle, 9);
      }),
    );
  });

  it('take the side of the wind', () => {
    expect(crabAngle({ crosswind: kt(30), trueAirspeed: ktas(60) })).toBeCloseTo(30, 9);
    expect(crabAngle({ crosswind: kt(-30), trueAirspeed: ktas(60) })).toBeCloseTo(-30, 9);
    expect(crabAngle({ crosswind: kt(0), trueAirspeed: ktas(60) })).toBe(0);
  });
});

describe('sideslipBank', () => {
  it('lowers the wing into the wind, the more the stronger it is', () => {
    fc.assert(
      fc.property(evenly(0.1, 20), evenly(0.1, 4), evenly(40, 300), (crosswind, more, v) => {
        const bank = (knots: number) => sideslipBank({ crosswind: kt(knots), trueAirspeed: ktas(v), ...aeroplane });
        expect(bank(crosswind)).toBeGreaterThan(0);
        expect(bank(crosswind + more)).toBeGreaterThan(bank(crosswind));
        expect(bank(-crosswind)).toBe(-bank(crosswind));
      }),
    );
  });

  it('needs less bank where there is more lift for the same slip', () => {
    const x = { crosswind: kt(12), trueAirspeed: ktas(65), sideForceDerivative: ratio(-0.5) };
    const slower = sideslipBank({ ...x, liftCoefficient: ratio(1.4) });
    expect(slower).toBeLessThan(sideslipBank({ ...x, liftCoefficient: ratio(1) }));
  });

  it('refuses a slip that no bank balances', () => {
    const call = () =>
      sideslipBank({
        crosswind: kt(25),
        trueAirspeed: ktas(25),
        sideForceDerivative: ratio(-1),
        liftCoefficient: ratio(1.5),
      });
    expect(call).toThrow(/^liftCoefficient: 1\.5 ratio is inconsistent with 1\.57/);
    expect(call).toThrow(expect.objectContaining({ detail: expect.objectContaining({ code: 'inconsistent' }) }));
  });

  it.each([
    ['sideForceDerivative', { sideForceDerivative: -1.01 }],
    ['sideForceDerivative', { sideForceDerivative: -0.04 }],
    ['sideForceDerivative', { sideForceDerivative: 0.5 }],
    ['sideForceDerivative', { sideForceDerivative: undefined }],
    ['liftCoefficient', { liftCoefficient: 0.39 }],
    ['liftCoefficient', { liftCoefficient: 3.01 }],
    ['liftCoefficient', { liftCoefficient: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => sideslipBank({ crosswind: 10, trueAirspeed: 60, ...aeroplane, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('all three refuse', () => {
  it.each([
    ['crosswind', { crosswind: -40.1 }],
    ['crosswind', { crosswind: 40.1 }],
    ['crosswind', { crosswind: undefined }],
    ['trueAirspeed', { trueAirspeed: 24.9 }],
    ['trueAirspeed', { trueAirspeed: 300.1 }],
    ['trueAirspeed', { trueAirspeed: Number.NaN }],
    ['crosswind', { crosswind: 31, trueAirspeed: 30 }],
    ['crosswind', { crosswind: -31, trueAirspeed: 30 }],
  ])('a bad %s, by name', (parameter, inputs) => {
    for (const formula of [crabAngle, sideslipAngle, sideslipBank]) {
      const call = () => formula({ crosswind: 10, trueAirspeed: 60, ...aeroplane, ...inputs } as never);
      expect(call).toThrow(DomainError);
      expect(call).toThrow(new RegExp(`^${parameter}: `));
    }
  });
});
