import { describe, expect, it } from 'vitest';
import {
  bracketPrepared,
  bracketTable,
  interpolateCell,
  prepareTable,
  type ReadingMode,
  type Table,
  type TablePoint,
} from '../../src/aircraft/index.ts';

const distances: ReadingMode = {
  favourableEdge: 'read-at-edge',
  between: 'interpolate',
  worse: 'greater',
  highIsFavourable: ['headwind'],
};
const altitude = { quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 2000, 4000] } as const;
const headwind = { quantity: 'headwind', unit: 'kt', values: [-10, 0, 20] } as const;
const mass = { quantity: 'mass', unit: 'lb', values: [2000, 2400] } as const;

/** Every step along the altitude is longer, every step along the wind shorter. */
const table: Table<'m'> = {
  axes: [altitude, headwind],
  unit: 'm',
  cells: [
    [330, 300, 250],
    [390, 340, 280],
    [470, 400, 320],
  ],
};

/** As a single reading and as one of many: they must be the same. */
function read(of: Table<'m'>, point: TablePoint, mode: Partial<ReadingMode> = {}) {
  const how = { ...distances, ...mode };
  const once = bracketTable(of, point, how);
  const often = bracketPrepared(prepareTable(of, how), point);
  expect(often).toEqual(once);
  return once;
}
function figure(of: Table<'m'>, point: TablePoint, mode: Partial<ReadingMode> = {}) {
  const reading = read(of, point, mode);
  return reading.ok ? interpolateCell(reading.cell) : reading.reason;
}
const at = (pressureAltitude: number, wind: number) => ({ pressureAltitude, headwind: wind });

describe('a reading of a table', () => {
  it('names the axes that were read at their favourable edge, in printed order', () => {
    const edges = (point: TablePoint) => {
      const reading = read(table, point);
      return reading.ok && reading.atEdge.map(({ quantity }) => quantity);
    };
    expect(edges(at(1000, 10))).toEqual([]);
    expect(edges(at(-1, 10))).toEqual(['pressureAltitude']);
    expect(edges(at(1000, 21))).toEqual(['headwind']);
    expect(edges(at(-1, 21))).toEqual(['pressureAltitude', 'headwind']);
    expect(figure(table, at(-1, 21))).toBe(250);
    expect(figure(table, at(1000, 25))).toBe(265);
  });

  it.each<[string, TablePoint, object]>([
    ['beyond the far end', at(4001, 0), { reason: 'off-edge', axis: altitude, at: 4001 }],
    ['in more tailwind', at(0, -11), { reason: 'off-edge', axis: headwind, at: -11 }],
    ['without a value for an axis', { pressureAltitude: 0 }, { reason: 'axis-missing', axis: headwind }],
    ['of NaN', at(Number.NaN, 0), { reason: 'off-edge', axis: altitude, at: Number.NaN }],
  ])('has no figure %s', (_name, point, why) => {
    expect(read(table, point)).toEqual({ ok: false, ...why });
  });

  it('has none beyond a favourable edge that is refused', () => {
    const mode = { favourableEdge: 'refuse' } as const;
    expect(read(table, at(-1, 0), mode)).toEqual({ ok: false, reason: 'off-edge', axis: altitude, at: -1 });
    expect(read(table, at(0, 21), mode)).toEqual({ ok: false, reason: 'off-edge', axis: headwind, at: 21 });
    expect(figure(table, at(0, 20), mode)).toBe(250);
  });

  it('puts back on a printed value what a conversion has moved by its last bits, and no more', () => {
    // 2000 lb are 907.18474 kg. The most that is put back is a thousandth of a millionth.
    const inPounds: Table<'m'> = { axes: [mass], unit: 'm', cells: [300, 400] };
    expect(figure(inPounds, { mass: 2400 * 0.45359237 })).toBe(400);
    expect(figure(table, at(4000 + 3e-6, 0))).toBe(400);
    expect(figure(table, at(4000 + 5e-6, 0))).toBe('off-edge');
    const mode = { favourableEdge: 'refuse' } as const;
    expect(figure(table, at(-0.9e-9, 0), mode)).toBe(300);
    expect(figure(table, at(-1.1e-9, 0), mode)).toBe('off-edge');
    expect(figure(table, at(2000 + 1e-6, 0), { between: 'next-worse' })).toBe(340);
    expect(figure(table, at(2000 - 1e-6, 0), { between: 'next-worse' })).toBe(340);
  });

  it('takes the next worse printed figure: the higher altitude, the lesser headwind', () => {
    const mode = { between: 'next-worse' } as const;
    expect(figure(table, at(1, 19), mode)).toBe(340);
    expect(figure(table, at(2000, 1), mode)).toBe(340);
    expect(figure(table, at(3000, -1), mode)).toBe(470);
    expect(figure(table, at(1, 25), mode)).toBe(280);
  });
});

describe('a favourable edge', () => {
  const along = (cells: number[][]) => ({ ...table, cells });

  it('is refused where one figure beside it is better, with the edge that was read', () => {
    const improves = along([
      [330, 300, 250],
      [390, 299, 280],
      [470, 400, 320],
    ]);
    expect(read(improves, at(-5, 0))).toEqual({ ok: false, reason: 'not-monotonic', axis: altitude, at: 0 });
    // At 20 kt the figures worsen: 250 m, 280 m.
    expect(figure(improves, at(-5, 20))).toBe(250);
    const inWind = along([
      [330, 300, 301],
      [390, 340, 280],
      [470, 400, 320],
    ]);
    expect(read(inWind, at(0, 30))).toEqual({ ok: false, reason: 'not-monotonic', axis: headwind, at: 20 });
  });

  it('is refused where one of the figures around the point gets better', () => {
    // In a calm 300 m and then 299 m; at 20 kt 250 m and then 280 m.
    const improves = along([
      [330, 300, 250],
      [390, 299, 280],
      [470, 400, 320],
    ]);
    expect(figure(improves, at(-5, 10))).toBe('not-monotonic');
  });

  it('is judged with every other axis at its own edge', () => {
    // From 290 m the altitude leads to 295 m and the wind to 300 m. That 285 m stand beyond both is not on the way.
    const dips = along([
      [330, 300, 290],
      [390, 285, 295],
      [470, 400, 320],
    ]);
    expect(figure(dips, at(-5, 30))).toBe(290);
  });

  it('may be read where the next figure is the same', () => {
    const level = along([
      [330, 300, 300],
      [390, 300, 280],
      [470, 400, 320],
    ]);
    expect(figure(level, at(-5, 0))).toBe(300);
    expect(figure(level, at(0, 30))).toBe(300);
  });

  it('is held to the other side where less is worse', () => {
    const climb = along([
      [330, 300, 250],
      [300, 280, 240],
      [270, 240, 200],
    ]);
    const mode = { worse: 'less', highIsFavourable: [] } as const;
    expect(figure(climb, at(-5, 0), mode)).toBe(300);
    expect(figure(table, at(-5, 0), mode)).toBe('not-monotonic');
    const level = along([
      [330, 300, 250],
      [330, 300, 240],
      [270, 240, 200],
    ]);
    expect(figure(level, at(-5, 0), mode)).toBe(300);
  });

  it('is refused where the figure beside it is blank, and where there is none at all', () => {
    const blank = {
      ...table,
      cells: [
        [330, 300, 250],
        [390, null, 280],
        [470, 400, 320],
      ],
    };
    expect(figure(blank, at(-5, 0))).toBe('not-monotonic');
    expect(read(blank, at(2000, 0))).toEqual({ ok: false, reason: 'blank', at: at(2000, 0) });
  });
});

describe('a table with parts missing', () => {
  it.each<[string, unknown]>([
    ['a row', [[330, 300, 250]]],
    ['the end of a row', [[330, 300, 250], [390]]],
    ['a list', [[330, 300, 250], null]],
    ['all of it', null],
  ])('has no figure there, and does not throw: %s', (_name, cells) => {
    const broken = { ...table, cells } as Table<'m'>;
    expect(figure(broken, at(2000, 0))).toBe('blank');
  });
});

describe('an axis in another unit than that of the point', () => {
  it('is named where the point has no value for it', () => {
    const inPounds: Table<'m'> = { axes: [mass], unit: 'm', cells: [300, 400] };
    expect(read(inPounds, {})).toEqual({ ok: false, reason: 'axis-missing', axis: mass });
  });
});

describe('every quantity', () => {
  it.each([
    ['mass', 'kg'],
    ['pressureAltitude', 'ftPA'],
    ['densityAltitude', 'ftDA'],
    ['temperature', 'degC'],
    ['isaDeviation', 'degCDifference'],
    ['headwind', 'kt'],
    ['slope', 'percent'],
    ['indicatedAirspeed', 'kias'],
    ['height', 'mHeight'],
  ] as const)('is read along its own axis: %s', (quantity, unit) => {
    const own: Table<'m'> = { axes: [{ quantity, unit, values: [10, 20] }], unit: 'm', cells: [100, 200] };
    expect(figure(own, { [quantity]: 15 })).toBe(150);
    expect(figure(own, quantity === 'mass' ? { slope: 15 } : { mass: 15 })).toBe('axis-missing');
  });
});
