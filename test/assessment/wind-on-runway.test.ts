import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { landing, takeoff } from './scenario.ts';

const knots = (value: number) => ({ value, unit: 'kt' });
const wind = (changes: Record<string, unknown>) => takeoff('takeoff-28', changes).windOnRunway;
const range = (from: number, to: number) => ({
  'weather.wind.range': { from: { value: from, unit: 'degTrue' }, to: { value: to, unit: 'degTrue' } },
});

describe('the reported wind on a runway', () => {
  it('spreads from the mean to the gust: 190° at 7 gusting 17 kt on 292°', () => {
    const { across, along } = takeoff('takeoff-28').windOnRunway;
    expect(across.least.value).toBeCloseTo(7 * Math.sin((78 * Math.PI) / 180), 10);
    expect(across.greatest.value).toBeCloseTo(17 * Math.sin((78 * Math.PI) / 180), 10);
    expect(across.from).toBe('left');
    expect(along.least.value).toBeCloseTo(-17 * Math.cos((78 * Math.PI) / 180), 10);
    expect(along.greatest.value).toBeCloseTo(-7 * Math.cos((78 * Math.PI) / 180), 10);
    expect(along.used).toEqual(along.inTables);
    expect(along.used.value).toBeCloseTo(-3.534, 3);
  });

  it('comes from the other side at the other end', () => {
    expect(takeoff('takeoff-10').windOnRunway.across.from).toBe('right');
    expect(landing('landing-10').windOnRunway).toEqual(takeoff('takeoff-10').windOnRunway);
  });

  it('begins at nothing where the report allows a wind straight along, from either side of it', () => {
    const { across, along } = wind({ 'weather.wind.from.value': 280, ...range(270, 310) });
    expect(across.least).toEqual(knots(0));
    expect(along.greatest).toEqual(knots(17));
  });

  it('takes the mildest direction of a range beside the runway: 160° to 240°, and 300° to 350°, on 292°', () => {
    const sine = (degrees: number) => Math.sin((degrees * Math.PI) / 180);
    const cosine = (degrees: number) => Math.cos((degrees * Math.PI) / 180);
    const south = wind(range(160, 240));
    // 160° is 48° from the other end of the runway, 240° is 52° from this one.
    expect(south.across.least.value).toBeCloseTo(7 * sine(48), 10);
    expect(south.along.greatest.value).toBeCloseTo(17 * cosine(52), 10);
    const north = wind({ 'weather.wind.from.value': 320, ...range(300, 350) });
    expect(north.across.least.value).toBeCloseTo(7 * sine(8), 10);
    expect(north.along.greatest.value).toBeCloseTo(17 * cosine(8), 10);
  });

  it('counts a wind without direction from both sides, and as a headwind as well as a tailwind', () => {
    const { across, along } = wind({ 'weather.wind.from': 'variable' });
    expect(across).toMatchObject({ least: knots(0), greatest: knots(17), from: 'either side' });
    expect(along).toMatchObject({ least: knots(-17), greatest: knots(17) });
  });

  it('is nothing in calm', () => {
    const calm = { 'weather.wind.speed.value': 0, 'weather.wind.gust': undefined };
    const { across, along } = wind(calm);
    expect(across).toMatchObject({ least: knots(0), greatest: knots(0), from: 'neither side' });
    expect(along).toMatchObject({ least: knots(0), greatest: knots(0), used: knots(0) });
  });

  it('has every limit with its status, and says which one only informs', () => {
    const { across, along } = wind({});
    expect(across.limits).toEqual([
      { speed: knots(19), status: 'demonstrated', binds: true },
      { speed: knots(18), status: 'personal', binds: true },
    ]);
    expect(along.limits.map(({ status }) => status)).toEqual(['limitation', 'personal']);
    expect(along.limits.map(({ binds }) => binds)).toEqual([true, true]);
    const [demonstrated, personal] = wind({ 'policies.demonstratedCrosswind': 'information' }).across.limits;
    expect(demonstrated).toEqual({ speed: knots(19), status: 'demonstrated', binds: false });
    expect(personal).toEqual({ speed: knots(18), status: 'personal', binds: true });
  });

  it('holds the least below the greatest, and both within the gust', () => {
    const degrees = fc.integer({ min: 1, max: 360 });
    const turns = fc.integer({ min: 0, max: 90 });
    const speeds = fc.integer({ min: 0, max: 20 });
    fc.assert(
      fc.property(degrees, turns, turns, speeds, speeds, (from, left, right, speed, more) => {
        const turned = (by: number) => ((from + by + 359) % 360) + 1;
        const gust = speed + more;
        const { across, along } = wind({
          'weather.wind.from.value': from,
          'weather.wind.speed.value': speed,
          'weather.wind.gust': knots(gust),
          ...range(turned(-left), turned(right)),
        });
        expect(across.least.value).toBeGreaterThanOrEqual(0);
        expect(across.least.value).toBeLessThanOrEqual(across.greatest.value + 1e-9);
        expect(across.greatest.value).toBeLessThanOrEqual(gust + 1e-9);
        expect(along.least.value).toBeLessThanOrEqual(along.greatest.value + 1e-9);
        expect(Math.max(-along.least.value, along.greatest.value)).toBeLessThanOrEqual(gust + 1e-9);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the climb-out in figures', () => {
  it('has the gradient over the ground, and what each obstacle demands', () => {
    const { climbOut } = takeoff('takeoff-10');
    expect(climbOut?.achieved?.value).toBeCloseTo(10.85, 2);
    expect(climbOut?.obstacles).toHaveLength(1);
    expect(climbOut?.obstacles[0]).toMatchObject({ name: 'pines', required: { unit: 'percent' } });
    expect(climbOut?.obstacles[0]?.required?.value).toBeCloseTo(22.49, 2);
  });

  it('is absent where nobody has looked, and empty where there is nothing', () => {
    expect(takeoff('takeoff-10', { 'runway.obstacles': undefined })).not.toHaveProperty('climbOut');
    expect(takeoff('takeoff-28').climbOut?.obstacles).toEqual([]);
    expect(landing('landing-10')).not.toHaveProperty('climbOut');
  });

  it('keeps the order of the request where an obstacle before the 50 ft point has the same name', () => {
    const pines = { name: 'pines', end: '28', groundElevation: { value: 438, unit: 'ftElevation' } };
    const at = (beyond: number, height: number) => ({
      ...pines,
      beyond: { value: beyond, unit: 'm' },
      height: { value: height, unit: 'mHeight' },
    });
    const changes = {
      'runway.obstacles': [at(0, 3), at(900, 28)],
      'runway.length.value': 600,
      'runway.ends.0.elevation.value': 425,
      'runway.ends.0.declaredDistances': {},
      'runway.ends.1.declaredDistances': {},
    };
    const { climbOut } = takeoff('takeoff-10', changes);
    expect(climbOut?.obstacles.map(({ required }) => required !== undefined)).toEqual([false, true]);
  });
});

describe('the slope and the factor set of a result', () => {
  it('are those of the direction in use', () => {
    expect(takeoff('takeoff-10').slope.value).toBeCloseTo(1.873, 3);
    expect(takeoff('takeoff-28').slope.value).toBeCloseTo(-1.873, 3);
    expect(takeoff('takeoff-28').factorSet.title.length).toBeGreaterThan(5);
  });
});
