/** What was wrong with one parameter; plain data that survives `JSON.stringify`. */
export interface DomainErrorDetail {
  /** `not-a-number`: missing or of another type; `not-finite`: NaN or infinite; `out-of-range`; `inconsistent`: against another parameter. */
  readonly code: 'not-a-number' | 'not-finite' | 'out-of-range' | 'inconsistent';
  readonly parameter: string;
  /** The value received; one that JSON cannot hold (NaN, Infinity, undefined) as text. */
  readonly received: number | string;
  readonly unit: string;
  readonly min: number | string;
  readonly max: number | string;
  /** Where the bounds come from. */
  readonly source: string;
}

/** Thrown by formulas for an argument outside their domain; recognise it by `detail.code`. */
export class DomainError extends RangeError {
  override readonly name = 'DomainError';
  readonly detail: DomainErrorDetail;

  constructor(detail: DomainErrorDetail) {
    const { code, parameter, received, unit, min, max, source } = detail;
    const problem = code === 'inconsistent' ? 'is inconsistent with' : 'is not within';
    super(`${parameter}: ${received} ${unit} ${problem} ${min} to ${max} ${unit} (${source})`);
    this.detail = detail;
  }
}
