import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { magneticFromTrue, trueFromMagnetic } from '../../src/magnetism/index.ts';
import { DomainError, degEast, degMagnetic, degTrue } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const direction = fc.double({ min: 0, max: 360, minExcluded: true, noNaN: true });
const variation = evenly(-180, 180);

describe('trueFromMagnetic and magneticFromTrue', () => {
  it('undo each other', () => {
    fc.assert(
      fc.property(direction, variation, (bearing, east) => {
        const there = magneticFromTrue({ direction: degTrue(bearing), variation: degEast(east) });
        const back = trueFromMagnetic({ direction: there, variation: degEast(east) });
        const apart = Math.abs(back - bearing) % 360;
        expect(Math.min(apart, 360 - apart)).toBeLessThan(1e-9);
      }),
    );
  });

  it('stay above 0 up to 360', () => {
    fc.assert(
      fc.property(direction, variation, (bearing, east) => {
        for (const turned of [
          magneticFromTrue({ direction: degTrue(bearing), variation: degEast(east) }),
          trueFromMagnetic({ direction: degMagnetic(bearing), variation: degEast(east) }),
        ]) {
          expect(turned).toBeGreaterThan(0);
          expect(turned).toBeLessThanOrEqual(360);
        }
      }),
    );
  });

  it('call north 360', () => {
    expect(trueFromMagnetic({ direction: degMagnetic(355), variation: degEast(5) })).toBe(360);
    expect(trueFromMagnetic({ direction: degMagnetic(0), variation: degEast(0) })).toBe(360);
    expect(magneticFromTrue({ direction: degTrue(5), variation: degEast(5) })).toBe(360);
  });

  it('go on past north', () => {
    expect(trueFromMagnetic({ direction: degMagnetic(358), variation: degEast(5) })).toBe(3);
    expect(magneticFromTrue({ direction: degTrue(3), variation: degEast(5) })).toBe(358);
  });

  it('do not accept a direction against the other north', () => {
    // @ts-expect-error a true direction is not a magnetic one
    trueFromMagnetic({ direction: degTrue(90), variation: degEast(5) });
    // @ts-expect-error a magnetic direction is not a true one
    magneticFromTrue({ direction: degMagnetic(90), variation: degEast(5) });
  });

  it.each([
    ['direction', { direction: -1, variation: 0 }],
    ['direction', { direction: 360.5, variation: 0 }],
    ['direction', { direction: Number.NaN, variation: 0 }],
    ['variation', { direction: 90, variation: 181 }],
    ['variation', { direction: 90, variation: -180.5 }],
    ['variation', { direction: 90 }],
  ])('refuse a bad %s and name it', (parameter, inputs) => {
    for (const call of [() => trueFromMagnetic(inputs as never), () => magneticFromTrue(inputs as never)]) {
      expect(call).toThrow(DomainError);
      expect(call).toThrow(new RegExp(`^${parameter}: `));
    }
  });
});
