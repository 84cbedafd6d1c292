import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { accelerationCheckSpeed } from '../../src/distance/index.ts';
import { DomainError, kias, kt, m } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const liftOff = evenly(55, 200).map(kias);
const wind = evenly(-50, 50).map(kt);
const roll = evenly(1, 5000).map(m);

describe('accelerationCheckSpeed', () => {
  it('is the lift-off speed at the end of the roll, whatever the wind', () => {
    fc.assert(
      fc.property(liftOff, wind, roll, (liftOffSpeed, headwind, r) => {
        const due: number = accelerationCheckSpeed({ liftOffSpeed, headwind, distance: r, roll: r });
        expect(due).toBeCloseTo(liftOffSpeed, 9);
      }),
    );
  });

  it('lies between 0.70 of the lift-off speed and the lift-off speed', () => {
    fc.assert(
      fc.property(liftOff, wind, roll, evenly(0, 1), (liftOffSpeed, headwind, r, share) => {
        const due: number = accelerationCheckSpeed({ liftOffSpeed, headwind, distance: m(share * r), roll: r });
        expect(due).toBeGreaterThanOrEqual(0.7 * liftOffSpeed);
        expect(due).toBeLessThanOrEqual(liftOffSpeed + 1e-9);
      }),
    );
  });

  it('asks what an aeroplane shows that accelerates evenly over the ground', () => {
    fc.assert(
      fc.property(liftOff, wind, roll, evenly(0, 1), (liftOffSpeed, headwind, r, share) => {
        const groundSpeed_kt = liftOffSpeed - headwind;
        const acceleration = groundSpeed_kt ** 2 / (2 * r);
        // Time at which the mark is passed, from s = a t² / 2; then v = a t.
        const time = Math.sqrt((2 * share * r) / acceleration);
        const shown_kt = headwind + acceleration * time;
        const due: number = accelerationCheckSpeed({ liftOffSpeed, headwind, distance: m(share * r), roll: r });
        expect(due).toBeCloseTo(Math.max(shown_kt, 0.7 * liftOffSpeed), 8);
      }),
    );
  });

  it('asks more at the mark in a headwind and never less than 0.70 in a tailwind', () => {
    const due = (w: number): number =>
      accelerationCheckSpeed({ liftOffSpeed: kias(50), headwind: kt(w), distance: m(200), roll: m(400) });
    expect(due(10)).toBeGreaterThan(due(0));
    expect(due(-10)).toBeCloseTo(35, 12);
  });

  it('refuses a mark beyond the roll and a headwind that lifts the aeroplane standing', () => {
    const good = { liftOffSpeed: kias(40), headwind: kt(5), distance: m(200), roll: m(400) };
    expect(() => accelerationCheckSpeed({ ...good, distance: m(400.1) })).toThrow(
      /^distance: 400\.1 m is inconsistent with 0 to 400 m/,
    );
    expect(() => accelerationCheckSpeed({ ...good, headwind: kt(40) })).toThrow(
      /^headwind: 40 kt is inconsistent with -50 to 40 kt/,
    );
  });

  it.each([
    ['liftOffSpeed', { liftOffSpeed: 19.9 }],
    ['liftOffSpeed', { liftOffSpeed: 200.1 }],
    ['liftOffSpeed', { liftOffSpeed: undefined }],
    ['headwind', { headwind: -50.1 }],
    ['headwind', { headwind: 50.1 }],
    ['headwind', { headwind: Number.NaN }],
    ['distance', { distance: -0.1 }],
    ['distance', { distance: 20000.1 }],
    ['roll', { distance: 0, roll: 0.9 }],
    ['roll', { roll: 20000.1 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const good = { liftOffSpeed: 52, headwind: 6, distance: 200, roll: 400 };
    const call = () => accelerationCheckSpeed({ ...good, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
