import { type Bound, demand } from '../../units/index.ts';

/** Inputs of {@link rectangularStandardUncertainty}. */
export interface RectangularStandardUncertaintyInputs {
  /** From the middle of the range to either end. */
  readonly halfWidth: number;
}

const halfWidthBound = { unit: 'units', min: 0, max: 1e12, source: 'library range' } satisfies Bound;

/**
 * Standard uncertainty of a quantity that may lie anywhere in a range with equal right, as one that was rounded.
 *
 * u = a / √3: a half the width of the range.
 *
 * @param x - `halfWidth` 0 to 10¹².
 * @returns the standard uncertainty, in the unit of the half-width.
 * @throws {@link DomainError} when the half-width is not within its range.
 * @record study.rectangular-standard-uncertainty
 *
 * @example
 * rectangularStandardUncertainty({ halfWidth: 5 }) // ≈ 2.8868 ± 0.0001
 */
export function rectangularStandardUncertainty(x: RectangularStandardUncertaintyInputs): number {
  demand('halfWidth', x.halfWidth, halfWidthBound);
  return x.halfWidth / Math.sqrt(3);
}
