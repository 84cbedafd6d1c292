import { describe, expect, it } from 'vitest';
import { type Changes, criterion, judged, landing, takeoff, totals } from './scenario.ts';

type Assessment = ReturnType<typeof takeoff> | ReturnType<typeof landing>;

const table = 'performanceData.takeoff.0';
const leaflet = { factorSet: 'uk-light-aeroplane-leaflet' };
const paved = { 'runway.surface': { kind: 'paved', condition: 'dry' } };
const percent = (value: number) => ({ value, unit: 'percent' });
const single = (value: number) => ({ axes: [], unit: 'm', cells: value });

const reasons = (assessment: Assessment) => {
  const distance = assessment.criteria.find(({ id }) => id.endsWith('-distance'));
  return distance?.reasons.map(({ code, parameters }) => [code, parameters]);
};
const decision = ({ trace }: Assessment, code: string) =>
  trace.flatMap((entry) => (entry.kind === 'decision' && entry.code === code ? [entry.parameters] : []));
const total = (assessment: Assessment, step: string) => totals(assessment)[step];

// On 28 the wind used is 3.5345 kt of tailwind, on 10 0.7277 kt of headwind; 636.58 ft and 26 °C; 443.02 m as printed.

/** Calm standard air at sea level on a level runway, where one printed figure, 400 m with 200 m of roll, holds as it is. */
const printedFor = (mass_kg: number): Changes => ({
  ...leaflet,
  ...paved,
  [`${table}.distance`]: single(400),
  [`${table}.groundRoll`]: single(200),
  [`${table}.associatedConditions.mass`]: { value: mass_kg, unit: 'kg' },
  [`${table}.associatedConditions.pressureAltitude`]: { value: 0, unit: 'ftPA' },
  [`${table}.associatedConditions.temperature`]: { value: 15, unit: 'degC' },
  'runway.ends.0.elevation.value': 0,
  'runway.ends.1.elevation.value': 0,
  'runway.obstacles': [],
  'weather.wind': { source: 'METAR', from: 'variable', speed: { value: 0, unit: 'kt' } },
  'weather.temperature.value': 15,
  'weather.dewPoint': undefined,
  'weather.qnh.value': 1013.25,
});

describe('what the table has no axis for', () => {
  it('costs what the set gives for each step: mass, elevation and temperature in their order', () => {
    const assessment = takeoff('takeoff-28', {
      ...printedFor(900),
      'runway.ends.0.elevation.value': 500,
      'runway.ends.1.elevation.value': 500,
      'weather.temperature.value': 21,
    });
    // 40 of 90 kg x 20 %, half of 10 % for 500 ft, 0.6 of 10 % for 6 °C.
    const [mass, elevation, temperature] = [1 + (0.2 * 40) / 90, 1.05, 1.06];
    expect(total(assessment, 'mass')).toBeCloseTo(400 * mass, 1);
    expect(total(assessment, 'elevation')).toBeCloseTo(400 * mass * elevation, 1);
    expect(total(assessment, 'temperature')).toBeCloseTo(400 * mass * elevation * temperature, 1);
    // The roll grows with it.
    expect(judged(assessment, 'takeoff-run')).toMatchObject({
      value: Math.ceil(200 * mass * elevation * temperature * 1.33),
    });
  });

  it('has a figure for five steps and none beyond', () => {
    const at = (mass_kg: number) => takeoff('takeoff-28', { ...printedFor(600), 'mass.value': mass_kg });
    // 50 % above 600 kg: 1.2 to the fifth.
    expect(total(at(900), 'mass')).toBeCloseTo(400 * 1.2 ** 5, 1);
    expect(reasons(at(906))).toEqual([['beyond-pro-rating', { steps: expect.closeTo(5.1, 9), most: 5 }]]);
  });

  it('costs nothing at what it holds for, and earns nothing below', () => {
    for (const mass_kg of [900, 850])
      expect(total(takeoff('takeoff-28', { ...printedFor(900), 'mass.value': mass_kg }), 'mass')).toBeUndefined();
  });

  it('has no figure where neither manual nor set says what it costs', () => {
    const classB = { ...printedFor(900), factorSet: 'easa-class-b' };
    expect(reasons(takeoff('takeoff-28', classB))).toEqual([
      ['mass-not-covered', { table: 'take-off', limit_kg: 900 }],
    ]);
    expect(reasons(takeoff('takeoff-28', { ...classB, 'mass.value': 900, 'weather.temperature.value': 16 }))).toEqual([
      ['temperature-not-covered', { table: 'take-off', limit_degC: 15 }],
    ]);
  });

  it("is covered by the manual's own law up to its last value, and said", () => {
    const law = {
      [`${table}.corrections.mass`]: {
        change: percent(5),
        per: { value: 20, unit: 'kg' },
        upTo: { value: 940, unit: 'kg' },
      },
    };
    const at = (mass_kg: number) => takeoff('takeoff-28', { ...printedFor(900), ...law, 'mass.value': mass_kg });
    expect(total(at(940), 'mass')).toBe(440);
    expect(decision(at(940), 'law-of-manual')).toEqual([{ quantity: 'mass' }]);
    expect(reasons(at(941))).toEqual([['mass-not-covered', { table: 'take-off', limit_kg: 900 }]]);
  });

  it('stays a factor on what a table along the wind says at the wind of the day', () => {
    const winds = { quantity: 'headwind', unit: 'kt', values: [-8, 0, 15] };
    const along = (cells: readonly number[]) => ({ axes: [winds], unit: 'm', cells });
    const assessment = takeoff('takeoff-28', {
      ...printedFor(900),
      [`${table}.corrections`]: {},
      [`${table}.distance`]: along([500, 400, 340]),
      [`${table}.groundRoll`]: along([280, 200, 170]),
      'weather.wind': { source: 'METAR', from: 'variable', speed: { value: 2, unit: 'kt' } },
    });
    // 150 % of 2 kt: 400 + 3/8 of 100 m and 200 + 3/8 of 80 m, each x 1.0889 for 4.44 % of mass.
    const mass = 1 + (0.2 * 40) / 90;
    expect(total(assessment, 'mass')).toBeCloseTo(400 * mass, 1);
    expect(total(assessment, 'wind')).toBeCloseTo(437.5 * mass, 1);
    expect(assessment.stairs?.steps.find(({ step }) => step === 'wind')?.factor).toBeCloseTo(437.5 / 400, 9);
    expect(judged(assessment, 'takeoff-run')).toMatchObject({ value: Math.ceil(230 * mass * 1.33) });
  });
});

describe('a tailwind', () => {
  const noLaw = { [`${table}.corrections.tailwind`]: undefined };

  it('costs 20 % for each tenth of the lift-off speed, where only the set has a rule', () => {
    // 3.5345 of 47.7 KIAS are 7.410 %.
    const assessment = takeoff('takeoff-28', { ...noLaw, ...leaflet });
    expect(total(assessment, 'wind')).toBeCloseTo(443.02 * (1 + 0.2 * 0.741), 1);
    const down = landing('landing-28', { ...leaflet, 'performanceData.landing.0.corrections.tailwind': undefined });
    // 3.5345 of 57 KIAS are 6.201 %.
    expect((total(down, 'wind') as number) / (total(down, 'manual') as number)).toBeCloseTo(1 + 0.2 * 0.6201, 3);
  });

  it('has no figure where nobody has a rule, or the set has one and no speed is printed to measure it against', () => {
    const wind_kt = expect.closeTo(3.5345, 4);
    expect(reasons(takeoff('takeoff-28', noLaw))).toEqual([['no-tailwind-law', { wind_kt }]]);
    const noSpeed = {
      [`${table}.liftOffSpeed`]: {
        axes: [{ quantity: 'mass', unit: 'kg', values: [800, 900] }],
        unit: 'kias',
        cells: [45, 46],
      },
    };
    expect(reasons(takeoff('takeoff-28', { ...noLaw, ...leaflet, ...noSpeed }))).toEqual([
      ['no-tailwind-law', { wind_kt }],
    ]);
  });

  it('has none beyond the last that the manual prints', () => {
    const along = (knots: number) =>
      takeoff('takeoff-28', {
        'weather.wind': { source: 'METAR', from: { value: 112, unit: 'degTrue' }, speed: { value: knots, unit: 'kt' } },
        'policies.tailwindShare': { value: 1, unit: 'ratio' },
      });
    expect(total(along(8), 'wind')).toBeCloseTo(443.02 * 1.36, 1);
    expect(reasons(along(9))).toEqual([['tailwind-beyond-manual', { wind_kt: 9, cap_kt: 8 }]]);
  });
});

describe('the surface', () => {
  const own = (...corrections: readonly [condition: string, value: number, percentOf?: string][]) => ({
    [`${table}.corrections.surfaces`]: corrections.map(([condition, value, percentOf = 'distance']) => ({
      surface: 'grass',
      condition,
      increase: percent(value),
      percentOf,
    })),
  });
  const grass = (condition: string, length = 'up to 20 cm', ground = 'firm') => ({
    'runway.surface': { kind: 'grass', condition, length, ground },
  });
  const factor = (assessment: Assessment) => assessment.stairs?.steps.find(({ step }) => step === 'surface')?.factor;

  it("has the manual's factor where it names the very condition, and says so", () => {
    const assessment = takeoff('takeoff-28', own(['dry', 15]));
    expect(factor(assessment)).toBeCloseTo(1.15, 12);
    expect(decision(assessment, 'surface-of-manual')).toEqual([{ surface: 'dry grass up to 20 cm on firm ground' }]);
    expect(decision(assessment, 'surface-of-set')).toEqual([]);
  });

  it('of a worse condition never costs less than the manual says of a milder one', () => {
    const raised = takeoff('takeoff-28', { ...grass('wet'), ...own(['dry', 40]) });
    expect(factor(raised)).toBeCloseTo(1.4, 12);
    expect(decision(raised, 'surface-not-below-manual')).toEqual([{ surface: 'grass' }]);
    // The set's 1.3 for wet grass is more than 1.25, and as much as 1.3.
    for (const milder of [25, 30]) {
      const plain = takeoff('takeoff-28', { ...grass('wet'), ...own(['dry', milder]) });
      expect(factor(plain)).toBeCloseTo(1.3, 12);
      expect(decision(plain, 'surface-not-below-manual')).toEqual([]);
    }
  });

  it('counts the metres of the ground roll, where the manual prints it so', () => {
    // 220.226 of 439.796 m in the wind used.
    const assessment = takeoff('takeoff-10', own(['dry', 40, 'ground roll']));
    expect(factor(assessment)).toBeCloseTo(1 + (0.4 * 220.226) / 439.796, 4);
  });

  it('shows two bounds where two factors meet, and each with its kind', () => {
    const confirmations = [{ factorId: 'uk-leaflet-landing-soft', edition: '7c', date: '2026-07-14' }];
    const assessment = landing('landing-10', {
      ...leaflet,
      ...grass('wet', 'very short', 'soft'),
      'policies.confirmations': confirmations,
      'weather.wind.gust': undefined,
    });
    // 1.60 at most for very short wet grass, 1.25 at least for soft ground: their product proves nothing either way.
    expect(factor(assessment)).toBeCloseTo(2, 12);
    expect(decision(assessment, 'surface-at-most')).toEqual([
      { factor: 1.6, condition: 'very short wet grass on firm subsoil' },
    ]);
    expect(decision(assessment, 'surface-at-least')).toEqual([{ factor: 1.25, condition: 'soft ground' }]);
    expect(criterion(assessment, 'landing-distance').verdict).toBe('undetermined');
  });

  it('has no figure where an aspect of it has no factor, and says which', () => {
    expect(reasons(takeoff('takeoff-28', grass('wet', 'over 20 cm', 'soft')))).toEqual([
      ['surface-no-factor', { aspects: 'long grass, wet, soft ground' }],
    ]);
  });
});

describe('a slope', () => {
  const rising = (end_ft: number) => ({ 'runway.ends.1.elevation.value': end_ft, 'runway.obstacles': [] });
  const law = (upTo: number, percentOf = 'distance') => ({
    [`${table}.corrections.adverseSlope`]: { change: percent(8), per: percent(2), upTo: percent(upTo), percentOf },
  });
  const factor = (assessment: Assessment) => assessment.stairs?.steps.find(({ step }) => step === 'slope')?.factor;

  it("has the manual's factor, a step of 2 % taken by half, up to the last that it prints", () => {
    const assessment = takeoff('takeoff-10', law(2));
    expect(factor(assessment)).toBeCloseTo(1 + 0.04 * 1.872867, 6);
    const [shown] = decision(assessment, 'slope-of-manual');
    expect(shown).toEqual({ slope_percent: expect.closeTo(1.872867, 6), percentPerPercent: 4 });
    expect(reasons(takeoff('takeoff-10', law(1.5)))).toEqual([
      ['slope-beyond-manual', { slope_percent: expect.closeTo(1.872867, 6), limit_percent: 1.5 }],
    ]);
  });

  it('has no figure beyond the 2 % of a set that says so', () => {
    // 58 ft, 17.6784 m, in 830 m are 2.1299 %.
    expect(reasons(takeoff('takeoff-10', rising(445)))).toEqual([
      ['slope-beyond-set', { slope_percent: expect.closeTo(2.1299, 4), limit_percent: 2 }],
    ]);
  });

  it('is pro-rated beyond the 2 % of a set that allows it: 10 % for each 2 %', () => {
    // More than a step is a power of it.
    expect(factor(takeoff('takeoff-10', { ...leaflet, ...rising(445) }))).toBeCloseTo(1.1 ** (2.1299 / 2), 4);
    expect(factor(takeoff('takeoff-10', leaflet))).toBeCloseTo(1 + 0.05 * 1.872867, 6);
  });

  it('that helps is credited at landing too, where the request takes the manual at its word', () => {
    const credit = {
      'performanceData.landing.0.corrections.favourableSlope': {
        change: percent(-3),
        per: percent(1),
        upTo: percent(3),
        percentOf: 'distance',
      },
    };
    const taken = landing('landing-10', { ...credit, 'policies.favourableSlope': 'of the manual' });
    expect(factor(taken)).toBeCloseTo(1 - 0.03 * 1.872867, 6);
    expect(decision(taken, 'slope-credit-of-manual')).toEqual([{ slope_percent: expect.closeTo(1.872867, 6) }]);
    expect(decision(taken, 'slope-no-credit')).toEqual([]);
    expect(factor(landing('landing-10', credit))).toBeUndefined();
  });

  it('of nothing is not spoken of', () => {
    const level = takeoff('takeoff-10', rising(387));
    expect(factor(level)).toBeUndefined();
    expect(decision(level, 'slope-no-credit')).toEqual([]);
  });
});

describe('a table along the slope', () => {
  const slopes = { quantity: 'slope', unit: 'percent', values: [-2, 0, 2] };
  const along = (phase: string, cells: readonly number[]) => ({
    [`performanceData.${phase}.0.distance`]: { axes: [slopes], unit: 'm', cells },
    [`performanceData.${phase}.0.groundRoll`]: {
      axes: [slopes],
      unit: 'm',
      cells: cells.map((each) => each / 2),
    },
    [`performanceData.${phase}.0.associatedConditions.mass`]: { value: 1050, unit: 'kg' },
    [`performanceData.${phase}.0.associatedConditions.pressureAltitude`]: { value: 4000, unit: 'ftPA' },
    [`performanceData.${phase}.0.associatedConditions.temperature`]: { value: 40, unit: 'degC' },
    ...paved,
  });
  const credit = { 'policies.favourableSlope': 'of the manual' };
  const slope = (assessment: Assessment) => total(assessment, 'slope');

  it('is read at level where the slope helps, and at the slope where the request says so', () => {
    const downhill = (changes: Changes) => takeoff('takeoff-28', { ...along('takeoff', [360, 400, 440]), ...changes });
    expect(slope(downhill({}))).toBeUndefined();
    expect(decision(downhill({}), 'slope-no-credit')).toEqual([{ slope_percent: expect.closeTo(-1.872867, 6) }]);
    // 400 - 20 x 1.8729 in the tailwind of 3.5345 kt.
    expect(slope(downhill(credit))).toBeCloseTo((400 - 20 * 1.872867) * (1 + 0.045 * 3.5345), 1);
    expect(decision(downhill(credit), 'slope-credit-of-manual')).toHaveLength(1);
    expect(decision(downhill(credit), 'slope-no-credit')).toEqual([]);
  });

  it('is read at the slope where that costs, without a word of credit', () => {
    for (const changes of [{}, credit]) {
      const uphill = takeoff('takeoff-10', { ...along('takeoff', [360, 400, 440]), ...changes });
      expect(slope(uphill)).toBeCloseTo((400 + 20 * 1.872867) * (1 - 0.01 * 0.7277), 1);
      const downhill = landing('landing-28', { ...along('landing', [440, 400, 360]), ...changes });
      expect(slope(downhill)).toBeCloseTo((400 + 20 * 1.872867) * (1 + 0.04 * 3.5345), 1);
      for (const assessment of [uphill, downhill])
        for (const code of ['slope-credit-of-manual', 'slope-no-credit'])
          expect(decision(assessment, code)).toEqual([]);
    }
  });

  it('says nothing of a level runway, whatever the request chooses', () => {
    const level = takeoff('takeoff-10', {
      ...along('takeoff', [360, 400, 440]),
      ...credit,
      'runway.ends.1.elevation.value': 387,
      'runway.obstacles': [],
    });
    expect(slope(level)).toBeUndefined();
    expect(decision(level, 'slope-credit-of-manual')).toEqual([]);
  });
});
