import { type Domain, demand, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link proRatedFactor}. */
export interface ProRatedFactorInputs {
  /** Correction factor printed for one whole step, such as 1.10 for each 1000 ft. */
  readonly factorPerStep: Ratio;
  /** Number of steps present, such as 0.5 for 500 ft. */
  readonly steps: Ratio;
}

export const proRatedFactorDomain = {
  factorPerStep: { unit: 'ratio', min: 1, max: 2, source: 'library range, adverse factors only' },
  steps: { unit: 'ratio', min: 0, max: 20, source: 'library range' },
} satisfies Domain<ProRatedFactorInputs>;

/**
 * Correction factor for a part or a multiple of the step for which a factor set prints it.
 *
 * k = 1 + (k₁ − 1) n up to one step, beyond it the larger of that and k₁ⁿ: k₁ the factor of one step, n the number
 * of steps. For adverse factors of a factor set only; a manual's own law is linear as printed.
 *
 * @param x - `factorPerStep` 1 to 2, `steps` 0 to 20.
 * @returns The correction factor, at least 1.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record distance.pro-rated-factor
 *
 * @example
 * proRatedFactor({ factorPerStep: ratio(1.1), steps: ratio(0.5) }) // ≈ 1.05 ± 0.000001
 * proRatedFactor({ factorPerStep: ratio(1.1), steps: ratio(2) }) // ≈ 1.21 ± 0.000001
 */
export function proRatedFactor(x: ProRatedFactorInputs): Ratio {
  demand('factorPerStep', x.factorPerStep, proRatedFactorDomain.factorPerStep);
  demand('steps', x.steps, proRatedFactorDomain.steps);
  const { factorPerStep, steps }: Numbers<ProRatedFactorInputs> = x;
  const linear = 1 + (factorPerStep - 1) * steps;
  // Within one step compounding would read less than the straight line.
  if (steps <= 1) return linear as Ratio;
  const compound = factorPerStep ** steps;
  return Math.max(linear, compound) as Ratio;
}
