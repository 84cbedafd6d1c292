import { describe, expect, it } from 'vitest';
import {
  assessDepartureAndArrival,
  compareFactorSets,
  compareRunways,
  greatestCrosswind,
  greatestSurfaceFactor,
  greatestTailwind,
  highestTemperature,
  mostAdverseSurface,
  performanceLimitedMass,
  reassessTriggers,
  runwayDistanceTable,
  sensitivities,
  sensitivitySeries,
  shortestRunway,
  tallestObstacle,
  uncertainty,
} from '../../src/study/index.ts';

type Question = (request: never) => { readonly ok: boolean };

const questions: readonly (readonly [string, Question])[] = [
  ['assessDepartureAndArrival', assessDepartureAndArrival],
  ['compareFactorSets', (request) => compareFactorSets(request)],
  ['compareRunways', (request) => compareRunways(request)],
  ['greatestCrosswind', greatestCrosswind],
  ['greatestSurfaceFactor', greatestSurfaceFactor],
  ['greatestTailwind', greatestTailwind],
  ['highestTemperature', highestTemperature],
  ['mostAdverseSurface', (request) => mostAdverseSurface(request, [{ kind: 'paved', condition: 'dry' }])],
  ['performanceLimitedMass', performanceLimitedMass],
  ['reassessTriggers', reassessTriggers],
  ['runwayDistanceTable', (request) => runwayDistanceTable(request, { temperatures: [{ value: 15, unit: 'degC' }] })],
  ['sensitivities', (request) => sensitivities(request)],
  ['sensitivitySeries', (request) => sensitivitySeries(request, { input: 'mass' } as never)],
  ['shortestRunway', shortestRunway],
  ['tallestObstacle', (request) => tallestObstacle(request, 'pines')],
  ['uncertainty', (request) => uncertainty(request)],
];

describe('what is no request', () => {
  it.each(questions)('is answered with faults by %s', (_, question) => {
    for (const given of [null, undefined, 5, 'a request', [], {}]) expect(question(given as never).ok).toBe(false);
  });
});
