import {
  type Degrees,
  type Domain,
  demand,
  type FeetPerMinute,
  type GroundSpeed,
  type Knots,
  type Numbers,
} from '../units/index.ts';

/** Inputs of {@link rateOfDescent}. */
export interface RateOfDescentInputs {
  /** Speed over the ground, the wind in it. */
  readonly groundSpeed: GroundSpeed;
  /** Angle of the path over the ground below the horizontal. */
  readonly pathAngle: Degrees;
}

/** Inputs of {@link rateOfDescentAlongPath}. */
export interface RateOfDescentAlongPathInputs {
  /** Speed along the sloping path, not along the ground. */
  readonly speedAlongPath: Knots;
  /** Angle of the path below the horizontal. */
  readonly pathAngle: Degrees;
}

const pathAngleBound = { unit: 'deg', min: 0, max: 30, source: 'library range' } as const;

export const rateOfDescentDomain = {
  groundSpeed: { unit: 'ktGS', min: 1, max: 300, source: 'library range' },
  pathAngle: pathAngleBound,
} satisfies Domain<RateOfDescentInputs>;

export const rateOfDescentAlongPathDomain = {
  speedAlongPath: { unit: 'kt', min: 1, max: 300, source: 'library range' },
  pathAngle: pathAngleBound,
} satisfies Domain<RateOfDescentAlongPathInputs>;

/**
 * Rate of descent that holds a path angle over the ground.
 *
 * ROD = GS tan γ, both in m/s: GS the ground speed given in kt (1 kt = 1852/3600 m/s), γ the path angle in degrees, ROD
 * then in ft/min (1 ft/min = 0.3048/60 m/s). The table of the FAA has the sine in place of the tangent, although it is
 * entered with the ground speed: less by 0.14 % at 3° and by 0.9 % at 7.5°; see {@link rateOfDescentAlongPath}.
 *
 * @param x - `groundSpeed` 1 kt to 300 kt, `pathAngle` 0° to 30°.
 * @returns The rate of descent in ft/min, counted downwards: positive, where a rate of climb would be negative.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.rate-of-descent
 *
 * @example
 * rateOfDescent({ groundSpeed: ktGS(65), pathAngle: degrees(3) }) // ≈ 345 ± 0.1
 */
export function rateOfDescent(x: RateOfDescentInputs): FeetPerMinute {
  demand('groundSpeed', x.groundSpeed, rateOfDescentDomain.groundSpeed);
  demand('pathAngle', x.pathAngle, rateOfDescentDomain.pathAngle);
  const { groundSpeed: gs_kt, pathAngle: angle_deg }: Numbers<RateOfDescentInputs> = x;
  const gs_mps = (gs_kt * 1852) / 3600;
  const rod_mps = gs_mps * Math.tan((angle_deg * Math.PI) / 180);
  return ((rod_mps * 60) / 0.3048) as FeetPerMinute;
}

/**
 * Rate of descent of a speed along a sloping path: in still air the true airspeed, never the ground speed.
 *
 * ROD = V sin γ, both in m/s: V the speed along the path given in kt (1 kt = 1852/3600 m/s), γ the path angle in degrees,
 * ROD then in ft/min (1 ft/min = 0.3048/60 m/s). The FAA's table of rates of descent is this relation, rounded to
 * 5 ft/min, under the heading of ground speed: 208 of its 231 cells lie within half a step of the sine, 56 of the
 * tangent. Its row of 12° is about 0.3 % low throughout. With a ground speed use {@link rateOfDescent}.
 *
 * @param x - `speedAlongPath` 1 kt to 300 kt, `pathAngle` 0° to 30°.
 * @returns The rate of descent in ft/min, counted downwards: positive, where a rate of climb would be negative.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.rate-of-descent-along-path
 *
 * @example
 * rateOfDescentAlongPath({ speedAlongPath: kt(65), pathAngle: degrees(6) }) // ≈ 688.1 ± 0.1
 */
export function rateOfDescentAlongPath(x: RateOfDescentAlongPathInputs): FeetPerMinute {
  demand('speedAlongPath', x.speedAlongPath, rateOfDescentAlongPathDomain.speedAlongPath);
  demand('pathAngle', x.pathAngle, rateOfDescentAlongPathDomain.pathAngle);
  const { speedAlongPath: v_kt, pathAngle: angle_deg }: Numbers<RateOfDescentAlongPathInputs> = x;
  const v_mps = (v_kt * 1852) / 3600;
  const rod_mps = v_mps * Math.sin((angle_deg * Math.PI) / 180);
  return ((rod_mps * 60) / 0.3048) as FeetPerMinute;
}
