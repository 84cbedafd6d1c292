import { describe, expect, it } from 'vitest';
import { epsilon } from '../../src/atmosphere/humid-air-constants.ts';
import { pressureAltitude } from '../../src/atmosphere/index.ts';
import * as constants from '../../src/atmosphere/standard-atmosphere-constants.ts';
import { ftElevation, hectopascalsFromInchesOfMercury, hPa, inHg } from '../../src/units/index.ts';

describe('the constants of the standard atmosphere', () => {
  it('are those of ICAO Doc 7488/3 and ISO 2533, to the last digit', () => {
    expect({ ...constants, layers: undefined }).toStrictEqual({
      P0_hPa: 1013.25,
      T0_K: 288.15,
      rho0_kgPerM3: 1.225,
      Ti_K: 273.15,
      g0_mPerS2: 9.80665,
      R_JPerKgK: 287.05287,
      kappa: 1.4,
      r_m: 6356766,
      betaS: 1.458e-6,
      S_K: 110.4,
      L_KPerFt: 0.0065 * 0.3048,
      pressureExponent: 9.80665 / (287.05287 * 0.0065),
      kt_mPerS: 1852 / 3600,
      layers: undefined,
    });
  });

  it('have the layers of the standard, each beginning where the one below it ends', () => {
    const { layers } = constants;
    expect(layers.map(({ H_m, T_K, beta_KPerM }) => [H_m, T_K, beta_KPerM])).toStrictEqual([
      [0, 288.15, -0.0065],
      [11000, 216.65, 0],
      [20000, 216.65, 0.001],
      [32000, 228.65, 0.0028],
      [47000, 270.65, 0],
      [51000, 270.65, -0.0028],
      [71000, 214.65, -0.002],
    ]);
    for (const [i, next] of layers.entries()) {
      const base = layers[i - 1];
      if (base === undefined) continue;
      expect(base.T_K + base.beta_KPerM * (next.H_m - base.H_m)).toBeCloseTo(next.T_K, 10);
    }
  });

  it('agree among themselves: the printed gas constant is rounded, and the troposphere has its known exponent', () => {
    const { P0_hPa, rho0_kgPerM3, T0_K, R_JPerKgK, pressureExponent } = constants;
    expect((100 * P0_hPa) / (rho0_kgPerM3 * T0_K)).toBeCloseTo(287.0528742, 7);
    expect(Math.abs((100 * P0_hPa) / (rho0_kgPerM3 * T0_K) - R_JPerKgK)).toBeLessThan(5e-6);
    expect(pressureExponent).toBeCloseTo(5.25588, 6);
    expect(1 / pressureExponent).toBeCloseTo(0.1902631, 7);
  });

  it('have the ratio of molar masses of vapour and dry air to five digits', () => {
    expect(epsilon).toBe(0.62198);
    expect(18.01528 / 28.96442).toBeCloseTo(epsilon, 5);
  });
});

describe('29.92 inHg', () => {
  it('is not the standard setting of 1013.25 hPa, but 0.04 hPa less', () => {
    const p = hectopascalsFromInchesOfMercury(inHg(29.92));
    expect(p).not.toBe(1013.25);
    expect(p).toBeCloseTo(1013.2075, 4);
  });

  it('puts the pressure altitude 1.2 ft above the elevation, where 1013.25 hPa gives the elevation itself', () => {
    const elevation = ftElevation(1200);
    const inInches = pressureAltitude({ elevation, qnh: hectopascalsFromInchesOfMercury(inHg(29.92)) });
    expect(inInches - 1200).toBeCloseTo(1.16, 2);
    expect(pressureAltitude({ elevation, qnh: hPa(1013.25) })).toBe(1200);
  });
});
