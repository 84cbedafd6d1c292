import {
  type Domain,
  demand,
  inconsistent,
  type Kilograms,
  type Metres,
  type MetresPerSecondSquared,
  type Newtons,
  type Numbers,
  type Ratio,
  type TrueAirspeed,
} from '../units/index.ts';

/** Inputs of {@link groundRollShortForm}. */
export interface GroundRollShortFormInputs {
  /** Mass of the aeroplane. */
  readonly mass: Kilograms;
  /** Speed at which the aeroplane lifts off. */
  readonly liftOffSpeed: TrueAirspeed;
  /** Thrust at 0.7 of the lift-off speed. */
  readonly thrust: Newtons;
  /** Drag at 0.7 of the lift-off speed. */
  readonly drag: Newtons;
  /** Lift at 0.7 of the lift-off speed. */
  readonly lift: Newtons;
  /** Rolling friction as a share of the load on the wheels. */
  readonly rollingFriction: Ratio;
  /** Acceleration of free fall. */
  readonly gravity: MetresPerSecondSquared;
}

export const groundRollShortFormDomain = {
  mass: { unit: 'kg', min: 100, max: 100000, source: 'library range' },
  liftOffSpeed: { unit: 'ktas', min: 15, max: 250, source: 'library range' },
  thrust: { unit: 'N', min: 0, max: 1000000, source: 'library range' },
  drag: { unit: 'N', min: 0, max: 1000000, source: 'library range' },
  lift: { unit: 'N', min: 0, max: 1000000, source: 'library range' },
  rollingFriction: { unit: 'ratio', min: 0, max: 0.5, source: 'library range' },
  gravity: { unit: 'mps2', min: 9, max: 10.5, source: 'free fall on the Earth, as textbooks round it' },
} satisfies Domain<GroundRollShortFormInputs>;

/**
 * Ground roll in calm air and on the level, from the forces at 0.7 of the lift-off speed alone.
 *
 * s = V_LOF² m / (2 {T − [D + μ (W − L)]}), the braces at 0.7 V_LOF: m the mass in kg, W = m g the weight, T the thrust,
 * D the drag and L the lift in N, V_LOF the lift-off speed, true, in m/s, g the acceleration of free fall in m/s². With
 * V_LOF = 1.2 V_stall this is 1.44 W² / (g ρ S C_Lmax {...}), as printed. At 0.7 of the speed the forces that grow with
 * its square have half their last size. The form comes out short of the exact one: by 0.4 % for the jet of the source, by
 * 2 % for the light aeroplane below, whose thrust falls with speed.
 *
 * @param x - `mass` 100 kg to 100 000 kg, `liftOffSpeed` 15 KTAS to 250 KTAS, `thrust` 0 N to 1 000 000 N and more than
 * the resistance, `drag` 0 N to 1 000 000 N, `lift` 0 N to 1 000 000 N and no more than the weight, `rollingFriction` 0
 * to 0.5, `gravity` 9 m/s² to 10.5 m/s².
 * @returns The ground roll in m.
 * @throws {@link DomainError} when a parameter is not within its range or at odds with the others.
 * @record dynamics.ground-roll-short-form
 *
 * @example
 * groundRollShortForm({ mass: kg(900), liftOffSpeed: ktas(52), thrust: newtons(2280), drag: newtons(161), lift: newtons(1613), rollingFriction: ratio(0.03), gravity: standardGravity }) // ≈ 169.26 ± 0.01
 */
export function groundRollShortForm(x: GroundRollShortFormInputs): Metres {
  demand('mass', x.mass, groundRollShortFormDomain.mass);
  demand('liftOffSpeed', x.liftOffSpeed, groundRollShortFormDomain.liftOffSpeed);
  demand('thrust', x.thrust, groundRollShortFormDomain.thrust);
  demand('drag', x.drag, groundRollShortFormDomain.drag);
  demand('lift', x.lift, groundRollShortFormDomain.lift);
  demand('rollingFriction', x.rollingFriction, groundRollShortFormDomain.rollingFriction);
  demand('gravity', x.gravity, groundRollShortFormDomain.gravity);
  const { mass: m_kg, liftOffSpeed: v_kt, thrust: thrust_N }: Numbers<GroundRollShortFormInputs> = x;
  const { drag: drag_N, lift: lift_N, rollingFriction: mu, gravity: g_mps2 }: Numbers<GroundRollShortFormInputs> = x;
  const v_mps = (v_kt * 1852) / 3600;
  const weight_N = m_kg * g_mps2;
  if (lift_N > weight_N) refuse('lift', lift_N, 0, weight_N, 'the wheels carry a load until lift-off');
  const resistance_N = drag_N + mu * (weight_N - lift_N);
  const { max } = groundRollShortFormDomain.thrust;
  if (thrust_N <= resistance_N) refuse('thrust', thrust_N, resistance_N, max, 'the aeroplane gains speed');
  return ((v_mps ** 2 * m_kg) / (2 * (thrust_N - resistance_N))) as Metres;
}

function refuse(parameter: 'lift' | 'thrust', received: number, min: number, max: number, source: string): never {
  const { unit } = groundRollShortFormDomain[parameter];
  throw inconsistent(parameter, received, unit, min, max, source);
}
