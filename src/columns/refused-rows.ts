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

/** Refused rows while they are being found. */
export interface RefusalsFound extends RefusedRows {
  count: number;
  readonly first: RefusedRow[];
}

/** No row refused so far. */
export function noRefusals(): RefusalsFound {
  return { count: 0, first: [] };
}

/** Notes a refused row. */
export function noteRefusal(found: RefusalsFound, row: number, detail: DomainErrorDetail): void {
  found.count += 1;
  if (found.first.length < keptWithReason) found.first.push({ row, detail });
}

/** Goes through the rows; what a formula refuses is noted and its row cleared, so that no old figure stays there. */
export function eachRow(rows: number, evaluate: (row: number) => void, clear: (row: number) => void): RefusedRows {
  const refused = noRefusals();
  for (let row = 0; row < rows; row += 1) {
    try {
      evaluate(row);
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      clear(row);
      noteRefusal(refused, row, error.detail);
    }
  }
  return refused;
}
