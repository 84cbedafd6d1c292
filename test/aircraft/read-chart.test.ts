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

/** Two panels with figures that are easy to follow by hand; distances unless a test says otherwise. */
const hand: Chart<'m'> = {
  panels: [
    {
      along: { quantity: 'temperature', unit: 'degC' },
      family: { quantity: 'pressureAltitude', unit: 'ftPA' },
      curves: [
        {
          at: 0,
          points: [
            [0, 300],
            [20, 320],
            [40, 360],
          ],
        },
        {
          at: 2000,
          points: [
            [0, 400],
            [20, 420],
            [40, 460],
          ],
        },
      ],
    },
    {
      along: { quantity: 'mass', unit: 'kg' },
      referenceLine: 900,
      guides: [
        [
          [700, 200],
          [900, 300],
        ],
        [
          [700, 350],
          [900, 500],
        ],
      ],
    },
  ],
  unit: 'm',
};
const readHand = (at: object, how: object = {}, of: unknown = hand) =>
  readChart(of as Chart, { temperature: 20, pressureAltitude: 0, mass: 900, ...at }, { ...mode, ...how } as never);

describe('a chart read by hand', () => {
  it('is read along the curves, between them, and along the guide lines', () => {
    // At 30 °C 340 m and 440 m, half way 390 m; on the reference line 90/200 of the way between the guide lines, which
    // at 800 kg stand at 250 m and 425 m.
    const reading = readHand({ temperature: 30, pressureAltitude: 1000, mass: 800 });
    expect(reading).toMatchObject({ ok: true, atEdge: [] });
    expect(reading.ok && reading.value).toBeCloseTo(250 + (175 * 90) / 200, 9);
  });

  it('calls the formula of each panel once, with the scale along it', () => {
    const calls: unknown[] = [];
    readChart(hand, { temperature: 30, pressureAltitude: 1000, mass: 800 }, mode, (panel, inputs) => {
      calls.push([panel.quantity, inputs.along, inputs.at, inputs.lower.at, inputs.upper.at]);
      return 390;
    });
    expect(calls).toEqual([
      ['temperature', 30, 1000, 0, 2000],
      ['mass', 800, 390, 300, 500],
    ]);
  });

  it('takes the next worse curve and the next worse guide line', () => {
    // The higher altitude gives 440 m, which lies between the guide lines of 300 m and 500 m: the upper is worse.
    const how = { between: 'next-worse' };
    expect(readHand({ temperature: 30, pressureAltitude: 1000, mass: 800 }, how)).toMatchObject({ value: 425 });
    expect(readHand({ temperature: 30, pressureAltitude: 2000 }, how)).toMatchObject({ value: 500 });
    // Where less is worse the lower guide line is, and of a headwind the lesser.
    const climb = { ...how, worse: 'less' };
    expect(readHand({ temperature: 30, pressureAltitude: 1000, mass: 800 }, climb)).toMatchObject({ value: 250 });
    const highIsFavourable = ['pressureAltitude'];
    expect(readHand({ temperature: 30, pressureAltitude: 1000 }, { ...how, highIsFavourable })).toMatchObject({
      value: 500,
    });
  });

  it('says at which ends it was read', () => {
    const [temperature, altitude] = [hand.panels[0].along, hand.panels[0].family];
    expect(readHand({ temperature: -5, pressureAltitude: -300 })).toMatchObject({
      value: 300,
      atEdge: [
        { scale: temperature, at: -5, edge: 0 },
        { scale: altitude, at: -300, edge: 0 },
      ],
    });
    expect(readHand({ mass: 600 })).toMatchObject({ atEdge: [{ scale: { quantity: 'mass' }, at: 600, edge: 700 }] });
  });

  it('puts back on a drawn value what a conversion has moved by its last bits', () => {
    expect(readHand({ temperature: 40 + 2e-8, pressureAltitude: 2000 + 1e-6 })).toMatchObject({ ok: true, atEdge: [] });
    expect(readHand({ temperature: -1e-10 })).toMatchObject({ value: 300, atEdge: [] });
    expect(readHand({ temperature: 40 + 1e-6 }).ok).toBe(false);
    expect(readHand({ pressureAltitude: 2000 + 1e-4 }).ok).toBe(false);
  });

  it('takes values in its own units: 1984.16 lb are 900 kg', () => {
    const [first, second] = hand.panels as unknown as [object, { guides: [number, number][][] }];
    const inPounds = {
      ...second,
      along: { quantity: 'mass', unit: 'lb' },
      referenceLine: 1984.16,
      guides: second.guides.map((line) => line.map(([kilograms, ordinate]) => [kilograms / 0.45359237, ordinate])),
    };
    const guides = inPounds.guides.map(([low, high]) => [low, [1984.17, high?.[1]]]);
    const reading = readHand({ temperature: 30, mass: 800 }, {}, { ...hand, panels: [first, { ...inPounds, guides }] });
    // 340 m lie a fifth of the way from 300 m to 500 m: 250 m + 175/5 at 800 kg.
    expect(reading.ok && reading.value).toBeCloseTo(285, 1);
  });
});

describe('lines of a chart that end at different places', () => {
  it('are read where all of them are drawn', () => {
    const [first] = hand.panels;
    const curves = [
      {
        at: 0,
        points: [
          [-10, 290],
          [30, 330],
        ],
      },
      {
        at: 2000,
        points: [
          [0, 400],
          [40, 440],
        ],
      },
    ];
    const uneven = { panels: [{ ...first, curves }], unit: 'm' };
    expect(readHand({ temperature: 31 }, {}, uneven)).toMatchObject({ reason: 'off-edge', min: 0, max: 30 });
    // Colder than the common part it is read at its cold end, 300 m on the lower curve.
    expect(readHand({ temperature: -5 }, {}, uneven)).toMatchObject({ value: 300, atEdge: [{ at: -5, edge: 0 }] });
    expect(readHand({ temperature: 30 }, {}, uneven)).toMatchObject({ value: 330 });
  });

  it('are read at the lowest far below it, whatever stands as far above', () => {
    expect(readHand({ pressureAltitude: -2000 })).toMatchObject({ value: 320, atEdge: [{ at: -2000, edge: 0 }] });
  });
});

describe('a chart has no figure', () => {
  const scales = { temperature: hand.panels[0].along, altitude: hand.panels[0].family };

  it.each([
    ['temperature', scales.temperature],
    ['pressureAltitude', scales.altitude],
    ['mass', { quantity: 'mass', unit: 'kg' }],
  ])('without the %s that it asks for', (quantity, scale) => {
    expect(readHand({ [quantity]: undefined })).toEqual({
      ok: false,
      reason: 'axis-missing',
      scale,
      at: 0,
      min: 0,
      max: 0,
    });
  });

  it('without a value that it would convert', () => {
    const [first] = hand.panels;
    const pounds = { panels: [{ ...first, along: { quantity: 'mass', unit: 'lb' } }], unit: 'm' };
    expect(readHand({ mass: undefined }, {}, pounds)).toMatchObject({ reason: 'axis-missing', scale: { unit: 'lb' } });
  });

  it('where a value is no number', () => {
    expect(readHand({ temperature: Number.NaN })).toMatchObject({ ok: false, reason: 'off-edge', min: 0, max: 40 });
    expect(readHand({ temperature: Number.NEGATIVE_INFINITY })).toMatchObject({ ok: false, reason: 'off-edge' });
    expect(readHand({ pressureAltitude: Number.NaN })).toMatchObject({ reason: 'off-curves', min: 0, max: 2000 });
    expect(readHand({ pressureAltitude: Number.NEGATIVE_INFINITY })).toMatchObject({ reason: 'off-curves' });
  });

  it('beyond the unfavourable ends, with the ends in the refusal', () => {
    expect(readHand({ temperature: 41 })).toEqual({
      ok: false,
      reason: 'off-edge',
      scale: scales.temperature,
      at: 41,
      min: 0,
      max: 40,
    });
    expect(readHand({ pressureAltitude: 2001 })).toEqual({
      ok: false,
      reason: 'off-curves',
      scale: scales.altitude,
      at: 2001,
      min: 0,
      max: 2000,
    });
    const highIsFavourable = ['temperature', 'pressureAltitude'];
    expect(readHand({ temperature: -1 }, { highIsFavourable })).toMatchObject({ ok: false, reason: 'off-edge' });
    expect(readHand({ pressureAltitude: -1 }, { highIsFavourable })).toMatchObject({ ok: false, reason: 'off-curves' });
  });

  it('beyond the favourable ends where they are refused', () => {
    const how = { favourableEdge: 'refuse' };
    expect(readHand({ temperature: -1 }, how)).toMatchObject({ ok: false, reason: 'off-edge' });
    expect(readHand({ pressureAltitude: -1 }, how)).toMatchObject({ ok: false, reason: 'off-curves' });
  });

  it('beyond a favourable end from which the lines get better', () => {
    // The distances grow with temperature and altitude: that is better where less is worse, and at the low end where
    // the high one is favourable.
    expect(readHand({ temperature: -1 }, { worse: 'less' })).toEqual({
      ok: false,
      reason: 'not-monotonic',
      scale: scales.temperature,
      at: -1,
      min: 0,
      max: 40,
    });
    expect(readHand({ pressureAltitude: -1 }, { worse: 'less' })).toEqual({
      ok: false,
      reason: 'not-monotonic',
      scale: scales.altitude,
      at: -1,
      min: 0,
      max: 2000,
    });
    expect(readHand({ temperature: 41 }, { highIsFavourable: ['temperature'] })).toMatchObject({
      ok: false,
      reason: 'not-monotonic',
    });
    expect(readHand({ pressureAltitude: 2001 }, { highIsFavourable: ['pressureAltitude'] })).toMatchObject({
      ok: false,
      reason: 'not-monotonic',
    });
  });

  it('beyond a favourable end where one line alone gets better, and has one where all stay level', () => {
    const withOrdinates = (...lines: readonly [number, number][]) => {
      const curves = lines.map(([cold, warm], i) => ({
        at: 2000 * i,
        points: [
          [0, cold],
          [40, warm],
        ],
      }));
      return { panels: [{ ...hand.panels[0], curves }], unit: 'm' };
    };
    expect(readHand({ temperature: -1 }, {}, withOrdinates([300, 300], [400, 390]))).toMatchObject({
      reason: 'not-monotonic',
    });
    expect(readHand({ temperature: -1 }, {}, withOrdinates([300, 300], [400, 400]))).toMatchObject({ value: 300 });
    expect(readHand({ temperature: -1 }, { worse: 'less' }, withOrdinates([300, 300]))).toMatchObject({ value: 300 });
    expect(readHand({ pressureAltitude: -1 }, {}, withOrdinates([300, 300], [300, 300]))).toMatchObject({ value: 300 });
    const less = { worse: 'less' };
    expect(readHand({ pressureAltitude: -1 }, less, withOrdinates([300, 300], [300, 300]))).toMatchObject({
      value: 300,
    });
    expect(readHand({ pressureAltitude: -1 }, {}, withOrdinates([300, 300]))).toMatchObject({
      value: 300,
      atEdge: [{ edge: 0 }],
    });
    const high = { highIsFavourable: ['temperature', 'pressureAltitude'] };
    expect(readHand({ temperature: 41 }, high, withOrdinates([400, 300], [300, 290]))).toMatchObject({ value: 300 });
    expect(readHand({ pressureAltitude: 2001 }, high, withOrdinates([400, 380], [300, 290]))).toMatchObject({
      value: 295,
      atEdge: [{ at: 2001, edge: 2000 }],
    });
  });

  it('below its lowest guide line only where that is refused', () => {
    // 250 m on the reference line is shorter than the lowest line drawn there, 300 m: read on that line, at 700 kg 200 m.
    const [first] = hand.panels;
    const lower = {
      ...hand,
      panels: [
        {
          ...first,
          curves: [
            {
              at: 0,
              points: [
                [0, 240],
                [40, 260],
              ],
            },
          ],
        },
        hand.panels[1],
      ],
    };
    expect(readHand({ mass: 700 }, {}, lower)).toMatchObject({ ok: true, value: 200, atEdge: [] });
    expect(readHand({ mass: 700 }, { favourableEdge: 'refuse' }, lower)).toMatchObject({
      ok: false,
      reason: 'off-curves',
      at: 250,
      min: 300,
      max: 500,
    });
  });
});
