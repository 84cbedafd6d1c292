import { DomainError } from './domain-error.ts';
import type { Quantity, Untagged } from './tag.ts';

/** Gives a bare finite number its tag, unchanged; NaN, infinities and other types are refused. */
export function tagged<U extends string>(value: Untagged, unit: U): Quantity<U> {
  if (!Number.isFinite(value)) {
    const code = typeof value === 'number' ? 'not-finite' : 'not-a-number';
    const received = String(value);
    throw new DomainError(
      { code, parameter: unit, received, unit, min: 'any', max: 'any', source: 'every quantity is one' },
      `${received} is not a finite number`,
    );
  }
  return value as unknown as Quantity<U>;
}
