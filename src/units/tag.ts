/**
 * A tag says in the type which unit and which reference a number stands in. It exists for the compiler
 * only: at run time a quantity is a plain number. The key is a string, not a symbol, so that two copies
 * of the package in one program accept each other's quantities.
 */
export interface Tag<U extends string> {
  readonly '~unit': U;
}

/** A number in the unit and reference named by `U`; the word is also the `unit` of every document. */
export type Quantity<U extends string> = number & Tag<U>;

/** What constructors accept: a bare number, never one that already has a unit (`ft(m(600))` does not compile). */
export type Untagged = number & { readonly '~unit'?: never };

/** The unit word of a quantity type. */
export type UnitOf<Q> = Q extends Tag<infer U> ? U : never;

/** The same object with its tags dropped, for use inside a formula: `const { speed: v_kt }: Numbers<Inputs> = x`. */
export type Numbers<T> = { readonly [K in keyof T]: T[K] extends number ? number : T[K] };
