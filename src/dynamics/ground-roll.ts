import {
  type Domain,
  demand,
  inconsistent,
  type Kilograms,
  type KilogramsPerCubicMetre,
  type KilogramsPerMetre,
  type Knots,
  type Metres,
  type Newtons,
  type Numbers,
  type Percent,
  type Ratio,
  type Seconds,
  type SquareMetres,
  type TrueAirspeed,
} from '../units/index.ts';
import { speedChange } from './quadratic-motion.ts';
import { standardGravity as g_mps2 } from './standard-gravity.ts';

/** Inputs of {@link groundRoll} and of {@link groundRollByIntegration}. */
export interface GroundRollInputs {
  /** Mass of the aeroplane. */
  readonly mass: Kilograms;
  /** Speed at which the aeroplane lifts off. */
  readonly liftOffSpeed: TrueAirspeed;
  /** Thrust at standstill, T₀. */
  readonly staticThrust: Newtons;
  /** Change of the thrust for each square of the airspeed, a in T₀ + a V²; negative for a propeller. */
  readonly thrustChange: KilogramsPerMetre;
  /** Wing area to which the coefficients refer. */
  readonly wingArea: SquareMetres;
  /** Density of the air. */
  readonly density: KilogramsPerCubicMetre;
  /** Lift coefficient in the attitude of the roll. */
  readonly liftCoefficient: Ratio;
  /** Drag coefficient in the attitude of the roll, near the ground. */
  readonly dragCoefficient: Ratio;
  /** Rolling friction: resistance of the wheels as a share of the load on them. */
  readonly rollingFriction: Ratio;
  /** Slope of the runway, positive uphill in the direction of the roll. */
  readonly slope: Percent;
  /** Wind component along the runway: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
}

/** The ground roll of a take-off. */
export interface GroundRoll {
  /** Distance over the ground from standstill to lift-off. */
  readonly distance: Metres;
  /** Time from standstill to lift-off. */
  readonly time: Seconds;
}

export const groundRollDomain = {
  mass: { unit: 'kg', min: 100, max: 100000, source: 'library range' },
  liftOffSpeed: { unit: 'ktas', min: 15, max: 250, source: 'library range' },
  staticThrust: { unit: 'N', min: 0, max: 1000000, source: 'library range' },
  thrustChange: { unit: 'kgPerM', min: -100, max: 100, source: 'library range' },
  wingArea: { unit: 'm2', min: 1, max: 500, source: 'library range' },
  density: { unit: 'kgPerM3', min: 0.3, max: 1.6, source: 'library range' },
  liftCoefficient: { unit: 'ratio', min: 0, max: 4, source: 'library range' },
  dragCoefficient: { unit: 'ratio', min: 0, max: 1, source: 'library range' },
  rollingFriction: { unit: 'ratio', min: 0, max: 0.5, source: 'library range' },
  slope: { unit: 'percent', min: -20, max: 20, source: 'library range' },
  headwind: { unit: 'kt', min: -50, max: 50, source: 'library range' },
} satisfies Domain<GroundRollInputs>;

/**
 * Ground roll to lift-off from the forces on the aeroplane, in closed form.
 *
 * dV/dt = A − B V² with A = g [T₀/(m g) − μ cos θ − sin θ] and B = [½ ρ S (C_D − μ C_L) − a]/m; then
 * t = ∫ dV/(A − B V²) and s = ∫ V dV/(A − B V²) − V_w t, both from V_w to V_LOF: T₀ + a V² the thrust in N, m the mass
 * in kg, ρ the density in kg/m³, S the wing area in m², θ the angle of the slope, V_w the headwind and V_LOF the
 * lift-off speed, true, in m/s, g = 9.80665 m/s². Thrust, attitude, wind and friction keep their law throughout; the
 * rotation before lift-off is not in it. While a tailwind still overtakes the aeroplane its drag is counted against
 * the motion, which lengthens the roll: by some
 * millimetres at 10 kt, by a hundredth at 40 kt.
 *
 * @param x - `mass` 100 kg to 100 000 kg, `liftOffSpeed` 15 KTAS to 250 KTAS and above the headwind, `staticThrust` 0 N
 * to 1 000 000 N and enough to start and to lift off, `thrustChange` −100 kg/m to 100 kg/m, `wingArea` 1 m² to 500 m²,
 * `density` 0.3 kg/m³ to 1.6 kg/m³, `liftCoefficient` 0 to 4 and too low to lift off in the attitude of the roll,
 * `dragCoefficient` 0 to 1, `rollingFriction` 0 to 0.5, `slope` −20 % to 20 %, `headwind` −50 kt to 50 kt.
 * @returns `distance` over the ground in m and `time` in s.
 * @throws {@link DomainError} when a parameter is not within its range or at odds with the others: the thrust cannot
 * start the roll or cannot reach lift-off speed, the wind alone exceeds it, or the wheels carry no load before it.
 * @record dynamics.ground-roll
 *
 * @example
 * const roll = { mass: kg(900), liftOffSpeed: ktas(52), staticThrust: newtons(2600), thrustChange: kgPerM(-0.9), wingArea: m2(15), density: kgPerM3(1.225), liftCoefficient: ratio(0.5), dragCoefficient: ratio(0.05), slope: percent(0), headwind: kt(0) }
 * groundRoll({ ...roll, rollingFriction: ratio(0.03) }).distance // ≈ 172.75 ± 0.01
 * groundRoll({ ...roll, rollingFriction: ratio(0.1) }).distance // ≈ 235.02 ± 0.01
 * groundRoll({ ...roll, rollingFriction: ratio(0.3) }) // throws staticThrust: 2600 N is inconsistent with
 */
export function groundRoll(x: GroundRollInputs): GroundRoll {
  demandGroundRoll(x);
  const {
    mass: m_kg,
    liftOffSpeed: vlof_kt,
    staticThrust: t0_N,
    thrustChange: a_kgPerM,
  }: Numbers<GroundRollInputs> = x;
  const {
    wingArea: s_m2,
    density: rho_kgPerM3,
    liftCoefficient: cl,
    dragCoefficient: cd,
  }: Numbers<GroundRollInputs> = x;
  const { rollingFriction: mu, slope: slope_percent, headwind: vw_kt }: Numbers<GroundRollInputs> = x;
  const theta_rad = Math.atan(slope_percent / 100);
  demandLiftOff(x, theta_rad);
  const vlof_mps = (vlof_kt * 1852) / 3600;
  const vw_mps = (vw_kt * 1852) / 3600;
  const a_mps2 = g_mps2 * (t0_N / (m_kg * g_mps2) - mu * Math.cos(theta_rad) - Math.sin(theta_rad));
  const b_perM = (0.5 * rho_kgPerM3 * s_m2 * (cd - mu * cl) - a_kgPerM) / m_kg;
  const { airDistance_m, time_s } = speedChange(a_mps2, b_perM, vw_mps, vlof_mps);
  return { distance: airDistance_m - vw_mps * time_s, time: time_s } as GroundRoll;
}

/** Refuses what is out of range; the closed form and the integration share it. */
export function demandGroundRoll(x: GroundRollInputs): void {
  demand('mass', x.mass, groundRollDomain.mass);
  demand('liftOffSpeed', x.liftOffSpeed, groundRollDomain.liftOffSpeed);
  demand('staticThrust', x.staticThrust, groundRollDomain.staticThrust);
  demand('thrustChange', x.thrustChange, groundRollDomain.thrustChange);
  demand('wingArea', x.wingArea, groundRollDomain.wingArea);
  demand('density', x.density, groundRollDomain.density);
  demand('liftCoefficient', x.liftCoefficient, groundRollDomain.liftCoefficient);
  demand('dragCoefficient', x.dragCoefficient, groundRollDomain.dragCoefficient);
  demand('rollingFriction', x.rollingFriction, groundRollDomain.rollingFriction);
  demand('slope', x.slope, groundRollDomain.slope);
  demand('headwind', x.headwind, groundRollDomain.headwind);
}

/** Refuses what cannot lift off from a slope of that angle. */
export function demandLiftOff(x: GroundRollInputs, theta_rad: number): void {
  const {
    mass: m_kg,
    liftOffSpeed: vlof_kt,
    staticThrust: t0_N,
    thrustChange: a_kgPerM,
  }: Numbers<GroundRollInputs> = x;
  const {
    wingArea: s_m2,
    density: rho_kgPerM3,
    liftCoefficient: cl,
    dragCoefficient: cd,
  }: Numbers<GroundRollInputs> = x;
  const { rollingFriction: mu, headwind: vw_kt }: Numbers<GroundRollInputs> = x;
  if (vw_kt >= vlof_kt) refuse('headwind', vw_kt, undefined, vlof_kt, 'the headwind is less than the lift-off speed');
  const weight_N = m_kg * g_mps2;
  // A tailwind above the lift-off speed is the greater airspeed of the two, and the harder one to overcome.
  const fastest_mps = (Math.max(vlof_kt, -vw_kt) * 1852) / 3600;
  const q_N = 0.5 * rho_kgPerM3 * s_m2 * fastest_mps ** 2;
  const mostLift = (weight_N * Math.cos(theta_rad)) / q_N;
  if (cl > mostLift) refuse('liftCoefficient', cl, undefined, mostLift, 'the wheels carry a load until lift-off');
  const atStart_N = weight_N * (mu * Math.cos(theta_rad) + Math.sin(theta_rad));
  if (t0_N <= atStart_N) refuse('staticThrust', t0_N, atStart_N, undefined, 'the aeroplane can start to roll');
  const atLiftOff_N = atStart_N + q_N * (cd - mu * cl) - a_kgPerM * fastest_mps ** 2;
  if (t0_N <= atLiftOff_N) refuse('staticThrust', t0_N, atLiftOff_N, undefined, 'the lift-off speed can be reached');
}

/** Refuses a parameter that others narrow to less than its range. */
function refuse(
  parameter: 'headwind' | 'liftCoefficient' | 'staticThrust',
  received: number,
  least: number | undefined,
  most: number | undefined,
  source: string,
): never {
  const { unit, min, max } = groundRollDomain[parameter];
  throw inconsistent(parameter, received, unit, least ?? min, most ?? max, source);
}
