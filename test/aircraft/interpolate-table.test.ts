import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { interpolateCell, interpolateTable, type Table } from '../../src/aircraft/index.ts';
import { DomainError, degC, ftPA, kg, kilogramsFromPounds, kt, lb } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';
import { detailOf } from '../refusal.ts';

/** An invented table on all three axes: every step up along any axis is longer. */
const figure = (i: number, j: number, k: number) => 200 + 40 * i + 25 * j * j + 15 * k + 10 * i * k;
const three = {
  axes: [
    { quantity: 'mass', unit: 'kg', values: [800, 1000] },
    { quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 2000, 4000] },
    { quantity: 'temperature', unit: 'degC', values: [0, 20, 40] },
  ],
  unit: 'm',
  cells: [0, 1].map((i) => [0, 1, 2].map((j) => [0, 1, 2].map((k) => figure(i, j, k)))),
} as const satisfies Table<'m'>;

function onAltitude(cells: readonly (number | null)[]): Table<'ft'> {
  const values = cells.map((_, i) => 1000 * i);
  return { axes: [{ quantity: 'pressureAltitude', unit: 'ftPA', values }], unit: 'ft', cells };
}

describe('interpolateTable', () => {
  it('returns every printed figure unchanged', () => {
    for (const [i, mass] of [800, 1000].entries())
      for (const [j, altitude] of [0, 2000, 4000].entries())
        for (const [k, temperature] of [0, 20, 40].entries()) {
          const at = { mass: kg(mass), pressureAltitude: ftPA(altitude), temperature: degC(temperature) };
          for (const between of ['interpolate', 'next-worse'] as const)
            expect(interpolateTable({ table: three, at, worse: 'greater', between })).toBe(figure(i, j, k));
        }
  });

  it('lies between the best figure of the table and the next worse one', () => {
    const within = (min: number, max: number) => evenly(min, max);
    fc.assert(
      fc.property(within(800, 1000), within(0, 4000), within(0, 40), (mass, altitude, temperature) => {
        const at = { mass: kg(mass), pressureAltitude: ftPA(altitude), temperature: degC(temperature) };
        const read = interpolateTable({ table: three, at, worse: 'greater' });
        expect(read).toBeGreaterThanOrEqual(figure(0, 0, 0) - 1e-9);
        const worse = interpolateTable({ table: three, at, worse: 'greater', between: 'next-worse' });
        expect(worse).toBeGreaterThanOrEqual(read - 1e-9);
      }),
    );
  });

  it('reads along each axis separately', () => {
    const at = { mass: kg(900), pressureAltitude: ftPA(500), temperature: degC(10) };
    // Mass half way, altitude a quarter, temperature half way: 200 + 40/2 + 25/4 + 15/2 + 10/4.
    expect(interpolateTable({ table: three, at, worse: 'greater' })).toBeCloseTo(236.25, 9);
  });

  it('takes the point in its own units, whatever the table is printed in', () => {
    const table = {
      axes: [
        { quantity: 'mass', unit: 'lb', values: [2000, 2400] },
        { quantity: 'temperature', unit: 'degF', values: [32, 68] },
      ],
      unit: 'ft',
      cells: [
        [800, 880],
        [1000, 1080],
      ],
    } as const;
    const at = { mass: kilogramsFromPounds(lb(2200)), temperature: degC(10) };
    expect(interpolateTable({ table, at, worse: 'greater' })).toBeCloseTo(940, 9);
  });

  it('reads a table without axes at its one figure', () => {
    expect(interpolateTable({ table: { axes: [], unit: 'ft', cells: 700 }, at: {}, worse: 'greater' })).toBe(700);
  });

  it('takes the next worse printed figure as it stands', () => {
    const at = { pressureAltitude: ftPA(1001) };
    const table = onAltitude([900, 1000, 1120]);
    expect(interpolateTable({ table, at, worse: 'greater', between: 'next-worse' })).toBe(1120);
    const climb = { ...table, unit: 'ftPerMin', cells: [700, 640, 580] } as const;
    expect(interpolateTable({ table: climb, at, worse: 'less', between: 'next-worse' })).toBe(580);
  });
});

describe('the edges of a table', () => {
  const table = onAltitude([900, 1000, 1120]);
  const below = { pressureAltitude: ftPA(-300) };

  it('are read at the favourable one, without credit for being beyond it', () => {
    expect(interpolateTable({ table, at: below, worse: 'greater' })).toBe(900);
    expect(interpolateTable({ table, at: below, worse: 'greater', between: 'next-worse' })).toBe(900);
    expect(interpolateTable({ table: onAltitude([900, 900]), at: below, worse: 'greater' })).toBe(900);
  });

  it('keep the other axes interpolating', () => {
    const at = { mass: kg(700), pressureAltitude: ftPA(-300), temperature: degC(10) };
    expect(interpolateTable({ table: three, at, worse: 'greater' })).toBeCloseTo(207.5, 9);
  });

  it.each([
    ['the favourable one where the policy refuses it', { table, at: below, favourableEdge: 'refuse' }, /-300 ftPA/],
    ['the far one', { table, at: { pressureAltitude: ftPA(2000.1) } }, /2000\.1 ftPA is not within 0 to 2000/],
    ['the favourable one where figures improve from it', { table: onAltitude([900, 890]), at: below }, /improve/],
    ['the favourable one where the next figure is blank', { table: onAltitude([900, null]), at: below }, /improve/],
  ] as const)('are refused: %s', (_name, inputs, message) => {
    const call = () => interpolateTable({ worse: 'greater', ...inputs });
    expect(call).toThrow(DomainError);
    expect(call).toThrow(/^at\.pressureAltitude: /);
    expect(call).toThrow(message);
  });

  it('judge improvement by the side on which figures get worse', () => {
    const climb = { ...onAltitude([]), unit: 'ftPerMin' } as const;
    const axes = onAltitude([0, 0]).axes;
    expect(interpolateTable({ table: { ...climb, axes, cells: [700, 640] }, at: below, worse: 'less' })).toBe(700);
    expect(() => interpolateTable({ table: { ...climb, axes, cells: [640, 700] }, at: below, worse: 'less' })).toThrow(
      /improve/,
    );
  });

  it('name an axis for which the point has no value', () => {
    expect(() => interpolateTable({ table, at: { mass: kg(900) }, worse: 'greater' })).toThrow(
      /^at\.pressureAltitude: /,
    );
  });

  it('have the high one of a headwind as the favourable one, unless told otherwise', () => {
    const axes = [{ quantity: 'headwind', unit: 'kt', values: [0, 10] }] as const;
    const inWind = { axes, unit: 'ft', cells: [900, 800] } as const;
    const call = (more: object) => () =>
      interpolateTable({ table: inWind, at: { headwind: kt(12) }, worse: 'greater', ...more });
    expect(call({})()).toBe(800);
    expect(call({ highIsFavourable: [] })).toThrow(/^at\.headwind: 12 kt is not within 0 to 10 kt/);
  });

  it('are said with the axis and its ends', () => {
    const refusal = (at: object, of: Table<'ft'> = table) =>
      detailOf(() => interpolateTable({ table: of, at, worse: 'greater' }));
    const along = { parameter: 'at.pressureAltitude', unit: 'ftPA', min: 0, max: 2000 };
    expect(refusal({ pressureAltitude: 2500 })).toMatchObject({
      ...along,
      code: 'out-of-range',
      received: 2500,
      source: 'printed axis',
    });
    expect(refusal({})).toMatchObject({ ...along, code: 'not-a-number', received: 'none' });
    expect(refusal(below, onAltitude([900, 890]))).toMatchObject({
      code: 'out-of-range',
      received: 0,
      max: 1000,
      source: 'figures improve from the edge',
    });
    expect(refusal({ pressureAltitude: 1500 }, onAltitude([900, 1000, null]))).toMatchObject({
      code: 'out-of-range',
      parameter: 'at',
      received: '{"pressureAltitude":1500}',
      min: 'printed cells',
    });
  });

  it('refuse NaN', () => {
    const at = { pressureAltitude: Number.NaN } as never;
    for (const between of ['interpolate', 'next-worse'] as const)
      expect(() => interpolateTable({ table, at, worse: 'greater', between })).toThrow(DomainError);
  });
});

describe('a blank cell', () => {
  const table = onAltitude([900, 1000, null, 1300]);

  it.each([1500, 2000, 2500])('leaves no figure beside it: %d ft', (altitude) => {
    const call = () => interpolateTable({ table, at: { pressureAltitude: ftPA(altitude) }, worse: 'greater' });
    expect(call).toThrow(DomainError);
    expect(call).toThrow(/blank/);
  });

  it('does not touch the printed figures next to it', () => {
    expect(interpolateTable({ table, at: { pressureAltitude: ftPA(1000) }, worse: 'greater' })).toBe(1000);
    expect(interpolateTable({ table, at: { pressureAltitude: ftPA(3000) }, worse: 'greater' })).toBe(1300);
  });

  it('is not stepped over to the next worse figure', () => {
    const at = { pressureAltitude: ftPA(1500) };
    expect(() => interpolateTable({ table, at, worse: 'greater', between: 'next-worse' })).toThrow(/blank/);
  });
});

describe('interpolateCell', () => {
  it('reads along up to four axes, the last running fastest', () => {
    // A figure for each corner that is linear in all four: 1000 a + 100 b + 10 c + d, and a product that is not.
    const sum = (a: number, b: number, c: number, d: number) => 1000 * a + 100 * b + 10 * c + d + 7 * a * b * c * d;
    const shares = [0.25, 0.5, 0.75, 0.125] as const;
    for (const rank of [0, 1, 2, 3, 4]) {
      const of = (bits: number[]) =>
        sum(...([0, 1, 2, 3].map((k) => bits[k] ?? 0) as [number, number, number, number]));
      const corners = Array.from({ length: 2 ** rank }, (_, i) =>
        of(Array.from({ length: rank }, (_unused, k) => (i >> (rank - 1 - k)) & 1)),
      );
      const at = shares.slice(0, rank);
      const lower = at.map(() => 0);
      const upper = at.map(() => 1);
      // Linear along each axis by itself, so that the shares stand for the bits.
      expect(interpolateCell({ lower, upper, at, corners })).toBeCloseTo(of([...at]), 12);
    }
  });

  it('takes a printed value as it stands, whatever stands beside it', () => {
    const one = { lower: [5], upper: [5], at: [5] };
    expect(interpolateCell({ ...one, corners: [3, 1e9] })).toBe(3);
    expect(interpolateCell({ lower: [0], upper: [4], at: [4], corners: [3, 7] })).toBe(7);
    expect(interpolateCell({ lower: [0], upper: [4], at: [0], corners: [3, 7] })).toBe(3);
  });

  it.each([
    [{ lower: [0], upper: [1], at: [-0.1], corners: [1, 2] }, 'at[0]: -0.1 table unit is not within 0 to 1 table unit'],
    [{ lower: [0, 0], upper: [1, 1], at: [0, 2], corners: [1, 2, 3, 4] }, 'at[1]: 2 table unit is not within 0 to 1'],
    [{ lower: [0, 0, 0], upper: [1, 1, 1], at: [0, 0, 2], corners: new Array(8).fill(1) }, 'at[2]: 2 table unit'],
    [{ lower: [0, 0, 0, 0], upper: [1, 1, 1, 1], at: [0, 0, 0, 2], corners: new Array(16).fill(1) }, 'at[3]: 2'],
    [{ lower: [0, 0, 0, 0], upper: [1, 1, 1, 1], at: [2, 0, 0, 0], corners: new Array(16).fill(1) }, 'at[0]: 2'],
    [{ lower: [], upper: [], at: [0, 0, 0, 0, 0], corners: [] }, 'at: 5 figures is inconsistent with 4 to 4 figures'],
    [{ lower: [0], upper: [1], at: [0], corners: [1, 2, 3] }, 'corners: 3 figures is inconsistent with 2 to 2 figures'],
    [
      { lower: [0], upper: [1], at: [0], corners: [Number.POSITIVE_INFINITY, 2] },
      'corners: NaN table unit is not within -Infinity to Infinity',
    ],
  ])('says what it refuses: %j', (inputs, message) => {
    expect(() => interpolateCell(inputs)).toThrow(message);
  });

  it.each([
    [
      'a point outside its bracket',
      { lower: [2000], upper: [3000], at: [3001], corners: [1115, 1230] },
      /at\[0\]: 3001/,
    ],
    ['NaN for a point', { lower: [0], upper: [1], at: [Number.NaN], corners: [1, 2] }, /at\[0\]: NaN/],
    ['a second axis outside', { lower: [0, 5], upper: [1, 6], at: [0, 4], corners: [1, 2, 3, 4] }, /at\[1\]: 4/],
    ['too few figures', { lower: [0, 5], upper: [1, 6], at: [0, 5], corners: [1, 2] }, /corners: 2/],
    ['a figure that is none', { lower: [0], upper: [1], at: [0.5], corners: [1, Number.NaN] }, /NaN/],
  ])('refuses %s', (_name, inputs, message) => {
    expect(() => interpolateCell(inputs)).toThrow(DomainError);
    expect(() => interpolateCell(inputs)).toThrow(message);
  });
});
