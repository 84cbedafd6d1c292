import { DomainError, type DomainErrorDetail, inconsistent } from './domain-error.ts';
import type { Tag, UnitOf } from './tag.ts';

/** The range in which a parameter is accepted, both ends included, and where that range comes from. */
export interface Bound<U extends string = string> {
  readonly unit: U;
  readonly min: number;
  readonly max: number;
  readonly source: string;
}

/** A direction that may be true or magnetic is bounded in plain degrees; the type holds its reference. */
type BoundUnit<U extends string> = 'degTrue' | 'degMagnetic' extends U ? 'deg' : U;

type QuantityKeys<I> = { [K in keyof I]-?: NonNullable<I[K]> extends Tag<string> ? K : never }[keyof I];

/** One bound for every quantity among the inputs `I`; ties a formula's run-time check to its types by `satisfies`. */
export type Domain<I> = { readonly [K in QuantityKeys<I>]: Bound<BoundUnit<UnitOf<NonNullable<I[K]>>>> };

/**
 * Throws a {@link DomainError} unless `value` is a number within `bound`.
 *
 * @example
 * demand('speed', 201, { unit: 'kt', min: 0, max: 200, source: 'library range' }) // throws speed: 201 kt is not within 0 to 200 kt (library range)
 */
export function demand(parameter: string, value: number, bound: Bound): void {
  if (typeof value !== 'number' || !(value >= bound.min && value <= bound.max)) {
    throw refused(parameter, value, bound);
  }
}

/**
 * Throws a {@link DomainError} unless `value` is a whole number within `bound`.
 *
 * @example
 * demandWhole('cases', 0.5, { unit: 'cases', min: 0, max: 9, source: 'library range' }) // throws cases: 0.5 cases is inconsistent with 0 to 9 cases (a whole number)
 */
export function demandWhole(parameter: string, value: number, bound: Bound): void {
  demand(parameter, value, bound);
  if (!Number.isInteger(value))
    throw inconsistent(parameter, value, bound.unit, bound.min, bound.max, 'a whole number');
}

/**
 * Throws a {@link DomainError} unless `values` is a list of numbers within `bound`; one is named by its place.
 *
 * @example
 * demandEach('factors', [1.15, -1], { unit: 'ratio', min: 1, max: 10, source: 'library range' }) // throws factors[1]: -1 ratio
 */
export function demandEach(parameter: string, values: readonly number[], bound: Bound): void {
  if (!Array.isArray(values)) throw new DomainError(refusal(parameter, String(values), bound));
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i];
    // The name is built only when it is needed.
    if (typeof value !== 'number' || !(value >= bound.min && value <= bound.max)) {
      throw refused(`${parameter}[${i}]`, value, bound);
    }
  }
}

/**
 * Throws a {@link DomainError} unless `value` is one of the words that a parameter takes.
 *
 * @example
 * demandWord('circuit', 'up', ['left', 'right'], 'the side that the turns are flown to') // throws circuit: "up" is none of "left", "right"
 */
export function demandWord(parameter: string, value: unknown, words: readonly string[], source: string): void {
  for (let i = 0; i < words.length; i += 1) if (words[i] === value) return;
  const [min = ''] = words;
  const max = words[words.length - 1] ?? min;
  const received = String(value);
  throw new DomainError(
    { code: 'unknown-word', parameter, received, unit: 'text', min, max, words, source },
    `"${received}" is none of "${words.join('", "')}"`,
  );
}

/**
 * Throws a {@link DomainError} unless `given` is an object.
 *
 * @example
 * demandObject('pressure', null) // throws pressure: null object is inconsistent
 */
export function demandObject(parameter: string, given: unknown): void {
  if (typeof given !== 'object' || given === null)
    throw inconsistent(parameter, String(given), 'object', 'any', 'any', 'an object');
}

/**
 * Throws a {@link DomainError} unless `given` is an object that has no names but those that somebody reads: a slip of the
 * pen would else leave something out without a word.
 *
 * @example
 * demandNames('changes', { mass: 900 }, ['mass_kg']) // throws changes: "mass" is none of "mass_kg"
 */
export function demandNames(parameter: string, given: object, names: readonly string[]): void {
  demandObject(parameter, given);
  for (const name in given) demandWord(parameter, name, names, 'the names that are read');
}

/**
 * Apart, so that a check stays small enough to be compiled into the formulas. The checks themselves throw: a call from
 * which nothing comes back would look to the engine like one that may change what was read before.
 */
function refused(parameter: string, value: unknown, bound: Bound): DomainError {
  return new DomainError(refusal(parameter, value, bound));
}

/** Why a value is refused, as data; for callers that collect faults instead of throwing. */
export function refusal(parameter: string, value: unknown, bound: Bound): DomainErrorDetail {
  const isNumber = typeof value === 'number';
  const code = !isNumber ? 'not-a-number' : Number.isFinite(value) ? 'out-of-range' : 'not-finite';
  return {
    code,
    parameter,
    received: isNumber && Number.isFinite(value) ? value : String(value),
    unit: bound.unit,
    min: bound.min,
    max: bound.max,
    source: bound.source,
  };
}
