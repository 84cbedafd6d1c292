import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  loadFactorAtStall,
  loadFactorInTurn,
  manoeuvringSpeed,
  stallSpeed,
  stallSpeedAtLoadFactor,
} from '../../src/airspeed/index.ts';
import { DomainError, degrees, kcas, kg, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

describe('stallSpeedAtLoadFactor', () => {
  it('is undone by loadFactorAtStall', () => {
    fc.assert(
      fc.property(evenly(10, 100), evenly(0, 12), (v, n) => {
        const speed = stallSpeedAtLoadFactor({ stallSpeed: kcas(v), loadFactor: ratio(n) });
        expect(loadFactorAtStall({ speed, stallSpeed: kcas(v) })).toBeCloseTo(n, 10);
      }),
    );
  });

  it('is the stall speed of the turn that has the load factor', () => {
    fc.assert(
      fc.property(evenly(10, 150), evenly(0, 85), (v, bank) => {
        const loadFactor = loadFactorInTurn({ bank: degrees(bank) });
        const turning: number = stallSpeed({
          referenceStallSpeed: kcas(v),
          referenceMass: kg(600),
          mass: kg(600),
          bank: degrees(bank),
        });
        expect(stallSpeedAtLoadFactor({ stallSpeed: kcas(v), loadFactor }) / turning).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('manoeuvringSpeed', () => {
  it('keeps the load factor at which the wing stalls: it goes with the stall speed', () => {
    fc.assert(
      fc.property(evenly(60, 200), evenly(500, 1500), evenly(500, 1500), (va, referenceMass, mass) => {
        const stallAt = (m: number) =>
          stallSpeed({
            referenceStallSpeed: kcas(48),
            referenceMass: kg(referenceMass),
            mass: kg(m),
            bank: degrees(0),
          });
        const lighter = manoeuvringSpeed({
          referenceManoeuvringSpeed: kcas(va),
          referenceMass: kg(referenceMass),
          mass: kg(mass),
        });
        const before: number = loadFactorAtStall({ speed: kcas(va), stallSpeed: stallAt(referenceMass) });
        const after: number = loadFactorAtStall({ speed: lighter, stallSpeed: stallAt(mass) });
        expect(after / before).toBeCloseTo(1, 11);
        if (mass < referenceMass) expect(lighter).toBeLessThan(va);
      }),
    );
  });
});

describe('refusals', () => {
  it.each([
    ['stallSpeed', { stallSpeed: 9.9 }],
    ['stallSpeed', { stallSpeed: 150.1 }],
    ['stallSpeed', { stallSpeed: undefined }],
    ['loadFactor', { loadFactor: -0.1 }],
    ['loadFactor', { loadFactor: 12.1 }],
    ['loadFactor', { loadFactor: Number.NaN }],
  ])('stallSpeedAtLoadFactor refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => stallSpeedAtLoadFactor({ stallSpeed: 48, loadFactor: 2, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });

  it.each([
    ['speed', { speed: -0.1 }],
    ['speed', { speed: 350.1 }],
    ['speed', { speed: Number.NaN }],
    ['stallSpeed', { stallSpeed: 9.9 }],
    ['stallSpeed', { stallSpeed: 150.1 }],
    ['stallSpeed', { stallSpeed: undefined }],
  ])('loadFactorAtStall refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => loadFactorAtStall({ speed: 90, stallSpeed: 48, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });

  it.each([
    ['referenceManoeuvringSpeed', { referenceManoeuvringSpeed: 19.9 }],
    ['referenceManoeuvringSpeed', { referenceManoeuvringSpeed: 300.1 }],
    ['referenceManoeuvringSpeed', { referenceManoeuvringSpeed: undefined }],
    ['referenceMass', { referenceMass: 99.9 }],
    ['referenceMass', { referenceMass: 5700.1 }],
    ['mass', { mass: 99.9 }],
    ['mass', { mass: 5700.1 }],
    ['mass', { mass: Number.NaN }],
  ])('manoeuvringSpeed refuses a bad %s and names it', (parameter, inputs) => {
    const call = () =>
      manoeuvringSpeed({ referenceManoeuvringSpeed: 98, referenceMass: 980, mass: 800, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
