import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightForSpeedGain } from '../../src/flight-path/index.ts';
import { DomainError, ktas } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const speed = evenly(0, 300);

describe('heightForSpeedGain', () => {
  it('adds up over a speed on the way', () => {
    fc.assert(
      fc.property(fc.tuple(speed, speed, speed), (speeds) => {
        const [slow = 0, middle = 0, fast = 0] = [...speeds].sort((a, b) => a - b);
        const first: number = heightForSpeedGain({ from: ktas(slow), to: ktas(middle) });
        const second: number = heightForSpeedGain({ from: ktas(middle), to: ktas(fast) });
        expect(first + second).toBeCloseTo(heightForSpeedGain({ from: ktas(slow), to: ktas(fast) }), 8);
      }),
    );
  });

  it('is the height from which a body falls to that speed', () => {
    fc.assert(
      fc.property(speed, (v) => {
        const fall_s = (v * 1852) / 3600 / 9.80665;
        expect(heightForSpeedGain({ from: ktas(0), to: ktas(v) })).toBeCloseTo((9.80665 * fall_s ** 2) / 2, 8);
      }),
    );
  });

  it('refuses a falling speed', () => {
    expect(heightForSpeedGain({ from: ktas(60), to: ktas(60) })).toBe(0);
    expect(() => heightForSpeedGain({ from: ktas(60), to: ktas(59.9) })).toThrow(
      /^to: 59\.9 ktas is inconsistent with 60 to 300 ktas/,
    );
  });

  it.each([
    ['from', { from: -0.1, to: 65 }],
    ['from', { from: 300.1, to: 65 }],
    ['from', { to: 65 }],
    ['to', { from: 0, to: -0.1 }],
    ['to', { from: 55, to: 300.1 }],
    ['to', { from: 55, to: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => heightForSpeedGain(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
