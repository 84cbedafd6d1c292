import type { Quantity } from './tag.ts';

/** A quantity as it stands in a document: the value and the unit word of its tag. */
export interface Measure<U extends string = string> {
  readonly value: number;
  readonly unit: U;
}

/**
 * Writes a quantity for a document; the word must be the quantity's own.
 *
 * @example
 * measure(ft(50), 'ft') // => { value: 50, unit: 'ft' }
 */
export function measure<U extends string>(quantity: Quantity<U>, unit: NoConversion<U>): Measure<U> {
  return { value: quantity, unit: unit as U };
}

/**
 * Reads a quantity from a document; the unit word becomes the tag.
 *
 * @example
 * quantityOf({ value: 480, unit: 'm' }) // => 480
 */
export function quantityOf<U extends string>(measured: Measure<U>): Quantity<U> {
  return measured.value as Quantity<U>;
}

/** The unit word that the quantity has decided, without letting the second argument widen it. */
type NoConversion<U extends string> = [U][U extends unknown ? 0 : never];
