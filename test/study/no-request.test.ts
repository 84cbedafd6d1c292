import { describe, expect, it } from 'vitest';
import * as study from '../../src/study/index.ts';

type Question = (request: never) => { readonly ok: boolean };

const questions: readonly (readonly [string, Question])[] = [
  ['assessDepartureAndArrival', study.assessDepartureAndArrival],
  ['compareFactorSets', (request) => study.compareFactorSets(request)],
  ['compareRunways', (request) => study.compareRunways(request)],
  ['greatestCrosswind', study.greatestCrosswind],
  ['greatestSurfaceFactor', study.greatestSurfaceFactor],
  ['greatestTailwind', study.greatestTailwind],
  ['highestTemperature', study.highestTemperature],
  ['mostAdverseSurface', (request) => study.mostAdverseSurface(request, [{ kind: 'paved', condition: 'dry' }])],
  ['performanceLimitedMass', study.performanceLimitedMass],
  ['reassessTriggers', study.reassessTriggers],
  [
    'runwayDistanceTable',
    (request) => study.runwayDistanceTable(request, { temperatures: [{ value: 15, unit: 'degC' }] }),
  ],
  ['sensitivities', (request) => study.sensitivities(request)],
  ['sensitivitySeries', (request) => study.sensitivitySeries(request, { input: 'mass' } as never)],
  ['shortestRunway', study.shortestRunway],
  ['tallestObstacle', (request) => study.tallestObstacle(request, 'pines')],
  ['uncertainty', (request) => study.uncertainty(request)],
];

describe('what is no request', () => {
  it.each(questions)('is answered with faults by %s', (_, question) => {
    for (const given of [null, undefined, 5, 'a request', [], {}]) expect(question(given as never).ok).toBe(false);
  });
});
