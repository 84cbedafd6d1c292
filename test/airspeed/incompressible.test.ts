import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  calibratedAirspeedFromTrue,
  calibratedAirspeedIncompressible,
  trueAirspeed,
  trueAirspeedIncompressible,
} from '../../src/airspeed/index.ts';
import { standardTemperature } from '../../src/atmosphere/index.ts';
import { DomainError, degC, ftPA, kcas, ktas } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

/** How much the approximation exceeds the true airspeed in standard air, kt. */
function excess(calibrated: number, altitude: number): number {
  const pressureAltitude = ftPA(altitude);
  const air = { pressureAltitude, temperature: standardTemperature({ pressureAltitude }) };
  const approximate: number = trueAirspeedIncompressible({ calibratedAirspeed: kcas(calibrated), ...air });
  const exact: number = trueAirspeed({ calibratedAirspeed: kcas(calibrated), ...air });
  return approximate - exact;
}

/** The same for the calibrated airspeed of a true one, kt. */
function excessOfCalibrated(trueSpeed: number, altitude: number): number {
  const pressureAltitude = ftPA(altitude);
  const air = { pressureAltitude, temperature: standardTemperature({ pressureAltitude }) };
  const approximate: number = calibratedAirspeedIncompressible({ trueAirspeed: ktas(trueSpeed), ...air });
  const exact: number = calibratedAirspeedFromTrue({ trueAirspeed: ktas(trueSpeed), ...air });
  return approximate - exact;
}

describe('trueAirspeedIncompressible', () => {
  it('reads high above mean sea level and low below it', () => {
    fc.assert(
      fc.property(evenly(20, 250), evenly(100, 36089), (v, altitude) => {
        expect(excess(v, altitude)).toBeGreaterThan(0);
        expect(excess(v, -Math.min(altitude, 5000))).toBeLessThan(0);
      }),
    );
  });

  it('errs by what its comment says', () => {
    expect(excess(100, 5000)).toBeCloseTo(0.06, 2);
    expect(excess(250, 10000)).toBeCloseTo(2.2, 1);
    expect(excess(300, 35000)).toBeGreaterThan(34.5);
    expect(excess(300, 35000)).toBeLessThan(35.5);
    fc.assert(
      fc.property(evenly(0, 150), evenly(0, 10000), (v, altitude) => {
        // The error grows with both, so that the corner bounds it: 0.496 kt.
        expect(excess(v, altitude)).toBeLessThan(0.5);
      }),
    );
    expect(excess(150, 10000)).toBeGreaterThan(0.49);
  });

  it('is undone by calibratedAirspeedIncompressible', () => {
    fc.assert(
      fc.property(evenly(1, 350), evenly(-5000, 36089), evenly(-80, 60), (v, altitude, t) => {
        const air = { pressureAltitude: ftPA(altitude), temperature: degC(t) };
        const trueSpeed: number = trueAirspeedIncompressible({ calibratedAirspeed: kcas(v), ...air });
        if (trueSpeed > 660) return;
        const back: number = calibratedAirspeedIncompressible({ trueAirspeed: ktas(trueSpeed), ...air });
        expect(back / v).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('calibratedAirspeedIncompressible', () => {
  it('errs by what its comment says', () => {
    expect(excessOfCalibrated(107.7, 5000)).toBeCloseTo(-0.06, 2);
    expect(excessOfCalibrated(288.7, 10000)).toBeCloseTo(-1.9, 1);
    fc.assert(
      fc.property(evenly(0, 174), evenly(0, 10000), (v, altitude) => {
        const error = excessOfCalibrated(v, altitude);
        expect(error).toBeLessThanOrEqual(1e-9);
        expect(error).toBeGreaterThan(-0.5);
      }),
    );
  });
});

describe('refusals', () => {
  const good = { calibratedAirspeed: 100, trueAirspeed: 110, pressureAltitude: 5000, temperature: 5 };
  const air = [
    ['pressureAltitude', -5000.1],
    ['pressureAltitude', 36089.1],
    ['temperature', -80.1],
    ['temperature', 60.1],
    ['temperature', undefined],
  ] as const;
  const cases = (parameter: string, values: readonly number[]) => [
    ...values.map((value) => [parameter, value] as const),
    ...air,
  ];

  it.each(cases('calibratedAirspeed', [-0.1, 350.1, Number.NaN]))(
    'trueAirspeedIncompressible refuses a bad %s and names it: %s',
    (parameter, value) => {
      const call = () => trueAirspeedIncompressible({ ...good, [parameter]: value } as never);
      expect(call).toThrow(DomainError);
      expect(call).toThrow(new RegExp(`^${parameter}: `));
    },
  );

  it.each(cases('trueAirspeed', [-0.1, 660.1, Number.NaN]))(
    'calibratedAirspeedIncompressible refuses a bad %s and names it: %s',
    (parameter, value) => {
      const call = () => calibratedAirspeedIncompressible({ ...good, [parameter]: value } as never);
      expect(call).toThrow(DomainError);
      expect(call).toThrow(new RegExp(`^${parameter}: `));
    },
  );
});
