import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import {
  type Comparison,
  type Conditions,
  conditionsOf,
  type LandingRequest,
  policyDefaults,
  prepareLanding,
  prepareTakeoff,
  type TakeoffRequest,
} from '../../src/assessment/index.ts';
import {
  type ComparisonColumns,
  type PreparedColumns,
  prepareLandingColumns,
  prepareTakeoffColumns,
  rowsBetween,
  verdictWords,
  type WeatherColumns,
} from '../../src/columns/index.ts';
import { hPa, kg } from '../../src/units/index.ts';
import { type Changes, landingRequest, takeoffRequest } from '../assessment/scenario.ts';

function value<T>(result: { ok: true; value: T } | { ok: false; faults: unknown }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

/** A row of weather as it is reported; what is undefined is not reported. */
interface Row {
  readonly from: number | undefined;
  readonly speed: number;
  readonly gust: number | undefined;
  readonly range: readonly [number, number] | undefined;
  readonly temperature: number;
  readonly dewPoint: number | undefined;
  readonly pressure: number;
  readonly mass: number;
}

/** Winds that a report may hold, and rows that are refused: a gust below the mean, a direction of 0, what is no figure. */
const row: fc.Arbitrary<Row> = fc.record({
  from: fc.oneof({ weight: 5, arbitrary: fc.integer({ min: 1, max: 360 }) }, fc.constantFrom(undefined, 0, 361)),
  speed: fc.oneof({ weight: 9, arbitrary: fc.integer({ min: 0, max: 25 }) }, fc.constantFrom(Number.NaN, -1, 101)),
  gust: fc.option(fc.integer({ min: 5, max: 45 }), { nil: undefined, freq: 2 }),
  range: fc.option(fc.tuple(fc.integer({ min: 0, max: 360 }), fc.integer({ min: 0, max: 360 })), { nil: undefined }),
  temperature: fc.oneof({ weight: 9, arbitrary: fc.integer({ min: -20, max: 45 }) }, fc.constantFrom(Number.NaN, 51)),
  dewPoint: fc.option(fc.integer({ min: -30, max: 30 }), { nil: undefined, freq: 2 }),
  pressure: fc.oneof({ weight: 9, arbitrary: fc.integer({ min: 950, max: 1050 }) }, fc.constantFrom(Number.NaN, 200)),
  mass: fc.oneof({ weight: 9, arbitrary: fc.integer({ min: 750, max: 1100 }) }, fc.constantFrom(Number.NaN, 1)),
});
const rows = fc.array(row, { minLength: 1, maxLength: 12 });

const column = <U extends string>(unit: U, values: readonly (number | undefined)[]) => ({
  unit,
  values: Float64Array.from(values, (each) => each ?? Number.NaN),
});

function weatherOf(all: readonly Row[], pressure: 'qnh' | 'qfe' = 'qnh'): WeatherColumns<'degTrue'> {
  const each = <U extends string>(unit: U, figure: (row: Row) => number | undefined) => column(unit, all.map(figure));
  return {
    from: each('degTrue', ({ from }) => from),
    speed: each('kt', ({ speed }) => speed),
    gust: each('kt', ({ gust }) => gust),
    rangeFrom: each('degTrue', ({ range }) => range?.[0]),
    rangeTo: each('degTrue', ({ range }) => range?.[1]),
    temperature: each('degC', ({ temperature }) => temperature),
    dewPoint: each('degC', ({ dewPoint }) => dewPoint),
    [pressure]: each('hPa', (one) => one.pressure),
  };
}

/** The same row in the figures of `compare`. */
function conditions({ from, speed, gust, range, ...air }: Row, increment = 0, pressure = 'qnh'): Conditions {
  return {
    from_deg: from ?? 'variable',
    speed_kt: speed,
    gust_kt: gust ?? (speed === 0 ? 0 : speed + increment),
    gustReported: gust !== undefined,
    range_deg: range === undefined ? undefined : { from: range[0], to: range[1] },
    temperature_degC: air.temperature,
    dewPoint_degC: air.dewPoint,
    pressure: pressure === 'qnh' ? { qnh_hPa: air.pressure } : { qfe_hPa: air.pressure },
  };
}

/** One criterion of one row in the terms of the columns. */
function figures(criteria: Comparison['criteria'], column: ComparisonColumns['criteria'][number], nth: number) {
  const same = criteria.filter(
    (each) => each.id === column.id && each.subject === column.subject && each.limitStatus === column.limitStatus,
  );
  const found = same[nth];
  const decided = found?.unit === column.unit ? found : undefined;
  return {
    verdict: found?.verdict ?? 'undetermined',
    value: decided?.value ?? 0,
    margin: decided?.margin ?? 0,
    hasFigure: decided?.margin === undefined ? 0 : 1,
  };
}

function expectRows(columns: ReturnType<PreparedColumns['compare']>, singles: readonly Comparison[]): void {
  expect(Array.from(columns.verdict, (code) => verdictWords[code])).toEqual(singles.map(({ verdict }) => verdict));
  columns.criteria.forEach((column, i) => {
    const nth = columns.criteria
      .slice(0, i)
      .filter((other) => other.subject === column.subject && other.limitStatus === column.limitStatus).length;
    singles.forEach(({ criteria }, at) => {
      expect({
        verdict: verdictWords[column.verdict[at] as number],
        value: column.value[at],
        margin: column.margin[at],
        hasFigure: column.hasFigure[at],
      }).toEqual(figures(criteria, column, nth));
    });
  });
  const refused = singles.flatMap(({ refused: detail }, at) => (detail === undefined ? [] : [{ row: at, detail }]));
  expect(columns.refused).toEqual({ count: refused.length, first: refused.slice(0, 10) });
}

const situations: Readonly<Record<string, Changes>> = {
  'as it is': {},
  'with gusts that need not be reported': { 'policies.unreportedGust': 'mean plus 10 kt' },
  'by virtual temperature': { 'policies.humidity': 'virtual temperature' },
  'with trees so near that they stand before the 50 ft point': {
    'runway.length': { value: 500, unit: 'm' },
    'runway.ends.0.declaredDistances': undefined,
    'runway.ends.1.declaredDistances': undefined,
  },
  'without any limit for the wind': {
    personalLimits: undefined,
    'performanceData.crosswind': [],
    'performanceData.tailwind': [],
  },
  'with a calm that has fewer criteria, and two limits of the same words': {
    personalLimits: undefined,
    'performanceData.crosswind': [],
    'performanceData.tailwind': [
      { speed: { value: 10, unit: 'kt' }, status: 'limitation' },
      { speed: { value: 5, unit: 'kt' }, status: 'limitation' },
    ],
  },
};

describe.each(['takeoff', 'landing'] as const)('columns of a prepared %s', (phase) => {
  const prepare = (changes: Changes) =>
    phase === 'takeoff'
      ? ([
          prepareTakeoff(takeoffRequest('takeoff-28', changes)),
          prepareTakeoffColumns(takeoffRequest('takeoff-28', changes)),
        ] as const)
      : ([
          prepareLanding(landingRequest('landing-28', changes)),
          prepareLandingColumns(landingRequest('landing-28', changes)),
        ] as const);

  it.each(Object.entries(situations))('equal single comparisons bit for bit, %s', (_name, changes) => {
    const [single, columns] = prepare(changes);
    const [one, many] = [value(single as ReturnType<typeof prepareTakeoff>), value(columns)];
    const increment = changes['policies.unreportedGust'] === undefined ? 0 : 10;
    fc.assert(
      fc.property(rows, (all) => {
        const singles = all.map((each) => one.compare(conditions(each, increment)));
        expectRows(many.compare({ weather: weatherOf(all) }), singles);
      }),
      { numRuns: 100 },
    );
  });

  it('equal single comparisons at the mass of each row, and by QFE', () => {
    const [single, columns] = prepare({});
    const [one, many] = [value(single as ReturnType<typeof prepareTakeoff>), value(columns)];
    fc.assert(
      fc.property(rows, (all) => {
        const singles = all.map((each) => one.compare(conditions(each, 0, 'qfe'), { mass_kg: each.mass }));
        const mass = column(
          'kg',
          all.map((each) => each.mass),
        );
        expectRows(many.compare({ weather: weatherOf(all, 'qfe'), mass }), singles);
      }),
      { numRuns: 100 },
    );
  });
});

/** Ten hours of one wind, warmer from hour to hour. */
const hours: WeatherColumns<'degTrue'> = {
  from: column('degTrue', Array(10).fill(280)),
  speed: column('kt', Array(10).fill(8)),
  temperature: column('degC', [0, 4, 8, 12, 16, 20, 24, 28, 32, 36]),
  qnh: hPa(1006),
};

describe('prepareTakeoffColumns', () => {
  let prepared: PreparedColumns;
  beforeEach(() => {
    prepared = value(prepareTakeoffColumns(takeoffRequest('takeoff-28')));
  });

  it('says the demo: 26 °C, wind 190° true at 7 kt gusting 17 kt', () => {
    const { criteria, verdict } = prepared.compare({
      weather: {
        from: column('degTrue', [190]),
        speed: column('kt', [7]),
        gust: column('kt', [17]),
        temperature: column('degC', [26]),
        qnh: column('hPa', [1006]),
      },
    });
    const distance = criteria.find(({ id }) => id === 'takeoff-distance');
    // Worked by hand from the printed figures of the demo.
    expect([distance?.value[0], distance?.margin[0], distance?.unit]).toEqual([771, 59, 'm']);
    expect(verdictWords[verdict[0] as number]).toBe('within');
  });

  it('takes more room in warmer air', () => {
    const { criteria } = prepared.compare({ weather: hours });
    const required = criteria.find(({ id }) => id === 'takeoff-distance')?.value ?? new Float64Array(0);
    expect(required.length).toBe(10);
    required.forEach((each, i) => {
      if (i > 0) expect(each).toBeGreaterThan(required[i - 1] as number);
    });
  });

  it('writes the chosen criteria into shared memory, and into a part of it', () => {
    const whole = prepared.columns({
      rows: 20,
      criteria: ['takeoff-distance', 'crosswind'],
      allocate: (bytes) => new SharedArrayBuffer(bytes),
    });
    expect([...new Set(whole.criteria.map(({ id }) => id))]).toEqual(['takeoff-distance', 'crosswind']);
    expect(whole.verdict.buffer).toBeInstanceOf(SharedArrayBuffer);
    for (const { value, margin, verdict, hasFigure } of whole.criteria)
      for (const { buffer } of [value, margin, verdict, hasFigure]) expect(buffer).toBeInstanceOf(SharedArrayBuffer);
    prepared.compare({ weather: hours, into: rowsBetween(whole, 10, 20) });
    const all = prepared.compare({ weather: hours });
    const distance = all.criteria.find(({ id }) => id === 'takeoff-distance');
    expect([...(whole.criteria[0]?.value ?? [])]).toEqual([...Array(10).fill(0), ...(distance?.value ?? [])]);
    // What has not been written is undetermined.
    expect([...whole.verdict].slice(0, 10)).toEqual(Array(10).fill(verdictWords.indexOf('undetermined')));
    expect([...whole.verdict].slice(10)).toEqual([...all.verdict]);
  });

  it('counts all refused rows, keeps the first ten with their reasons, and leaves no old figure in them', () => {
    const into = prepared.columns({ rows: 12 });
    const good = {
      from: column('degTrue', Array(12).fill(280)),
      speed: column('kt', Array(12).fill(8)),
      qnh: hPa(1006),
    };
    prepared.compare({ weather: { ...good, temperature: column('degC', Array(12).fill(20)) }, into });
    expect(into.criteria.some(({ value: figures }) => figures.every((each) => each > 0))).toBe(true);
    const { refused } = prepared.compare({ weather: { ...good, temperature: column('degC', Array(12)) }, into });
    expect(refused.count).toBe(12);
    expect(refused.first.map(({ row: at }) => at)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
    expect(refused.first[0]?.detail).toMatchObject({ code: 'not-finite', parameter: 'temperature_degC' });
    for (const each of into.criteria) {
      expect([...each.value, ...each.margin, ...each.hasFigure, ...each.verdict].every((figure) => figure === 0)).toBe(
        true,
      );
    }
  });

  it('refuses a gust below its mean and half a range in their rows', () => {
    const weather: WeatherColumns<'degTrue'> = {
      ...hours,
      gust: column('kt', [7, ...Array(9).fill(20)]),
      rangeFrom: column('degTrue', [undefined, 260, ...Array(8)]),
      rangeTo: column('degTrue', Array(10)),
    };
    const { refused } = prepared.compare({ weather });
    expect(refused.first.map(({ row: at, detail }) => [at, detail.parameter])).toEqual([
      [0, 'gust'],
      [1, 'range_deg.to'],
    ]);
  });

  it.each([
    [{ from: column('degMagnetic', Array(10).fill(280)) }, 'weather.from.unit: "degMagnetic" is none of "degTrue"'],
    [{ speed: column('mps', Array(10).fill(4)) }, 'weather.speed.unit: "mps"'],
    [{ speed: column('kt', [8]) }, 'weather.speed.values: 1 rows'],
    [{ temperature: { unit: 'degC', values: new Float32Array(10) } }, 'weather.temperature.values: "Float32Array"'],
    [{ gust: column('mps', Array(10).fill(9)) }, 'weather.gust.unit: "mps" is none of "kt"'],
    [{ temperature: column('degF', Array(10).fill(60)) }, 'weather.temperature.unit: "degF" is none of "degC"'],
    [{ dewPoint: column('degF', Array(10).fill(50)) }, 'weather.dewPoint.unit: "degF" is none of "degC"'],
    [{ qnh: column('inHg', Array(10).fill(29.9)) }, 'weather.qnh.unit: "inHg" is none of "hPa"'],
    [{ qnh: undefined, qfe: column('inHg', Array(10).fill(28)) }, 'weather.qfe.unit: "inHg" is none of "hPa"'],
    [
      { rangeFrom: column('degMagnetic', Array(10)), rangeTo: column('degTrue', Array(10)) },
      'weather.rangeFrom.unit: "degMagnetic" is none of "degTrue"',
    ],
    [
      { rangeFrom: column('degTrue', Array(10)), rangeTo: column('degMagnetic', Array(10)) },
      'weather.rangeTo.unit: "degMagnetic" is none of "degTrue"',
    ],
    [{ gusts: column('kt', Array(10).fill(30)) }, 'weather: "gusts" is none of "from", "speed", "gust", '],
    [{ qnh: undefined }, 'weather.qnh, weather.qfe: neither'],
    [{ qfe: hPa(990) }, 'weather.qnh, weather.qfe: both'],
    [{ rangeFrom: column('degTrue', Array(10)) }, 'weather.rangeFrom, weather.rangeTo: one'],
  ])('refuses columns that do not belong together: %o', (change, message) => {
    expect(() => prepared.compare({ weather: { ...hours, ...change } as never })).toThrow(message);
  });

  it('leaves nothing out for a slip of the pen', () => {
    expect(() => prepared.compare({ weather: hours, masses: kg(900) } as never)).toThrow(
      'compare: "masses" is none of',
    );
    expect(() => prepared.columns({ rows: 1, criterion: ['mass'] } as never)).toThrow(
      'columns: "criterion" is none of',
    );
  });

  it('refuses masses in another unit', () => {
    const mass = column('lb', Array(10).fill(2000)) as never;
    expect(() => prepared.compare({ weather: hours, mass })).toThrow('mass.unit: "lb" is none of "kg"');
  });

  it('refuses masses of another length and columns for other results', () => {
    expect(() => prepared.compare({ weather: hours, mass: column('kg', [900]) })).toThrow('mass.values: 1 rows');
    const [distance] = prepared.columns({ rows: 10, criteria: ['takeoff-distance'] }).criteria;
    for (const changed of [
      { unit: 'ft' },
      { subject: 'landing distance' },
      { limitStatus: 'limitation' },
      { id: 'mass' },
    ]) {
      const other = { verdict: new Uint8Array(10), criteria: [{ ...distance, ...changed }] } as never;
      expect(() => prepared.compare({ weather: hours, into: other }), JSON.stringify(changed)).toThrow(
        'into.criteria[0]: ',
      );
    }
    const short = prepared.columns({ rows: 9 });
    expect(() => prepared.compare({ weather: hours, into: short })).toThrow('into.verdict: 9 rows');
    const landing = value(prepareLandingColumns(landingRequest('landing-28'))).columns({ rows: 10 });
    expect(() => prepared.compare({ weather: hours, into: landing })).toThrow(/into\.criteria\[\d\]: landing-distance/);
    expect(() => prepared.columns({ rows: 10, criteria: ['landing-distance'] })).toThrow(
      'criteria[0]: "landing-distance"',
    );
    expect(() => prepared.columns({ rows: -1 })).toThrow('rows: -1');
    expect(() => prepared.columns({ rows: 0.5 })).toThrow('rows: 0.5');
    for (const [first, end] of [
      [-1, 1],
      [2, 1],
      [0, 10.5],
      [0, 11],
    ] as const) {
      expect(() => rowsBetween(prepared.columns({ rows: 10 }), first, end)).toThrow(/(first|end): .* rows/);
    }
    const [first] = prepared.columns({ rows: 10 }).criteria;
    const wrong = { verdict: new Uint8Array(10), criteria: [{ ...first, value: new Float64Array(3) }] } as never;
    expect(() => prepared.compare({ weather: hours, into: wrong })).toThrow('into.criteria[0].value: 3 rows');
  });

  it('has no figure for an obstacle before the 50 ft point, which is compared in feet, and its verdict', () => {
    const near = takeoffRequest('takeoff-10', {
      'runway.length': { value: 500, unit: 'm' },
      'runway.ends.0.declaredDistances': undefined,
      'runway.ends.1.declaredDistances': undefined,
      'runway.ends.1.elevation.value': 390,
      'runway.obstacles.0.groundElevation.value': 390,
    });
    const warm = column('degC', [20, 22, 24, 26, 28, 30, 32, 34, 36, 38]);
    const weather = { ...hours, from: column('degTrue', Array(10).fill(110)), temperature: warm };
    const { criteria } = value(prepareTakeoffColumns(near)).compare({ weather });
    const pines = criteria.find(({ id }) => id === 'obstacle');
    expect(pines?.unit).toBe('percent');
    expect([...new Set(pines?.hasFigure)]).toEqual([0]);
    expect([...new Set(pines?.value), ...new Set(pines?.margin)]).toEqual([0, 0]);
    expect([...(pines?.verdict ?? [])].map((code) => verdictWords[code])).toEqual(Array(10).fill('outside'));
  });

  it('prepares a request without policies', () => {
    const request = takeoffRequest('takeoff-28', { policies: undefined });
    expect(value(prepareTakeoffColumns(request)).compare({ weather: hours }).refused.count).toBe(0);
  });

  it('takes its north from the wind of the request, else from the range, else from the runway', () => {
    const north = (changes: Changes) => value(prepareTakeoffColumns(takeoffRequest('takeoff-28', changes))).north;
    const variable = { source: 'METAR', from: 'variable', speed: { value: 3, unit: 'kt' } };
    const end = (unit: string) => ({ value: 230, unit });
    expect(north({})).toBe('degTrue');
    expect(north({ 'weather.wind.source': 'FAA ATIS', 'weather.wind.from': { value: 190, unit: 'degMagnetic' } })).toBe(
      'degMagnetic',
    );
    expect(north({ 'weather.wind': variable })).toBe('degTrue');
    expect(
      north({
        'weather.wind': {
          ...variable,
          source: 'FAA ATIS',
          range: { from: end('degMagnetic'), to: end('degMagnetic') },
        },
      }),
    ).toBe('degMagnetic');
  });

  it('gives the faults of a request', () => {
    const request = { ...takeoffRequest('takeoff-28'), mass: 'heavy' } as unknown as TakeoffRequest;
    expect(prepareTakeoffColumns(request)).toMatchObject({ ok: false, faults: [{ path: 'mass' }] });
    expect(prepareLandingColumns({} as LandingRequest).ok).toBe(false);
  });

  it('takes a wind without a reported gust as the assessment of a report does', () => {
    for (const unreportedGust of ['mean', 'mean plus 10 kt'] as const) {
      const request = takeoffRequest('takeoff-28', {
        'policies.unreportedGust': unreportedGust,
        'weather.wind.gust': undefined,
        'weather.dewPoint': undefined,
      });
      const { temperature, wind, qnh } = request.weather;
      const one = value(prepareTakeoff(request)).compare(conditionsOf(request.weather, { ...policy, unreportedGust }));
      const many = value(prepareTakeoffColumns(request)).compare({
        weather: {
          from: column('degTrue', [(wind.from as { value: number }).value]),
          speed: column('kt', [wind.speed.value]),
          temperature: column('degC', [temperature.value]),
          qnh: column('hPa', [qnh?.value]),
        },
      });
      expectRows(many, [one]);
    }
  });

  it('is the same at the mass of the request', () => {
    expect(prepared.compare({ weather: hours, mass: kg(940) })).toEqual(prepared.compare({ weather: hours }));
  });
});

const policy = { unreportedGust: policyDefaults.unreportedGust.default };
