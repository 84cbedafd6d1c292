import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  hydroplaningSpeed,
  hydroplaningSpeedAtTouchdown,
  hydroplaningSpeedEarlierHandbook,
} from '../../src/distance/index.ts';
import { DomainError, psi } from '../../src/units/index.ts';

describe('hydroplaning speeds', () => {
  it('go with the root of the tyre pressure, and the touchdown is the lowest', () => {
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 700 }), (tenths) => {
        const tyrePressure = psi(tenths / 10);
        const rolling: number = hydroplaningSpeed({ tyrePressure });
        expect(hydroplaningSpeed({ tyrePressure: psi((4 * tenths) / 10) })).toBeCloseTo(2 * rolling, 9);
        expect(hydroplaningSpeedAtTouchdown({ tyrePressure })).toBeLessThan(
          hydroplaningSpeedEarlierHandbook({ tyrePressure }),
        );
        expect(hydroplaningSpeedEarlierHandbook({ tyrePressure })).toBeLessThan(rolling);
      }),
    );
  });

  it.each([hydroplaningSpeed, hydroplaningSpeedAtTouchdown, hydroplaningSpeedEarlierHandbook])(
    'refuse a pressure at either end: %o',
    (speed) => {
      for (const bad of [4.9, 300.1, Number.NaN, undefined])
        expect(() => speed({ tyrePressure: bad as never })).toThrow(DomainError);
      expect(() => speed({ tyrePressure: 4.9 as never })).toThrow(/^tyrePressure: .*5.*300.*psi/);
    },
  );
});
