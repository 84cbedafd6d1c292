import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lateralSemiWidth } from '../../src/flight-path/index.ts';
import { DomainError, m } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

describe('lateralSemiWidth', () => {
  it('opens by an eighth of the distance travelled', () => {
    fc.assert(
      fc.property(evenly(1, 100), fc.integer({ min: 0, max: 90000 }), (span, distance) => {
        const at = (d: number): number => lateralSemiWidth({ wingspan: m(span), distance: m(d) });
        expect(at(distance + 800) - at(distance)).toBeCloseTo(100, 8);
      }),
    );
  });

  it('starts 60 m from the wing tip, and at 90 m from a wingspan of 60 m', () => {
    const atStart = (span: number): number => lateralSemiWidth({ wingspan: m(span), distance: m(0) });
    expect(atStart(10)).toBe(65);
    expect(atStart(59.99)).toBeCloseTo(89.995, 9);
    expect(atStart(60)).toBe(90);
    expect(atStart(80)).toBe(90);
  });

  it.each([
    ['wingspan', { wingspan: 0.9 }],
    ['wingspan', { wingspan: 100.1 }],
    ['wingspan', { wingspan: undefined }],
    ['distance', { distance: -0.1 }],
    ['distance', { distance: 100000.1 }],
    ['distance', { distance: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => lateralSemiWidth({ wingspan: 11, distance: 1000, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
