import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  calibratedAirspeedFromEquivalent,
  calibratedAirspeedFromImpactPressure,
  calibratedAirspeedFromMach,
  calibratedAirspeedFromTrue,
  compressibilityFactor,
  equivalentAirspeedFromCalibrated,
  equivalentAirspeedFromMach,
  equivalentAirspeedFromTrue,
  impactPressure,
  machNumberFromCalibrated,
  machNumberFromEquivalent,
  machNumberFromTrue,
  trueAirspeed,
  trueAirspeedFromEquivalent,
  trueAirspeedFromMach,
} from '../../src/airspeed/index.ts';
import { speedOfSound, standardPressure } from '../../src/atmosphere/index.ts';
import { DomainError, degC, ftPA, hPa, kcas, keas, ktas, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const altitude = evenly(-5000, 36089).map(ftPA);
const temperature = evenly(-80, 60).map(degC);
const mach = evenly(0.001, 0.8);

describe('conversions between airspeeds', () => {
  it('come back from every airspeed to the Mach number', () => {
    fc.assert(
      fc.property(mach, altitude, temperature, (m, pressureAltitude, t) => {
        const machNumber = ratio(m);
        // 350 kt is the end of the range of calibrated and equivalent airspeed.
        const calibrated = calibratedAirspeedFromMach({ machNumber, pressureAltitude });
        if (calibrated <= 350)
          expect(machNumberFromCalibrated({ calibratedAirspeed: calibrated, pressureAltitude }) / m).toBeCloseTo(1, 11);
        const equivalent = equivalentAirspeedFromMach({ machNumber, pressureAltitude });
        if (equivalent <= 350)
          expect(machNumberFromEquivalent({ equivalentAirspeed: equivalent, pressureAltitude }) / m).toBeCloseTo(1, 12);
        const trueSpeed = trueAirspeedFromMach({ machNumber, temperature: t });
        expect(machNumberFromTrue({ trueAirspeed: trueSpeed, temperature: t }) / m).toBeCloseTo(1, 12);
      }),
    );
  });

  it('give one answer by every way round', () => {
    fc.assert(
      fc.property(evenly(1, 250), altitude, temperature, (v, pressureAltitude, t) => {
        const calibratedAirspeed = kcas(v);
        const air = { pressureAltitude, temperature: t };
        const equivalent = equivalentAirspeedFromCalibrated({ calibratedAirspeed, pressureAltitude });
        const trueSpeed = trueAirspeed({ calibratedAirspeed, ...air });
        expect(trueAirspeedFromEquivalent({ equivalentAirspeed: equivalent, ...air }) / trueSpeed).toBeCloseTo(1, 12);
        expect(equivalentAirspeedFromTrue({ trueAirspeed: trueSpeed, ...air }) / equivalent).toBeCloseTo(1, 12);
        expect(calibratedAirspeedFromTrue({ trueAirspeed: trueSpeed, ...air }) / v).toBeCloseTo(1, 11);
        expect(calibratedAirspeedFromEquivalent({ equivalentAirspeed: equivalent, pressureAltitude }) / v).toBeCloseTo(
          1,
          11,
        );
      }),
    );
  });

  it('leave all airspeeds equal in standard air at mean sea level', () => {
    fc.assert(
      fc.property(evenly(0, 350), (v) => {
        const sea = { pressureAltitude: ftPA(0) };
        const equivalent: number = equivalentAirspeedFromCalibrated({ calibratedAirspeed: kcas(v), ...sea });
        const trueSpeed: number = trueAirspeed({ calibratedAirspeed: kcas(v), ...sea, temperature: degC(15) });
        expect(equivalent).toBeCloseTo(v, 10);
        expect(trueSpeed).toBeCloseTo(v, 10);
      }),
    );
  });

  it('give nothing for nothing', () => {
    const air = { pressureAltitude: ftPA(9000), temperature: degC(-10) };
    expect(trueAirspeed({ calibratedAirspeed: kcas(0), ...air })).toBe(0);
    expect(calibratedAirspeedFromTrue({ trueAirspeed: ktas(0), ...air })).toBe(0);
    expect(calibratedAirspeedFromEquivalent({ equivalentAirspeed: keas(0), ...air })).toBe(0);
    expect(impactPressure({ calibratedAirspeed: kcas(0) })).toBe(0);
    expect(calibratedAirspeedFromImpactPressure({ impactPressure: hPa(0) })).toBe(0);
  });

  it('make equivalent less than calibrated above mean sea level and more below it', () => {
    const f = (v: number, altitude_ft: number): number =>
      compressibilityFactor({ calibratedAirspeed: kcas(v), pressureAltitude: ftPA(altitude_ft) });
    fc.assert(
      fc.property(evenly(10, 250), evenly(100, 36089), (v, altitude_ft) => {
        expect(f(v, altitude_ft)).toBeLessThan(1);
        expect(f(v, -Math.min(altitude_ft, 5000))).toBeGreaterThan(1);
      }),
    );
    expect(f(250, 36000)).toBeLessThan(f(150, 36000));
    expect(f(250, 36000)).toBeLessThan(f(250, 20000));
  });

  it('do not depend on the temperature between calibrated, equivalent and Mach', () => {
    const cold = { pressureAltitude: ftPA(12000), temperature: degC(-40) };
    const hot = { ...cold, temperature: degC(20) };
    const at = (air: typeof cold): number => {
      const trueSpeed = trueAirspeed({ calibratedAirspeed: kcas(140), ...air });
      return machNumberFromTrue({ trueAirspeed: trueSpeed, temperature: air.temperature });
    };
    expect(at(hot)).toBeCloseTo(at(cold), 12);
  });
});

describe('impactPressure', () => {
  it('is what calibratedAirspeedFromImpactPressure undoes', () => {
    fc.assert(
      fc.property(evenly(0.01, 350), (v) => {
        const pressure = impactPressure({ calibratedAirspeed: kcas(v) });
        expect(calibratedAirspeedFromImpactPressure({ impactPressure: pressure }) / v).toBeCloseTo(1, 11);
      }),
    );
  });

  it('is the pressure of the stopped air at the Mach number flown', () => {
    fc.assert(
      fc.property(evenly(20, 250), altitude, (v, pressureAltitude) => {
        const calibratedAirspeed = kcas(v);
        const m: number = machNumberFromCalibrated({ calibratedAirspeed, pressureAltitude });
        const total = standardPressure({ pressureAltitude }) * (1 + m ** 2 / 5) ** 3.5;
        expect(total - standardPressure({ pressureAltitude })).toBeCloseTo(impactPressure({ calibratedAirspeed }), 9);
      }),
    );
  });
});

describe('the speed of sound', () => {
  const tropopause = { pressureAltitude: ftPA(36000) };
  const limitOf = (call: () => unknown): number => {
    try {
      call();
    } catch (error) {
      if (error instanceof DomainError && error.detail.code === 'inconsistent') return Number(error.detail.max);
    }
    throw new Error('not refused');
  };

  it('ends the range of every airspeed, and the refusal names the one that reaches it', () => {
    const calibrated = (v: number): number => machNumberFromCalibrated({ calibratedAirspeed: kcas(v), ...tropopause });
    const equivalent = (v: number): number => machNumberFromEquivalent({ equivalentAirspeed: keas(v), ...tropopause });
    const trueSpeed = (v: number): number => machNumberFromTrue({ trueAirspeed: ktas(v), temperature: degC(-56) });
    for (const [machOf, fast] of [
      [calibrated, 350],
      [equivalent, 350],
      [trueSpeed, 600],
    ] as const) {
      const limit = limitOf(() => machOf(fast));
      expect(limit).toBeLessThan(fast);
      expect(machOf(limit * (1 - 1e-9))).toBeCloseTo(1, 8);
      expect(() => machOf(limit * (1 + 1e-9))).toThrow(DomainError);
    }
  });

  it('ends them in the other conversions as well', () => {
    const air = { ...tropopause, temperature: degC(-56) };
    expect(() => equivalentAirspeedFromCalibrated({ calibratedAirspeed: kcas(350), ...air })).toThrow(/^calibratedAir/);
    expect(() => compressibilityFactor({ calibratedAirspeed: kcas(350), ...air })).toThrow(/^calibratedAirspeed: 350/);
    expect(() => calibratedAirspeedFromEquivalent({ equivalentAirspeed: keas(350), ...air })).toThrow(/^equivalentAir/);
    expect(() => trueAirspeedFromEquivalent({ equivalentAirspeed: keas(350), ...air })).toThrow(/^equivalentAirspeed/);
    expect(() => calibratedAirspeedFromTrue({ trueAirspeed: ktas(600), ...air })).toThrow(/^trueAirspeed: 600/);
  });

  it('is reached at Mach 1, which is still answered', () => {
    const sound: number = speedOfSound({ temperature: degC(5) });
    expect(trueAirspeedFromMach({ machNumber: ratio(1), temperature: degC(5) })).toBe(sound);
  });
});

const altitudes = { pressureAltitude: [-5000.1, 36089.1, Number.NaN, undefined] };
const temperatures = { temperature: [-80.1, 60.1, Number.NaN, undefined] };
const calibratedSpeeds = { calibratedAirspeed: [-0.1, 350.1, Number.NaN, undefined] };
const equivalentSpeeds = { equivalentAirspeed: [-0.1, 350.1, Number.NaN, undefined] };
const trueSpeeds = { trueAirspeed: [-0.1, 660.1, Number.NaN, undefined] };
const machNumbers = { machNumber: [-0.01, 1.01, Number.NaN, undefined] };

const formulas = {
  impactPressure: [impactPressure, calibratedSpeeds],
  calibratedAirspeedFromImpactPressure: [
    calibratedAirspeedFromImpactPressure,
    { impactPressure: [-0.1, 213.1, Number.NaN, undefined] },
  ],
  machNumberFromCalibrated: [machNumberFromCalibrated, { ...calibratedSpeeds, ...altitudes }],
  machNumberFromEquivalent: [machNumberFromEquivalent, { ...equivalentSpeeds, ...altitudes }],
  machNumberFromTrue: [machNumberFromTrue, { ...trueSpeeds, ...temperatures }],
  calibratedAirspeedFromMach: [calibratedAirspeedFromMach, { ...machNumbers, ...altitudes }],
  calibratedAirspeedFromEquivalent: [calibratedAirspeedFromEquivalent, { ...equivalentSpeeds, ...altitudes }],
  calibratedAirspeedFromTrue: [calibratedAirspeedFromTrue, { ...trueSpeeds, ...altitudes, ...temperatures }],
  equivalentAirspeedFromCalibrated: [equivalentAirspeedFromCalibrated, { ...calibratedSpeeds, ...altitudes }],
  equivalentAirspeedFromMach: [equivalentAirspeedFromMach, { ...machNumbers, ...altitudes }],
  equivalentAirspeedFromTrue: [equivalentAirspeedFromTrue, { ...trueSpeeds, ...altitudes, ...temperatures }],
  compressibilityFactor: [
    compressibilityFactor,
    { calibratedAirspeed: [9.9, 350.1, Number.NaN, undefined], ...altitudes },
  ],
  trueAirspeedFromEquivalent: [trueAirspeedFromEquivalent, { ...equivalentSpeeds, ...altitudes, ...temperatures }],
  trueAirspeedFromMach: [trueAirspeedFromMach, { ...machNumbers, ...temperatures }],
} as const;
const good = {
  calibratedAirspeed: 90,
  equivalentAirspeed: 90,
  trueAirspeed: 95,
  machNumber: 0.15,
  impactPressure: 15,
  pressureAltitude: 3000,
  temperature: 9,
};
const refusals = Object.entries(formulas).flatMap(([name, [formula, bad]]) =>
  Object.entries(bad).flatMap(([parameter, values]) =>
    (values as readonly unknown[]).map((value) => [name, parameter, value, formula] as const),
  ),
);

describe('refusals', () => {
  it.each(refusals)('%s refuses a bad %s and names it: %s', (_name, parameter, value, formula) => {
    expect(formula(good as never)).toSatisfy(Number.isFinite);
    const call = () => formula({ ...good, [parameter]: value } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
