import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { factorSets, type Surface, surfaceEffect } from '../../src/distance/index.ts';
import { type Changes, codes, criterion, judged, landing, takeoff, totals } from './scenario.ts';

type Assessment = ReturnType<typeof takeoff> | ReturnType<typeof landing>;

const data = (phase: 'takeoff' | 'landing') => `performanceData.${phase}.0`;
const percent = (value: number) => ({ value, unit: 'percent' });
const leaflet = { factorSet: 'uk-light-aeroplane-leaflet' };
const grass = (condition: 'dry' | 'wet', length = 'up to 20 cm', ground = 'firm') =>
  ({ kind: 'grass', condition, length, ground }) as Surface;
const on = (surface: Surface): Changes => ({ 'runway.surface': surface });
const own = (phase: 'takeoff' | 'landing', condition: 'dry' | 'wet', increase: number, surface = 'grass') => ({
  [`${data(phase)}.corrections.surfaces`]: [{ surface, condition, increase: percent(increase), percentOf: 'distance' }],
});
const noGust: Changes = { 'weather.wind.gust': undefined };
const long: Changes = {
  'runway.length.value': 2500,
  'runway.ends.0.declaredDistances': undefined,
  'runway.ends.1.declaredDistances': undefined,
  'runway.obstacles': [],
};

const factorOf = (assessment: Assessment, step: string) =>
  assessment.stairs?.steps.find((each) => each.step === step)?.factor;
const reasonsOf = (assessment: Assessment, id: string) => codes(criterion(assessment, id).reasons);
const decisionsOf = ({ trace }: Assessment) => codes(trace.flatMap((each) => (each.kind === 'decision' ? [each] : [])));

describe('1: corrections, wind accountability and safety factor are three things', () => {
  it("the manual's own figure for a surface replaces the set's, and neither of the other two", () => {
    const up = takeoff('takeoff-28', { ...own('takeoff', 'dry', 10), ...noGust });
    // 150 % of 7 kt from 102° off at 4.5 % for each knot; 1.25 against the TORA.
    const tail = 1.5 * 7 * -Math.cos((102 * Math.PI) / 180);
    expect(totals(up)['safety factor']).toBeCloseTo(443.02 * (1 + 0.045 * tail) * 1.1 * 1.25, 1);
    const down = landing('landing-10', own('landing', 'dry', 10));
    expect(factorOf(down, 'surface')).toBeCloseTo(1.1, 12);
    expect(factorOf(down, 'safety factor')).toBeCloseTo(1 / 0.7, 12);
  });

  it('the manual replaces for the very condition it names, and for no other', () => {
    const dryOnly = own('takeoff', 'dry', 5);
    expect(factorOf(takeoff('takeoff-28', { ...dryOnly, ...on(grass('wet')) }), 'surface')).toBe(1.3);
    const soft = takeoff('takeoff-28', { ...dryOnly, ...leaflet, ...on(grass('dry', 'up to 20 cm', 'soft')) });
    expect(decisionsOf(soft)).not.toContain('surface-of-manual');
    const tall = takeoff('takeoff-28', { ...dryOnly, ...on(grass('dry', 'over 20 cm')) });
    expect(reasonsOf(tall, 'takeoff-distance')).toEqual(['surface-no-factor']);
  });
});

describe('2: figures that do not say what they include are taken to include nothing', () => {
  const includes = (phase: 'takeoff' | 'landing', safetyFactor: unknown) => ({
    ...noGust,
    [`${data(phase)}.includes`]: { safetyFactor, windAccountability: safetyFactor },
  });

  it.each([
    ['take-off', takeoff('takeoff-28', includes('takeoff', 'not stated')), takeoff('takeoff-28', noGust), 1.25],
    ['landing', landing('landing-28', includes('landing', 'not stated')), landing('landing-28', noGust), 1 / 0.7],
  ])('both are applied at the %s, and it is said', (_name, silent, stated, factor) => {
    expect(factorOf(silent, 'safety factor')).toBeCloseTo(factor, 12);
    expect(totals(silent)).toEqual(totals(stated));
    expect(decisionsOf(silent)).toContain('accountability-not-stated');
    const note = silent.dataNotes.find(({ code }) => code === 'manual-includes');
    expect(note?.text).toContain('safety factor not stated, wind accountability not stated');
  });

  it('a safety factor that they do include is not applied twice, and it is said', () => {
    for (const included of [
      takeoff('takeoff-28', includes('takeoff', true)),
      landing('landing-28', includes('landing', true)),
    ]) {
      expect(factorOf(included, 'no safety factor')).toBe(1);
      expect(decisionsOf(included)).toContain('safety-factor-included');
    }
  });
});

describe('3: what nobody has a factor for leaves the distance open and is never taken as 1.0', () => {
  it.each([
    [
      'an adverse slope',
      takeoff('takeoff-10', { factorSet: 'part-nco', ...on({ kind: 'paved', condition: 'dry' }) }),
      'slope-no-factor',
    ],
    [
      'a tailwind',
      takeoff('takeoff-28', { [`${data('takeoff')}.corrections.tailwind`]: undefined }),
      'no-tailwind-law',
    ],
    ['gravel', takeoff('takeoff-28', on({ kind: 'gravel', condition: 'dry' })), 'surface-no-factor'],
    [
      'a wet runway',
      takeoff('takeoff-28', { factorSet: 'part-nco', ...on({ kind: 'paved', condition: 'wet' }) }),
      'surface-no-factor',
    ],
  ])('%s', (_name, assessment, reason) => {
    expect(reasonsOf(assessment, 'takeoff-distance')).toEqual([reason]);
    expect(criterion(assessment, 'takeoff-run').verdict).toBe('undetermined');
  });

  it('a printed 1.0 is a figure', () => {
    expect(factorOf(takeoff('takeoff-28', on({ kind: 'paved', condition: 'wet' })), 'surface')).toBe(1);
  });
});

describe("4: the set's factor for a harsher form stands alone, but not below the manual's for a milder one", () => {
  const wet = on(grass('wet'));

  it.each([
    ["is the set's 1.3 where the manual prints 20 % for dry grass", 20, 1.3],
    ["is the manual's 1.5 where it prints 50 % for dry grass", 50, 1.5],
  ])('%s', (_name, dry, factor) => {
    const assessment = takeoff('takeoff-28', { ...own('takeoff', 'dry', dry), ...wet });
    expect(factorOf(assessment, 'surface')).toBeCloseTo(factor, 12);
    expect(decisionsOf(assessment).includes('surface-not-below-manual')).toBe(dry === 50);
  });

  it('is raised by no other kind of surface', () => {
    const assessment = takeoff('takeoff-28', { ...own('takeoff', 'dry', 50, 'gravel'), ...wet });
    expect(factorOf(assessment, 'surface')).toBe(1.3);
  });
});

describe('5: one set at a time, whose every factor says what it is and where it stands', () => {
  it.each(Object.entries(factorSets))('%s passes as a set that a user brings', (_id, set) => {
    expect(takeoff('takeoff-28', { factorSet: set }).dataNotes).toContainEqual(
      expect.objectContaining({ code: 'factors-of', parameters: { set: set.title, edition: set.edition } }),
    );
  });

  it('no id is used twice over all sets, so that a confirmation names one factor', () => {
    const ids = [...JSON.stringify(Object.values(factorSets)).matchAll(/"id":"([^"]+)"/g)].map(([, id]) => id);
    expect(ids.length).toBeGreaterThan(40);
    expect(ids.filter((id, i) => ids.indexOf(id) < i)).toEqual([]);
  });

  it('a factor stands instead of factors of its own list only', () => {
    const lists = Object.values(factorSets).flatMap(({ takeoff: up, landing: down }) => [up.surfaces, down.surfaces]);
    for (const list of lists) {
      const ids = list.map(({ id }) => id);
      expect(ids).toEqual(expect.arrayContaining(list.flatMap(({ replaces }) => replaces)));
    }
  });

  it('a gap in one set is not filled from another', () => {
    const assessment = takeoff('takeoff-28', on(grass('dry', 'up to 20 cm', 'soft')));
    expect(reasonsOf(assessment, 'takeoff-distance')).toEqual(['surface-no-factor']);
  });
});

describe('6: a factor that is a bound proves one verdict only', () => {
  const veryShort = { ...leaflet, ...on(grass('wet', 'very short')) };

  it("the leaflet's 60 % for very short wet grass proves within, never outside", () => {
    expect(criterion(landing('landing-10', veryShort), 'landing-distance')).toMatchObject({
      verdict: 'undetermined',
      atMost: { unit: 'm' },
    });
    expect(judged(landing('landing-10', { ...veryShort, ...long }), 'landing-distance').verdict).toBe('within');
  });

  it('two bounds of opposite kinds prove nothing, in whichever order they come', () => {
    const [dry] = factorSets['easa-class-b'].takeoff.surfaces;
    const { 'faa-handbook': handbook } = factorSets;
    // Both at once: 940 kg on figures for 900 kg by "at least 21 %", and grass by an "at most".
    const set = { ...handbook, takeoff: { ...handbook.takeoff, surfaces: [{ ...dry, kind: 'at-most' }] } };
    const single = (cells: number) => ({ axes: [], unit: 'm', cells });
    const figure = (metres: number): Changes => ({
      [`${data('takeoff')}.distance`]: single(metres),
      [`${data('takeoff')}.groundRoll`]: single(metres / 2),
      [`${data('takeoff')}.associatedConditions.mass`]: { value: 900, unit: 'kg' },
      [`${data('takeoff')}.associatedConditions.pressureAltitude`]: { value: 2000, unit: 'ftPA' },
      [`${data('takeoff')}.associatedConditions.temperature`]: { value: 30, unit: 'degC' },
    });
    for (const metres of [200, 2000]) {
      const assessment = takeoff('takeoff-28', { ...figure(metres), factorSet: set });
      expect(totals(assessment)['surface']).toBeGreaterThan(metres);
      expect(criterion(assessment, 'takeoff-distance').verdict).toBe('undetermined');
    }
  });
});

describe('7: corrections multiply in the order of the trade, the safety factor comes last, and only the end is rounded', () => {
  it('through every step there is', () => {
    const assessment = takeoff('takeoff-10', {
      ...leaflet,
      [`${data('takeoff')}.distance`]: { axes: [], unit: 'm', cells: 400 },
      [`${data('takeoff')}.groundRoll`]: { axes: [], unit: 'm', cells: 200 },
      [`${data('takeoff')}.associatedConditions.mass`]: { value: 900, unit: 'kg' },
      [`${data('takeoff')}.associatedConditions.pressureAltitude`]: { value: 0, unit: 'ftPA' },
      [`${data('takeoff')}.associatedConditions.temperature`]: { value: 20, unit: 'degC' },
      'weather.wind': { source: 'METAR', from: { value: 292, unit: 'degTrue' }, speed: { value: 4, unit: 'kt' } },
      liftOffSpeedAddition: { value: 3, unit: 'kt' },
    });
    // 40 of 90 kg by 1.2, 636.58 of 1 000 ft by 1.1, 6 of 10 °C by 1.1, 150 % of 4 kt at 4.5 %.
    const table = [1, 1 + (0.2 * 40) / 90, 1 + 0.1 * 0.63658, 1.06, 1 + 0.045 * 6];
    const both = table.reduce((product, factor) => product * factor);
    // Dry grass by 1.2 and 51 ft of rise on 830 m at 5 % for each 1 %, wholly on the ground.
    const slope = 1 + 5 * ((51 * 0.3048) / 830);
    const ground = 1.2 * slope;
    const roll = 200 * both + 400 * both * (ground - 1);
    // 940 kg: 47.7 KIAS of the table are 50.16 KCAS, the 51 flown 52.8.
    const faster = roll * ((52.8 / 50.16) ** 2 - 1);
    const distance = 400 * both * ground + faster;
    expect(assessment.stairs?.steps.map(({ step }) => step)).toEqual([
      'manual',
      'mass',
      'elevation',
      'temperature',
      'wind',
      'surface',
      'slope',
      'speed addition',
      'safety factor',
    ]);
    expect(totals(assessment)['slope']).toBeCloseTo(400 * both * ground, 1);
    expect(totals(assessment)['speed addition']).toBeCloseTo(distance, 1);
    expect(totals(assessment)['safety factor']).toBeCloseTo(distance * 1.33, 1);
    expect(assessment.stairs?.required.value).toBe(Math.ceil(distance * 1.33));
    expect(judged(assessment, 'takeoff-distance').value).toBe(Math.ceil(distance * 1.33));
  });
});

describe('8: a factor printed for a step is a straight line within it and the harsher reading beyond', () => {
  const heavier = (stated_kg: number): Changes => ({
    ...leaflet,
    [`${data('takeoff')}.distance`]: { axes: [], unit: 'm', cells: 300 },
    [`${data('takeoff')}.groundRoll`]: { axes: [], unit: 'm', cells: 150 },
    [`${data('takeoff')}.associatedConditions.mass`]: { value: stated_kg, unit: 'kg' },
    [`${data('takeoff')}.associatedConditions.pressureAltitude`]: { value: 2000, unit: 'ftPA' },
    [`${data('takeoff')}.associatedConditions.temperature`]: { value: 30, unit: 'degC' },
    'mass.value': 1000,
  });

  it.each([
    ['half a step is half of it', 1000 / 1.05, 1.1],
    ['two and a half steps compound', 800, 1.2 ** 2.5],
    ['five steps are the last that have a figure', 1000 / 1.5, 1.2 ** 5],
  ])('%s', (_name, stated_kg, factor) => {
    expect(factorOf(takeoff('takeoff-28', heavier(stated_kg)), 'mass')).toBeCloseTo(factor, 9);
  });

  it('beyond five steps there is no figure', () => {
    const assessment = takeoff('takeoff-28', heavier(1000 / 1.51));
    expect(reasonsOf(assessment, 'takeoff-distance')).toEqual(['beyond-pro-rating']);
  });

  /** Of the runway in use, towards its far end. */
  const rising = (percents: number): Changes => ({
    'runway.ends.0.elevation': { value: 130, unit: 'mElevation' },
    'runway.ends.1.elevation': { value: 130 + 8.3 * percents, unit: 'mElevation' },
    'runway.obstacles': [],
  });

  it('a slope beyond 2 % has no figure under the class B set, up and down', () => {
    expect(reasonsOf(takeoff('takeoff-10', rising(3)), 'takeoff-distance')).toEqual(['slope-beyond-set']);
    expect(reasonsOf(landing('landing-10', rising(-3)), 'landing-distance')).toEqual(['slope-beyond-set']);
    expect(factorOf(landing('landing-10', rising(-2)), 'slope')).toBeCloseTo(1.1, 9);
  });

  it('under the leaflet it compounds, with a hazard', () => {
    const assessments = [
      takeoff('takeoff-10', { ...leaflet, ...rising(3) }),
      landing('landing-10', { ...leaflet, ...rising(-3) }),
    ];
    for (const assessment of assessments) {
      expect(factorOf(assessment, 'slope')).toBeCloseTo(1.1 ** 1.5, 9);
      expect(codes(assessment.hazards)).toContain('hazard-steep-slope');
    }
    expect(codes(takeoff('takeoff-10', { ...leaflet, ...rising(2) }).hazards)).not.toContain('hazard-steep-slope');
  });
});

describe('9: along its chain the harsher surface stands instead of the milder, and what is no chain multiplies', () => {
  const paved = (condition: 'dry' | 'wet'): Surface => ({ kind: 'paved', condition });
  const softGrass = (condition: 'dry' | 'wet', length?: string) => grass(condition, length, 'soft');

  it.each([
    ['easa-class-b', 'takeoff', grass('dry'), [1.2]],
    ['easa-class-b', 'takeoff', grass('wet'), [1.3]],
    ['easa-class-b', 'takeoff', grass('wet', 'very short'), [1.3]],
    ['easa-class-b', 'takeoff', paved('wet'), [1]],
    ['easa-class-b', 'landing', grass('dry'), [1.15]],
    ['easa-class-b', 'landing', grass('wet'), [1.15, 1.15]],
    ['easa-class-b', 'landing', grass('wet', 'very short'), [1.6]],
    ['easa-class-b', 'landing', paved('wet'), [1.15]],
    ['uk-light-aeroplane-leaflet', 'takeoff', grass('dry'), [1.2]],
    ['uk-light-aeroplane-leaflet', 'takeoff', grass('wet'), [1.3]],
    ['uk-light-aeroplane-leaflet', 'takeoff', grass('wet', 'very short'), [1.3]],
    ['uk-light-aeroplane-leaflet', 'takeoff', softGrass('dry'), [1.2, 1.25]],
    ['uk-light-aeroplane-leaflet', 'takeoff', softGrass('wet'), [1.3, 1.25]],
    ['uk-light-aeroplane-leaflet', 'landing', grass('dry'), [1.15]],
    ['uk-light-aeroplane-leaflet', 'landing', grass('wet'), [1.35]],
    ['uk-light-aeroplane-leaflet', 'landing', grass('wet', 'very short'), [1.6]],
    ['uk-light-aeroplane-leaflet', 'landing', softGrass('dry'), [1.15, 1.25]],
    ['uk-light-aeroplane-leaflet', 'landing', softGrass('wet', 'very short'), [1.6, 1.25]],
  ] as const)('%s, %s on %o: %j', (set, phase, surface, factors) => {
    const effect = surfaceEffect(factorSets[set][phase], surface);
    expect(effect.factors.map(({ factor }) => factor)).toEqual(factors);
    expect(effect.uncovered).toEqual([]);
  });
});

describe('10: a favourable slope earns nothing, and it is said', () => {
  const law = { change: percent(10), per: percent(1), upTo: percent(3) };

  it.each([
    ['downhill at take-off', takeoff('takeoff-28')],
    [
      'downhill at take-off beside a law of the manual',
      takeoff('takeoff-28', { [`${data('takeoff')}.corrections.adverseSlope`]: law }),
    ],
    ['uphill at landing', landing('landing-10')],
    [
      'uphill at landing beside a law of the manual',
      landing('landing-10', { [`${data('landing')}.corrections.adverseSlope`]: law }),
    ],
  ])('%s', (_name, assessment) => {
    expect(factorOf(assessment, 'slope')).toBeUndefined();
    expect(decisionsOf(assessment)).toContain('slope-no-credit');
  });
});

describe('11: to go without a safety factor must be chosen, and then stands at the head', () => {
  it('a request that does not mention it gets the factor of the set', () => {
    for (const [silent, chosen] of [
      [takeoff('takeoff-28', { safetyFactor: undefined }), takeoff('takeoff-28')],
      [landing('landing-10', { safetyFactor: undefined }), landing('landing-10')],
    ] as const) {
      expect(factorOf(silent, 'safety factor')).toBeGreaterThan(1.2);
      expect(silent.criteria).toEqual(chosen.criteria);
    }
  });

  it('a landing without it compares the corrected distance itself', () => {
    const assessment = landing('landing-10', { safetyFactor: 'none' });
    const corrected = totals(landing('landing-10'))['speed addition'] as number;
    expect(judged(assessment, 'landing-distance')).toMatchObject({ value: Math.ceil(corrected), limit: 830 });
    expect(assessment.headline.find(({ code }) => code === 'safety-factor-none')?.text).toContain('corrected distance');
  });
});

describe('12: what is only recalled decides nothing, what is second-hand is named, and the tightest is named first', () => {
  const wetPaved = { ...leaflet, ...on({ kind: 'paved', condition: 'wet' }) };
  const confirming = (factorId: string) => ({
    policies: { confirmations: [{ factorId, edition: '7c', date: '2026-07-14' }] },
  });

  it('the run and the obstacles wait for the confirmation as the distance does', () => {
    const verdicts = (changes: Changes) => {
      const assessment = takeoff('takeoff-10', { ...wetPaved, ...changes });
      return ['takeoff-run', 'takeoff-distance', 'obstacle'].map((id) => criterion(assessment, id).verdict);
    };
    expect(verdicts({})).toEqual(['undetermined', 'undetermined', 'undetermined']);
    expect(verdicts(confirming('uk-leaflet-takeoff-paved-wet'))).toEqual(['within', 'within', 'outside']);
  });

  it('a recalled safety factor in a set that a user brings waits as well, and can be confirmed', () => {
    const { 'easa-class-b': set } = factorSets;
    const test = { id: 'club-tora', against: 'TORA', factor: 1.25, locator: 'club book', access: 'recalled' };
    const club = {
      ...set,
      takeoff: { ...set.takeoff, safety: [{ needs: 'nothing', tests: [test] }] },
      landing: { ...set.landing, safety: { ...set.landing.safety, id: 'club-lda', access: 'recalled' } },
    };
    const up = (changes: Changes) =>
      criterion(takeoff('takeoff-28', { factorSet: club, ...changes }), 'takeoff-distance').verdict;
    const down = (changes: Changes) =>
      criterion(landing('landing-10', { factorSet: club, ...changes }), 'landing-distance').verdict;
    expect([up({}), down({})]).toEqual(['undetermined', 'undetermined']);
    expect([up(confirming('club-tora')), down(confirming('club-lda'))]).toEqual(['within', 'within']);
  });

  it('a second-hand factor is named in the headline of a landing too', () => {
    const named = landing('landing-10').headline.find(({ code }) => code === 'second-hand-factors');
    expect(named?.text).toContain('grass up to 20 cm on firm soil x 1.15');
  });

  const tightest = (changes: Changes) =>
    takeoff('takeoff-28', changes).headline.find(({ code }) => code === 'verdict-with-limiting')?.parameters[
      'criterion'
    ];

  it('the smallest share of a limit is the tightest, not the smallest figure', () => {
    const calm = { source: 'METAR', from: { value: 360, unit: 'degTrue' }, speed: { value: 0, unit: 'kt' } };
    // 110 of 1 050 kg, 165 of 830 m, 5 of 5 kt.
    expect(tightest({ 'weather.wind': calm })).toBe('mass');
  });

  it('what is outside comes before what is undetermined', () => {
    expect(tightest({ 'mass.value': 1051, 'runway.obstacles': undefined })).toBe('mass');
  });
});

describe('13: what a surface or a slope adds to the distance is rolled, all of it', () => {
  /** 240 m of roll in 485 m: 950 kg at 2 000 ft and 20 °C, in calm air, with no safety factor. */
  const printed: Changes = {
    'mass.value': 950,
    'runway.ends.0.elevation.value': 2000,
    'runway.ends.1.elevation.value': 2000,
    'runway.obstacles': [],
    'weather.wind': { source: 'METAR', from: { value: 360, unit: 'degTrue' }, speed: { value: 0, unit: 'kt' } },
    'weather.temperature.value': 20,
    'weather.qnh.value': 1013.25,
    safetyFactor: 'none',
  };

  it.each([
    ["the set's 20 %", {}, 97],
    ["the manual's own 30 %", own('takeoff', 'dry', 30), 145.5],
  ])('%s of the distance lengthens the run by as many metres', (_name, changes, added) => {
    const assessment = takeoff('takeoff-28', { ...printed, ...changes });
    expect(judged(assessment, 'takeoff-run').value).toBe(Math.ceil(240 + added));
    expect(judged(assessment, 'takeoff-distance').value).toBe(Math.ceil(485 + added));
  });
});

/** Guards that stood before these, by the number under which they belong. */
const elsewhere: readonly (readonly [number, string, string])[] = [
  [1, 'nothing-silent', 'is left out of its tables only: the climb keeps half the headwind'],
  [1, 'nothing-silent', "from above is not displaced by the manual's figure for another wet grass"],
  [2, 'chart', 'credits the headwind of the panel by the accountability'],
  [3, 'variants', 'long grass and snow have none'],
  [3, 'variants', 'has no figure for heat under a set without a rule for it'],
  [4, 'nothing-silent', "from above proves nothing once the manual's milder figure exceeds it"],
  [6, 'variants', 'soft ground is "at least 1.25" in the leaflet: it can prove outside, never within'],
  [6, 'variants', 'soft ground has no factor in the class B set: undetermined, with what it may cost'],
  [6, 'nothing-silent', 'of the touchdown are not given on a factor that is a lower bound'],
  [6, 'variants', 'very short wet grass is "at most 1.60": it can prove within, never outside'],
  [6, 'nothing-silent', 'from below proves no obstacle within'],
  [7, 'printed-laws', 'hold in a straight line and multiply in the order of the trade'],
  [7, 'demo', 'is within limits, step by step as recomputed'],
  [8, 'printed-laws', 'hold in a straight line and multiply in the order of the trade'],
  [8, 'printed-laws', 'have no figure beyond their last value'],
  [8, 'variants', 'a slope beyond 2 % has no factor under the class B set'],
  [10, 'table-axes', 'costs uphill at take-off, and gives no credit downhill'],
  [10, 'table-axes', 'costs downhill at landing'],
  [11, 'variants', 'put into the headline that no safety factor was applied'],
  [11, 'variants', 'give its own figures back, 240 and 485 m'],
  [
    11,
    '../study/compare-factor-sets',
    'on a level paved runway has a figure under every set, and says where none asks for a margin',
  ],
  [12, 'variants', 'decides nothing until it is confirmed'],
  [12, 'variants', 'is not confirmed by confirming another, and a confirmation of nothing is a fault'],
  [12, 'demo', 'names in its headline the factor that is known at second hand'],
  [13, 'demo', 'has its marks on the ground'],
  [13, 'demo', 'has its latest touchdown point, and flies half the gust increment faster'],
  [13, 'printed-laws', 'of a slope in percent of the ground roll add the same metres to both'],
];

describe('guarded elsewhere', () => {
  it.each(elsewhere)('%i: %s: %s', (_number, file, title) => {
    const text = readFileSync(new URL(`${file}.test.ts`, import.meta.url), 'utf8');
    expect([`it('${title}'`, `it("${title}"`].some((start) => text.includes(start))).toBe(true);
  });
});
