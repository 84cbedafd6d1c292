import { type Degrees, type Domain, demand, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link gradientAngle}. */
export interface GradientAngleInputs {
  /** Gradient: height for each length of ground. */
  readonly gradient: Ratio;
}

/** Inputs of {@link gradientFromAngle}. */
export interface GradientFromAngleInputs {
  /** Angle of the path to the horizontal: positive in a climb, negative in a descent. */
  readonly angle: Degrees;
}

export const gradientAngleDomain = {
  gradient: { unit: 'ratio', min: -1, max: 2, source: 'library range' },
} satisfies Domain<GradientAngleInputs>;

export const gradientFromAngleDomain = {
  angle: { unit: 'deg', min: -45, max: 63.4, source: 'library range, gradients of -1 to 2' },
} satisfies Domain<GradientFromAngleInputs>;

/**
 * Angle of a path to the horizontal that has a gradient.
 *
 * θ = arctan γ: γ the gradient, height for each length of ground. It is the tangent of the angle, never its sine, which
 * is height for each length of path.
 *
 * @param x - `gradient` −1 to 2, a ratio; `ratioFromPercent` and `ratioFromFeetPerNauticalMile` give it from other units.
 * @returns The angle in degrees; negative in a descent.
 * @throws {@link DomainError} when the gradient is not within its range.
 * @record flight-path.gradient-angle
 *
 * @example
 * gradientAngle({ gradient: ratioFromFeetPerNauticalMile(ftPerNM(200)) }) // ≈ 1.8853 ± 0.0001
 */
export function gradientAngle(x: GradientAngleInputs): Degrees {
  demand('gradient', x.gradient, gradientAngleDomain.gradient);
  const { gradient }: Numbers<GradientAngleInputs> = x;
  const angle_rad = Math.atan(gradient);
  return ((angle_rad * 180) / Math.PI) as Degrees;
}

/**
 * Gradient of a path at an angle to the horizontal.
 *
 * γ = tan θ: θ the angle in degrees.
 *
 * @param x - `angle` −45° to 63.4°, positive in a climb.
 * @returns The gradient as a ratio; negative in a descent.
 * @throws {@link DomainError} when the angle is not within its range.
 * @record flight-path.gradient-from-angle
 *
 * @example
 * feetPerNauticalMileFromRatio(gradientFromAngle({ angle: degrees(3) })) // ≈ 318.44 ± 0.01
 */
export function gradientFromAngle(x: GradientFromAngleInputs): Ratio {
  demand('angle', x.angle, gradientFromAngleDomain.angle);
  const { angle: angle_deg }: Numbers<GradientFromAngleInputs> = x;
  const angle_rad = (angle_deg * Math.PI) / 180;
  return Math.tan(angle_rad) as Ratio;
}
