import { describe, expect, it } from 'vitest';
import { factorSets } from '../../src/distance/index.ts';
import { type Changes, codes, criterion, takeoff } from './scenario.ts';

const { 'uk-light-aeroplane-leaflet': leaflet } = factorSets;
const { mass, temperature, slope } = leaflet.takeoff;
const table = 'performanceData.takeoff.0';
const single = (value: number) => ({ axes: [], unit: 'm', cells: value });
const metres = (value: number) => ({ value, unit: 'm' });

/** A set of one's own: the leaflet with other rules. */
const ownSet = (rules: object): Changes => ({
  factorSet: { ...leaflet, id: 'own', title: 'own', takeoff: { ...leaflet.takeoff, ...rules } },
});

// One printed figure, 400 m for 900 kg at 15 °C; 940 kg cost 8.889 %, 21 °C 6 % more, and the safety factor is 1.33:
// 614 m on a dry, paved, level runway in calm air.
const day: Changes = {
  [`${table}.distance`]: single(400),
  [`${table}.groundRoll`]: single(200),
  [`${table}.associatedConditions.mass`]: { value: 900, unit: 'kg' },
  [`${table}.associatedConditions.pressureAltitude`]: { value: 4000, unit: 'ftPA' },
  [`${table}.associatedConditions.temperature`]: { value: 15, unit: 'degC' },
  'runway.surface': { kind: 'paved', condition: 'dry' },
  'runway.ends.0.elevation.value': 438,
  'runway.obstacles': [],
  'weather.wind': { source: 'METAR', from: 'variable', speed: { value: 0, unit: 'kt' } },
  'weather.temperature.value': 21,
};
const runway = (length: number): Changes => ({
  'runway.length': metres(length),
  'runway.ends.0.declaredDistances': undefined,
  'runway.ends.1.declaredDistances': undefined,
});

describe('bounds that meet', () => {
  const verdicts = (ofMass: string, ofTemperature: string) =>
    [830, 500].map(
      (length) =>
        criterion(
          takeoff('takeoff-28', {
            ...day,
            ...runway(length),
            ...ownSet({ mass: { ...mass, kind: ofMass }, temperature: { ...temperature, kind: ofTemperature } }),
          }),
          'takeoff-distance',
        ).verdict,
    );

  it.each([
    ['value', 'value', 'within', 'outside'],
    ['at-least', 'value', 'undetermined', 'outside'],
    ['value', 'at-least', 'undetermined', 'outside'],
    ['at-least', 'at-least', 'undetermined', 'outside'],
    ['at-most', 'at-most', 'within', 'undetermined'],
    ['at-least', 'at-most', 'undetermined', 'undetermined'],
    ['at-most', 'at-least', 'undetermined', 'undetermined'],
  ])('%s and %s: 614 m are %s of 830 m and %s of 500 m', (ofMass, ofTemperature, long, short) => {
    expect(verdicts(ofMass, ofTemperature)).toEqual([long, short]);
  });
});

describe('a factor that nobody has confirmed', () => {
  const recalled = (changes: Changes) =>
    takeoff('takeoff-28', changes)
      .reasons.filter(({ code }) => code === 'recalled-factor')
      .map(({ parameters }) => parameters['factorId']);

  it('counts among those used, whatever is used after it', () => {
    expect(recalled({ ...day, ...ownSet({}) })).toEqual([]);
    const ofMass = ownSet({ mass: { ...mass, access: 'recalled' } });
    expect(new Set(recalled({ ...day, ...ofMass }))).toEqual(new Set(['uk-leaflet-takeoff-mass']));
    const ofTemperature = ownSet({ temperature: { ...temperature, access: 'recalled' } });
    expect(new Set(recalled({ ...day, ...ofTemperature }))).toEqual(new Set(['uk-leaflet-takeoff-temperature']));
  });

  it('is none that was not needed: at 15 °C that for the temperature', () => {
    const ofTemperature = ownSet({ temperature: { ...temperature, access: 'recalled' } });
    expect(
      recalled({ ...day, ...ofTemperature, 'weather.temperature.value': 15, 'weather.dewPoint': undefined }),
    ).toEqual([]);
  });

  it("may be that for the slope, unless the manual's own law takes its place", () => {
    const uphill = ownSet({ slope: { ...slope, access: 'recalled' } });
    const law = {
      change: { value: 5, unit: 'percent' },
      per: { value: 1, unit: 'percent' },
      upTo: { value: 3, unit: 'percent' },
      percentOf: 'distance',
    };
    expect(codes(takeoff('takeoff-10', uphill).reasons)).toContain('recalled-factor');
    const own = takeoff('takeoff-10', { ...uphill, [`${table}.corrections.adverseSlope`]: law });
    expect(codes(own.reasons)).not.toContain('recalled-factor');
  });
});
