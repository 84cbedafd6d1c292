import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AnyRequest } from '../../src/study/any-request.ts';
import { highestTemperature, performanceLimitedMass, type SolvedLimit } from '../../src/study/index.ts';
import { landingRequest, takeoffRequest } from '../assessment/scenario.ts';
import { evenly } from '../evenly.ts';
import { aeroplanes, landingOf, lightWind, takeoffOf } from './aeroplanes.ts';
import { agrees, assessedAt, limitNames, limits, solvedOf } from './limits.ts';

describe('solving and assessing at the solution agree', () => {
  const sets = ['easa-class-b', 'uk-light-aeroplane-leaflet', 'faa-handbook', 'part-nco'] as const;

  it.each(aeroplanes.flatMap((aeroplane) => sets.map((set) => [aeroplane, set] as const)))(
    '%s under %s, take-off and landing',
    (aeroplane, factorSet) => {
      // On pavement, where every set has a figure; the leaflet's safety factors are second-hand, not recalled.
      const changes = {
        ...lightWind,
        factorSet,
        'runway.surface': { kind: 'paved', condition: 'dry' },
        'runway.obstacles': [],
      };
      const found = [takeoffOf(aeroplane, changes), landingOf(aeroplane, changes)].flatMap((request) =>
        limitNames.map((name) => agrees(request, name).answer),
      );
      // Not the ends of the ranges alone.
      expect(found.filter((answer) => answer === 'value').length).toBeGreaterThanOrEqual(3);
    },
  );

  it('on grass over trees, whatever the day', () => {
    const anyRequest = fc
      .record({
        which: fc.constantFrom('takeoff-28', 'takeoff-10', 'landing-10', 'landing-28'),
        'mass.value': fc.integer({ min: 860, max: 1040 }),
        'weather.temperature.value': fc.integer({ min: 16, max: 38 }),
        'weather.qnh.value': fc.integer({ min: 990, max: 1030 }),
        'weather.wind.from.value': fc.integer({ min: 1, max: 36 }).map((tens) => tens * 10),
        'runway.length.value': fc.constantFrom(830, 1000),
      })
      .map(({ which, ...changes }) =>
        which.startsWith('takeoff') ? takeoffRequest(which, changes) : landingRequest(which, changes),
      );
    fc.assert(
      fc.property(anyRequest, fc.constantFrom(...limitNames), (request, name) => {
        agrees(request, name);
      }),
      { numRuns: 60 },
    );
  });
});

describe('monotonicity', () => {
  const spread = evenly(0, 1);

  it('everything from the favourable end to the solved value is within, and nothing beyond it', () => {
    const requests = [takeoffRequest('takeoff-28'), landingRequest('landing-10'), takeoffOf('linnet-two', lightWind)];
    const solved = requests.map(
      (request) => new Map(limitNames.map((name) => [name, solvedOf(limits[name].solve(request))])),
    );
    fc.assert(
      fc.property(fc.nat(requests.length - 1), fc.constantFrom(...limitNames), spread, (i, name, share) => {
        const limit = solved[i]?.get(name) as SolvedLimit;
        if (limit.value === undefined) return;
        const { from, to } = limit.range;
        const inside = from.value + (limit.value.value - from.value) * share;
        const outside = limit.value.value + (to.value - limit.value.value) * share;
        const request = requests[i] as AnyRequest;
        expect(assessedAt(request, name, inside)).toBe('within');
        if (Math.abs(outside - limit.value.value) >= limit.tolerance)
          expect(assessedAt(request, name, outside)).not.toBe('within');
      }),
      { numRuns: 120 },
    );
  });

  it('a heavier aeroplane takes no higher temperature, and warmer air no greater mass', () => {
    const temperature = (kg: number) =>
      solvedOf(highestTemperature(takeoffRequest('takeoff-28', { 'mass.value': kg }))).value?.value ?? -40;
    const mass = (degC: number) =>
      solvedOf(performanceLimitedMass(takeoffRequest('takeoff-28', { 'weather.temperature.value': degC }))).value
        ?.value ?? 0;
    fc.assert(
      fc.property(fc.integer({ min: 941, max: 1010 }), fc.integer({ min: 1, max: 30 }), (kg, more) => {
        expect(temperature(kg + more)).toBeLessThanOrEqual(temperature(kg));
      }),
      { numRuns: 15 },
    );
    fc.assert(
      fc.property(fc.integer({ min: 16, max: 30 }), fc.integer({ min: 1, max: 9 }), (degC, more) => {
        expect(mass(degC + more)).toBeLessThanOrEqual(mass(degC));
      }),
      { numRuns: 15 },
    );
  });
});
