import {
  type Domain,
  demand,
  type GroundSpeed,
  type Metres,
  type Numbers,
  type Ratio,
  type Seconds,
} from '../units/index.ts';

/** Inputs of {@link latestRejectPoint}. */
export interface LatestRejectPointInputs {
  /** Longest ground roll that is still acceptable. */
  readonly longestRoll: Metres;
  /** Speed over the ground at lift-off, at the end of that roll. */
  readonly liftOffGroundSpeed: GroundSpeed;
  /** Time from the decision to the brakes, during which the speed is kept. */
  readonly reactionTime: Seconds;
  /** Braking coefficient: deceleration as a share of gravity. */
  readonly brakingCoefficient: Ratio;
  /** Accelerate-stop distance available. */
  readonly stopDistanceAvailable: Metres;
}

export const latestRejectPointDomain = {
  longestRoll: { unit: 'm', min: 1, max: 20000, source: 'library range' },
  liftOffGroundSpeed: { unit: 'ktGS', min: 1, max: 250, source: 'library range' },
  reactionTime: { unit: 's', min: 0, max: 30, source: 'library range' },
  brakingCoefficient: { unit: 'ratio', min: 0.01, max: 1, source: 'library range' },
  stopDistanceAvailable: { unit: 'm', min: 0, max: 20000, source: 'library range' },
} satisfies Domain<LatestRejectPointInputs>;

/** Standard acceleration of free fall. */
const g_mps2 = 9.80665;

/**
 * Farthest point of the longest acceptable ground roll from which the aeroplane still stops within the
 * accelerate-stop distance available.
 *
 * The largest x of 0 to R with x + t v + v² / (2 μ g) ≤ S, v = V √(x / R): R the roll in m, V the ground speed at
 * lift-off, t the reaction time in s, μ the braking coefficient, S the distance available in m, g = 9.80665 m/s². The
 * runway is level, acceleration and braking are uniform. R itself means that a stop fits from anywhere before lift-off.
 *
 * @param x - `longestRoll` 1 m to 20 000 m, `liftOffGroundSpeed` 1 kt to 250 kt, `reactionTime` 0 s to 30 s,
 * `brakingCoefficient` 0.01 to 1, `stopDistanceAvailable` 0 m to 20 000 m.
 * @returns The distance of the point from the start of the roll in m, at most the roll.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record distance.latest-reject-point
 *
 * @example
 * latestRejectPoint({ longestRoll: m(500), liftOffGroundSpeed: ktGS(50), reactionTime: seconds(3), brakingCoefficient: ratio(0.2), stopDistanceAvailable: m(600) }) // ≈ 397.2 ± 0.1
 */
export function latestRejectPoint(x: LatestRejectPointInputs): Metres {
  demand('longestRoll', x.longestRoll, latestRejectPointDomain.longestRoll);
  demand('liftOffGroundSpeed', x.liftOffGroundSpeed, latestRejectPointDomain.liftOffGroundSpeed);
  demand('reactionTime', x.reactionTime, latestRejectPointDomain.reactionTime);
  demand('brakingCoefficient', x.brakingCoefficient, latestRejectPointDomain.brakingCoefficient);
  demand('stopDistanceAvailable', x.stopDistanceAvailable, latestRejectPointDomain.stopDistanceAvailable);
  const { longestRoll: roll_m, liftOffGroundSpeed: v_kt, reactionTime: t_s }: Numbers<LatestRejectPointInputs> = x;
  const { brakingCoefficient: mu, stopDistanceAvailable: asda_m }: Numbers<LatestRejectPointInputs> = x;
  const v_mps = (v_kt * 1852) / 3600;
  // In y = √x the condition is the quadratic a y² + b y = S, of which the positive root is wanted.
  const a = 1 + v_mps ** 2 / (2 * mu * g_mps2 * roll_m);
  const b = (t_s * v_mps) / Math.sqrt(roll_m);
  const y = (Math.sqrt(b ** 2 + 4 * a * asda_m) - b) / (2 * a);
  return Math.min(roll_m, y ** 2) as Metres;
}
