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

describe('what stands beside a request is a list or an object, else a fault', () => {
  const beside = [
    ['runways', compareRunways, 'is not a list', {}],
    ['surfaces', mostAdverseSurface, 'is not a list', {}],
    ['sets', compareFactorSets, 'is not a list', {}],
    ['changes', sensitivities, 'is not an object', []],
    ['along', sensitivitySeries, 'is not an object', []],
    ['options', uncertainty, 'is not an object', []],
  ] as const;

  it.each(beside)('%s', (path, question, message, other) => {
    for (const given of [null, 5, 'grass', other]) {
      expect(faultsOf(question(request, given as never))).toEqual([{ path, message }]);
    }
  });

  it.each(beside.slice(0, 3))('a list of %s has entries', (path, question) => {
    expect(faultsOf(question(request, [] as never))).toEqual([{ path, message: 'is empty' }]);
  });

  it('has objects for uncertain inputs too', () => {
    const inputs = null as never;
    expect(faultsOf(uncertainty(request, { inputs }))).toEqual([
      { path: 'options.inputs', message: 'is not an object' },
    ]);
  });
});
