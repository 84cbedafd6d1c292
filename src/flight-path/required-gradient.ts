import { type Domain, demand, type HeightInMetres, type Metres, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link requiredGradient}; both heights over one datum, the surface at the start of the take-off. */
export interface RequiredGradientInputs {
  /** Height of the top of the obstacle over the datum. */
  readonly obstacleTop: HeightInMetres;
  /** Vertical clearance asked over the top. */
  readonly clearance: HeightInMetres;
  /** Height over the datum at which the climb starts, such as 50 ft above the surface there. */
  readonly startHeight: HeightInMetres;
  /** Distance along the ground from the start of the climb to the obstacle. */
  readonly distance: Metres;
}

export const requiredGradientDomain = {
  obstacleTop: { unit: 'mHeight', min: -1000, max: 5000, source: 'library range' },
  clearance: { unit: 'mHeight', min: 0, max: 1000, source: 'library range' },
  startHeight: { unit: 'mHeight', min: -1000, max: 5000, source: 'library range' },
  distance: { unit: 'm', min: 0.1, max: 100000, source: 'library range' },
} satisfies Domain<RequiredGradientInputs>;

/**
 * Gradient over the ground that a straight climb needs to pass an obstacle with the clearance asked.
 *
 * γ = (h + c − h₀) / d: h the top of the obstacle and h₀ the start of the climb, both in m over the surface at the
 * start of the take-off, c the vertical clearance in m, d the distance from the start of the climb in m.
 *
 * @param x - `obstacleTop` and `startHeight` −1000 m to 5000 m, `clearance` 0 m to 1000 m, `distance` 0.1 m to
 * 100 000 m.
 * @returns The gradient required as a ratio; negative when the obstacle with its clearance is lower than the start.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.required-gradient
 *
 * @example
 * requiredGradient({ obstacleTop: mHeight(40), clearance: mHeight(15), startHeight: mHeight(15), distance: m(800) }) // ≈ 0.05 ± 0.000001
 */
export function requiredGradient(x: RequiredGradientInputs): Ratio {
  demand('obstacleTop', x.obstacleTop, requiredGradientDomain.obstacleTop);
  demand('clearance', x.clearance, requiredGradientDomain.clearance);
  demand('startHeight', x.startHeight, requiredGradientDomain.startHeight);
  demand('distance', x.distance, requiredGradientDomain.distance);
  const { obstacleTop: top_m, clearance: c_m, startHeight: start_m }: Numbers<RequiredGradientInputs> = x;
  const { distance: d_m }: Numbers<RequiredGradientInputs> = x;
  return ((top_m + c_m - start_m) / d_m) as Ratio;
}
