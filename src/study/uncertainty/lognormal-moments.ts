import { type Bound, demand } from '../../units/index.ts';

/** Inputs of {@link lognormalMoments}. */
export interface LognormalMomentsInputs {
  /** Standard deviation of the natural logarithm of the factor. */
  readonly standardDeviation: number;
}

/** Mean and standard deviation of a factor. */
export interface LognormalMoments {
  readonly mean: number;
  readonly standardDeviation: number;
}

const deviationBound = { unit: 'of the logarithm', min: 0, max: 2, source: 'library range' } satisfies Bound;

/**
 * Mean and standard deviation of a factor whose logarithm is normally distributed about 0, so that its median is 1.
 *
 * μ = exp(s² / 2), σ = μ √(exp(s²) − 1): s the standard deviation of the natural logarithm.
 *
 * @param x - `standardDeviation` 0 to 2.
 * @returns both without unit.
 * @throws {@link DomainError} when the standard deviation is not within its range.
 * @record study.lognormal-moments
 *
 * @example
 * lognormalMoments({ standardDeviation: 0.1 }).mean // ≈ 1.005013 ± 1e-6
 * lognormalMoments({ standardDeviation: 0.1 }).standardDeviation // ≈ 0.100753 ± 1e-6
 */
export function lognormalMoments(x: LognormalMomentsInputs): LognormalMoments {
  demand('standardDeviation', x.standardDeviation, deviationBound);
  const variance = x.standardDeviation ** 2;
  const mean = Math.exp(variance / 2);
  return { mean, standardDeviation: mean * Math.sqrt(Math.expm1(variance)) };
}
