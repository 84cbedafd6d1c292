import { type Domain, demand, type HeightInMetres, type Metres, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link obstacleClearance}; both heights over one datum, the surface at the start of the take-off. */
export interface ObstacleClearanceInputs {
  /** Height of the top of the obstacle over the datum. */
  readonly obstacleTop: HeightInMetres;
  /** Height over the datum at which the climb starts, such as 50 ft above the surface there. */
  readonly startHeight: HeightInMetres;
  /** Distance along the ground from the start of the climb to the obstacle. */
  readonly distance: Metres;
  /** Gradient achieved over the ground. */
  readonly gradient: Ratio;
}

export const obstacleClearanceDomain = {
  obstacleTop: { unit: 'mHeight', min: -1000, max: 5000, source: 'library range' },
  startHeight: { unit: 'mHeight', min: -1000, max: 5000, source: 'library range' },
  distance: { unit: 'm', min: 0, max: 100000, source: 'library range, never before the start of the climb' },
  gradient: { unit: 'ratio', min: -1, max: 2, source: 'library range' },
} satisfies Domain<ObstacleClearanceInputs>;

/**
 * Height of a straight climb above the top of an obstacle.
 *
 * c = h₀ + γ d − h: h₀ the start of the climb and h the top of the obstacle, both in m over the surface at the start of
 * the take-off, γ the gradient over the ground, d the distance from the start of the climb in m.
 *
 * @param x - `obstacleTop` and `startHeight` −1000 m to 5000 m, `distance` 0 m to 100 000 m, `gradient` −1 to 2.
 * @returns The height above the top of the obstacle in m; negative when the path passes below it.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.obstacle-clearance
 *
 * @example
 * obstacleClearance({ obstacleTop: mHeight(40), startHeight: mHeight(15), distance: m(800), gradient: ratio(0.06) }) // ≈ 23 ± 0.001
 */
export function obstacleClearance(x: ObstacleClearanceInputs): HeightInMetres {
  demand('obstacleTop', x.obstacleTop, obstacleClearanceDomain.obstacleTop);
  demand('startHeight', x.startHeight, obstacleClearanceDomain.startHeight);
  demand('distance', x.distance, obstacleClearanceDomain.distance);
  demand('gradient', x.gradient, obstacleClearanceDomain.gradient);
  const { obstacleTop: top_m, startHeight: start_m, distance: d_m, gradient }: Numbers<ObstacleClearanceInputs> = x;
  return (start_m + gradient * d_m - top_m) as HeightInMetres;
}
