import type { Criterion, Sentence, Verdict } from '../assessment/index.ts';
import { type FactorSet, type FactorSetId, factorSets } from '../distance/index.ts';
import type { ReadResult } from '../documents/index.ts';
import { type AnyRequest, assessAny, readAny } from './any-request.ts';
import { listFaults } from './argument-faults.ts';
import { factorSetOf, underFactorSet, withoutConfirmations } from './factor-set-of-request.ts';

/** One request under one factor set. */
export interface FactorSetRow {
  readonly set: string;
  readonly edition: string;
  readonly scope: string;
  readonly verdict: Verdict;
  /** The distance criterion, with its margin where it is decided and its reasons where it is not. */
  readonly distance: Criterion;
  readonly headline: readonly Sentence[];
}

/**
 * One request under several factor sets, side by side. The sets are alternatives: none is mixed into another, and their
 * order here is no ranking.
 *
 * @param request - a take-off or a landing request; the factor set it names is replaced by each in turn, and of what it
 *   confirms each gets what is its own.
 * @param sets - the sets by their words, or as data; every set of the library if not given.
 * @returns one row for each set, or the faults of the request and of the sets.
 *
 * @example
 * compareFactorSets({ schema: 'groundroll/takeoff-request/1' } as never).ok // => false
 */
export function compareFactorSets(
  request: AnyRequest,
  sets: readonly (FactorSetId | FactorSet)[] = Object.keys(factorSets) as FactorSetId[],
): ReadResult<readonly FactorSetRow[]> {
  const unlisted = listFaults('sets', sets);
  if (unlisted.length > 0) return { ok: false, faults: unlisted };
  const compared: FactorSet[] = [];
  for (const factorSet of sets) {
    const read = readAny(withoutConfirmations({ ...request, factorSet }));
    if (!read.ok) return read;
    compared.push(factorSetOf(read.value));
  }
  const named = readAny(withoutConfirmations(request));
  const all = named.ok ? [factorSetOf(named.value), ...compared] : compared;
  const rows: FactorSetRow[] = [];
  for (const set of compared) {
    const result = assessAny(underFactorSet(request, set, all));
    if (!result.ok) return result;
    const { verdict, criteria, headline } = result.value;
    const distance = criteria.find(({ id }) => id.endsWith('-distance')) as Criterion;
    rows.push({ set: set.title, edition: set.edition, scope: set.scope, verdict, distance, headline });
  }
  return { ok: true, value: rows };
}
