import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isaDeviation, speedOfSound, standardPressure, standardTemperature } from '../../src/atmosphere/index.ts';
import { DomainError, degC, ftPA } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const altitude = evenly(-5000, 36089);
const temperature = evenly(-80, 60);

const badAltitudes = [
  { pressureAltitude: -5000.1 },
  { pressureAltitude: 36089.1 },
  { pressureAltitude: Number.NaN },
  {},
];

describe('standardPressure', () => {
  it('falls with altitude, and never below that of the tropopause', () => {
    fc.assert(
      fc.property(altitude, altitude, (a, b) => {
        fc.pre(b - a > 1e-6);
        const lower = standardPressure({ pressureAltitude: ftPA(a) });
        const upper = standardPressure({ pressureAltitude: ftPA(b) });
        expect(upper).toBeLessThan(lower);
        expect(upper).toBeGreaterThan(226.32);
      }),
    );
  });

  it('carries its air: the pressure falls by density times gravity per metre', () => {
    fc.assert(
      fc.property(evenly(-4900, 36000), (h) => {
        const above_Pa = 100 * standardPressure({ pressureAltitude: ftPA(h + 10) });
        const below_Pa = 100 * standardPressure({ pressureAltitude: ftPA(h - 10) });
        const p_Pa = 100 * standardPressure({ pressureAltitude: ftPA(h) });
        const T_K = 273.15 + standardTemperature({ pressureAltitude: ftPA(h) });
        const weight_PaPerM = (9.80665 * p_Pa) / (287.05287 * T_K);
        expect((below_Pa - above_Pa) / (20 * 0.3048) / weight_PaPerM).toBeCloseTo(1, 6);
      }),
    );
  });

  it.each(badAltitudes)('refuses %o', (inputs) => {
    const call = () => standardPressure(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(/^pressureAltitude: /);
  });
});

describe('standardTemperature', () => {
  it('falls by 6.5 degrees in 1000 m', () => {
    fc.assert(
      fc.property(evenly(-5000, 32000), (h) => {
        const below: number = standardTemperature({ pressureAltitude: ftPA(h) });
        const above: number = standardTemperature({ pressureAltitude: ftPA(h + 1000 / 0.3048) });
        expect(below - above).toBeCloseTo(6.5, 9);
      }),
    );
  });

  it.each(badAltitudes)('refuses %o', (inputs) => {
    const call = () => standardTemperature(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(/^pressureAltitude: /);
  });
});

describe('isaDeviation', () => {
  it('is what must be added to the standard temperature', () => {
    fc.assert(
      fc.property(altitude, temperature, (h, t) => {
        const deviation: number = isaDeviation({ temperature: degC(t), pressureAltitude: ftPA(h) });
        const standard: number = standardTemperature({ pressureAltitude: ftPA(h) });
        expect(standard + deviation).toBeCloseTo(t, 9);
      }),
    );
  });

  it('counts air warmer than standard positive', () => {
    expect(isaDeviation({ temperature: degC(30), pressureAltitude: ftPA(0) })).toBeCloseTo(15, 9);
    expect(isaDeviation({ temperature: degC(0), pressureAltitude: ftPA(0) })).toBeCloseTo(-15, 9);
  });

  it.each([
    ['temperature', { temperature: -80.1, pressureAltitude: 0 }],
    ['temperature', { temperature: 60.1, pressureAltitude: 0 }],
    ['temperature', { pressureAltitude: 0 }],
    ['pressureAltitude', { temperature: 15, pressureAltitude: -5000.1 }],
    ['pressureAltitude', { temperature: 15, pressureAltitude: 36089.1 }],
    ['pressureAltitude', { temperature: 15, pressureAltitude: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => isaDeviation(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('speedOfSound', () => {
  it('goes with the square root of the absolute temperature', () => {
    fc.assert(
      fc.property(temperature, temperature, (a, b) => {
        const ratio = speedOfSound({ temperature: degC(a) }) / speedOfSound({ temperature: degC(b) });
        expect(ratio * ratio).toBeCloseTo((a + 273.15) / (b + 273.15), 12);
      }),
    );
  });

  it.each([{ temperature: -80.1 }, { temperature: 60.1 }, { temperature: Number.NaN }, {}])('refuses %o', (inputs) => {
    const call = () => speedOfSound(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(/^temperature: /);
  });
});
