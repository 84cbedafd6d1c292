import { describe, expect, it } from 'vitest';
import { type Document, document, faultsOf, measure, one, onTwoAxes, spoil } from './invented-two.ts';

/** A document with several places changed. */
function changed(change: (document: Document) => void): unknown {
  const spoilt = document();
  change(spoilt);
  return spoilt;
}
const takeoffOf = ({ takeoff }: Document) => takeoff[0] as Document['takeoff'][number];
const again = <T>(list: T[], other: Partial<T> = {}) => list.push({ ...structuredClone(list[0] as T), ...other });
const law = (change: number, per: number, upTo: number, unit: string) => ({
  change: measure(change, 'percent'),
  per: measure(per, unit),
  upTo: measure(upTo, unit),
});
const wind = (change: number, per: number, upTo: number) => law(change, per, upTo, 'kt');
const slope = (change: number, per: number, upTo: number) => law(change, per, upTo, 'percent');

describe('what is entered twice', () => {
  it.each<[string, (document: Document) => void, string, string]>([
    ['a calibration', (d) => again(d.calibrations), 'calibrations[1]', 'a second entry for flap 10'],
    ['a climb', (d) => again(d.climb), 'climb[1]', 'a second entry for to, initial'],
    ['a stall speed', (d) => again(d.stallSpeeds), 'stallSpeeds[2]', 'a second entry for V_S0, flap 30'],
  ])('is refused: %s', (_name, change, path, message) => {
    expect(faultsOf(changed(change))).toEqual([{ path, message }]);
  });

  it.each(['takeoff', 'landing'] as const)('is refused: a surface of a %s table', (phase) => {
    const grass = { surface: 'grass', condition: 'dry', increase: measure(15, 'percent'), percentOf: 'distance' };
    const wet = { ...grass, condition: 'wet' };
    const gravel = { ...grass, surface: 'gravel' };
    const path = `${phase}.0.corrections.surfaces`;
    expect(faultsOf(spoil(path, [grass, wet, gravel]))).toEqual([]);
    expect(faultsOf(spoil(path, [grass, wet, { ...grass, percentOf: 'ground roll' }]))).toEqual([
      { path: `${phase}[0].corrections.surfaces[2]`, message: 'a second entry for dry grass' },
    ]);
  });

  it('is no second entry where it differs in what it is for', () => {
    const json = changed((d) => {
      again(d.calibrations, { flap: '30' });
      again(d.climb, { use: 'balked landing' });
      again(d.climb, { configuration: 'ldg' });
      again(d.stallSpeeds, { flap: '20' });
    });
    expect(faultsOf(json)).toEqual([]);
  });
});

describe('configurations', () => {
  it('of one id leave the tables of the first without any', () => {
    expect(faultsOf(spoil('configurations.1.id', 'to')).map(({ path }) => path)).toEqual([
      'configurations',
      'takeoff[0].configuration',
      'landing[0].configuration',
    ]);
  });

  it('are of the phase of their table, and named in the fault with it', () => {
    expect(faultsOf(spoil('landing.0.configuration', 'to'))).toEqual([
      { path: 'landing[0].configuration', message: '"to" is not a landing configuration of these data' },
    ]);
    expect(faultsOf(spoil('climb.0.configuration', 'up'))).toEqual([
      { path: 'climb[0].configuration', message: '"up" is not a configuration of these data' },
    ]);
  });
});

describe('the maximum landing mass', () => {
  const landing = (value: number, unit: string) => faultsOf(spoil('masses.maximumLanding', measure(value, unit)));

  it('may be the maximum take-off mass, in either unit, to the last bits of a conversion', () => {
    // 900 kg / 0.45359237 kg is 1984.160360 lb, by the definition of the pound.
    expect(landing(900 / 0.45359237, 'lb')).toEqual([]);
    expect(landing(900.0000005, 'kg')).toEqual([]);
  });

  it('is not above it', () => {
    const message = (value: string) => [
      { path: 'masses.maximumLanding', message: `${value} is above the maximum take-off mass` },
    ];
    expect(landing(900.00001, 'kg')).toEqual(message('900.00001 kg'));
    expect(landing(1985, 'lb')).toEqual(message('1985 lb'));
  });
});

describe('a calibration', () => {
  const calibration = (indicated: number[], calibrated: number[]) =>
    faultsOf(
      changed((d) => {
        d.calibrations = [
          {
            flap: '10',
            indicated: { unit: 'kias', values: indicated },
            calibrated: { unit: 'kcas', values: calibrated },
          },
        ];
      }),
    );
  const needed = 'as many of both, at least 2, are needed';

  it('has as many speeds of both, at least two', () => {
    expect(calibration([40, 50], [44, 52])).toEqual([]);
    expect(calibration([40], [44])).toEqual([
      { path: 'calibrations[0]', message: `1 indicated against 1 calibrated speeds; ${needed}` },
    ]);
    expect(calibration([40, 50], [44, 52, 61])).toEqual([
      { path: 'calibrations[0]', message: `2 indicated against 3 calibrated speeds; ${needed}` },
    ]);
  });

  it.each([
    [
      [50, 40, 60],
      [44, 52, 61],
    ],
    [
      [40, 50, 50],
      [44, 52, 61],
    ],
    [
      [40, 50, 60],
      [44, 52, 52],
    ],
  ])('rises on both sides: not %j against %j', (indicated, calibrated) => {
    expect(calibration(indicated, calibrated)).toEqual([
      { path: 'calibrations[0]', message: 'indicated and calibrated speeds must rise' },
    ]);
  });
});

describe('stall speeds', () => {
  it('are lower with flap, not equal', () => {
    expect(faultsOf(spoil('stallSpeeds.1.speed.value', 40))).toEqual([
      { path: 'stallSpeeds', message: 'V_S0 40 kias is not below V_S1 40 kias' },
    ]);
    expect(faultsOf(spoil('stallSpeeds.1.speed.value', 40.5))).toEqual([]);
  });

  it('of two references are not held against each other', () => {
    expect(faultsOf(spoil('stallSpeeds.1.speed', measure(39, 'kcas')))).toEqual([]);
  });
});

describe('what a distance depends on', () => {
  const altitudes = { quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 4000] };
  const rolls = { axes: [altitudes], unit: 'm', cells: [200, 280] };
  const distances = { axes: [altitudes], unit: 'm', cells: [380, 530] };

  it('is the same for the ground roll, in any order', () => {
    expect(faultsOf(spoil('takeoff.0.groundRoll', rolls))).toEqual([
      { path: 'takeoff[0].groundRoll.axes', message: 'ground roll and distance must run along the same quantities' },
    ]);
    const { axes, ...inTemperature } = onTwoAxes('m', [
      [200, 230, 260],
      [280, 320, 360],
    ]);
    const deviation = { quantity: 'isaDeviation', unit: 'degCDifference', values: [0, 20, 40] };
    expect(
      faultsOf(spoil('takeoff.0.groundRoll', { ...inTemperature, axes: [axes[0], deviation] })).map(({ path }) => path),
    ).toEqual(['takeoff[0].groundRoll.axes']);
    const turned = onTwoAxes('m', [
      [200, 280],
      [230, 320],
      [260, 360],
    ]);
    expect(faultsOf(spoil('takeoff.0.groundRoll', { ...turned, axes: [...turned.axes].reverse() }))).toEqual([]);
  });

  it.each([
    ['pressureAltitude', measure(2000, 'ftPA')],
    ['temperature', measure(15, 'degC')],
  ])('is not stated beside an axis of it: %s', (quantity, value) => {
    expect(faultsOf(spoil(`takeoff.0.associatedConditions.${quantity}`, value))).toEqual([
      {
        path: `takeoff[0].associatedConditions.${quantity}`,
        message: `the table has an axis of ${quantity}; a value beside it contradicts that`,
      },
    ]);
  });

  it('is stated where there is no axis of it', () => {
    const json = changed((d) => Object.assign(takeoffOf(d), { groundRoll: rolls, distance: distances }));
    expect(faultsOf(json)).toEqual([
      {
        path: 'takeoff[0].associatedConditions.temperature',
        message: 'a table without an axis of temperature must state the temperature it holds for',
      },
    ]);
    const constants = changed((d) =>
      Object.assign(takeoffOf(d), { groundRoll: one('m', 200), distance: one('m', 380) }),
    );
    expect(faultsOf(constants).map(({ path }) => path)).toEqual([
      'takeoff[0].associatedConditions.pressureAltitude',
      'takeoff[0].associatedConditions.temperature',
    ]);
  });

  it('is settled by a density altitude, or by a pressure altitude and the deviation from standard', () => {
    const along = (axes: unknown, roll: unknown, distance: unknown) =>
      changed((d) =>
        Object.assign(takeoffOf(d), {
          groundRoll: { axes, unit: 'm', cells: roll },
          distance: { axes, unit: 'm', cells: distance },
        }),
      );
    const density = [{ quantity: 'densityAltitude', unit: 'ftDA', values: [0, 4000] }];
    expect(faultsOf(along(density, [200, 280], [380, 530]))).toEqual([]);
    const deviation = [altitudes, { quantity: 'isaDeviation', unit: 'degCDifference', values: [0, 20] }];
    const [roll, distance] = [
      [
        [200, 230],
        [280, 320],
      ],
      [
        [380, 430],
        [530, 610],
      ],
    ];
    expect(faultsOf(along(deviation, roll, distance))).toEqual([]);
    const mass = [{ quantity: 'mass', unit: 'kg', values: [700, 900] }, ...density];
    expect(faultsOf(along(mass, roll, distance)).map(({ path }) => path)).toEqual([
      'takeoff[0].associatedConditions.mass',
    ]);
  });
});

describe('the laws of a manual', () => {
  const faults = (name: string, value: unknown) => faultsOf(spoil(`takeoff.0.corrections.${name}`, value));
  const path = (name: string) => `takeoff[0].corrections.${name}`;

  it.each([
    ['headwind', wind(0, 1, 15)],
    ['headwind', wind(-7.99, 1, 10)],
    // 2 kt for each step: 20 kt are 10 steps.
    ['headwind', wind(-7.99, 2, 20)],
    ['tailwind', wind(0, 1, 10)],
    ['tailwind', wind(25, 1, 10)],
    ['tailwind', wind(50, 2, 10)],
    ['adverseSlope', slope(25, 1, 3)],
    ['favourableSlope', slope(-24.9, 1, 2)],
    ['favourableSlope', slope(-12, 0.5, 2)],
    ['mass', { change: measure(3, 'percent'), per: measure(10, 'kg'), upTo: measure(950, 'kg') }],
  ])('are taken to their last sensible figure: %s %j', (name, value) => {
    expect(faults(name, value)).toEqual([]);
  });

  it.each([
    ['headwind', wind(0.5, 1, 15), 'headwind.change', 'a headwind does not lengthen: 0.5 percent'],
    ['headwind', wind(-8, 1, 10), 'headwind', '10 kt of headwind would leave less than 20 % of the distance'],
    ['headwind', wind(-8, 2, 20), 'headwind', '20 kt of headwind would leave less than 20 % of the distance'],
    ['headwind', wind(-26, 1, 1), 'headwind', '26.0 percent for each knot is more than 25'],
    ['tailwind', wind(-0.5, 1, 10), 'tailwind.change', 'a tailwind does not shorten: -0.5 percent'],
    ['tailwind', wind(51, 2, 10), 'tailwind', '25.5 percent for each knot is more than 25'],
    ['adverseSlope', slope(13, 0.5, 3), 'adverseSlope', '26.0 percent for each percent is more than 25'],
    ['favourableSlope', slope(-26, 1, 1), 'favourableSlope', '26.0 percent for each percent is more than 25'],
    [
      'favourableSlope',
      slope(-25, 1, 2),
      'favourableSlope',
      '2 percent of slope would leave less than half of the distance',
    ],
    [
      'favourableSlope',
      slope(-12.5, 0.5, 2),
      'favourableSlope',
      '2 percent of slope would leave less than half of the distance',
    ],
  ])('are refused beyond: %s %j', (name, value, at, message) => {
    expect(faults(name, value)).toEqual([{ path: path(at), message }]);
  });

  it.each([
    ['pressureAltitude', { change: measure(3, 'percent'), per: measure(1000, 'ftPA'), upTo: measure(8000, 'ftPA') }],
    ['temperature', { change: measure(3, 'percent'), per: measure(10, 'degCDifference'), upTo: measure(40, 'degC') }],
  ])('start from something stated: %s', (name, value) => {
    expect(faults(name, value)).toEqual([
      {
        path: path(name),
        message: `there is nothing for it to start from: associatedConditions.${name} is missing`,
      },
    ]);
  });
});

describe('the speeds of a take-off', () => {
  const along = (cells: number[], values = [700, 900]) => ({
    axes: [{ quantity: 'mass', unit: 'kg', values }],
    unit: 'kias',
    cells,
  });
  const faults = (liftOff: unknown, atScreen: unknown, vs0: unknown = measure(40, 'kias')) =>
    faultsOf(
      changed((d) => {
        Object.assign(takeoffOf(d), { liftOffSpeed: liftOff, speedAtScreenHeight: atScreen });
        Object.assign(d.stallSpeeds[0] as object, { speed: vs0 });
      }),
    );
  const place = (i: number) => `takeoff[0].liftOffSpeed.cells[${i}]`;

  it('are held against each other at every printed mass', () => {
    expect(faults(along([45, 50]), along([50, 57]))).toEqual([]);
    expect(faults(along([45, 57]), along([50, 57]))).toEqual([
      { path: place(1), message: '57 kias is not below the speed at the screen height, 57 kias' },
    ]);
    expect(faults(along([51, 50]), along([50, 57]))).toEqual([
      { path: place(0), message: '51 kias is not below the speed at the screen height, 50 kias' },
    ]);
  });

  it('are not where one is not printed for the mass of the other', () => {
    expect(faults(along([51, 53]), along([45, 47], [500, 600]))).toEqual([]);
  });

  it('are above the stall with landing flap, where both are indicated', () => {
    expect(faults(along([40, 50]), along([50, 57]))).toEqual([
      { path: place(0), message: '40 kias is not above V_S0 40 kias' },
    ]);
    expect(faults(along([39, 50]), along([50, 57]), measure(40, 'kcas'))).toEqual([]);
    // V_S1 is 46 kias: a take-off with flap may lift off below it.
    expect(faults(along([41, 50]), along([50, 57]))).toEqual([]);
  });
});
