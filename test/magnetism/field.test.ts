import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { magneticField, magneticModel, magneticVariation } from '../../src/magnetism/index.ts';
import { DomainError, decimalYear, degLatitude, degLongitude } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const latitude = evenly(-89.999, 89.999);
const longitude = evenly(-180, 360);
const date = evenly(2025, 2029.999);

function at(north: number, east: number, year: number) {
  return magneticField({ latitude: degLatitude(north), longitude: degLongitude(east), date: decimalYear(year) });
}

describe('magneticField', () => {
  it('has intensities and an inclination that follow from its components, and nothing that is not finite', () => {
    fc.assert(
      fc.property(latitude, longitude, date, (north, east, year) => {
        const field = at(north, east, year);
        const { model, ...figures } = field;
        expect(model).toBe(magneticModel);
        for (const [name, figure] of Object.entries(figures)) expect(figure, name).toSatisfy(Number.isFinite);
        expect(field.horizontalIntensity).toBeCloseTo(Math.hypot(field.north, field.east), 9);
        expect(field.totalIntensity).toBeCloseTo(Math.hypot(field.north, field.east, field.down), 9);
        const dip_rad = (field.inclination * Math.PI) / 180;
        expect(field.totalIntensity * Math.sin(dip_rad)).toBeCloseTo(field.down, 6);
        expect(Math.abs(field.inclination)).toBeLessThanOrEqual(90);
      }),
    );
  });

  it('is the field behind the variation', () => {
    fc.assert(
      fc.property(latitude, longitude, date, (north, east, year) => {
        const place = { latitude: degLatitude(north), longitude: degLongitude(east), date: decimalYear(year) };
        const field = magneticField(place);
        const variation = magneticVariation(place);
        const declination = variation.zone === 'blackout' ? variation.modelledDeclination : variation.variation;
        const angle_rad = (declination * Math.PI) / 180;
        expect(field.horizontalIntensity).toBe(variation.horizontalIntensity);
        expect(field.horizontalIntensity * Math.cos(angle_rad)).toBeCloseTo(field.north, 6);
        expect(field.horizontalIntensity * Math.sin(angle_rad)).toBeCloseTo(field.east, 6);
      }),
    );
  });

  it('changes in a short time as its changes say', () => {
    const parts = ['north', 'east', 'down', 'horizontalIntensity', 'totalIntensity', 'inclination'] as const;
    fc.assert(
      fc.property(latitude, longitude, evenly(2025.1, 2029.8), (north, east, year) => {
        const step = 1e-3;
        const [before, now, after] = [
          at(north, east, year - step),
          at(north, east, year),
          at(north, east, year + step),
        ];
        for (const part of parts) {
          const slope = (after[part] - before[part]) / (2 * step);
          expect(Math.abs(slope - now[`${part}Change`]), part).toBeLessThan(1e-4 + 1e-6 * Math.abs(slope));
        }
      }),
    );
  });

  it('points down in the north and up in the south', () => {
    expect(at(60, 10, 2026).inclination).toBeGreaterThan(60);
    expect(at(-60, 10, 2026).inclination).toBeLessThan(-50);
  });

  it('holds from the first instant of the validity to the last', () => {
    expect(at(45, 10, 2025).date).toBe(2025);
    expect(at(45, 10, 2030 - 2 ** -42).date).toBeLessThan(2030);
  });

  it('carries the standard deviations of the model', () => {
    const { uncertainty } = at(45, 10, 2026).model;
    expect(uncertainty).toEqual({
      north: 137,
      east: 89,
      down: 141,
      horizontalIntensity: 133,
      totalIntensity: 138,
      inclination: 0.2,
    });
  });

  const good = { latitude: 45, longitude: 10, date: 2026, elevation: 100 };
  it.each([
    ['latitude', { ...good, latitude: 90 }],
    ['latitude', { ...good, latitude: -90 }],
    ['longitude', { ...good, longitude: -180.01 }],
    ['longitude', { ...good, longitude: 360.01 }],
    ['date', { ...good, date: 2024.999 }],
    ['date', { ...good, date: 2030 }],
    ['date', { ...good, date: undefined }],
    ['elevation', { ...good, elevation: -1001 }],
    ['elevation', { ...good, elevation: 850_001 }],
    ['elevation', { ...good, elevation: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => magneticField(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
