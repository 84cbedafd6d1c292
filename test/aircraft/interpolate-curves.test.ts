import { describe, expect, it } from 'vitest';
import { interpolateCurves } from '../../src/aircraft/index.ts';
import { DomainError } from '../../src/units/index.ts';

const lower = { at: 0, from: [10, 300], to: [20, 330] } as const;
const upper = { at: 2000, from: [10, 360], to: [30, 420] } as const;
const at = (along: number, family: number) => interpolateCurves({ along, at: family, lower, upper });

describe('interpolateCurves', () => {
  it('reads along each curve, then between the two', () => {
    // At 12: 300 + 30 x 2/10 = 306 and 360 + 60 x 2/20 = 366; a quarter of the way, 306 + 60/4.
    expect(at(12, 500)).toBeCloseTo(321, 9);
    expect([at(10, 0), at(20, 0), at(10, 2000), at(20, 2000)]).toEqual([300, 330, 360, 390]);
  });

  it('looks at one curve alone where the value lies on it', () => {
    const nowhere = { at: 0, from: [50, 1], to: [60, 2] } as const;
    expect(interpolateCurves({ along: 15, at: 0, lower, upper: nowhere })).toBe(315);
  });

  it('takes a piece without length at its ordinate', () => {
    const point = { at: 0, from: [10, 300], to: [10, 330] } as const;
    expect(interpolateCurves({ along: 10, at: 0, lower: point, upper: point })).toBe(300);
  });

  it.each([
    ['at', 15, -0.1, /^at: -0\.1 chart unit is not within 0 to 2000/],
    ['at', 15, 2000.1, /^at: 2000\.1 chart unit is not within 0 to 2000/],
    ['at', 15, Number.NaN, /^at: NaN/],
    ['along', 9.9, 1000, /^along: 9\.9 chart unit is not within 10 to 20/],
    ['along', 20.1, 1000, /^along: 20\.1 chart unit is not within 10 to 20/],
    ['along', Number.NaN, 1000, /^along: NaN/],
  ])('refuses a bad %s: along %d, of the family %d', (_name, along, family, message) => {
    expect(() => at(along, family)).toThrow(DomainError);
    expect(() => at(along, family)).toThrow(message);
  });

  it('refuses a place that is on the lower piece alone', () => {
    const short = { at: 2000, from: [16, 360], to: [30, 420] } as const;
    expect(() => interpolateCurves({ along: 15, at: 1000, lower, upper: short })).toThrow(
      /^along: 15 chart unit is not within 16 to 30/,
    );
  });
});
