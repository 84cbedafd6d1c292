import { DomainError } from '../units/index.ts';

/** Throws a {@link DomainError} unless `value` is one of the words that a parameter takes. */
export function demandWord(parameter: string, value: unknown, words: readonly string[], source: string): void {
  if (words.includes(value as string)) return;
  throw new DomainError({
    code: 'out-of-range',
    parameter,
    received: String(value),
    unit: parameter,
    min: words[0] ?? '',
    max: words[words.length - 1] ?? '',
    source,
  });
}
