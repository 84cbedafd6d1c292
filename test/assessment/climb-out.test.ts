import { describe, expect, it } from 'vitest';
import { type Changes, codes, criterion, judged, landing, takeoff } from './scenario.ts';

const climb = 'performanceData.climb.0';
const tables = 'performanceData.takeoff.0';
const constant = (value: number, unit: string) => ({ axes: [], unit, cells: value });
const upTo900kg = { axes: [{ quantity: 'mass', unit: 'kg', values: [800, 900] }], unit: 'kias', cells: [53, 57] };
const off900kg = { quantity: 'mass', given: 940, min: 800, max: 900, unit: 'kg' };

type Assessment = ReturnType<typeof takeoff> | ReturnType<typeof landing>;

const reasons = (changes: Changes) =>
  criterion(takeoff('takeoff-10', changes), 'obstacle').reasons.map(({ code, parameters }) => [code, parameters]);
const inputsOf = ({ trace }: Assessment, record: string) =>
  trace.flatMap((entry) => (entry.kind === 'step' && entry.record === record ? [entry.inputs] : []));
const marks = (assessment: Assessment) =>
  assessment.marks.map(({ id, at, shareOfRunway, speed, reasons: why }) =>
    at === undefined ? [id, codes(why)] : [id, at.value, shareOfRunway?.value, ...(speed ? [speed.value] : [])],
  );

// On 10: 940 kg, 636.58 ft and 26 °C. By hand from the climb table 646.635 ft/min; 57 KIAS are 57.8 KCAS and, at a
// density ratio of 0.94128, 59.576 KTAS; less 0.728 kt of wind 58.848 kt, 5 959.5 ft/min: a gradient of 10.851 %.
describe('without a climb', () => {
  it.each<[string, Changes, unknown]>([
    ['there is no climb table', { 'performanceData.climb': [] }, ['no-climb-data', { configuration: 'flap-15' }]],
    [
      'its rate is not printed for the day',
      {
        [`${climb}.rateOfClimb`]: {
          axes: [{ quantity: 'temperature', unit: 'degC', values: [0, 20] }],
          unit: 'ftPerMin',
          cells: [700, 650],
        },
      },
      ['off-table', { table: 'rate of climb', quantity: 'temperature', given: 26, min: 0, max: 20, unit: 'degC' }],
    ],
    [
      'its speed is not printed for the mass',
      { [`${climb}.speed`]: upTo900kg },
      ['off-table', { table: 'climb speed', ...off900kg }],
    ],
    [
      'its speed has no calibration',
      { [`${climb}.flap`]: '0' },
      ['no-calibration', { flap: '0', speed_kias: 57, purpose: 'the climb gradient' }],
    ],
    [
      'the speed that it starts with is not printed',
      { [`${tables}.speedAtScreenHeight`]: upTo900kg },
      ['off-table', { table: '50 ft speed', ...off900kg }],
    ],
    [
      'the speed that it starts with has no calibration',
      {
        'performanceData.calibrations.0.flap': '0',
        [`${climb}.flap`]: '35',
        [`${climb}.speed`]: constant(60, 'kias'),
      },
      ['no-calibration', { flap: '15', speed_kias: 57, purpose: 'the climb gradient' }],
    ],
  ])('nothing is said of an obstacle, and why: %s', (_why, changes, reason) => {
    expect(reasons(changes)).toEqual([reason]);
    expect(new Set(codes(takeoff('takeoff-10', changes).marks.flatMap((each) => each.reasons)))).toEqual(
      new Set(['mark-not-known']),
    );
  });

  it('nor is it where the distance has no figure', () => {
    expect(reasons({ 'runway.surface': { kind: 'snow' } })).toEqual([['distance-unknown', {}]]);
  });

  it('nothing is missed where no obstacle stands ahead', () => {
    const bare = takeoff('takeoff-28', { 'performanceData.climb': [] });
    expect(bare.verdict).toBe('within');
    expect(marks(bare)).toEqual(marks(takeoff('takeoff-28')));
  });
});

describe('the height given up to gain the climb speed', () => {
  // The path starts 15.24 m above the surface at the factored distance, 721.474 m: 1.8729 % of it is 13.512 m.
  const lost = (changes: Changes) => {
    const [{ startHeight } = {}] = inputsOf(takeoff('takeoff-10', changes), 'flight-path.required-gradient');
    return 15.24 + 13.5122 - (startHeight as number);
  };

  it('is the kinetic energy between the two true airspeeds', () => {
    // 60 KIAS are 60.5 KCAS, 62.36 KTAS, 32.08 m/s; 57 KIAS 30.65 m/s: (1 029.1 - 939.3) / (2 x 9.80665) = 4.58 m.
    expect(lost({ [`${climb}.speed`]: constant(60, 'kias') })).toBeCloseTo(4.58, 2);
  });

  it('counts calibrated speeds where the flaps differ: 57 KIAS are 57.8 KCAS with flap 15 and 59.1 with flap 35', () => {
    // 60.92 KTAS, 31.34 m/s: (982.0 - 939.3) / (2 x 9.80665) = 2.18 m.
    expect(lost({ [`${climb}.flap`]: '35' })).toBeCloseTo(2.18, 2);
  });

  it('is none where the climb is flown no faster, with either flap', () => {
    // 50 KIAS are 53.5 KCAS with flap 35.
    expect(lost({ [`${climb}.flap`]: '35', [`${climb}.speed`]: constant(50, 'kias') })).toBeCloseTo(0, 3);
    expect(lost({ [`${climb}.speed`]: constant(50, 'kias') })).toBeCloseTo(0, 3);
  });

  it('needs no calibration of a start that is no slower with the same flap: 62 KIAS are beyond the printed 60', () => {
    expect(lost({ [`${tables}.speedAtScreenHeight`]: constant(62, 'kias') })).toBeCloseTo(0, 3);
  });

  it('is taken off a path that starts after the unfactored distance too', () => {
    // 577.18 m: 10.810 m of surface.
    const [, unfactored] = inputsOf(
      takeoff('takeoff-10', { [`${climb}.flap`]: '35' }),
      'flight-path.obstacle-clearance',
    );
    expect(unfactored?.['startHeight']).toBeCloseTo(15.24 + 10.81 - 2.18, 2);
    expect(unfactored?.['distance']).toBeCloseTo(855 - 577.18, 1);
  });
});

describe('an obstacle far beyond a clearway', () => {
  // 600 m of runway, 300 m of clearway; 18 ft, 5.4864 m, up in 600 m: 0.9144 %.
  const farther = (beyond_m: number): Changes => ({
    'runway.length.value': 600,
    'runway.ends.0.elevation.value': 420,
    'runway.ends.0.declaredDistances': { TORA: { value: 600, unit: 'm' }, TODA: { value: 900, unit: 'm' } },
    'runway.ends.1.declaredDistances': undefined,
    'runway.obstacles.0.beyond.value': beyond_m,
  });
  const assessment = takeoff('takeoff-10', farther(450));

  it('is passed on a path that starts beyond the end, from a surface no higher than that end', () => {
    // 443.02 x 0.992723 x 1.2 x 1.04572 x 1.25 = 689.86 m; 28 m of pines in the 1 050 - 689.86 m left.
    expect(judged(assessment, 'obstacle')).toMatchObject({ verdict: 'within', value: 10.8, limit: 7.8 });
    const [inputs] = inputsOf(assessment, 'flight-path.required-gradient');
    expect(inputs?.['startHeight']).toBeCloseTo(15.24 + 5.4864, 6);
    expect(inputs?.['distance']).toBeCloseTo(1050 - 689.86, 1);
  });

  it('is before the path where that starts farther out, and counts from the surface at the end', () => {
    const at = (height_ft: number) =>
      takeoff('takeoff-10', {
        ...farther(50),
        'runway.obstacles.0.height': { value: height_ft, unit: 'ftHeight' },
        'policies.verticalClearance.value': 30,
      });
    // No height is assumed before the 50 ft point: 20 ft and 30 ft of clearance are as much, 19 ft are less.
    expect(judged(at(20), 'obstacle')).toEqual({ verdict: 'outside', value: 49, limit: 50, margin: -1 });
    expect(judged(at(19), 'obstacle')).toEqual({ verdict: 'undetermined' });
  });

  it('has the latest lift-off that its latest 50 ft point leaves', () => {
    // 1 050 m less 28 m / 0.10851 are 791.96 m, less 219.57 m in the air; half of it; 572 of 600 m are 95 %.
    expect(marks(assessment).slice(0, 2)).toEqual([
      ['latest-lift-off', 572, 95],
      ['acceleration-check', 286, 47, 35],
    ]);
  });

  it('is the nearer of two, in whatever order they are listed', () => {
    const [pines] = takeoff('takeoff-10').request.runway.obstacles ?? [];
    const wood = { ...pines, name: 'wood', beyond: { value: 500, unit: 'm' } };
    for (const obstacles of [
      [{ ...pines, beyond: { value: 450, unit: 'm' } }, wood],
      [wood, { ...pines, beyond: { value: 450, unit: 'm' } }],
    ])
      expect(marks(takeoff('takeoff-10', { ...farther(450), 'runway.obstacles': obstacles }))).toEqual(
        marks(assessment),
      );
  });
});

describe('a climb that does not gain on the runway', () => {
  it.each([-100, 0, 100])('leaves no mark: %i ft/min, 1.7 % a hundred, against 1.87 %', (rate) => {
    const assessment = takeoff('takeoff-10', { [`${climb}.rateOfClimb`]: constant(rate, 'ftPerMin') });
    expect(criterion(assessment, 'obstacle').verdict).toBe('outside');
    expect(new Set(codes(assessment.marks.flatMap((each) => each.reasons)))).toEqual(new Set(['mark-none-obstacles']));
  });

  it.each([-100, 0])('leaves none downhill either: %i ft/min', (rate) => {
    const mast = { name: 'mast', end: '10', beyond: { value: 600, unit: 'm' }, height: { value: 5, unit: 'mHeight' } };
    const assessment = takeoff('takeoff-28', {
      'runway.obstacles': [{ ...mast, groundElevation: { value: 387, unit: 'ftElevation' } }],
      [`${climb}.rateOfClimb`]: constant(rate, 'ftPerMin'),
    });
    expect(new Set(codes(assessment.marks.flatMap((each) => each.reasons)))).toEqual(new Set(['mark-none-obstacles']));
  });
});

describe('going around', () => {
  const balked = 'performanceData.climb.1';
  const latest = (changes: Changes, name = 'landing-10') =>
    marks(landing(name, changes)).find(([id]) => id === 'latest-go-around-point');
  const far = { 'runway.obstacles.0.beyond.value': 600 };

  it('clears what stands ahead from the surface, wherever it begins', () => {
    // 387.18 ft/min at 57 KIAS, 59.1 KCAS, 60.92 KTAS, less 0.73 kt: 6.352 %. The pines' tops stand 43.545 m above the
    // threshold: (0.06352 x 1 430 - 43.545 - 15.24) / (0.06352 - 0.01873) = 715.5 m, 86 % of 830 m.
    expect(latest(far)).toEqual(['latest-go-around-point', 715, 86]);
  });

  it('counts the height given up where it climbs faster than it approached', () => {
    // 65 KIAS are 66 KCAS, 68.03 KTAS, 35.00 m/s; approached with 62 KIAS, 63.3 KCAS, 65.25 KTAS, 33.57 m/s: 4.99 m.
    // 387.18 / ((68.03 - 0.73) x 101.269) = 5.681 %: (81.24 - 58.785 - 4.99) / (0.05681 - 0.01873) = 458.7 m.
    expect(latest({ ...far, [`${balked}.speed`]: constant(65, 'kias') })).toEqual(['latest-go-around-point', 458, 55]);
  });

  it('has no point where the climb does not gain on the runway, or nothing is known of it', () => {
    for (const rate of [-100, 0, 100])
      expect(latest({ ...far, [`${balked}.rateOfClimb`]: constant(rate, 'ftPerMin') })).toEqual([
        'latest-go-around-point',
        ['mark-none-obstacles'],
      ]);
    expect(latest({ ...far, [`${balked}.speed`]: upTo900kg })).toEqual(['latest-go-around-point', ['off-table']]);
    expect(latest({ ...far, 'performanceData.landing.0.approachSpeed': upTo900kg })).toEqual([
      'latest-go-around-point',
      ['off-table'],
    ]);
  });

  it('has no point beyond the far end, where nobody could begin', () => {
    const pinesAt = (beyond_m: number) => ({ 'runway.obstacles.0.beyond.value': beyond_m });
    // (0.06352 x (830 + b) - 58.785) / (0.06352 - 0.01873) is 829 m for b = 680 m and 832 m for b = 682 m.
    expect(latest(pinesAt(680))).toEqual(['latest-go-around-point', 829, 99]);
    expect(latest(pinesAt(682))).toEqual(['latest-go-around-point', ['mark-go-around-throughout']]);
    expect(latest(pinesAt(1500))).toEqual(['latest-go-around-point', ['mark-go-around-throughout']]);
    // From a threshold 60 m in, that end is 770 m away.
    const displaced = {
      'runway.ends.0.displacedThreshold': { value: 60, unit: 'm' },
      'runway.ends.0.declaredDistances': undefined,
    };
    expect(latest({ ...pinesAt(680), ...displaced })).toEqual(['latest-go-around-point', 769, 99]);
    expect(latest({ ...pinesAt(682), ...displaced })).toEqual([
      'latest-go-around-point',
      ['mark-go-around-throughout'],
    ]);
    expect(codes(landing('landing-10', pinesAt(1500)).hazards)).not.toContain('hazard-no-go-around');
  });

  it('is not looked at where nothing stands ahead, or no climb is printed', () => {
    expect(latest({}, 'landing-28')).toBeUndefined();
    expect(latest({ 'runway.obstacles': undefined })).toBeUndefined();
    expect(latest({ 'performanceData.climb': [] })).toBeUndefined();
  });

  it('is the earliest of several points, counted from a displaced threshold', () => {
    const [pines] = landing('landing-10').request.runway.obstacles ?? [];
    const wood = { ...pines, name: 'wood', beyond: { value: 700, unit: 'm' } };
    const displaced = {
      'runway.obstacles': [wood, { ...pines, beyond: { value: 600, unit: 'm' } }],
      'runway.ends.0.displacedThreshold': { value: 60, unit: 'm' },
      'runway.ends.0.declaredDistances': undefined,
    };
    expect(latest(displaced)).toEqual(['latest-go-around-point', 655, 86]);
  });
});
