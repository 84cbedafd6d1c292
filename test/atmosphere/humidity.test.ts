import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airDensity,
  densityAltitudeFromDensity,
  dewPoint,
  humidAirDensity,
  humidDensityAltitude,
  humidDensityRatio,
  relativeHumidity,
  relativeHumidityWmo,
  saturationVapourPressure,
  saturationVapourPressureBuck1981,
  saturationVapourPressureBuck1996,
  saturationVapourPressureNws,
  saturationVapourPressureOfMoistAirWmo,
  saturationVapourPressureTetens,
  saturationVapourPressureWmo,
  standardPressure,
  virtualTemperature,
  virtualTemperatureFromMixingRatio,
  virtualTemperatureFromSpecificHumidity,
} from '../../src/atmosphere/index.ts';
import { DomainError, degC, ftPA, hPa, percent, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const temperature = evenly(-40, 50);
const pressure = evenly(500, 1100).map(hPa);
const humidAir = fc.record({ a: temperature, b: temperature }).map(({ a, b }) => ({
  temperature: degC(Math.max(a, b)),
  dewPoint: degC(Math.min(a, b)),
}));

describe('saturation vapour pressures', () => {
  const others = [
    ['Tetens', saturationVapourPressureTetens],
    ['National Weather Service', saturationVapourPressureNws],
    ['Buck 1981', saturationVapourPressureBuck1981],
    ['Buck 1996', saturationVapourPressureBuck1996],
    ['WMO', saturationVapourPressureWmo],
  ] as const;

  it.each(others)(
    '%s: rises with the temperature, within 0.9 percent of Bolton from -20 to 40 degrees',
    (_name, other) => {
      fc.assert(
        fc.property(temperature, temperature, (a, b) => {
          fc.pre(b - a > 1e-6);
          expect(other({ temperature: degC(b) })).toBeGreaterThan(other({ temperature: degC(a) }));
          fc.pre(a >= -20 && a <= 40);
          const bolton = saturationVapourPressure({ temperature: degC(a) });
          expect(Math.abs(other({ temperature: degC(a) }) / bolton - 1)).toBeLessThan(0.009);
        }),
      );
    },
  );

  it('is some 0.5 % higher in air than over pure water', () => {
    const inAir = saturationVapourPressureOfMoistAirWmo({ temperature: degC(20), pressure: hPa(1000) });
    expect(inAir / saturationVapourPressureWmo({ temperature: degC(20) })).toBeCloseTo(1.004676, 6);
  });
});

describe('relative humidity and dew point', () => {
  it('undo one another', () => {
    fc.assert(
      fc.property(humidAir, (air) => {
        const humidity = relativeHumidity(air);
        expect(humidity).toBeLessThanOrEqual(100);
        fc.pre(humidity >= 1);
        const back = dewPoint({ temperature: air.temperature, relativeHumidity: humidity });
        expect(back).toBeCloseTo(air.dewPoint, 9);
      }),
    );
  });

  it('saturated air has its own temperature as dew point, never a bit more', () => {
    fc.assert(
      fc.property(temperature, (t) => {
        const saturated = dewPoint({ temperature: degC(t), relativeHumidity: percent(100) });
        expect(saturated).toBeLessThanOrEqual(t);
        expect(saturated).toBeCloseTo(t, 9);
        expect(
          humidDensityAltitude({ pressureAltitude: ftPA(0), temperature: degC(t), dewPoint: saturated }),
        ).toSatisfy(Number.isFinite);
      }),
    );
  });

  it('refuses a dew point above the temperature and a dew point below the range', () => {
    const call = () => relativeHumidity({ temperature: degC(20), dewPoint: degC(20.1) });
    const detail = { code: 'inconsistent', parameter: 'dewPoint', received: 20.1, max: 20 };
    expect(call).toThrow(expect.objectContaining({ detail: expect.objectContaining(detail) }));
    const dry = () => dewPoint({ temperature: degC(-35), relativeHumidity: percent(5) });
    expect(dry).toThrow(DomainError);
    expect(dry).toThrow(/^relativeHumidity: 5 percent is inconsistent with/);
  });

  it('WMO: refuses a mixing ratio above that of saturated air, and gives 100 % at it', () => {
    const air = { temperature: degC(20), pressure: hPa(1000) };
    const call = () => relativeHumidityWmo({ ...air, mixingRatio: ratio(0.02) });
    let saturated = 0;
    try {
      call();
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      expect(error.detail).toMatchObject({ code: 'inconsistent', parameter: 'mixingRatio', min: 0 });
      saturated = Number(error.detail.max);
    }
    expect(saturated).toBeGreaterThan(0.014);
    expect(relativeHumidityWmo({ ...air, mixingRatio: ratio(saturated * (1 - 1e-12)) })).toBeCloseTo(100, 6);
    expect(relativeHumidityWmo({ ...air, mixingRatio: ratio(0) })).toBe(0);
  });
});

describe('the density of air', () => {
  it('of dry air follows pressure and absolute temperature', () => {
    fc.assert(
      fc.property(pressure, temperature, temperature, (p, a, b) => {
        const cold = airDensity({ pressure: p, temperature: degC(a) });
        const warm = airDensity({ pressure: p, temperature: degC(b) });
        expect(cold / warm).toBeCloseTo((b + 273.15) / (a + 273.15), 12);
        expect(airDensity({ pressure: hPa(p / 2), temperature: degC(a) })).toBeCloseTo(cold / 2, 12);
      }),
    );
  });

  it('of humid air is that of dry air at the virtual temperature, and its altitude is the density altitude', () => {
    fc.assert(
      fc.property(humidAir, evenly(-5000, 20000).map(ftPA), (air, pressureAltitude) => {
        const here = standardPressure({ pressureAltitude });
        const tv = virtualTemperature({ ...air, pressureAltitude });
        const density = humidAirDensity({ ...air, pressure: here });
        fc.pre(tv <= 60);
        expect(density).toBeCloseTo(airDensity({ pressure: here, temperature: tv }), 12);
        // The printed gas constant is rounded: 1.5e-8 of density, half a thousandth of a foot.
        const altitude = densityAltitudeFromDensity({ density });
        expect(altitude).toBeCloseTo(humidDensityAltitude({ ...air, pressureAltitude }), 2);
      }),
    );
  });

  it('by relative humidity is that by dew point, as a ratio', () => {
    fc.assert(
      fc.property(humidAir, pressure, (air, p) => {
        const humidity = relativeHumidity(air);
        const sigma = humidDensityRatio({ pressure: p, temperature: air.temperature, relativeHumidity: humidity });
        expect(sigma * 1.225).toBeCloseTo(humidAirDensity({ ...air, pressure: p }), 6);
      }),
    );
  });

  it('refuses a dew point above the temperature', () => {
    const call = () => humidAirDensity({ pressure: hPa(1000), temperature: degC(20), dewPoint: degC(20.1) });
    const detail = { code: 'inconsistent', parameter: 'dewPoint', received: 20.1, max: 20 };
    expect(call).toThrow(expect.objectContaining({ detail: expect.objectContaining(detail) }));
  });
});

describe('the virtual temperature', () => {
  it('is the same from dew point, mixing ratio and specific humidity', () => {
    fc.assert(
      fc.property(humidAir, evenly(-5000, 20000).map(ftPA), (air, pressureAltitude) => {
        const e: number = saturationVapourPressure({ temperature: air.dewPoint });
        const p: number = standardPressure({ pressureAltitude });
        const r = (0.62198 * e) / (p - e);
        fc.pre(r <= 0.1);
        const tv = virtualTemperature({ ...air, pressureAltitude });
        const { temperature: t } = air;
        const fromMixingRatio = virtualTemperatureFromMixingRatio({ temperature: t, mixingRatio: ratio(r) });
        const specificHumidity = ratio(r / (1 + r));
        const fromSpecific = virtualTemperatureFromSpecificHumidity({ temperature: t, specificHumidity });
        expect(fromMixingRatio).toBeCloseTo(tv, 9);
        expect(fromSpecific).toBeCloseTo(tv, 9);
      }),
    );
  });
});
