import { describe, expect, it } from 'vitest';
import { takeoffSituationOf } from '../../src/assessment/assess-takeoff.ts';
import type { Air, Wind } from '../../src/assessment/kernel/air-and-wind.ts';
import type { Chain } from '../../src/assessment/kernel/chain.ts';
import { atLeast, atMost, type Judged, named, undetermined } from '../../src/assessment/kernel/criterion.ts';
import type { TraceEntry } from '../../src/assessment/kernel/step.ts';
import { conditionsOf } from '../../src/assessment/request/conditions.ts';
import { situationOf } from '../../src/assessment/request/situation.ts';
import { directionSpread } from '../../src/assessment/result/direction-spread.ts';
import {
  breakEvenFound,
  commonHazards,
  commonNotes,
  criterionOf,
  headlineOf,
  marginInWords,
  markFound,
  namedSpeeds,
  speedFound,
  stairsKnownOf,
  stairsOf,
  verdictInWords,
  workingOf,
} from '../../src/assessment/result/present.ts';
import { Working } from '../../src/assessment/result/steps-behind.ts';
import { type FactorOrigin, factorSets } from '../../src/distance/index.ts';
import { type Changes, landingRequest, takeoff, takeoffRequest } from './scenario.ts';

const metres = (value: number) => ({ value, unit: 'm' });
const distance = named(
  'takeoff-distance',
  'take-off distance',
  'take-off distance required',
  'm',
  'distance available',
);
const wind = named('crosswind', 'crosswind', 'crosswind in gusts', 'kt', 'personal');
const gradient = named('obstacle', 'the gradient over pines', 'gradient over pines', 'percent', 'clearance asked');
const why = [{ code: 'distance-unknown', parameters: {} }] as const;

const situation = (changes?: Changes) => takeoffSituationOf(takeoffRequest('takeoff-28', changes));
const conditions = (changes?: Changes) =>
  conditionsOf(takeoffRequest('takeoff-28', changes).weather, { unreportedGust: 'mean' });
const codes = (list: readonly { code: string }[]) => list.map(({ code }) => code);

/** A working with these labels of steps. */
const working = (...labels: string[]) =>
  new Working(labels.map((label): TraceEntry => ({ kind: 'step', label, record: '', inputs: {}, output: 500 })));
const nothing = working();

describe('a criterion in a document', () => {
  it('has value, limit and margin in its unit where it is decided, with its steps and sentences', () => {
    expect(criterionOf(atMost(wind, 16.2, 18, 'value', why), working('manual', 'wind components'), [7])).toEqual({
      id: 'crosswind',
      subject: 'crosswind',
      quantity: 'crosswind in gusts',
      sense: 'at most',
      limitStatus: 'personal',
      verdict: 'within',
      value: { value: 17, unit: 'kt' },
      limit: { value: 18, unit: 'kt' },
      margin: { value: 1, unit: 'kt' },
      reasons: [{ code: 'distance-unknown', parameters: {}, text: 'The distance itself is undetermined.' }],
      steps: [1],
    });
    expect(criterionOf(atMost(distance, 900, 830), nothing, [7])).toMatchObject({ verdict: 'outside', steps: [7] });
  });

  it('has what is known of it where it is not, and no more', () => {
    const words = (judged: Judged) => {
      const { verdict, limit, atLeast: least, atMost: most, value, margin } = criterionOf(judged, nothing, []) as never;
      return { verdict, limit, least, most, value, margin };
    };
    const open = { verdict: 'undetermined', value: undefined, margin: undefined };
    expect(words(undetermined(distance, 'at most', why))).toEqual({
      ...open,
      limit: undefined,
      least: undefined,
      most: undefined,
    });
    expect(words(atMost(distance, 700, 830, 'at-least'))).toEqual({
      ...open,
      limit: metres(830),
      least: metres(700),
      most: undefined,
    });
    expect(words(atMost(distance, 900, 830, 'at-most'))).toMatchObject({ limit: metres(830), most: metres(900) });
    expect(Object.keys(criterionOf(undetermined(distance, 'at most', why), nothing, []))).not.toContain('limit');
  });

  it('has a verdict and a margin in words', () => {
    expect(['within', 'outside', 'undetermined'].map((each) => verdictInWords(each as never))).toEqual([
      'within limits',
      'outside limits',
      'undetermined',
    ]);
    expect(marginInWords(59, 'm')).toBe('59 m to spare');
    expect(marginInWords(0, 'm')).toBe('0 m to spare');
    expect(marginInWords(-1, 'kt')).toBe('1 kt short');
    // Compared by tenths.
    expect(marginInWords(-0.1, 'mps')).toBe('0.1 m/s short');
    expect(marginInWords(1.1, 'percent')).toBe('1.1 percentage points to spare');
    expect(marginInWords(-0.3, 'percent')).toBe('0.3 percentage points short');
  });
});

describe('the headline', () => {
  const air = { pressureAltitude_ft: 637 } as Air;
  const chain = (missing: Chain['missing'] = []) => ({ missing }) as Chain;
  const factor = (id: string, access: FactorOrigin['access']): FactorOrigin => ({ id, access, locator: `at ${id}` });
  const headline = (
    judged: readonly Judged[],
    {
      changes = {},
      used = [],
      missing = [],
    }: { changes?: Changes; used?: FactorOrigin[]; missing?: Chain['missing'] } = {},
  ) => headlineOf(situation(changes), conditions(changes), air, chain(missing), judged, used);

  it('has the verdict with the tightest criterion', () => {
    const [first, second, ...others] = headline([atMost(distance, 771, 830), atMost(wind, 17, 18)]);
    expect(first).toMatchObject({
      code: 'verdict-with-limiting',
      parameters: {
        subject: 'Take-off on 28',
        verdict: 'within limits',
        criterion: 'crosswind',
        margin: '1 kt to spare',
      },
    });
    expect(second).toMatchObject({
      code: 'pressure-altitude',
      parameters: { elevation_ft: 438, pressureAltitude_ft: 637, qnh_hPa: 1006 },
    });
    expect(others).toEqual([]);
  });

  it('has what is undetermined, each once', () => {
    const open = [
      undetermined(distance, 'at most', why),
      atMost(wind, 17, 18),
      undetermined(gradient, 'at least', why),
      undetermined(distance, 'at most', why),
    ];
    expect(headline(open)[0]).toMatchObject({
      code: 'verdict-undetermined',
      parameters: {
        subject: 'Take-off on 28',
        verdict: 'undetermined',
        criteria: 'take-off distance, the gradient over pines',
      },
    });
    // Outside goes before undetermined.
    expect(headline([...open, atMost(wind, 19, 18)])[0]).toMatchObject({
      code: 'verdict-with-limiting',
      parameters: { verdict: 'outside limits', criterion: 'crosswind', margin: '1 kt short' },
    });
  });

  it('names the landing, and the pressure that was reported', () => {
    const request = landingRequest('landing-10', {
      'weather.qnh': undefined,
      'weather.qfe': { value: 990, unit: 'hPa' },
    });
    const at = conditionsOf(request.weather, { unreportedGust: 'mean' });
    const [first, second] = headlineOf(situationOf(request), at, air, chain(), [atMost(wind, 1, 2)], []);
    expect(first?.parameters['subject']).toBe('Landing on 10');
    expect(second).toMatchObject({ code: 'pressure-altitude-from-qfe', parameters: { qfe_hPa: 990 } });
  });

  it('says that there is no safety factor, by choice or of the set', () => {
    const judged = [atMost(wind, 1, 2)];
    expect(codes(headline(judged, { changes: { safetyFactor: 'none' } })).slice(2)).toEqual(['safety-factor-none']);
    const withoutOne = { factorSet: 'manufacturer-only' };
    const { title } = factorSets['manufacturer-only'];
    expect(headline(judged, { changes: withoutOne })[2]?.parameters).toEqual({ set: title });
    expect(codes(headline(judged, { changes: withoutOne })).slice(2)).toEqual(['set-without-safety-factor']);
    expect(codes(headline(judged, { changes: { ...withoutOne, safetyFactor: 'none' } })).slice(2)).toEqual([
      'safety-factor-none',
    ]);
  });

  it('says which factors are confirmed, and which are second-hand, each once', () => {
    const judged = [atMost(wind, 1, 2)];
    const used = [
      factor('own-a', 'second-hand'),
      factor('own-b', 'recalled'),
      factor('own-a', 'second-hand'),
      factor('own-c', 'read'),
    ];
    const date = '2026-07-14';
    const confirmations = [
      { factorId: 'own-b', edition: '3', date },
      { factorId: 'own-z', edition: '4', date },
    ];
    const said = headline(judged, { used, changes: { 'policies.confirmations': confirmations } }).slice(2);
    expect(said).toMatchObject([
      { code: 'confirmed', parameters: { factorId: 'own-b', edition: '3', date } },
      { code: 'second-hand-factors', parameters: { factors: 'at own-a' } },
    ]);
    expect(codes(headline(judged, { used, missing: why }).slice(2))).toEqual([]);
    expect(codes(headline(judged, { used: [factor('own-c', 'read')] }).slice(2))).toEqual([]);
  });
});

describe('the stairs', () => {
  const chain = {
    stairs: [
      { step: 'manual', factor: 1, total_m: 443.02 },
      { step: 'wind', factor: 1.159, total_m: 513.46 },
    ],
    distance_m: 513.46,
    missing: [],
  } as unknown as Chain;

  it('go up to the distance required in tenths of a metre, against whole metres', () => {
    expect(
      stairsOf(chain, 1.25, 829.7, true, working('ground roll', 'distance', 'wind used', 'factor for wind')),
    ).toEqual({
      steps: [
        { step: 'manual', factor: 1, added: metres(443), total: metres(443), steps: [0, 1] },
        { step: 'wind', factor: 1.159, added: metres(70.4), total: metres(513.5), steps: [2, 3] },
        { step: 'safety factor', factor: 1.25, added: metres(128.4), total: metres(641.8), steps: [] },
      ],
      required: metres(642),
      available: metres(829),
    });
    const plain = stairsOf(chain, 1, 511 - 1e-12, false, nothing);
    expect(plain?.steps.at(-1)).toMatchObject({ step: 'no safety factor', factor: 1, added: metres(0) });
    expect(plain).toMatchObject({ required: metres(514), available: metres(511) });
    expect(stairsKnownOf(chain, nothing)).toBeUndefined();
  });

  it('end before what is missing', () => {
    const open = { ...chain, missing: why };
    expect(stairsOf(open, 1.25, 830, true, nothing)).toBeUndefined();
    expect(stairsKnownOf(open, nothing)).toMatchObject([{ step: 'manual' }, { step: 'wind', total: metres(513.5) }]);
    expect(stairsKnownOf({ ...open, stairs: [] }, nothing)).toBeUndefined();
  });
});

describe('a break-even', () => {
  const range = { from: 0, to: 15 };
  const found = (quantity: 'tailwind' | 'mass' | 'temperature', changes: Changes = {}) =>
    breakEvenFound(situation(changes), { quantity, unit: 'kt', answer: 'value', value: 4.5, range });

  it('has its value where there is one, and its range', () => {
    expect(found('temperature')).toEqual({
      quantity: 'temperature',
      answer: 'value',
      value: { value: 4.5, unit: 'kt' },
      range: { from: { value: 0, unit: 'kt' }, to: { value: 15, unit: 'kt' } },
      otherLimits: [],
    });
    const none = breakEvenFound(situation(), {
      quantity: 'mass',
      unit: 'kg',
      answer: 'undetermined',
      value: undefined,
      range,
    });
    expect(none).not.toHaveProperty('value');
  });

  it('names what else limits the same quantity', () => {
    const others = (...of: Parameters<typeof found>) =>
      found(...of).otherLimits.map(({ code, parameters }) => [code, parameters]);
    expect(others('tailwind')).toEqual([
      ['other-limit-tailwind', { limit: 8, unit: 'kt', status: 'limitation' }],
      ['other-limit-tailwind', { limit: 5, unit: 'kt', status: 'personal' }],
    ]);
    expect(others('mass')).toEqual([['other-limit-mass', { limit: 1050, unit: 'kg' }]]);
    // The pines stand ahead of a take-off on 10.
    expect(others('temperature', { runwayInUse: '10' })).toEqual([['other-limit-obstacles', {}]]);
    expect(others('temperature', { 'runway.obstacles': undefined })).toEqual([]);
    const down = situationOf(landingRequest('landing-10'));
    expect(down.runway.ahead).toHaveLength(1);
    const ofLanding = breakEvenFound(down, {
      quantity: 'temperature',
      unit: 'degC',
      answer: 'value',
      value: 30,
      range,
    });
    expect(ofLanding.otherLimits).toEqual([]);
  });
});

describe('a mark', () => {
  it('has its place, its share of the runway rounded down, its speed and its steps', () => {
    // 100 x 0.29 is less than 29 in binary.
    expect(markFound({ id: 'acceleration-check', at_m: 290, share: 0.29, speed_kias: 36 }, [4])).toEqual({
      id: 'acceleration-check',
      at: metres(290),
      shareOfRunway: { value: 29, unit: 'percent' },
      speed: { value: 36, unit: 'kias' },
      reasons: [],
      steps: [4],
    });
    expect(markFound({ id: 'latest-lift-off', at_m: 299, share: 0.2999 }, [])).toMatchObject({
      shareOfRunway: { value: 29 },
    });
  });

  it('has why where there is none', () => {
    const none = markFound(
      { id: 'latest-lift-off', at_m: undefined, share: undefined, reason: { code: 'mark-not-known', parameters: {} } },
      [4],
    );
    expect(Object.keys(none).sort()).toEqual(['id', 'reasons', 'steps']);
    expect(none).toMatchObject({ reasons: [{ code: 'mark-not-known' }], steps: [] });
  });
});

describe('a speed', () => {
  it('is shown as it is flown, calibrated to a tenth', () => {
    expect(speedFound('lift-off', { kias: 48, kcas: 50.44 })).toEqual([
      { name: 'lift-off', speed: { value: 48, unit: 'kias' }, calibrated: { value: 50.4, unit: 'kcas' }, steps: [] },
    ]);
    expect(speedFound('lift-off', { kias: 48, kcas: undefined })[0]).not.toHaveProperty('calibrated');
  });

  it('is named by the manual: V_X and V_Y', () => {
    expect(namedSpeeds(situation())).toEqual([
      { name: 'V_X, flap 15', speed: { value: 56, unit: 'kias' }, steps: [] },
      { name: 'V_Y, flap 0', speed: { value: 68, unit: 'kias' }, steps: [] },
    ]);
  });
});

describe('what to beware of', () => {
  const hazards = (changes: Changes = {}, used_kt = 3) =>
    commonHazards(situation(changes), conditions(changes), { used_kt } as Wind).map(({ code }) => code);
  const quiet: Changes = {
    'weather.wind.gust': undefined,
    'runway.obstacles': [],
    'performanceData.crosswind': [],
    'runway.surface': { kind: 'paved', condition: 'wet' },
  };
  const grass = (condition: string, ground: string) => ({
    ...quiet,
    'runway.surface': { kind: 'grass', condition, length: 'up to 20 cm', ground },
  });

  it('is nothing on a quiet day', () => {
    expect(hazards(quiet)).toEqual([]);
    expect(hazards(grass('dry', 'firm'))).toEqual([]);
    expect(hazards(quiet, 0)).toEqual([]);
  });

  it('is a tailwind, wet grass, soft ground, gusts and obstacles', () => {
    expect(hazards(quiet, -0.1)).toEqual(['hazard-tailwind']);
    expect(hazards(grass('wet', 'firm'))).toEqual(['hazard-wet-grass']);
    expect(hazards(grass('dry', 'soft'))).toEqual(['hazard-soft-ground']);
    expect(hazards({ ...quiet, 'runway.surface': { kind: 'snow' } })).toEqual(['hazard-soft-ground']);
    expect(hazards({ ...quiet, 'weather.wind.gust': { value: 17, unit: 'kt' } })).toEqual(['hazard-gusts']);
    expect(hazards({ ...quiet, 'weather.wind.gust': { value: 7, unit: 'kt' } })).toEqual([]);
    // A gust that a report may leave out is assumed by policy, not said to be reported.
    const unreported = takeoff('takeoff-28', { ...quiet, 'policies.unreportedGust': 'mean plus 10 kt' });
    expect(codes(unreported.hazards)).toContain('hazard-gusts-assumed');
    expect(codes(unreported.hazards)).not.toContain('hazard-gusts');
    const { 'runway.obstacles': _, ...withPines } = quiet;
    // Behind a take-off on 28, ahead of one on 10.
    expect(hazards(withPines)).toEqual(['hazard-obstacles']);
    expect(hazards({ ...withPines, runwayInUse: '10' })).toEqual(['hazard-obstacles']);
    expect(hazards({ ...quiet, 'runway.obstacles': undefined })).toEqual([]);
    const gusts = commonHazards(situation(), conditions(), { used_kt: 3 } as Wind).find(
      ({ code }) => code === 'hazard-gusts',
    );
    expect(gusts?.parameters).toEqual({ increment_kt: 10 });
  });

  it('is a slope steeper than the set is meant for, or than 2 % where it does not say, up or down', () => {
    // 830 m: 2 % are 16.6 m.
    const slope = (rise: number, changes: Changes = {}) =>
      hazards({
        ...quiet,
        'runway.ends.1.elevation': { value: 100, unit: 'mElevation' },
        'runway.ends.0.elevation': { value: 100 + rise, unit: 'mElevation' },
        ...changes,
      });
    expect(slope(16.5)).toEqual([]);
    expect(slope(16.7)).toEqual(['hazard-steep-slope']);
    expect(slope(-16.7)).toEqual(['hazard-steep-slope']);
    expect(slope(16.5, { factorSet: 'manufacturer-only' })).toEqual([]);
    expect(slope(16.7, { factorSet: 'manufacturer-only' })).toEqual(['hazard-steep-slope']);
  });

  it('has the slope in its sentence', () => {
    const steep = { 'runway.ends.0.elevation': { value: 300, unit: 'ftElevation' } };
    const found = commonHazards(situation(steep), conditions(), { used_kt: 3 } as Wind);
    const slope_percent = found.find(({ code }) => code === 'hazard-steep-slope')?.parameters['slope_percent'];
    // From 438 down to 300 ft in 830 m.
    expect(slope_percent).toBeCloseTo((-138 * 0.3048 * 100) / 830, 9);
  });

  it('is a crosswind that was only demonstrated', () => {
    const stated = (status: string) => [{ speed: { value: 19, unit: 'kt' }, status }];
    expect(hazards({ ...quiet, 'performanceData.crosswind': stated('demonstrated') })).toEqual(['hazard-demonstrated']);
    expect(hazards({ ...quiet, 'performanceData.crosswind': stated('limitation') })).toEqual([]);
  });
});

describe('what to know about the figures', () => {
  const components = { headwind: 3, crosswind: -6.2, crosswindAtGust: -16 };
  const air = { densityAltitude_ft: undefined, humidDensityAltitude_ft: undefined } as Air;
  const notes = (changes: Changes = {}, over: Partial<Air> = {}) =>
    commonNotes(situation(changes), conditions(changes), { ...air, ...over }, { components } as Wind).filter(
      ({ code }) => code !== 'plausibility',
    );
  const note = (code: string, ...of: Parameters<typeof notes>) =>
    notes(...of).find((each) => each.code === code)?.parameters;
  const has = (code: string, ...of: Parameters<typeof notes>) => note(code, ...of) !== undefined;

  it('begins with the components, or with the lack of a direction', () => {
    expect(codes(notes())).toEqual(['wind-components', 'manual-includes', 'factors-of']);
    const { title, edition } = factorSets['easa-class-b'];
    expect(note('factors-of')).toEqual({ set: title, edition });
    expect(note('wind-components')).toEqual({ headwind_kt: 3, crosswind_kt: -6.2, crosswindAtGust_kt: -16 });
    expect(codes(notes({ 'weather.wind.from': 'variable' }))[0]).toBe('direction-unknown');
    expect(has('wind-components', { 'weather.wind.from': 'variable' })).toBe(false);
  });

  it('has what the request made of the norths first', () => {
    const changes = {
      'weather.wind': {
        source: 'observed',
        from: { value: 190, unit: 'degMagnetic' },
        speed: { value: 7, unit: 'kt' },
        gust: { value: 9, unit: 'kt' },
      },
    };
    expect(codes(notes(changes))[0]).toBe('north-converted');
  });

  it('has a range of directions, and a gust that was not reported', () => {
    const range = { from: { value: 160, unit: 'degTrue' }, to: { value: 240, unit: 'degTrue' } };
    expect(note('direction-range', { 'weather.wind.range': range })).toEqual({ from_deg: 160, to_deg: 240 });
    expect(has('direction-range')).toBe(false);
    const noGust = { 'weather.wind.gust': undefined };
    expect(note('gust-unknown', noGust)).toEqual({ threshold_kt: 17, used_kt: 7 });
    expect(has('gust-unknown')).toBe(false);
    expect(has('gust-unknown', { ...noGust, 'weather.wind.speed.value': 0 })).toBe(false);
  });

  it('has the density altitude, dry and humid, rounded up', () => {
    const both = { densityAltitude_ft: 2053.2, humidDensityAltitude_ft: 2287.1 };
    expect(note('density-altitude', {}, both)).toEqual({ densityAltitude_ft: 2054 });
    expect(note('humid-density-altitude', {}, both)).toEqual({ densityAltitude_ft: 2288 });
    expect(has('tables-read-dry', {}, both)).toBe(true);
    expect(has('tables-read-dry', { 'policies.humidity': 'virtual temperature' }, both)).toBe(false);
    const dry = notes({}, { densityAltitude_ft: 2053.2 });
    expect(codes(dry)).toContain('density-altitude');
    expect(codes(dry)).not.toContain('humid-density-altitude');
    expect(codes(dry)).not.toContain('tables-read-dry');
  });

  it('has what the figures of the manual include', () => {
    const includes = (safetyFactor: unknown, windAccountability: unknown) =>
      note('manual-includes', { 'performanceData.takeoff.0.includes': { safetyFactor, windAccountability } });
    expect(includes(true, false)).toEqual({ safetyFactor: 'included', windAccountability: 'not included' });
    expect(includes('not stated', true)).toEqual({ safetyFactor: 'not stated', windAccountability: 'included' });
    expect(has('manual-includes', { configuration: 'flap-0' })).toBe(false);
  });

  it('has a TORA shorter than the runway where something stands ahead', () => {
    const short = { 'runway.ends.0.declaredDistances': { TORA: { value: 799.5, unit: 'm' } }, runwayInUse: '10' };
    expect(note('tora-shorter', short)).toEqual({ by_m: 31 });
    expect(has('tora-shorter', { runwayInUse: '10' })).toBe(false);
    expect(has('tora-shorter', { ...short, 'runway.obstacles': [] })).toBe(false);
    expect(has('tora-shorter', { ...short, 'runway.obstacles': undefined })).toBe(false);
  });

  it('has an empty list of obstacles, and not a missing one', () => {
    expect(has('obstacles-none', { 'runway.obstacles': [] })).toBe(true);
    expect(has('obstacles-none', { 'runway.obstacles': undefined })).toBe(false);
    // Something behind alone, something ahead alone.
    expect(has('obstacles-none')).toBe(false);
    expect(has('obstacles-none', { runwayInUse: '10' })).toBe(false);
  });

  it('has what is unlikely in the data, by its place', () => {
    const roll = { 'performanceData.takeoff.0.groundRoll.cells.0.0.0': 30 };
    const unlikely = commonNotes(situation(roll), conditions(), air, { components } as Wind).filter(
      ({ code }) => code === 'plausibility',
    );
    expect(unlikely.length).toBeGreaterThan(0);
    expect(unlikely[0]?.parameters['path']).toMatch(/^takeoff\[0\]/);
    expect(String(unlikely[0]?.parameters['message']).length).toBeGreaterThan(10);
  });
});

describe('the working', () => {
  it('has steps as they are, and decisions in words', () => {
    const trace: TraceEntry[] = [
      { kind: 'step', label: 'pressure altitude', record: 'atmosphere.pressure-altitude', inputs: {}, output: 637 },
      { kind: 'decision', code: 'tables-read-dry', parameters: {} },
    ];
    expect(workingOf(trace, new Working(trace))).toEqual([
      trace[0],
      {
        kind: 'decision',
        code: 'tables-read-dry',
        parameters: {},
        text: 'The tables are read dry; humidity informs only.',
      },
    ]);
  });
});

describe('the wind 5° to either side', () => {
  type At = Parameters<Parameters<typeof directionSpread>[3]>[0];
  const spread = (from: number | string, changes: Changes = {}) => {
    const asked: At[] = [];
    const wholeRequest: Changes = {
      'weather.wind.from': typeof from === 'string' ? from : { value: from, unit: 'degTrue' },
      ...changes,
    };
    const here = [atMost(distance, 771, 830), atMost(wind, 17, 18), atLeast(gradient, 5, 4, 'value', [])];
    const reasons = directionSpread(situation(wholeRequest), conditions(wholeRequest), here, (at) => {
      asked.push(at);
      return asked.length === 1
        ? [atMost(distance, 814, 830), atMost(wind, 17, 18), atLeast(gradient, 3, 4, 'value', [])]
        : [undetermined(distance, 'at most', why), atMost(wind, 19, 18), atLeast(gradient, 5, 4, 'value', [])];
    });
    return {
      reasons,
      directions: asked.map(({ from_deg }) => from_deg),
      ranges: asked.map(({ range_deg }) => range_deg),
    };
  };
  const painted = { 'runway.ends.1.directionFrom': 'designator' };

  it('is shown with the distance and with what changes its verdict', () => {
    // 190° is 102° off 292°.
    expect(spread(190)).toEqual({
      reasons: [
        {
          code: 'wind-near-abeam',
          parameters: {
            angle_deg: 102,
            first: 'take-off distance 814 m, within limits; the gradient over pines outside limits',
            second: 'take-off distance undetermined; crosswind outside limits',
          },
        },
      ],
      directions: [185, 195],
      ranges: [undefined, undefined],
    });
  });

  it.each([
    [182, true], // 110°
    [181, false],
    [222, true], // 70°
    [223, false],
    [2, true], // 70° from the other side
    [1, false],
    [42, true], // 110°
    [43, false],
    [292, false],
  ])('from %d° on 292°: %s', (from, isAbeam) => {
    expect(codes(spread(from).reasons)).toEqual(isAbeam ? ['wind-near-abeam'] : []);
  });

  it('turns over north, as 360 and never as 0, and turns the range with it', () => {
    expect(spread(5).directions).toEqual([360, 10]);
    expect(spread(3).directions).toEqual([358, 8]);
    expect(spread(355, painted).directions).toEqual([350, 360]);
    expect(spread(358, painted).directions).toEqual([353, 3]);
    const range = { from: { value: 160, unit: 'degTrue' }, to: { value: 357, unit: 'degTrue' } };
    expect(spread(190, { 'weather.wind.range': range }).ranges).toEqual([
      { from: 155, to: 352 },
      { from: 165, to: 2 },
    ]);
  });

  it('is shown for any wind where the direction is a painted number', () => {
    const [found] = spread(292, painted).reasons;
    expect(found).toMatchObject({ code: 'direction-from-designator', parameters: { angle_deg: 0 } });
    expect(codes(spread(190, painted).reasons)).toEqual(['direction-from-designator']);
  });

  it('is not shown without a direction or in calm: the number alone is said', () => {
    const calm = { 'weather.wind.speed.value': 0, 'weather.wind.gust': undefined };
    expect(spread('variable')).toEqual({ reasons: [], directions: [], ranges: [] });
    expect(spread(190, calm)).toEqual({ reasons: [], directions: [], ranges: [] });
    const only = [{ code: 'direction-only-painted', parameters: {} }];
    expect(spread('variable', painted).reasons).toEqual(only);
    expect(spread(190, { ...calm, ...painted }).reasons).toEqual(only);
  });
});
