import { describe, expect, it } from 'vitest';
import { chartSchema } from '../../src/aircraft/chart-schema.ts';
import { readDocument } from '../../src/documents/index.ts';

const schema = chartSchema(['m', 'ft'], 1, 1000);
const faultsOf = (chart: unknown) => {
  const read = readDocument(schema, chart);
  return read.ok ? [] : read.faults.map(({ path, message }) => (path === '' ? message : `${path}: ${message}`));
};

type Line = readonly (readonly [number, number])[];
const temperature = { quantity: 'temperature', unit: 'degC' };
const altitude = { quantity: 'pressureAltitude', unit: 'ftPA' };
const mass = { quantity: 'mass', unit: 'kg' };
const low: Line = [
  [0, 300],
  [40, 400],
];
const high: Line = [
  [0, 400],
  [40, 550],
];
const curves = (...lines: readonly Line[]) => lines.map((points, i) => ({ at: 1000 * i, points }));
const first = { along: temperature, family: altitude, curves: curves(low, high) };
const light: Line = [
  [700, 200],
  [900, 300],
];
const heavy: Line = [
  [700, 400],
  [900, 600],
];
const guide = { along: mass, referenceLine: 900, guides: [light, heavy] };
const chart = (...panels: unknown[]) => ({ panels, unit: 'm' });
const withCurves = (list: unknown) => faultsOf(chart({ ...first, curves: list }));
const withGuides = (...guides: readonly Line[]) => faultsOf(chart(first, { ...guide, guides }));

describe('the schema of a chart', () => {
  it('takes one panel of curves, with panels of guide lines or without', () => {
    expect(faultsOf(chart(first))).toEqual([]);
    expect(faultsOf(chart(first, guide))).toEqual([]);
    expect(withCurves(curves(low))).toEqual([]);
  });

  it('wants scales in a unit of their quantity, each quantity once', () => {
    expect(faultsOf(chart({ ...first, along: { ...temperature, unit: 'kg' } }))).toEqual([
      'panels[0].along: kg is not a unit of temperature (degC or degF)',
    ]);
    expect(faultsOf(chart({ ...first, family: temperature }))).toEqual(['two scales show temperature']);
    expect(faultsOf(chart(first, { ...guide, along: altitude }))).toEqual(['two scales show pressureAltitude']);
    expect(faultsOf(chart(first, guide, guide))).toEqual(['two scales show mass']);
  });

  it('wants a family that rises from curve to curve', () => {
    const rises = 'panels[0]: the values of the family must rise from curve to curve';
    expect(withCurves([])).toEqual(['panels[0].curves: a panel has at least 1 curve']);
    expect(
      withCurves([
        { at: 0, points: low },
        { at: 0, points: high },
      ]),
    ).toEqual([rises]);
    expect(
      withCurves([
        { at: 0, points: low },
        { at: 2000, points: high },
        { at: 1000, points: high },
      ]),
    ).toEqual([rises]);
  });

  it('wants a part of the panel for which all curves are drawn, if only a line', () => {
    const from = (start: number, end: number): Line => [
      [start, 300],
      [end, 400],
    ];
    expect(withCurves(curves(from(0, 20), from(20, 40)))).toEqual([]);
    expect(withCurves(curves(from(0, 19), from(20, 40)))).toEqual([
      'panels[0]: the curves have no part of the panel in common',
    ]);
    expect(withCurves(curves(from(20, 40), from(0, 19)))).toEqual([
      'panels[0]: the curves have no part of the panel in common',
    ]);
  });

  it('wants points that rise, at least two on each line', () => {
    const same: Line = [
      [20, 300],
      [20, 310],
    ];
    expect(withCurves(curves(low, same))).toEqual([
      'panels[0].curves[1].points: the points of a curve must rise along the panel',
    ]);
    expect(withCurves(curves(low, [[20, 300]]))).toEqual(['panels[0].curves[1].points: a curve has at least 2 points']);
    expect(withGuides(light, [...heavy].reverse())).toEqual([
      'panels[1].guides[1]: the points of a curve must rise along the panel',
    ]);
  });
});

describe('the guide lines of a chart', () => {
  it('are at least two, and cross the reference line, at its end at least', () => {
    const crossing = ['panels[1]: every guide line must cross the reference line'];
    expect(withGuides(light)).toEqual(['panels[1].guides: a panel has at least 2 guide lines']);
    for (const [referenceLine, faults] of [
      [700, []],
      [800, []],
      [900, []],
      [699, crossing],
      [901, crossing],
    ] as const) {
      expect(faultsOf(chart(first, { ...guide, referenceLine }))).toEqual(faults);
    }
    const short: Line = [
      [700, 400],
      [880, 590],
    ];
    expect(withGuides(light, short)).toEqual(crossing);
    expect(
      withGuides(short, [
        [890, 700],
        [950, 800],
      ]),
    ).toEqual(crossing);
  });

  it('are not held in order where one of them does not cross it, or has no figure', () => {
    const low: Line = [
      [700, 100],
      [880, 150],
    ];
    expect(withGuides(heavy, low)).toEqual(['panels[1]: every guide line must cross the reference line']);
    const broken: Line = [
      [700, Number.NaN],
      [900, 300],
    ];
    expect(withGuides(broken, heavy)).toEqual(['panels[1].guides[0][0][1]: NaN is not a number']);
    const endless: Line = [
      [700, Number.POSITIVE_INFINITY],
      [900, 300],
    ];
    expect(withGuides(endless, heavy)).toEqual([
      'panels[1].guides[0][0][1]: is not a finite number',
      'panels[1], curve 0, point 0: Infinity m is not within 1 to 1000 m',
    ]);
  });

  const order = ['panels[1]: guide lines must stand from the lowest to the highest and may not cross'];

  it('stand in order', () => {
    expect(withGuides(heavy, light)).toEqual(order);
    const highest: Line = [
      [700, 700],
      [900, 900],
    ];
    expect(withGuides(light, heavy, highest)).toEqual([]);
    expect(withGuides(light, highest, heavy)).toEqual(order);
  });

  it.each<[string, Line, Line]>([
    [
      'touch at an end',
      light,
      [
        [700, 200],
        [900, 600],
      ],
    ],
    [
      'cross at a corner of the upper',
      light,
      [
        [700, 400],
        [800, 220],
        [900, 600],
      ],
    ],
    [
      'cross at a corner of the lower',
      [
        [700, 200],
        [800, 550],
        [900, 300],
      ],
      heavy,
    ],
  ])('do not %s', (_name, lower, upper) => {
    expect(withGuides(lower, upper)).toEqual(order);
  });

  it('are not held against each other where only one of them is drawn', () => {
    const short: Line = [
      [800, 450],
      [900, 600],
    ];
    expect(withGuides(light, short)).toEqual([]);
    expect(
      withGuides(short, [
        [700, 500],
        [900, 700],
      ]),
    ).toEqual([]);
  });
});

describe('the ordinates of a chart', () => {
  const line = (from: number, to: number): Line => [
    [700, from],
    [900, to],
  ];

  it('of the last panel are in the unit of the figure, within its bounds', () => {
    expect(withGuides(line(1, 500), line(2, 1000))).toEqual([]);
    expect(withGuides(line(0.5, 500), line(2, 1000.5))).toEqual([
      'panels[1], curve 0, point 0: 0.5 m is not within 1 to 1000 m',
      'panels[1], curve 1, point 1: 1000.5 m is not within 1 to 1000 m',
    ]);
  });

  it('of a single panel are too', () => {
    expect(
      withCurves(
        curves(low, [
          [0, 400],
          [40, 1200],
        ]),
      ),
    ).toEqual(['panels[0], curve 1, point 1: 1200 m is not within 1 to 1000 m']);
  });

  it('are not looked at where the unit is none of the figure', () => {
    const long = curves(low, high, [
      [0, 2000],
      [40, 3000],
    ]);
    const faults = faultsOf({ panels: [{ ...first, curves: long }], unit: 'miles' });
    expect(faults).toEqual(['unit: "miles" is none of "m", "ft"']);
  });

  it('of a panel before the last are on a scale of the chart itself', () => {
    const own = {
      ...first,
      curves: curves(
        [
          [0, -5],
          [40, 3],
        ],
        [
          [0, 5],
          [40, 5000],
        ],
      ),
    };
    expect(faultsOf(chart(own, guide))).toEqual([]);
  });
});
