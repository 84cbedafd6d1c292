import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, degTrue, kt, ktas } from '../../src/units/index.ts';
import { windTriangle } from '../../src/wind/index.ts';
import { evenly } from '../evenly.ts';

const direction = evenly(0, 360);

/** East and north part of a speed towards a direction. */
function vector(speed: number, towards_deg: number): [number, number] {
  const angle = (towards_deg * Math.PI) / 180;
  return [speed * Math.sin(angle), speed * Math.cos(angle)];
}

describe('windTriangle', () => {
  it('closes: motion through the air and motion of the air add up to the motion over the ground', () => {
    fc.assert(
      fc.property(direction, evenly(0, 45), direction, evenly(50, 300), (from, speed, track, trueAirspeed) => {
        const { heading, groundSpeed, windCorrectionAngle, drift } = windTriangle({
          from: degTrue(from),
          speed: kt(speed),
          track: degTrue(track),
          trueAirspeed: ktas(trueAirspeed),
        });
        const [airEast, airNorth] = vector(trueAirspeed, heading);
        const [windEast, windNorth] = vector(speed, from + 180);
        const [east, north] = vector(groundSpeed, track);
        expect(airEast + windEast).toBeCloseTo(east, 9);
        expect(airNorth + windNorth).toBeCloseTo(north, 9);
        expect(groundSpeed).toBeGreaterThan(0);
        expect(heading).toBeGreaterThan(0);
        expect(heading).toBeLessThanOrEqual(360);
        expect(drift).toBe(0 - windCorrectionAngle);
        expect(Math.abs(windCorrectionAngle)).toBeLessThan(90);
      }),
    );
  });

  it('steers the track itself in calm, and along a wind', () => {
    const calm = windTriangle({ from: degTrue(0), speed: kt(0), track: degTrue(0), trueAirspeed: ktas(80) });
    expect(calm).toEqual({ windCorrectionAngle: 0, drift: 0, heading: 360, groundSpeed: 80 });
    expect(Object.is(calm.drift, 0)).toBe(true);
    const against = windTriangle({ from: degTrue(90), speed: kt(20), track: degTrue(90), trueAirspeed: ktas(80) });
    expect(against).toEqual({ windCorrectionAngle: 0, drift: 0, heading: 90, groundSpeed: 60 });
  });

  it('points into a wind from the right, and drifts to the left', () => {
    const { windCorrectionAngle, drift, heading } = windTriangle({
      from: degTrue(90),
      speed: kt(40),
      track: degTrue(360),
      trueAirspeed: ktas(80),
    });
    expect(windCorrectionAngle).toBeCloseTo(30, 12);
    expect(drift).toBeCloseTo(-30, 12);
    expect(heading).toBeCloseTo(30, 12);
  });

  it('holds a wind across the track up to the true airspeed, and only with a wind from behind', () => {
    const at = (from: number, speed: number) =>
      windTriangle({ from: degTrue(from), speed: kt(speed), track: degTrue(360), trueAirspeed: ktas(40) });
    expect(at(120, 46).groundSpeed).toBeGreaterThan(0);
    expect(() => at(120, 47)).toThrow(/^trueAirspeed: 40 ktas is inconsistent with 40\.7/);
    expect(() => at(90, 41)).toThrow(/across the track/);
  });

  it.each([40, 60])('refuses a wind of %i kt from ahead that leaves no ground speed of 40 kt', (speed) => {
    const call = () =>
      windTriangle({ from: degTrue(360), speed: kt(speed), track: degTrue(360), trueAirspeed: ktas(40) });
    expect(call).toThrow(
      expect.objectContaining({ detail: expect.objectContaining({ code: 'inconsistent', min: speed, received: 40 }) }),
    );
    expect(call).toThrow(/leaves a ground speed/);
  });

  it.each([
    ['from', { from: -1 }],
    ['from', { from: 361 }],
    ['from', { from: undefined }],
    ['speed', { speed: -0.1 }],
    ['speed', { speed: 201 }],
    ['track', { track: -0.1 }],
    ['track', { track: 360.1 }],
    ['track', { track: Number.NaN }],
    ['trueAirspeed', { trueAirspeed: 9.9 }],
    ['trueAirspeed', { trueAirspeed: 501 }],
    ['trueAirspeed', { trueAirspeed: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => windTriangle({ from: 90, speed: 10, track: 90, trueAirspeed: 80, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
