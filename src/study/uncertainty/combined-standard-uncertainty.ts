import { type Bound, demandEach, inconsistent } from '../../units/index.ts';

/** Inputs of {@link combinedStandardUncertainty}; one entry of each list per input quantity. */
export interface CombinedStandardUncertaintyInputs {
  /** Change of the result for one unit of each input quantity, signed. */
  readonly sensitivityCoefficients: readonly number[];
  /** Of each input quantity, in the unit of its coefficient. */
  readonly standardUncertainties: readonly number[];
}

const coefficientBound = { unit: 'per unit', min: -1e12, max: 1e12, source: 'library range' } satisfies Bound;
const uncertaintyBound = { unit: 'units', min: 0, max: 1e12, source: 'library range' } satisfies Bound;

/**
 * Combined standard uncertainty of a result, to first order and for independent input quantities.
 *
 * u_c = √Σ (cᵢ uᵢ)²: cᵢ the sensitivity coefficients, uᵢ the standard uncertainties of the input quantities.
 *
 * @param x - `sensitivityCoefficients` within ±10¹² and as many `standardUncertainties`, each 0 to 10¹².
 * @returns the combined standard uncertainty, in the unit of the result.
 * @throws {@link DomainError} when an entry is not within its range, or the lists differ in length.
 * @record study.combined-standard-uncertainty
 *
 * @example
 * combinedStandardUncertainty({ sensitivityCoefficients: [3, -2], standardUncertainties: [1, 2] }) // => 5
 */
export function combinedStandardUncertainty(x: CombinedStandardUncertaintyInputs): number {
  const { sensitivityCoefficients, standardUncertainties } = x;
  demandEach('sensitivityCoefficients', sensitivityCoefficients, coefficientBound);
  demandEach('standardUncertainties', standardUncertainties, uncertaintyBound);
  const wanted = sensitivityCoefficients.length;
  if (standardUncertainties.length !== wanted) {
    throw inconsistent(
      'standardUncertainties',
      standardUncertainties.length,
      'entries',
      wanted,
      wanted,
      'one for each coefficient',
    );
  }
  let sum = 0;
  for (let i = 0; i < wanted; i += 1) {
    sum += ((sensitivityCoefficients[i] as number) * (standardUncertainties[i] as number)) ** 2;
  }
  return Math.sqrt(sum);
}
