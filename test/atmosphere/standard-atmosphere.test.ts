import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  densityAltitudeFromDensity,
  densityRatio,
  geometricAltitude,
  geopotentialAltitude,
  pressureAltitudeFromPressure,
  pressureAltitudeFromQfe,
  speedOfSound,
  standardAtmosphere,
  standardAtmosphereAtGeometricAltitude,
  standardAtmosphereAtPressure,
  standardAtmosphereAtPressureAltitude,
  standardPressure,
  standardTemperature,
} from '../../src/atmosphere/index.ts';
import { layers } from '../../src/atmosphere/standard-atmosphere-constants.ts';
import {
  ftPA,
  hPa,
  kgPerM3,
  mGeometric,
  mGeopotential,
  pressureAltitudeInMetresFromFeet,
} from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const altitude = evenly(-5000, 80000);
const at = (H: number) => standardAtmosphere({ geopotentialAltitude: mGeopotential(H) });

/** The same but for the noise of a few roundings. */
function expectClose(actual: number, expected: number, relative = 1e-12) {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
}

describe('standardAtmosphere', () => {
  it('has no step at the base of a layer', () => {
    for (const { H_m } of layers) {
      const below = at(H_m - 1e-6);
      const above = at(H_m + 1e-6);
      for (const name of Object.keys(below) as (keyof typeof below)[]) {
        if (name === 'temperature') expect(above.temperature - below.temperature).toBeCloseTo(0, 7);
        else expectClose(above[name], below[name], 1e-9);
      }
    }
  });

  it('has the temperature of the layer at its base', () => {
    for (const { H_m, T_K } of layers) expect(at(H_m).temperature + 273.15).toBeCloseTo(T_K, 10);
    expect(at(80000).temperature + 273.15).toBeCloseTo(196.65, 10);
    expect(at(-5000).temperature + 273.15).toBeCloseTo(320.65, 10);
  });

  it('loses pressure and density all the way up', () => {
    fc.assert(
      fc.property(altitude, altitude, (a, b) => {
        fc.pre(b - a > 1e-3);
        expect(at(b).pressure).toBeLessThan(at(a).pressure);
        expect(at(b).density).toBeLessThan(at(a).density);
        expect(at(b).freeFall).toBeLessThan(at(a).freeFall);
        expect(at(b).kinematicViscosity).toBeGreaterThan(at(a).kinematicViscosity);
      }),
    );
  });

  it('carries its air: the pressure falls by density times standard gravity per geopotential metre', () => {
    fc.assert(
      fc.property(evenly(-4990, 79990), (H) => {
        // A step that crosses the base of a layer is good to less.
        const isAtBase = layers.some(({ H_m }) => Math.abs(H - H_m) <= 1);
        const fall_PaPerM = (100 * (at(H - 1).pressure - at(H + 1).pressure)) / 2;
        expectClose(fall_PaPerM, 9.80665 * at(H).density, isAtBase ? 1e-4 : 1e-7);
      }),
    );
  });

  it('obeys the gas law, the laws of sound and of viscosity, and its own ratios', () => {
    fc.assert(
      fc.property(altitude, (H) => {
        const air = at(H);
        const T = air.temperature + 273.15;
        expectClose(air.density, (100 * air.pressure) / (287.05287 * T));
        expectClose(air.speedOfSound, (20.046796 * Math.sqrt(T) * 3600) / 1852, 1e-7);
        expectClose(air.dynamicViscosity, (1.458e-6 * T * Math.sqrt(T)) / (T + 110.4));
        expectClose(air.kinematicViscosity, air.dynamicViscosity / air.density);
        expectClose(air.temperatureRatio, T / 288.15);
        expectClose(air.pressureRatio, air.pressure / 1013.25);
        expectClose(air.densityRatio, air.density / 1.225);
        expectClose(air.densityRatio, air.pressureRatio / air.temperatureRatio, 2e-8);
        expectClose(air.rootOfDensityRatio ** 2, air.densityRatio);
        expectClose(air.viscosityRatio, air.dynamicViscosity / at(0).dynamicViscosity);
      }),
    );
  });

  it('agrees with the formulas of the troposphere, which are shorter', () => {
    fc.assert(
      fc.property(evenly(-5000, 36089).map(ftPA), (pressureAltitude) => {
        const air = standardAtmosphereAtPressureAltitude({ pressureAltitude });
        const temperature = standardTemperature({ pressureAltitude });
        expectClose(air.pressure, standardPressure({ pressureAltitude }));
        expect(air.temperature).toBeCloseTo(temperature, 10);
        expectClose(air.densityRatio, densityRatio({ pressureAltitude, temperature }), 2e-8);
        expectClose(air.speedOfSound, speedOfSound({ temperature }));
      }),
    );
  });

  it('has gravity that falls with the square of the distance from the centre of the Earth', () => {
    expect(at(0).freeFall).toBe(9.80665);
    fc.assert(
      fc.property(altitude, (H) => {
        const h = geometricAltitude({ geopotentialAltitude: mGeopotential(H) });
        expectClose(at(H).freeFall, 9.80665 * (6356766 / (6356766 + h)) ** 2);
      }),
    );
  });
});

describe('the standard atmosphere by another altitude', () => {
  it('is the same air at a geometric altitude, at its pressure altitude and at its pressure', () => {
    fc.assert(
      fc.property(evenly(-4999.8, 79999.8), (H) => {
        const air = at(H);
        const h = geometricAltitude({ geopotentialAltitude: mGeopotential(H) });
        const sameAir = [
          standardAtmosphereAtGeometricAltitude({ geometricAltitude: mGeometric(Number(h)) }),
          standardAtmosphereAtPressureAltitude({ pressureAltitude: ftPA(H / 0.3048) }),
        ];
        fc.pre(air.pressure >= 0.0088628 && air.pressure <= 1776.87);
        sameAir.push(standardAtmosphereAtPressure({ pressure: air.pressure }));
        for (const other of sameAir) {
          expectClose(other.pressure, air.pressure, 1e-10);
          expectClose(other.density, air.density, 1e-10);
          expect(other.temperature).toBeCloseTo(air.temperature, 8);
        }
      }),
    );
  });
});

describe('geopotential and geometric altitude', () => {
  it('undo one another', () => {
    fc.assert(
      fc.property(altitude, (H) => {
        const h = geometricAltitude({ geopotentialAltitude: mGeopotential(H) });
        expect(geopotentialAltitude({ geometricAltitude: h })).toBeCloseTo(H, 8);
      }),
    );
  });

  it('start together at mean sea level; the geometric one is never the lower', () => {
    expect(geometricAltitude({ geopotentialAltitude: mGeopotential(0) })).toBe(0);
    fc.assert(
      fc.property(altitude, altitude, (a, b) => {
        fc.pre(b - a > 1e-6);
        const low: number = geometricAltitude({ geopotentialAltitude: mGeopotential(a) });
        const high: number = geometricAltitude({ geopotentialAltitude: mGeopotential(b) });
        expect(high).toBeGreaterThan(low);
        expect(low).toBeGreaterThanOrEqual(a - 1e-9);
      }),
    );
  });

  it('differ by less than 0.5 m below 1780 m, where aerodromes are', () => {
    const H = geopotentialAltitude({ geometricAltitude: mGeometric(1780) });
    expect(1780 - H).toBeLessThan(0.5);
    expect(1790 - geopotentialAltitude({ geometricAltitude: mGeometric(1790) })).toBeGreaterThan(0.5);
  });
});

describe('the altitude of a pressure and of a density', () => {
  const inside = evenly(-4999.9, 79999.9);

  it('undo the standard atmosphere in every layer', () => {
    fc.assert(
      fc.property(inside, (H) => {
        const { pressure, density } = at(H);
        fc.pre(pressure >= 0.0088628 && pressure <= 1776.87 && density >= 1.5701e-5 && density <= 1.93046);
        const pa = pressureAltitudeInMetresFromFeet(pressureAltitudeFromPressure({ pressure }));
        expect(pa).toBeCloseTo(H, 6);
        expect(densityAltitudeFromDensity({ density }) * 0.3048).toBeCloseTo(H, 6);
      }),
    );
  });

  it('have no step at the base of a layer', () => {
    for (const { H_m } of layers) {
      const { pressure, density } = at(H_m);
      for (const factor of [1 - 1e-12, 1, 1 + 1e-12]) {
        const pa = pressureAltitudeFromPressure({ pressure: hPa(pressure * factor) });
        const da = densityAltitudeFromDensity({ density: kgPerM3(density * factor) });
        expect(pa * 0.3048).toBeCloseTo(H_m, 5);
        expect(da * 0.3048).toBeCloseTo(H_m, 5);
      }
    }
  });

  it('agree with the shorter formula of the troposphere', () => {
    fc.assert(
      fc.property(evenly(466, 1200), (p) => {
        const shorter = pressureAltitudeFromQfe({ qfe: hPa(p) });
        expect(pressureAltitudeFromPressure({ pressure: hPa(p) })).toBeCloseTo(shorter, 7);
      }),
    );
  });

  it('rise as the air thins', () => {
    const share = evenly(0.01, 0.999);
    fc.assert(
      fc.property(inside, share, (H, less) => {
        const { pressure, density } = at(H);
        fc.pre(pressure * less >= 0.0088628 && pressure <= 1776.87);
        fc.pre(density * less >= 1.5701e-5 && density <= 1.93046);
        const pa: number = pressureAltitudeFromPressure({ pressure: hPa(pressure * less) });
        const da: number = densityAltitudeFromDensity({ density: kgPerM3(density * less) });
        expect(pa).toBeGreaterThan(pressureAltitudeFromPressure({ pressure }));
        expect(da).toBeGreaterThan(densityAltitudeFromDensity({ density }));
      }),
    );
  });

  it('stay within the standard atmosphere at both ends of what they accept', () => {
    const highest = pressureAltitudeFromPressure({ pressure: hPa(0.0088628) });
    const lowest = pressureAltitudeFromPressure({ pressure: hPa(1776.87) });
    expect(highest * 0.3048).toBeLessThan(80000);
    expect(highest * 0.3048).toBeGreaterThan(79999);
    expect(lowest * 0.3048).toBeGreaterThan(-5000);
    expect(lowest * 0.3048).toBeLessThan(-4999.9);
    expect(densityAltitudeFromDensity({ density: kgPerM3(1.5701e-5) }) * 0.3048).toBeLessThan(80000);
    expect(densityAltitudeFromDensity({ density: kgPerM3(1.93046) }) * 0.3048).toBeGreaterThan(-5000);
  });
});
