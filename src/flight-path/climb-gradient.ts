import { type Domain, demand, type FeetPerMinute, type GroundSpeed, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link climbGradient}. */
export interface ClimbGradientInputs {
  /** Rate of climb. */
  readonly rateOfClimb: FeetPerMinute;
  /** Speed over the ground: the true airspeed of that rate of climb with the wind in it. */
  readonly groundSpeed: GroundSpeed;
}

export const climbGradientDomain = {
  rateOfClimb: { unit: 'ftPerMin', min: -3000, max: 6000, source: 'library range' },
  groundSpeed: { unit: 'ktGS', min: 1, max: 300, source: 'library range' },
} satisfies Domain<ClimbGradientInputs>;

/**
 * Gradient over the ground of a climb: height gained for each length of ground, the tangent of the path angle.
 *
 * γ = ROC / GS, both in m/s: ROC the rate of climb given in ft/min (1 ft/min = 0.3048/60 m/s), GS the ground speed
 * given in kt (1 kt = 1852/3600 m/s).
 *
 * @param x - `rateOfClimb` −3000 ft/min to 6000 ft/min, `groundSpeed` 1 kt to 300 kt.
 * @returns The gradient over the ground as a ratio; negative in a descent.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.climb-gradient
 *
 * @example
 * climbGradient({ rateOfClimb: ftPerMin(500), groundSpeed: ktGS(60) }) // ≈ 0.08229 ± 0.00001
 */
export function climbGradient(x: ClimbGradientInputs): Ratio {
  demand('rateOfClimb', x.rateOfClimb, climbGradientDomain.rateOfClimb);
  demand('groundSpeed', x.groundSpeed, climbGradientDomain.groundSpeed);
  const { rateOfClimb: roc_ftPerMin, groundSpeed: gs_kt }: Numbers<ClimbGradientInputs> = x;
  const roc_mps = (roc_ftPerMin * 0.3048) / 60;
  const gs_mps = (gs_kt * 1852) / 3600;
  return (roc_mps / gs_mps) as Ratio;
}
