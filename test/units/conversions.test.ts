import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as units from '../../src/units/index.ts';
import { convert, isUnitWord, type UnitWord, unitTable } from '../../src/units/unit-table.ts';
import { evenly } from '../evenly.ts';

type Conversion = (value: never) => number;

/** Every pairwise conversion with its inverse, the words of its units, and one published pair of figures. */
const pairs: readonly (readonly [Conversion, Conversion, UnitWord, UnitWord, number, number])[] = [
  // 1 ft = 0.3048 m, 1 NM = 1852 m, 1 statute mile = 1609.344 m: exact by definition.
  [units.metresFromFeet, units.feetFromMetres, 'ft', 'm', 1, 0.3048],
  [units.metresFromNauticalMiles, units.nauticalMilesFromMetres, 'NM', 'm', 1, 1852],
  [units.metresFromKilometres, units.kilometresFromMetres, 'km', 'm', 1, 1000],
  [units.feetFromNauticalMiles, units.nauticalMilesFromFeet, 'NM', 'ft', 1, 6076.115485564304],
  [units.elevationInMetresFromFeet, units.elevationFromMetres, 'ftElevation', 'mElevation', 1, 0.3048],
  [units.heightInMetresFromFeet, units.heightFromMetres, 'ftHeight', 'mHeight', 1, 0.3048],
  [units.pressureAltitudeInMetresFromFeet, units.pressureAltitudeFromMetres, 'ftPA', 'mPA', 1, 0.3048],
  [units.densityAltitudeInMetresFromFeet, units.densityAltitudeFromMetres, 'ftDA', 'mDA', 1, 0.3048],
  [
    units.geopotentialAltitudeInMetresFromFeet,
    units.geopotentialAltitudeFromMetres,
    'ftGeopotential',
    'mGeopotential',
    1,
    0.3048,
  ],
  [units.geometricAltitudeInMetresFromFeet, units.geometricAltitudeFromMetres, 'ftGeometric', 'mGeometric', 1, 0.3048],
  [units.metresPerSecondFromKnots, units.knotsFromMetresPerSecond, 'kt', 'mps', 3600, 1852],
  [units.trueAirspeedInMetresPerSecondFromKnots, units.trueAirspeedFromMetresPerSecond, 'ktas', 'mpsTAS', 3600, 1852],
  [units.knotsFromMilesPerHour, units.milesPerHourFromKnots, 'mph', 'kt', 1852, 1609.344],
  [
    units.climbInMetresPerSecondFromFeetPerMinute,
    units.feetPerMinuteFromMetresPerSecond,
    'ftPerMin',
    'mpsVertical',
    60,
    0.3048,
  ],
  // 1 lb = 0.45359237 kg: exact by definition.
  [units.kilogramsFromPounds, units.poundsFromKilograms, 'lb', 'kg', 1, 0.45359237],
  // The conventional inch of mercury: 25.4 mm x 13 595.1 kg/m3 x 9.80665 m/s2.
  [units.hectopascalsFromInchesOfMercury, units.inchesOfMercuryFromHectopascals, 'inHg', 'hPa', 1, 33.86388640341],
  [units.pascalsFromHectopascals, units.hectopascalsFromPascals, 'hPa', 'Pa', 1013.25, 101325],
  [units.rankineFromKelvin, units.kelvinFromRankine, 'K', 'degR', 288.15, 518.67],
  // The inch of water at 20 °C, by its number in a standard atmosphere.
  [units.hectopascalsFromInchesOfWater, units.inchesOfWaterFromHectopascals, 'inH2O', 'hPa', 407.513, 1013.25],
  [units.kelvinFromCelsius, units.celsiusFromKelvin, 'degC', 'K', 0, 273.15],
  [units.celsiusFromFahrenheit, units.fahrenheitFromCelsius, 'degF', 'degC', 212, 100],
  // A gallon of the United States is 231 cubic inches of 16.387064 mL each.
  [units.litresFromUsGallons, units.usGallonsFromLitres, 'USgal', 'L', 1, 3.785411784],
  [units.secondsFromMinutes, units.minutesFromSeconds, 'min', 's', 1, 60],
  [units.ratioFromPercent, units.percentFromRatio, 'percent', 'ratio', 100, 1],
  [units.feetPerNauticalMileFromRatio, units.ratioFromFeetPerNauticalMile, 'ratio', 'ftPerNM', 1, 6076.115485564304],
  [units.radiansFromDegrees, units.degreesFromRadians, 'deg', 'rad', 180, Math.PI],
];

const finite = evenly(-1e6, 1e6);

/** Relative to the size of the figures: the noise of a few roundings. */
function expectSame(a: number, b: number, size = Math.max(Math.abs(a), Math.abs(b), 1)) {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(8 * Number.EPSILON * size);
}

describe('conversions', () => {
  it('are all in this table', () => {
    const inTable = pairs.flatMap(([to, back]) => [to, back] as readonly unknown[]);
    const exported = Object.entries(units).filter(
      ([name]) => /^[a-z]\w*From[A-Z]/.test(name) && name !== 'decimalYearFromDate',
    );
    expect(exported.filter(([, conversion]) => !inTable.includes(conversion)).map(([name]) => name)).toEqual([]);
    expect(exported).toHaveLength(inTable.length);
  });

  it.each(pairs)('%o: the published figure, and the way back', (to, back, _from, _to, value, published) => {
    expectSame(to(value as never), published);
    expectSame(back(published as never), value);
  });

  it.each(pairs)('%o: agree with the unit table', (to, back, from, target) => {
    fc.assert(
      fc.property(finite, (value) => {
        const size = Math.max(Math.abs(value), Math.abs(to(value as never)), 1000);
        expectSame(to(value as never), convert(value, from, target) ?? Number.NaN, size);
        const backSize = Math.max(Math.abs(value), Math.abs(back(value as never)), 1000);
        expectSame(back(value as never), convert(value, target, from) ?? Number.NaN, backSize);
      }),
    );
  });

  it.each(pairs)('%o: return to where they began, within rounding', (to, back) => {
    fc.assert(
      fc.property(finite, (value) => {
        expectSame(back(to(value as never) as never), value, Math.max(Math.abs(value), 1000));
      }),
    );
  });

  // (x * f) / f and (x / f) * f undo one another bit for bit where f is a power of ten or an integer small enough for
  // the product to be exact; multiplication by 0.3048 rounds, so a length may come back in the next double.
  it.each([
    ['NM', units.metresFromNauticalMiles, units.nauticalMilesFromMetres],
    ['km', units.metresFromKilometres, units.kilometresFromMetres],
    ['min', units.secondsFromMinutes, units.minutesFromSeconds],
    ['percent', units.percentFromRatio, units.ratioFromPercent],
  ] as readonly (readonly [string, Conversion, Conversion])[])(
    '%s: whole numbers return exactly',
    (_name, to, back) => {
      fc.assert(
        fc.property(fc.integer({ min: -1e6, max: 1e6 }), (value) => {
          expect(back(to(value as never) as never)).toBe(value);
        }),
      );
    },
  );

  it('feet: every whole foot to 60 000 ft is recovered exactly after rounding to a millionth, never a foot off', () => {
    for (let value = 0; value <= 60000; value += 1) {
      const back = units.feetFromMetres(units.metresFromFeet(units.ft(value)));
      expect(units.roundUp(back)).toBe(value);
      expect(units.roundDown(back)).toBe(value);
    }
  });
});

describe('the unit table', () => {
  it('gives the very same value for equal units', () => {
    for (const word of Object.keys(unitTable) as UnitWord[]) expect(convert(0.1, word, word)).toBe(0.1);
  });

  it.each([
    ['ftPA', 'ftDA'],
    ['ftPA', 'ftElevation'],
    ['ftElevation', 'ftHeight'],
    ['mGeopotential', 'mGeometric'],
    ['ftGeopotential', 'ftPA'],
    ['ftGeometric', 'ftElevation'],
    ['mDA', 'mPA'],
    ['psf', 'lbfPerFt2'],
    ['PaS', 'm2PerS'],
    ['ft', 'ftHeight'],
    ['kias', 'kcas'],
    ['kcas', 'keas'],
    ['keas', 'ktas'],
    ['ktas', 'ktGS'],
    ['kt', 'ktas'],
    ['degTrue', 'degMagnetic'],
    ['degC', 'degCDifference'],
    ['mps', 'mpsVertical'],
    ['m', 'kg'],
  ] as const)('does not convert %s to %s, whatever the value', (from, to) => {
    expect(convert(1, from, to)).toBeUndefined();
    expect(convert(1, to, from)).toBeUndefined();
  });

  it('knows its own words and no property of every object', () => {
    expect(isUnitWord('ftPA')).toBe(true);
    expect(isUnitWord('feet')).toBe(false);
    expect(isUnitWord('toString')).toBe(false);
  });
});
