import {
  type Domain,
  demand,
  inconsistent,
  type Kilograms,
  type Knots,
  type Metres,
  type Numbers,
  type Percent,
  type Ratio,
  type TrueAirspeed,
} from '../units/index.ts';
import { accelerationOfRoll_mps2, effectiveThrustDomain, refuseWindAboveLiftOff } from './effective-thrust.ts';
import { type Incline, inclineOf, resistance_mps2 } from './incline.ts';
import { standardGravity as g_mps2 } from './standard-gravity.ts';

/** Inputs of {@link rollRatio}. */
export interface RollRatioInputs {
  /** Ground roll that is known, from the flight manual for instance. */
  readonly groundRoll: Metres;
  /** Mass for which it holds. */
  readonly mass: Kilograms;
  /** Lift-off speed for which it holds. */
  readonly liftOffSpeed: TrueAirspeed;
  /** Least rolling friction that its surface may have. */
  readonly leastFriction: Ratio;
  /** Greatest rolling friction that its surface may have. */
  readonly greatestFriction: Ratio;
  /** Slope for which it holds, positive uphill in the direction of the roll. */
  readonly slope: Percent;
  /** Wind component for which it holds: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
  /** Mass that is asked for. */
  readonly otherMass: Kilograms;
  /** Least rolling friction that the other surface may have. */
  readonly otherLeastFriction: Ratio;
  /** Greatest rolling friction that the other surface may have. */
  readonly otherGreatestFriction: Ratio;
  /** Slope that is asked for. */
  readonly otherSlope: Percent;
  /** Wind component that is asked for. */
  readonly otherHeadwind: Knots;
}

/** An estimate of one ground roll over another, as a band. */
export interface RollRatio {
  /** With the greatest friction for the known roll and the least for the other. */
  readonly low: Ratio;
  /** With the least friction for the known roll and the greatest for the other; missing when the other roll may never end. */
  readonly high: Ratio | undefined;
}

export const rollRatioDomain = {
  groundRoll: effectiveThrustDomain.groundRoll,
  mass: effectiveThrustDomain.mass,
  liftOffSpeed: effectiveThrustDomain.liftOffSpeed,
  leastFriction: effectiveThrustDomain.rollingFriction,
  greatestFriction: effectiveThrustDomain.rollingFriction,
  slope: effectiveThrustDomain.slope,
  headwind: effectiveThrustDomain.headwind,
  otherMass: effectiveThrustDomain.mass,
  otherLeastFriction: effectiveThrustDomain.rollingFriction,
  otherGreatestFriction: effectiveThrustDomain.rollingFriction,
  otherSlope: effectiveThrustDomain.slope,
  otherHeadwind: effectiveThrustDomain.headwind,
} satisfies Domain<RollRatioInputs>;

/**
 * Ground roll on another surface, slope, wind or at another mass, over one that is known: an estimate, as a band.
 *
 * r = s′/s with s′ = (V′ − V_w′)²/(2 a′), V′ = V_LOF √(m′/m) and a′ = T/m′ − g (μ′ cos θ′ + sin θ′), T the
 * {@link effectiveThrust} of the known roll. The band comes from the spread of the two frictions; where both are the same
 * surface, give one figure for all four, or the band counts as unknown what cancels.
 *
 * What the estimate neglects: lift, which unloads the wheels, so that it overstates what friction costs (1.37 against
 * 1.30 for 0.10 instead of 0.04 in a worked case); and the fall of thrust with speed, so that it understates what mass
 * costs (1.23 against 1.25 for a tenth more) and overstates what a wind does (0.685 against 0.694 for 10 kt ahead, 1.374
 * against 1.359 for 10 kt behind). Density is that of the known roll.
 *
 * It is advice beside a manual's figures and never replaces them. It may make an answer more adverse; it never turns
 * one that is outside limits or undetermined into one within.
 *
 * @param x - `groundRoll` 10 m to 20 000 m, masses 100 kg to 100 000 kg, `liftOffSpeed` 15 KTAS to 250 KTAS and above
 * the headwinds, frictions 0 to 0.5 and each least no more than its greatest, slopes −20 % to 20 %, headwinds −50 kt to
 * 50 kt.
 * @returns `low` and `high` as ratios; `high` is `undefined` when the greatest friction leaves no acceleration.
 * @throws {@link DomainError} when a parameter is not within its range or at odds with another, and when even the least
 * friction of the other surface leaves no acceleration.
 * @record dynamics.roll-ratio
 *
 * @example
 * const known = { groundRoll: m(180), mass: kg(900), liftOffSpeed: ktas(52), leastFriction: ratio(0.02), greatestFriction: ratio(0.05), slope: percent(0), headwind: kt(0) }
 * const other = { otherMass: kg(900), otherLeastFriction: ratio(0.1), otherGreatestFriction: ratio(0.1), otherSlope: percent(0), otherHeadwind: kt(0) }
 * rollRatio({ ...known, ...other }).low // ≈ 1.327 ± 0.001
 * rollRatio({ ...known, ...other }).high?.toFixed(3) // => '1.652'
 * rollRatio({ ...known, ...other, otherGreatestFriction: ratio(0.3) }).high // => undefined
 */
export function rollRatio(x: RollRatioInputs): RollRatio {
  demand('leastFriction', x.leastFriction, rollRatioDomain.leastFriction);
  demand('greatestFriction', x.greatestFriction, rollRatioDomain.greatestFriction);
  demand('otherMass', x.otherMass, rollRatioDomain.otherMass);
  demand('otherLeastFriction', x.otherLeastFriction, rollRatioDomain.otherLeastFriction);
  demand('otherGreatestFriction', x.otherGreatestFriction, rollRatioDomain.otherGreatestFriction);
  demand('otherSlope', x.otherSlope, rollRatioDomain.otherSlope);
  demand('otherHeadwind', x.otherHeadwind, rollRatioDomain.otherHeadwind);
  const { leastFriction, greatestFriction }: Numbers<RollRatioInputs> = x;
  const { otherLeastFriction, otherGreatestFriction }: Numbers<RollRatioInputs> = x;
  if (leastFriction > greatestFriction) refuse('leastFriction', leastFriction, greatestFriction, inOrder);
  if (otherLeastFriction > otherGreatestFriction)
    refuse('otherLeastFriction', otherLeastFriction, otherGreatestFriction, inOrder);
  demandKnownRoll(x);
  const known = inclineOf(x.slope);
  const other = inclineOf(x.otherSlope);
  const strong_N = thrustOfKnownRoll_N(x, known, greatestFriction);
  const weak_N = thrustOfKnownRoll_N(x, known, leastFriction);
  const low = ratioWith(x, strong_N, other, otherLeastFriction);
  const high = ratioWith(x, weak_N, other, otherGreatestFriction);
  if (low === undefined) {
    const most = mostFriction(x, strong_N, other);
    refuse('otherLeastFriction', otherLeastFriction, most, 'the other roll accelerates');
  }
  return { low, high } as RollRatio;
}

const inOrder = 'the least is no more than the greatest';

/** The checks of `effectiveThrust`, whose frictions have passed theirs. */
function demandKnownRoll(x: RollRatioInputs): void {
  demand('groundRoll', x.groundRoll, rollRatioDomain.groundRoll);
  demand('mass', x.mass, rollRatioDomain.mass);
  demand('liftOffSpeed', x.liftOffSpeed, rollRatioDomain.liftOffSpeed);
  demand('slope', x.slope, rollRatioDomain.slope);
  demand('headwind', x.headwind, rollRatioDomain.headwind);
  const { liftOffSpeed: vlof_kt, headwind: vw_kt }: Numbers<RollRatioInputs> = x;
  if (vw_kt >= vlof_kt) refuseWindAboveLiftOff(vw_kt, vlof_kt);
}

/** The thrust of the known roll with one friction, as `effectiveThrust` finds it. */
function thrustOfKnownRoll_N(x: RollRatioInputs, incline: Incline, mu: number): number {
  const { groundRoll: s_m, mass: m_kg, liftOffSpeed: vlof_kt, headwind: vw_kt }: Numbers<RollRatioInputs> = x;
  return m_kg * (accelerationOfRoll_mps2(s_m, vlof_kt, vw_kt) + resistance_mps2(incline, mu));
}

/** The ratio with one thrust and one friction; none when the other roll does not accelerate. */
function ratioWith(x: RollRatioInputs, thrust_N: number, incline: Incline, mu: number): number | undefined {
  const { groundRoll: s_m, mass: m_kg, otherMass: otherMass_kg }: Numbers<RollRatioInputs> = x;
  const { liftOffSpeed: vlof_kt, otherHeadwind: vw_kt }: Numbers<RollRatioInputs> = x;
  const otherSpeed_kt = vlof_kt * Math.sqrt(otherMass_kg / m_kg);
  if (vw_kt >= otherSpeed_kt)
    refuse('otherHeadwind', vw_kt, otherSpeed_kt, 'the headwind is less than the lift-off speed');
  const groundSpeed_mps = ((otherSpeed_kt - vw_kt) * 1852) / 3600;
  const acceleration_mps2 = thrust_N / otherMass_kg - resistance_mps2(incline, mu);
  if (acceleration_mps2 <= 0) return undefined;
  return groundSpeed_mps ** 2 / (2 * acceleration_mps2) / s_m;
}

/** The friction at which the other roll would not accelerate, taking the known one at its greatest. */
function mostFriction({ otherMass }: RollRatioInputs, thrust_N: number, { cosine, sine }: Incline): number {
  const otherMass_kg: number = otherMass;
  return (thrust_N / (otherMass_kg * g_mps2) - sine) / cosine;
}

/** Refuses a parameter that others narrow to less than its range. */
function refuse(
  parameter: 'leastFriction' | 'otherLeastFriction' | 'otherHeadwind',
  received: number,
  max: number,
  source: string,
): never {
  const { unit, min } = rollRatioDomain[parameter];
  throw inconsistent(parameter, received, unit, min, max, source);
}
