import { type FactorSet, factorSets, factorsOf } from '../distance/index.ts';
import type { AnyRequest } from './any-request.ts';

/** The factor set of a request as data. */
export function factorSetOf({ factorSet }: Pick<AnyRequest, 'factorSet'>): FactorSet {
  return typeof factorSet === 'string' ? factorSets[factorSet] : factorSet;
}

/**
 * A request under another factor set. What it confirms of the other sets in question is none of this one's factors and
 * is left out; a confirmation of no factor at all stays, and is a fault as it was.
 */
export function underFactorSet<R extends AnyRequest>(
  request: R,
  factorSet: R['factorSet'],
  others: readonly R['factorSet'][],
): R {
  const { policies } = request;
  if (policies?.confirmations === undefined) return { ...request, factorSet };
  const own = idsOf(factorSet);
  const beside = new Set(others.flatMap((each) => [...idsOf(each)]));
  const confirmations = policies.confirmations.filter(({ factorId }) => own.has(factorId) || !beside.has(factorId));
  return { ...request, factorSet, policies: { ...policies, confirmations } };
}

function idsOf(factorSet: AnyRequest['factorSet']): ReadonlySet<string> {
  const { takeoff, landing } = factorSetOf({ factorSet });
  return new Set([...factorsOf(takeoff), ...factorsOf(landing)].map(({ id }) => id));
}
