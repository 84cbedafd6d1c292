import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { magneticField, magneticVariation } from '../../src/magnetism/index.ts';
import { decimalYear, degLatitude, degLongitude, mElevation } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';
import { type CoefficientRow, fieldByHarmonics, publishedCoefficients } from './spherical-harmonics.ts';

const latitude = evenly(-89.9, 89.9);
const longitude = evenly(-180, 360);
const date = evenly(2025, 2029.999);
const elevation = evenly(-1000, 850_000);

describe('a second computation, from the published coefficients by the equations of the technical report', () => {
  const coefficients = publishedCoefficients();

  it('agrees at a thousand places and dates', () => {
    fc.assert(
      fc.property(latitude, longitude, date, elevation, (north, east, year, metres) => {
        const place = { latitude: degLatitude(north), longitude: degLongitude(east), elevation: mElevation(metres) };
        const asked = { ...place, date: decimalYear(year) };
        const position = { latitude: north, longitude: east, height_km: metres / 1000 };
        const second = fieldByHarmonics(coefficients, position, year - 2025);
        const ours = magneticField(asked);
        // The two round the semi-minor axis of the ellipsoid differently, which costs about 1e-6 nT.
        expect(Math.abs(ours.north - second.north)).toBeLessThan(1e-5);
        expect(Math.abs(ours.east - second.east)).toBeLessThan(1e-5);
        expect(Math.abs(ours.down - second.down)).toBeLessThan(1e-5);

        const found = magneticVariation(asked);
        const declination = found.zone === 'blackout' ? found.modelledDeclination : found.variation;
        const apart = (declination - (Math.atan2(second.east, second.north) * 180) / Math.PI + 540) % 360;
        const nT = (angle: number) => (angle * Math.PI * found.horizontalIntensity) / 180;
        expect(Math.abs(nT(apart - 180))).toBeLessThan(2e-5);
      }),
      { numRuns: 1000 },
    );
  });

  it('would show a wrong coefficient', () => {
    const wrong = coefficients.map(([n, m, g, ...rest]): CoefficientRow => {
      return [n, m, n === 12 && m === 7 ? g + 0.1 : g, ...rest];
    });
    const position = { latitude: 45, longitude: 10, height_km: 0 };
    const right = fieldByHarmonics(coefficients, position, 1);
    const off = fieldByHarmonics(wrong, position, 1);
    expect(Math.abs(off.north - right.north)).toBeGreaterThan(1e-3);
  });
});

// wmm2020-test-values-100.csv: the official test values of the model before, as published with it. The library does not
// offer that model; the rows hold the second computation itself to figures that neither computation has produced.
describe('the second computation with the coefficients of the model before', () => {
  const model = JSON.parse(
    readFileSync(new URL('../../node_modules/geomagnetism/data/wmm-2020.json', import.meta.url), 'utf8'),
  );
  const parts = ['main_field_coeff_g', 'main_field_coeff_h', 'secular_var_coeff_g', 'secular_var_coeff_h'];
  const coefficients: CoefficientRow[] = [];
  for (let n = 1; n <= 12; n += 1) {
    for (let m = 0; m <= n; m += 1) {
      const [g, h, gChange, hChange] = parts.map((part) => model[part][(n * (n + 1)) / 2 + m]);
      coefficients.push([n, m, g, h, gChange, hChange]);
    }
  }
  const [header = '', ...lines] = readFileSync(new URL('./wmm2020-test-values-100.csv', import.meta.url), 'utf8')
    .trim()
    .split('\n');
  const names = header.split(',');
  const rows = lines.map((line) => Object.fromEntries(line.split(',').map((word, i) => [names[i], Number(word)])));

  it('has all hundred rows', () => expect(rows).toHaveLength(100));

  it.each(rows)('gives row $row of the official values', (row) => {
    const position = {
      latitude: row['lat_deg'] as number,
      longitude: row['lon_deg'] as number,
      height_km: row['height_km_wgs84'] as number,
    };
    const { north, east, down } = fieldByHarmonics(coefficients, position, (row['decimal_year'] as number) - 2020);
    const horizontal = Math.hypot(north, east);
    const close = (ours: number, name: string, half: number) =>
      expect(Math.abs(ours - (row[name] as number)), name).toBeLessThanOrEqual(half + 1e-9);
    close(north, 'X_nT', 0.05);
    close(east, 'Y_nT', 0.05);
    close(down, 'Z_nT', 0.05);
    close(horizontal, 'H_nT', 0.05);
    close(Math.hypot(horizontal, down), 'F_nT', 0.05);
    close((Math.atan2(down, horizontal) * 180) / Math.PI, 'I_deg', 0.005);
    close((Math.atan2(east, north) * 180) / Math.PI, 'D_deg', 0.005);
  });
});
