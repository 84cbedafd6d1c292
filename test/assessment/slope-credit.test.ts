import { describe, expect, it } from 'vitest';
import { readPerformanceData } from '../../src/aircraft/index.ts';
import { codes, takeoff, takeoffRequest, totals } from './scenario.ts';

const law = (percentOf: string) => ({
  'performanceData.takeoff.0.corrections.favourableSlope': {
    change: { value: -4, unit: 'percent' },
    per: { value: 1, unit: 'percent' },
    upTo: { value: 1, unit: 'percent' },
    percentOf,
  },
});
const chosen = { policies: { favourableSlope: 'of the manual' } };
const decisions = (assessment: ReturnType<typeof takeoff>) =>
  codes(assessment.trace.flatMap((entry) => (entry.kind === 'decision' ? [entry] : [])));
const onGrass = totals(takeoff('takeoff-28'))['surface'] as number;

describe("the manual's own credit for a favourable slope", () => {
  it('is not taken unless the request chooses it', () => {
    const plain = takeoff('takeoff-28', law('distance'));
    expect(totals(plain)['slope']).toBeUndefined();
    expect(decisions(plain)).toContain('slope-no-credit');
    expect(totals(takeoff('takeoff-28', chosen))['slope']).toBeUndefined();
  });

  it('is a step of its own where chosen, for no more slope than the manual prints', () => {
    // The runway falls by 1.87 %; the law is printed to 1 %: 4 % off.
    const credited = takeoff('takeoff-28', { ...law('distance'), ...chosen });
    expect(totals(credited)['slope']).toBeCloseTo(onGrass * 0.96, 0);
    expect(decisions(credited)).toContain('slope-credit-of-manual');
  });

  it('takes metres of the ground roll off, where it is printed so', () => {
    // 359.8 m of 616.2 m on the ground: 4 % of them is 14.4 m.
    const credited = takeoff('takeoff-28', { ...law('ground roll'), ...chosen });
    expect(totals(credited)['slope']).toBeCloseTo(onGrass - 0.04 * 359.8, 0);
  });

  it('is none against the slope', () => {
    const uphill = takeoff('takeoff-10', { ...law('distance'), ...chosen });
    expect(totals(uphill)['slope']).toEqual(totals(takeoff('takeoff-10'))['slope']);
  });

  it('is refused where it would leave less than half', () => {
    const data = takeoffRequest('takeoff-28', {
      'performanceData.takeoff.0.corrections.favourableSlope': {
        change: { value: -10, unit: 'percent' },
        per: { value: 1, unit: 'percent' },
        upTo: { value: 6, unit: 'percent' },
      },
    }).performanceData;
    const read = readPerformanceData(data);
    expect(read.ok ? [] : read.faults.map(({ path }) => path)).toEqual(['takeoff[0].corrections.favourableSlope']);
  });
});

describe('a wet surface that costs less than the dry one', () => {
  it('is a finding that points at it', () => {
    const surface = (condition: string, value: number) => ({
      surface: 'grass',
      condition,
      increase: { value, unit: 'percent' },
      percentOf: 'distance',
    });
    const data = (wet: number) =>
      readPerformanceData(
        takeoffRequest('takeoff-28', {
          'performanceData.takeoff.0.corrections.surfaces': [surface('dry', 15), surface('wet', wet)],
        }).performanceData,
      );
    const found = data(10);
    expect(found.ok && found.findings).toEqual([
      {
        code: 'surfaces',
        path: 'takeoff[0].corrections.surfaces[1]',
        message: 'wet grass costs 10 %, less than dry, 15 %',
      },
    ]);
    const plain = data(15);
    expect(plain.ok && plain.findings).toEqual([]);
  });
});
