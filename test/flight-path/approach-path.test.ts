import fs from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aimingPointDistance,
  aimingPointPastThreshold,
  approachDescentLimit,
  landingDistanceLost,
  pathAngleForClearance,
  rateOfDescent,
  rateOfDescentAlongPath,
  steepestPath,
} from '../../src/flight-path/index.ts';
import { checkValues } from '../../src/register/index.ts';
import { DomainError, degrees, ftPerMin, kt, ktGS, m, mHeight, percent } from '../../src/units/index.ts';

const evenly = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((part) => min + ((max - min) * part) / 1_000_000);

describe('the aiming point over an obstacle', () => {
  const situation = fc.record({
    obstacleHeight: evenly(0, 60).map(mHeight),
    clearance: evenly(0, 30).map(mHeight),
    distance: evenly(0, 1000).map(m),
    pathAngle: evenly(2, 10).map(degrees),
  });

  it('lies where the path with the clearance over the obstacle meets the level of the threshold', () => {
    fc.assert(
      fc.property(situation, (x) => {
        const past: number = aimingPointPastThreshold(x);
        const height = (past + x.distance) * Math.tan((x.pathAngle * Math.PI) / 180);
        expect(height).toBeCloseTo(x.obstacleHeight + x.clearance, 8);
      }),
    );
  });

  it('gives the landing distance lost: what it lies beyond the aiming point of the screen height', () => {
    fc.assert(
      fc.property(situation, (x) => {
        const screenHeight = mHeight(15);
        const ofScreen: number = aimingPointDistance({ height: screenHeight, pathAngle: x.pathAngle });
        const lost: number = landingDistanceLost({ ...x, screenHeight, downslope: percent(0) });
        expect(lost).toBeCloseTo(Math.max(0, aimingPointPastThreshold(x) - ofScreen), 7);
      }),
    );
  });

  it('asks for the path angle that leads back to it', () => {
    fc.assert(
      fc.property(situation, evenly(50, 2000), (x, distance) => {
        const pathAngle = pathAngleForClearance({ ...x, distance: m(distance) });
        if (pathAngle < 1 || pathAngle > 15) return;
        const height = mHeight(x.obstacleHeight + x.clearance);
        expect(aimingPointDistance({ height, pathAngle })).toBeCloseTo(distance, 7);
      }),
    );
  });

  it('asks for no descent where the obstacle with its clearance is no higher than the aiming point', () => {
    const at = (height: number): number =>
      pathAngleForClearance({ obstacleHeight: mHeight(height), clearance: mHeight(10), distance: m(500) });
    expect(at(-10)).toBe(0);
    expect(at(-11)).toBeLessThan(0);
  });

  it.each([
    ['height', { height: -0.1 }],
    ['height', { height: 3000.1 }],
    ['height', { height: undefined }],
    ['pathAngle', { pathAngle: 0.9 }],
    ['pathAngle', { pathAngle: 15.1 }],
    ['pathAngle', { pathAngle: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => aimingPointDistance({ height: 15, pathAngle: 3, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });

  it.each([
    ['obstacleHeight', { obstacleHeight: -1000.1 }],
    ['obstacleHeight', { obstacleHeight: 3000.1 }],
    ['clearance', { clearance: -0.1 }],
    ['clearance', { clearance: 1000.1 }],
    ['clearance', { clearance: undefined }],
    ['distance', { distance: -0.1 }],
    ['distance', { distance: 100000.1 }],
    ['pathAngle', { pathAngle: 0.9 }],
    ['pathAngle', { pathAngle: 15.1 }],
  ])('past the threshold refuses a bad %s and names it', (parameter, inputs) => {
    const good = { obstacleHeight: 20, clearance: 10, distance: 200, pathAngle: 3 };
    const call = () => aimingPointPastThreshold({ ...good, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });

  it.each([
    ['obstacleHeight', { obstacleHeight: -1000.1 }],
    ['obstacleHeight', { obstacleHeight: 3000.1 }],
    ['clearance', { clearance: -0.1 }],
    ['clearance', { clearance: 1000.1 }],
    ['distance', { distance: 0.9 }],
    ['distance', { distance: 100000.1 }],
    ['distance', { distance: Number.NaN }],
  ])('its path angle refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => pathAngleForClearance({ obstacleHeight: 20, clearance: 10, distance: 500, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('rateOfDescent and steepestPath', () => {
  it('undo each other', () => {
    fc.assert(
      fc.property(evenly(20, 100).map(ktGS), evenly(0.5, 15).map(degrees), (groundSpeed, pathAngle) => {
        const greatestRateOfDescent = rateOfDescent({ groundSpeed, pathAngle });
        expect(steepestPath({ groundSpeed, greatestRateOfDescent })).toBeCloseTo(pathAngle, 10);
      }),
    );
  });

  it('hold the limit of 1000 ft/min below 1000 ft', () => {
    expect(approachDescentLimit).toMatchObject({ rateOfDescent: 1000, below: 1000, citation: { access: 'read' } });
    const groundSpeed = ktGS(120);
    const pathAngle = steepestPath({ groundSpeed, greatestRateOfDescent: approachDescentLimit.rateOfDescent });
    expect(rateOfDescent({ groundSpeed, pathAngle: degrees(pathAngle + 0.01) })).toBeGreaterThan(1000);
    expect(rateOfDescent({ groundSpeed, pathAngle: degrees(pathAngle - 0.01) })).toBeLessThan(1000);
  });

  it('five times the ground speed is a path of 2.827 degrees, shallower than 3', () => {
    const angle: number = steepestPath({ groundSpeed: ktGS(90), greatestRateOfDescent: ftPerMin(450) });
    expect(angle).toBeCloseTo(2.827, 3);
  });

  it.each([
    ['groundSpeed', { groundSpeed: 0.9 }],
    ['groundSpeed', { groundSpeed: 300.1 }],
    ['groundSpeed', { groundSpeed: undefined }],
    ['pathAngle', { pathAngle: -0.1 }],
    ['pathAngle', { pathAngle: 30.1 }],
    ['pathAngle', { pathAngle: Number.NaN }],
  ])('refuse a bad %s and name it', (parameter, inputs) => {
    const call = () => rateOfDescent({ groundSpeed: 65, pathAngle: 3, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });

  it.each([
    ['groundSpeed', { groundSpeed: 0.9 }],
    ['groundSpeed', { groundSpeed: 300.1 }],
    ['greatestRateOfDescent', { greatestRateOfDescent: 0.9 }],
    ['greatestRateOfDescent', { greatestRateOfDescent: 3000.1 }],
    ['greatestRateOfDescent', { greatestRateOfDescent: Number.NaN }],
  ])('refuse a bad %s of a steepest path and name it', (parameter, inputs) => {
    const call = () => steepestPath({ groundSpeed: 65, greatestRateOfDescent: 1000, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('rateOfDescentAlongPath', () => {
  it('is the rate over the ground at the level part of the speed', () => {
    fc.assert(
      fc.property(evenly(20, 200), evenly(0, 30), (speed, angle) => {
        const level = ktGS(Math.max(1, speed * Math.cos((angle * Math.PI) / 180)));
        const pathAngle = degrees(angle);
        const along: number = rateOfDescentAlongPath({ speedAlongPath: kt(speed), pathAngle });
        expect(along).toBeCloseTo(rateOfDescent({ groundSpeed: level, pathAngle }), 7);
      }),
    );
  });

  it.each([
    ['speedAlongPath', { speedAlongPath: 0.9 }],
    ['speedAlongPath', { speedAlongPath: 300.1 }],
    ['speedAlongPath', { speedAlongPath: undefined }],
    ['pathAngle', { pathAngle: -0.1 }],
    ['pathAngle', { pathAngle: 30.1 }],
    ['pathAngle', { pathAngle: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => rateOfDescentAlongPath({ speedAlongPath: 65, pathAngle: 3, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('the published table of rates of descent', () => {
  const lines = fs
    .readFileSync(new URL('./descent-rate-table.csv', import.meta.url), 'utf8')
    .trim()
    .split('\n');
  const cells = lines.slice(1).map((line) => {
    const [angle = Number.NaN, speed = Number.NaN, published = Number.NaN] = line.split(',').map(Number);
    return { angle, speed, published };
  });
  type Cell = (typeof cells)[number];
  const bySine = ({ angle, speed }: Cell): number =>
    rateOfDescentAlongPath({ speedAlongPath: kt(speed), pathAngle: degrees(angle) });
  const byTangent = ({ angle, speed }: Cell): number =>
    rateOfDescent({ groundSpeed: ktGS(speed), pathAngle: degrees(angle) });
  const agrees = (cell: Cell, ours: number) => Math.abs(cell.published - ours) <= 2.5;

  it('was computed with the sine: 208 of its 231 cells agree with it to half a step, 56 with the tangent', () => {
    expect(cells.length).toBe(231);
    expect(cells.filter((cell) => agrees(cell, bySine(cell))).length).toBe(208);
    expect(cells.filter((cell) => agrees(cell, byTangent(cell))).length).toBe(56);
  });

  it('is low throughout its row of 12 degrees', () => {
    const row = cells.filter(({ angle }) => angle === 12);
    expect(row.length).toBe(11);
    for (const cell of row) expect(cell.published / bySine(cell)).toBeCloseTo(0.9974, 4);
  });

  it('is a check value in every cell but that row and these, which miss the sine by more than the rounding', () => {
    const name = ({ angle, speed }: Cell) => `table-${angle}-degrees-at-${speed}`;
    const used = new Set(
      checkValues.filter(({ record }) => record === 'flight-path.rate-of-descent-along-path').map(({ id }) => id),
    );
    const unused = cells.filter((cell) => cell.angle !== 12 && !used.has(name(cell)));
    const misses = unused.map((cell) => [
      cell.angle,
      cell.speed,
      Math.round(100 * (cell.published - bySine(cell))) / 100,
    ]);
    expect(misses).toEqual([
      [2.5, 30, -2.52],
      [2.5, 90, -2.55],
      [3, 90, 3],
      [3.5, 180, -2.81],
      [4, 45, -2.89],
      [4, 120, -2.7],
      [4.5, 45, -2.54],
      [6, 30, -2.56],
      [8, 180, 3.1],
      [8.5, 75, -2.63],
      [9, 180, 3.46],
      [9.5, 150, 2.88],
      [11.5, 90, 2.93],
      [11.5, 165, 3.7],
    ]);
    for (const cell of unused) expect(agrees(cell, bySine(cell))).toBe(false);
    expect([...used].filter((id) => id.startsWith('table-')).length).toBe(206);
  });
});
