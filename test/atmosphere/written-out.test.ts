import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  altimeterSettingAsos,
  altimeterSettingAwos,
  altimeterSettingIom19,
  altimeterSettingMadis,
  altimeterSettingNoaa,
  altimeterSettingSmithsonian,
  stationPressureFromQnh,
} from '../../src/atmosphere/index.ts';
import { hasPlainlyLikelyRoot, isPlainlyLikely } from '../../src/atmosphere/likely-qnh.ts';
import { rootOfPressure } from '../../src/atmosphere/pressure-law.ts';
import { mu0_PaS } from '../../src/atmosphere/standard-atmosphere.ts';
import { likelyQnh } from '../../src/atmosphere/standard-atmosphere-bounds.ts';
import { betaS, layers, P0_hPa, S_K, T0_K } from '../../src/atmosphere/standard-atmosphere-constants.ts';
import { pressureIn } from '../../src/atmosphere/standard-atmosphere-layers.ts';
import {
  elevationFromMetres,
  hectopascalsFromInchesOfMercury,
  hPa,
  inchesOfMercuryFromHectopascals,
  mElevation,
} from '../../src/units/index.ts';

// Constants that follow from others, and are written out so that no call computes them again.

describe('what is written out', () => {
  it('is the pressure at the base of each layer, as the layer below it has it at its top', () => {
    expect(layers[0].p_hPa).toBe(P0_hPa);
    for (const [i, { H_m, p_hPa }] of layers.entries()) {
      const below = layers[i - 1];
      if (below !== undefined) expect(p_hPa / pressureIn(below, H_m)).toBeCloseTo(1, 12);
    }
  });

  it('is the viscosity at mean sea level', () => {
    expect(mu0_PaS / ((betaS * T0_K ** 1.5) / (T0_K + S_K))).toBeCloseTo(1, 12);
  });

  it('are settings and roots within those of a likely QNH, and less than 3 hPa from its ends', () => {
    for (const qnh of [likelyQnh.min, likelyQnh.max]) {
      expect(isPlainlyLikely(qnh)).toBe(false);
      expect(hasPlainlyLikelyRoot(rootOfPressure(qnh))).toBe(false);
    }
    for (const qnh of [likelyQnh.min + 3, likelyQnh.max - 3]) {
      expect(isPlainlyLikely(qnh)).toBe(true);
      expect(hasPlainlyLikelyRoot(rootOfPressure(qnh))).toBe(true);
    }
  });

  it('leaves room for every form of the altimeter setting, all within 2 hPa of the QNH', () => {
    const qnh = fc.double({ min: 851, max: 1084, noNaN: true });
    const elevation = fc.double({ min: -600, max: 4500, noNaN: true });
    fc.assert(
      fc.property(qnh, elevation, (qnh_hPa, elevation_m) => {
        const stationElevation = mElevation(elevation_m);
        const inFeet = elevationFromMetres(stationElevation);
        const stationPressure = stationPressureFromQnh({ qnh: hPa(qnh_hPa), stationElevation: inFeet });
        fc.pre(stationPressure >= 470);
        const inInches = inchesOfMercuryFromHectopascals(stationPressure);
        const settings = [
          altimeterSettingSmithsonian({ stationPressure, stationElevation }),
          altimeterSettingNoaa({ stationPressure, stationElevation }),
          altimeterSettingMadis({ stationPressure, stationElevation }),
          ...[
            altimeterSettingIom19({ stationPressure: inInches, stationElevation }),
            altimeterSettingAsos({ stationPressure: inInches, stationElevation: inFeet }),
            altimeterSettingAwos({ stationPressure: inInches, stationElevation: inFeet }),
          ].map(hectopascalsFromInchesOfMercury),
        ];
        for (const setting of settings) expect(Math.abs(setting - qnh_hPa)).toBeLessThan(2);
      }),
    );
  });
});
