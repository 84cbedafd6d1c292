import { type FactorSet, factorInWords, factorsOf } from '../../distance/index.ts';
import type { Reason } from '../result/reason.ts';
import type { Confirmation } from './policies.ts';

/** The factors of one phase that the library only recalls and nobody has confirmed, by their ids: what rests on one has no verdict. */
export function unconfirmedFactors(
  set: FactorSet,
  phase: 'takeoff' | 'landing',
  confirmations: readonly Confirmation[],
): ReadonlyMap<string, Reason> {
  const confirmed = new Set(confirmations.map(({ factorId }) => factorId));
  const open = factorsOf(set[phase]).filter(({ id, access }) => access === 'recalled' && !confirmed.has(id));
  return new Map(
    open.map((factor) => {
      const parameters = { factorId: factor.id, factor: factorInWords(factor), edition: set.edition };
      return [factor.id, { code: 'recalled-factor', parameters }];
    }),
  );
}
