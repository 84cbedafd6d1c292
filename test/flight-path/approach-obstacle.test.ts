import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { landingDistanceLost } from '../../src/flight-path/index.ts';
import { DomainError, degrees, m, mHeight, percent } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const situation = fc.record({
  obstacleHeight: evenly(-10, 60).map(mHeight),
  clearance: evenly(0, 30).map(mHeight),
  screenHeight: evenly(10, 20).map(mHeight),
  distance: evenly(0, 1000).map(m),
  pathAngle: evenly(2, 10).map(degrees),
  downslope: evenly(0, 3).map(percent),
});
type Situation = Parameters<typeof landingDistanceLost>[0];

/** Height over the runway of a straight path that passes the obstacle with the clearance asked, `x_m` past the threshold. */
function overRunway(x_m: number, s: Situation): number {
  const path_m = s.obstacleHeight + s.clearance - Math.tan((s.pathAngle / 180) * Math.PI) * (s.distance + x_m);
  const runway_m = (-s.downslope / 100) * x_m;
  return path_m - runway_m;
}

describe('landingDistanceLost', () => {
  it('ends where the path over the obstacle is at the screen height above the runway', () => {
    fc.assert(
      fc.property(situation, (s) => {
        const lost: number = landingDistanceLost(s);
        if (lost > 0) expect(overRunway(lost, s)).toBeCloseTo(s.screenHeight, 7);
        else expect(overRunway(0, s)).toBeLessThanOrEqual(s.screenHeight + 1e-9);
      }),
    );
  });

  it('grows with the downslope and shrinks with a steeper path', () => {
    fc.assert(
      fc.property(situation, evenly(0, 0.4), evenly(0, 5), (s, more, steeper) => {
        const lost: number = landingDistanceLost(s);
        const downhill = { ...s, downslope: percent(s.downslope + more) };
        const steep = { ...s, pathAngle: degrees(s.pathAngle + steeper) };
        expect(landingDistanceLost(downhill)).toBeGreaterThanOrEqual(lost * (1 - 1e-12));
        expect(landingDistanceLost(steep)).toBeLessThanOrEqual(lost * (1 + 1e-12));
      }),
    );
  });

  it('refuses a runway that falls away as steeply as the path', () => {
    const s = {
      obstacleHeight: mHeight(20),
      clearance: mHeight(10),
      screenHeight: mHeight(15),
      distance: m(200),
      pathAngle: degrees(3),
    };
    expect(landingDistanceLost({ ...s, downslope: percent(5.2) })).toBeGreaterThan(0);
    expect(() => landingDistanceLost({ ...s, downslope: percent(5.3) })).toThrow(
      /^downslope: 5\.3 percent is inconsistent with 0 to 5\.24/,
    );
  });

  it.each([
    ['obstacleHeight', { obstacleHeight: -1000.1 }],
    ['obstacleHeight', { obstacleHeight: 3000.1 }],
    ['obstacleHeight', { obstacleHeight: undefined }],
    ['clearance', { clearance: -0.1 }],
    ['clearance', { clearance: 1000.1 }],
    ['screenHeight', { screenHeight: -0.1 }],
    ['screenHeight', { screenHeight: 100.1 }],
    ['distance', { distance: -0.1 }],
    ['distance', { distance: 100000.1 }],
    ['pathAngle', { pathAngle: 0.9 }],
    ['pathAngle', { pathAngle: 15.1 }],
    ['pathAngle', { pathAngle: Number.NaN }],
    ['downslope', { downslope: -0.1 }],
    ['downslope', { downslope: 20.1 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const good = { obstacleHeight: 20, clearance: 10, screenHeight: 15, distance: 200, pathAngle: 3, downslope: 1 };
    const call = () => landingDistanceLost({ ...good, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
