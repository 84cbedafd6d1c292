import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bracketPrepared,
  bracketTable,
  prepareTable,
  type ReadingMode,
  type Table,
  type TablePoint,
} from '../../src/aircraft/index.ts';
import { isSameAxes } from '../../src/aircraft/prepared-table.ts';

const figure = (i: number, j: number, k: number) => 200 + 40 * i + 25 * j * j + 15 * k + 10 * i * k;

/** An invented table in pounds and degrees Fahrenheit with one blank cell; the second has other figures on its axes. */
const tableOf = (more: number): Table<'m'> => ({
  axes: [
    { quantity: 'mass', unit: 'lb', values: [1800, 2200] },
    { quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 2000, 4000] },
    { quantity: 'temperature', unit: 'degF', values: [32, 68, 104] },
  ],
  unit: 'm',
  cells: [0, 1].map((i) =>
    [0, 1, 2].map((j) => [0, 1, 2].map((k) => (i + j + k === 5 ? null : more + figure(i, j, k)))),
  ),
});
const roll = tableOf(0);
const distance = tableOf(300);

const mode: fc.Arbitrary<ReadingMode> = fc.record({
  favourableEdge: fc.constantFrom('read-at-edge', 'refuse'),
  between: fc.constantFrom('interpolate', 'next-worse'),
  worse: fc.constantFrom('greater', 'less'),
  highIsFavourable: fc.constant(['headwind'] as const),
});
/** Few values, so that axes often stay where they were: printed ones, between them, beyond either end, or none at all. */
const point: fc.Arbitrary<TablePoint> = fc.record({
  mass: fc.constantFrom(undefined, 700, 850, 900, 997.9, 1100),
  pressureAltitude: fc.constantFrom(undefined, -500, 0, 900, 2000, 3500, 4000, 4500),
  temperature: fc.constantFrom(undefined, -10, 0, 12, 20, 33, 40, 50, Number.NaN),
});

/** A reading that the next one cannot write over. */
function kept(reading: ReturnType<typeof bracketTable>) {
  if (!reading.ok) return reading;
  const { lower, upper, at, corners } = reading.cell;
  return { atEdge: reading.atEdge, cell: [lower, upper, at, corners].map((list) => Array.from(list)) };
}

describe('a prepared table', () => {
  it('reads every point as the printed table does, whatever was read before', () => {
    fc.assert(
      fc.property(mode, fc.array(point, { minLength: 2, maxLength: 12 }), (how, points) => {
        const prepared = prepareTable(roll, how);
        for (const at of points) expect(kept(bracketPrepared(prepared, at))).toEqual(kept(bracketTable(roll, at, how)));
      }),
      { numRuns: 2000 },
    );
  });

  it('shares its axes with another table on them, and neither reads for the other', () => {
    const readings = fc.array(fc.tuple(fc.boolean(), point), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(mode, readings, (how, given) => {
        const ofRoll = prepareTable(roll, how);
        const ofDistance = prepareTable(distance, how, ofRoll);
        expect(ofDistance.along).toBe(ofRoll.along);
        for (const [isRoll, at] of given) {
          const [prepared, printed] = isRoll ? [ofRoll, roll] : [ofDistance, distance];
          expect(kept(bracketPrepared(prepared, at))).toEqual(kept(bracketTable(printed, at, how)));
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('knows the axes of another table by their quantity, their unit and all of their values', () => {
    const axis = { quantity: 'temperature', unit: 'degC', values: [0, 20, 40] } as const;
    const other = { quantity: 'mass', unit: 'kg', values: [0, 20, 40] } as const;
    expect(isSameAxes([], [])).toBe(true);
    expect(isSameAxes([axis, other], [{ ...axis, values: [...axis.values] }, other])).toBe(true);
    for (const axes of [
      [],
      [axis],
      [axis, axis],
      [other, axis],
      [axis, other, other],
      [{ ...axis, unit: 'degF' as const }, other],
      [{ ...axis, quantity: 'isaDeviation' as const }, other],
      [{ ...axis, values: [0, 20] }, other],
      [{ ...axis, values: [0, 20, 40, 60] }, other],
      [{ ...axis, values: [0, 21, 40] }, other],
      [{ ...axis, values: [1, 21, 41] }, other],
      [axis, { ...other, values: [0, 20, 41] }],
    ]) {
      expect(isSameAxes([axis, other], axes), JSON.stringify(axes)).toBe(false);
    }
  });

  it('shares nothing with a table on other axes or read in another way', () => {
    const how = { favourableEdge: 'refuse', between: 'interpolate', worse: 'greater', highIsFavourable: [] } as const;
    const other = {
      ...distance,
      axes: distance.axes.map((axis, k) => (k === 1 ? { ...axis, values: [0, 1, 2] } : axis)),
    };
    const first = prepareTable(roll, how);
    expect(prepareTable(other, how, first).along).not.toBe(first.along);
    for (const change of [
      { between: 'next-worse' },
      { favourableEdge: 'read-at-edge' },
      { highIsFavourable: ['headwind'] },
    ] as const) {
      expect(prepareTable(distance, { ...how, ...change }, first).along).not.toBe(first.along);
    }
  });
});
