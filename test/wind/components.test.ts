import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, degTrue, kt } from '../../src/units/index.ts';
import { windComponents } from '../../src/wind/index.ts';
import { evenly } from '../evenly.ts';

const direction = evenly(0, 360).map(degTrue);
const speed = evenly(0, 200).map(kt);

describe('windComponents', () => {
  it('keeps the whole wind: the components are the sides of a right triangle', () => {
    fc.assert(
      fc.property(direction, speed, direction, (from, wind, runway) => {
        const { headwind, crosswind } = windComponents({ from, speed: wind, direction: runway });
        expect(Math.hypot(headwind, crosswind)).toBeCloseTo(wind, 9);
      }),
    );
  });

  it('changes both signs when the runway is used the other way', () => {
    const onRunway = windComponents({ from: degTrue(190), speed: kt(7), direction: degTrue(112) });
    const onReciprocal = windComponents({ from: degTrue(190), speed: kt(7), direction: degTrue(292) });
    expect(onReciprocal.headwind).toBeCloseTo(-onRunway.headwind, 12);
    expect(onReciprocal.crosswind).toBeCloseTo(-onRunway.crosswind, 12);
  });

  it('counts a crosswind from the right positive', () => {
    expect(windComponents({ from: degTrue(90), speed: kt(10), direction: degTrue(360) }).crosswind).toBeCloseTo(10, 12);
  });

  it.each([
    ['from', { from: -1, speed: 10, direction: 90 }],
    ['from', { from: 361, speed: 10, direction: 90 }],
    ['speed', { from: 90, speed: -0.1, direction: 90 }],
    ['speed', { from: 90, speed: 201, direction: 90 }],
    ['direction', { from: 90, speed: 10, direction: 360.5 }],
    ['direction', { from: 90, speed: 10, direction: Number.NaN }],
    ['speed', { from: 90, speed: Number.POSITIVE_INFINITY, direction: 90 }],
    ['from', { speed: 10, direction: 90 }],
    ['from', { from: '90', speed: 10, direction: 90 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => windComponents(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
