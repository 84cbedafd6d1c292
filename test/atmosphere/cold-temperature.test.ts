import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  coldTemperatureCorrection,
  coldTemperatureCorrectionHydrostatic,
  pressureAltitudeFromPressure,
  tabulatedColdTemperatureCorrection,
} from '../../src/atmosphere/index.ts';
import { checkValues } from '../../src/register/index.ts';
import { DomainError, degC, ftElevation, ftHeight, hPa } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const height = evenly(1, 5000);
const temperature = evenly(-60, -5);
const elevation = evenly(-2000, 10000);
const inputs = (h: number, t: number, e: number) => ({
  height: ftHeight(h),
  aerodromeTemperature: degC(t),
  aerodromeElevation: ftElevation(e),
});

describe('cold temperature correction', () => {
  it('has all 98 entries of the table among its check values', () => {
    const table = checkValues.filter(
      ({ record, origin }) =>
        record === 'atmosphere.tabulated-cold-temperature-correction' && origin === 'printed-table',
    );
    const places = new Set(table.map(({ inputs: place }) => JSON.stringify(place)));
    expect(places.size).toBe(98);
  });

  it('grows with the height and with the cold', () => {
    fc.assert(
      fc.property(height, temperature, elevation, (h, t, e) => {
        for (const correction of [coldTemperatureCorrection, coldTemperatureCorrectionHydrostatic]) {
          const here: number = correction(inputs(h, t, e));
          expect(here).toBeGreaterThan(0);
          if (h <= 4999) expect(correction(inputs(h + 1, t, e))).toBeGreaterThan(here);
          if (t >= -59) expect(correction(inputs(h, t - 1, e))).toBeGreaterThan(here);
        }
      }),
    );
  });

  it('in the simple form is within 5 % of the hydrostatic one', () => {
    fc.assert(
      fc.property(height, temperature, elevation, (h, t, e) => {
        const simple: number = coldTemperatureCorrection(inputs(h, t, e));
        const exact: number = coldTemperatureCorrectionHydrostatic(inputs(h, t, e));
        expect(Math.abs(simple / exact - 1)).toBeLessThan(0.05);
      }),
    );
  });

  it('is none at the ground, and all but none in standard air', () => {
    expect(coldTemperatureCorrection(inputs(0, -30, 1000))).toBe(0);
    expect(coldTemperatureCorrectionHydrostatic(inputs(0, -30, 1000))).toBe(0);
    expect(coldTemperatureCorrection(inputs(5000, 15, 0))).toBe(0);
    expect(coldTemperatureCorrectionHydrostatic(inputs(5000, 15, 0))).toBeCloseTo(0, 9);
  });

  it('hydrostatic: a column of that air, summed in thin slices, ends at the indicated height', () => {
    for (const [h, t] of [
      [1000, -30],
      [5000, -50],
      [3000, 0],
    ] as const) {
      // From 1013.25 hPa at the ground upwards through air that is colder than standard by the same at every level.
      let p_hPa = 1013.25;
      const slices = 20000;
      for (let i = 0; i < slices; i += 1) {
        const atPressureAltitude_ft = pressureAltitudeFromPressure({ pressure: hPa(p_hPa) });
        const T_K = 288.15 - 0.0019812 * atPressureAltitude_ft + (t - 15);
        p_hPa *= Math.exp((-9.80665 * 0.3048 * h) / slices / (287.05287 * T_K));
      }
      const indicated_ft: number = pressureAltitudeFromPressure({ pressure: hPa(p_hPa) });
      expect(coldTemperatureCorrectionHydrostatic(inputs(h, t, 0))).toBeCloseTo(indicated_ft - h, 1);
    }
  });

  it('as tabulated is the simple form at zero elevation, rounded up to ten feet', () => {
    const inTable = evenly(200, 5000);
    fc.assert(
      fc.property(inTable, evenly(-50, 10), (h, t) => {
        const tabulated = tabulatedColdTemperatureCorrection({ height: ftHeight(h), aerodromeTemperature: degC(t) });
        const excess = tabulated - coldTemperatureCorrection(inputs(h, t, 0));
        expect(tabulated % 10).toBe(0);
        expect(excess).toBeGreaterThan(-1e-7);
        expect(excess).toBeLessThan(10);
      }),
    );
  });

  it('is refused in air warmer than standard, at every elevation', () => {
    for (const correction of [coldTemperatureCorrection, coldTemperatureCorrectionHydrostatic]) {
      for (const [t, e] of [
        [15.1, 0],
        [5.2, 5000],
        [19.1, -2000],
      ] as const) {
        const call = () => correction(inputs(1000, t, e));
        expect(call).toThrow(DomainError);
        expect(call).toThrow(/^aerodromeTemperature: .* inconsistent with -60 to .* \(not warmer than standard\)/);
      }
      expect(correction(inputs(1000, 18.9, -2000))).toBeGreaterThan(0);
    }
  });
});
