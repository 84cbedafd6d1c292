import geomagnetism from 'geomagnetism';
import { describe, expect, it } from 'vitest';
import { publishedCoefficients } from './spherical-harmonics.ts';

const rows = publishedCoefficients();

interface Coefficients {
  readonly epoch: number;
  readonly main_field_coeff_g: readonly number[];
  readonly main_field_coeff_h: readonly number[];
  readonly secular_var_coeff_g: readonly number[];
  readonly secular_var_coeff_h: readonly number[];
}

describe('the magnetic model installed', () => {
  // The instant of the epoch, at which the timed coefficients are those of the file.
  const model = geomagnetism.model(new Date(Date.UTC(2025, 0, 1))) as unknown as Coefficients;

  it('is that of the epoch 2025, to degree and order 12', () => {
    expect(model.epoch).toBe(2025);
    expect(rows).toHaveLength(90);
    expect(rows.at(-1)?.slice(0, 2)).toEqual([12, 12]);
  });

  it.each(rows)('has the published coefficients of degree %i, order %i', (n, m, g, h, gChange, hChange) => {
    const i = (n * (n + 1)) / 2 + m;
    expect(model.main_field_coeff_g[i]).toBe(g);
    expect(model.main_field_coeff_h[i]).toBe(h);
    expect(model.secular_var_coeff_g[i]).toBe(gChange);
    expect(model.secular_var_coeff_h[i]).toBe(hChange);
  });
});
