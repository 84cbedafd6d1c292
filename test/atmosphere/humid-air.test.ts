import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  densityAltitude,
  humidDensityAltitude,
  saturationVapourPressure,
  virtualTemperature,
} from '../../src/atmosphere/index.ts';
import { DomainError, degC, ftPA } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const altitude = evenly(-5000, 20000).map(ftPA);
const temperature = evenly(-40, 50);
const humidAir = fc
  .record({ pressureAltitude: altitude, a: temperature, b: temperature })
  .map(({ pressureAltitude, a, b }) => ({
    pressureAltitude,
    temperature: degC(Math.max(a, b)),
    dewPoint: degC(Math.min(a, b)),
  }));

const bad = [
  ['pressureAltitude', { pressureAltitude: -5000.1, temperature: 20, dewPoint: 10 }],
  ['pressureAltitude', { pressureAltitude: 20000.1, temperature: 20, dewPoint: 10 }],
  ['temperature', { pressureAltitude: 0, temperature: -40.1, dewPoint: -40 }],
  ['temperature', { pressureAltitude: 0, temperature: 50.1, dewPoint: 10 }],
  ['temperature', { pressureAltitude: 0, temperature: Number.NaN, dewPoint: 10 }],
  ['dewPoint', { pressureAltitude: 0, temperature: 20, dewPoint: -40.1 }],
  ['dewPoint', { pressureAltitude: 0, temperature: 50, dewPoint: 50.1 }],
  ['dewPoint', { pressureAltitude: 0, temperature: 20 }],
] as const;

const aboveTemperature = { pressureAltitude: ftPA(0), temperature: degC(20), dewPoint: degC(20.1) };
const inconsistent = expect.objectContaining({
  detail: expect.objectContaining({ code: 'inconsistent', parameter: 'dewPoint', received: 20.1, max: 20 }),
});

describe('saturationVapourPressure', () => {
  it('rises with the temperature', () => {
    fc.assert(
      fc.property(temperature, temperature, (a, b) => {
        fc.pre(b - a > 1e-6);
        const colder = saturationVapourPressure({ temperature: degC(a) });
        expect(saturationVapourPressure({ temperature: degC(b) })).toBeGreaterThan(colder);
      }),
    );
  });

  it.each([{ temperature: -40.1 }, { temperature: 50.1 }, { temperature: Number.NaN }, {}])('refuses %o', (inputs) => {
    const call = () => saturationVapourPressure(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(/^temperature: /);
  });
});

describe('virtualTemperature', () => {
  it('is above the temperature, the more so the higher the dew point', () => {
    fc.assert(
      fc.property(humidAir, (air) => {
        const tv = virtualTemperature(air);
        expect(tv).toBeGreaterThan(air.temperature);
        expect(virtualTemperature({ ...air, dewPoint: air.temperature })).toBeGreaterThanOrEqual(tv);
      }),
    );
  });

  it.each(bad)('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => virtualTemperature(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });

  it('refuses a dew point above the temperature', () => {
    expect(() => virtualTemperature(aboveTemperature)).toThrow(inconsistent);
  });
});

describe('humidDensityAltitude', () => {
  it('is that of dry air at the virtual temperature', () => {
    fc.assert(
      fc.property(humidAir, (air) => {
        const tv = virtualTemperature(air);
        fc.pre(tv <= 60);
        const dry = densityAltitude({ pressureAltitude: air.pressureAltitude, temperature: tv });
        expect(humidDensityAltitude(air)).toBeCloseTo(dry, 9);
      }),
    );
  });

  it('is above that of dry air', () => {
    fc.assert(
      fc.property(humidAir, (air) => {
        expect(humidDensityAltitude(air)).toBeGreaterThan(densityAltitude(air));
      }),
    );
  });

  it('stays below the tropopause at the highest, warmest and wettest that it accepts', () => {
    const air = { pressureAltitude: ftPA(20000), temperature: degC(50), dewPoint: degC(50) };
    expect(humidDensityAltitude(air)).toBeLessThan(36089);
  });

  it.each(bad)('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => humidDensityAltitude(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });

  it('refuses a dew point above the temperature', () => {
    expect(() => humidDensityAltitude(aboveTemperature)).toThrow(inconsistent);
  });
});
