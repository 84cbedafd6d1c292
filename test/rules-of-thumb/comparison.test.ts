import fs from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standardTemperature } from '../../src/atmosphere/index.ts';
import {
  anglePlusTwentyRule,
  clockRule,
  densityAltitudeFromTemperatureRule,
  densityAltitudeRule,
  fiveTimesGroundSpeedRule,
  incompressibleRule,
  lessThanTwoPercentRule,
  massSquareRule,
  oneInSixtyDriftRule,
  oneInSixtyTrackRule,
  percentTimesKnotsRule,
  type RuleOfThumb,
  ruleOfThumbError,
  ruleOfThumbInWords,
  rulesOfThumb,
  seventyPercentRule,
  thirtyFeetRule,
  thousandFeetRule,
  threeHundredFeetRule,
  twentyEightFeetRule,
  twentySevenFeetRule,
  twoDegreesRule,
  twoPercentRule,
  windSquareRule,
  worstRuleOfThumbError,
} from '../../src/rules-of-thumb/index.ts';
import { bibliography } from '../../src/sources/index.ts';
import { ftPA } from '../../src/units/index.ts';
import { isUnitWord } from '../../src/units/unit-table.ts';
import { evenly } from '../evenly.ts';

const lines = (file: string) =>
  fs
    .readFileSync(new URL(file, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','));

/** The error in a case given by bare numbers. */
const error = (rule: RuleOfThumb, inputs: Record<string, number>) => ruleOfThumbError(rule, inputs);
const percentOf = (rule: RuleOfThumb, inputs: Record<string, number>) => error(rule, inputs).percent ?? Number.NaN;

describe('rulesOfThumb', () => {
  it('have ids of their own, words, reasons and a place in a source of the bibliography', () => {
    const ids = rulesOfThumb.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(rulesOfThumb.map(({ title }) => title)).size).toBe(ids.length);
    for (const { id, title, words, because, unsafeWhere, citation, unit } of rulesOfThumb) {
      for (const text of [title, words, because, unsafeWhere, citation.locator]) expect(text.trim(), id).not.toBe('');
      expect(unsafeWhere, id).toMatch(/^It .*\.$/);
      expect(Object.keys(bibliography), id).toContain(citation.source);
      expect(isUnitWord(unit), id).toBe(true);
    }
  });

  it('are compared over ranges of whole steps', () => {
    for (const { id, domain } of rulesOfThumb) {
      for (const [name, { words, min, max, step, unit }] of Object.entries(domain)) {
        expect(step, `${id} ${name}`).toBeGreaterThan(0);
        expect((max - min) / step, `${id} ${name}`).toBeCloseTo(Math.round((max - min) / step), 9);
        expect(max, `${id} ${name}`).toBeGreaterThanOrEqual(min);
        expect(isUnitWord(unit), `${id} ${name}`).toBe(true);
        expect(words).toMatch(/^an? /);
      }
    }
  });

  it.each(rulesOfThumb.map((rule) => [rule.id, rule] as const))('%s answers throughout its domain', (_id, rule) => {
    const cases = fc.record(
      Object.fromEntries(Object.entries(rule.domain).map(([name, { min, max }]) => [name, evenly(min, max)])),
    );
    const worst = worstRuleOfThumbError(rule);
    const least = worst.low?.error.difference ?? 0;
    const most = worst.high?.error.difference ?? 0;
    expect(least).toBeLessThanOrEqual(0);
    expect(most).toBeGreaterThanOrEqual(0);
    fc.assert(
      fc.property(cases, (inputs) => {
        const found = error(rule, inputs);
        expect(found.rule).toSatisfy(Number.isFinite);
        expect(found.exact).toSatisfy(Number.isFinite);
        if (worst.low === undefined) expect(found.side).not.toBe('reads low');
        if (worst.high === undefined) expect(found.side).not.toBe('reads high');
      }),
    );
  });
});

describe('ruleOfThumbError', () => {
  it('names the side, and whether it is the unsafe one', () => {
    const low = error(clockRule, { windSpeed: 20, angle: 20 });
    expect(low).toMatchObject({ side: 'reads low', isUnsafe: true, unit: 'kt' });
    expect(low.rule - low.exact).toBe(low.difference);
    expect(low.percent).toBeCloseTo((100 * low.difference) / low.exact, 12);
    expect(error(clockRule, { windSpeed: 20, angle: 45 })).toMatchObject({ side: 'reads high', isUnsafe: false });
    expect(error(clockRule, { windSpeed: 20, angle: 30 })).toMatchObject({ side: 'exact', isUnsafe: false });
    expect(error(twoPercentRule, { calibratedAirspeed: 90, pressureAltitude: 6000 }).isUnsafe).toBe(true);
    expect(error(oneInSixtyTrackRule, { distanceOff: 2, distanceAlong: 30 }).isUnsafe).toBe(true);
  });

  it('has no percentage of nothing', () => {
    expect(error(clockRule, { windSpeed: 0, angle: 40 })).toMatchObject({ percent: undefined, side: 'exact' });
    expect(error(densityAltitudeRule, { pressureAltitude: 0, isaDeviation: 0 }).difference).toBeCloseTo(0, 6);
  });

  it('passes on what a rule or the exact formula refuses', () => {
    expect(() => error(clockRule, { windSpeed: 20, angle: 91 })).toThrow(/^angle: 91 deg/);
    expect(() => error(seventyPercentRule, { liftOffSpeed: 45, headwind: 45 })).toThrow(/^headwind: 45 kt is incons/);
    expect(() => error(seventyPercentRule, { liftOffSpeed: 45, headwind: Number.NaN })).toThrow(/^headwind: NaN/);
    const wind = { headwind: 5, liftOffSpeed: 50 };
    expect(() => error(windSquareRule, { ...wind, accelerationLost: 0.91 })).toThrow(/^accelerationLost: 0\.91/);
    expect(() => error(windSquareRule, { ...wind, accelerationLost: -0.01 })).toThrow(/^accelerationLost: /);
    const mass = { mass: 800, referenceMass: 750, accelerationLost: 0.2, frictionShare: 0.1 };
    expect(() => error(massSquareRule, { ...mass, frictionShare: 0.91 })).toThrow(/^frictionShare: 0\.91/);
    expect(() => error(massSquareRule, { ...mass, frictionShare: -0.01 })).toThrow(/^frictionShare: /);
    expect(() => error(massSquareRule, { ...mass, accelerationLost: 0.91 })).toThrow(/^accelerationLost: 0\.91/);
    expect(() => error(massSquareRule, { ...mass, accelerationLost: -0.01 })).toThrow(/^accelerationLost: /);
    // Too weak to lift off at the greater mass.
    expect(() => error(massSquareRule, { ...mass, mass: 1500, frictionShare: 0.6 })).toThrow(/^staticThrust: /);
  });
});

describe('worstRuleOfThumbError', () => {
  it('finds the worst case of a rule made up for it, at both ends of each range', () => {
    const made: RuleOfThumb<{ x: number; y: number }> = {
      ...clockRule,
      rule: ({ x, y }) => x * y,
      exact: () => 10,
      errorIn: 'difference',
      domain: {
        x: { words: 'an x', unit: 'ratio', min: 1, max: 2, step: 0.25 },
        y: { words: 'a y', unit: 'ratio', min: 2, max: 8, step: 2 },
      },
      unsafeSide: 'reads low',
    };
    const { low, high, unsafe } = worstRuleOfThumbError(made);
    expect(low?.inputs).toEqual({ x: 1, y: 2 });
    expect(high?.inputs).toEqual({ x: 2, y: 8 });
    expect(unsafe).toEqual(low);
    expect(worstRuleOfThumbError({ ...made, unsafeSide: 'reads high' }).unsafe?.inputs).toEqual({ x: 2, y: 8 });
    expect(worstRuleOfThumbError({ ...made, unsafeSide: 'either' }).unsafe?.inputs).toEqual({ x: 1, y: 2 });
    expect(worstRuleOfThumbError({ ...made, exact: ({ x, y }) => x * y })).toEqual({});
    // In percent the greatest error need not be the greatest difference.
    const relative = { ...made, errorIn: 'percent', exact: ({ y }: { y: number }) => y + 1 } as const;
    expect(worstRuleOfThumbError(relative).low?.inputs).toEqual({ x: 1, y: 2 });
    expect(worstRuleOfThumbError({ ...relative, errorIn: 'difference' }).high?.inputs).toEqual({ x: 2, y: 8 });
  });
});

describe('the computed table of rules beside exact values', () => {
  // rules-computed.csv: another program's figures, printed to 0.1 ft and 0.01 kt.
  const rows = lines('./rules-computed.csv');
  const inputsOf: Record<string, (a: number, b: number) => Record<string, number>> = {
    'thousand-feet-per-inch': (altimeterSetting) => ({ elevation: 0, altimeterSetting }),
    'twenty-seven-feet-per-hectopascal': (qnh) => ({ elevation: 0, qnh }),
    'twenty-eight-feet-per-hectopascal': (qnh) => ({ elevation: 0, qnh }),
    'thirty-feet-per-hectopascal': (qnh) => ({ elevation: 0, qnh }),
    'density-altitude': (pressureAltitude, isaDeviation) => ({ pressureAltitude, isaDeviation }),
    'density-altitude-from-temperature': (pressureAltitude, deviation) => ({
      pressureAltitude,
      temperature: standardTemperature({ pressureAltitude: ftPA(pressureAltitude) }) + deviation,
    }),
    'two-percent': (calibratedAirspeed, pressureAltitude) => ({ calibratedAirspeed, pressureAltitude }),
    'incompressible-true-airspeed': (calibratedAirspeed, pressureAltitude) => ({
      calibratedAirspeed,
      pressureAltitude,
    }),
  };

  it('has a comparison for each of its 261 rows', () => {
    expect(rows).toHaveLength(261);
    expect(new Set(rows.map(([id]) => id))).toEqual(new Set(Object.keys(inputsOf)));
  });

  it.each(Object.keys(inputsOf))('%s agrees with it, rule and exact value', (id) => {
    const rule = rulesOfThumb.find((candidate) => candidate.id === id);
    if (rule === undefined) throw new Error(`no rule ${id}`);
    // The other program rounds the inch of mercury to 3386.389 Pa, which moves its altitudes by 0.003 ft.
    const inch = id === 'thousand-feet-per-inch' ? 0.003 : 0;
    const tolerance = rule.unit === 'ktas' ? 0.005 : 0.05;
    for (const [name, first, second, exact, byRule] of rows) {
      if (name !== id) continue;
      const found = error(rule, inputsOf[id]?.(Number(first), Number(second)) ?? {});
      const place = `${first} ${second}: ${found.rule} and ${found.exact}`;
      expect(Math.abs(found.exact - Number(exact)), place).toBeLessThanOrEqual(inch + tolerance * (1 + 1e-6));
      expect(Math.abs(found.rule - Number(byRule)), place).toBeLessThanOrEqual(tolerance * (1 + 1e-6));
    }
  });
});

describe('the computed table of crosswind rules', () => {
  // crosswind-errors-computed.csv: another program's errors in percent, printed to 0.1.
  it.each(lines('./crosswind-errors-computed.csv'))(
    'at %s° the rules err by %s and %s percent',
    (angle, clock, plus) => {
      const inputs = { windSpeed: 18, angle: Number(angle) };
      expect(Math.abs(percentOf(clockRule, inputs) - Number(clock))).toBeLessThanOrEqual(0.05);
      expect(Math.abs(percentOf(anglePlusTwentyRule, inputs) - Number(plus))).toBeLessThanOrEqual(0.05);
    },
  );
});

/** On which side a rule errs over a range of one input, in the order in which they follow: no side twice in a row. */
function sidesOver(
  rule: RuleOfThumb,
  inputs: Record<string, number>,
  name: string,
  from: number,
  to: number,
): string[] {
  const sides: string[] = [];
  for (let i = 0; i <= 400; i += 1) {
    const { side } = error(rule, { ...inputs, [name]: from + ((to - from) * i) / 400 });
    if (sides.at(-1) !== side) sides.push(side);
  }
  return sides;
}

describe('what each rule says of its unsafe side', () => {
  const worst = (rule: RuleOfThumb) => worstRuleOfThumbError(rule);

  it('clock rule: to 4.4 % low below 30°, 15.5 % high at 60°, exact at 30° and 90°', () => {
    expect(worst(clockRule).low?.error.percent).toBeCloseTo(-4.4, 1);
    expect(worst(clockRule).low?.inputs).toMatchObject({ angle: 5 });
    expect(worst(clockRule).high?.error.percent).toBeCloseTo(15.5, 1);
    expect(worst(clockRule).high?.inputs).toMatchObject({ angle: 60 });
    const wind = { windSpeed: 20 };
    expect(sidesOver(clockRule, wind, 'angle', 0.1, 29.9)).toEqual(['reads low']);
    expect(sidesOver(clockRule, wind, 'angle', 30.1, 89.9)).toEqual(['reads high']);
    expect(error(clockRule, { ...wind, angle: 30 }).side).toBe('exact');
    expect(error(clockRule, { ...wind, angle: 90 }).side).toBe('exact');
    // The most that is missing is 0.009 of the wind.
    fc.assert(
      fc.property(evenly(0, 30), (angle) => {
        expect(error(clockRule, { windSpeed: 1, angle }).difference).toBeGreaterThan(-0.0095);
      }),
    );
  });

  it('angle plus twenty: worst 8.6 % low near 50°', () => {
    const { low } = worst(anglePlusTwentyRule);
    expect(low?.error.percent).toBeCloseTo(-8.6, 1);
    expect(Math.abs((low?.inputs['angle'] ?? Number.NaN) - 50)).toBeLessThanOrEqual(1);
    const wind = { windSpeed: 20 };
    expect(sidesOver(anglePlusTwentyRule, wind, 'angle', 1, 29.9)).toEqual(['reads high']);
    expect(sidesOver(anglePlusTwentyRule, wind, 'angle', 30.1, 77.5)).toEqual(['reads low']);
    expect(sidesOver(anglePlusTwentyRule, wind, 'angle', 78, 89.9)).toEqual(['reads high']);
  });

  it('120 ft for a degree: low by 2 ft at most, within 5 °C below standard', () => {
    expect(worst(densityAltitudeRule).unsafe?.error.difference).toBeCloseTo(-1.9, 1);
    for (const pressureAltitude of [0, 5000, 14000]) {
      const at = { pressureAltitude };
      expect(sidesOver(densityAltitudeRule, at, 'isaDeviation', -30, -5.5)).toEqual(['reads high']);
      expect(sidesOver(densityAltitudeRule, at, 'isaDeviation', -4.8, -0.1)).toEqual(['reads low']);
      expect(sidesOver(densityAltitudeRule, at, 'isaDeviation', 0.1, 40)).toEqual(['reads high']);
    }
    expect(error(densityAltitudeRule, { pressureAltitude: 5000, isaDeviation: 20 }).difference).toBeCloseTo(128, 0);
  });

  it('the same from the temperature: low below 1000 ft only, by 2 ft at most', () => {
    expect(worst(densityAltitudeFromTemperatureRule).unsafe?.error.difference).toBeCloseTo(-1.9, 1);
    for (const pressureAltitude of [1000, 4000, 10000])
      expect(sidesOver(densityAltitudeFromTemperatureRule, { pressureAltitude }, 'temperature', -30, 40)).toEqual([
        'reads high',
      ]);
    const atSea = { pressureAltitude: 0 };
    expect(sidesOver(densityAltitudeFromTemperatureRule, atSea, 'temperature', -30, 9.5)).toEqual(['reads high']);
    expect(sidesOver(densityAltitudeFromTemperatureRule, atSea, 'temperature', 15.1, 40)).toEqual(['reads high']);
  });

  it('two degrees: 0.19 °C low at 10 000 ft, never high above mean sea level', () => {
    expect(error(twoDegreesRule, { pressureAltitude: 10000 }).difference).toBeCloseTo(-0.19, 2);
    expect(worst(twoDegreesRule).unsafe).toBeUndefined();
    expect(error(twoDegreesRule, { pressureAltitude: -1000 }).isUnsafe).toBe(true);
  });

  it('feet for a hectopascal: at QNH 980, 1000 and 1030 hPa the published errors, and the sides', () => {
    const at = (rule: RuleOfThumb) =>
      [980, 1000, 1030].map((qnh) => Math.round(error(rule, { elevation: 0, qnh }).difference));
    expect(at(twentySevenFeetRule)).toEqual([-23, -6, 2]);
    expect(at(twentyEightFeetRule)).toEqual([11, 7, -15]);
    expect(at(thirtyFeetRule)).toEqual([77, 34, -48]);
    const field = { elevation: 900 };
    expect(sidesOver(thirtyFeetRule, field, 'qnh', 950, 1013.2)).toEqual(['reads high']);
    expect(sidesOver(thirtyFeetRule, field, 'qnh', 1013.3, 1050)).toEqual(['reads low']);
    expect(sidesOver(twentyEightFeetRule, field, 'qnh', 950, 952)).toEqual(['reads low']);
    expect(sidesOver(twentyEightFeetRule, field, 'qnh', 953, 1013.2)).toEqual(['reads high']);
    expect(sidesOver(twentyEightFeetRule, field, 'qnh', 1013.3, 1050)).toEqual(['reads low']);
    expect(sidesOver(twentySevenFeetRule, field, 'qnh', 950, 1013.2)).toEqual(['reads low']);
    expect(sidesOver(twentySevenFeetRule, field, 'qnh', 1013.3, 1042)).toEqual(['reads high']);
    expect(sidesOver(twentySevenFeetRule, field, 'qnh', 1043, 1050)).toEqual(['reads low']);
  });

  it('a thousand feet for an inch: 95 ft high at 28.00, 97 ft low at 31.00 inHg', () => {
    expect(worst(thousandFeetRule).high?.error.difference).toBeCloseTo(95.1, 1);
    expect(worst(thousandFeetRule).low?.error.difference).toBeCloseTo(-96.6, 1);
    const field = { elevation: 900 };
    expect(sidesOver(thousandFeetRule, field, 'altimeterSetting', 28, 29.9)).toEqual(['reads high']);
    expect(sidesOver(thousandFeetRule, field, 'altimeterSetting', 29.91, 31)).toEqual(['reads low']);
  });

  it('percent for a thousand feet, and no compressibility: high at every altitude', () => {
    const { high, low } = worst(twoPercentRule);
    expect(low).toBeUndefined();
    expect(high?.error.percent).toBeCloseTo(3.7, 1);
    // 2 % to 4 % from 5000 ft to 15 000 ft.
    for (const pressureAltitude of [5000, 8000, 10000, 15000]) {
      const percent = percentOf(twoPercentRule, { calibratedAirspeed: 100, pressureAltitude });
      expect(percent).toBeGreaterThan(2);
      expect(percent).toBeLessThan(4);
    }
    expect(worst(lessThanTwoPercentRule).low).toBeUndefined();
    expect(worst(lessThanTwoPercentRule).high?.error.percent).toBeLessThan(1.3);
    expect(worst(incompressibleRule).low).toBeUndefined();
    expect(worst(incompressibleRule).high?.error.percent).toBeCloseTo(0.5, 1);
    const air = { calibratedAirspeed: 100 };
    for (const rule of [twoPercentRule, lessThanTwoPercentRule, incompressibleRule])
      expect(sidesOver(rule, air, 'pressureAltitude', 100, 15000)).toEqual(['reads high']);
  });

  it('one in sixty: 4.7 % high at small angles; the drift is exact at 30°', () => {
    expect(percentOf(oneInSixtyTrackRule, { distanceOff: 0.1, distanceAlong: 60 })).toBeCloseTo(4.72, 2);
    expect(worst(oneInSixtyTrackRule).low).toBeUndefined();
    expect(percentOf(oneInSixtyDriftRule, { crosswind: 0.1, trueAirspeed: 100 })).toBeCloseTo(4.72, 2);
    expect(error(oneInSixtyDriftRule, { crosswind: 40, trueAirspeed: 80 }).side).toBe('exact');
    const airspeed = { trueAirspeed: 80 };
    expect(sidesOver(oneInSixtyDriftRule, airspeed, 'crosswind', 1, 39.9)).toEqual(['reads high']);
    fc.assert(
      fc.property(evenly(0, 40), (crosswind) => {
        expect(error(oneInSixtyDriftRule, { ...airspeed, crosswind }).difference).toBeLessThan(0.6);
      }),
    );
  });

  it('three hundred feet: 6.1 % early, never late', () => {
    expect(worst(threeHundredFeetRule)).toMatchObject({ low: undefined, unsafe: undefined });
    expect(worst(threeHundredFeetRule).high?.error.percent).toBeCloseTo(6.1, 1);
    // The exact distances of the two printed examples: 1.777 NM and 3.768 NM.
    expect(error(threeHundredFeetRule, { heightToLose: 566 }).exact).toBeCloseTo(1.777, 3);
    expect(error(threeHundredFeetRule, { heightToLose: 1200 }).exact).toBeCloseTo(3.768, 3);
  });

  it('five times the ground speed: 5.8 % low, the path of 2.827°', () => {
    expect(worst(fiveTimesGroundSpeedRule).unsafe?.error.percent).toBeCloseTo(-5.8, 1);
    const { rule, exact } = error(fiveTimesGroundSpeedRule, { groundSpeed: 90 });
    expect([rule, exact.toFixed(1)]).toEqual([450, '477.7']);
    expect((Math.atan((rule / exact) * Math.tan(Math.PI / 60)) * 180) / Math.PI).toBeCloseTo(2.827, 3);
    expect(worst(fiveTimesGroundSpeedRule).high).toBeUndefined();
  });

  it('percent times knots: 1.25 % low in every climb', () => {
    const { low, high } = worst(percentTimesKnotsRule);
    expect(low?.error.percent).toBeCloseTo(-1.25, 2);
    expect(high).toBeUndefined();
    expect(error(percentTimesKnotsRule, { gradient: 3.3, groundSpeed: 150 }).exact).toBeCloseTo(501.28, 2);
  });

  it('seventy percent: 1 % low in still air, more in a headwind, high in a tailwind', () => {
    expect(percentOf(seventyPercentRule, { liftOffSpeed: 55, headwind: 0 })).toBeCloseTo(-1.005, 3);
    expect(percentOf(seventyPercentRule, { liftOffSpeed: 55, headwind: 10 })).toBeLessThan(-1.005);
    expect(sidesOver(seventyPercentRule, { liftOffSpeed: 55 }, 'headwind', 0, 20)).toEqual(['reads low']);
    expect(sidesOver(seventyPercentRule, { liftOffSpeed: 55 }, 'headwind', -10, -2)).toEqual(['reads high']);
  });

  it('wind square: low in a headwind once acceleration falls off, high in a tailwind', () => {
    const roll = { liftOffSpeed: 55, accelerationLost: 0.25 };
    expect(sidesOver(windSquareRule, roll, 'headwind', 1, 20)).toEqual(['reads low']);
    expect(sidesOver(windSquareRule, roll, 'headwind', -10, -1)).toEqual(['reads high']);
    for (const headwind of [-10, 12])
      expect(error(windSquareRule, { ...roll, accelerationLost: 0, headwind }).side).toBe('exact');
  });

  it('mass square: low when heavier, high when lighter, exact when nothing but a constant thrust acts', () => {
    const roll = { referenceMass: 800, accelerationLost: 0.2, frictionShare: 0.1 };
    expect(sidesOver(massSquareRule, roll, 'mass', 801, 960)).toEqual(['reads low']);
    expect(sidesOver(massSquareRule, roll, 'mass', 640, 799)).toEqual(['reads high']);
    const free = { ...roll, accelerationLost: 0, frictionShare: 0 };
    expect(error(massSquareRule, { ...free, mass: 900 }).side).toBe('exact');
    expect(percentOf(massSquareRule, { ...roll, mass: 880, frictionShare: 0.3 })).toBeLessThan(
      percentOf(massSquareRule, { ...roll, mass: 880 }),
    );
  });

  it('names no rule safe that is not: only two never err on their unsafe side', () => {
    const safe = rulesOfThumb.filter((rule) => worst(rule).unsafe === undefined).map(({ id }) => id);
    expect(safe).toEqual(['two-degrees', 'three-hundred-feet']);
  });
});

describe('ruleOfThumbInWords', () => {
  const words = (rule: RuleOfThumb) => ruleOfThumbInWords(rule).replaceAll('\u00a0', ' ');

  it('says domain, worst errors, unsafe side and where it errs on it', () => {
    expect(words(clockRule)).toBe(
      'Clock rule for the crosswind. Over a wind of 5 kt to 40 kt and an angle off the runway of 5° to 90° it reads at most 4.4 % low and 15.5 % high. Low is the unsafe side: the crosswind is stronger than it says. It reads low at angles below 30°.',
    );
    expect(words(thirtyFeetRule)).toContain('an elevation of 0 ft to 5 000 ft and a QNH of 950 hPa to 1 050 hPa');
    expect(words(massSquareRule)).toContain('a mass of the known roll of 800 kg and');
    expect(words(oneInSixtyTrackRule)).toContain('Either is the unsafe side');
    expect(words(twoPercentRule)).toContain('High is the unsafe side');
  });

  it('shows no wind with a bare sign', () => {
    expect(words(windSquareRule)).toContain('a wind of 10 kt tailwind to 20 kt headwind');
    for (const rule of rulesOfThumb) expect(words(rule), rule.id).not.toMatch(/[-−]\d+ kt/);
  });
});
