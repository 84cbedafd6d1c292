import { type Degrees, type Domain, demand, type HeightInMetres, type Metres, type Numbers } from '../units/index.ts';

/** Inputs of {@link aimingPointDistance}. */
export interface AimingPointDistanceInputs {
  /** Height over the aiming point at which the path passes a place, such as 50 ft at the threshold. */
  readonly height: HeightInMetres;
  /** Angle of the approach path over the ground below the horizontal. */
  readonly pathAngle: Degrees;
}

/** Inputs of {@link aimingPointPastThreshold}. */
export interface AimingPointPastThresholdInputs {
  /** Height of the top of the obstacle over the landing threshold. */
  readonly obstacleHeight: HeightInMetres;
  /** Approach clearance: height to spare asked over the top. */
  readonly clearance: HeightInMetres;
  /** Distance of the obstacle before the landing threshold. */
  readonly distance: Metres;
  /** Angle of the approach path over the ground below the horizontal. */
  readonly pathAngle: Degrees;
}

const pathAngleBound = { unit: 'deg', min: 1, max: 15, source: 'library range' } as const;

export const aimingPointDistanceDomain = {
  height: { unit: 'mHeight', min: 0, max: 3000, source: 'library range' },
  pathAngle: pathAngleBound,
} satisfies Domain<AimingPointDistanceInputs>;

export const aimingPointPastThresholdDomain = {
  obstacleHeight: { unit: 'mHeight', min: -1000, max: 3000, source: 'library range' },
  clearance: { unit: 'mHeight', min: 0, max: 1000, source: 'library range' },
  distance: { unit: 'm', min: 0, max: 100000, source: 'library range' },
  pathAngle: pathAngleBound,
} satisfies Domain<AimingPointPastThresholdInputs>;

/**
 * Distance of the aiming point beyond a place that the approach path passes at a height. The aeroplane touches down
 * farther on, because of the flare.
 *
 * x = h / tan γ: h the height over the aiming point in m, γ the angle of the path over the ground in degrees.
 *
 * @param x - `height` 0 m to 3000 m, `pathAngle` 1° to 15°.
 * @returns The distance along the ground in m.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.aiming-point-distance
 *
 * @example
 * aimingPointDistance({ height: mHeight(15), pathAngle: degrees(3) }) // ≈ 286.2 ± 0.1
 */
export function aimingPointDistance(x: AimingPointDistanceInputs): Metres {
  demand('height', x.height, aimingPointDistanceDomain.height);
  demand('pathAngle', x.pathAngle, aimingPointDistanceDomain.pathAngle);
  const { height: h_m, pathAngle: angle_deg }: Numbers<AimingPointDistanceInputs> = x;
  return (h_m / Math.tan((angle_deg * Math.PI) / 180)) as Metres;
}

/**
 * Distance past the threshold of the aiming point of a straight approach that passes an obstacle before the threshold
 * with the clearance asked. What this costs of the landing distance is `landingDistanceLost`.
 *
 * x = (h + c) / tan γ − d: h the top of the obstacle over the landing threshold and c the approach clearance, both in m, γ
 * the angle of the path over the ground in degrees, d the distance of the obstacle before the threshold in m; the runway
 * level with its threshold.
 *
 * @param x - `obstacleHeight` −1000 m to 3000 m, `clearance` 0 m to 1000 m, `distance` 0 m to 100 000 m, `pathAngle` 1° to
 * 15°.
 * @returns The distance past the threshold in m; negative when the path meets the ground before it: the obstacle then
 * does not decide where to aim.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.aiming-point-past-threshold
 *
 * @example
 * aimingPointPastThreshold({ obstacleHeight: mHeight(20), clearance: mHeight(10), distance: m(200), pathAngle: degrees(3) }) // ≈ 372.4 ± 0.1
 */
export function aimingPointPastThreshold(x: AimingPointPastThresholdInputs): Metres {
  demand('obstacleHeight', x.obstacleHeight, aimingPointPastThresholdDomain.obstacleHeight);
  demand('clearance', x.clearance, aimingPointPastThresholdDomain.clearance);
  demand('distance', x.distance, aimingPointPastThresholdDomain.distance);
  demand('pathAngle', x.pathAngle, aimingPointPastThresholdDomain.pathAngle);
  const { obstacleHeight: h_m, clearance: c_m, distance: d_m }: Numbers<AimingPointPastThresholdInputs> = x;
  const { pathAngle: angle_deg }: Numbers<AimingPointPastThresholdInputs> = x;
  return ((h_m + c_m) / Math.tan((angle_deg * Math.PI) / 180) - d_m) as Metres;
}
