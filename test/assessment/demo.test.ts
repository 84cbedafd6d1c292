import { describe, expect, it } from 'vitest';
import * as again from './recompute.ts';
import { codes, criterion, judged, landing, takeoff, totals, turning } from './scenario.ts';

const rounded = (stairs: Record<string, number>) =>
  Object.fromEntries(Object.entries(stairs).map(([step, metres]) => [step, Number(metres.toFixed(1))]));

/** The recomputation's stairs under the names of an assessment. */
function expected({ required, ...steps }: Record<string, number> & { required: number }) {
  return rounded({ ...steps, 'safety factor': required });
}

const parametersOf = (sentences: readonly { code: string; parameters: object }[], code: string) =>
  sentences.find((each) => each.code === code)?.parameters;

/** Every criterion in its order: id, status, value, limit, margin. */
const list = (assessment: ReturnType<typeof takeoff> | ReturnType<typeof landing>) =>
  assessment.criteria.map((each) =>
    each.verdict === 'undetermined'
      ? [each.id, each.limitStatus, each.verdict]
      : [each.id, each.limitStatus, each.verdict, each.value.value, each.limit.value, each.margin.value],
  );

const windLimits = (tail: number) => [
  ['crosswind', 'demonstrated', 'within', 17, 19, 2],
  ['crosswind', 'personal', 'within', 17, 18, 1],
  ['tailwind', 'limitation', 'within', tail, 8, 8 - tail],
  ['tailwind', 'personal', 'within', tail, 5, 5 - tail],
];

describe('the recomputation', () => {
  it('gives the figures that the scenario was written down with', () => {
    const [on28, on10, down10, down28] = [
      again.takeoff('28'),
      again.takeoff('10'),
      again.landing('10'),
      again.landing('28'),
    ];
    expect([on28.required, on28.margin, on10.required, on10.margin]).toEqual([771, 59, 722, 108]);
    expect([down10.required, down10.margin, down28.required, down28.available]).toEqual([719, 111, 903, 218]);
    expect(expected(on28.stairs)).toEqual({ manual: 443, wind: 513.5, surface: 616.2, 'safety factor': 770.2 });
    expect(again.marksOn28()).toEqual({
      latestLiftOff: 573,
      accelerationCheck: 286,
      speedDue: 34,
      latestReject: 547,
      shares_percent: [69, 34, 66],
    });
    expect(again.breakEvensOn28()).toEqual({ tailwind: 5.5, 'surface factor': 1.293, mass: 970, temperature: 35 });
    expect(down10.latestTouchdown).toBe(564);
  });
});

describe('take-off on 28', () => {
  const assess = () => takeoff('takeoff-28');
  const by = again.takeoff('28');

  it('is within limits, step by step as recomputed', () => {
    expect(assess().verdict).toBe('within');
    expect(totals(assess())).toEqual(expected(by.stairs));
    expect(assess().stairs?.required.value).toBe(by.required);
    expect(assess().stairs?.available.value).toBe(830);
  });

  it('meets every criterion', () => {
    expect(list(assess())).toEqual([
      ['mass', 'limitation', 'within', 940, 1050, 110],
      ['takeoff-run', 'distance available', 'within', by.runRequired, 830, 830 - by.runRequired],
      ['takeoff-distance', 'distance available', 'within', by.required, 830, by.margin],
      ...windLimits(4),
    ]);
  });

  it('turns where the recomputation turns', () => {
    expect(turning(assess())).toEqual(again.breakEvensOn28());
  });

  it('has its marks on the ground', () => {
    const { latestLiftOff, accelerationCheck, speedDue, latestReject, shares_percent: shares } = again.marksOn28();
    const marks = assess().marks.map(({ id, at, speed, shareOfRunway }) => [
      id,
      at?.value,
      shareOfRunway?.value,
      speed?.value,
    ]);
    expect(marks).toEqual([
      ['latest-lift-off', latestLiftOff, shares[0], undefined],
      ['acceleration-check', accelerationCheck, shares[1], speedDue],
      ['latest-reject-point', latestReject, shares[2], undefined],
    ]);
  });

  it('shows the wind 5° to either side', () => {
    const note = parametersOf(assess().dataNotes, 'wind-near-abeam');
    expect(note).toMatchObject({
      first: `take-off distance ${again.takeoff('28', 185).required} m, within limits`,
      second: `take-off distance ${again.takeoff('28', 195).required} m, within limits`,
    });
    const said = assess().dataNotes.find(({ code }) => code === 'wind-near-abeam');
    // 185° lies anticlockwise of the reported 190°.
    expect(said?.text).toContain('5° backed (anticlockwise) take-off distance 814 m');
    expect(said?.text).toContain('5° veered (clockwise) take-off distance 727 m');
    expect([again.takeoff('28', 185).required, again.takeoff('28', 195).required]).toEqual([814, 727]);
  });

  it('states the air', () => {
    const altitude = parametersOf(assess().headline, 'pressure-altitude') as { pressureAltitude_ft: number };
    expect(altitude.pressureAltitude_ft).toBeCloseTo(again.pressureAltitude_ft, 1);
    expect(Math.round(altitude.pressureAltitude_ft)).toBe(637);
    const density = parametersOf(assess().dataNotes, 'density-altitude');
    expect(density).toEqual({ densityAltitude_ft: Math.ceil(again.densityAltitude_ft) });
    expect(density).toEqual({ densityAltitude_ft: 2054 });
    const humid = parametersOf(assess().dataNotes, 'humid-density-altitude') as { densityAltitude_ft: number };
    expect(humid).toEqual({ densityAltitude_ft: 2288 });
    expect(Math.abs(humid.densityAltitude_ft - again.humidDensityAltitude())).toBeLessThan(1);
  });

  it('names in its headline the factor that is known at second hand', () => {
    expect(codes(assess().headline)).toEqual(['verdict-with-limiting', 'pressure-altitude', 'second-hand-factors']);
    expect(assess().headline[2]?.text).toContain('dry grass up to 20 cm on firm soil x 1.20');
  });
});

describe('take-off on 10', () => {
  const assess = () => takeoff('takeoff-10');
  const by = again.takeoff('10');
  const factored = again.climbOut(by.stairs.required, by.used);
  const expectedPath = again.climbOut(by.corrected, by.used);

  it('is outside limits for the trees alone, step by step as recomputed', () => {
    expect(assess().verdict).toBe('outside');
    expect(totals(assess())).toEqual(expected(by.stairs));
    expect(list(assess()).filter(([, , verdict]) => verdict !== 'within')).toEqual([
      ['obstacle', 'clearance asked', 'outside', 10.8, 22.5, -11.7],
    ]);
    expect(judged(assess(), 'takeoff-distance')).toMatchObject({ value: by.required, margin: by.margin });
    expect(judged(assess(), 'takeoff-run')).toMatchObject({ value: by.runRequired });
  });

  it('needs the gradient and passes the trees as recomputed', () => {
    expect(judged(assess(), 'obstacle')).toMatchObject({
      value: Math.floor(factored.achieved_percent * 10) / 10,
      limit: Math.ceil(factored.required_percent * 10) / 10,
    });
    const [reason] = criterion(assess(), 'obstacle').reasons;
    expect(reason?.parameters).toMatchObject({
      factored_ft: Math.floor(factored.clearance_ft),
      unfactored_ft: Math.floor(expectedPath.clearance_ft),
    });
    expect(reason?.parameters).toMatchObject({ factored_ft: -1, unfactored_ft: 41, clearance_ft: 50 });
  });

  it('shows the gradient achieved and the one that the trees ask for', () => {
    expect(assess().climbOut).toEqual({
      achieved: { value: expect.closeTo(factored.achieved_percent, 2), unit: 'percent' },
      obstacles: [
        { name: 'pines', required: { value: expect.closeTo(factored.required_percent, 2), unit: 'percent' } },
      ],
    });
  });

  it('meets every other criterion', () => {
    expect(list(assess()).filter(([id]) => id === 'crosswind' || id === 'tailwind')).toEqual(windLimits(0));
  });

  it('has no mark, because no roll of today clears the trees', () => {
    expect(assess().marks.map(({ at, reasons }) => [at, codes(reasons)])).toEqual(
      Array.from({ length: 3 }, () => [undefined, ['mark-none-roll']]),
    );
  });

  it('shows the wind 5° to either side', () => {
    const sides = [again.takeoff('10', 185).required, again.takeoff('10', 195).required];
    expect(sides).toEqual([720, 724]);
    expect(parametersOf(assess().dataNotes, 'wind-near-abeam')).toMatchObject({
      first: `take-off distance ${sides[0]} m, within limits`,
      second: `take-off distance ${sides[1]} m, within limits`,
    });
  });
});

describe('landing on 10', () => {
  const assess = () => landing('landing-10');
  const by = again.landing('10');

  it('is within limits, step by step as recomputed', () => {
    expect(assess().verdict).toBe('within');
    expect(totals(assess())).toEqual(expected(by.stairs));
    expect(list(assess())).toEqual([
      ['mass', 'limitation', 'within', 940, 1050, 110],
      ['landing-distance', 'distance available', 'within', by.required, 830, by.margin],
      ...windLimits(0),
    ]);
  });

  it('has its latest touchdown point, and flies half the gust increment faster', () => {
    expect(assess().marks).toContainEqual(
      expect.objectContaining({ id: 'latest-touchdown-point', at: { value: by.latestTouchdown, unit: 'm' } }),
    );
    expect(assess().speeds[0]).toMatchObject({
      name: 'approach',
      speed: { value: 62, unit: 'kias' },
      calibrated: { value: 63.3, unit: 'kcas' },
    });
  });

  it('shows the wind 5° to either side', () => {
    const sides = [again.landing('10', 185).required, again.landing('10', 195).required];
    expect(sides).toEqual([717, 721]);
    expect(parametersOf(assess().dataNotes, 'wind-near-abeam')).toMatchObject({
      first: `landing distance ${sides[0]} m, within limits`,
      second: `landing distance ${sides[1]} m, within limits`,
    });
  });
});

describe('landing on 28', () => {
  const assess = () => landing('landing-28');
  const by = again.landing('28');

  it('is outside limits for what the approach over the trees costs', () => {
    expect(assess().verdict).toBe('outside');
    expect(totals(assess())).toEqual(expected(by.stairs));
    expect(list(assess())).toEqual([
      ['mass', 'limitation', 'within', 940, 1050, 110],
      ['landing-distance', 'distance available', 'outside', by.required, by.available, by.margin],
      ...windLimits(4),
    ]);
    expect(parametersOf(assess().reasons, 'approach-loss')).toMatchObject({ lost_m: by.lost, obstacle: 'pines' });
    expect(by.lost).toBe(612);
  });

  it('has its latest touchdown point', () => {
    expect(assess().marks).toContainEqual(
      expect.objectContaining({ id: 'latest-touchdown-point', at: { value: by.latestTouchdown, unit: 'm' } }),
    );
  });
});
