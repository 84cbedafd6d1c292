import { describe, expect, it } from 'vitest';
import { bibliography } from '../../src/sources/index.ts';
import { knotsFromMilesPerHour, mph } from '../../src/units/index.ts';
import { allowableCrosswinds } from '../../src/wind/index.ts';

const crosswind = (id: string) => allowableCrosswinds.find((row) => row.id === id)?.crosswind;

describe('allowableCrosswinds', () => {
  it('have ids of their own, a source of the bibliography and a place in it', () => {
    const ids = allowableCrosswinds.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const row of allowableCrosswinds) {
      expect(Object.keys(bibliography)).toContain(row.source);
      expect(row.locator.trim(), row.id).not.toBe('');
      expect(row.condition.trim(), row.id).not.toBe('');
      expect(row.leastUsability, row.id).toBe(0.95);
    }
  });

  it('mark every figure as not seen', () => {
    for (const { id, access } of allowableCrosswinds) expect(['recalled', 'second-hand'], id).toContain(access);
  });

  it('allow less on shorter and smaller runways', () => {
    expect(['icao-long', 'icao-medium', 'icao-short'].map(crosswind)).toEqual([20, 13, 10]);
    expect(['faa-a4-e6', 'faa-a3-d3', 'faa-a2-b2', 'faa-a1-b1'].map(crosswind)).toEqual([20, 16, 13, 10.5]);
  });

  it('agree with the 12 mph and 15 mph that 14 CFR 151.79 prints', () => {
    expect(crosswind('faa-a1-b1')).toBeCloseTo(knotsFromMilesPerHour(mph(12)), 0);
    expect(crosswind('faa-a2-b2')).toBeCloseTo(knotsFromMilesPerHour(mph(15)), 0);
  });
});
