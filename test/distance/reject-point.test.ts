import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { latestRejectPoint } from '../../src/distance/index.ts';
import { DomainError, ktGS, m, ratio, seconds } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const situation = fc.record({
  longestRoll: evenly(50, 3000).map(m),
  liftOffGroundSpeed: evenly(20, 120).map(ktGS),
  reactionTime: evenly(0, 10).map(seconds),
  brakingCoefficient: evenly(0.05, 0.8).map(ratio),
  stopDistanceAvailable: evenly(0, 4000).map(m),
});
type Situation = Parameters<typeof latestRejectPoint>[0];

/** Distance from the start of the roll to standstill when the throttle is closed at `x_m`. */
function stopsAt(x_m: number, s: Situation): number {
  const liftOff_mps = s.liftOffGroundSpeed * (1852 / 3600);
  const acceleration = liftOff_mps ** 2 / (2 * s.longestRoll);
  const v = Math.sqrt(2 * acceleration * x_m);
  return x_m + s.reactionTime * v + v ** 2 / (2 * s.brakingCoefficient * 9.80665);
}

describe('latestRejectPoint', () => {
  it('is the point that bisection finds', () => {
    fc.assert(
      fc.property(situation, (s) => {
        let near = 0;
        let far: number = s.longestRoll;
        if (stopsAt(far, s) <= s.stopDistanceAvailable) near = far;
        for (let i = 0; i < 100; i += 1) {
          const middle = (near + far) / 2;
          if (stopsAt(middle, s) <= s.stopDistanceAvailable) near = middle;
          else far = middle;
        }
        expect(latestRejectPoint(s)).toBeCloseTo(near, 6);
      }),
    );
  });

  it('is the start when there is no room at all, and the whole roll when there is plenty', () => {
    const good = {
      longestRoll: m(500),
      liftOffGroundSpeed: ktGS(50),
      reactionTime: seconds(3),
      brakingCoefficient: ratio(0.2),
    };
    expect(latestRejectPoint({ ...good, stopDistanceAvailable: m(0) })).toBe(0);
    expect(latestRejectPoint({ ...good, reactionTime: seconds(0), stopDistanceAvailable: m(0) })).toBe(0);
    expect(latestRejectPoint({ ...good, stopDistanceAvailable: m(20000) })).toBe(500);
  });

  it('comes no later with a longer reaction, weaker brakes or less distance', () => {
    fc.assert(
      fc.property(situation, evenly(0, 1), (s, share) => {
        const point: number = latestRejectPoint(s);
        const slower = { ...s, reactionTime: seconds(s.reactionTime + share) };
        const slippery = { ...s, brakingCoefficient: ratio(0.01 + share * (s.brakingCoefficient - 0.01)) };
        const shorter = { ...s, stopDistanceAvailable: m(share * s.stopDistanceAvailable) };
        for (const worse of [slower, slippery, shorter])
          expect(latestRejectPoint(worse)).toBeLessThanOrEqual(point + 1e-9);
      }),
    );
  });

  it.each([
    ['longestRoll', { longestRoll: 0.9 }],
    ['longestRoll', { longestRoll: 20000.1 }],
    ['longestRoll', { longestRoll: undefined }],
    ['liftOffGroundSpeed', { liftOffGroundSpeed: 0.9 }],
    ['liftOffGroundSpeed', { liftOffGroundSpeed: 250.1 }],
    ['reactionTime', { reactionTime: -0.1 }],
    ['reactionTime', { reactionTime: 30.1 }],
    ['brakingCoefficient', { brakingCoefficient: 0.009 }],
    ['brakingCoefficient', { brakingCoefficient: 1.01 }],
    ['stopDistanceAvailable', { stopDistanceAvailable: -0.1 }],
    ['stopDistanceAvailable', { stopDistanceAvailable: 20000.1 }],
    ['stopDistanceAvailable', { stopDistanceAvailable: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const good = {
      longestRoll: 500,
      liftOffGroundSpeed: 50,
      reactionTime: 3,
      brakingCoefficient: 0.2,
      stopDistanceAvailable: 600,
    };
    const call = () => latestRejectPoint({ ...good, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
