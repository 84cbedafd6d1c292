import {
  type Domain,
  demand,
  type HeightInMetres,
  inconsistent,
  type Metres,
  type Numbers,
  type Ratio,
} from '../units/index.ts';

/** Inputs of {@link latestPathStart}. */
export interface LatestPathStartInputs {
  /** Height of the top of the obstacle over the surface at the start of the take-off. */
  readonly obstacleTop: HeightInMetres;
  /** Vertical clearance asked over the top. */
  readonly clearance: HeightInMetres;
  /** Screen height: of the 50 ft point over the surface below it. */
  readonly screenHeight: HeightInMetres;
  /** Distance along the ground from the start of the take-off to the obstacle. */
  readonly distance: Metres;
  /** Gradient achieved over the ground. */
  readonly gradient: Ratio;
  /** Slope of the surface in the direction of the take-off: positive uphill, negative downhill. */
  readonly slope: Ratio;
}

export const latestPathStartDomain = {
  obstacleTop: { unit: 'mHeight', min: -1000, max: 5000, source: 'library range' },
  clearance: { unit: 'mHeight', min: 0, max: 1000, source: 'library range' },
  screenHeight: { unit: 'mHeight', min: 0, max: 100, source: 'library range' },
  distance: { unit: 'm', min: 0, max: 100000, source: 'library range' },
  gradient: { unit: 'ratio', min: 0, max: 2, source: 'library range' },
  slope: { unit: 'ratio', min: -0.2, max: 0.2, source: 'library range' },
} satisfies Domain<LatestPathStartInputs>;

/** A path that leaves the surface by less than this each metre is parallel to it. */
const leastDifference = 1e-6;

/**
 * Farthest 50 ft point along the runway from which a straight climb still passes an obstacle with the clearance asked.
 *
 * The largest x with s x + h₅₀ + γ (d − x) ≥ h + c, which is x = (γ d + h₅₀ − h − c) / (γ − s): s the slope of the
 * surface, h₅₀ the screen height in m, γ the gradient over the ground, d the distance of the obstacle from the start of
 * the take-off in m, h its top in m over the surface at the start of the take-off, c the vertical clearance in m.
 *
 * @param x - `obstacleTop` −1000 m to 5000 m, `clearance` 0 m to 1000 m, `screenHeight` 0 m to 100 m, `distance` 0 m to
 * 100 000 m, `gradient` 0 to 2 and more than the slope, `slope` −0.2 to 0.2.
 * @returns The distance of the 50 ft point from the start of the take-off in m; negative when there is no such point;
 * more than `distance` when the obstacle with its clearance is lower than 50 ft above the surface there.
 * @throws {@link DomainError} when a parameter is not within its range, or the path does not climb away from the surface.
 * @record flight-path.latest-path-start
 *
 * @example
 * latestPathStart({ obstacleTop: mHeight(40), clearance: mHeight(15), screenHeight: mHeight(15), distance: m(1500), gradient: ratio(0.06), slope: ratio(0.01) }) // ≈ 1000 ± 0.001
 */
export function latestPathStart(x: LatestPathStartInputs): Metres {
  demand('obstacleTop', x.obstacleTop, latestPathStartDomain.obstacleTop);
  demand('clearance', x.clearance, latestPathStartDomain.clearance);
  demand('screenHeight', x.screenHeight, latestPathStartDomain.screenHeight);
  demand('distance', x.distance, latestPathStartDomain.distance);
  demand('gradient', x.gradient, latestPathStartDomain.gradient);
  demand('slope', x.slope, latestPathStartDomain.slope);
  const { obstacleTop: top_m, clearance: c_m, screenHeight: screen_m }: Numbers<LatestPathStartInputs> = x;
  const { distance: d_m, gradient, slope }: Numbers<LatestPathStartInputs> = x;
  if (gradient - slope < leastDifference) refuseShallowPath(gradient, slope);
  return ((gradient * d_m + screen_m - top_m - c_m) / (gradient - slope)) as Metres;
}

function refuseShallowPath(received: number, slope: number): never {
  const { unit, max } = latestPathStartDomain.gradient;
  const min = slope + leastDifference;
  const source = 'the path climbs away from the surface';
  throw inconsistent('gradient', received, unit, min, max, source);
}
