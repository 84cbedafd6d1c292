import { describe, expect, it } from 'vitest';
import type { LandingAssessment, Sentence, TakeoffAssessment, TraceStep } from '../../src/assessment/index.ts';
import { type Changes, landing, takeoff } from './scenario.ts';

type Assessment = TakeoffAssessment | LandingAssessment;

const headwindAxis = (cells: (path: string) => unknown): Changes => ({
  'performanceData.takeoff.0.corrections': {},
  'performanceData.takeoff.0.distance': cells('distance'),
  'performanceData.takeoff.0.groundRoll': cells('groundRoll'),
});

/** The take-off tables of the example with an axis of headwind that grows by 1 % a knot. */
function alongTheWind(): Changes {
  const table = takeoff('takeoff-28').request.performanceData.takeoff[0] as never as Record<
    string,
    { axes: unknown[]; cells: unknown }
  >;
  const grown = (cells: unknown, by: number): unknown =>
    Array.isArray(cells) ? cells.map((each) => grown(each, by)) : cells === null ? null : (cells as number) * by;
  return headwindAxis((name) => {
    const { axes, cells, ...rest } = table[name] as { axes: unknown[]; cells: unknown };
    const axis = { quantity: 'headwind', unit: 'kt', values: [-8, 15] };
    return { ...rest, axes: [axis, ...axes], cells: [grown(cells, 1.36), grown(cells, 0.85)] };
  });
}

/** Assessed again in each test: what is made while the file is loaded no test is held to account for. */
const cases: readonly [string, () => Assessment][] = [
  ['take-off on 28', () => takeoff('takeoff-28')],
  ['take-off on 10', () => takeoff('takeoff-10')],
  ['landing on 10', () => landing('landing-10')],
  ['landing on 28', () => landing('landing-28')],
  ['take-off from the quarry', () => takeoff('quarry-takeoff-04')],
  ['landing in the quarry', () => landing('quarry-landing-04')],
  ['take-off with a speed addition', () => takeoff('takeoff-28', { liftOffSpeedAddition: { value: 2, unit: 'kt' } })],
  [
    'landing above the threshold height',
    () => landing('landing-10', { excessHeight: { value: 20, unit: 'ftHeight' } }),
  ],
  ['take-off without a safety factor', () => takeoff('takeoff-28', { safetyFactor: 'none' })],
  ['take-off with a table along the wind', () => takeoff('takeoff-28', alongTheWind())],
  [
    'take-off over a far tree',
    () => takeoff('takeoff-10', { 'runway.obstacles.0.beyond.value': 1500, 'runway.obstacles.0.height.value': 10 }),
  ],
];

const stepAt = ({ trace }: Assessment, i: number): TraceStep => {
  const entry = trace[i];
  if (entry?.kind !== 'step') throw new Error(`no step at ${i}`);
  return entry;
};
const labels = (assessment: Assessment, steps: readonly number[] = []) => steps.map((i) => stepAt(assessment, i).label);

describe.each(cases)('the way back in a %s', (_name, assess) => {
  it('leads from each tread to a step with that total, which comes before the tread above it', () => {
    const assessment = assess();
    const ends = (assessment.stairs?.steps ?? []).map(({ step, total, steps }) => {
      const outputs = steps.map((i) => Number((stepAt(assessment, i).output as number).toFixed?.(1)));
      // These two are added to the distance: their steps give the roll, and the metres flown over.
      if (step !== 'excess height' && step !== 'speed addition')
        expect({ step, outputs }).toEqual({ step, outputs: expect.arrayContaining([total.value]) });
      return Math.max(...steps);
    });
    expect(ends.length).toBeGreaterThan(3);
    expect(ends).toEqual([...ends].sort((a, b) => a - b));
    expect(new Set(ends).size).toBe(ends.length);
  });

  it('leads from each decided criterion but the mass to a step', () => {
    const assessment = assess();
    for (const { id, quantity, verdict, steps } of assessment.criteria) {
      if (id === 'mass' || verdict === 'undetermined') continue;
      expect({ quantity, steps: steps.length > 0 }).toEqual({ quantity, steps: true });
    }
  });

  it('leads from each mark to the step that gives it', () => {
    const assessment = assess();
    for (const { id, at, steps } of assessment.marks) {
      expect({ id, some: steps.length > 0 }).toEqual({ id, some: at !== undefined });
    }
    const lift = assessment.marks.find(({ id }) => id === 'latest-lift-off');
    if (lift?.at !== undefined) {
      expect(Math.floor(stepAt(assessment, lift.steps.at(-1) ?? -1).output as number)).toBe(lift.at.value);
    }
  });

  it('names only steps, each once and in the order of the working', () => {
    const assessment = assess();
    const { stairs, criteria, marks, speeds, headline, reasons, advice, estimates, hazards, dataNotes } = assessment;
    const sentences: readonly Sentence[] = [...headline, ...reasons, ...advice, ...estimates, ...hazards, ...dataNotes];
    const all = [...(stairs?.steps ?? []), ...criteria, ...marks, ...speeds, ...sentences].map(
      ({ steps = [] }) => steps,
    );
    for (const steps of all) {
      expect(labels(assessment, steps)).toHaveLength(steps.length);
      expect(steps).toEqual([...new Set(steps)].sort((a, b) => a - b));
    }
  });
});

describe('the way back', () => {
  it('goes by the names that the kernels give their steps', () => {
    const assessment = takeoff('takeoff-10');
    const tread = (step: string) => assessment.stairs?.steps.find((each) => each.step === step)?.steps;
    expect(labels(assessment, tread('manual'))).toEqual(['pressure altitude', 'ground roll', 'distance']);
    expect(labels(assessment, tread('wind'))).toEqual([
      'wind components',
      'wind used',
      'factor for wind',
      'distance with wind',
      'ground roll with wind',
    ]);
    expect(labels(assessment, tread('safety factor'))).toEqual(['factored against TORA']);
    const pines = assessment.criteria.find(({ id }) => id === 'obstacle');
    expect(labels(assessment, pines?.steps)).toEqual([
      'rate of climb',
      'true airspeed in the climb',
      'ground speed in the climb',
      'gradient over the ground',
      'gradient required over pines',
      'clearance over pines, factored',
      'clearance over pines, unfactored',
    ]);
  });

  it('leads to the reading of a table along the wind, apart from the first', () => {
    const assessment = takeoff('takeoff-28', alongTheWind());
    const tread = (step: string) => assessment.stairs?.steps.find((each) => each.step === step)?.steps ?? [];
    expect(labels(assessment, tread('wind'))).toEqual(['wind components', 'wind used', 'ground roll', 'distance']);
    expect(tread('manual').at(-1)).toBeLessThan(tread('wind').at(-1) ?? 0);
  });

  it('does not take the speed of the estimate for that of the reject point', () => {
    const assessment = takeoff('takeoff-28');
    const reject = assessment.marks.find(({ id }) => id === 'latest-reject-point');
    expect(labels(assessment, reject?.steps)).toEqual([
      'latest lift-off',
      'true airspeed at lift-off',
      'ground speed at lift-off',
      'latest reject point',
    ]);
    expect(labels(assessment, assessment.estimates[0]?.steps)[0]).toBe('true airspeed at lift-off');
    expect(assessment.estimates[0]?.steps?.[0]).toBeGreaterThan(reject?.steps.at(-1) ?? 999);
  });

  it('has no step for an approach speed that was chosen', () => {
    const [chosen] = landing('landing-10', { approachSpeedAddition: { value: 9, unit: 'kt' } }).speeds;
    expect(chosen).toMatchObject({ speed: { value: 66, unit: 'kias' }, steps: [] });
    const assessment = landing('landing-10');
    expect(labels(assessment, assessment.speeds[0]?.steps)).toEqual(['gust increment', 'approach speed']);
  });
});
