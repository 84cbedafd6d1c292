import { describe, expect, it } from 'vitest';
import { codes, criterion, takeoff, totals } from './scenario.ts';

const table = 'performanceData.takeoff.0';
const single = (metres: number) => ({ axes: [], unit: 'm', cells: metres });

/** One printed figure, 400 m with 200 m on the ground, for 900 kg, 0 ft and 15 °C; 26 °C and 637 ft today. */
const figure = {
  [`${table}.distance`]: single(400),
  [`${table}.groundRoll`]: single(200),
  [`${table}.associatedConditions.mass`]: { value: 900, unit: 'kg' },
  [`${table}.associatedConditions.pressureAltitude`]: { value: 0, unit: 'ftPA' },
  [`${table}.associatedConditions.temperature`]: { value: 15, unit: 'degC' },
};
const percent = (value: number) => ({ value, unit: 'percent' });
const laws = {
  [`${table}.corrections.mass`]: {
    change: percent(5),
    per: { value: 20, unit: 'kg' },
    upTo: { value: 1000, unit: 'kg' },
  },
  [`${table}.corrections.pressureAltitude`]: {
    change: percent(10),
    per: { value: 1000, unit: 'ftPA' },
    upTo: { value: 4000, unit: 'ftPA' },
  },
  [`${table}.corrections.temperature`]: {
    change: percent(8),
    per: { value: 10, unit: 'degCDifference' },
    upTo: { value: 35, unit: 'degC' },
  },
};

describe("the manual's own laws, as printed", () => {
  it('hold in a straight line and multiply in the order of the trade', () => {
    const found = totals(takeoff('takeoff-28', { ...figure, ...laws }));
    // By hand: 940 kg is two steps of 20 kg, 636.58 ft 0.63658 of a step, 11 °C 1.1 steps.
    expect(found['mass']).toBeCloseTo(400 * 1.1, 1);
    expect(found['elevation']).toBeCloseTo(400 * 1.1 * 1.063658, 1);
    expect(found['temperature']).toBeCloseTo(400 * 1.1 * 1.063658 * 1.088, 1);
  });

  it('win over the factors of the set, and are said', () => {
    const leaflet = { ...figure, ...laws, factorSet: 'uk-light-aeroplane-leaflet' };
    const assessment = takeoff('takeoff-28', leaflet);
    expect(totals(assessment)['mass']).toBeCloseTo(400 * 1.1, 1);
    const without = takeoff('takeoff-28', { ...leaflet, [`${table}.corrections.mass`]: undefined });
    // 4.444 % more mass is 0.4444 of a step of 1.2.
    expect(totals(without)['mass']).toBeCloseTo(400 * (1 + 0.2 * (40 / 90)), 1);
    expect(codes(assessment.trace.flatMap((entry) => (entry.kind === 'decision' ? [entry] : [])))).toContain(
      'law-of-manual',
    );
  });

  it('have no figure beyond their last value', () => {
    const short = {
      ...laws,
      [`${table}.corrections.temperature`]: {
        change: percent(8),
        per: { value: 10, unit: 'degCDifference' },
        upTo: { value: 25, unit: 'degC' },
      },
    };
    expect(codes(criterion(takeoff('takeoff-28', { ...figure, ...short }), 'takeoff-distance').reasons)).toContain(
      'temperature-not-covered',
    );
  });

  it('are read for each step as printed: 10 % for 2 kt of tailwind', () => {
    const law = { change: percent(10), per: { value: 2, unit: 'kt' }, upTo: { value: 10, unit: 'kt' } };
    const found = totals(takeoff('takeoff-28', { [`${table}.corrections.tailwind`]: law }));
    // 3.5345 kt of tailwind used on 443.02 m.
    expect(found['wind']).toBeCloseTo(443.02 * (1 + 0.05 * 3.5345), 1);
  });

  it('of a slope in percent of the ground roll add the same metres to both', () => {
    const law = { change: percent(10), per: percent(1), upTo: percent(3), percentOf: 'ground roll' };
    const onGround = takeoff('takeoff-10', {
      [`${table}.corrections.adverseSlope`]: law,
      'runway.surface': { kind: 'paved', condition: 'dry' },
    });
    const [wind, slope] = [totals(onGround)['wind'], totals(onGround)['slope']] as [number, number];
    // 220.226 m of roll in the wind used, 18.73 % of it.
    expect(slope - wind).toBeCloseTo(220.226 * 0.18729, 1);
  });

  it('of a grass in percent of the ground roll too', () => {
    const grass = [{ surface: 'grass', condition: 'dry', increase: percent(15), percentOf: 'ground roll' }];
    const found = totals(takeoff('takeoff-10', { [`${table}.corrections.surfaces`]: grass }));
    expect((found['surface'] as number) - (found['wind'] as number)).toBeCloseTo(220.226 * 0.15, 1);
  });
});
