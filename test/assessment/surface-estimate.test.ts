import { describe, expect, it } from 'vitest';
import { assessTakeoff } from '../../src/assessment/index.ts';
import { atMost, named, undetermined } from '../../src/assessment/kernel/criterion.ts';
import { moreAdverse } from '../../src/assessment/kernel/surface-estimate.ts';
import { takeoffOf } from '../study/aeroplanes.ts';
import { type Changes, codes, takeoff } from './scenario.ts';

const table = 'performanceData.takeoff.0';
const calm = { 'weather.wind': { source: 'METAR', from: 'variable', speed: { value: 0, unit: 'kt' } } };
const single = (value: number) => ({ axes: [], unit: 'm', cells: value });
/** A manual that prints one roll and one distance, for 1 050 kg at 2 000 ft and 30 °C. */
const onlyRoll = (roll_m: number, distance_m: number) => ({
  factorSet: 'uk-light-aeroplane-leaflet',
  [`${table}.groundRoll`]: single(roll_m),
  [`${table}.distance`]: single(distance_m),
  [`${table}.associatedConditions.mass`]: { value: 1050, unit: 'kg' },
  [`${table}.associatedConditions.pressureAltitude`]: { value: 2000, unit: 'ftPA' },
  [`${table}.associatedConditions.temperature`]: { value: 30, unit: 'degC' },
});
const grass = (condition: string, length: string, ground: string) => ({ kind: 'grass', condition, length, ground });

/** The names of the surface in the working; none where nothing is estimated. */
const compared = (changes: Changes) =>
  takeoff('takeoff-28', changes).trace.flatMap((entry) =>
    entry.kind === 'step' && entry.record === 'dynamics.roll-ratio' ? [entry.label] : [],
  );
const estimated = (changes: Changes) => takeoff('takeoff-28', changes).estimates.map(({ code }) => code);

describe('an estimate of what the surface costs', () => {
  it.each([
    ['hard turf', { kind: 'gravel', condition: 'dry' }],
    ['soft ground', grass('wet', 'over 20 cm', 'soft')],
    ['long grass', grass('wet', 'over 20 cm', 'firm')],
    ['wet grass', grass('wet', 'up to 20 cm', 'firm')],
    ['short dry grass', grass('dry', 'up to 20 cm', 'firm')],
  ])('takes the friction of %s', (name, surface) => {
    expect(compared({ 'runway.surface': surface, ...calm })).toEqual([
      `ground roll on ${name} over that of the manual`,
    ]);
  });

  it('belongs to the air in which the roll was read, so that a warmer day with the same roll costs no less', () => {
    const cost = (temperature: number, changes: Changes = {}) =>
      takeoff('takeoff-28', {
        'runway.surface': grass('wet', 'up to 20 cm', 'firm'),
        ...calm,
        'weather.dewPoint': undefined,
        'weather.temperature.value': temperature,
        ...changes,
      }).estimates.find(({ code }) => code === 'estimate-surface')?.parameters;
    const nextWorse = { 'policies.betweenPrintedValues': 'next-worse' };
    expect(cost(23, nextWorse)).toEqual(cost(29, nextWorse));
    expect(cost(23, nextWorse)).not.toEqual(cost(31, nextWorse));
    // Colder than the first column, and colder than the one temperature that there is.
    expect(cost(-20)).toEqual(cost(-5));
    expect(cost(5, onlyRoll(300, 500))).toEqual(cost(28, onlyRoll(300, 500)));
    expect(cost(23)).not.toEqual(cost(29));
  });

  it('belongs to the coldest air of a chart that is read from guide line to guide line, and to the edge below it', () => {
    const cost = (temperature: number, changes: Changes = {}) => {
      const request = takeoffOf('skerry-two', {
        ...calm,
        'runway.surface': grass('wet', 'up to 20 cm', 'firm'),
        'weather.dewPoint': undefined,
        'weather.temperature.value': temperature,
        ...changes,
      });
      const assessed = assessTakeoff(request);
      const estimates = assessed.ok ? assessed.value.estimates : [];
      return estimates.find(({ code }) => code === 'estimate-surface')?.parameters;
    };
    const stepwise = { 'policies.betweenPrintedValues': 'next-worse' };
    const airOf = (temperature: number, changes: Changes = {}) => cost(temperature, changes)?.['high'] as number;
    expect(airOf(3, stepwise)).toBeGreaterThanOrEqual(airOf(-3, stepwise));
    expect(cost(-20)).toEqual(cost(-11));
    expect(cost(3)).toBeDefined();
  });

  it('is not made without a calibrated lift-off speed', () => {
    expect(estimated({ 'performanceData.calibrations': [] })).toEqual([]);
    expect(
      estimated({
        [`${table}.liftOffSpeed`]: {
          axes: [{ quantity: 'mass', unit: 'kg', values: [800, 900] }],
          unit: 'kias',
          cells: [45, 46],
        },
      }),
    ).toEqual([]);
  });

  it('is not made for a roll or a mass that no aeroplane has: 10 m and 100 kg', () => {
    const roll = (m: number) => ({ ...calm, ...onlyRoll(m, 400) });
    expect(compared(roll(9))).toEqual([]);
    expect(compared(roll(10))).toHaveLength(1);
    expect(compared({ 'mass.value': 99 })).toEqual([]);
    expect(compared({ 'mass.value': 100 })).toHaveLength(1);
  });

  it('is the same in every wind: that of the roll in calm air', () => {
    const wind = (from: number, knots: number) =>
      takeoff('takeoff-28', {
        'runway.surface': grass('wet', 'up to 20 cm', 'firm'),
        'weather.wind': {
          source: 'METAR',
          from: { value: from, unit: 'degTrue' },
          speed: { value: knots, unit: 'kt' },
        },
      }).estimates.map(({ text }) => text);
    const inCalm = takeoff('takeoff-28', {
      'runway.surface': grass('wet', 'up to 20 cm', 'firm'),
      ...calm,
    }).estimates.map(({ text }) => text);
    expect(inCalm).not.toEqual([]);
    for (const [from, knots] of [
      [292, 30],
      [112, 5],
      [22, 40],
    ] as const)
      expect(wind(from, knots)).toEqual(inCalm);
  });

  it('says that nothing moves where the friction takes all the thrust', () => {
    // 48 KIAS, 26.72 m/s true, after 800 m: 0.446 m/s², and 0.05 x 9.81 = 0.490 m/s² of friction; soft ground takes
    // 0.1 x 9.81 = 0.981 m/s² at least. After 700 m 0.510 + 0.490 m/s² are a little more.
    const soft = { ...calm, 'runway.surface': grass('dry', 'up to 20 cm', 'soft') };
    const roll = (m: number) => ({ ...soft, ...onlyRoll(m, 1000) });
    expect(estimated(roll(800))[0]).toBe('estimate-surface-stuck');
    expect(compared(roll(800))).toEqual([]);
    expect(estimated(roll(700))[0]).toBe('estimate-surface-open');
  });
});

describe('an estimate that may take a verdict away', () => {
  const required = named(
    'takeoff-distance',
    'take-off distance',
    'take-off distance required',
    'm',
    'distance available',
  );
  const within = atMost(required, 700, 830, 'value');
  const outside = atMost(required, 900, 830, 'value');
  const open = undetermined(required, 'at most', [{ code: 'surface-no-factor', parameters: {} }]);
  const least = {
    code: 'estimate-more-adverse',
    parameters: { bound: 'more than there is, even with the least friction' },
  };
  const greatest = {
    code: 'estimate-more-adverse',
    parameters: { bound: 'more than there is, with the greatest friction' },
  };

  it('takes none where both ends of it are within', () => {
    expect(moreAdverse(within, within, within)).toBe(within);
    expect(moreAdverse(open, within, within)).toBe(open);
    expect(moreAdverse(outside, within, within)).toBe(outside);
  });

  it('is outside, with its figures, where even the least friction is', () => {
    for (const judged of [within, open])
      expect(moreAdverse(judged, outside, outside)).toEqual({ ...outside, reasons: [...outside.reasons, least] });
    expect(moreAdverse(outside, outside, undefined)).toBe(outside);
  });

  it('leaves nothing decided where the aeroplane may not move at all, unless that was outside', () => {
    const stuck = moreAdverse(within, undefined, undefined);
    expect([stuck.verdict, stuck.reasons.at(-1)]).toEqual(['undetermined', least]);
    expect(moreAdverse(open, undefined, undefined)).toMatchObject({ verdict: 'undetermined' });
    expect(moreAdverse(outside, undefined, undefined)).toBe(outside);
  });

  it('withholds a verdict of within that the greatest friction does not keep', () => {
    for (const most of [outside, undefined, open]) {
      const withheld = moreAdverse(within, within, most);
      expect([withheld.verdict, withheld.reasons.at(-1)]).toEqual(['undetermined', greatest]);
    }
    expect(moreAdverse(open, within, outside)).toBe(open);
    expect(moreAdverse(within, open, within)).toBe(within);
  });
});

describe('a take-off under the more adverse of factors and friction', () => {
  const chosen = { policies: { firstPrinciples: 'more adverse' } };

  it('keeps the verdicts on mass and wind, and the figures of the chain', () => {
    const soft = { 'runway.surface': grass('dry', 'up to 20 cm', 'soft'), personalLimits: undefined };
    const [plain, adverse] = [takeoff('takeoff-28', soft), takeoff('takeoff-28', { ...soft, ...chosen })];
    const others = (assessment: typeof plain) =>
      assessment.criteria.filter(({ id }) => !id.startsWith('takeoff-')).map(({ id, verdict }) => [id, verdict]);
    expect(others(adverse)).toEqual(others(plain));
    expect(codes(adverse.estimates)).toEqual(codes(plain.estimates));
  });
});
