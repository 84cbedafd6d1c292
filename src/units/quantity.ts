import { DomainError } from './domain-error.ts';
import type { Quantity, Untagged } from './tag.ts';

/** Gives a bare finite number its tag, unchanged; NaN, infinities and other types are refused. */
export function tagged<U extends string>(value: Untagged, unit: U): Quantity<U> {
  if (!Number.isFinite(value)) {
    throw new DomainError({
      code: typeof value === 'number' ? 'not-finite' : 'not-a-number',
      parameter: unit,
      received: String(value),
      unit,
      min: 'any',
      max: 'any',
      source: 'every quantity is one',
    });
  }
  return value as unknown as Quantity<U>;
}
