import { describe, expect, it } from 'vitest';
import { type Changes, codes, criterion, judged, landing, totals } from './scenario.ts';

type Assessment = ReturnType<typeof landing>;

const said = (sentences: Assessment['reasons'], code: string) =>
  sentences.find((each) => each.code === code)?.parameters;
const noteOf = (changes: Changes, code: string, name = 'landing-10') => said(landing(name, changes).dataNotes, code);
const feet = (value: number) => ({ value, unit: 'ftHeight' });
const metres = (value: number) => ({ value, unit: 'm' });
const approachSpeed = 'performanceData.landing.0.approachSpeed';
/** Speeds printed for two masses in kg. */
const speeds = (values: [number, number], cells: [number, number]) => ({
  axes: [{ quantity: 'mass', unit: 'kg', values }],
  unit: 'kias',
  cells,
});
const lightOnly = speeds([800, 900], [55, 57]);
const noGust = { 'weather.wind.gust': undefined };
const decisions = ({ trace }: Assessment) => trace.flatMap((entry) => (entry.kind === 'decision' ? [entry.code] : []));

/** A row of trees before the threshold of 10, on its level. */
const trees = (name: string, height_ft: number, before_m: number) => ({
  name,
  end: '10',
  beyond: metres(before_m),
  height: feet(height_ft),
  groundElevation: { value: 387, unit: 'ftElevation' },
});

// 62 KIAS are 63.3 KCAS; at 636.58 ft and 26 °C, a density ratio of 0.94128, 65.245 KTAS.
describe('the approach', () => {
  it('goes down at the ground speed times the tangent of 3°', () => {
    // Less 0.728 kt of headwind 64.517 kt: x 101.2686 x 0.0524078 = 342.4 ft/min. In 3.534 kt of tailwind 68.779 kt, 365.0.
    expect(noteOf({}, 'approach-rate')).toEqual({ angle_deg: 3, groundSpeed_kt: 65, rate_ftPerMin: 350 });
    expect(noteOf({}, 'approach-rate', 'landing-28')).toMatchObject({ groundSpeed_kt: 69, rate_ftPerMin: 370 });
  });

  it('warns with the rate and the limit where that is more than a thousand feet a minute', () => {
    // x tan 9.5°, 0.167343: 1 093.4 ft/min.
    const steep = landing('landing-10', { 'policies.approachAngle.value': 9.5 });
    expect(said(steep.hazards, 'hazard-approach-rate')).toMatchObject({ rate_ftPerMin: 1100, limit_ftPerMin: 1000 });
    expect(said(steep.hazards, 'hazard-steep-approach')).toEqual({ angle_deg: 9.5 });
  });

  it('has no rate without a calibrated speed, and none in a wind of half its speed', () => {
    expect(noteOf({ 'performanceData.calibrations': [] }, 'approach-rate')).toBeUndefined();
    expect(noteOf({ [approachSpeed]: lightOnly }, 'approach-rate')).toBeUndefined();
    const wind = (knots: number): Changes => ({
      'performanceData.landing.0.corrections.headwind.upTo.value': 50,
      'weather.wind': {
        source: 'METAR',
        from: { value: 112, unit: 'degTrue' },
        speed: { value: knots, unit: 'kt' },
      },
    });
    // 57 KIAS are 60.92 KTAS; half of 60 kt is used, and half of 64.
    expect(noteOf(wind(60), 'approach-rate')).toMatchObject({ groundSpeed_kt: 31 });
    expect(noteOf(wind(64), 'approach-rate')).toBeUndefined();
  });

  it('aims at its point as a share of the runway, from the painted end', () => {
    const aim = (name: string) => {
      const mark = landing(name).marks.find(({ id }) => id === 'aiming-point');
      return [mark?.at?.value, mark?.shareOfRunway?.value, codes(mark?.reasons ?? [])];
    };
    // 15.24 m / tan 3° = 290.8 m. Of 830 m; of 700 m, from a threshold displaced by 60 m.
    expect(aim('landing-10')).toEqual([291, 35, ['mark-aiming-basis']]);
    expect(aim('quarry-landing-04')).toEqual([291, 50, ['mark-aiming-basis']]);
  });
});

describe('the path that would lose nothing', () => {
  const path = (obstacles: readonly object[]) =>
    noteOf({ 'runway.obstacles': obstacles }, 'approach-angle-without-loss');

  it('is named with its rate of descent', () => {
    // 100 + 30 - 50 ft, 24.384 m, in 400 m: 0.06096, 3.49°; 64.517 kt x 101.2686 x 0.06096 = 398.3 ft/min.
    expect(path([trees('poplars', 100, 400)])).toEqual({ angle_deg: 3.5, rate_ftPerMin: 400 });
  });

  it('passes the steepest of several', () => {
    const [far, near] = [trees('poplars', 100, 400), trees('hedge', 70, 150)];
    // 50 ft in 150 m: 0.1016, 5.80°.
    for (const obstacles of [
      [far, near],
      [near, far],
    ])
      expect(path(obstacles)).toMatchObject({ angle_deg: 5.9 });
  });

  it('is not named where nothing is lost, and not above 15°', () => {
    expect(path([trees('poplars', 40, 400)])).toBeUndefined();
    const pines = (before_m: number) =>
      noteOf({ 'runway.obstacles.0.beyond.value': before_m }, 'approach-angle-without-loss', 'landing-28');
    // 28 m + 30 ft - 50 ft, 21.904 m, in 82 m are 14.96°, in 80 m 15.31°.
    expect(pines(82)).toMatchObject({ angle_deg: 15 });
    expect(pines(80)).toBeUndefined();
    for (const before_m of [0, 0.5, 1]) expect(pines(before_m)).toBeUndefined();
  });

  it('and the loss count from a displaced threshold, at its own level', () => {
    const bank = { 'runway.obstacles.0.height': { value: 25, unit: 'mHeight' } };
    // The threshold stands 0.3048 % of 60 m, 0.183 m, above the end. 24.817 m in 100 m: 13.94°.
    expect(noteOf(bank, 'approach-angle-without-loss', 'quarry-landing-04')).toMatchObject({ angle_deg: 14 });
    // (24.817 - 100 x 0.0524078) / 0.0524078 = 373.5 m.
    const { reasons } = landing('quarry-landing-04', bank);
    expect(said(reasons, 'approach-loss')).toEqual({ lost_m: 374, obstacle: 'haul road bank', angle_deg: 3 });
  });
});

describe('what obstacles take off the distance', () => {
  it('is the most that one of them takes', () => {
    const [far, near] = [trees('poplars', 100, 400), trees('hedge', 70, 150)];
    // 24.384 m / 0.0524078 - 400 m = 65.3 m, and 15.24 m / 0.0524078 - 150 m = 140.8 m.
    for (const obstacles of [
      [far, near],
      [near, far],
    ]) {
      const assessment = landing('landing-10', { 'runway.obstacles': obstacles });
      expect(said(assessment.reasons, 'approach-loss')).toEqual({ lost_m: 141, obstacle: 'hedge', angle_deg: 3 });
      expect(judged(assessment, 'landing-distance')).toMatchObject({ limit: 689 });
    }
  });

  it('is not known on a path that is flatter than the runway falls', () => {
    // 98 ft, 29.870 m, down in 830 m are 3.599 %; tan 2° is 3.492 %, tan 2.1° 3.667 %.
    const steep = (angle_deg: number) =>
      landing('landing-28', {
        'runway.ends.0.elevation.value': 340,
        'policies.approachAngle.value': angle_deg,
      });
    expect(said(steep(2).reasons, 'approach-too-flat')).toEqual({
      angle_deg: 2,
      slope_percent: expect.closeTo(3.5988, 4),
    });
    expect(criterion(steep(2), 'landing-distance')).toMatchObject({ verdict: 'undetermined', limit: { value: 830 } });
    expect(codes(steep(2.1).reasons)).not.toContain('approach-too-flat');
    expect(codes(landing('landing-10', { 'policies.approachAngle.value': 2 }).reasons)).toEqual([]);
  });
});

describe('an addition to the approach speed', () => {
  it('of nothing costs nothing, in whatever gusts', () => {
    const none = landing('landing-10', { approachSpeedAddition: { value: 0, unit: 'kt' } });
    expect(totals(none)['speed addition']).toBeUndefined();
    expect(none.speeds[0]).toMatchObject({ speed: { value: 57 } });
  });

  it('asks for the speed of the table, and nothing else does', () => {
    const notAt1050 = {
      [approachSpeed]: speeds([850, 1000], [54, 57]),
    };
    const gusting = landing('landing-10', notAt1050);
    expect(said(criterion(gusting, 'landing-distance').reasons as never, 'off-table')).toMatchObject({ given: 1050 });
    expect(gusting.speeds.filter(({ name }) => name === 'approach')).toEqual([]);
    const calm = landing('landing-10', { ...notAt1050, ...noGust });
    expect(calm.verdict).toBe('within');
    // 54 + 3 x 90 / 150 = 55.8 KIAS.
    expect(calm.speeds[0]).toMatchObject({ name: 'approach', speed: { value: 56 } });
  });

  it('is not missed in air without gusts, where no speed is printed for the mass', () => {
    expect(judged(landing('landing-10', { [approachSpeed]: lightOnly, ...noGust }), 'landing-distance')).toEqual(
      judged(landing('landing-10', noGust), 'landing-distance'),
    );
  });

  it('has no price without a calibration', () => {
    const assessment = landing('landing-10', { 'performanceData.calibrations': [] });
    expect(criterion(assessment, 'landing-distance').reasons.map(({ code, parameters }) => [code, parameters])).toEqual(
      [['no-calibration', { flap: '35', speed_kias: 62, purpose: 'the cost of the speed addition' }]],
    );
  });

  it('earns nothing where it leaves the approach slower than the table', () => {
    const lighter = {
      [approachSpeed]: speeds([850, 1050], [49, 57]),
      'mass.value': 850,
    };
    // 49 + 5 KIAS against the 57 of 1 050 kg; with 8 kt more they are the same.
    const light = landing('landing-10', lighter);
    expect(totals(light)['speed addition']).toBeUndefined();
    expect(decisions(light)).not.toContain('speed-addition-paid');
    const same = landing('landing-10', { ...lighter, approachSpeedAddition: { value: 8, unit: 'kt' } });
    expect(totals(same)['speed addition']).toBeUndefined();
  });

  it('and the excess height are not counted where the distance has no figure', () => {
    const snow = landing('landing-10', {
      'runway.surface': { kind: 'snow' },
      'policies.speedAdditionInDistance': 'ignored',
      excessHeight: feet(10),
    });
    expect(decisions(snow)).not.toContain('speed-addition-ignored');
    expect(decisions(snow)).not.toContain('excess-height-paid');
    expect(criterion(snow, 'landing-distance').reasons.map(({ code }) => code)).toEqual(['surface-no-factor']);
  });
});

describe('a landing distance that contains its safety factor', () => {
  it('is compared as it is', () => {
    const assessment = landing('landing-10', { 'performanceData.landing.0.includes.safetyFactor': true });
    // 438.4 m x (63.3 / 59.1)² = 502.9 m.
    expect(judged(assessment, 'landing-distance')).toEqual({ verdict: 'within', value: 503, limit: 830, margin: 327 });
  });
});
