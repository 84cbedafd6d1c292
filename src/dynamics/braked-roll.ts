import {
  type Domain,
  demand,
  inconsistent,
  type Kilograms,
  type KilogramsPerCubicMetre,
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

/** Inputs of {@link brakedRoll}. */
export interface BrakedRollInputs {
  /** Mass of the aeroplane. */
  readonly mass: Kilograms;
  /** Speed at touchdown, or at which a take-off is rejected. */
  readonly speed: TrueAirspeed;
  /** Thrust left while braking; negative when reversed. */
  readonly thrust: Newtons;
  /** Wing area to which the coefficients refer. */
  readonly wingArea: SquareMetres;
  /** Density of the air. */
  readonly density: KilogramsPerCubicMetre;
  /** Lift coefficient in the attitude of the roll. */
  readonly liftCoefficient: Ratio;
  /** Drag coefficient in the attitude of the roll, near the ground. */
  readonly dragCoefficient: Ratio;
  /** Braking friction: resistance of the braked wheels as a share of the load on them. */
  readonly brakingFriction: Ratio;
  /** Time before the brakes are on, during which the speed is kept. */
  readonly freeRollTime: Seconds;
  /** Slope of the runway, positive uphill in the direction of the roll. */
  readonly slope: Percent;
  /** Wind component along the runway: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
}

/** The roll to a stop. */
export interface BrakedRoll {
  /** Distance over the ground to standstill. */
  readonly distance: Metres;
  /** Time to standstill. */
  readonly time: Seconds;
}

export const brakedRollDomain = {
  mass: { unit: 'kg', min: 100, max: 100000, source: 'library range' },
  speed: { unit: 'ktas', min: 5, max: 250, source: 'library range' },
  thrust: { unit: 'N', min: -1000000, max: 1000000, source: 'library range' },
  wingArea: { unit: 'm2', min: 1, max: 500, source: 'library range' },
  density: { unit: 'kgPerM3', min: 0.3, max: 1.6, source: 'library range' },
  liftCoefficient: { unit: 'ratio', min: 0, max: 4, source: 'library range' },
  dragCoefficient: { unit: 'ratio', min: 0, max: 1, source: 'library range' },
  brakingFriction: { unit: 'ratio', min: 0, max: 1, source: 'library range' },
  freeRollTime: { unit: 's', min: 0, max: 30, source: 'library range' },
  slope: { unit: 'percent', min: -20, max: 20, source: 'library range' },
  headwind: { unit: 'kt', min: -50, max: 50, source: 'library range' },
} satisfies Domain<BrakedRollInputs>;

/**
 * Roll to a stop under braking, from the forces on the aeroplane, in closed form.
 *
 * −dV/dt = A + B V² with A = g [μ cos θ + sin θ − T/(m g)] and B = ½ ρ S (C_D − μ C_L)/m; the distance is
 * ∫ V dV/(A + B V²) − V_w ∫ dV/(A + B V²), both from V_w to V, and N (V − V_w) before the brakes are on: μ the braking
 * friction, T the thrust left in N, N the time before braking in s, the other symbols as in {@link groundRoll}.
 *
 * @param x - `mass` 100 kg to 100 000 kg, `speed` 5 KTAS to 250 KTAS and above the headwind, `thrust` −1 000 000 N to
 * 1 000 000 N, `wingArea` 1 m² to 500 m², `density` 0.3 kg/m³ to 1.6 kg/m³, `liftCoefficient` 0 to 4 and too low to
 * carry the aeroplane, `dragCoefficient` 0 to 1, `brakingFriction` 0 to 1 and enough to stop, `freeRollTime` 0 s to 30 s,
 * `slope` −20 % to 20 %, `headwind` −50 kt to 50 kt.
 * @returns `distance` over the ground in m and `time` in s, to standstill.
 * @throws {@link DomainError} when a parameter is not within its range or at odds with the others: the brakes do not
 * stop the aeroplane, the wind alone exceeds the speed, or the wheels carry no load.
 * @record dynamics.braked-roll
 *
 * @example
 * const roll = { mass: kg(900), speed: ktas(48), thrust: newtons(0), wingArea: m2(15), density: kgPerM3(1.225), liftCoefficient: ratio(0.4), dragCoefficient: ratio(0.08), freeRollTime: seconds(1), slope: percent(0), headwind: kt(0) }
 * brakedRoll({ ...roll, brakingFriction: ratio(0.3) }).distance // ≈ 132.97 ± 0.01
 * brakedRoll({ ...roll, brakingFriction: ratio(0.05), slope: percent(-6) }) // throws brakingFriction: 0.05 ratio is inconsistent with
 */
export function brakedRoll(x: BrakedRollInputs): BrakedRoll {
  demandRanges(x);
  const { mass: m_kg, speed: v_kt, thrust: thrust_N, wingArea: s_m2 }: Numbers<BrakedRollInputs> = x;
  const { density: rho_kgPerM3, liftCoefficient: cl, dragCoefficient: cd }: Numbers<BrakedRollInputs> = x;
  const { brakingFriction: mu, freeRollTime: n_s }: Numbers<BrakedRollInputs> = x;
  const { slope: slope_percent, headwind: vw_kt }: Numbers<BrakedRollInputs> = x;
  if (vw_kt >= v_kt) refuse('headwind', vw_kt, undefined, v_kt, 'the headwind is less than the speed');
  const theta_rad = Math.atan(slope_percent / 100);
  const v_mps = (v_kt * 1852) / 3600;
  const vw_mps = (vw_kt * 1852) / 3600;
  const weight_N = m_kg * g_mps2;
  const q_N = 0.5 * rho_kgPerM3 * s_m2 * Math.max(v_mps, -vw_mps) ** 2;
  const load_N = weight_N * Math.cos(theta_rad);
  if (cl >= load_N / q_N) refuse('liftCoefficient', cl, undefined, load_N / q_N, 'the wheels carry a load');
  const drive_N = thrust_N - weight_N * Math.sin(theta_rad);
  const least = Math.max(drive_N / load_N, (drive_N - q_N * cd) / (load_N - q_N * cl));
  if (mu <= least) refuse('brakingFriction', mu, least, undefined, 'the brakes stop the aeroplane');
  const a_mps2 = g_mps2 * (mu * Math.cos(theta_rad) + Math.sin(theta_rad) - thrust_N / weight_N);
  const b_perM = (0.5 * rho_kgPerM3 * s_m2 * (cd - mu * cl)) / m_kg;
  // Braking from V down to the wind is, backwards in time, gaining the same speed under the opposite force.
  const { airDistance_m, time_s } = speedChange(a_mps2, -b_perM, vw_mps, v_mps);
  const distance = n_s * (v_mps - vw_mps) + airDistance_m - vw_mps * time_s;
  return { distance, time: n_s + time_s } as BrakedRoll;
}

/** The checks apart from the motion: together they would be too long to be compiled into what calls them. */
function demandRanges(x: BrakedRollInputs): void {
  demand('mass', x.mass, brakedRollDomain.mass);
  demand('speed', x.speed, brakedRollDomain.speed);
  demand('thrust', x.thrust, brakedRollDomain.thrust);
  demand('wingArea', x.wingArea, brakedRollDomain.wingArea);
  demand('density', x.density, brakedRollDomain.density);
  demand('liftCoefficient', x.liftCoefficient, brakedRollDomain.liftCoefficient);
  demand('dragCoefficient', x.dragCoefficient, brakedRollDomain.dragCoefficient);
  demand('brakingFriction', x.brakingFriction, brakedRollDomain.brakingFriction);
  demand('freeRollTime', x.freeRollTime, brakedRollDomain.freeRollTime);
  demand('slope', x.slope, brakedRollDomain.slope);
  demand('headwind', x.headwind, brakedRollDomain.headwind);
}

/** Refuses a parameter that others narrow to less than its range. */
function refuse(
  parameter: 'headwind' | 'liftCoefficient' | 'brakingFriction',
  received: number,
  least: number | undefined,
  most: number | undefined,
  source: string,
): never {
  const { unit, min, max } = brakedRollDomain[parameter];
  throw inconsistent(parameter, received, unit, least ?? min, most ?? max, source);
}
