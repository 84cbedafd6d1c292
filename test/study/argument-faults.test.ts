import { describe, expect, it } from 'vitest';
import {
  compareFactorSets,
  compareRunways,
  mostAdverseSurface,
  sensitivities,
  sensitivitySeries,
  uncertainty,
} from '../../src/study/index.ts';
import { takeoffRequest } from '../assessment/scenario.ts';

const request = takeoffRequest('takeoff-28');
const faultsOf = (result: { readonly ok: boolean; readonly faults?: unknown }) => (result.ok ? [] : result.faults);

describe('what stands beside a request', () => {
  const lists = [
    ['runways', compareRunways],
    ['surfaces', mostAdverseSurface],
    ['sets', compareFactorSets],
  ] as const;

  it.each(lists)('%s are a list with entries, else a fault', (path, question) => {
    const faults = (given: unknown) => faultsOf(question(request, given as never));
    for (const given of [null, 5, 'grass', {}]) expect(faults(given)).toEqual([{ path, message: 'is not a list' }]);
    expect(faults([])).toEqual([{ path, message: 'is empty' }]);
  });

  const objects = [
    ['changes', sensitivities],
    ['along', sensitivitySeries],
    ['options', uncertainty],
  ] as const;

  it.each(objects)('%s are an object, else a fault', (path, question) => {
    const faults = (given: unknown) => faultsOf(question(request, given as never));
    for (const given of [null, 5, 'mass', []]) expect(faults(given)).toEqual([{ path, message: 'is not an object' }]);
  });

  it('has objects for uncertain inputs too', () => {
    const inputs = null as never;
    expect(faultsOf(uncertainty(request, { inputs }))).toEqual([
      { path: 'options.inputs', message: 'is not an object' },
    ]);
  });
});
