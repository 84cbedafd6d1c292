import { type Domain, demand, inconsistent, type Knots, type Numbers, type TrueAirspeed } from '../units/index.ts';
import { fastestClimbing_mps } from './best-climb-speeds.ts';
import {
  demandAboveStall,
  demandClimb,
  demandThrustAndDrag,
  type ExcessThrust,
  excessThrust,
  type ThrustAndDragInputs,
  thrustAndDragDomain,
} from './thrust-and-drag.ts';

/** Inputs of {@link bestAngleSpeedInWind}. */
export interface BestAngleSpeedInWindInputs extends ThrustAndDragInputs {
  /** Component of the wind along the climb: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
}

export const bestAngleSpeedInWindDomain = {
  ...thrustAndDragDomain,
  headwind: { unit: 'kt', min: -100, max: 100, source: 'library range' },
} satisfies Domain<BestAngleSpeedInWindInputs>;

/**
 * Speed of the steepest climb over the ground in wind, from thrust and drag: below V_X in a headwind, between V_X and V_Y
 * in a tailwind.
 *
 * The V that solves ROC′(V) (V − w) = ROC(V), the tangent from (w, 0) to the curve of the rate of climb, with
 * ROC = (T₀ − k V² − H/V²) V / (m g), k = ½ ρ S C_D0 − a and H = 2 K (m g)² / (ρ S): w the headwind, given in kt like V
 * and taken in m/s, the others as in {@link bestAngleSpeed}. In a headwind strong enough the speed would be below the
 * stall: that wind is refused, never a speed below the stall returned, nor the stall speed in its place.
 *
 * @param x - `mass` 100 kg to 10 000 kg, `staticThrust` 100 N to 100 000 N and enough to climb, `thrustChange` −50 kg/m
 * to 0, `wingArea` 1 m² to 200 m², `density` 0.3 kg/m³ to 1.6 kg/m³, `zeroLiftDrag` 0.005 to 0.3, `inducedDragFactor`
 * 0.01 to 0.5, `stallSpeed` 10 KTAS to 200 KTAS and below V_Y, `headwind` −100 kt to 100 kt and weak enough.
 * @returns The speed in kt, true airspeed.
 * @throws {@link DomainError} when a parameter is not within its range, the thrust exceeds the drag at no speed, V_Y is
 * below the stall, or the headwind asks for a speed below the stall.
 * @record flight-path.best-angle-speed-in-wind
 *
 * @example
 * const climb = { mass: kg(900), staticThrust: newtons(2600), thrustChange: kgPerM(-0.4), wingArea: m2(15), density: kgPerM3(1.225), zeroLiftDrag: ratio(0.03), inducedDragFactor: ratio(0.055), stallSpeed: ktas(45) }
 * bestAngleSpeedInWind({ ...climb, headwind: kt(0) }) // ≈ 56.03 ± 0.01
 * bestAngleSpeedInWind({ ...climb, headwind: kt(30) }) // throws headwind: 30 kt is inconsistent with -100 to
 */
export function bestAngleSpeedInWind(x: BestAngleSpeedInWindInputs): TrueAirspeed {
  demandThrustAndDrag(x);
  const excess = excessThrust(x);
  demand('headwind', x.headwind, bestAngleSpeedInWindDomain.headwind);
  const { headwind: w_kt }: Numbers<BestAngleSpeedInWindInputs> = x;
  demandClimb(excess);
  const fastest_mps = fastestClimbing_mps(excess);
  demandAboveStall(fastest_mps * justBelow, excess);
  const most_mps = strongestHeadwind_mps(excess);
  const w_mps = (w_kt * 1852) / 3600;
  if (w_mps > most_mps) refuseHeadwind(w_kt, (most_mps * 3600) / 1852);
  const v_mps = steepestBetween(excess.stall_mps, fastest_mps, w_mps, excess);
  return ((v_mps * 3600) / 1852) as TrueAirspeed;
}

/** A stall speed nearer to V_Y than this leaves no speed to choose. */
const justBelow = 1 - 1e-9;

/** [ROC′(V) (V − w) − ROC(V)] m g V²: positive below the speed sought, negative above it. */
function towardsSteepest(v_mps: number, w_mps: number, { t0_N, k_kgPerM: k, h_kgM3PerS4: h }: ExcessThrust): number {
  return 2 * h * v_mps - 2 * k * v_mps ** 5 - w_mps * (t0_N * v_mps ** 2 - 3 * k * v_mps ** 4 + h);
}

/** The headwind in which the steepest climb over the ground is flown at the stall speed. */
function strongestHeadwind_mps({ t0_N, k_kgPerM: k, h_kgM3PerS4: h, stall_mps }: ExcessThrust): number {
  const inStillAir = 2 * h * stall_mps - 2 * k * stall_mps ** 5;
  const forEachHeadwind = t0_N * stall_mps ** 2 - 3 * k * stall_mps ** 4 + h;
  // An aeroplane that does not climb at the stall has its best angle above it in any wind that leaves a ground speed.
  return Math.min(inStillAir / forEachHeadwind, stall_mps);
}

/** The speed sought, halving the range until two neighbouring numbers are left. The curve of the rate of climb is concave: there is one. */
function steepestBetween(from_mps: number, to_mps: number, w_mps: number, excess: ExcessThrust): number {
  let slow_mps = from_mps;
  let fast_mps = to_mps;
  for (;;) {
    const middle_mps = (slow_mps + fast_mps) / 2;
    if (middle_mps <= slow_mps || middle_mps >= fast_mps) return slow_mps;
    if (towardsSteepest(middle_mps, w_mps, excess) > 0) slow_mps = middle_mps;
    else fast_mps = middle_mps;
  }
}

function refuseHeadwind(received: number, max: number): never {
  const { unit, min } = bestAngleSpeedInWindDomain.headwind;
  const source = 'the speed found would be below the stall';
  throw inconsistent('headwind', received, unit, min, max, source);
}
