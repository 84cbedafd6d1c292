import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ClimbProgressData,
  climbIncrement,
  climbProgress,
  readPerformanceData,
} from '../../src/aircraft/index.ts';
import { DomainError, degCDifference, ftPA, kg } from '../../src/units/index.ts';
import { performanceDocument } from './documents.ts';

const data = (): ClimbProgressData => performanceDocument('linnet-two').climbProgress?.[0] as ClimbProgressData;
const at = (from: number, to: number, deviation = 0) =>
  climbProgress({
    data: data(),
    from: ftPA(from),
    to: ftPA(to),
    mass: kg(700),
    isaDeviation: degCDifference(deviation),
  });

describe('climbProgress', () => {
  it('is the difference of two printed rows', () => {
    expect(at(2000, 6000)).toEqual({ time: 8, fuel: { value: 3, unit: 'L' }, distance: 10 });
  });

  it('adds up: a climb in two parts takes what it takes in one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 3000 }),
        fc.integer({ min: 1, max: 2500 }),
        fc.integer({ min: 1, max: 2400 }),
        (from, first, second) => {
          const [lower, upper, whole] = [
            at(from, from + first),
            at(from + first, from + first + second),
            at(from, from + first + second),
          ];
          expect(lower.time + upper.time).toBeCloseTo(whole.time, 9);
          expect(lower.fuel.value + upper.fuel.value).toBeCloseTo(whole.fuel.value, 9);
          expect(lower.distance + upper.distance).toBeCloseTo(whole.distance, 9);
        },
      ),
    );
  });

  it('takes more in warm air by the law of the manual, and no less in cold air', () => {
    // 10 % for each 10 °C.
    expect(at(2000, 6000, 5).time).toBeCloseTo(8 * 1.05, 12);
    expect(at(2000, 6000, -10)).toEqual(at(2000, 6000));
  });

  it.each([
    ['to', () => at(3000, 3000)],
    ['from', () => at(-100, 3000)],
    ['at.pressureAltitude', () => at(3000, 9000)],
    ['isaDeviation', () => at(1000, 3000, 31)],
    [
      'mass',
      () =>
        climbProgress({ data: data(), from: ftPA(0), to: ftPA(1000), mass: kg(751), isaDeviation: degCDifference(0) }),
    ],
  ])('refuses a bad %s and names it', (parameter, call) => {
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter.replace('.', '\\.')}: `));
  });
});

describe('a climb through tables with axes of their own', () => {
  // Along mass and the deviation from standard; figures that tell every corner from the others.
  const axes = [
    { quantity: 'mass', unit: 'kg', values: [600, 800] },
    { quantity: 'pressureAltitude', unit: 'ftPA', values: [1000, 5000] },
    { quantity: 'isaDeviation', unit: 'degCDifference', values: [0, 20] },
  ] as const;
  const cells = [
    [
      [0, 0],
      [8, 10],
    ],
    [
      [0, 0],
      [12, 18],
    ],
  ];
  const printed: ClimbProgressData = {
    name: 'own axes',
    flap: '0',
    power: 'full',
    speed: { axes: [], unit: 'kias', cells: 62 },
    associatedConditions: {},
    time: { axes, cells, unit: 'min' },
    fuel: { axes, cells, unit: 'USgal' },
    distance: { axes, cells, unit: 'NM' },
  };
  const climb = (mass: number, deviation: number, from = 1000) =>
    climbProgress({
      data: printed,
      from: ftPA(from),
      to: ftPA(5000),
      mass: kg(mass),
      isaDeviation: degCDifference(deviation),
    });

  it('is read along them, with no law beside', () => {
    expect(climb(600, 20)).toEqual({ time: 10, fuel: { value: 10, unit: 'USgal' }, distance: 10 });
    // Half way between the masses and the deviations: (8 + 10 + 12 + 18) / 4.
    expect(climb(700, 10).time).toBe(12);
    // From half way up only half is left.
    expect(climb(700, 10, 3000).time).toBe(6);
  });

  it('is not read along a temperature, whatever else is said of warm air', () => {
    const own = [axes[1], { quantity: 'temperature', unit: 'degC', values: [0, 20] }] as const;
    const along = { axes: own, cells: cells[0] as number[][] };
    const data: ClimbProgressData = {
      ...printed,
      time: { ...along, unit: 'min' },
      fuel: { ...along, unit: 'L' },
      distance: { ...along, unit: 'NM' },
    };
    const call = () =>
      climbProgress({ data, from: ftPA(1000), to: ftPA(5000), mass: kg(600), isaDeviation: degCDifference(10) });
    expect(call).toThrow(/^at\.temperature: none/);
  });

  it('has no limit of mass but the axis, and begins no lower than the tables', () => {
    expect(() => climb(801, 0)).toThrow(/^at\.mass: 801 kg is not within 600 to 800 kg/);
    expect(climb(600, 0, 1000).time).toBe(8);
    expect(() => climb(600, 0, 999)).toThrow(/^from: 999 ftPA is not within 1000 to any ftPA/);
  });
});

describe('a climb in warm air', () => {
  it('is refused above the last deviation of the law, and not at it', () => {
    // Three steps of 10 % make 8 min into 10.4.
    expect(at(2000, 6000, 30).time).toBeCloseTo(10.4, 9);
    expect(() => at(2000, 6000, 30.1)).toThrow(
      /^isaDeviation: 30\.1 degCDifference is not within any to 30 degCDifference/,
    );
  });

  it('is refused without a law, unless the air is standard', () => {
    const { aboveStandard: _law, ...lawless } = data();
    const inAir = (deviation: number) =>
      climbProgress({
        data: lawless,
        from: ftPA(2000),
        to: ftPA(6000),
        mass: kg(750),
        isaDeviation: degCDifference(deviation),
      });
    expect(inAir(0).time).toBe(8);
    expect(() => inAir(0.1)).toThrow(/^isaDeviation: 0\.1 degCDifference is not within any to 0 degCDifference/);
  });
});

describe('the mass of a climb', () => {
  const pounds = { ...data(), associatedConditions: { mass: { value: 1500, unit: 'lb' } } } as const;
  // 1500 x 0.45359237 kg are 680.388555 kg.
  const of = (mass: number) => () =>
    climbProgress({ data: pounds, from: ftPA(0), to: ftPA(2000), mass: kg(mass), isaDeviation: degCDifference(0) });

  it('is at most what the tables hold for, in any unit', () => {
    expect(of(680.3885)().time).toBe(3);
    expect(of(680.389)).toThrow(/^mass: 680\.389 kg is not within 0 to 680\.388/);
    expect(of(Number.NaN)).toThrow(DomainError);
  });
});

describe('climbIncrement', () => {
  it('is nothing between equal figures, and the difference times the factor', () => {
    expect(climbIncrement({ atLower: 0, atUpper: 0, factor: 1 })).toBe(0);
    expect(climbIncrement({ atLower: 4, atUpper: 4, factor: 2 })).toBe(0);
    expect(climbIncrement({ atLower: 4, atUpper: 10, factor: 1.5 })).toBe(9);
  });

  it.each([
    [{ atLower: Number.POSITIVE_INFINITY, atUpper: Number.POSITIVE_INFINITY, factor: 1 }, 'atLower: Infinity'],
    [{ atLower: 3, atUpper: 2, factor: 1 }, 'atUpper: 2 table unit is not within 3 to any table unit'],
    [{ atLower: 3, atUpper: 5, factor: 0.9 }, 'factor: 0.9 table unit is not within 1 to any table unit'],
  ])('says what it refuses: %j', (inputs, message) => {
    expect(() => climbIncrement(inputs)).toThrow(message);
  });

  it.each([
    ['atLower', { atLower: -1 }],
    ['atUpper', { atUpper: 2 }],
    ['atUpper', { atUpper: Number.NaN }],
    ['factor', { factor: 0.9 }],
    ['factor', { factor: Number.POSITIVE_INFINITY }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => climbIncrement({ atLower: 3, atUpper: 5, factor: 1, ...inputs });
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('the tables of a climb progress', () => {
  const faults = (change: (progress: Record<string, never>) => void) => {
    const document = structuredClone(performanceDocument('linnet-two')) as never as {
      climbProgress: Record<string, never>[];
    };
    change(document.climbProgress[0] as Record<string, never>);
    const read = readPerformanceData(document);
    return read.ok ? [] : read.faults.map(({ path, message }) => `${path}: ${message}`);
  };
  const put = (part: unknown, key: string, value: unknown) => {
    (part as Record<string, unknown>)[key] = value;
  };

  it.each([
    ['run along other axes', (p: Record<string, never>) => put(p['fuel'], 'axes', []), /fuel/],
    [
      'fall with altitude',
      (p: Record<string, never>) => put(p['time'], 'cells', [0, 5, 4, 12, 19]),
      /time\.cells\[2\].*4 min is less than 5/,
    ],
    ['name no mass', (p: Record<string, never>) => put(p, 'associatedConditions', {}), /associatedConditions\.mass/],
    ['have another unit', (p: Record<string, never>) => put(p['distance'], 'unit', 'm'), /distance\.unit/],
  ])('are refused when they %s', (_, change, message) => {
    expect(faults(change).join('\n')).toMatch(message);
  });

  /** All three tables along the same axes, with the same cells. */
  const along = (p: Record<string, never>, axes: unknown, cells: unknown) => {
    for (const table of ['time', 'fuel', 'distance']) {
      put(p[table], 'axes', axes);
      put(p[table], 'cells', cells);
    }
  };
  const altitude = { quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 4000] };
  const mass = { quantity: 'mass', unit: 'kg', values: [600, 750] };
  const deviation = { quantity: 'isaDeviation', unit: 'degCDifference', values: [0, 20] };
  const headwind = { quantity: 'headwind', unit: 'kt', values: [0, 20] };
  const square = [
    [0, 7],
    [0, 8],
  ];

  it('name every axis that a climb is not read along, and the one that is needed', () => {
    expect(faults((p) => along(p, [headwind, altitude], square))).toEqual([
      'climbProgress[0].time.axes: a climb is not read along headwind',
    ]);
    expect(faults((p) => along(p, [headwind], [0, 7]))).toEqual([
      'climbProgress[0].time.axes: an axis of pressureAltitude is needed',
      'climbProgress[0].time.axes: a climb is not read along headwind',
    ]);
  });

  it('state a mass or have an axis of it, and not both', () => {
    const path = 'climbProgress[0].associatedConditions.mass';
    const message = `${path}: either an axis of mass or the mass that the tables hold for is needed`;
    expect(faults((p) => along(p, [mass, altitude], square))).toEqual([message]);
    expect(faults((p) => put(p, 'associatedConditions', {}))).toEqual([message]);
    const withAxis = (p: Record<string, never>) => {
      along(p, [mass, altitude], square);
      put(p, 'associatedConditions', {});
    };
    // The printed example is of tables without that axis; a finding, not a fault.
    expect(faults(withAxis)).toEqual([]);
  });

  it('have an axis of the deviation from standard or a law of it, and not both', () => {
    const message = 'the tables have an axis of isaDeviation; a law beside it contradicts that';
    expect(faults((p) => along(p, [deviation, altitude], square))).toEqual([
      `climbProgress[0].aboveStandard: ${message}`,
    ]);
    const lawless = (p: Record<string, never>) => {
      along(p, [deviation, altitude], square);
      delete p['aboveStandard'];
    };
    expect(faults(lawless)).toEqual([]);
  });

  it('each run along the axes of the first', () => {
    const message = 'time, fuel and distance must run along the same axes';
    const other = { ...altitude, values: [0, 2000, 4000, 6000, 9000] };
    expect(faults((p) => put(p['fuel'], 'axes', [other]))).toEqual([`climbProgress[0].fuel.axes: ${message}`]);
    expect(faults((p) => put(p['distance'], 'axes', [other]))).toEqual([`climbProgress[0].distance.axes: ${message}`]);
  });

  it('fall at no altitude, for no mass, and may stay the same', () => {
    const withAxis = (cells: unknown) => (p: Record<string, never>) => {
      along(p, [mass, altitude], square);
      put(p, 'associatedConditions', {});
      put(p['fuel'], 'cells', cells);
    };
    expect(
      faults(
        withAxis([
          [5, 5],
          [1, 2],
        ]),
      ),
    ).toEqual([]);
    expect(
      faults(
        withAxis([
          [5, 6],
          [7, 6.5],
        ]),
      ),
    ).toEqual(['climbProgress[0].fuel.cells[1][1]: 6.5 L is less than 7 L at the altitude below']);
    expect(
      faults(
        withAxis([
          [5, null],
          [null, 6],
        ]),
      ),
    ).toEqual([]);
  });

  it('have a name of their own', () => {
    const document = structuredClone(performanceDocument('linnet-two')) as never as { climbProgress: unknown[] };
    document.climbProgress.push(structuredClone(document.climbProgress[0]));
    const read = readPerformanceData(document);
    expect(read.ok ? [] : read.faults).toEqual([
      { path: 'climbProgress[1]', message: 'a second entry for "normal climb"' },
    ]);
  });
});
