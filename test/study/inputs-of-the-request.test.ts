import { describe, expect, it } from 'vitest';
import { factorSets } from '../../src/distance/index.ts';
import { type AnyRequest, configurationOf, readAny, tableOf } from '../../src/study/any-request.ts';
import { pressureInput, temperatureInput } from '../../src/study/inputs/air.ts';
import { obstacleDistanceInput, obstacleHeightInput, obstaclesThatCount } from '../../src/study/inputs/obstacles.ts';
import { excessHeightInput, speedAdditionInput } from '../../src/study/inputs/speeds.ts';
import { surfaceFactorInput } from '../../src/study/inputs/surface.ts';
import {
  alongRunway,
  gustInput,
  tailwindInput,
  windDirectionInput,
  windSpeedInput,
} from '../../src/study/inputs/wind.ts';
import { type Changes, landingRequest, takeoffRequest } from '../assessment/scenario.ts';
import { landingOf, takeoffOf } from './aeroplanes.ts';

const takeoff = (changes: Changes = {}) => takeoffRequest('takeoff-28', changes);
const landing = (changes: Changes = {}) => landingRequest('landing-10', changes);
const reads = (request: AnyRequest | undefined) => request !== undefined && readAny(request).ok;
const noGust = { 'weather.wind.gust': undefined };

describe('speeds', () => {
  it('are added to the lift-off speed of a take-off, nothing where the request says nothing', () => {
    const input = speedAdditionInput(takeoff());
    expect(input).toMatchObject({ id: 'liftOffSpeedAddition', unit: 'kt', today: 0, min: 0, max: 30 });
    expect(input.quantity).toBe('addition to the lift-off speed');
    expect(input.at(6)).toEqual({ ...takeoff(), liftOffSpeedAddition: { value: 6, unit: 'kt' } });
    const four = { liftOffSpeedAddition: { value: 4, unit: 'kt' } };
    expect(speedAdditionInput(takeoff(four)).today).toBe(4);
  });

  it('are added to the approach speed of a landing, half the gust increment where the request says nothing', () => {
    // 7 kt gusting 17.
    const input = speedAdditionInput(landing());
    expect(input).toMatchObject({ id: 'approachSpeedAddition', unit: 'kt', today: 5 });
    expect(input.at(8)).toEqual({ ...landing(), approachSpeedAddition: { value: 8, unit: 'kt' } });
    expect(speedAdditionInput(landing({ approachSpeedAddition: { value: 3, unit: 'kt' } })).today).toBe(3);
  });

  it('has an excess height at the threshold of a landing alone', () => {
    expect(excessHeightInput(takeoff())).toBeUndefined();
    expect(excessHeightInput(landing())).toMatchObject({ id: 'excessHeight', unit: 'ftHeight', today: 0, min: 0 });
    const high = excessHeightInput(landing({ excessHeight: { value: 10, unit: 'mHeight' } }));
    expect(high).toMatchObject({ unit: 'mHeight', today: 10, max: 199 });
    expect(high?.at(20)).toEqual({ ...landing(), excessHeight: { value: 20, unit: 'mHeight' } });
    expect(excessHeightInput(landing())?.max).toBeCloseTo(199 / 0.3048, 6);
  });
});

describe('the wind', () => {
  it('keeps its gusts as far above the mean as they are, and has none where none is reported', () => {
    const gusty = windSpeedInput(takeoff());
    expect(gusty.quantity).toBe('wind speed with its gusts');
    expect(gusty.at(10).weather.wind).toMatchObject({
      speed: { value: 10, unit: 'kt' },
      gust: { value: 20, unit: 'kt' },
    });
    const steady = windSpeedInput(takeoff(noGust));
    expect(steady.quantity).toBe('wind speed');
    expect(steady.at(10).weather.wind).toMatchObject({ speed: { value: 10, unit: 'kt' } });
    expect(steady.at(10).weather.wind).not.toHaveProperty('gust');
  });

  it('is read up to the end of its range, gusts included, and not beyond 100 kt', () => {
    const gusty = windSpeedInput(takeoff());
    expect(reads(gusty.at(gusty.max))).toBe(true);
    expect(reads(gusty.at(90.01))).toBe(false);
    expect(gusty.max).toBeGreaterThan(89.9);
    const gust = gustInput(takeoff());
    expect([gust.today, gust.min]).toEqual([17, 7]);
    expect(reads(gust.at(gust.max))).toBe(true);
    expect(reads(gust.at(100.01))).toBe(false);
    expect(gust.max).toBeGreaterThan(99.9);
    for (const { max } of [gusty, gust]) expect(max).toBeLessThanOrEqual(100);
  });

  it('turns half a circle either way, its reported range with it', () => {
    const range = { from: { value: 160, unit: 'degTrue' }, to: { value: 220, unit: 'degTrue' } };
    const input = windDirectionInput(takeoff({ 'weather.wind.range': range }));
    expect([input?.today, input?.min, input?.max]).toEqual([190, 10, 370]);
    expect(input?.at(370).weather.wind).toMatchObject({
      from: { value: 10, unit: 'degTrue' },
      range: { from: { value: 340, unit: 'degTrue' }, to: { value: 40, unit: 'degTrue' } },
    });
    expect(windDirectionInput(takeoff())?.at(200).weather.wind).not.toHaveProperty('range');
  });

  it('has no direction to turn where none is reported', () => {
    for (const from of ['variable', 'not reported'])
      expect(windDirectionInput(takeoff({ 'weather.wind.from': from }))).toBeUndefined();
  });

  it('as a tailwind used is the share of a steady wind from behind that the policy asks for', () => {
    // Runway 28 lies along 292°; 150 % of 4 kt, by default and where nothing is said of policies, or 200 % of 3 kt.
    const wind = (changes: Changes) => tailwindInput(takeoff(changes)).at(6).weather.wind;
    const from112 = { value: 112, unit: 'degTrue' };
    expect(wind({})).toMatchObject({ from: from112, speed: { value: 4, unit: 'kt' }, gust: { value: 4, unit: 'kt' } });
    expect(wind({ policies: undefined })).toMatchObject({ speed: { value: 4 } });
    expect(wind({ 'policies.tailwindShare': { value: 2, unit: 'ratio' } })).toMatchObject({ speed: { value: 3 } });
  });

  it('along the runway comes from ahead as a headwind and from behind as a tailwind', () => {
    const along = (headwind: number) => alongRunway(takeoff(), headwind).weather.wind;
    expect(along(10)).toMatchObject({ from: { value: 292 }, speed: { value: 10 }, gust: { value: 10 } });
    expect(along(-10)).toMatchObject({ from: { value: 112 }, speed: { value: 10 }, gust: { value: 10 } });
  });
});

describe('the air', () => {
  it('can be colder than a dew point that only informs', () => {
    for (const changes of [{}, { policies: undefined }]) {
      const input = temperatureInput(takeoff(changes));
      expect(input.min).toBe(-40);
      expect(input.at(0).weather).not.toHaveProperty('dewPoint');
    }
  });

  it('keeps the dew point where the tables are read at the virtual temperature', () => {
    const humid = { 'policies.humidity': 'virtual temperature' };
    expect(temperatureInput(takeoff(humid)).min).toBe(16);
    expect(temperatureInput(takeoff(humid)).at(20).weather.dewPoint).toEqual({ value: 16, unit: 'degC' });
    expect(temperatureInput(takeoff({ ...humid, 'weather.dewPoint': undefined })).min).toBe(-40);
  });

  it('has a pressure within what a request takes, by QNH or by QFE, in its unit', () => {
    const qfe = (value: number, unit: string) => ({ 'weather.qnh': undefined, 'weather.qfe': { value, unit } });
    for (const changes of [{}, { 'weather.qnh': { value: 29.71, unit: 'inHg' } }, qfe(990, 'hPa'), qfe(29.2, 'inHg')]) {
      const { at, min, max, today } = pressureInput(takeoff(changes));
      expect(min).toBeLessThan(today as number);
      for (const value of [min, max]) expect(reads(at(value)), `${value}`).toBe(true);
    }
    const { min, max, quantity } = pressureInput(takeoff());
    expect([Math.floor(min), Math.ceil(max), quantity]).toEqual([850, 1085, 'QNH']);
    const field = pressureInput(takeoff(qfe(990, 'hPa')));
    expect([Math.floor(field.min), field.quantity]).toEqual([500, 'QFE']);
    // 850 and 1085 hPa, of which 33.8639 are one inch.
    const inches = pressureInput(takeoff({ 'weather.qnh': { value: 29.71, unit: 'inHg' } }));
    expect([inches.min, inches.max]).toEqual([expect.closeTo(25.1, 2), expect.closeTo(32.04, 2)]);
  });
});

describe('obstacles', () => {
  it('are none where the request lists none', () => {
    expect(obstaclesThatCount(takeoff({ 'runway.obstacles': undefined }))).toEqual([]);
  });

  it('move by what is asked about, alone', () => {
    const request = takeoffRequest('quarry-takeoff-04');
    const [heap] = obstaclesThatCount(request);
    if (heap === undefined) throw new Error('no heap');
    const [bank] = request.runway.obstacles ?? [];
    const farther = obstacleDistanceInput(request, heap);
    expect(farther).toMatchObject({ today: 900, unit: 'm', min: 0, max: 19_999 });
    expect(farther.at(950).runway.obstacles).toEqual([bank, { ...heap, beyond: { value: 950, unit: 'm' } }]);
    const taller = obstacleHeightInput(request, heap);
    // As low as any elevation of a request goes: -2 000 ft.
    expect(taller).toMatchObject({ today: 1950, unit: 'ftElevation', min: -1999, max: 14_999 });
    expect(taller.at(2000).runway.obstacles).toEqual([
      bank,
      { ...heap, topElevation: { value: 2000, unit: 'ftElevation' } },
    ]);
  });
});

describe('the surface factor', () => {
  it('is 1.20 on dry grass today, 1 on dry pavement and none where there is no distance', () => {
    const today = (surface: object) => surfaceFactorInput(takeoff({ 'runway.surface': surface })).today;
    expect(surfaceFactorInput(takeoff()).today).toBe(1.2);
    expect(today({ kind: 'paved', condition: 'dry' })).toBe(1);
    expect(surfaceFactorInput(takeoff({ configuration: 'flap-0' })).today).toBeUndefined();
  });
});

describe('the surface asked about', () => {
  it('needs no confirmation that the surface of the request needed', () => {
    const classB = factorSets['easa-class-b'];
    const surfaces = classB.takeoff.surfaces.map((each) => ({ ...each, access: 'recalled' as const }));
    const confirmations = surfaces.map(({ id }) => ({ factorId: id, edition: '2024', date: '2026-07-14' }));
    const recalled = takeoff({
      factorSet: { ...classB, takeoff: { ...classB.takeoff, surfaces } },
      'policies.confirmations': confirmations,
    });
    expect(reads(recalled)).toBe(true);
    const asked = surfaceFactorInput(recalled).at(1.2);
    expect(reads(asked)).toBe(true);
    expect(asked.policies?.confirmations).toEqual([]);
  });
});

describe('the configuration', () => {
  it('is the one that is named, whether or not there is a table for it', () => {
    expect(configurationOf(takeoff({ configuration: 'flap-0' }))).toBe('flap-0');
    expect(tableOf(takeoff({ configuration: 'flap-0' }))).toBeUndefined();
    expect(tableOf(takeoff())).toMatchObject({ configuration: 'flap-15' });
  });

  it('is the only one of the phase where none is named, and none where there is none', () => {
    const unnamed = { configuration: undefined };
    expect(configurationOf(takeoffOf('linnet-two', unnamed))).toBe('takeoff');
    expect(configurationOf(landingOf('linnet-two', unnamed))).toBe('landing');
    expect(configurationOf(takeoff({ ...unnamed, 'performanceData.configurations': [] }))).toBeUndefined();
  });
});
