import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, kt, mHeight, ratio } from '../../src/units/index.ts';
import { flightTestWindExponent, headwindAtHeight } from '../../src/wind/index.ts';
import { evenly } from '../evenly.ts';

const { exponent } = flightTestWindExponent;

describe('headwindAtHeight', () => {
  it('never credits more headwind than was measured', () => {
    fc.assert(
      fc.property(evenly(0, 100), evenly(1, 30), evenly(0, 1), evenly(0.05, 0.5), (headwind, sensor, share, p) => {
        const height = mHeight(1 + share * (sensor - 1));
        const found = headwindAtHeight({
          headwind: kt(headwind),
          sensorHeight: mHeight(sensor),
          height: mHeight(Math.min(height, sensor)),
          exponent: ratio(p),
        });
        expect(found).toBeLessThanOrEqual(headwind);
        expect(found).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('is the measured headwind at the sensor, and halves twice as far down for a square root', () => {
    const x = { headwind: kt(20), sensorHeight: mHeight(8) };
    expect(headwindAtHeight({ ...x, height: mHeight(8), exponent })).toBe(20);
    expect(headwindAtHeight({ ...x, height: mHeight(2), exponent: ratio(0.5) })).toBe(10);
  });

  it('holds the exponent of flight tests, with its source', () => {
    expect(exponent).toBe(1 / 7);
    expect(flightTestWindExponent.citation).toMatchObject({ source: 'flight-test-wind-note', access: 'read' });
  });

  it('reduces no tailwind, and credits no wind above the sensor', () => {
    const x = { sensorHeight: mHeight(10), height: mHeight(2), exponent };
    expect(() => headwindAtHeight({ ...x, headwind: kt(-0.1) })).toThrow(/^headwind: .*a tailwind is not reduced/);
    expect(() => headwindAtHeight({ ...x, headwind: kt(10), height: mHeight(10.1) })).toThrow(
      /^height: 10\.1 mHeight is inconsistent with 1 to 10 mHeight/,
    );
  });

  it.each([
    ['headwind', { headwind: 201 }],
    ['headwind', { headwind: undefined }],
    ['sensorHeight', { sensorHeight: 0.9 }],
    ['sensorHeight', { sensorHeight: 30.1 }],
    ['height', { height: 0.9 }],
    ['height', { height: Number.NaN }],
    ['exponent', { exponent: 0.04 }],
    ['exponent', { exponent: 0.51 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => headwindAtHeight({ headwind: 10, sensorHeight: 10, height: 2, exponent, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
