import { type FactorSet, factorSets, factorsOf } from '../distance/index.ts';
import type { AnyRequest } from './any-request.ts';

/** The factor set of a request as data. */
export function factorSetOf({ factorSet }: Pick<AnyRequest, 'factorSet'>): FactorSet {
  return typeof factorSet === 'string' ? factorSets[factorSet] : factorSet;
}

/** A request that confirms nothing. */
export function withoutConfirmations<R extends AnyRequest>(request: R): R {
  if (request?.policies?.confirmations === undefined) return request;
  const { confirmations: _, ...policies } = request.policies;
  return { ...request, policies };
}

/**
 * A request under another factor set. What it confirms of the other sets in question is none of this one's factors and
 * is left out; a confirmation of no factor at all stays, and is a fault as it was.
 */
export function underFactorSet<R extends AnyRequest>(request: R, set: FactorSet, others: readonly FactorSet[]): R {
  const { policies } = request;
  // What is no list of confirmations is for the reader to refuse.
  if (!Array.isArray(policies?.confirmations)) return { ...request, factorSet: set };
  const own = new Set(idsOf(set));
  const beside = new Set(others.flatMap(idsOf));
  const confirmations = policies.confirmations.filter((each) => own.has(each?.factorId) || !beside.has(each?.factorId));
  return { ...request, factorSet: set, policies: { ...policies, confirmations } };
}

function idsOf({ takeoff, landing }: FactorSet): string[] {
  return [...factorsOf(takeoff), ...factorsOf(landing)].map(({ id }) => id);
}
