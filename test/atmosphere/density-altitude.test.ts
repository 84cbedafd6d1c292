import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { densityAltitude, densityRatio, standardTemperature } from '../../src/atmosphere/index.ts';
import { DomainError, degC, ftPA } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const altitude = evenly(-5000, 20000);
const temperature = evenly(-50, 60);

describe('densityRatio', () => {
  it('goes inversely with the absolute temperature', () => {
    fc.assert(
      fc.property(altitude, temperature, temperature, (h, a, b) => {
        const atA = densityRatio({ pressureAltitude: ftPA(h), temperature: degC(a) });
        const atB = densityRatio({ pressureAltitude: ftPA(h), temperature: degC(b) });
        expect(atA / atB).toBeCloseTo((b + 273.15) / (a + 273.15), 12);
      }),
    );
  });

  it.each([
    ['pressureAltitude', { pressureAltitude: -5000.1, temperature: 15 }],
    ['pressureAltitude', { pressureAltitude: 36089.1, temperature: 15 }],
    ['pressureAltitude', { temperature: 15 }],
    ['temperature', { pressureAltitude: 0, temperature: -80.1 }],
    ['temperature', { pressureAltitude: 0, temperature: 60.1 }],
    ['temperature', { pressureAltitude: 0, temperature: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => densityRatio(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('densityAltitude', () => {
  it('is the pressure altitude in standard air', () => {
    fc.assert(
      fc.property(altitude, (h) => {
        const standard = standardTemperature({ pressureAltitude: ftPA(h) });
        expect(densityAltitude({ pressureAltitude: ftPA(h), temperature: standard })).toBeCloseTo(h, 6);
      }),
    );
  });

  it('is where standard air has the same density', () => {
    fc.assert(
      fc.property(altitude, temperature, (h, t) => {
        const here = { pressureAltitude: ftPA(h), temperature: degC(t) };
        const there = ftPA(Number(densityAltitude(here)));
        fc.pre(there >= -5000);
        const standard = standardTemperature({ pressureAltitude: there });
        const thereRatio = densityRatio({ pressureAltitude: there, temperature: standard });
        expect(thereRatio).toBeCloseTo(densityRatio(here), 12);
      }),
    );
  });

  it('rises with the temperature', () => {
    fc.assert(
      fc.property(altitude, temperature, temperature, (h, a, b) => {
        fc.pre(b - a > 1e-6);
        const cold = densityAltitude({ pressureAltitude: ftPA(h), temperature: degC(a) });
        expect(densityAltitude({ pressureAltitude: ftPA(h), temperature: degC(b) })).toBeGreaterThan(cold);
      }),
    );
  });

  it('stays below the tropopause at the highest and warmest that it accepts', () => {
    expect(densityAltitude({ pressureAltitude: ftPA(20000), temperature: degC(60) })).toBeLessThan(36089);
  });

  it.each([
    ['pressureAltitude', { pressureAltitude: -5000.1, temperature: 15 }],
    ['pressureAltitude', { pressureAltitude: 20000.1, temperature: 15 }],
    ['pressureAltitude', { pressureAltitude: '0', temperature: 15 }],
    ['temperature', { pressureAltitude: 0, temperature: -50.1 }],
    ['temperature', { pressureAltitude: 0, temperature: 60.1 }],
    ['temperature', { pressureAltitude: 0 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => densityAltitude(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
