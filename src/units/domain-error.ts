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

  /** @param inWords - the problem, where it is not that of a number and its bounds. */
  constructor(detail: DomainErrorDetail, inWords?: string) {
    const { code, parameter, received, unit, min, max, source } = detail;
    const problem = code === 'inconsistent' ? 'is inconsistent with' : 'is not within';
    super(`${parameter}: ${inWords ?? `${received} ${unit} ${problem} ${min} to ${max} ${unit}`} (${source})`);
    this.detail = detail;
  }
}

/**
 * The refusal of a value that another one contradicts, though each is within its range: the bounds are what the other
 * leaves.
 *
 * @example
 * inconsistent('gust', 5, 'kt', 9, 200, 'a gust is not below the mean speed').detail.code // => 'inconsistent'
 */
export function inconsistent(
  parameter: string,
  received: number | string,
  unit: string,
  min: number | string,
  max: number | string,
  source: string,
): DomainError {
  return new DomainError({ code: 'inconsistent', parameter, received, unit, min, max, source });
}
