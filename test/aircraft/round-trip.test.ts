import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printedRanges } from '../../src/aircraft/figures.ts';
import {
  axisFacts,
  type Figures,
  type PerformanceData,
  readPerformanceData,
  type Table,
} from '../../src/aircraft/index.ts';
import { figureReader } from '../../src/aircraft/samples.ts';
import { convert } from '../../src/units/unit-table.ts';
import { performanceData } from '../assessment/scenario.ts';
import { anywhere, chartOf, gridOf, type Law, printed, straightLaw } from './digitised.ts';

function read(json: unknown): PerformanceData {
  const result = readPerformanceData(json);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const written = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

/** Every figure of the data that is read between printed values, by its place in the document. */
function readable(data: PerformanceData): [string, Figures | Table][] {
  const distances = ['takeoff', 'landing'] as const;
  return [
    ...distances.flatMap((phase) =>
      data[phase].flatMap((table, i) =>
        Object.entries(table).flatMap(([key, part]): [string, Figures | Table][] =>
          typeof part === 'object' && ('cells' in part || 'panels' in part) ? [[`${phase}[${i}].${key}`, part]] : [],
        ),
      ),
    ),
    ...data.climb.flatMap(({ speed, rateOfClimb }, i): [string, Figures | Table][] => [
      [`climb[${i}].speed`, speed],
      [`climb[${i}].rateOfClimb`, rateOfClimb],
    ]),
  ];
}

/** The figures at a place given by a share of each printed range. */
function figuresAt(data: PerformanceData, shares: readonly number[]) {
  return readable(data).map(([place, figures]) => {
    const point = printedRanges(figures).map(({ quantity, unit, from, to }, i) => {
      const value = from + (to - from) * (shares[i] as number);
      return [quantity, convert(value, unit, axisFacts[quantity].readingUnit)];
    });
    return [place, figureReader(figures)(Object.fromEntries(point))] as const;
  });
}

const shares = fc.array(anywhere(0, 1), { minLength: 5, maxLength: 5 });

function changesNothing(json: unknown, at: readonly number[]): void {
  const first = read(json);
  const again = read(written(first));
  expect(first).toEqual(json);
  expect(again).toEqual(first);
  const figures = figuresAt(first, at);
  expect(figuresAt(again, at)).toEqual(figures);
  expect(figures.length).toBeGreaterThan(6);
  expect(figures.filter(([, figure]) => figure !== undefined).length).toBeGreaterThan(figures.length / 2);
}

/** Forms that the examples do not show: imperial units, a blank cell, laws and speeds as a manual may print them. */
function otherForms(): unknown {
  const data = performanceData('corran-four') as unknown as PerformanceData;
  const [takeoff] = data.takeoff;
  const axes = [
    { quantity: 'mass', unit: 'lb', values: [1875, 2315] },
    { quantity: 'densityAltitude', unit: 'ftDA', values: [-1000, 0.1 + 0.2, 8000] },
  ];
  const imperial = (cells: unknown) => ({ axes, unit: 'ft', cells });
  return {
    ...data,
    examples: [],
    masses: { maximumTakeoff: { value: 2315, unit: 'lb' }, maximumLanding: { value: 2315, unit: 'lb' } },
    tailwind: [{ speed: { value: 10, unit: 'mph' }, status: 'limitation' }],
    takeoff: [
      {
        ...takeoff,
        groundRoll: imperial([
          [500, 600.25, 900],
          [700, 1e3 / 3 + 500, null],
        ]),
        distance: imperial([
          [1000, 1200, 1800],
          [1400, 1700, null],
        ]),
        corrections: {
          tailwind: {
            change: { value: 10, unit: 'percent' },
            per: { value: 2, unit: 'kt' },
            upTo: { value: 10, unit: 'kt' },
          },
          surfaces: [
            { surface: 'grass', condition: 'dry', increase: { value: 15, unit: 'percent' }, percentOf: 'ground roll' },
          ],
        },
      },
    ],
  };
}

describe('performance data read, written and read again', () => {
  it.each([
    ['a table', performanceData('corran-four')],
    ['a chart', performanceData('skerry-two')],
    ['other forms', otherForms()],
  ])('are the same, figure by figure: %s', (_name, json) => {
    fc.assert(
      fc.property(shares, (at) => changesNothing(json, at)),
      { numRuns: 20 },
    );
  });

  it('are the same for figures of any number of digits', () => {
    const digitise = fc.constantFrom(
      (law: Law) => gridOf(law, printed),
      (law: Law) => chartOf(law, printed, [50, 350, 800, 3000]),
    );
    fc.assert(
      fc.property(straightLaw, digitise, shares, (law, shape, at) => {
        const data = performanceData('corran-four') as unknown as PerformanceData;
        const half: Law = { ...law, base: (...place) => law.base(...place) / 2 };
        const takeoff = { ...data.takeoff[0], groundRoll: shape(half), distance: shape(law), corrections: {} };
        changesNothing(written({ ...data, examples: [], takeoff: [takeoff] }), at);
      }),
      { numRuns: 40 },
    );
  });
});
