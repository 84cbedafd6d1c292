import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distanceForExcessHeight } from '../../src/distance/index.ts';
import { aimingPointDistance } from '../../src/flight-path/index.ts';
import { DomainError, degrees, mHeight } from '../../src/units/index.ts';

describe('distanceForExcessHeight', () => {
  it('is how far the aiming point moves', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 10, max: 150 }), (height, tenths) => {
        const pathAngle = degrees(tenths / 10);
        const moved =
          aimingPointDistance({ height: mHeight(15 + height), pathAngle }) -
          aimingPointDistance({ height: mHeight(15), pathAngle });
        expect(distanceForExcessHeight({ excessHeight: mHeight(height), pathAngle })).toBeCloseTo(moved, 8);
      }),
    );
  });

  it.each([
    ['excessHeight', { excessHeight: -0.1 }],
    ['excessHeight', { excessHeight: 100.1 }],
    ['pathAngle', { pathAngle: 0.9 }],
    ['pathAngle', { pathAngle: 15.1 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => distanceForExcessHeight({ excessHeight: 5, pathAngle: 3, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
