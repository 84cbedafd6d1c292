import {
  type Degrees,
  type Domain,
  demand,
  type HeightInMetres,
  inconsistent,
  type Metres,
  type Numbers,
  type Percent,
} from '../units/index.ts';

/** Inputs of {@link landingDistanceLost}. */
export interface LandingDistanceLostInputs {
  /** Height of the top of the obstacle over the landing threshold. */
  readonly obstacleHeight: HeightInMetres;
  /** Approach clearance: height to spare asked over the top. */
  readonly clearance: HeightInMetres;
  /** Screen height from which the landing distance is counted. */
  readonly screenHeight: HeightInMetres;
  /** Distance of the obstacle before the landing threshold. */
  readonly distance: Metres;
  /** Angle of the approach path over the ground below the horizontal. */
  readonly pathAngle: Degrees;
  /** Downslope of the runway in the direction of landing; nil when it is uphill, for which there is no credit. */
  readonly downslope: Percent;
}

export const landingDistanceLostDomain = {
  obstacleHeight: { unit: 'mHeight', min: -1000, max: 3000, source: 'library range' },
  clearance: { unit: 'mHeight', min: 0, max: 1000, source: 'library range' },
  screenHeight: { unit: 'mHeight', min: 0, max: 100, source: 'library range' },
  distance: { unit: 'm', min: 0, max: 100000, source: 'library range' },
  pathAngle: { unit: 'deg', min: 1, max: 15, source: 'library range' },
  downslope: { unit: 'percent', min: 0, max: 20, source: 'library range, no credit uphill' },
} satisfies Domain<LandingDistanceLostInputs>;

/** A path that nears the surface by less than this each metre is parallel to it. */
const leastDifference = 1e-6;

/**
 * Landing distance lost because an obstacle before the threshold keeps the aeroplane high: how far beyond the threshold
 * a straight approach over it is down to the screen height.
 *
 * x = max(0, (h + c − h₅₀ − d tan γ) / (tan γ − s)): h the top of the obstacle over the landing threshold, c the
 * approach clearance, h₅₀ the screen height and d the distance of the obstacle before the threshold, in m; γ the path
 * angle in degrees; s the downslope of the runway, given in percent.
 *
 * @param x - `obstacleHeight` −1000 m to 3000 m, `clearance` 0 m to 1000 m, `screenHeight` 0 m to 100 m, `distance` 0 m
 * to 100 000 m, `pathAngle` 1° to 15° and steeper than the runway, `downslope` 0 % to 20 %.
 * @returns The landing distance lost in m; 0 when the obstacle does not matter.
 * @throws {@link DomainError} when a parameter is not within its range, or the runway falls away as steeply as the path.
 * @record flight-path.landing-distance-lost
 *
 * @example
 * landingDistanceLost({ obstacleHeight: mHeight(20), clearance: mHeight(10), screenHeight: mHeight(15), distance: m(200), pathAngle: degrees(3), downslope: percent(1) }) // ≈ 106.55 ± 0.01
 */
export function landingDistanceLost(x: LandingDistanceLostInputs): Metres {
  demand('obstacleHeight', x.obstacleHeight, landingDistanceLostDomain.obstacleHeight);
  demand('clearance', x.clearance, landingDistanceLostDomain.clearance);
  demand('screenHeight', x.screenHeight, landingDistanceLostDomain.screenHeight);
  demand('distance', x.distance, landingDistanceLostDomain.distance);
  demand('pathAngle', x.pathAngle, landingDistanceLostDomain.pathAngle);
  demand('downslope', x.downslope, landingDistanceLostDomain.downslope);
  const { obstacleHeight: h_m, clearance: c_m, screenHeight: screen_m }: Numbers<LandingDistanceLostInputs> = x;
  const { distance: d_m, pathAngle: angle_deg, downslope: slope_percent }: Numbers<LandingDistanceLostInputs> = x;
  const descent = Math.tan((angle_deg * Math.PI) / 180);
  const slope = slope_percent / 100;
  if (descent - slope < leastDifference) refuseSteepRunway(slope_percent, descent);
  return Math.max(0, (h_m + c_m - screen_m - d_m * descent) / (descent - slope)) as Metres;
}

function refuseSteepRunway(received: number, descent: number): never {
  const { unit, min } = landingDistanceLostDomain.downslope;
  const max = 100 * (descent - leastDifference);
  const source = 'the path is steeper than the runway';
  throw inconsistent('downslope', received, unit, min, max, source);
}
