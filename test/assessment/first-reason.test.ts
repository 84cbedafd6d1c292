import { describe, expect, it } from 'vitest';
import { noReading } from '../../src/assessment/kernel/no-reading.ts';
import { type Changes, codes, criterion, landing, takeoff, totals } from './scenario.ts';

const snow = { 'runway.surface': { kind: 'snow' } };
const table = 'performanceData.takeoff.0';
const percent = (value: number) => ({ value, unit: 'percent' });
const slopeLaw = (upTo: number) => ({
  [`${table}.corrections.adverseSlope`]: {
    change: percent(4),
    per: percent(1),
    upTo: percent(upTo),
    percentOf: 'distance',
  },
});
const distance = (name: string, changes: Changes) => criterion(takeoff(name, changes), 'takeoff-distance');

describe('where a table has no figure', () => {
  it('nothing else is named: what is corrected is not known', () => {
    const hot = distance('takeoff-28', { ...snow, 'weather.temperature.value': 41 });
    expect(new Set(codes(hot.reasons))).toEqual(new Set(['off-table']));
    const blankRoll = distance('takeoff-28', { ...snow, [`${table}.groundRoll.cells.1.0.2`]: null });
    expect(codes(blankRoll.reasons)).toEqual(['blank-cell']);
  });

  it('an axis that the day has no value for is said to be given as nothing', () => {
    const axis = { quantity: 'temperature', unit: 'degC', values: [0, 40] } as const;
    expect(noReading({ reason: 'axis-missing', axis } as never, 'distance').parameters).toMatchObject({ given: 0 });
  });

  it('a take-off has no marks', () => {
    expect(new Set(takeoff('takeoff-28', snow).marks.flatMap(({ reasons }) => codes(reasons)))).toEqual(
      new Set(['mark-not-known']),
    );
  });
});

describe('a slope that nobody has a rule for', () => {
  // The handbook has none, nor a factor for grass.
  const noRule = { factorSet: 'faa-handbook', 'runway.surface': { kind: 'paved', condition: 'dry' } };

  it('has no figure, and the slope is named', () => {
    expect(distance('takeoff-10', noRule).reasons).toMatchObject([
      { code: 'slope-no-factor', parameters: { slope_percent: expect.closeTo(1.8729, 4) } },
    ]);
  });

  it("has that of the manual's own law", () => {
    expect(totals(takeoff('takeoff-10', { ...noRule, ...slopeLaw(3) }))['slope']).toBeDefined();
  });

  it("has none beyond the manual's own law, whatever the set would pro-rate", () => {
    const beyond = distance('takeoff-10', { factorSet: 'uk-light-aeroplane-leaflet', ...slopeLaw(1.5) });
    expect(codes(beyond.reasons)).toEqual(['slope-beyond-manual']);
  });
});

describe('nothing is added', () => {
  it('for a headwind that the manual has no law for', () => {
    const ahead = {
      [`${table}.corrections.headwind`]: undefined,
      'weather.wind': { source: 'METAR', from: { value: 112, unit: 'degTrue' }, speed: { value: 10, unit: 'kt' } },
    };
    const { stairs } = takeoff('takeoff-10', ahead);
    expect(stairs?.steps.find(({ step }) => step === 'manual')?.total.value).toBe(443);
    expect(distance('takeoff-10', ahead).verdict).toBe('within');
  });

  it('for a wind exactly abeam, which has no part along the runway', () => {
    const abeam = takeoff('takeoff-10', {
      'weather.wind': { source: 'METAR', from: { value: 202, unit: 'degTrue' }, speed: { value: 17, unit: 'kt' } },
    });
    const decided = abeam.trace.flatMap((entry) => (entry.kind === 'decision' ? [entry.code] : []));
    expect(decided).not.toContain('headwind-used');
    expect(decided).not.toContain('tailwind-used');
  });

  it('to a landing without gusts, at a speed that is printed between two whole knots', () => {
    const between = {
      'performanceData.landing.0.approachSpeed': {
        axes: [{ quantity: 'mass', unit: 'kg', values: [850, 1050] }],
        unit: 'kias',
        cells: [52, 57],
      },
      'performanceData.landing.0.associatedConditions.mass': { value: 940, unit: 'kg' },
      'weather.wind.gust': undefined,
    };
    // 52 + 5 x 90 / 200 = 54.25 KIAS, flown as 55.
    const calm = landing('landing-10', between);
    expect(calm.speeds[0]).toMatchObject({ speed: { value: 55 } });
    expect(totals(calm)['speed addition']).toBeUndefined();
  });

  it('as a bound where the milder figure of the manual replaces a value of the set', () => {
    const raised = {
      'runway.surface': { kind: 'grass', condition: 'wet', length: 'up to 20 cm', ground: 'firm' },
      [`${table}.corrections.surfaces`]: [
        { surface: 'grass', condition: 'dry', increase: percent(40), percentOf: 'distance' },
      ],
      'runway.length.value': 1000,
      'runway.ends.0.declaredDistances': undefined,
      'runway.ends.1.declaredDistances': undefined,
    };
    // 513.5 m x 1.4 x 1.25.
    expect(distance('takeoff-28', raised)).toMatchObject({ verdict: 'within', value: { value: 899 } });
  });

  it('for a level runway by a table along the slope, for a landing either', () => {
    const slopes = { quantity: 'slope', unit: 'percent', values: [-2, 0, 2] };
    const along = (cells: readonly number[]) => ({ axes: [slopes], unit: 'm', cells });
    const landed = 'performanceData.landing.0';
    const level = landing('landing-10', {
      [`${landed}.distance`]: along([440, 400, 360]),
      [`${landed}.groundRoll`]: along([220, 200, 180]),
      [`${landed}.associatedConditions.pressureAltitude`]: { value: 4000, unit: 'ftPA' },
      [`${landed}.associatedConditions.temperature`]: { value: 40, unit: 'degC' },
      'runway.ends.0.elevation.value': 438,
      'runway.obstacles': [],
      policies: { favourableSlope: 'of the manual' },
    });
    expect(totals(level)['manual']).toBe(400);
    expect(totals(level)['slope']).toBeUndefined();
    const decided = level.trace.flatMap((entry) => (entry.kind === 'decision' ? [entry.code] : []));
    expect(decided).not.toContain('slope-no-credit');
    expect(decided).not.toContain('slope-credit-of-manual');
  });
});

describe('an obstacle is named', () => {
  it('where it stands before the 50 ft point, and beside the line without a wingspan', () => {
    const near = takeoff('takeoff-10', {
      'runway.obstacles.0.height': { value: 1, unit: 'mHeight' },
      'runway.ends.1.elevation.value': 400,
      'runway.surface': { kind: 'grass', condition: 'wet', length: 'up to 20 cm', ground: 'firm' },
      'mass.value': 1050,
    });
    expect(criterion(near, 'obstacle').reasons).toMatchObject([
      { code: 'obstacle-before-screen', parameters: { obstacle: 'pines' } },
    ]);
    const beside = takeoff('takeoff-10', {
      'runway.obstacles.0.lateralOffset': { value: 80, unit: 'm' },
      'performanceData.airframe': undefined,
    });
    expect(codes(beside.dataNotes)).toContain('obstacle-beside');
  });

  it('that a climb which sinks does not clear when going around, downhill either', () => {
    const mast = { name: 'mast', end: '10', beyond: { value: 600, unit: 'm' }, height: { value: 5, unit: 'mHeight' } };
    const sinking = landing('landing-28', {
      'runway.obstacles': [{ ...mast, groundElevation: { value: 387, unit: 'ftElevation' } }],
      'performanceData.climb.1.rateOfClimb': { axes: [], unit: 'ftPerMin', cells: -50 },
    });
    const goAround = sinking.marks.find(({ id }) => id === 'latest-go-around-point');
    expect(codes(goAround?.reasons ?? [])).toEqual(['mark-none-obstacles']);
  });
});
