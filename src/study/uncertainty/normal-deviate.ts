import { type Bound, demand } from '../../units/index.ts';

/** Inputs of {@link normalDeviate}: two independent draws, each with equal right from its range. */
export interface NormalDeviateInputs {
  /** Above 0, up to 1. */
  readonly first: number;
  /** From 0 up to 1. */
  readonly second: number;
}

const firstBound = { unit: 'of 1', min: 2 ** -60, max: 1, source: 'the logarithm needs more than 0' } satisfies Bound;
const secondBound = { unit: 'of 1', min: 0, max: 1, source: 'one turn' } satisfies Bound;

/**
 * A normally distributed number with mean 0 and standard deviation 1, from two evenly distributed ones.
 *
 * z = √(−2 ln u₁) cos(2π u₂): u₁ in (0, 1], u₂ in [0, 1].
 *
 * @param x - `first` 2⁻⁶⁰ to 1, `second` 0 to 1.
 * @returns the number, without unit.
 * @throws {@link DomainError} when a draw is not within its range.
 * @record study.normal-deviate
 *
 * @example
 * normalDeviate({ first: Math.exp(-0.5), second: 0 }) // ≈ 1 ± 1e-12
 */
export function normalDeviate(x: NormalDeviateInputs): number {
  demand('first', x.first, firstBound);
  demand('second', x.second, secondBound);
  return Math.sqrt(-2 * Math.log(x.first)) * Math.cos(2 * Math.PI * x.second) + 0;
}
