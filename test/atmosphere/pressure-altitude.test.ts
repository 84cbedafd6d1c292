import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pressureAltitude, pressureAltitudeFromQfe, standardPressure } from '../../src/atmosphere/index.ts';
import { DomainError, ftElevation, ftPA, hPa } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const elevation = evenly(-2000, 15000);
const qnh = evenly(850, 1085);
const qfe = evenly(466, 1200);

describe('pressureAltitude', () => {
  it('is the elevation at the standard altimeter setting', () => {
    fc.assert(
      fc.property(elevation, (e) => {
        expect(pressureAltitude({ elevation: ftElevation(e), qnh: hPa(1013.25) })).toBeCloseTo(e, 9);
      }),
    );
  });

  it('is higher where the QNH is lower', () => {
    fc.assert(
      fc.property(elevation, qnh, evenly(0.01, 50), (e, q, less) => {
        fc.pre(q - less >= 850);
        const before = pressureAltitude({ elevation: ftElevation(e), qnh: hPa(q) });
        expect(pressureAltitude({ elevation: ftElevation(e), qnh: hPa(q - less) })).toBeGreaterThan(before);
      }),
    );
  });

  it('rises foot by foot with the elevation', () => {
    fc.assert(
      fc.property(elevation, qnh, (e, q) => {
        const atSeaLevel: number = pressureAltitude({ elevation: ftElevation(0), qnh: hPa(q) });
        const there: number = pressureAltitude({ elevation: ftElevation(e), qnh: hPa(q) });
        expect(there - atSeaLevel).toBeCloseTo(e, 8);
      }),
    );
  });

  it('accepts both ends of every range', () => {
    expect(pressureAltitude({ elevation: ftElevation(-2000), qnh: hPa(1085) })).toBeLessThan(-3800);
    expect(pressureAltitude({ elevation: ftElevation(15000), qnh: hPa(850) })).toBeGreaterThan(19700);
  });

  it.each([
    ['elevation', { elevation: -2000.1, qnh: 1013 }],
    ['elevation', { elevation: 15000.1, qnh: 1013 }],
    ['elevation', { qnh: 1013 }],
    ['qnh', { elevation: 0, qnh: 849.9 }],
    ['qnh', { elevation: 0, qnh: 1085.1 }],
    ['qnh', { elevation: 0, qnh: 29.92 }],
    ['qnh', { elevation: 0, qnh: Number.NaN }],
    ['qnh', { elevation: 0, qnh: '1013' }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => pressureAltitude(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('pressureAltitudeFromQfe', () => {
  it('is the altitude at which the standard atmosphere has that pressure', () => {
    fc.assert(
      fc.property(qfe, (p) => {
        const altitude = pressureAltitudeFromQfe({ qfe: hPa(p) });
        expect(standardPressure({ pressureAltitude: altitude })).toBeCloseTo(p, 9);
      }),
    );
  });

  it('undoes the standard pressure', () => {
    fc.assert(
      fc.property(evenly(-4700, 19900), (h) => {
        const p = standardPressure({ pressureAltitude: ftPA(h) });
        expect(pressureAltitudeFromQfe({ qfe: p })).toBeCloseTo(h, 7);
      }),
    );
  });

  it('agrees with the QNH where the elevation is zero', () => {
    fc.assert(
      fc.property(qnh, (p) => {
        const fromQnh = pressureAltitude({ elevation: ftElevation(0), qnh: hPa(p) });
        expect(pressureAltitudeFromQfe({ qfe: hPa(p) })).toBe(fromQnh);
      }),
    );
  });

  it.each([{ qfe: 465.9 }, { qfe: 1200.1 }, { qfe: Number.POSITIVE_INFINITY }, {}])('refuses %o', (inputs) => {
    const call = () => pressureAltitudeFromQfe(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(/^qfe: /);
  });
});
