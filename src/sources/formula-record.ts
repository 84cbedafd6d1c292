import type { Domain, Quantity, UnitWord } from '../units/index.ts';
import type { Citation } from './citation.ts';

/** Any formula: one object of named inputs, one result. */
// biome-ignore lint/suspicious/noExplicitAny: a formula of any inputs must be assignable
export type Formula = (inputs: any) => unknown;

type InputsOf<F extends Formula> = Parameters<F>[0];

/** What stands for one input in the equation. */
export interface InputSymbol {
  /** TeX, as it appears in the equation. */
  readonly symbol: string;
  readonly meaning: string;
}

/** What stands for one result. */
export interface OutputSymbol<U extends string = string> extends InputSymbol {
  readonly unit: U;
}

type UnitWordOf<Q> = Q extends Quantity<infer U> ? (U extends UnitWord ? U : never) : UnitWord | 'text' | 'data';

type OutputsOf<R> = R extends number
  ? { readonly result: OutputSymbol<UnitWordOf<R>> }
  : { readonly [K in keyof R]?: OutputSymbol<UnitWordOf<NonNullable<R[K]>>> };

/**
 * Everything a reviewer needs about one formula. The record holds the function it describes, so that a missing
 * symbol, a wrong unit word, a foreign domain or a missing citation does not compile.
 */
export interface FormulaRecord<F extends Formula = Formula> {
  /** `folder.name`; assessments note this and nothing else of a record. */
  readonly id: string;
  readonly title: string;
  /** TeX. */
  readonly equation: string;
  readonly formula: F;
  readonly domain: Formula extends F
    ? Readonly<Record<string, { unit: string; min: number; max: number; source: string }>>
    : Domain<InputsOf<F>>;
  readonly inputs: Formula extends F
    ? Readonly<Record<string, InputSymbol>>
    : { readonly [K in keyof InputsOf<F>]-?: InputSymbol };
  readonly outputs: Formula extends F ? Readonly<Record<string, OutputSymbol>> : OutputsOf<ReturnType<F>>;
  readonly citations: readonly [Citation, ...Citation[]];
  /** Whether the equation holds in any consistent set of units; tested by rescaling the base units. */
  readonly homogeneous: boolean;
  readonly checkValues: 'published' | { readonly nonePublished: string };
}
