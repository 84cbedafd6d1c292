import { describe, expect, it } from 'vitest';
import type { TraceEntry } from '../../src/assessment/kernel/step.ts';
import type { SentenceCode } from '../../src/assessment/result/sentences.ts';
import { Working } from '../../src/assessment/result/steps-behind.ts';

/** A trace of steps by label, some with an output; null is a decision, which is no step. */
const working = (...labels: (string | null | [label: string, output: unknown])[]) =>
  new Working(
    labels.map((each): TraceEntry => {
      if (each === null) return { kind: 'decision', code: 'tables-read-dry', parameters: {} };
      const [label, output] = typeof each === 'string' ? [each, undefined] : each;
      return { kind: 'step', label, record: '', inputs: {}, output };
    }),
  );
const stairs = (...steps: string[]) => steps.map((step) => ({ step }));

describe('a tread of the stairs', () => {
  it('of the manual rests on the pressure altitude, the virtual temperature and the first readings', () => {
    const found = working(
      'pressure altitude',
      'density altitude',
      'virtual temperature',
      'wind used',
      'ground roll',
      null,
      'distance',
      'ground roll',
      'distance',
    );
    expect(found.stair('manual', stairs('manual', 'wind'), 400)).toEqual([0, 2, 4, 6]);
    expect(found.stair('wind', stairs('manual', 'wind'), 400)).toEqual([3, 7, 8]);
  });

  it('of the wind rests on its components, the last wind used, and its own factor or the reading along it', () => {
    const law = working(
      'wind components',
      'wind used',
      'wind used',
      'ground roll',
      'distance',
      'factor for wind',
      'distance with wind',
      'ground roll with wind',
      'distance with slope',
    );
    expect(law.stair('wind', stairs('manual', 'wind', 'slope'), 400)).toEqual([0, 2, 5, 6, 7]);
    expect(law.stair('manual', stairs('manual', 'wind', 'slope'), 400)).toEqual([3, 4]);
  });

  it.each([
    'factor for mass',
    'factor for the mass',
    'distance for mass',
    'distance with mass',
    'ground roll with mass',
  ])('of the mass rests on a step called "%s"', (label) => {
    expect(working('ground roll', 'distance', label).stair('mass', stairs('manual', 'mass'), 400)).toEqual([2]);
  });

  it('along which the table runs itself rests on its own readings, in the order of the treads', () => {
    const found = working(
      'ground roll',
      'distance',
      'factor for temperature',
      'distance with temperature',
      'ground roll',
      'distance',
      'ground roll',
      'distance',
    );
    const all = stairs('manual', 'temperature', 'wind', 'slope');
    expect(found.stair('manual', all, 400)).toEqual([0, 1]);
    expect(found.stair('wind', all, 400)).toEqual([4, 5]);
    expect(found.stair('slope', all, 400)).toEqual([6, 7]);
    expect(found.stair('surface', all, 400)).toEqual([]);
  });

  it('rests on every panel of a chart, and on the deviation from the standard just before', () => {
    const found = working(
      'deviation from standard',
      'ground roll, panel of mass',
      'ground roll, panel of wind',
      'deviation from standard',
      'distance, panel of mass',
      'distance, panel of wind',
      'deviation from standard',
      'rate of climb',
      'ground roll, panel of mass',
      'distance, panel of mass',
    );
    const all = stairs('manual', 'wind');
    expect(found.stair('manual', all, 400)).toEqual([0, 1, 2, 3, 4, 5]);
    // The deviation belonged to the climb.
    expect(found.stair('wind', all, 400)).toEqual([8, 9]);
  });

  it('with a factor of its own rests on no reading, and on no wind', () => {
    const found = working(
      'wind components',
      'wind used',
      'ground roll',
      'distance',
      'ground roll',
      'distance',
      'factor for mass',
    );
    expect(found.stair('mass', stairs('manual', 'mass'), 400)).toEqual([6]);
  });

  it('keeps its deviation from the standard over a decision', () => {
    const found = working('deviation from standard', null, 'ground roll', 'distance');
    expect(found.stair('manual', stairs('manual'), 400)).toEqual([0, 2, 3]);
  });

  it('has nothing where a distance is read without a roll before it', () => {
    expect(working('distance').stair('manual', stairs('manual'), 400)).toEqual([]);
  });

  it('of the safety factor rests on the first comparison with that total', () => {
    const found = working(
      ['factored against TORA', 500.04],
      ['factored against TODA', 575.02],
      ['factored against ASDA', 575.04],
      ['corrected', 575.02],
    );
    expect(found.stair('safety factor', stairs('safety factor'), 575.03)).toEqual([1]);
    expect(found.stair('no safety factor', stairs('no safety factor'), 500)).toEqual([0]);
    expect(found.stair('safety factor', stairs('safety factor'), 600)).toEqual([]);
    expect(working(['landing distance factored', 641]).stair('safety factor', [], 641)).toEqual([0]);
    expect(working(['factored against TORA', { low: 1 }]).stair('safety factor', [], 641)).toEqual([]);
  });
});

describe('a criterion', () => {
  const found = working(
    'landing distance lost over bank',
    'wind components',
    'wind used',
    'ground roll with wind',
    'ground roll with slope',
    'rate of climb',
    'gradient required over pines',
    'clearance over pines, factored',
    'clearance over pines, unfactored',
    'gradient required over heap',
  );

  it.each([
    ['crosswind', 'crosswind in gusts', [1]],
    ['tailwind', 'tailwind used', [1, 2]],
    ['takeoff-run', 'ground roll with the safety factor', [4]],
    ['takeoff-distance', 'take-off distance required', [3, 9]],
    ['landing-distance', 'landing distance required', [0, 3, 9]],
    ['obstacle', 'gradient over pines', [5, 6, 7, 8]],
    ['mass', 'take-off mass', []],
  ])('%s rests on its own steps', (id, quantity, steps) => {
    expect(found.criterion(id, quantity, [3, 9])).toEqual(steps);
  });
});

describe('a mark', () => {
  const found = working(
    'latest 50 ft point for pines',
    'latest lift-off',
    'true airspeed at lift-off',
    'ground speed at lift-off',
    'latest reject point',
    'speed due at the mark',
    'true airspeed at lift-off',
    'latest touchdown point',
    'landing distance lost over bank',
    'aiming point',
    'gradient over the ground',
    'latest go-around point for pines',
  );

  it.each([
    ['latest-lift-off', [0, 1]],
    ['acceleration-check', [1, 5]],
    ['latest-reject-point', [1, 2, 3, 4]],
    ['latest-touchdown-point', [7]],
    ['aiming-point', [8, 9]],
    ['latest-go-around-point', [10, 11]],
    ['another', []],
  ])('%s rests on its own steps', (id, steps) => {
    expect(found.mark(id)).toEqual(steps);
  });

  it('has its steps in the order of the working', () => {
    expect(working('aiming point', 'landing distance lost over bank').mark('aiming-point')).toEqual([0, 1]);
  });

  it('that was not found has none', () => {
    expect(working('latest lift-off', 'true airspeed at lift-off').mark('latest-reject-point')).toEqual([]);
    expect(working('latest reject point').mark('latest-reject-point')).toEqual([0]);
  });
});

describe('the approach speed', () => {
  const found = working('pressure altitude', ['gust increment', 10], ['approach speed', 61.5]);

  it('has its steps where it is the published one with half the gust increment', () => {
    expect(found.speed('approach', 62)).toEqual([1, 2]);
    expect(working(['gust increment', 8], ['approach speed', 61 + 1e-12]).speed('approach', 61)).toEqual([0, 1]);
  });

  it('has none where it was chosen otherwise, and no other speed has any', () => {
    expect(found.speed('approach', 66)).toEqual([]);
    expect(found.speed('lift-off', 62)).toEqual([]);
    expect(working(['gust increment', 10]).speed('approach', 10)).toEqual([]);
    expect(working('gust increment', 'approach speed').speed('approach', 62)).toEqual([]);
  });
});

describe('a sentence', () => {
  const labels = [
    'pressure altitude',
    'density altitude',
    'density altitude with humidity',
    'virtual temperature',
    'wind components',
    'wind used',
    'rate of climb',
    'gradient required over pines',
    'landing distance lost over pines',
    'true airspeed on the approach',
    'ground speed on the approach',
    'rate of descent on the approach',
    'path angle over pines',
    'rate of descent without loss',
    'half-width at pines',
    'true airspeed at lift-off',
    "thrust that gives back the manual's roll",
    'ground roll on wet grass over that of the manual',
    'estimate as a factor on the distance',
    '0.2 V_S0',
    'hydroplaning speed',
    'hydroplaning speed at touchdown',
    'ground roll on wet grass',
  ];
  const stepsOf = (code: SentenceCode, found = working(...labels)) =>
    found.worded([{ code, parameters: { obstacle: 'pines' }, text: '' }])[0]?.steps;

  it.each([
    ['pressure-altitude', [0]],
    ['pressure-altitude-from-qfe', [0]],
    ['density-altitude', [1]],
    ['humid-density-altitude', [2]],
    ['virtual-temperature-used', [3]],
    ['wind-components', [4]],
    ['direction-unknown', [4]],
    ['direction-range', [4]],
    ['headwind-used', [4, 5]],
    ['tailwind-used', [4, 5]],
    ['obstacle-clearance', [6, 7]],
    ['approach-loss', [8]],
    ['approach-rate', [9, 10, 11]],
    ['approach-angle-without-loss', [12, 13]],
    ['obstacle-beside-strip', [14]],
    // From the speed just before the thrust on.
    ['estimate-surface', [15, 16, 17, 18]],
    ['estimate-surface-open', [15, 16, 17, 18]],
    ['estimate-surface-stuck', [15, 16, 17, 18]],
    ['crosswind-against-stall', [19]],
    ['hazard-hydroplaning', [20, 21]],
  ] as const)('%s rests on its own steps', (code, steps) => {
    expect(stepsOf(code)).toEqual(steps);
  });

  it('is as it was where no step stands behind it', () => {
    const plain = { code: 'tables-read-dry', parameters: {}, text: 'words' } as const;
    expect(working(...labels).worded([plain])).toEqual([plain]);
    expect(stepsOf('estimate-surface', working('estimate as a factor on the distance'))).toBeUndefined();
    const anonymous = { code: 'approach-loss', parameters: {}, text: 'words' } as const;
    expect(working(...labels).worded([anonymous])).toEqual([anonymous]);
  });
});
