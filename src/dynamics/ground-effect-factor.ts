import { type Domain, demand, type Metres, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link groundEffectFactor}. */
export interface GroundEffectFactorInputs {
  /** Height of the wing over the surface while the aeroplane rolls. */
  readonly wingHeight: Metres;
  /** Span of the wing. */
  readonly wingSpan: Metres;
}

export const groundEffectFactorDomain = {
  wingHeight: { unit: 'm', min: 0.1, max: 100, source: 'library range' },
  wingSpan: { unit: 'm', min: 2, max: 100, source: 'library range' },
} satisfies Domain<GroundEffectFactorInputs>;

/**
 * Share of the lift-induced drag that is left near the ground.
 *
 * φ = (16 h/b)² / [1 + (16 h/b)²]: h the height of the wing over the surface and b its span, both in m.
 *
 * @param x - `wingHeight` 0.1 m to 100 m, `wingSpan` 2 m to 100 m.
 * @returns The share as a ratio, below 1.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record dynamics.ground-effect-factor
 *
 * @example
 * groundEffectFactor({ wingHeight: m(1), wingSpan: m(10) }) // ≈ 0.719 ± 0.001
 */
export function groundEffectFactor(x: GroundEffectFactorInputs): Ratio {
  demand('wingHeight', x.wingHeight, groundEffectFactorDomain.wingHeight);
  demand('wingSpan', x.wingSpan, groundEffectFactorDomain.wingSpan);
  const { wingHeight: h_m, wingSpan: b_m }: Numbers<GroundEffectFactorInputs> = x;
  const square = ((16 * h_m) / b_m) ** 2;
  return (square / (1 + square)) as Ratio;
}
