import { describe, expect, it } from 'vitest';
import type { Chart, DistanceData, Table } from '../../src/aircraft/index.ts';
import { rollAtEachDistance } from '../../src/aircraft/roll-and-distance.ts';

const mass = { quantity: 'mass', unit: 'kg', values: [700, 900] } as const;
const altitude = { quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 2000, 4000] } as const;
const temperature = { quantity: 'temperature', unit: 'degC', values: [0, 20] } as const;

function pairs(groundRoll: unknown, distance: unknown) {
  const screenHeight = { value: 50, unit: 'ftHeight' };
  const found = rollAtEachDistance({ groundRoll, distance, screenHeight } as DistanceData);
  return found.map(({ placeOf, cell, roll }) => [placeOf(), cell, roll]);
}

/** Straight lines along temperature, one for each altitude. */
const curves = [
  {
    at: 0,
    points: [
      [0, 200],
      [20, 220],
    ],
  },
  {
    at: 2000,
    points: [
      [0, 240],
      [20, 260],
    ],
  },
] as const;

describe('rollAtEachDistance', () => {
  it('has each printed distance once, with its place, the last axis running fastest', () => {
    const axes = [mass, altitude, temperature];
    // A figure that says where it stands: 1 for each mass, 1 for each altitude, 1 for each temperature, in tens.
    const cells = (more: number) =>
      [0, 1].map((i) => [0, 1, 2].map((j) => [0, 1].map((k) => more + 100 * i + 10 * j + k)));
    const found = pairs({ axes, unit: 'm', cells: cells(200) }, { axes, unit: 'm', cells: cells(400) });
    expect(found).toHaveLength(12);
    expect(found[0]).toEqual(['cells[0][0][0]', 400, 200]);
    expect(found[3]).toEqual(['cells[0][1][1]', 411, 211]);
    expect(found[10]).toEqual(['cells[1][2][0]', 520, 320]);
    expect(found[11]).toEqual(['cells[1][2][1]', 521, 321]);
  });

  it('leaves out what is blank in either', () => {
    const axes = [altitude];
    expect(pairs({ axes, unit: 'm', cells: [200, null, 240] }, { axes, unit: 'm', cells: [400, 420, null] })).toEqual([
      ['cells[0]', 400, 200],
    ]);
  });

  it('has both in the unit of the distance: a foot is 0.3048 m', () => {
    const axes = [altitude];
    const roll = { axes, unit: 'ft', cells: [1000, 1000, 1000] };
    expect(pairs(roll, { axes, unit: 'm', cells: [400, 420, 440] })[2]).toEqual(['cells[2]', 440, 304.8]);
    const turned = { axes: [{ ...altitude, values: [0, 4000] }], unit: 'ft', cells: [1000, 1000] };
    expect(pairs(turned, { axes, unit: 'm', cells: [400, 420, 440] })[2]).toEqual(['cells[2]', 440, 304.8]);
  });

  it('reads the roll where it is printed for other values, and leaves out where it is not', () => {
    const roll = { axes: [{ ...altitude, values: [0, 3000] }], unit: 'm', cells: [200, 260] };
    // 2000 ft lie two thirds of the way from 200 m to 260 m; 4000 ft are beyond.
    expect(pairs(roll, { axes: [altitude], unit: 'm', cells: [400, 420, 440] })).toEqual([
      ['cells[0]', 400, 200],
      ['cells[1]', 420, 240],
    ]);
  });

  it('reads one chart with a panel of height twice: at no height, and at 50 ft, which are 15.24 m', () => {
    const chart: Chart<'m'> = {
      panels: [
        {
          along: temperature,
          family: altitude,
          curves,
        },
        {
          along: { quantity: 'height', unit: 'mHeight' },
          referenceLine: 0,
          guides: [
            [
              [0, 100],
              [15.24, 300],
            ],
            [
              [0, 300],
              [15.24, 700],
            ],
          ],
        },
      ],
      unit: 'm',
    };
    const found = pairs(chart, chart);
    expect(found.map(([place]) => place)).toEqual([
      'panels[0].curves[0].points[0]',
      'panels[0].curves[0].points[1]',
      'panels[0].curves[1].points[0]',
      'panels[0].curves[1].points[1]',
    ]);
    // 200 m lie half way between the guide lines: 500 m at the screen; 260 m eight tenths: 620 m.
    expect(found[0]?.slice(1)).toEqual([500, 200]);
    expect(found[3]?.[1]).toBeCloseTo(620, 9);
    expect(found[3]?.[2]).toBeCloseTo(260, 9);
  });

  it('reads a chart for a table, and leaves out what a chart does not reach', () => {
    const chart = (unit: 'm' | 'ft') => ({ panels: [{ along: temperature, family: altitude, curves }], unit });
    const distance = {
      axes: [altitude, temperature],
      unit: 'm',
      cells: [
        [400, 410],
        [420, 430],
        [440, 450],
      ],
    };
    expect(pairs(chart('m'), distance)).toEqual([
      ['cells[0][0]', 400, 200],
      ['cells[0][1]', 410, 220],
      ['cells[1][0]', 420, 240],
      ['cells[1][1]', 430, 260],
    ]);
    expect(pairs(chart('ft'), distance)).toHaveLength(4);
    // A panel of height that ends at 15 m has no figure at 50 ft.
    const height = { quantity: 'height', unit: 'mHeight' } as const;
    const guides = [
      [
        [0, 100],
        [15, 300],
      ],
      [
        [0, 300],
        [15, 700],
      ],
    ] as const;
    const short = { panels: [...chart('m').panels, { along: height, referenceLine: 0, guides }], unit: 'm' };
    expect(pairs(chart('m'), short)).toEqual([]);
  });

  it('is read in the units of the axes: 2205 lb and 68 °F', () => {
    const pounds = { quantity: 'mass', unit: 'lb', values: [1800, 2205] } as const;
    const fahrenheit = { quantity: 'temperature', unit: 'degF', values: [32, 68] } as const;
    const distance: Table<'m'> = {
      axes: [pounds, fahrenheit],
      unit: 'm',
      cells: [
        [400, 410],
        [420, 430],
      ],
    };
    const roll: Table<'m'> = {
      axes: [fahrenheit, pounds],
      unit: 'm',
      cells: [
        [200, 220],
        [210, 230],
      ],
    };
    expect(pairs(roll, distance).map(([, , figure]) => Number(Number(figure).toFixed(9)))).toEqual([
      200, 210, 220, 230,
    ]);
  });
});
