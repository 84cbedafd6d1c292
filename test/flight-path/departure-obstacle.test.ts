import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { latestPathStart, obstacleClearance, requiredGradient } from '../../src/flight-path/index.ts';
import { DomainError, m, mHeight, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const height = evenly(-100, 500).map(mHeight);
const clearance = evenly(0, 100).map(mHeight);

describe('requiredGradient', () => {
  it('is the gradient that leaves exactly the clearance asked', () => {
    fc.assert(
      fc.property(height, clearance, height, evenly(600, 10000).map(m), (obstacleTop, c, startHeight, distance) => {
        const gradient = requiredGradient({ obstacleTop, clearance: c, startHeight, distance });
        expect(obstacleClearance({ obstacleTop, startHeight, distance, gradient })).toBeCloseTo(c, 8);
      }),
    );
  });

  it('is negative for an obstacle that lies lower than the start with the clearance to spare', () => {
    const low = { obstacleTop: mHeight(-10), clearance: mHeight(5), startHeight: mHeight(15), distance: m(400) };
    expect(requiredGradient(low)).toBeCloseTo(-0.05, 12);
  });

  it.each([
    ['obstacleTop', { obstacleTop: -1000.1 }],
    ['obstacleTop', { obstacleTop: 5000.1 }],
    ['obstacleTop', { obstacleTop: undefined }],
    ['clearance', { clearance: -0.1 }],
    ['clearance', { clearance: 1000.1 }],
    ['startHeight', { startHeight: -1000.1 }],
    ['startHeight', { startHeight: 5000.1 }],
    ['distance', { distance: 0 }],
    ['distance', { distance: 0.09 }],
    ['distance', { distance: 100000.1 }],
    ['distance', { distance: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const good = { obstacleTop: 40, clearance: 15, startHeight: 15, distance: 800 };
    const call = () => requiredGradient({ ...good, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('obstacleClearance', () => {
  it('falls by a metre for each metre that the obstacle is taller, and is negative below its top', () => {
    const over = (top: number): number =>
      obstacleClearance({
        obstacleTop: mHeight(top),
        startHeight: mHeight(15),
        distance: m(1000),
        gradient: ratio(0.05),
      });
    expect(over(40)).toBeCloseTo(25, 12);
    expect(over(41)).toBeCloseTo(24, 12);
    expect(over(70)).toBeCloseTo(-5, 12);
  });

  it.each([
    ['obstacleTop', { obstacleTop: -1000.1 }],
    ['obstacleTop', { obstacleTop: 5000.1 }],
    ['startHeight', { startHeight: -1000.1 }],
    ['startHeight', { startHeight: 5000.1 }],
    ['startHeight', { startHeight: undefined }],
    ['distance', { distance: -0.1 }],
    ['distance', { distance: 100000.1 }],
    ['gradient', { gradient: -1.01 }],
    ['gradient', { gradient: 2.01 }],
    ['gradient', { gradient: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const good = { obstacleTop: 40, startHeight: 15, distance: 800, gradient: 0.06 };
    const call = () => obstacleClearance({ ...good, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('latestPathStart', () => {
  const situation = fc.record({
    obstacleTop: evenly(0, 200).map(mHeight),
    clearance,
    screenHeight: evenly(0, 20).map(mHeight),
    distance: evenly(500, 5000).map(m),
    gradient: evenly(0.05, 0.3).map(ratio),
    slope: evenly(-0.04, 0.04).map(ratio),
  });

  /** Height of the path over the top of the obstacle when the 50 ft point lies at `s_m`. */
  const spare = (s_m: number, x: Parameters<typeof latestPathStart>[0]): number => {
    const start_m = x.slope * s_m + x.screenHeight;
    return start_m + x.gradient * (x.distance - s_m) - x.obstacleTop;
  };

  it('is the 50 ft point from which the path leaves exactly the clearance asked', () => {
    fc.assert(
      fc.property(situation, (x) => {
        expect(spare(latestPathStart(x), x)).toBeCloseTo(x.clearance, 6);
      }),
    );
  });

  it('is the farthest: a metre earlier leaves more, a metre later less', () => {
    fc.assert(
      fc.property(situation, (x) => {
        const latest: number = latestPathStart(x);
        expect(spare(latest - 1, x)).toBeGreaterThan(x.clearance);
        expect(spare(latest + 1, x)).toBeLessThan(x.clearance);
      }),
    );
  });

  it('is negative for an obstacle too tall, beyond the distance for one below the screen height', () => {
    const x = { clearance: mHeight(15), screenHeight: mHeight(15), distance: m(500), slope: ratio(0) };
    const gradient = ratio(0.05);
    expect(latestPathStart({ ...x, gradient, obstacleTop: mHeight(30) })).toBeCloseTo(-100, 9);
    expect(latestPathStart({ ...x, gradient, obstacleTop: mHeight(-5) })).toBeCloseTo(600, 9);
  });

  it('refuses a path that does not climb away from the surface', () => {
    const x = { obstacleTop: mHeight(40), clearance: mHeight(15), screenHeight: mHeight(15), distance: m(1500) };
    const call = (gradient: number) => () => latestPathStart({ ...x, gradient: ratio(gradient), slope: ratio(0.02) });
    expect(call(0.03)()).toSatisfy(Number.isFinite);
    expect(call(0.02)).toThrow(/^gradient: 0\.02 ratio is inconsistent with /);
    expect(call(0.01)).toThrow(/^gradient: 0\.01 ratio is inconsistent with /);
    const level = () => latestPathStart({ ...x, gradient: ratio(Number.MIN_VALUE), slope: ratio(0) });
    expect(level).toThrow(DomainError);
  });

  it.each([
    ['obstacleTop', { obstacleTop: -1000.1 }],
    ['obstacleTop', { obstacleTop: 5000.1 }],
    ['clearance', { clearance: -0.1 }],
    ['clearance', { clearance: 1000.1 }],
    ['screenHeight', { screenHeight: -0.1 }],
    ['screenHeight', { screenHeight: 100.1 }],
    ['distance', { distance: -0.1 }],
    ['distance', { distance: 100000.1 }],
    ['gradient', { gradient: -0.01 }],
    ['gradient', { gradient: 2.01 }],
    ['gradient', { gradient: Number.NaN }],
    ['slope', { slope: -0.21 }],
    ['slope', { slope: 0.21 }],
    ['slope', { slope: undefined }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const good = { obstacleTop: 40, clearance: 15, screenHeight: 15, distance: 1500, gradient: 0.06, slope: 0.01 };
    const call = () => latestPathStart({ ...good, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
