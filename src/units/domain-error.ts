/** What was wrong with one parameter; plain data that survives `JSON.stringify`. */
export interface DomainErrorDetail {
  /**
   * `not-a-number`: missing or of another type; `not-finite`: NaN or infinite; `out-of-range`; `unknown-word`: none of the
   * words that the parameter takes; `inconsistent`: against another parameter.
   */
  readonly code: 'not-a-number' | 'not-finite' | 'out-of-range' | 'unknown-word' | 'inconsistent';
  readonly parameter: string;
  /** The value received; one that JSON cannot hold (NaN, Infinity, undefined) as text. */
  readonly received: number | string;
  /** `text` for a word. */
  readonly unit: string;
  /** The lowest value accepted, or `any`; of words the first. */
  readonly min: number | string;
  /** The highest value accepted, or `any`; of words the last. */
  readonly max: number | string;
  /** The words accepted, where the parameter takes words. */
  readonly words?: readonly string[];
  /** Where the bounds come from. */
  readonly source: string;
}

/** Thrown by formulas for an argument outside their domain; recognise it by `detail.code`. */
export class DomainError extends RangeError {
  override readonly name = 'DomainError';
  readonly detail: DomainErrorDetail;

  constructor(detail: DomainErrorDetail) {
    super(`${detail.parameter}: ${problem(detail)} (${detail.source})`);
    this.detail = detail;
  }
}

function problem({ code, received, unit, min, max, words }: DomainErrorDetail): string {
  if (words) return `"${received}" is none of "${words.join('", "')}"`;
  if (min === 'any' && max === 'any') return `${received} is not a finite number`;
  if (code === 'inconsistent') return `${received} ${unit} is inconsistent with ${min} to ${max} ${unit}`;
  const bounds = min === 'any' ? `at most ${max}` : max === 'any' ? `at least ${min}` : `within ${min} to ${max}`;
  return `${received} ${unit} is not ${bounds} ${unit}`;
}
