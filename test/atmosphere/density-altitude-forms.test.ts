import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  densityAltitude,
  densityAltitudeNearStandard,
  densityAltitudeNws,
  isaDeviation,
  standardPressure,
  standardTemperature,
} from '../../src/atmosphere/index.ts';
import {
  degC,
  degCDifference,
  ftPA,
  inchesOfMercuryFromHectopascals,
  kelvinFromCelsius,
  rankineFromKelvin,
} from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const altitude = evenly(-5000, 20000).map(ftPA);
const deviation = evenly(-40, 40);

describe('other forms of the density altitude', () => {
  it('near standard: is the pressure altitude in standard air, and the exact one has the same slope there', () => {
    fc.assert(
      fc.property(altitude, (h) => {
        const standard: number = standardTemperature({ pressureAltitude: h });
        expect(densityAltitudeNearStandard({ pressureAltitude: h, isaDeviation: degCDifference(0) })).toBe(h);
        const step = 0.001;
        const warmer: number = densityAltitude({ pressureAltitude: h, temperature: degC(standard + step) });
        const first: number = densityAltitudeNearStandard({ pressureAltitude: h, isaDeviation: degCDifference(step) });
        expect((warmer - h) / step).toBeCloseTo((first - h) / step, 2);
        expect((first - h) / step).toBeCloseTo(118.6, 1);
      }),
    );
  });

  it('near standard: is never below the exact one, warm or cold', () => {
    fc.assert(
      fc.property(altitude, deviation, (h, d) => {
        const temperature = degC(standardTemperature({ pressureAltitude: h }) + d);
        fc.pre(temperature >= -50 && temperature <= 60);
        const x = { pressureAltitude: h, isaDeviation: isaDeviation({ pressureAltitude: h, temperature }) };
        const exact: number = densityAltitude({ pressureAltitude: h, temperature });
        expect(densityAltitudeNearStandard(x)).toBeGreaterThanOrEqual(exact - 1e-6);
      }),
    );
  });

  it('of the National Weather Service reads 10 to 22 ft high in standard air to 10 000 ft', () => {
    fc.assert(
      fc.property(evenly(-2000, 10000).map(ftPA), (h) => {
        const stationPressure = inchesOfMercuryFromHectopascals(standardPressure({ pressureAltitude: h }));
        const t = standardTemperature({ pressureAltitude: h });
        const virtualTemperature = rankineFromKelvin(kelvinFromCelsius(t));
        const excess = densityAltitudeNws({ stationPressure, virtualTemperature }) - h;
        expect(excess).toBeGreaterThan(10);
        expect(excess).toBeLessThan(22);
      }),
    );
  });
});
