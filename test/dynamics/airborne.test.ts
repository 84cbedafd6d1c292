import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airborneDistance,
  airborneDistanceInArc,
  approachDistance,
  flareDistance,
  flareHeight,
  flightPathRadius,
} from '../../src/dynamics/index.ts';
import { DomainError, degrees, ktas, m, mHeight, mps2, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

describe('airborneDistanceInArc', () => {
  it('is the printed form, with the angle that it ends at', () => {
    fc.assert(
      fc.property(evenly(50, 5000), evenly(5, 50), (r, h) => {
        const { distance, pathAngle } = airborneDistanceInArc({ radius: m(r), screenHeight: mHeight(h) });
        const theta = Math.acos(1 - h / r);
        expect(pathAngle).toBeCloseTo((theta * 180) / Math.PI, 8);
        expect(distance).toBeCloseTo(r * Math.sin(theta), 6);
      }),
    );
  });

  it('ends upright at a screen as high as the radius, and refuses a higher one', () => {
    const { distance, pathAngle } = airborneDistanceInArc({ radius: m(15), screenHeight: mHeight(15) });
    expect([distance, pathAngle]).toEqual([expect.closeTo(15, 9), expect.closeTo(90, 9)]);
    const call = () => airborneDistanceInArc({ radius: m(15), screenHeight: mHeight(15.1) });
    expect(call).toThrow(expect.objectContaining({ detail: expect.objectContaining({ code: 'inconsistent' }) }));
    expect(call).toThrow(/^screenHeight: /);
  });
});

describe('airborneDistance', () => {
  it('ends in the arc when the climb is steeper than the arc at the screen, and passes there without a step', () => {
    fc.assert(
      fc.property(evenly(50, 5000), evenly(5, 30), (r, h) => {
        const arc = { radius: m(r), screenHeight: mHeight(h) };
        const { distance, pathAngle } = airborneDistanceInArc(arc);
        fc.pre(pathAngle < 44);
        expect(airborneDistance({ ...arc, climbAngle: degrees(pathAngle + 1) })).toBeCloseTo(distance, 9);
        expect(airborneDistance({ ...arc, climbAngle: degrees(pathAngle - 1e-9) })).toBeCloseTo(distance, 4);
      }),
    );
  });

  it('is a straight climb in all but the arc, and shorter the steeper the climb', () => {
    fc.assert(
      fc.property(evenly(50, 5000), evenly(10, 30), evenly(0.5, 10), (r, h, gamma) => {
        const arc = { radius: m(r), screenHeight: mHeight(h) };
        const distance: number = airborneDistance({ ...arc, climbAngle: degrees(gamma) });
        const tangent = r * Math.tan((gamma * Math.PI) / 360);
        const straight = h / Math.tan((gamma * Math.PI) / 180) + tangent;
        if (airborneDistanceInArc(arc).pathAngle > gamma) expect(distance).toBeCloseTo(straight, 6);
        expect(airborneDistance({ ...arc, climbAngle: degrees(gamma + 1) })).toBeLessThanOrEqual(distance + 1e-9);
      }),
    );
  });
});

describe('the landing from the screen to the touchdown', () => {
  it('joins the straight path and the flare without a step: the flare adds half of itself, nearly', () => {
    fc.assert(
      fc.property(evenly(100, 2000), evenly(1, 6), (r, theta) => {
        const flare = { radius: m(r), pathAngle: degrees(theta) };
        const approach: number = approachDistance({
          screenHeight: mHeight(15),
          flareHeight: flareHeight(flare),
          pathAngle: degrees(theta),
        });
        const straight = 15 / Math.tan((theta * Math.PI) / 180);
        // The tangents of an arc are equal, so that the flare ends R tan(θ/2) beyond the straight path.
        const beyond = r * Math.tan((theta * Math.PI) / 360);
        expect(approach + flareDistance(flare)).toBeCloseTo(straight + beyond, 8);
      }),
    );
  });

  it('is a mere flare when it begins at the screen, and refused when it begins above', () => {
    const x = { screenHeight: mHeight(15), pathAngle: degrees(3) };
    expect(approachDistance({ ...x, flareHeight: mHeight(15) })).toBe(0);
    expect(() => approachDistance({ ...x, flareHeight: mHeight(15.01) })).toThrow(/^flareHeight: .*below the screen/);
  });
});

describe('flightPathRadius', () => {
  it('is the radius on which the lift left over bends the path', () => {
    fc.assert(
      fc.property(evenly(30, 100), evenly(1.05, 2), (speed, n) => {
        const r = flightPathRadius({ speed: ktas(speed), loadFactor: ratio(n), gravity: mps2(9.81) });
        const v = (speed * 1852) / 3600;
        expect(1 + v ** 2 / (r * 9.81)).toBeCloseTo(n, 9);
      }),
    );
  });
});

describe('what is out of range', () => {
  const arc = { radius: 430, screenHeight: 15 };
  const climb = { ...arc, climbAngle: 6 };
  const flare = { radius: 600, pathAngle: 4 };
  const approach = { screenHeight: 15, flareHeight: 1.5, pathAngle: 4 };
  const bend = { speed: 55, loadFactor: 1.2, gravity: 9.8 };
  const cases: [string, (x: never) => unknown, object, string, unknown][] = [
    ['airborneDistanceInArc', airborneDistanceInArc, arc, 'radius', 9.9],
    ['airborneDistanceInArc', airborneDistanceInArc, arc, 'radius', 100000.1],
    ['airborneDistanceInArc', airborneDistanceInArc, arc, 'screenHeight', 0.9],
    ['airborneDistanceInArc', airborneDistanceInArc, arc, 'screenHeight', 100.1],
    ['airborneDistance', airborneDistance, climb, 'radius', 9.9],
    ['airborneDistance', airborneDistance, climb, 'radius', 100000.1],
    ['airborneDistance', airborneDistance, climb, 'screenHeight', 0.9],
    ['airborneDistance', airborneDistance, climb, 'screenHeight', 100.1],
    ['airborneDistance', airborneDistance, climb, 'climbAngle', 0.09],
    ['airborneDistance', airborneDistance, climb, 'climbAngle', 45.1],
    ['airborneDistance', airborneDistance, climb, 'climbAngle', undefined],
    ['flareHeight', flareHeight, flare, 'radius', 9.9],
    ['flareHeight', flareHeight, flare, 'radius', 100000.1],
    ['flareHeight', flareHeight, flare, 'pathAngle', 0.4],
    ['flareHeight', flareHeight, flare, 'pathAngle', 15.1],
    ['flareDistance', flareDistance, flare, 'radius', 9.9],
    ['flareDistance', flareDistance, flare, 'radius', 100000.1],
    ['flareDistance', flareDistance, flare, 'pathAngle', 0.4],
    ['flareDistance', flareDistance, flare, 'pathAngle', 15.1],
    ['approachDistance', approachDistance, approach, 'screenHeight', 0.9],
    ['approachDistance', approachDistance, approach, 'screenHeight', 100.1],
    ['approachDistance', approachDistance, approach, 'flareHeight', -0.1],
    ['approachDistance', approachDistance, approach, 'flareHeight', 100.1],
    ['approachDistance', approachDistance, approach, 'pathAngle', 0.4],
    ['approachDistance', approachDistance, approach, 'pathAngle', 15.1],
    ['flightPathRadius', flightPathRadius, bend, 'speed', 14.9],
    ['flightPathRadius', flightPathRadius, bend, 'speed', 300.1],
    ['flightPathRadius', flightPathRadius, bend, 'loadFactor', 1],
    ['flightPathRadius', flightPathRadius, bend, 'loadFactor', 4.01],
    ['flightPathRadius', flightPathRadius, bend, 'gravity', 8.9],
    ['flightPathRadius', flightPathRadius, bend, 'gravity', 10.6],
    ['flightPathRadius', flightPathRadius, bend, 'gravity', Number.NaN],
  ];

  it.each(cases)('is refused by %s and named', (_name, formula, good, parameter, value) => {
    const call = () => formula({ ...good, [parameter]: value } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: .*is not within`));
  });
});
