import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadFactorInTurn, stallSpeed, stallSpeedMultiple } from '../../src/airspeed/index.ts';
import { DomainError, degrees, kcas, kg, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const bank = evenly(0, 85).map(degrees);
const speed = evenly(10, 150).map(kcas);
const mass = evenly(100, 5700).map(kg);

describe('loadFactorInTurn', () => {
  it('has the weight as its upright part', () => {
    fc.assert(
      fc.property(bank, (b) => {
        const n: number = loadFactorInTurn({ bank: b });
        expect(n * Math.cos((b * Math.PI) / 180)).toBeCloseTo(1, 12);
        expect(n).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  it.each([{ bank: -0.1 }, { bank: 85.1 }, { bank: Number.NaN }, {}])('refuses %o', (inputs) => {
    const call = () => loadFactorInTurn(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(/^bank: /);
  });
});

describe('stallSpeed', () => {
  it('is the reference at the reference mass with wings level', () => {
    fc.assert(
      fc.property(speed, mass, (v, m) => {
        expect(stallSpeed({ referenceStallSpeed: v, referenceMass: m, mass: m, bank: degrees(0) })).toBe(v);
      }),
    );
  });

  it('keeps the lift coefficient: its square goes with mass times load factor', () => {
    fc.assert(
      fc.property(speed, mass, mass, bank, (v, referenceMass, m, b) => {
        const stall: number = stallSpeed({ referenceStallSpeed: v, referenceMass, mass: m, bank: b });
        const lift = (m / referenceMass) * loadFactorInTurn({ bank: b });
        expect((stall / v) ** 2 / lift).toBeCloseTo(1, 12);
      }),
    );
  });

  it.each([
    ['referenceStallSpeed', { referenceStallSpeed: 9.9, referenceMass: 750, mass: 750, bank: 0 }],
    ['referenceStallSpeed', { referenceStallSpeed: 150.1, referenceMass: 750, mass: 750, bank: 0 }],
    ['referenceMass', { referenceStallSpeed: 44, referenceMass: 99.9, mass: 750, bank: 0 }],
    ['referenceMass', { referenceStallSpeed: 44, referenceMass: 5700.1, mass: 750, bank: 0 }],
    ['mass', { referenceStallSpeed: 44, referenceMass: 750, mass: 99.9, bank: 0 }],
    ['mass', { referenceStallSpeed: 44, referenceMass: 750, mass: 5700.1, bank: 0 }],
    ['mass', { referenceStallSpeed: 44, referenceMass: 750, bank: 0 }],
    ['bank', { referenceStallSpeed: 44, referenceMass: 750, mass: 750, bank: -0.1 }],
    ['bank', { referenceStallSpeed: 44, referenceMass: 750, mass: 750, bank: 85.1 }],
    ['bank', { referenceStallSpeed: 44, referenceMass: 750, mass: 750, bank: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => stallSpeed(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('stallSpeedMultiple', () => {
  it('is that many times the stall speed', () => {
    fc.assert(
      fc.property(speed, evenly(0, 2), (v, k) => {
        const result: number = stallSpeedMultiple({ stallSpeed: v, multiple: ratio(k) });
        expect(result / v).toBeCloseTo(k, 12);
      }),
    );
  });

  it.each([
    ['stallSpeed', { stallSpeed: 9.9, multiple: 1.3 }],
    ['stallSpeed', { stallSpeed: 150.1, multiple: 1.3 }],
    ['multiple', { stallSpeed: 44, multiple: -0.1 }],
    ['multiple', { stallSpeed: 44, multiple: 2.1 }],
    ['multiple', { stallSpeed: 44, multiple: Number.NaN }],
    ['multiple', { stallSpeed: 44 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => stallSpeedMultiple(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
