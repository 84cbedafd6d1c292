import {
  type Domain,
  demand,
  inconsistent,
  type Kilograms,
  type Knots,
  type Metres,
  type Newtons,
  type Numbers,
  type Percent,
  type Ratio,
  type TrueAirspeed,
} from '../units/index.ts';
import { inclineOf, resistance_mps2 } from './incline.ts';

/** Inputs of {@link effectiveThrust}. */
export interface EffectiveThrustInputs {
  /** Ground roll that is known, from the flight manual for instance. */
  readonly groundRoll: Metres;
  /** Mass for which it holds. */
  readonly mass: Kilograms;
  /** Lift-off speed for which it holds. */
  readonly liftOffSpeed: TrueAirspeed;
  /** Rolling friction of the surface for which it holds. */
  readonly rollingFriction: Ratio;
  /** Slope for which it holds, positive uphill in the direction of the roll. */
  readonly slope: Percent;
  /** Wind component for which it holds: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
}

export const effectiveThrustDomain = {
  groundRoll: { unit: 'm', min: 10, max: 20000, source: 'library range' },
  mass: { unit: 'kg', min: 100, max: 100000, source: 'library range' },
  liftOffSpeed: { unit: 'ktas', min: 15, max: 250, source: 'library range' },
  rollingFriction: { unit: 'ratio', min: 0, max: 0.5, source: 'library range' },
  slope: { unit: 'percent', min: -20, max: 20, source: 'library range' },
  headwind: { unit: 'kt', min: -50, max: 50, source: 'library range' },
} satisfies Domain<EffectiveThrustInputs>;

/**
 * Constant thrust that would give a known ground roll: the mean of thrust less drag, with the wheels loaded by the whole
 * weight throughout.
 *
 * T = m [(V_LOF − V_w)²/(2 s) + g (μ cos θ + sin θ)]: m the mass in kg, V_LOF the lift-off speed, true, and V_w the
 * headwind, in m/s, s the ground roll in m, μ the rolling friction, θ the angle of the slope, g = 9.80665 m/s². It stands
 * for the aeroplane in an estimate such as {@link rollRatio}; it is not the thrust of its propeller.
 *
 * @param x - `groundRoll` 10 m to 20 000 m, `mass` 100 kg to 100 000 kg, `liftOffSpeed` 15 KTAS to 250 KTAS and above
 * the headwind, `rollingFriction` 0 to 0.5, `slope` −20 % to 20 %, `headwind` −50 kt to 50 kt.
 * @returns The thrust in N; negative when the slope alone would do more.
 * @throws {@link DomainError} when a parameter is not within its range or at odds with another.
 * @record dynamics.effective-thrust
 *
 * @example
 * effectiveThrust({ groundRoll: m(180), mass: kg(900), liftOffSpeed: ktas(52), rollingFriction: ratio(0.03), slope: percent(0), headwind: kt(0) }) // ≈ 2053.83 ± 0.01
 */
export function effectiveThrust(x: EffectiveThrustInputs): Newtons {
  demand('groundRoll', x.groundRoll, effectiveThrustDomain.groundRoll);
  demand('mass', x.mass, effectiveThrustDomain.mass);
  demand('liftOffSpeed', x.liftOffSpeed, effectiveThrustDomain.liftOffSpeed);
  demand('rollingFriction', x.rollingFriction, effectiveThrustDomain.rollingFriction);
  demand('slope', x.slope, effectiveThrustDomain.slope);
  demand('headwind', x.headwind, effectiveThrustDomain.headwind);
  const { groundRoll: s_m, mass: m_kg, liftOffSpeed: vlof_kt }: Numbers<EffectiveThrustInputs> = x;
  const { rollingFriction: mu, slope: slope_percent, headwind: vw_kt }: Numbers<EffectiveThrustInputs> = x;
  if (vw_kt >= vlof_kt) refuseWindAboveLiftOff(vw_kt, vlof_kt);
  const acceleration_mps2 = accelerationOfRoll_mps2(s_m, vlof_kt, vw_kt);
  return (m_kg * (acceleration_mps2 + resistance_mps2(inclineOf(slope_percent), mu))) as Newtons;
}

/** The even acceleration that ends a roll at the lift-off speed. */
export function accelerationOfRoll_mps2(s_m: number, vlof_kt: number, vw_kt: number): number {
  const groundSpeed_mps = ((vlof_kt - vw_kt) * 1852) / 3600;
  return groundSpeed_mps ** 2 / (2 * s_m);
}

export function refuseWindAboveLiftOff(received: number, max: number): never {
  const { unit, min } = effectiveThrustDomain.headwind;
  const source = 'the headwind is less than the lift-off speed';
  throw inconsistent('headwind', received, unit, min, max, source);
}
