import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { type MagneticVariation, magneticModel, magneticVariation } from '../../src/magnetism/index.ts';
import {
  DomainError,
  decimalYear,
  degLatitude,
  degLongitude,
  mElevation,
  type Variation,
} from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const latitude = evenly(-89.999, 89.999);
const longitude = evenly(-180, 360);
const date = evenly(2025, 2029.999);

function at(north: number, east: number, year: number, metres?: number): MagneticVariation {
  const elevation = metres === undefined ? undefined : mElevation(metres);
  return magneticVariation({
    latitude: degLatitude(north),
    longitude: degLongitude(east),
    date: decimalYear(year),
    elevation,
  });
}

/** The declination whatever the zone. */
function declination(result: MagneticVariation): number {
  return result.zone === 'blackout' ? result.modelledDeclination : result.variation;
}

/** The north and east component of the field, from the result alone. */
function horizontal(result: MagneticVariation): [number, number] {
  const angle_rad = (declination(result) * Math.PI) / 180;
  return [result.horizontalIntensity * Math.cos(angle_rad), result.horizontalIntensity * Math.sin(angle_rad)];
}

afterEach(() => {
  vi.restoreAllMocks();
  vi.useRealTimers();
});

describe('magneticVariation', () => {
  it('lets a variation be read only after the zone has been asked', () => {
    const result = at(51.5, 0, 2026);
    // @ts-expect-error there is no variation in the blackout zone
    const unasked: Variation | undefined = result.variation;
    expect(unasked).toBeDefined();
    expect(at(87, -154, 2029)).not.toHaveProperty('variation');
    expect(at(80, -96, 2025)).not.toHaveProperty('modelledDeclination');
  });

  it('answers from the first instant of the validity to the last', () => {
    expect(magneticModel).toMatchObject({ name: 'WMM2025', epoch: 2025, validFrom: 2025, validTo: 2030 });
    expect(at(45, 10, 2025).model).toBe(magneticModel);
    expect(at(45, 10, 2026.25).date).toBe(2026.25);
    for (const year of [2029.87, 2029.9, 2030 - 2 ** -42])
      expect(Number.isFinite(declination(at(45, 10, year)))).toBe(true);
    for (const year of [2025 - 2 ** -41, 2030, 2026 - 3]) expect(() => at(45, 10, year)).toThrow(/^date: /);
  });

  it('is finite and canonical everywhere, and has the zone and the uncertainty of its intensity', () => {
    fc.assert(
      fc.property(latitude, longitude, date, (north, east, year) => {
        const result = at(north, east, year);
        const { horizontalIntensity, uncertainty, zone, annualChange } = result;
        expect(declination(result)).toBeGreaterThan(-180);
        expect(declination(result)).toBeLessThanOrEqual(180);
        expect(Number.isFinite(annualChange)).toBe(true);
        expect(zone).toBe(horizontalIntensity < 2000 ? 'blackout' : horizontalIntensity < 6000 ? 'caution' : 'normal');
        expect(uncertainty).toBeCloseTo(Math.hypot(0.26, 5417 / horizontalIntensity), 12);
      }),
    );
  });

  it('turns the field steadily: north and east components are linear in time', () => {
    fc.assert(
      fc.property(latitude, longitude, date, (north, east, year) => {
        const [firstNorth, firstEast] = horizontal(at(north, east, 2025));
        const [lastNorth, lastEast] = horizontal(at(north, east, 2029));
        const share = (year - 2025) / 4;
        const [northThen, eastThen] = horizontal(at(north, east, year));
        expect(northThen).toBeCloseTo(firstNorth + share * (lastNorth - firstNorth), 6);
        expect(eastThen).toBeCloseTo(firstEast + share * (lastEast - firstEast), 6);
      }),
    );
  });

  it('changes in a short time as the annual change says', () => {
    const hour = 1 / 8766;
    for (const [north, east] of [
      [51.5, 0],
      [-34, 18.5],
      [80, -96],
      [87, -154],
    ] as const) {
      const before = at(north, east, 2027 - hour);
      const after = at(north, east, 2027 + hour);
      expect((declination(after) - declination(before)) / (2 * hour)).toBeCloseTo(
        at(north, east, 2027).annualChange,
        5,
      );
    }
  });

  it('is the same at 180 east and 180 west, and at any longitude counted either way', () => {
    expect(at(10, 180, 2026.5)).toEqual(at(10, -180, 2026.5));
    expect(at(-80, 240, 2025)).toEqual(at(-80, -120, 2025));
    expect(at(30, 360, 2025)).toEqual(at(30, 0, 2025));
  });

  it('is for sea level where no elevation is given', () => {
    expect(at(40, -105, 2026)).toEqual(at(40, -105, 2026, 0));
    expect(declination(at(40, -105, 2026, 1500))).not.toBe(declination(at(40, -105, 2026)));
  });

  it('answers beside the poles, but not at them', () => {
    for (const north of [90 - 2 ** -46, -90 + 2 ** -46])
      expect(Number.isFinite(declination(at(north, 0, 2026)))).toBe(true);
    for (const north of [90, -90]) expect(() => at(north, 0, 2026)).toThrow(/^latitude: .*no true north/);
    // An independent evaluation at the poles themselves, where the declination follows the longitude given.
    expect(declination(at(90 - 2 ** -46, 0, 2026))).toBeCloseTo(16.10888, 5);
    expect(declination(at(-90 + 2 ** -46, 0, 2026))).toBeCloseTo(-31.67843, 5);
    expect(at(90 - 2 ** -46, 0, 2026).zone).toBe('blackout');
    expect(at(-90 + 2 ** -46, 0, 2026).zone).toBe('normal');
  });

  it('gives one standard deviation of 0.325495 degrees at 37.03 N 7.91 W', () => {
    expect(at(37.03, -7.91, 2029.0383561643835, 100).uncertainty).toBeCloseTo(0.325495, 6);
  });

  it('asks no clock and writes nothing to the console', () => {
    const spies = (['log', 'info', 'warn', 'error', 'debug'] as const).map((method) => vi.spyOn(console, method));
    const before = at(64.1, -21.9, 2029.95);
    vi.useFakeTimers();
    vi.setSystemTime(new Date('2041-03-05T00:00:00Z'));
    expect(at(64.1, -21.9, 2029.95)).toEqual(before);
    for (const spy of spies) expect(spy).not.toHaveBeenCalled();
  });

  const good = { latitude: 45, longitude: 10, date: 2026, elevation: 100 };
  it.each([
    ['latitude', { ...good, latitude: 91 }],
    ['latitude', { ...good, latitude: -90.5 }],
    ['latitude', { ...good, latitude: Number.NaN }],
    ['longitude', { ...good, longitude: -180.01 }],
    ['longitude', { ...good, longitude: 360.01 }],
    ['longitude', { ...good, longitude: '10' }],
    ['date', { ...good, date: undefined }],
    ['date', { ...good, date: new Date(Number.NaN) }],
    ['date', { ...good, date: Number.NaN }],
    ['date', { ...good, date: 1_767_225_600_000 }],
    ['elevation', { ...good, elevation: -1001 }],
    ['elevation', { ...good, elevation: 850_001 }],
    ['elevation', { ...good, elevation: Number.NaN }],
    ['elevation', { ...good, elevation: null }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => magneticVariation(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
