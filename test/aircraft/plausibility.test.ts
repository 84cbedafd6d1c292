import { describe, expect, it } from 'vitest';
import { readPerformanceData } from '../../src/aircraft/index.ts';
import { performanceDocument } from './documents.ts';
import { type Document, document, findingsOf, measure, one, onTwoAxes } from './invented-two.ts';

type Part = Record<string, unknown>;
const changed = (change: (document: Document) => void): unknown => {
  const spoilt = document();
  change(spoilt);
  return spoilt;
};
const takeoffOf = ({ takeoff }: Document) => takeoff[0] as Document['takeoff'][number] & Part;
const landingOf = ({ landing }: Document) => landing[0] as Document['landing'][number] & Part;
const codesOf = (json: unknown, code: string) => findingsOf(json).filter((finding) => finding.code === code);
const placesOf = (json: unknown, code: string) => codesOf(json, code).map(({ path }) => path);

describe('surfaces', () => {
  const surface = (kind: string, condition: string, increase: number, percentOf = 'distance') => ({
    surface: kind,
    condition,
    increase: measure(increase, 'percent'),
    percentOf,
  });
  const found = (...surfaces: unknown[]) =>
    findingsOf(changed((d) => Object.assign(takeoffOf(d).corrections, { surfaces })));

  it('that cost less wet than dry are pointed at', () => {
    expect(found(surface('grass', 'dry', 15), surface('grass', 'wet', 10))).toEqual([
      {
        code: 'surfaces',
        path: 'takeoff[0].corrections.surfaces[1]',
        message: 'wet grass costs 10 %, less than dry, 15 %',
      },
    ]);
    const landing = changed((d) =>
      Object.assign(landingOf(d).corrections, { surfaces: [surface('grass', 'wet', 10), surface('grass', 'dry', 15)] }),
    );
    expect(placesOf(landing, 'surfaces')).toEqual(['landing[0].corrections.surfaces[0]']);
  });

  it.each([
    ['as much', [surface('grass', 'dry', 15), surface('grass', 'wet', 15)]],
    ['more', [surface('grass', 'dry', 15), surface('grass', 'wet', 20)]],
    ['less than another surface', [surface('grass', 'dry', 15), surface('gravel', 'wet', 10)]],
    ['less, in percent of something else', [surface('grass', 'dry', 15), surface('grass', 'wet', 10, 'ground roll')]],
    ['alone', [surface('grass', 'wet', 10)]],
  ])('that cost %s wet are not', (_name, surfaces) => {
    expect(found(...surfaces)).toEqual([]);
  });
});

describe('the distance as a multiple of the ground roll', () => {
  // Constants: without a temperature there is no acceleration to be told of them, and they have no neighbours.
  const constants = (phase: 'takeoff' | 'landing', roll: number, distance: number) =>
    changed((d) => {
      const table = phase === 'takeoff' ? takeoffOf(d) : landingOf(d);
      Object.assign(table, { groundRoll: one('m', roll), distance: one('m', distance) });
      Object.assign(table.associatedConditions, {
        pressureAltitude: measure(0, 'ftPA'),
        temperature: measure(15, 'degC'),
      });
    });

  it.each([
    ['takeoff', 200, 300],
    ['takeoff', 200, 520],
    ['landing', 200, 300],
    ['landing', 200, 700],
  ] as const)('is usual in a %s: %d m and %d m', (phase, roll, distance) => {
    expect(findingsOf(constants(phase, roll, distance))).toEqual([]);
  });

  it.each([
    ['takeoff', 200, 299, 'distance is 1.50 times the ground roll; 1.5 to 2.6 is usual'],
    ['takeoff', 200, 522, 'distance is 2.61 times the ground roll; 1.5 to 2.6 is usual'],
    ['landing', 200, 299, 'distance is 1.50 times the ground roll; 1.5 to 3.5 is usual'],
    ['landing', 200, 702, 'distance is 3.51 times the ground roll; 1.5 to 3.5 is usual'],
  ] as const)('is remarked on in a %s: %d m and %d m', (phase, roll, distance, message) => {
    expect(findingsOf(constants(phase, roll, distance))).toEqual([
      { code: 'distance-to-roll', path: `${phase}[0].distance.cells`, message },
    ]);
  });
});

describe('the acceleration of a take-off', () => {
  // 50 kias are 52 kcas, which at sea level in 15 °C are 52 KTAS, 26.751 m/s: V²/(2 s) is 2.5 m/s² over 143.13 m and
  // 0.8 m/s² over 447.27 m. Half a degree warmer both are longer by 0.17 %, which is less than a metre.
  const temperatures = [
    { quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 1] },
    { quantity: 'temperature', unit: 'degC', values: [15, 15.5] },
  ];
  const rolls = (roll: number, unit = 'm', change: (document: Document) => void = () => undefined) =>
    changed((d) => {
      const axes = temperatures;
      const all = (cell: number) => [
        [cell, cell],
        [cell, cell],
      ];
      Object.assign(takeoffOf(d), {
        groundRoll: { axes, unit, cells: all(roll) },
        distance: { axes, unit, cells: all(2 * roll) },
      });
      change(d);
    });
  const first = 'takeoff[0].groundRoll.cells[0][0]';

  it('is usual between 0.8 and 2.5 m/s²', () => {
    expect(findingsOf(rolls(144))).toEqual([]);
    expect(findingsOf(rolls(447))).toEqual([]);
    expect(findingsOf(rolls(1467, 'ft'))).toEqual([]);
  });

  it('is remarked on beyond, with the figure', () => {
    expect(codesOf(rolls(143), 'acceleration')[0]).toEqual({
      code: 'acceleration',
      path: first,
      message: 'reaching lift-off in 143 m takes 2.50 m/s²; 0.8 to 2.5 is usual: feet and metres exchanged?',
    });
    expect(codesOf(rolls(460), 'acceleration')[0]).toMatchObject({
      path: first,
      // 715.62 / 920.
      message: 'reaching lift-off in 460 m takes 0.78 m/s²; 0.8 to 2.5 is usual: feet and metres exchanged?',
    });
    expect(codesOf(rolls(1510, 'ft'), 'acceleration')[0]?.message).toMatch(/^reaching lift-off in 1510 ft takes 0\.78/);
  });

  it('is that with the flap of the table, wherever its configuration stands', () => {
    const turned = rolls(143, 'm', (d) => d.configurations.reverse());
    expect(placesOf(turned, 'acceleration')[0]).toBe(first);
  });

  it.each<[string, (document: Document) => void]>([
    ['a calibration for the flap', (d) => Object.assign(d.calibrations[0] as Part, { flap: '20' })],
    [
      'a calibration that reaches the lift-off speed',
      (d) =>
        Object.assign(d.calibrations[0] as Part, {
          indicated: { unit: 'kias', values: [51, 60] },
          calibrated: { unit: 'kcas', values: [52, 61] },
        }),
    ],
    [
      'an axis of temperature',
      (d) => {
        const axes = [temperatures[0]];
        Object.assign(takeoffOf(d), {
          groundRoll: { axes, unit: 'm', cells: [143, 143] },
          distance: { axes, unit: 'm', cells: [286, 286] },
        });
        Object.assign(takeoffOf(d).associatedConditions, { temperature: measure(15, 'degC') });
      },
    ],
    [
      'an axis of pressure altitude',
      (d) => {
        const axes = [temperatures[1]];
        Object.assign(takeoffOf(d), {
          groundRoll: { axes, unit: 'm', cells: [143, 143] },
          distance: { axes, unit: 'm', cells: [286, 286] },
        });
        Object.assign(takeoffOf(d).associatedConditions, { pressureAltitude: measure(0, 'ftPA') });
      },
    ],
    [
      'a lift-off speed for the mass',
      (d) => {
        const axes = [{ quantity: 'mass', unit: 'kg', values: [700, 900] }];
        Object.assign(takeoffOf(d), { liftOffSpeed: { axes, unit: 'kias', cells: [45, 50] } });
      },
    ],
  ])('is not asked for without %s', (_name, change) => {
    expect(findingsOf(rolls(143, 'm', change))).toEqual([]);
  });
});

describe('a lift-off at the stall speed of the clean wing', () => {
  const stalls = (value: number, mass_kg: number, unit: 'kias' | 'kcas' = 'kias') =>
    placesOf(
      changed((d) => {
        const clean = { name: 'V_S1', flap: '0', speed: measure(value, unit), mass: measure(mass_kg, 'kg') };
        d.stallSpeeds.splice(1, 1, clean);
        const axes = [
          { quantity: 'mass', unit: 'kg', values: [700, 900] },
          { quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 4000] },
        ];
        const cells = [
          [46, 46],
          [50, 50],
        ];
        Object.assign(takeoffOf(d), { liftOffSpeed: { axes, unit: 'kias', cells } });
      }),
      'stall-speed',
    );
  const place = (row: number, column: number) => `takeoff[0].liftOffSpeed.cells[${row}][${column}]`;

  it('is remarked on at the mass of that speed and above', () => {
    expect(stalls(49, 900)).toEqual([]);
    expect(stalls(50, 900)).toEqual([place(1, 0), place(1, 1)]);
    expect(stalls(50, 901)).toEqual([]);
    expect(stalls(46, 700)).toEqual([place(0, 0), place(0, 1)]);
  });

  it('is not held against one in calibrated speed', () => {
    expect(stalls(60, 700, 'kcas')).toEqual([]);
  });
});

describe('a figure beside its neighbours', () => {
  // Along pressure altitude a quarter of the way: 400 + (800 - 400) / 4 = 500, and 12 % of that are 60.
  const three = (unit: string, cells: (number | null)[], distances?: number[]) =>
    changed((d) => {
      const axes = [{ quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 1000, 4000] }];
      const conditions = { temperature: measure(15, 'degC') };
      Object.assign(takeoffOf(d), {
        groundRoll: { axes, unit, cells },
        distance: { axes, unit, cells: distances ?? cells.map((cell) => cell && 2 * cell) },
      });
      Object.assign(takeoffOf(d).associatedConditions, conditions);
    });
  const neighbours = (json: unknown) => codesOf(json, 'neighbours').map(({ path, message }) => `${path}: ${message}`);

  it('is let pass within 12 % of what they lead to', () => {
    expect(neighbours(three('m', [400, 560, 800]))).toEqual([]);
    expect(neighbours(three('m', [400, 440, 800]))).toEqual([]);
  });

  it('is remarked on beyond, in the ground roll and the distance of both phases', () => {
    expect(neighbours(three('m', [400, 561, 800], [800, 1000, 1600]))).toEqual([
      'takeoff[0].groundRoll.cells[1]: 561 m lies off its neighbours along pressure altitude, 400 and 800',
    ]);
    expect(neighbours(three('m', [400, 439, 800], [800, 879, 1600]))).toEqual([
      'takeoff[0].groundRoll.cells[1]: 439 m lies off its neighbours along pressure altitude, 400 and 800',
      'takeoff[0].distance.cells[1]: 879 m lies off its neighbours along pressure altitude, 800 and 1600',
    ]);
    const landing = changed((d) =>
      Object.assign(landingOf(d), {
        groundRoll: onTwoAxes('m', [
          [160, 200, 180],
          [180, 190, 200],
        ]),
        distance: onTwoAxes('m', [
          [390, 470, 430],
          [420, 440, 460],
        ]),
      }),
    );
    expect(neighbours(landing)).toEqual([
      'landing[0].groundRoll.cells[0][1]: 200 m lies off its neighbours along temperature, 160 and 180',
      'landing[0].distance.cells[0][1]: 470 m lies off its neighbours along temperature, 390 and 430',
    ]);
  });

  it('is small where 6 m, 12 % of 50 m, or 18 ft, 12 % of 150 ft, are let pass', () => {
    expect(neighbours(three('m', [20, 26, 20], [40, 42, 40]))).toEqual([]);
    expect(neighbours(three('m', [20, 27, 20], [40, 42, 40]))).toHaveLength(1);
    expect(neighbours(three('ft', [60, 78, 60], [120, 130, 120]))).toEqual([]);
    expect(neighbours(three('ft', [60, 79, 60], [120, 130, 120]))).toHaveLength(1);
  });

  it('is not held against a blank', () => {
    expect(findingsOf(three('m', [400, 900, null]))).toEqual([]);
    expect(neighbours(three('m', [null, 400, 900]))).toEqual([]);
    expect(neighbours(three('m', [400, null, 900]))).toEqual([]);
  });
});

describe('a figure one step worse', () => {
  const along = (quantity: string, unit: string, rolls: (number | null)[], distances?: (number | null)[]) =>
    changed((d) => {
      const axes = [
        { quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 4000] },
        { quantity, unit, values: [0, 10] },
      ];
      const twice = (cells: (number | null)[]) => [cells, cells];
      Object.assign(takeoffOf(d), {
        groundRoll: { axes, unit: 'm', cells: twice(rolls) },
        distance: { axes, unit: 'm', cells: twice(distances ?? rolls.map((cell) => cell && 2 * cell)) },
        corrections: {},
      });
      Object.assign(
        takeoffOf(d).associatedConditions,
        quantity === 'temperature' ? {} : { temperature: measure(15, 'degC') },
      );
    });
  const places = (json: unknown) => placesOf(json, 'monotonic');

  it('may be the same, but not better', () => {
    expect(places(along('temperature', 'degC', [200, 200]))).toEqual([]);
    expect(codesOf(along('temperature', 'degC', [200, 199], [400, 400]), 'monotonic')).toEqual([
      {
        code: 'monotonic',
        path: 'takeoff[0].groundRoll.cells[0][1]',
        message: '199 m is better than 200 one step down in temperature',
      },
      expect.objectContaining({ path: 'takeoff[0].groundRoll.cells[1][1]' }),
    ]);
  });

  it('is the shorter one in a headwind', () => {
    expect(places(along('headwind', 'kt', [200, 180]))).toEqual([]);
    expect(places(along('headwind', 'kt', [200, 200]))).toEqual([]);
    expect(places(along('headwind', 'kt', [200, 201], [400, 400]))).toEqual([
      'takeoff[0].groundRoll.cells[0][1]',
      'takeoff[0].groundRoll.cells[1][1]',
    ]);
  });

  it('is either on a slope, which a table alone does not say', () => {
    expect(places(along('slope', 'percent', [200, 180]))).toEqual([]);
    expect(places(along('slope', 'percent', [200, 220]))).toEqual([]);
  });

  it('is not held against a blank', () => {
    expect(findingsOf(along('temperature', 'degC', [null, 200]))).toEqual([]);
    expect(places(along('headwind', 'kt', [null, 200]))).toEqual([]);
    expect(places(along('temperature', 'degC', [200, null]))).toEqual([]);
  });

  it('is looked for in the landing, and in the climb the other way round', () => {
    const landing = changed((d) => {
      landingOf(d).groundRoll = onTwoAxes('m', [
        [160, 158, 180],
        [180, 190, 200],
      ]);
      landingOf(d).distance = onTwoAxes('m', [
        [390, 389, 430],
        [420, 440, 460],
      ]);
    });
    expect(places(landing)).toEqual(['landing[0].groundRoll.cells[0][1]', 'landing[0].distance.cells[0][1]']);
    const climb = (cells: number[][]) =>
      places(changed((d) => Object.assign(d.climb[0] as Part, { rateOfClimb: onTwoAxes('ftPerMin', cells) })));
    expect(
      climb([
        [700, 700, 580],
        [480, 430, 370],
      ]),
    ).toEqual([]);
    expect(
      climb([
        [700, 640, 580],
        [480, 641, 370],
      ]),
    ).toEqual(['climb[0].rateOfClimb.cells[1][1]', 'climb[0].rateOfClimb.cells[1][1]']);
  });
});

describe('a printed example that the data do not give back', () => {
  const withExample = (printed: number, pressureAltitude: number) => {
    const data = structuredClone(performanceDocument('linnet-two'));
    const [first] = data.examples ?? [];
    return readPerformanceData({
      ...data,
      examples: [
        {
          ...first,
          at: { ...first?.at, pressureAltitude: measure(pressureAltitude, 'ftPA') },
          printed: { distance: measure(printed, 'm') },
        },
      ],
    });
  };

  it('is said with both figures, or with none where the tables end', () => {
    // 1000 ft lie half way between 360 m and 425 m.
    expect(withExample(400, 1000)).toMatchObject({
      findings: [
        {
          code: 'example',
          path: 'examples',
          message: 'invented, half way up the curve: distance is printed 400 m, these data give 392.5 m',
        },
      ],
    });
    expect(withExample(400, 7000)).toMatchObject({
      findings: [{ message: 'invented, half way up the curve: distance is printed 400 m, these data give none' }],
    });
  });
});
