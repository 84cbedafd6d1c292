import type { Source } from './bibliography.ts';
import type { CheckValue } from './check-value.ts';
import type { Citation } from './citation.ts';
import type { InputSymbol } from './formula-record.ts';

/** A unit word: (value + offset) x scale is the value in the base unit of its kind, whose scale is 1. */
export interface UnitDescription {
  /** Two kinds never convert into each other: a height is no elevation, an indicated airspeed no true one. */
  readonly kind: string;
  readonly scale: number;
  readonly offset?: number;
  /** Values this far apart are the same: figures in this unit are compared around the circle. */
  readonly circle?: number;
}

/** One input of a formula; a quantity has a unit and bounds, anything else has neither. */
export interface InputDescription extends InputSymbol {
  /** The unit in which the formula works; `deg` for a direction that may be true or magnetic. */
  readonly unit?: string;
  readonly min?: number;
  readonly max?: number;
  /** Where the bounds come from. */
  readonly bounds?: string;
}

/** One result of a formula. */
export interface OutputDescription extends InputSymbol {
  /** A unit word, `text`, or `data` for a result in the unit of the formula's own data. */
  readonly unit: string;
}

/** What another implementation needs to know of one formula: a record without its function. */
export interface FormulaDescription {
  readonly id: string;
  readonly title: string;
  /** TeX. */
  readonly equation: string;
  readonly inputs: Readonly<Record<string, InputDescription>>;
  readonly outputs: Readonly<Record<string, OutputDescription>>;
  readonly citations: readonly Citation[];
  /** Whether the equation holds in any consistent set of units. */
  readonly homogeneous: boolean;
  /** Why no figures were found that someone else published; absent where there are check values. */
  readonly nonePublished?: string;
}

/** All published check values with everything that they name, so that any implementation can test itself. */
export interface CheckValueCollection {
  readonly schema: 'groundroll/check-values/2';
  /** The version of the library that they came with. */
  readonly version: string;
  /** By the word that stands beside a value. */
  readonly units: Readonly<Record<string, UnitDescription>>;
  /** By the key that a citation names. */
  readonly sources: Readonly<Record<string, Source>>;
  readonly formulas: readonly FormulaDescription[];
  readonly checkValues: readonly CheckValue[];
}
