import { DomainError, type DomainErrorDetail } from '../units/index.ts';

/** A row without an answer, and why. */
export interface RefusedRow {
  /** From 0. */
  readonly row: number;
  readonly detail: DomainErrorDetail;
}

/** The rows that were refused: how many there are, and the first of them with their reasons. */
export interface RefusedRows {
  readonly count: number;
  /** At most ten. */
  readonly first: readonly RefusedRow[];
}

/** Kept with their reasons; a column that is wrong throughout is understood from these. */
const keptWithReason = 10;

/** Collects refused rows. */
export class Refusals implements RefusedRows {
  count = 0;
  readonly first: RefusedRow[] = [];

  add(row: number, detail: DomainErrorDetail): void {
    this.count += 1;
    if (this.first.length < keptWithReason) this.first.push({ row, detail });
  }

  /** Plain data, as results are. */
  done(): RefusedRows {
    return { count: this.count, first: this.first };
  }
}

/** Goes through the rows; what a formula refuses is noted and its row cleared, so that no old figure stays there. */
export function eachRow(rows: number, evaluate: (row: number) => void, clear: (row: number) => void): RefusedRows {
  const refused = new Refusals();
  for (let row = 0; row < rows; row += 1) {
    try {
      evaluate(row);
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      clear(row);
      refused.add(row, error.detail);
    }
  }
  return refused.done();
}
