import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { latestLiftOff, latestTouchdownPoint } from '../../src/distance/index.ts';
import { DomainError, m } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const distance = evenly(0, 20000).map(m);

describe('latestLiftOff', () => {
  it('leaves just the airborne distance', () => {
    fc.assert(
      fc.property(distance, distance, (distanceAvailable, airborneDistance) => {
        const point: number = latestLiftOff({ distanceAvailable, airborneDistance });
        expect(point + airborneDistance).toBeCloseTo(distanceAvailable, 8);
      }),
    );
  });

  it('is negative when the airborne distance alone is too long', () => {
    expect(latestLiftOff({ distanceAvailable: m(200), airborneDistance: m(240) })).toBe(-40);
  });

  it.each([
    ['distanceAvailable', { distanceAvailable: -0.1, airborneDistance: 240 }],
    ['distanceAvailable', { distanceAvailable: 20000.1, airborneDistance: 240 }],
    ['distanceAvailable', { airborneDistance: 240 }],
    ['airborneDistance', { distanceAvailable: 700, airborneDistance: -0.1 }],
    ['airborneDistance', { distanceAvailable: 700, airborneDistance: 20000.1 }],
    ['airborneDistance', { distanceAvailable: 700, airborneDistance: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => latestLiftOff(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('latestTouchdownPoint', () => {
  it('leaves just the roll with its increments', () => {
    fc.assert(
      fc.property(distance, distance, distance, (distanceAvailable, groundRoll, increments) => {
        const point: number = latestTouchdownPoint({ distanceAvailable, groundRoll, increments });
        expect(point + groundRoll + increments).toBeCloseTo(distanceAvailable, 8);
      }),
    );
  });

  it('is negative when the roll alone is too long', () => {
    expect(latestTouchdownPoint({ distanceAvailable: m(250), groundRoll: m(220), increments: m(80) })).toBe(-50);
  });

  it.each([
    ['distanceAvailable', { distanceAvailable: -0.1, groundRoll: 220, increments: 80 }],
    ['distanceAvailable', { distanceAvailable: 20000.1, groundRoll: 220, increments: 80 }],
    ['groundRoll', { distanceAvailable: 650, groundRoll: -0.1, increments: 80 }],
    ['groundRoll', { distanceAvailable: 650, groundRoll: 20000.1, increments: 80 }],
    ['groundRoll', { distanceAvailable: 650, increments: 80 }],
    ['increments', { distanceAvailable: 650, groundRoll: 220, increments: -0.1 }],
    ['increments', { distanceAvailable: 650, groundRoll: 220, increments: 20000.1 }],
    ['increments', { distanceAvailable: 650, groundRoll: 220, increments: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => latestTouchdownPoint(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
