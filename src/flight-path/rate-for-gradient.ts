import { type Domain, demand, type FeetPerMinute, type GroundSpeed, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link rateForGradient}. */
export interface RateForGradientInputs {
  /** Gradient over the ground. */
  readonly gradient: Ratio;
  /** Speed over the ground; never an airspeed, which would leave the wind out. */
  readonly groundSpeed: GroundSpeed;
}

export const rateForGradientDomain = {
  gradient: { unit: 'ratio', min: -1, max: 2, source: 'library range' },
  groundSpeed: { unit: 'ktGS', min: 1, max: 300, source: 'library range' },
} satisfies Domain<RateForGradientInputs>;

/**
 * Rate of climb that holds a gradient over the ground; what `climbGradient` answers, the other way round.
 *
 * ROC = γ GS, both in m/s: γ the gradient over the ground, GS the ground speed given in kt (1 kt = 1852/3600 m/s), ROC
 * then in ft/min (1 ft/min = 0.3048/60 m/s). The rule of thumb that multiplies percent by knots is 1.25 % less.
 *
 * @param x - `gradient` −1 to 2, `groundSpeed` 1 kt to 300 kt.
 * @returns The rate of climb in ft/min; negative in a descent.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.rate-for-gradient
 *
 * @example
 * rateForGradient({ gradient: ratioFromFeetPerNauticalMile(ftPerNM(310)), groundSpeed: ktGS(90) }) // ≈ 465 ± 1e-9
 */
export function rateForGradient(x: RateForGradientInputs): FeetPerMinute {
  demand('gradient', x.gradient, rateForGradientDomain.gradient);
  demand('groundSpeed', x.groundSpeed, rateForGradientDomain.groundSpeed);
  const { gradient, groundSpeed: gs_kt }: Numbers<RateForGradientInputs> = x;
  const gs_mps = (gs_kt * 1852) / 3600;
  const roc_mps = gradient * gs_mps;
  return ((roc_mps * 60) / 0.3048) as FeetPerMinute;
}
