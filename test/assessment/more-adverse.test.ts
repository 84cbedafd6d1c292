import { describe, expect, it } from 'vitest';
import { type Changes, codes, criterion, judged, takeoff } from './scenario.ts';

const table = 'performanceData.takeoff.0';
const single = (value: number) => ({ axes: [], unit: 'm', cells: value });
const grass = (length: string, ground: string) => ({ kind: 'grass', condition: 'dry', length, ground });

/** 400 m, of them 200 m of roll, in calm standard air at sea level on a level runway of some length. */
const day = (roll: number, length: number, surface: object): Changes => ({
  [`${table}.distance`]: single(roll + 200),
  [`${table}.groundRoll`]: single(roll),
  [`${table}.associatedConditions.mass`]: { value: 1050, unit: 'kg' },
  [`${table}.associatedConditions.pressureAltitude`]: { value: 0, unit: 'ftPA' },
  [`${table}.associatedConditions.temperature`]: { value: 15, unit: 'degC' },
  'runway.surface': surface,
  'runway.length.value': length,
  'runway.ends.0.elevation.value': 0,
  'runway.ends.1.elevation.value': 0,
  'runway.ends.0.declaredDistances': undefined,
  'runway.ends.1.declaredDistances': undefined,
  'runway.obstacles': [],
  'weather.wind': { source: 'METAR', from: 'variable', speed: { value: 0, unit: 'kt' } },
  'weather.temperature.value': 15,
  'weather.dewPoint': undefined,
  'weather.qnh.value': 1013.25,
});
const chosen = { 'policies.firstPrinciples': 'more adverse' };

describe('the more adverse of factors and friction', () => {
  // 48 KIAS are 50.4 KCAS, 25.93 m/s: 1.6806 m/s² over 200 m. From 0.05 to 0.1 of friction 1.6806 / 1.1903, a roll
  // longer by 41.19 %; from 0.02 to 0.1 by 87.5 %: 1.206 and 1.438 times the distance, 603 and 719 m with 1.25.
  const longGrass = (length: number, changes: Changes = chosen) =>
    takeoff('takeoff-28', { ...day(200, length, grass('over 20 cm', 'firm')), ...changes });

  it('is outside where the least friction is, though no factor is printed', () => {
    expect(judged(longGrass(590), 'takeoff-distance')).toEqual({
      verdict: 'outside',
      value: 603,
      limit: 590,
      margin: -13,
    });
    expect(codes(criterion(longGrass(590), 'takeoff-distance').reasons)).toContain('estimate-more-adverse');
    expect(judged(longGrass(603), 'takeoff-distance').verdict).toBe('undetermined');
    expect(judged(longGrass(590, {}), 'takeoff-distance').verdict).toBe('undetermined');
  });

  it('takes a verdict away only where the greatest friction does not fit', () => {
    const own = {
      [`${table}.corrections.surfaces`]: [
        { surface: 'grass', condition: 'dry', increase: { value: 0, unit: 'percent' }, percentOf: 'distance' },
      ],
    };
    const short = (length: number, changes: Changes) =>
      takeoff('takeoff-28', { ...day(200, length, grass('up to 20 cm', 'firm')), ...own, ...changes });
    // 500 m by the manual's own nothing for grass.
    expect(judged(short(500, {}), 'takeoff-distance')).toMatchObject({ verdict: 'within', value: 500 });
    expect(judged(short(500, chosen), 'takeoff-distance').verdict).not.toBe('within');
    expect(judged(short(1500, chosen), 'takeoff-distance')).toMatchObject({ verdict: 'within', value: 500 });
  });

  it('leaves open what may not move at all', () => {
    const stuck = takeoff('takeoff-28', { ...day(800, 2000, grass('up to 20 cm', 'soft')), ...chosen });
    expect(judged(stuck, 'takeoff-distance').verdict).toBe('undetermined');
    expect(codes(criterion(stuck, 'takeoff-distance').reasons)).toContain('estimate-more-adverse');
  });

  it('takes a roll that ends only after five times the distance for one that does not end', () => {
    // 0.5448 m/s² over 617 m, 0.4903 of the thrust to friction on paved: 0.0545 m/s² are left, ten times the roll and
    // 7.8 times the distance.
    const farther = takeoff('takeoff-28', { ...day(617, 2000, grass('over 20 cm', 'firm')), ...chosen });
    expect(judged(farther, 'takeoff-distance').verdict).toBe('undetermined');
    expect(codes(criterion(farther, 'takeoff-distance').reasons)).toContain('estimate-more-adverse');
    // 0.4921 m/s² over 683 m leave 0.0018: 272 times the roll is no figure.
    const [estimate] = takeoff('takeoff-28', day(683, 2000, grass('over 20 cm', 'firm'))).estimates;
    expect(estimate?.code).toBe('estimate-surface-stuck');
  });

  it('is the factors alone where nothing is estimated', () => {
    for (const surface of [{ kind: 'paved', condition: 'dry' }, { kind: 'snow' }]) {
      const [plain, adverse] = [{}, chosen].map((changes) =>
        takeoff('takeoff-28', { ...day(200, 830, surface), ...changes }),
      );
      expect(adverse?.criteria).toEqual(plain?.criteria);
      expect(adverse?.estimates).toEqual([]);
    }
  });
});
