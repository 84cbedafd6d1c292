import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chart, type Figures, interpolateTable, readChart, type Table } from '../../src/aircraft/index.ts';
import { degC, ftPA, kg, kt } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

// One invented law, digitised twice: as a grid, and as a chart with guide lines. Every factor is straight between the
// values drawn, so that both read it exactly.
const temperatures = [0, 20, 40];
const altitudes = [0, 2000, 4000];
const masses = [800, 900, 1000];
const winds = [-8, 0, 15];
const base = (degrees: number, feet: number) => 300 * (1 + 0.008 * degrees) * (1 + 0.0001 * feet);
const ofMass = (kilograms: number) =>
  kilograms <= 900 ? 0.8 + 0.001 * (kilograms - 800) : 0.9 + 0.0015 * (kilograms - 900);
const ofWind = (knots: number) => (knots >= 0 ? 1 - 0.01 * knots : 1 - 0.045 * knots);

const table: Table<'m'> = {
  axes: [
    { quantity: 'mass', unit: 'kg', values: masses },
    { quantity: 'pressureAltitude', unit: 'ftPA', values: altitudes },
    { quantity: 'temperature', unit: 'degC', values: temperatures },
    { quantity: 'headwind', unit: 'kt', values: winds },
  ],
  unit: 'm',
  cells: masses.map((mass) =>
    altitudes.map((feet) =>
      temperatures.map((degrees) => winds.map((wind) => base(degrees, feet) * ofMass(mass) * ofWind(wind))),
    ),
  ),
};

const guides = (values: readonly number[], factor: (value: number) => number) =>
  [200, 500, 900].map((ordinate) => values.map((value) => [value, ordinate * factor(value)] as const));

const chart: Chart<'m'> = {
  panels: [
    {
      along: { quantity: 'temperature', unit: 'degC' },
      family: { quantity: 'pressureAltitude', unit: 'ftPA' },
      curves: altitudes.map((feet) => ({
        at: feet,
        points: temperatures.map((degrees) => [degrees, base(degrees, feet)] as const),
      })),
    },
    {
      along: { quantity: 'mass', unit: 'kg' },
      referenceLine: 1000,
      guides: guides(masses, (mass) => ofMass(mass) / ofMass(1000)),
    },
    { along: { quantity: 'headwind', unit: 'kt' }, referenceLine: 0, guides: guides(winds, ofWind) },
  ],
  unit: 'm',
};
// The grid of the chart is for the reference mass.
const scale = ofMass(1000);

const mode = {
  favourableEdge: 'read-at-edge',
  between: 'interpolate',
  worse: 'greater',
  highIsFavourable: ['headwind'],
} as const;
const read = (at: { temperature: number; pressureAltitude: number; mass: number; headwind: number }, how = {}) =>
  readChart(chart, at, { ...mode, ...how });
const inside = { temperature: 20, pressureAltitude: 1000, mass: 950, headwind: 4 };

describe('readChart', () => {
  it('agrees with a grid digitised from the same law', () => {
    const within = (values: readonly number[]) => evenly(values[0] as number, values.at(-1) as number);
    fc.assert(
      fc.property(
        within(temperatures),
        within(altitudes),
        within(masses),
        within(winds),
        (temperature, pressureAltitude, mass, headwind) => {
          const fromChart = read({ temperature, pressureAltitude, mass, headwind });
          const at = {
            temperature: degC(temperature),
            pressureAltitude: ftPA(pressureAltitude),
            mass: kg(mass),
            headwind: kt(headwind),
          };
          const fromTable = interpolateTable({ table, at, worse: 'greater' });
          expect(fromChart.ok && fromChart.value * scale).toBeCloseTo(fromTable, 6);
        },
      ),
    );
  });

  it('gives a drawn point back as it was digitised', () => {
    const reading = read({ temperature: 20, pressureAltitude: 2000, mass: 1000, headwind: 0 });
    expect(reading).toMatchObject({ ok: true, value: base(20, 2000), atEdge: [] });
  });

  it.each([
    ['colder', { temperature: -10 }, { temperature: 0 }],
    ['lower', { pressureAltitude: -500 }, { pressureAltitude: 0 }],
    ['lighter', { mass: 700 }, { mass: 800 }],
    ['more headwind', { headwind: 30 }, { headwind: 15 }],
  ])('is read at its favourable end when %s, and says so', (_name, beyond, edge) => {
    const [outside, atEnd] = [read({ ...inside, ...beyond }), read({ ...inside, ...edge })];
    expect(outside.ok && atEnd.ok && outside.value).toBe(atEnd.ok && atEnd.value);
    expect(outside.ok && outside.atEdge).toHaveLength(1);
    expect(read({ ...inside, ...beyond }, { favourableEdge: 'refuse' }).ok).toBe(false);
  });

  it.each([
    ['warmer', { temperature: 41 }, 'off-edge', 'temperature'],
    ['higher', { pressureAltitude: 4001 }, 'off-curves', 'pressureAltitude'],
    ['heavier', { mass: 1001 }, 'off-edge', 'mass'],
    ['more tailwind', { headwind: -8.1 }, 'off-edge', 'headwind'],
  ])('has no figure when %s', (_name, beyond, reason, quantity) => {
    expect(read({ ...inside, ...beyond })).toMatchObject({ ok: false, reason, scale: { quantity } });
  });

  it('has no figure above its highest guide line, and says which scale is missing', () => {
    const high: Figures = {
      ...chart,
      panels: [
        {
          ...chart.panels[0],
          curves: chart.panels[0].curves.map(({ at, points }) => ({
            at,
            points: points.map(([x, y]) => [x, y + 800] as const),
          })),
        },
        ...chart.panels.slice(1),
      ] as never,
    };
    expect(readChart(high, inside, mode)).toMatchObject({ ok: false, reason: 'off-curves' });
    expect(readChart(chart, { temperature: 20, pressureAltitude: 0, mass: 900 }, mode)).toMatchObject({
      ok: false,
      reason: 'axis-missing',
      scale: { quantity: 'headwind' },
    });
  });

  it('takes the next worse curve where that is asked for, and is never better for it', () => {
    const between = read(inside);
    const worse = read(inside, { between: 'next-worse' });
    expect(between.ok && worse.ok && worse.value >= between.value).toBe(true);
  });
});
