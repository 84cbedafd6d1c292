import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  altitudeRestrictionGradient,
  procedureClimbGradientCivil,
  procedureClimbGradientMilitary,
  procedureDesignGradient,
  procedureGradientRoundedUp,
  standardProcedureGradients,
} from '../../src/flight-path/index.ts';
import { DomainError, ftElevation, ftPerNM, m, mHeight, NM } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const situation = fc.record({
  obstacleTop: evenly(0, 14000).map(ftElevation),
  startElevation: evenly(-1000, 8000).map(ftElevation),
  distance: evenly(0.5, 50).map(NM),
});

describe('the gradients of instrument departures of the United States', () => {
  it('leave 24 % of the gradient over the obstacle in civil use, 48 ft for each mile in military use', () => {
    fc.assert(
      fc.property(situation, (x) => {
        const rise = x.obstacleTop - x.startElevation;
        const civil = procedureClimbGradientCivil(x) * x.distance;
        const military = procedureClimbGradientMilitary(x) * x.distance;
        expect(civil - rise).toBeCloseTo(0.24 * civil, 6);
        expect(military - rise).toBeCloseTo(48 * x.distance, 6);
      }),
    );
  });

  it('ask more in civil than in military use above the standard gradient, and less below it', () => {
    const at = (top: number) => ({
      obstacleTop: ftElevation(top),
      startElevation: ftElevation(1000),
      distance: NM(10),
    });
    const difference = (top: number) => procedureClimbGradientCivil(at(top)) - procedureClimbGradientMilitary(at(top));
    expect(difference(2520)).toBeCloseTo(0, 9);
    expect(difference(2600)).toBeGreaterThan(0);
    expect(difference(2400)).toBeLessThan(0);
  });

  it('give the published figures of the worked example from its inputs, rounded up to a whole foot', () => {
    const x = { obstacleTop: ftElevation(2049), startElevation: ftElevation(1221), distance: NM(3.1) };
    const step = ftPerNM(1);
    expect(procedureGradientRoundedUp({ gradient: procedureClimbGradientCivil(x), step })).toBe(352);
    expect(procedureGradientRoundedUp({ gradient: procedureClimbGradientMilitary(x), step })).toBe(316);
  });

  it('give the published figure of the draft order from its inputs, rounded up to the next 20 ft/NM', () => {
    const gradient = altitudeRestrictionGradient({
      altitude: ftElevation(8000),
      startElevation: ftElevation(1200),
      distance: NM(12),
    });
    expect(procedureGradientRoundedUp({ gradient, step: ftPerNM(20) })).toBe(580);
    expect(procedureGradientRoundedUp({ gradient, step: ftPerNM(1) })).toBe(567);
  });

  it('reach the altitude asked for', () => {
    fc.assert(
      fc.property(situation, ({ obstacleTop: altitude, startElevation, distance }) => {
        const gradient: number = altitudeRestrictionGradient({ altitude, startElevation, distance });
        expect(startElevation + gradient * distance).toBeCloseTo(altitude, 7);
      }),
    );
  });

  it.each([
    ['obstacleTop', { obstacleTop: -2000.1 }],
    ['obstacleTop', { obstacleTop: 30000.1 }],
    ['obstacleTop', { obstacleTop: undefined }],
    ['startElevation', { startElevation: -2000.1 }],
    ['startElevation', { startElevation: 15000.1 }],
    ['distance', { distance: 0 }],
    ['distance', { distance: 0.009 }],
    ['distance', { distance: 100.1 }],
    ['distance', { distance: Number.NaN }],
  ])('refuse a bad %s and name it', (parameter, inputs) => {
    const x = { obstacleTop: 2000, startElevation: 1000, distance: 3, ...inputs };
    for (const formula of [procedureClimbGradientCivil, procedureClimbGradientMilitary]) {
      expect(() => formula(x as never)).toThrow(DomainError);
      expect(() => formula(x as never)).toThrow(new RegExp(`^${parameter}: `));
    }
  });

  it.each([
    ['altitude', { altitude: -2000.1 }],
    ['altitude', { altitude: 50000.1 }],
    ['altitude', { altitude: undefined }],
    ['startElevation', { startElevation: -2000.1 }],
    ['startElevation', { startElevation: 15000.1 }],
    ['distance', { distance: 0.009 }],
    ['distance', { distance: 100.1 }],
  ])('refuse a bad %s of a restriction and name it', (parameter, inputs) => {
    const call = () =>
      altitudeRestrictionGradient({ altitude: 8000, startElevation: 1000, distance: 3, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('procedureGradientRoundedUp', () => {
  it('is never below the gradient, nor a whole step above it', () => {
    fc.assert(
      fc.property(evenly(-500, 2000), fc.constantFrom(1, 20), (gradient, step) => {
        const rounded: number = procedureGradientRoundedUp({ gradient: ftPerNM(gradient), step: ftPerNM(step) });
        expect(rounded - gradient).toBeGreaterThanOrEqual(-1e-7);
        expect(rounded - gradient).toBeLessThan(step);
        expect(Math.abs(rounded % step)).toBe(0);
      }),
    );
  });

  it.each([
    ['gradient', { gradient: -6000.1 }],
    ['gradient', { gradient: 12000.1 }],
    ['gradient', { gradient: Number.NaN }],
    ['step', { step: 0.9 }],
    ['step', { step: 100.1 }],
    ['step', { step: undefined }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => procedureGradientRoundedUp({ gradient: 351.4, step: 1, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('procedureDesignGradient', () => {
  it('passes the obstacle with 0.8 % of its distance, from 5 m over the end of the runway', () => {
    fc.assert(
      fc.property(evenly(0, 2000), evenly(100, 50000), (height, distance) => {
        const gradient: number = procedureDesignGradient({ obstacleHeight: mHeight(height), distance: m(distance) });
        expect(5 + gradient * distance - height).toBeCloseTo(0.008 * distance, 6);
      }),
    );
  });

  it.each([
    ['obstacleHeight', { obstacleHeight: -1000.1 }],
    ['obstacleHeight', { obstacleHeight: 9000.1 }],
    ['obstacleHeight', { obstacleHeight: undefined }],
    ['distance', { distance: 9.9 }],
    ['distance', { distance: 200000.1 }],
    ['distance', { distance: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => procedureDesignGradient({ obstacleHeight: 100, distance: 2500, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('standardProcedureGradients', () => {
  it('are those of the United States and of the ICAO', () => {
    const figures = standardProcedureGradients.map(({ id, gradient, access }) => [
      id,
      gradient.value,
      gradient.unit,
      access,
    ]);
    expect(figures).toEqual([
      ['united-states', 200, 'ftPerNM', 'read'],
      ['icao', 3.3, 'percent', 'read'],
      ['icao-helicopters', 5, 'percent', 'read'],
    ]);
  });
});
