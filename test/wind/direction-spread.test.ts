import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, degMagnetic, degrees, degTrue, kt } from '../../src/units/index.ts';
import { type WindComponentSpread, windComponentSpread, windComponents } from '../../src/wind/index.ts';
import { evenly } from '../evenly.ts';

const direction = evenly(0, 360);
const wholeDirection = fc.integer({ min: 0, max: 360 });
const speed = evenly(0, 200);

function spread(from: number, halfWidth: number, knots: number, runway: number): WindComponentSpread {
  return windComponentSpread({
    from: degTrue(from),
    halfWidth: degrees(halfWidth),
    speed: kt(knots),
    direction: degTrue(runway),
  });
}

function components(from: number, knots: number, runway: number) {
  const turned = ((from % 360) + 360) % 360;
  return windComponents({ from: degTrue(turned), speed: kt(knots), direction: degTrue(runway) });
}

describe('windComponentSpread', () => {
  it('without width is the wind itself', () => {
    fc.assert(
      fc.property(direction, speed, direction, (from, knots, runway) => {
        const { headwind, crosswind } = components(from, knots, runway);
        const found = spread(from, 0, knots, runway);
        expect(found.leastHeadwind).toBeCloseTo(headwind, 9);
        expect(found.greatestHeadwind).toBeCloseTo(headwind, 9);
        expect(found.leastCrosswind).toBeCloseTo(crosswind, 9);
        expect(found.greatestCrosswind).toBeCloseTo(crosswind, 9);
      }),
    );
  });

  it('holds every direction within, and reaches the worst of them', () => {
    fc.assert(
      fc.property(
        wholeDirection,
        fc.integer({ min: 0, max: 180 }),
        speed,
        wholeDirection,
        (from, half, knots, runway) => {
          const found = spread(from, half, knots, runway);
          // Whole degrees hit every extreme, because the ends and the runway stand at whole degrees too.
          const winds = Array.from({ length: 2 * half + 1 }, (_, i) => components(from - half + i, knots, runway));
          const along = winds.map(({ headwind }) => headwind);
          const across = winds.map(({ crosswind }) => crosswind);
          expect(found.leastHeadwind).toBeCloseTo(Math.min(...along), 9);
          expect(found.greatestHeadwind).toBeCloseTo(Math.max(...along), 9);
          expect(found.leastCrosswind).toBeCloseTo(Math.min(...across), 9);
          expect(found.greatestCrosswind).toBeCloseTo(Math.max(...across), 9);
        },
      ),
    );
  });

  it('never leaves out a direction that is possible, whole degrees or not', () => {
    const share = evenly(-1, 1);
    const half = evenly(0, 180);
    fc.assert(
      fc.property(direction, half, share, speed, direction, (from, width, part, knots, runway) => {
        const found = spread(from, width, knots, runway);
        const { headwind, crosswind } = components(from + part * width, knots, runway);
        expect(headwind).toBeGreaterThanOrEqual(found.leastHeadwind - 1e-9);
        expect(headwind).toBeLessThanOrEqual(found.greatestHeadwind + 1e-9);
        expect(crosswind).toBeGreaterThanOrEqual(found.leastCrosswind - 1e-9);
        expect(crosswind).toBeLessThanOrEqual(found.greatestCrosswind + 1e-9);
      }),
    );
  });

  it('only grows with the width', () => {
    fc.assert(
      fc.property(direction, speed, direction, (from, knots, runway) => {
        const narrow = spread(from, 5, knots, runway);
        const wide = spread(from, 10, knots, runway);
        expect(wide.leastHeadwind).toBeLessThanOrEqual(narrow.leastHeadwind + 1e-9);
        expect(wide.greatestCrosswind).toBeGreaterThanOrEqual(narrow.greatestCrosswind - 1e-9);
      }),
    );
  });

  it('is the same for a wind known to 5 degrees and for a runway known to 5 degrees', () => {
    fc.assert(
      fc.property(wholeDirection, speed, wholeDirection, (from, knots, runway) => {
        const found = spread(from, 5, knots, runway);
        const turned = [-5, 0, 5].map((by) => components(from, knots, (runway + by + 360) % 360));
        for (const { headwind, crosswind } of turned) {
          expect(headwind).toBeGreaterThanOrEqual(found.leastHeadwind - 1e-9);
          expect(crosswind).toBeLessThanOrEqual(found.greatestCrosswind + 1e-9);
        }
      }),
    );
  });

  it('turns a headwind of 88 degrees off into a possible tailwind', () => {
    const found = spread(200, 5, 20, 112);
    expect(found.leastHeadwind).toBeCloseTo(20 * Math.cos((93 * Math.PI) / 180), 12);
    expect(found.greatestHeadwind).toBeCloseTo(20 * Math.cos((83 * Math.PI) / 180), 12);
    expect(found.greatestCrosswind).toBe(20);
  });

  it('covers the whole circle with half of it to either side', () => {
    expect(spread(40, 180, 12, 112)).toEqual({
      leastHeadwind: -12,
      greatestHeadwind: 12,
      leastCrosswind: -12,
      greatestCrosswind: 12,
    });
  });

  it('does not accept a wind and a runway against different norths', () => {
    const halfWidth = degrees(5);
    windComponentSpread({ from: degMagnetic(200), halfWidth, speed: kt(20), direction: degMagnetic(112) });
    // @ts-expect-error a true wind on a magnetic runway
    windComponentSpread({ from: degTrue(200), halfWidth, speed: kt(20), direction: degMagnetic(112) });
  });

  const good = { from: 200, halfWidth: 5, speed: 20, direction: 112 };
  it.each([
    ['from', { ...good, from: -0.5 }],
    ['from', { ...good, from: 360.5 }],
    ['halfWidth', { ...good, halfWidth: -1 }],
    ['halfWidth', { ...good, halfWidth: 180.5 }],
    ['halfWidth', { ...good, halfWidth: undefined }],
    ['speed', { ...good, speed: -1 }],
    ['speed', { ...good, speed: 200.5 }],
    ['speed', { ...good, speed: Number.NaN }],
    ['direction', { ...good, direction: -1 }],
    ['direction', { ...good, direction: 361 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => windComponentSpread(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
