import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  densityRatioAt,
  pressureRatio,
  seaLevelPressure_hPa,
  seaLevelSound_kt,
  soundAt_kt,
} from '../../src/airspeed/compressible-flow.ts';
import { densityRatio, speedOfSound, standardPressure } from '../../src/atmosphere/index.ts';
import { degC, ftPA } from '../../src/units/index.ts';

// The conversions work on bare numbers; these are the numbers of the atmosphere, bit for bit.

describe('the laws of compressible flow', () => {
  it('stand on the standard atmosphere at mean sea level', () => {
    expect(seaLevelPressure_hPa).toBe(standardPressure({ pressureAltitude: ftPA(0) }));
    expect(seaLevelSound_kt).toBe(speedOfSound({ temperature: degC(15) }));
  });

  it('have its speed of sound and its density ratio', () => {
    const altitude = fc.double({ min: -5000, max: 36089, noNaN: true }).map(ftPA);
    const anyTemperature = fc.double({ min: -80, max: 60, noNaN: true }).map(degC);
    fc.assert(
      fc.property(altitude, anyTemperature, (pressureAltitude, temperature) => {
        expect(soundAt_kt(temperature)).toBe(speedOfSound({ temperature }));
        expect(densityRatioAt(pressureRatio(pressureAltitude), temperature)).toBe(
          densityRatio({ pressureAltitude, temperature }),
        );
      }),
    );
  });
});
