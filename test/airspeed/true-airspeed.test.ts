import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { trueAirspeed } from '../../src/airspeed/index.ts';
import { densityRatio, speedOfSound, standardPressure } from '../../src/atmosphere/index.ts';
import { DomainError, degC, ftPA, kcas } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const speed = evenly(1, 250).map(kcas);
const altitude = evenly(-5000, 36089).map(ftPA);
const temperature = evenly(-80, 60).map(degC);

describe('trueAirspeed', () => {
  it('is the calibrated airspeed in standard air at sea level', () => {
    fc.assert(
      fc.property(evenly(0, 350), (v) => {
        const inputs = { calibratedAirspeed: kcas(v), pressureAltitude: ftPA(0), temperature: degC(15) };
        // Near zero the square root of a difference of almost equal numbers loses half its digits.
        expect(trueAirspeed(inputs)).toBeCloseTo(v, 4);
      }),
    );
  });

  it('goes back to the calibrated airspeed through the impact pressure', () => {
    fc.assert(
      fc.property(speed, altitude, temperature, (calibratedAirspeed, pressureAltitude, t) => {
        const v: number = trueAirspeed({ calibratedAirspeed, pressureAltitude, temperature: t });
        const mach = v / speedOfSound({ temperature: t });
        const delta = standardPressure({ pressureAltitude }) / 1013.25;
        const qcOverP0 = delta * ((1 + 0.2 * mach ** 2) ** 3.5 - 1);
        const back = speedOfSound({ temperature: degC(15) }) * Math.sqrt(5 * ((qcOverP0 + 1) ** (2 / 7) - 1));
        expect(back).toBeCloseTo(calibratedAirspeed, 6);
      }),
    );
  });

  it('tends to the incompressible value at a low speed', () => {
    fc.assert(
      fc.property(altitude, temperature, (pressureAltitude, t) => {
        const v: number = trueAirspeed({ calibratedAirspeed: kcas(10), pressureAltitude, temperature: t });
        const sigma = densityRatio({ pressureAltitude, temperature: t });
        expect((v * Math.sqrt(sigma)) / 10).toBeCloseTo(1, 3);
      }),
    );
  });

  it('refuses Mach 1 and names the calibrated airspeed that reaches it', () => {
    const call = (v: number) =>
      trueAirspeed({ calibratedAirspeed: kcas(v), pressureAltitude: ftPA(36000), temperature: degC(-56) });
    let limit = Number.NaN;
    try {
      call(350);
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      const { detail } = error as DomainError;
      expect(detail).toMatchObject({ code: 'inconsistent', parameter: 'calibratedAirspeed', received: 350 });
      limit = Number(detail.max);
    }
    const sound: number = speedOfSound({ temperature: degC(-56) });
    expect(call(limit - 0.001)).toBeCloseTo(sound, 2);
    expect(() => call(limit + 0.001)).toThrow(DomainError);
  });

  it.each([
    ['calibratedAirspeed', { calibratedAirspeed: -0.1, pressureAltitude: 0, temperature: 15 }],
    ['calibratedAirspeed', { calibratedAirspeed: 350.1, pressureAltitude: 0, temperature: 15 }],
    ['calibratedAirspeed', { pressureAltitude: 0, temperature: 15 }],
    ['pressureAltitude', { calibratedAirspeed: 100, pressureAltitude: -5000.1, temperature: 15 }],
    ['pressureAltitude', { calibratedAirspeed: 100, pressureAltitude: 36089.1, temperature: 15 }],
    ['temperature', { calibratedAirspeed: 100, pressureAltitude: 0, temperature: -80.1 }],
    ['temperature', { calibratedAirspeed: 100, pressureAltitude: 0, temperature: 60.1 }],
    ['temperature', { calibratedAirspeed: 100, pressureAltitude: 0, temperature: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => trueAirspeed(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
