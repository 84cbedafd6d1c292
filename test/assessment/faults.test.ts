import { describe, expect, it } from 'vitest';
import { assessTakeoff, readTakeoffRequest } from '../../src/assessment/index.ts';
import { type Changes, takeoffRequest } from './scenario.ts';

const faultsOf = (changes: Changes) => {
  const result = assessTakeoff(takeoffRequest('takeoff-28', changes));
  return result.ok ? [] : result.faults;
};

const wind = 'weather.wind';
const table = 'performanceData.takeoff.0.distance';
const inTable = 'performanceData.takeoff[0].distance';
const obstacle = { name: 'pines', end: '28', beyond: { value: 25, unit: 'm' } };
const top = { value: 500, unit: 'ftElevation' };

const rows: readonly [name: string, changes: Changes, path: string, message: readonly string[]][] = [
  ['NaN', { 'mass.value': Number.NaN }, 'mass.value', ['NaN']],
  ['an infinity', { 'mass.value': Number.POSITIVE_INFINITY }, 'mass.value', ['Infinity', '50', '10000', 'kg']],
  ['a negative infinity', { [`${wind}.speed.value`]: Number.NEGATIVE_INFINITY }, 'weather.wind.speed.value', ['kt']],
  ['a number as a text', { 'mass.value': '940' }, 'mass.value', ['"940"', 'number']],
  ['null', { 'weather.temperature': null }, 'weather.temperature', ['null']],
  ['a missing key', { 'weather.temperature': undefined }, 'weather.temperature', ['missing']],
  ['a missing unit', { 'mass.unit': undefined }, 'mass.unit', ['missing']],
  ['an unknown key', { 'weather.tempreature': 26 }, 'weather.tempreature', ['not a key']],
  ['a wrong unit word', { 'mass.unit': 'kilogram' }, 'mass.unit', ['"kilogram"', '"kg"', '"lb"']],
  ['a unit of another kind', { 'runway.length.unit': 'ftHeight' }, 'runway.length.unit', ['"ftHeight"', '"m"', '"ft"']],
  [
    'a temperature below absolute zero',
    { 'weather.temperature.value': -300 },
    'weather.temperature.value',
    ['-300 degC', '-40 to 50 degC'],
  ],
  [
    'a temperature below absolute zero in the other unit',
    { 'weather.temperature': { value: -500, unit: 'degF' } },
    'weather.temperature.value',
    ['-500 degF', '-40 to 122 degF'],
  ],
  ['a gust below the mean', { [`${wind}.gust.value`]: 5 }, 'weather.wind.gust', ['5 kt', 'below the mean', '7 kt']],
  ['a direction beyond the circle', { [`${wind}.from.value`]: 361 }, 'weather.wind.from.value', ['361', '0 to 360']],
  ['north as 000 in a wind', { [`${wind}.from.value`]: 0 }, 'weather.wind.from', ['calm', '360']],
  ['a dew point above the temperature', { 'weather.dewPoint.value': 27 }, 'weather.dewPoint', ['27 degC', '26 degC']],
  [
    'a QNH in the wrong unit',
    { 'weather.qnh': { value: 29.92, unit: 'hPa' } },
    'weather.qnh.value',
    ['850 to 1085 hPa'],
  ],
  ['two pressures', { 'weather.qfe': { value: 990, unit: 'hPa' } }, 'weather.qnh', ['one of qnh and qfe']],
  ['no pressure', { 'weather.qnh': undefined }, 'weather.qnh', ['one of qnh and qfe']],
  ['a runway of no length', { 'runway.length.value': 0 }, 'runway.length.value', ['0 m', '50 to 6000 m']],
  ['a runway of one end', { 'runway.ends.1': undefined }, 'runway.ends[1]', []],
  ['a designator beyond 36', { 'runway.ends.0.designator': '37' }, 'runway.ends[0].designator', ['37']],
  ['a runway end that is not painted', { runwayInUse: '09' }, 'runwayInUse', ['09', '10, 28']],
  [
    'ends that are not opposite',
    { 'runway.ends.0.direction.value': 130 },
    'runway.ends',
    ['130', '292', 'not opposite'],
  ],
  ['a cliff', { 'runway.ends.0.elevation.value': 38 }, 'runway.ends', ['percent', 'at most 10 percent']],
  [
    'a TODA below the TORA',
    { 'runway.ends.1.declaredDistances.TODA.value': 800 },
    'runway.ends[1].declaredDistances.TODA',
    ['800 m', '830 m'],
  ],
  [
    'a threshold beyond the runway',
    { 'runway.ends.1.displacedThreshold': { value: 900, unit: 'm' } },
    'runway.ends[1].displacedThreshold',
    ['900 m', '830 m'],
  ],
  [
    'an obstacle behind the aeroplane',
    { 'runway.obstacles': [{ ...obstacle, beyond: { value: -25, unit: 'm' }, topElevation: top }] },
    'runway.obstacles[0].beyond.value',
    ['-25 m', '0 to 20000 m'],
  ],
  [
    'an obstacle at an end that is not painted',
    { 'runway.obstacles': [{ ...obstacle, end: '27', topElevation: top }] },
    'runway.obstacles[0].end',
    ['27', '10, 28'],
  ],
  ['an obstacle without a height', { 'runway.obstacles': [obstacle] }, 'runway.obstacles[0]', ['top', 'height']],
  [
    'an obstacle with two heights',
    {
      'runway.obstacles': [
        { ...obstacle, topElevation: top, groundElevation: top, height: { value: 20, unit: 'ftHeight' } },
      ],
    },
    'runway.obstacles[0]',
    ['top', 'height'],
  ],
  ['a set that nobody has published', { factorSet: 'mine' }, 'factorSet', ['"mine"', 'easa-class-b']],
  ['a schema of another document', { schema: 'groundroll/landing-request/1' }, 'schema', ['takeoff-request/1']],
  ['an empty table', { [`${table}.cells`]: [] }, inTable, ['0 entries', '3']],
  [
    'an axis that does not rise',
    { [`${table}.axes.1.values`]: [0, 4000, 2000] },
    `${inTable}.axes[1]`,
    ['must rise', '2000', '4000'],
  ],
  ['an axis of nothing', { [`${table}.axes.1.values`]: [] }, `${inTable}.axes[1].values`, ['at least 2']],
  ['a cell that is no number', { [`${table}.cells.0.0.0`]: Number.NaN }, `${inTable}.cells`, ['numbers or null']],
  ['a cell of no length', { [`${table}.cells.0.0.0`]: 0 }, inTable, ['0 m', '1 to 20000 m', '[0][0][0]']],
  ['a roll longer than its distance', { [`${table}.cells.0.0.0`]: 140 }, `${inTable}.cells[0][0][0]`, ['140 m', '145']],
  [
    'an enormous list',
    { [`${table}.axes.2.values`]: Array.from({ length: 200_000 }, (_, i) => i) },
    `${inTable}.axes[2].values`,
    ['200000', '60'],
  ],
  [
    'an enormous list in a list',
    { [`${table}.cells.0.0`]: new Array(200_000).fill(300) },
    `${inTable}.cells[0][0]`,
    ['200000', '60'],
  ],
  [
    'a braking coefficient above one',
    { 'brakingCoefficient.value': 2 },
    'brakingCoefficient.value',
    ['2 ratio', '0.8'],
  ],
];

describe('a request with a fault', () => {
  it.each(rows)('refuses %s', (_name, changes, path, message) => {
    const faults = faultsOf(changes);
    expect(faults.map((fault) => fault.path)).toContain(path);
    const text = faults
      .filter((fault) => fault.path === path)
      .map((fault) => fault.message)
      .join('; ');
    for (const part of message) expect(text).toContain(part);
  });

  it.each(rows)('has a sentence for every fault: %s', (_name, changes) => {
    for (const fault of faultsOf(changes)) {
      expect(fault.message).toMatch(/\S{2,}/);
      expect(fault.message).not.toMatch(/undefined|\[object/);
    }
  });

  it('gets all faults of the single values at once', () => {
    const paths = faultsOf({
      'mass.value': -1,
      'weather.temperature.unit': 'degK',
      'weather.qnh.value': 500,
      'runway.length.value': 0,
      'performanceData.takeoff.0.distance.axes.1.values': [0, 4000, 2000],
      'performanceData.identity.colour': 'red',
    }).map(({ path }) => path);
    expect(paths).toEqual(
      expect.arrayContaining([
        'mass.value',
        'weather.temperature.unit',
        'weather.qnh.value',
        'runway.length.value',
        'performanceData.takeoff[0].distance.axes[1]',
        'performanceData.identity.colour',
      ]),
    );
  });

  it('gets all faults between the values at once', () => {
    const paths = faultsOf({
      'weather.wind.gust.value': 5,
      'weather.dewPoint.value': 27,
      runwayInUse: '09',
      configuration: 'flap-20',
      'runway.ends.1.declaredDistances.ASDA.value': 800,
      'performanceData.stallSpeeds.0.speed.value': 44,
    }).map(({ path }) => path);
    expect(paths).toEqual([
      'performanceData.stallSpeeds',
      'configuration',
      'runwayInUse',
      'runway.ends[1].declaredDistances.ASDA',
      'weather.wind.gust',
      'weather.dewPoint',
    ]);
  });

  it('is no document at all', () => {
    for (const json of [undefined, null, 0, '', 'x', [], () => 1, new Date(0), Symbol('x')]) {
      const result = readTakeoffRequest(json);
      expect(result.ok).toBe(false);
    }
  });
});
