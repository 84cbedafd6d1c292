import { describe, expect, it } from 'vitest';
import type { AnyRequest } from '../../src/study/any-request.ts';
import { type ChangesGiven, type MarginSensitivity, type Sensitivity, sensitivities } from '../../src/study/index.ts';
import { landing as landingAgain, pressureAltitude_ft, printed, wind } from '../assessment/recompute.ts';
import { type Changes, landingRequest, takeoffRequest } from '../assessment/scenario.ts';

function found(request: AnyRequest, changes?: ChangesGiven): readonly Sensitivity[] {
  const result = sensitivities(request, changes);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value.inputs;
}

function input(list: readonly Sensitivity[], id: string, quantity = ''): Sensitivity {
  const one = list.find((each) => each.input === id && each.quantity.includes(quantity));
  if (one === undefined) throw new Error(`no ${id}`);
  return one;
}

function margin(sensitivity: Sensitivity, id: string, of: Partial<MarginSensitivity> = {}): MarginSensitivity {
  const same = sensitivity.criteria.filter(
    (each) =>
      each.id === id &&
      (of.limitStatus ?? each.limitStatus) === each.limitStatus &&
      (of.subject ?? each.subject) === each.subject,
  );
  if (same.length !== 1) throw new Error(`${same.length} of ${id}`);
  return same[0] as MarginSensitivity;
}

const takeoff = (changes: Changes = {}) => takeoffRequest('takeoff-28', changes);
const text = (sensitivity: Sensitivity) => sensitivity.sentence.text;

// On 28, worked again from the printed tables: law of the wind used, dry grass 1.20, safety factor 1.25.
const required = (kg: number, degC = 26) =>
  printed.takeoffDistance(kg, pressureAltitude_ft, degC) * (1 - 0.045 * wind(292).used) * 1.2 * 1.25;
// 190° is 78° off 112° and 102° off 292°, whose sines are the same.
const across = Math.sin((78 * Math.PI) / 180);

describe('of two limits of one quantity', () => {
  const list = found(takeoff());

  it('each loses from its own margin: 18 kt personal and 19 kt demonstrated', () => {
    for (const [limitStatus, limit] of [
      ['personal', 18],
      ['demonstrated', 19],
    ] as const) {
      const gust = margin(input(list, 'gust'), 'crosswind', { limitStatus });
      expect(gust.eaten).toBeCloseTo(5 * across, 9);
      expect(gust.share).toBeCloseTo((5 * across) / (limit - 17 * across), 9);
      expect(gust.perUnit).toBeCloseTo(-across, 9);
    }
    // 5 kt personal and 8 kt printed, of 1.5 times the mean or the whole gust from behind.
    const back = (limitStatus: 'personal' | 'limitation') =>
      margin(input(list, 'windDirection'), 'tailwind', { limitStatus }).eaten;
    expect(back('personal')).toBeCloseTo(wind(292, 190).used - wind(292, 180).used, 9);
    expect(back('limitation')).toBeCloseTo(back('personal'), 9);
  });

  it('of two obstacles the other one loses nothing', () => {
    const two = takeoffRequest('quarry-takeoff-04', {
      'runway.obstacles.0': {
        name: 'crane',
        end: '22',
        beyond: { value: 900, unit: 'm' },
        topElevation: { value: 1900, unit: 'ftElevation' },
      },
    });
    const heap = input(found(two), 'obstacleHeight', 'spoil heap');
    const of = (name: string) => margin(heap, 'obstacle', { subject: `the gradient over ${name}` });
    expect(of('spoil heap').eaten).toBeGreaterThan(0);
    expect(of('crane')).toMatchObject({ eaten: 0, share: 0, difference: 'central' });
    expect(of('crane').perUnit).toBeCloseTo(0, 9);
    // Both stand equally far away: the same change costs the same.
    const crane = input(found(two), 'obstacleHeight', 'crane');
    expect(margin(crane, 'obstacle', { subject: 'the gradient over crane' }).eaten).toBeCloseTo(
      of('spoil heap').eaten,
      9,
    );
  });
});

describe('the sides of the change', () => {
  it('are both looked at up to the very ends of what a request takes', () => {
    const sides = (metres: number) =>
      margin(
        input(found(takeoff({ 'lineUpLoss.value': 20 }), { lineUpLoss: { value: metres, unit: 'm' } }), 'lineUpLoss'),
        'takeoff-distance',
      );
    // From 20 m: 20 m less are none, 21 m less cannot be.
    expect(sides(20)).toMatchObject({ difference: 'central', eaten: expect.closeTo(20, 6) });
    expect(sides(21)).toMatchObject({ difference: 'upwards only', eaten: expect.closeTo(21, 6) });
    for (const metres of [20, 21]) {
      expect(sides(metres).perUnit).toBeCloseTo(-1, 9);
      expect(sides(metres)).not.toHaveProperty('undetermined');
    }
    // Up to 499 m of it.
    expect(sides(479)).toMatchObject({ difference: 'upwards only', eaten: expect.closeTo(479, 6) });
    expect(sides(480)).toMatchObject({ difference: 'none', eaten: 0 });
    expect(sides(480)).not.toHaveProperty('perUnit');
    expect(sides(480)).not.toHaveProperty('undetermined');
  });

  it('lose per unit downwards what the printed figures lose, where there is no figure upwards', () => {
    // 62 KIAS are 63.3 KCAS and 57 are 59.1, the speed of the table: 5 kt cost the square of their ratio.
    const addition = input(found(landingRequest('landing-10')), 'approachSpeedAddition');
    const { 'speed addition': with5 = 0, surface: with0 = 0 } = landingAgain('10').stairs;
    expect(addition.today).toEqual({ value: 5, unit: 'kt' });
    const distance = margin(addition, 'landing-distance');
    expect(distance).toMatchObject({ difference: 'downwards only', undetermined: 'upwards', eaten: 0 });
    expect(distance.perUnit).toBeCloseTo(-(with5 - with0) / 0.7 / 5, 6);
    // No other criterion depends on it, and each has its figure.
    expect(margin(addition, 'mass')).not.toHaveProperty('undetermined');
  });

  it('may have no figure downwards alone: the table begins at 850 kg, and lighter is refused', () => {
    const light = takeoff({ 'mass.value': 860, 'policies.favourableEdge': 'refuse' });
    const mass = input(found(light), 'mass');
    const distance = margin(mass, 'takeoff-distance');
    expect(distance).toMatchObject({ difference: 'upwards only', undetermined: 'downwards' });
    expect(distance.perUnit).toBeCloseTo(-(required(880) - required(860)) / 20, 6);
    expect(distance.eaten).toBeCloseTo(required(880) - required(860), 6);
    expect(text(mass)).toBe('Mass, 20 kg less: the take-off run, undetermined: there is no figure.');
    // A mass below the maximum always has its margin, after all that has none.
    expect(margin(mass, 'mass')).toMatchObject({ eaten: 20, share: 20 / 190 });
    expect(mass.criteria.map(({ undetermined }) => undetermined !== undefined)).toEqual(
      mass.criteria.map((_, i) => i < mass.criteria.filter(({ undetermined }) => undetermined !== undefined).length),
    );
  });

  it('are both without a figure where the table ends to either side', () => {
    const narrow = takeoff({ 'mass.value': 945, 'policies.favourableEdge': 'refuse' });
    const mass = input(found(narrow, { mass: { value: 150, unit: 'kg' } }), 'mass');
    expect(margin(mass, 'takeoff-distance')).toMatchObject({ difference: 'none', undetermined: 'both ways', eaten: 0 });
    // 150 kg more than 945 kg are 45 kg above the maximum.
    expect(margin(mass, 'mass')).toMatchObject({ difference: 'central', eaten: 150, share: 150 / 105 });
  });

  it('are those of what is decided today: what is undetermined has no margin to lose', () => {
    const list = found(takeoff({ 'runway.surface': { kind: 'snow' } }));
    const ids = list.flatMap(({ criteria }) => criteria.map(({ id }) => id));
    expect(new Set(ids)).toEqual(new Set(['mass', 'crosswind', 'tailwind']));
    expect(list.map((each) => each.input)).not.toContain('surfaceFactor');
  });
});

describe('the order', () => {
  const eatenShare = ({ share, eaten, margin: { value } }: MarginSensitivity) => share ?? eaten / Math.abs(value);
  const descending = (values: number[]) => expect(values).toEqual([...values].sort((a, b) => b - a));

  it('of inputs and of criteria is by the share of what is left, or of what is missing', () => {
    // On 10 the climb gradient over the pines is missed already.
    const list = found(takeoffRequest('takeoff-10'));
    expect(list.filter(({ criteria }) => criteria[0]?.id === 'obstacle').length).toBeGreaterThan(5);
    expect(list.filter(({ criteria }) => criteria[0]?.undetermined !== undefined).map((each) => each.input)).toEqual([
      'slope',
    ]);
    descending(list.slice(1).map(({ criteria }) => eatenShare(criteria[0] as MarginSensitivity)));
    for (const { criteria } of list.slice(1)) descending(criteria.map(eatenShare));
  });

  it('puts last what takes nothing, and has no share of a margin that is spent', () => {
    const list = found(takeoffRequest('takeoff-10'));
    for (const each of list) {
      const obstacle = margin(each, 'obstacle');
      expect(obstacle).not.toHaveProperty('share');
      expect(obstacle.margin.value).toBeLessThan(0);
    }
    expect(found(takeoff()).at(-1)).toMatchObject({ input: 'slope', sentence: { code: 'sensitivity-none' } });
  });
});

describe('the sentence', () => {
  const list = found(takeoff());

  it('has metres whole from ten on and to a tenth below, both rounded up, from the printed tables', () => {
    const left = 830 - Math.ceil(required(940));
    const heavier = Math.ceil(required(960) - required(940));
    expect(text(input(list, 'mass'))).toBe(
      `Mass, 20 kg more: takes ${heavier} m from the ${left} m that the take-off distance has to spare (${Math.ceil((heavier / left) * 100)} %).`,
    );
    // 1 kg more.
    const one = (Math.ceil((required(941) - required(940)) * 10) / 10).toFixed(1);
    expect(text(input(found(takeoff(), { mass: { value: 1, unit: 'kg' } }), 'mass'))).toBe(
      `Mass, 1 kg more: takes ${one} m from the ${left} m that the take-off distance has to spare (${Math.ceil((Number(one) / left) * 100)} %).`,
    );
    // Ten metres of runway exactly are whole.
    expect(text(input(found(takeoff(), { runwayLength: { value: 10, unit: 'm' } }), 'runwayLength'))).toBe(
      `Runway length, 10 m less: takes 10 m from the ${left} m that the take-off distance has to spare (${Math.ceil((10 / left) * 100)} %).`,
    );
  });

  it('says which way: more or less of a figure, a wind that backs or veers', () => {
    // Less pressure is thinner air; a wind from 102° off the nose that backs comes more from behind.
    expect(text(input(list, 'pressure'))).toMatch(/^QNH, 3 hPa less: takes /);
    expect(text(input(list, 'runwayLength'))).toMatch(/^Runway length, 20 m less: takes 20 m /);
    expect(text(input(list, 'windDirection'))).toMatch(/^Wind direction, 10° backed: takes /);
    // On 10 the same wind is 78° off the nose: veering it becomes more of a crosswind.
    expect(text(input(found(takeoffRequest('takeoff-10')), 'windDirection'))).toMatch(/^Wind direction, 10° veered: /);
  });

  it('has a change with the decimals that its unit needs', () => {
    const changes = (request: AnyRequest, given?: ChangesGiven) =>
      Object.fromEntries(found(request, given).map((each) => [each.input, String(each.sentence.parameters['change'])]));
    expect(changes(takeoff())).toMatchObject({
      mass: '20 kg',
      surfaceFactor: '0.10',
      slope: '0.50 %',
      windDirection: '10°',
      gust: '5 kt',
    });
    // 10 lb are 4.536 kg, 0.1 inHg are 3.386 hPa and 5 ft are 1.524 m.
    const others = changes(takeoff(), {
      mass: { value: 10, unit: 'lb' },
      pressure: { value: 0.1, unit: 'inHg' },
      runwayLength: { value: 5, unit: 'ft' },
    });
    expect(others).toMatchObject({ mass: '4.5 kg', pressure: '3.4 hPa', runwayLength: '1.5 m' });
    // 3 hPa are 0.089 inHg; 2 m are 6.56 ft.
    expect(changes(takeoff({ 'weather.qnh': { value: 29.71, unit: 'inHg' } }))['pressure']).toBe('0.09 inHg');
    const heap = changes(takeoffRequest('quarry-takeoff-04'));
    expect([heap['obstacleHeight'], heap['obstacleDistance']]).toEqual(['6.6 ft', '20 m']);
  });

  it('counts a share of two percentages in points', () => {
    const heap = input(found(takeoffRequest('quarry-takeoff-04')), 'obstacleHeight');
    expect(text(heap)).toMatch(
      /^Top of spoil heap, 6\.6 ft more: takes \d\.\d percentage points from the \d\.\d percentage points that the gradient over spoil heap has to spare \(\d+ %\)\.$/,
    );
    const [first] = heap.criteria;
    const eaten = Number(/takes (\d\.\d)/.exec(text(heap))?.[1]);
    expect(eaten - (first?.eaten as number)).toBeGreaterThanOrEqual(0);
    expect(eaten - (first?.eaten as number)).toBeLessThan(0.1);
    // Above ten points still to a tenth.
    const pines = text(input(found(takeoffRequest('takeoff-10')), 'surfaceFactor'));
    expect(pines).toMatch(/0\.10 more: \d{2}\.\d percentage points more where the gradient over pines has nothing/);
  });
});

describe('changes that are none', () => {
  const faults = (changes: unknown) => {
    const result = sensitivities(takeoff(), changes as ChangesGiven);
    return result.ok ? [] : result.faults.map(({ path, message }) => `${path}: ${message}`);
  };

  it('are refused by their unit', () => {
    for (const unit of ['furlong', 5, undefined, 'kg', 'degC'])
      expect(faults({ gust: { value: 3, unit } }), String(unit)).toEqual([
        `changes.gust.unit: ${unit} does not convert to kt`,
      ]);
    expect(faults({ gust: { value: 3, unit: 'mps' } })).toEqual([]);
  });

  it('are refused by their value, or with none at all', () => {
    for (const value of [0, -1, Number.NaN, Number.POSITIVE_INFINITY, '3', undefined])
      expect(faults({ gust: { value, unit: 'kt' } }), String(value)).toEqual([
        `changes.gust.value: ${value} is not more than 0`,
      ]);
    for (const none of [null, undefined]) expect(faults({ gust: none })).toHaveLength(1);
  });

  it('are refused as a whole where they are not an object', () => {
    for (const changes of [null, 3, 'gust', [3]]) {
      const found = faults(changes);
      expect(found, String(changes)).toHaveLength(1);
      expect(found[0]).toMatch(/^changes: /);
    }
  });
});
