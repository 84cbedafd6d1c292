import type { Measure } from '../units/index.ts';
import type { Citation } from './citation.ts';

/** An expected figure in the unit in which it is printed, with the most that ours may differ from it. */
export interface ExpectedMeasure extends Measure {
  readonly tolerance: number;
}

/** One published result that a formula must reproduce. */
export interface CheckValue {
  /** Unique within its file. */
  readonly id: string;
  /** The id of the formula record. */
  readonly record: string;
  /** As printed; anything but a quantity (a text, a list of factors) stands as it is. */
  readonly inputs: Readonly<Record<string, unknown>>;
  /** By the name of the output; `result` for a formula that returns one quantity. */
  readonly expected: Readonly<Record<string, ExpectedMeasure | string>>;
  readonly toleranceFrom: 'half-last-digit' | 'stated-by-source' | 'round-off' | 'chart-reading';
  readonly origin:
    | 'printed-table'
    | 'worked-example'
    | 'official-test-values'
    | 'independent-program'
    | 'definition'
    | 'common-practice';
  readonly citation: Citation;
  readonly note?: string;
}

/** A file of check values. */
export interface CheckValueFile {
  readonly schema: 'groundroll/check-values/1';
  readonly checkValues: readonly CheckValue[];
}
