import { describe, expect, it } from 'vitest';
import { type Chart, isChart, printedRange, runsAlong, type Table } from '../../src/aircraft/index.ts';

const table: Table<'m'> = {
  axes: [
    { quantity: 'mass', unit: 'lb', values: [1500, 1600, 1800] },
    { quantity: 'headwind', unit: 'kt', values: [-5, 0, 10] },
  ],
  unit: 'm',
  cells: [
    [4, 3, 2],
    [5, 4, 3],
    [6, 5, 4],
  ],
};

/** Lines of unequal lengths: read is where all of a panel are drawn. */
const chart: Chart<'m'> = {
  panels: [
    {
      along: { quantity: 'temperature', unit: 'degC' },
      family: { quantity: 'pressureAltitude', unit: 'ftPA' },
      curves: [
        {
          at: -500,
          points: [
            [-20, 1],
            [0, 2],
            [40, 3],
          ],
        },
        {
          at: 2000,
          points: [
            [-10, 2],
            [35, 4],
          ],
        },
        {
          at: 6000,
          points: [
            [-15, 3],
            [38, 5],
          ],
        },
      ],
    },
    {
      along: { quantity: 'mass', unit: 'kg' },
      referenceLine: 900,
      guides: [
        [
          [650, 1],
          [900, 2],
        ],
        [
          [700, 2],
          [950, 3],
        ],
      ],
    },
  ],
  unit: 'm',
};

describe('what figures run along', () => {
  it('is told of tables and charts alike', () => {
    expect([isChart(table), isChart(chart)]).toEqual([false, true]);
    expect(['mass', 'headwind', 'temperature'].map((each) => runsAlong(table, each as never))).toEqual([
      true,
      true,
      false,
    ]);
    const ofChart = ['temperature', 'pressureAltitude', 'mass', 'headwind'].map((each) =>
      runsAlong(chart, each as never),
    );
    expect(ofChart).toEqual([true, true, true, false]);
  });

  it('has the ends of what is printed', () => {
    expect(printedRange(table, 'mass')).toEqual({ quantity: 'mass', unit: 'lb', from: 1500, to: 1800 });
    expect(printedRange(table, 'headwind')).toEqual({ quantity: 'headwind', unit: 'kt', from: -5, to: 10 });
    expect(printedRange(table, 'slope')).toBeUndefined();
  });

  it('has the ends of what all lines of a panel are drawn for', () => {
    expect(printedRange(chart, 'temperature')).toEqual({ quantity: 'temperature', unit: 'degC', from: -10, to: 35 });
    expect(printedRange(chart, 'pressureAltitude')).toEqual({
      quantity: 'pressureAltitude',
      unit: 'ftPA',
      from: -500,
      to: 6000,
    });
    expect(printedRange(chart, 'mass')).toEqual({ quantity: 'mass', unit: 'kg', from: 700, to: 900 });
    expect(printedRange(chart, 'slope')).toBeUndefined();
  });
});
