import type { Comparison } from '../assessment/index.ts';
import { type AnyRequest, prepareAny, weatherOf } from './any-request.ts';
import { inUnit, type StudyInput } from './inputs/study-input.ts';

const unreadable: Comparison = { verdict: 'undetermined', criteria: [] };

/**
 * Every criterion with one input at any value, by the same computation as the full assessment. A request that can no
 * longer be read with that value has no criteria and is undetermined.
 */
export function comparisonsOf(request: AnyRequest, input: StudyInput): (value: number) => Comparison {
  if (input.changes === 'request') {
    return (value) => {
      const changed = input.at(value);
      const prepared = prepareAny(changed);
      return prepared.ok ? prepared.value.compare(weatherOf(changed)) : unreadable;
    };
  }
  const prepared = prepareAny(request);
  if (!prepared.ok) return () => unreadable;
  const weather = weatherOf(request);
  if (input.changes === 'mass')
    return (value) => prepared.value.compare(weather, { mass_kg: inUnit({ value, unit: input.unit }, 'kg') });
  return (value) => prepared.value.compare(weatherOf(input.at(value)));
}
