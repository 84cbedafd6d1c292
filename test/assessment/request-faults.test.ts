import { describe, expect, it } from 'vitest';
import { readLandingRequest, readTakeoffRequest, readWeather } from '../../src/assessment/index.ts';
import { requestFaults } from '../../src/assessment/request/request-consistency.ts';
import { runwayFaults } from '../../src/assessment/request/runway-faults.ts';
import { weatherFaults } from '../../src/assessment/request/weather-faults.ts';
import { factorSets } from '../../src/distance/index.ts';
import { type Changes, example, landingRequest, takeoffRequest } from './scenario.ts';

const figure = (value: number, unit: string) => ({ value, unit });
const paths = (faults: readonly { path: string }[]) => faults.map(({ path }) => path);

// 190 degTrue, 7 kt gusting 17 in a METAR, 26 °C, dew point 16 °C.
describe('a weather by itself', () => {
  const faultsIn = (changes: Changes) => paths(weatherFaults(takeoffRequest('takeoff-28', changes).weather));
  const wind = (changes: Record<string, unknown>) =>
    faultsIn(Object.fromEntries(Object.entries(changes).map(([key, value]) => [`weather.wind.${key}`, value])));
  const trueNorth = (value: number) => figure(value, 'degTrue');
  const magnetic = (value: number) => figure(value, 'degMagnetic');

  it('of the example has no fault', () => {
    expect(faultsIn({})).toEqual([]);
  });

  it('has a gust no lower than the mean, whatever their units', () => {
    expect(wind({ gust: figure(7, 'kt') })).toEqual([]);
    expect(wind({ gust: figure(6.9, 'kt') })).toEqual(['wind.gust']);
    expect(wind({ gust: undefined })).toEqual([]);
    // 1 m/s is 1.94384 kt: 3.7 m/s are 7.19 kt, 3.6 m/s are 6.998 kt.
    expect(wind({ gust: figure(3.7, 'mps') })).toEqual([]);
    expect(wind({ gust: figure(3.6, 'mps') })).toEqual(['wind.gust']);
    expect(wind({ speed: figure(9, 'mps'), gust: figure(17, 'kt') })).toEqual(['wind.gust']);
  });

  it('reports 0° in calm only, and north as 360', () => {
    expect(wind({ from: trueNorth(0) })).toEqual(['wind.from']);
    expect(wind({ from: trueNorth(360) })).toEqual([]);
    expect(wind({ from: trueNorth(0), speed: figure(0, 'kt'), gust: undefined })).toEqual([]);
    // Gusts over a mean of nothing blow from somewhere, and nobody said that it was north.
    expect(wind({ from: trueNorth(0), speed: figure(0, 'kt'), gust: figure(12, 'kt') })).toEqual(['wind.from']);
    expect(wind({ from: trueNorth(0), speed: figure(0, 'kt'), gust: figure(0, 'kt') })).toEqual([]);
    expect(wind({ from: trueNorth(350), range: { from: trueNorth(340), to: trueNorth(0) } })).toEqual([
      'wind.range.to',
    ]);
    expect(wind({ from: trueNorth(10), range: { from: trueNorth(0), to: trueNorth(40) } })).toEqual([
      'wind.range.from',
    ]);
  });

  it('comes from a direction on the arc that it varies over, clockwise', () => {
    const over = (from: number, to: number) => (direction: number) =>
      wind({ from: trueNorth(direction), range: { from: trueNorth(from), to: trueNorth(to) } });
    const south = over(160, 240);
    for (const direction of [160, 190, 240]) expect(south(direction)).toEqual([]);
    for (const direction of [159, 241, 360, 20]) expect(south(direction)).toEqual(['wind.from']);
    const north = over(330, 30);
    for (const direction of [330, 350, 360, 10, 30]) expect(north(direction)).toEqual([]);
    for (const direction of [329, 31, 180]) expect(north(direction)).toEqual(['wind.from']);
    expect(wind({ from: 'variable', range: { from: trueNorth(160), to: trueNorth(240) } })).toEqual([]);
  });

  it.each([
    ['METAR', 'degTrue', 'degMagnetic'],
    ['TAF', 'degTrue', 'degMagnetic'],
    ['FAA tower', 'degMagnetic', 'degTrue'],
    ['FAA ATIS', 'degMagnetic', 'degTrue'],
  ])('from a %s is in %s and not in %s', (source, north, other) => {
    expect(wind({ source, from: figure(190, north) })).toEqual([]);
    expect(wind({ source, from: figure(190, other) })).toEqual(['wind.from']);
    const range = { from: figure(160, other), to: figure(240, other) };
    // Each place once, although the direction is in the right one.
    expect(wind({ source, from: figure(190, north), range })).toEqual(['wind.range.from', 'wind.range.to']);
    expect(wind({ source, from: 'variable', range })).toEqual(['wind.range.from', 'wind.range.to']);
  });

  it.each(['ICAO ATIS', 'observed'])('from an %s may be in either, but not in both', (source) => {
    for (const one of [trueNorth, magnetic]) {
      expect(wind({ source, from: one(190), range: { from: one(160), to: one(240) } })).toEqual([]);
      expect(wind({ source, from: one(190) })).toEqual([]);
    }
    expect(wind({ source, from: trueNorth(190), range: { from: trueNorth(160), to: magnetic(240) } })).toEqual([
      'wind.range.to',
    ]);
    expect(wind({ source, from: 'not reported', range: { from: magnetic(160), to: trueNorth(240) } })).toEqual([
      'wind.range.to',
    ]);
  });

  it('has one of the two pressures', () => {
    const qfe = { 'weather.qfe': figure(990, 'hPa') };
    expect(faultsIn({ ...qfe, 'weather.qnh': undefined })).toEqual([]);
    expect(faultsIn(qfe)).toEqual(['qnh']);
    expect(faultsIn({ 'weather.qnh': undefined })).toEqual(['qnh']);
  });

  it('has a dew point no higher than the temperature, whatever their units', () => {
    const dewPoint = (value: number, unit: string) => faultsIn({ 'weather.dewPoint': figure(value, unit) });
    expect(dewPoint(26, 'degC')).toEqual([]);
    expect(dewPoint(26.1, 'degC')).toEqual(['dewPoint']);
    // 26 °C are 78.8 °F.
    expect(dewPoint(78.7, 'degF')).toEqual([]);
    expect(dewPoint(78.9, 'degF')).toEqual(['dewPoint']);
    expect(faultsIn({ 'weather.temperature': figure(60, 'degF') })).toEqual(['dewPoint']); // 15.6 °C
    expect(faultsIn({ 'weather.dewPoint': undefined })).toEqual([]);
  });
});

// 10/28, 112 and 292 degTrue, 830 m, at 387 and 438 ft, every declared distance 830 m.
describe('a runway by itself', () => {
  const faultsIn = (changes: Changes, inUse = '28') =>
    paths(runwayFaults(takeoffRequest('takeoff-28', changes).runway, inUse));
  const end = (changes: Record<string, unknown>, i = 1) =>
    faultsIn(Object.fromEntries(Object.entries(changes).map(([key, value]) => [`runway.ends.${i}.${key}`, value])));

  it('of the example has no fault, from either end', () => {
    expect(faultsIn({})).toEqual([]);
    expect(faultsIn({}, '10')).toEqual([]);
  });

  it('is used from an end that is painted, and painted differently at the other', () => {
    expect(faultsIn({}, '09')).toEqual(['runwayInUse']);
    expect(faultsIn({ 'runway.ends.0.designator': '28', 'runway.obstacles': [] })).toEqual(['runway.ends']);
  });

  it.each([
    [112, 292, true],
    [112, 293, true],
    [112, 291, true],
    [112, 293.1, false],
    [112, 290.9, false],
    [293, 112, true],
    [180, 360, true],
    [180, 0, true],
    [0.5, 179.9, true],
    [359.5, 180, true],
    [112, 112, false],
    [10, 100, false],
  ])('lies in opposite directions within 1°: %d and %d', (a, b, isOpposite) => {
    const directions = { 'runway.ends.0.direction.value': a, 'runway.ends.1.direction.value': b };
    expect(faultsIn(directions)).toEqual(isOpposite ? [] : ['runway.ends']);
  });

  it('is stated against one north', () => {
    expect(end({ 'direction.unit': 'degMagnetic' })).toEqual(['runway.ends']);
  });

  it('has code 6 where it is paved and dry, and another code where it is wet', () => {
    const paved = (condition: string, conditionCode?: number) =>
      faultsIn({
        'runway.surface': { kind: 'paved', condition, ...(conditionCode === undefined ? {} : { conditionCode }) },
      });
    expect(paved('dry', 6)).toEqual([]);
    expect(paved('wet', 5)).toEqual([]);
    expect(paved('wet', 0)).toEqual([]);
    expect(paved('dry')).toEqual([]);
    expect(paved('dry', 5)).toEqual(['runway.surface.conditionCode']);
    expect(paved('wet', 6)).toEqual(['runway.surface.conditionCode']);
  });

  it('climbs and falls by at most 10 %: 83 m in 830', () => {
    const between = (near: number, far: number, unit = 'mElevation') =>
      faultsIn({ 'runway.ends.0.elevation': figure(near, unit), 'runway.ends.1.elevation': figure(far, unit) });
    expect(between(100, 183)).toEqual([]);
    expect(between(183, 100)).toEqual([]);
    expect(between(100, 183.1)).toEqual(['runway.ends']);
    expect(between(183.1, 100)).toEqual(['runway.ends']);
    // 272.3 ft are 83.00 m, 272.4 ft 83.03 m.
    expect(between(100, 372.3, 'ftElevation')).toEqual([]);
    expect(between(100, 372.4, 'ftElevation')).toEqual(['runway.ends']);
    // 900 ft are 274.32 m.
    const short = { 'runway.length': figure(900, 'ft'), 'runway.ends.0.declaredDistances': undefined };
    const slope = (far: number) =>
      faultsIn({
        ...short,
        'runway.ends.1.declaredDistances': undefined,
        'runway.ends.0.elevation': figure(100, 'mElevation'),
        'runway.ends.1.elevation': figure(far, 'mElevation'),
      });
    expect(slope(127.4)).toEqual([]);
    expect(slope(127.5)).toEqual(['runway.ends']);
  });

  it('lies no higher than the highest point of its aerodrome, but for half a metre', () => {
    const aerodrome = (value: number, unit = 'ftElevation') =>
      faultsIn({ 'runway.aerodromeElevation': figure(value, unit) });
    expect(aerodrome(500)).toEqual([]);
    expect(aerodrome(438)).toEqual([]);
    // 438 ft are 133.502 m.
    expect(aerodrome(133.01, 'mElevation')).toEqual([]);
    expect(aerodrome(132.99, 'mElevation')).toEqual(['runway.aerodromeElevation']);
    expect(aerodrome(400)).toEqual(['runway.aerodromeElevation']);
  });

  describe.each([0, 1])('declares at its end %d', (i) => {
    const declared = (distances: Record<string, number>, others: Record<string, unknown> = {}, unit = 'm') =>
      end(
        {
          declaredDistances: Object.fromEntries(
            Object.entries(distances).map(([key, value]) => [key, figure(value, unit)]),
          ),
          ...others,
        },
        i,
      );
    const at = (key: string) => [`runway.ends[${i}].declaredDistances.${key}`];

    it('a TODA and an ASDA no shorter than the TORA, or than the runway where none is published, but for a metre', () => {
      for (const key of ['TODA', 'ASDA']) {
        expect(declared({ TORA: 800, [key]: 800 })).toEqual([]);
        expect(declared({ TORA: 800, [key]: 799 })).toEqual([]);
        expect(declared({ TORA: 800, [key]: 798.9 })).toEqual(at(key));
        expect(declared({ [key]: 829 })).toEqual([]);
        expect(declared({ [key]: 828.9 })).toEqual(at(key));
      }
      expect(declared({ TORA: 800, LDA: 600 })).toEqual([]);
      // 2723 ft are 829.97 m, 2719 ft are 828.75 m.
      expect(declared({ TODA: 2723 }, {}, 'ft')).toEqual([]);
      expect(declared({ TODA: 2719 }, {}, 'ft')).toEqual(at('TODA'));
    });

    it('a TORA no longer than the runway, but for a metre of rounding', () => {
      expect(declared({ TORA: 831 })).toEqual([]);
      expect(declared({ TORA: 831.1 })).toEqual(at('TORA'));
    });

    it('an LDA no longer than the runway beyond the threshold, but for a metre of rounding', () => {
      expect(declared({ LDA: 831 })).toEqual([]);
      expect(declared({ LDA: 831.1 })).toEqual(at('LDA'));
      const displaced = { displacedThreshold: figure(200, 'ft') }; // 60.96 m
      expect(declared({ LDA: 770.04 }, displaced)).toEqual([]);
      expect(declared({ LDA: 770.05 }, displaced)).toEqual(at('LDA'));
    });

    it('in the sentence of the fault what the threshold leaves', () => {
      const { runway } = takeoffRequest('takeoff-28', {
        [`runway.ends.${i}.displacedThreshold`]: figure(60, 'm'),
        [`runway.ends.${i}.declaredDistances`]: { LDA: figure(780, 'm') },
      });
      expect(runwayFaults(runway, '28')[0]?.message).toMatch(/^780 m .* 770 m$/);
    });

    it('a threshold on the runway', () => {
      const threshold = (value: number) => declared({}, { displacedThreshold: figure(value, 'm') });
      expect(threshold(829)).toEqual([]);
      expect(threshold(830)).toEqual([`runway.ends[${i}].displacedThreshold`]);
    });

    it('nothing at all', () => {
      expect(end({ declaredDistances: undefined }, i)).toEqual([]);
    });
  });

  it('has obstacles at its ends, each with the elevation of its top or with ground and height', () => {
    const top = { topElevation: figure(500, 'ftElevation') };
    const ground = { groundElevation: figure(438, 'ftElevation') };
    const height = { height: figure(28, 'mHeight') };
    const fence = { name: 'fence', end: '10', beyond: figure(25, 'm'), ...top };
    const with2nd = (changes: object) =>
      faultsIn({ 'runway.obstacles': [fence, { name: 'pines', end: '28', beyond: figure(25, 'm'), ...changes }] });
    expect(with2nd(top)).toEqual([]);
    expect(with2nd({ ...ground, ...height })).toEqual([]);
    for (const bad of [
      {},
      ground,
      height,
      { ...top, ...ground },
      { ...top, ...height },
      { ...top, ...ground, ...height },
    ])
      expect(with2nd(bad)).toEqual(['runway.obstacles[1]']);
    expect(with2nd({ ...top, end: '27' })).toEqual(['runway.obstacles[1].end']);
    expect(faultsIn({ 'runway.obstacles': undefined })).toEqual([]);
  });
});

describe('a request whose parts contradict each other', () => {
  const takeoffFaults = (changes: Changes) => requestFaults(takeoffRequest('takeoff-28', changes));
  const takeoff = (changes: Changes) => paths(takeoffFaults(changes));
  const landing = (changes: Changes) => paths(requestFaults(landingRequest('landing-10', changes)));

  it('is none in the examples', () => {
    expect(takeoff({})).toEqual([]);
    expect(landing({})).toEqual([]);
  });

  it('names the document that the fault of a part is in', () => {
    expect(takeoff({ 'performanceData.stallSpeeds.0.speed.value': 44 })).toEqual(['performanceData.stallSpeeds']);
    expect(takeoff({ 'weather.wind.gust.value': 5 })).toEqual(['weather.wind.gust']);
    expect(takeoff({ runwayInUse: '09' })).toEqual(['runwayInUse']);
  });

  it('names one of several configurations of its phase', () => {
    const [fault, ...others] = takeoffFaults({ configuration: undefined });
    expect(others).toEqual([]);
    expect(fault).toMatchObject({ path: 'configuration', message: expect.stringContaining('"flap-15", "flap-0"') });
    expect(fault?.message).not.toContain('flap-35');
    expect(landing({ configuration: undefined })).toEqual([]);
    expect(takeoff({ configuration: 'flap-0' })).toEqual([]);
    expect(takeoff({ configuration: 'flap-35' })).toEqual(['configuration']);
    expect(landing({ configuration: 'flap-15' })).toEqual(['configuration']);
    const [unknown] = takeoffFaults({ configuration: 'flap-20' });
    expect(unknown?.message).toContain('"flap-15", "flap-0"');
  });

  it('has a configuration of its phase in the data', () => {
    const data = example('takeoff-28') as { performanceData: { configurations: { phase: string }[] } };
    const configurations = data.performanceData.configurations.filter(({ phase }) => phase !== 'landing');
    const without = {
      'performanceData.configurations': configurations,
      'performanceData.landing': [],
      'performanceData.climb': [],
      configuration: undefined,
    };
    expect(landing(without)).toEqual(['configuration']);
  });

  it('has the variation between a wind and a runway of two norths', () => {
    const magneticWind = {
      'weather.wind': { source: 'observed', from: figure(190, 'degMagnetic'), speed: figure(7, 'kt') },
    };
    expect(takeoff(magneticWind)).toEqual([]);
    expect(takeoff({ ...magneticWind, variation: undefined })).toEqual(['variation']);
    expect(takeoff({ variation: undefined })).toEqual([]);
    const noDirection = { 'weather.wind': { source: 'observed', from: 'variable', speed: figure(7, 'kt') } };
    expect(takeoff({ ...noDirection, variation: undefined })).toEqual([]);
    const byRange = {
      'weather.wind': {
        source: 'observed',
        from: 'variable',
        speed: figure(7, 'kt'),
        range: { from: figure(160, 'degMagnetic'), to: figure(240, 'degMagnetic') },
      },
    };
    expect(takeoff({ ...byRange, variation: undefined })).toEqual(['variation']);
  });

  describe('confirms factors of its set', () => {
    const origin = (id: string) => ({ id, locator: 'p. 1', access: 'recalled' });
    const phase = (name: string) => ({
      surfaces: [{ ...factorSets['easa-class-b'].takeoff.surfaces[0], ...origin(`${name}-grass`) }],
      slope: { ...origin(`${name}-slope`), percentPerPercent: 5, upTo: 2, beyond: 'no figure' },
      mass: { ...origin(`${name}-mass`), factorPerStep: 1.2, step: 10 },
      elevation: { ...origin(`${name}-elevation`), factorPerStep: 1.1, step: 1000 },
      temperature: { ...origin(`${name}-temperature`), factorPerStep: 1.1, step: 10 },
      tailwind: { ...origin(`${name}-tailwind`), factorPerStep: 1.2, step: 10 },
    });
    const set = {
      id: 'own',
      title: 'Own set',
      edition: '1',
      scope: 'tests',
      hasSafetyFactor: true,
      takeoff: {
        ...phase('up'),
        safety: [
          { needs: 'nothing', tests: [{ ...origin('up-run'), against: 'TORA', factor: 1.25 }] },
          { needs: 'clearway', tests: [{ ...origin('up-clear'), against: 'TODA', factor: 1.15 }] },
        ],
      },
      landing: { ...phase('down'), safety: { ...origin('down-lda'), factor: 1.43 } },
    };
    const confirming = (...ids: string[]) => ({
      factorSet: set,
      'policies.confirmations': ids.map((factorId) => ({ factorId, edition: '1', date: '2026-07-14' })),
    });
    const parts = ['grass', 'slope', 'mass', 'elevation', 'temperature', 'tailwind'];

    it('of every kind and of either phase', () => {
      const all = [...parts.map((part) => `up-${part}`), 'up-run', 'up-clear'];
      const ofLanding = [...parts.map((part) => `down-${part}`), 'down-lda'];
      expect(takeoff(confirming(...all, ...ofLanding))).toEqual([]);
    });

    it('and no other, each by its place', () => {
      expect(takeoff(confirming('up-grass', 'up-snow', 'up-run', 'left-slope'))).toEqual([
        'policies.confirmations[1].factorId',
        'policies.confirmations[3].factorId',
      ]);
      expect(takeoff({ ...confirming('uk-leaflet-takeoff-soft'), factorSet: 'easa-class-b' })).toEqual([
        'policies.confirmations[0].factorId',
      ]);
      expect(takeoff({ ...confirming('uk-leaflet-takeoff-soft'), factorSet: 'uk-light-aeroplane-leaflet' })).toEqual(
        [],
      );
    });

    it('of a set that has few', () => {
      const few = { ...set, takeoff: { surfaces: [], safety: set.takeoff.safety } };
      expect(takeoff({ ...confirming('up-run', 'up-slope'), factorSet: few })).toEqual([
        'policies.confirmations[1].factorId',
      ]);
      expect(takeoff({ policies: undefined })).toEqual([]);
    });

    it('of an own set that begins with a way that needs nothing', () => {
      const read = (safety: unknown[]) => {
        const result = readTakeoffRequest(
          takeoffRequest('takeoff-28', { factorSet: { ...set, takeoff: { ...set.takeoff, safety } } }),
        );
        return result.ok ? [] : paths(result.faults);
      };
      const [plain, clearway] = set.takeoff.safety;
      expect(read([plain, clearway])).toEqual([]);
      expect(read([clearway, plain])).toEqual(['factorSet']);
      expect(read([])).toContain('factorSet.takeoff.safety');
    });
  });

  it('has no obstacle far below the runway or kilometres above it', () => {
    const top = (value: number) =>
      takeoff({
        'runway.obstacles': [
          { name: 'mast', end: '28', beyond: figure(900, 'm'), topElevation: figure(value, 'mElevation') },
        ],
      });
    // The ends lie at 387 ft and 438 ft, 117.96 m and 133.50 m.
    expect(top(133.5 - 900)).toEqual(['runway.obstacles[0].topElevation']);
    expect(top(133.6 - 900)).toEqual([]);
    expect(top(117.9 + 2900)).toEqual([]);
    expect(top(118 + 2900)).toEqual(['runway.obstacles[0].topElevation']);
    const byHeight = {
      ...{ name: 'mast', end: '28', beyond: figure(900, 'm') },
      ...{ groundElevation: figure(2900, 'mElevation'), height: figure(150, 'mHeight') },
    };
    expect(takeoff({ 'runway.obstacles': [byHeight] })).toEqual(['runway.obstacles[0].groundElevation']);
  });

  describe('is painted with a number that does not contradict the direction', () => {
    const ends = (a: number, b: number, unit: string, variation: number | undefined, numbers = ['10', '28']) =>
      takeoff({
        'runway.ends.0.direction': figure(a, unit),
        'runway.ends.1.direction': figure(b, unit),
        'runway.ends.0.designator': numbers[0],
        'runway.ends.1.designator': numbers[1],
        'runway.obstacles': [],
        runwayInUse: numbers[1],
        'weather.wind': { source: 'observed', from: 'variable', speed: figure(3, 'kt') },
        variation: variation === undefined ? undefined : { value: figure(variation, 'degEast'), source: 'chart, 2026' },
      });
    const both = ['runway.ends[0].direction', 'runway.ends[1].direction'];

    it('by more than 30° from magnetic north', () => {
      expect(ends(130, 310, 'degMagnetic', undefined)).toEqual([]);
      expect(ends(130.1, 310.1, 'degMagnetic', undefined)).toEqual(both);
      expect(ends(70, 250, 'degMagnetic', undefined)).toEqual([]);
      expect(ends(69.9, 249.9, 'degMagnetic', undefined)).toEqual(both);
    });

    it('by more than 90° from true north where the variation is not known', () => {
      expect(ends(190, 10, 'degTrue', undefined)).toEqual([]);
      expect(ends(191, 11, 'degTrue', undefined)).toEqual(both);
      expect(ends(10, 190, 'degTrue', undefined)).toEqual([]);
      expect(ends(9, 189, 'degTrue', undefined)).toEqual(both);
    });

    it('by more than 30° with the variation taken off, added, or left', () => {
      // 13° E.
      expect(ends(143, 323, 'degTrue', 13)).toEqual([]);
      expect(ends(143.1, 323.1, 'degTrue', 13)).toEqual(both);
      expect(ends(57, 237, 'degTrue', 13)).toEqual([]);
      expect(ends(56.9, 236.9, 'degTrue', 13)).toEqual(both);
      expect(ends(100, 280, 'degTrue', 100)).toEqual([]);
    });

    it('across north, and with a letter', () => {
      expect(ends(10, 190, 'degMagnetic', undefined, ['36L', '18R'])).toEqual([]);
      expect(ends(350, 170, 'degMagnetic', undefined, ['01', '19'])).toEqual([]);
      expect(ends(331, 151, 'degMagnetic', undefined, ['01', '19'])).toEqual(both);
    });

    it('names the end alone that does', () => {
      expect(ends(112, 292, 'degMagnetic', undefined, ['10', '22'])).toEqual(['runway.ends[1].direction']);
    });
  });

  it('gives the dew point that its policy on humidity needs', () => {
    const virtual = { 'policies.humidity': 'virtual temperature' };
    expect(takeoff(virtual)).toEqual([]);
    expect(takeoff({ ...virtual, 'weather.dewPoint': undefined })).toEqual(['weather.dewPoint']);
    expect(takeoff({ 'weather.dewPoint': undefined })).toEqual([]);
  });

  it('loses less than the TORA in lining up, or than the runway where none is published', () => {
    const lost = (value: number, unit: string, changes: Changes = {}) =>
      takeoff({ lineUpLoss: figure(value, unit), ...changes });
    const short = { 'runway.ends.1.declaredDistances.TORA.value': 300 };
    expect(lost(299.9, 'm', short)).toEqual([]);
    expect(lost(300, 'm', short)).toEqual(['lineUpLoss']);
    expect(lost(300, 'm', { 'runway.ends.0.declaredDistances.TORA.value': 300 })).toEqual([]);
    // 984 ft are 299.92 m, 985 ft 300.23 m.
    expect(lost(984, 'ft', short)).toEqual([]);
    expect(lost(985, 'ft', short)).toEqual(['lineUpLoss']);
    const unpublished = { 'runway.length.value': 300, 'runway.ends.0.declaredDistances': undefined };
    const bare = { ...unpublished, 'runway.ends.1.declaredDistances': undefined };
    expect(lost(299, 'm', bare)).toEqual([]);
    expect(lost(300, 'm', bare)).toEqual(['lineUpLoss']);
    const noRun = { ...unpublished, 'runway.ends.1.declaredDistances': { LDA: figure(280, 'm') } };
    expect(lost(300, 'm', noRun)).toEqual(['lineUpLoss']);
    expect(takeoff({ lineUpLoss: undefined })).toEqual([]);
  });
});

describe('a document that is read', () => {
  const faultsOf = (result: { ok: true } | { ok: false; faults: readonly { path: string; message: string }[] }) =>
    result.ok ? [] : result.faults;

  it('is held to its schema first, and to itself then', () => {
    expect(paths(faultsOf(readTakeoffRequest(example('takeoff-28', { 'mass.value': -1, runwayInUse: '09' }))))).toEqual(
      ['mass.value'],
    );
    expect(paths(faultsOf(readTakeoffRequest(example('takeoff-28', { runwayInUse: '09' }))))).toEqual(['runwayInUse']);
    expect(paths(faultsOf(readLandingRequest(example('landing-10', { runwayInUse: '09' }))))).toEqual(['runwayInUse']);
  });

  it('is a weather by itself as well', () => {
    const { weather } = takeoffRequest('takeoff-28');
    expect(readWeather(weather)).toEqual({ ok: true, value: weather });
    expect(paths(faultsOf(readWeather({ ...weather, qnh: undefined })))).not.toEqual([]);
    const { qnh: _, ...noPressure } = weather;
    expect(paths(faultsOf(readWeather(noPressure)))).toEqual(['qnh']);
  });

  it('is told that a condition code belongs to paved runways, and of nothing else', () => {
    const grass = { kind: 'grass', condition: 'dry', length: 'up to 20 cm', ground: 'firm' };
    const messages = (surface: object) =>
      faultsOf(readTakeoffRequest(example('takeoff-28', { 'runway.surface': surface })));
    expect(messages({ ...grass, conditionCode: 6 })).toEqual([
      { path: 'runway.surface.conditionCode', message: 'runway condition codes are for paved runways only' },
    ]);
    const [other] = messages({ ...grass, colour: 'green' });
    expect(other).toMatchObject({ path: 'runway.surface.colour', message: expect.stringContaining('not a key') });
    const [outside] = messages({ kind: 'paved', condition: 'dry', conditionCode: 7 });
    expect(outside?.path).toBe('runway.surface.conditionCode');
    expect(outside?.message).not.toContain('paved runways only');
  });

  it('names a designator that is none, and a set that nobody has published', () => {
    const designators = (designator: string) =>
      faultsOf(readTakeoffRequest(example('takeoff-28', { 'runway.ends.0.designator': designator })));
    for (const bad of ['37', '00', '10X', '100', ' 10', '10 '])
      expect(designators(bad)[0]).toMatchObject({
        path: 'runway.ends[0].designator',
        message: `"${bad}" is not a runway designator`,
      });
    const published = faultsOf(readTakeoffRequest(example('takeoff-28', { factorSet: 'mine' })));
    expect(paths(published)).toEqual(['factorSet']);
    expect(
      paths(faultsOf(readTakeoffRequest(example('takeoff-28', { factorSet: {} })))).every((path) =>
        path.startsWith('factorSet'),
      ),
    ).toBe(true);
  });
});
