import type { WindValue } from '../../aircraft/index.ts';
import { type LimitStatus, type Named, named } from '../kernel/criterion.ts';

/** A wind limit in the unit in which it is stated. */
export interface WindLimit {
  readonly value: number;
  readonly unit: 'kt' | 'mph' | 'mps';
  readonly status: 'limitation' | 'demonstrated' | 'personal';
}

/** A limit with the words of the criterion that it makes. */
export interface WindCriterion {
  readonly words: Named;
  readonly value: number;
  readonly unit: WindLimit['unit'];
}

export function crosswindCriterion(unit: WindLimit['unit'], status: LimitStatus): Named {
  return named('crosswind', 'crosswind', 'crosswind in gusts', unit, status);
}

export function tailwindCriterion(unit: WindLimit['unit'], status: LimitStatus): Named {
  return named('tailwind', 'tailwind', 'tailwind used', unit, status);
}

/** The limits of the data, then the pilot's own. */
export function windLimits(
  stated: readonly WindValue[],
  personal: { value: number; unit: 'kt' } | undefined,
): WindLimit[] {
  const limits: WindLimit[] = stated.map(({ speed, status }) => ({ ...speed, status }));
  return personal === undefined ? limits : [...limits, { ...personal, status: 'personal' }];
}

/** The limits that decide: by policy a demonstrated crosswind may only inform. */
export function windCriteriaOf(
  crosswind: readonly WindLimit[],
  tailwind: readonly WindLimit[],
  demonstratedCrosswind: 'limit' | 'information',
): { readonly crosswind: readonly WindCriterion[]; readonly tailwind: readonly WindCriterion[] } {
  return {
    crosswind: crosswind
      .filter(({ status }) => status !== 'demonstrated' || demonstratedCrosswind === 'limit')
      .map(({ value, unit, status }) => ({ words: crosswindCriterion(unit, status), value, unit })),
    tailwind: tailwind.map(({ value, unit, status }) => ({ words: tailwindCriterion(unit, status), value, unit })),
  };
}
