import {
  type Degrees,
  type Domain,
  demand,
  type FeetPerMinute,
  type GroundSpeed,
  type HeightInMetres,
  type Metres,
  type Numbers,
} from '../units/index.ts';

/** Inputs of {@link pathAngleForClearance}. */
export interface PathAngleForClearanceInputs {
  /** Height of the top of the obstacle over the aiming point. */
  readonly obstacleHeight: HeightInMetres;
  /** Approach clearance: height to spare asked over the top. */
  readonly clearance: HeightInMetres;
  /** Distance along the ground from the obstacle to the aiming point. */
  readonly distance: Metres;
}

/** Inputs of {@link steepestPath}. */
export interface SteepestPathInputs {
  /** Speed over the ground, the wind in it. */
  readonly groundSpeed: GroundSpeed;
  /** Greatest rate of descent accepted, counted downwards, such as that of `approachDescentLimit`. */
  readonly greatestRateOfDescent: FeetPerMinute;
}

export const pathAngleForClearanceDomain = {
  obstacleHeight: { unit: 'mHeight', min: -1000, max: 3000, source: 'library range' },
  clearance: { unit: 'mHeight', min: 0, max: 1000, source: 'library range' },
  distance: { unit: 'm', min: 1, max: 100000, source: 'library range' },
} satisfies Domain<PathAngleForClearanceInputs>;

export const steepestPathDomain = {
  groundSpeed: { unit: 'ktGS', min: 1, max: 300, source: 'library range' },
  greatestRateOfDescent: { unit: 'ftPerMin', min: 1, max: 3000, source: 'library range' },
} satisfies Domain<SteepestPathInputs>;

/**
 * Least angle of a straight approach that passes an obstacle with the clearance asked and ends at an aiming point.
 *
 * γ = arctan((h + c) / d): h the top of the obstacle over the aiming point and c the approach clearance, both in m, d the
 * distance from the obstacle to the aiming point in m.
 *
 * @param x - `obstacleHeight` −1000 m to 3000 m, `clearance` 0 m to 1000 m, `distance` 1 m to 100 000 m.
 * @returns The path angle over the ground in degrees; not above zero when the obstacle with its clearance is no higher than
 * the aiming point.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.path-angle-for-clearance
 *
 * @example
 * pathAngleForClearance({ obstacleHeight: mHeight(20), clearance: mHeight(10), distance: m(500) }) // ≈ 3.434 ± 0.001
 */
export function pathAngleForClearance(x: PathAngleForClearanceInputs): Degrees {
  demand('obstacleHeight', x.obstacleHeight, pathAngleForClearanceDomain.obstacleHeight);
  demand('clearance', x.clearance, pathAngleForClearanceDomain.clearance);
  demand('distance', x.distance, pathAngleForClearanceDomain.distance);
  const { obstacleHeight: h_m, clearance: c_m, distance: d_m }: Numbers<PathAngleForClearanceInputs> = x;
  const angle_rad = Math.atan((h_m + c_m) / d_m);
  return ((angle_rad * 180) / Math.PI) as Degrees;
}

/**
 * Steepest path over the ground that stays within a rate of descent.
 *
 * γ = arctan(ROD / GS), both in m/s: ROD the greatest rate of descent given in ft/min (1 ft/min = 0.3048/60 m/s), GS the
 * ground speed given in kt (1 kt = 1852/3600 m/s).
 *
 * @param x - `groundSpeed` 1 kt to 300 kt, `greatestRateOfDescent` 1 ft/min to 3000 ft/min.
 * @returns The path angle over the ground in degrees.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.steepest-path
 *
 * @example
 * steepestPath({ groundSpeed: ktGS(80), greatestRateOfDescent: approachDescentLimit.rateOfDescent }) // ≈ 7.04 ± 0.01
 */
export function steepestPath(x: SteepestPathInputs): Degrees {
  demand('groundSpeed', x.groundSpeed, steepestPathDomain.groundSpeed);
  demand('greatestRateOfDescent', x.greatestRateOfDescent, steepestPathDomain.greatestRateOfDescent);
  const { groundSpeed: gs_kt, greatestRateOfDescent: rod_ftPerMin }: Numbers<SteepestPathInputs> = x;
  const rod_mps = (rod_ftPerMin * 0.3048) / 60;
  const gs_mps = (gs_kt * 1852) / 3600;
  const angle_rad = Math.atan(rod_mps / gs_mps);
  return ((angle_rad * 180) / Math.PI) as Degrees;
}
