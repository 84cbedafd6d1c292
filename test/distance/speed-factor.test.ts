import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { speedFactor } from '../../src/distance/index.ts';
import { DomainError, kcas } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const speed = evenly(20, 250).map(kcas);

describe('speedFactor', () => {
  it('is 1 at the speed of the table', () => {
    fc.assert(
      fc.property(speed, (v) => {
        expect(speedFactor({ speed: v, tableSpeed: v })).toBe(1);
      }),
    );
  });

  it('is in the ratio of the energies', () => {
    fc.assert(
      fc.property(speed, speed, (v, table) => {
        const factor: number = speedFactor({ speed: v, tableSpeed: table });
        expect((factor * table * table) / (v * v)).toBeCloseTo(1, 12);
      }),
    );
  });

  it.each([
    ['speed', { speed: 19.9, tableSpeed: 60 }],
    ['speed', { speed: 250.1, tableSpeed: 60 }],
    ['speed', { tableSpeed: 60 }],
    ['tableSpeed', { speed: 60, tableSpeed: 19.9 }],
    ['tableSpeed', { speed: 60, tableSpeed: 250.1 }],
    ['tableSpeed', { speed: 60, tableSpeed: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => speedFactor(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
