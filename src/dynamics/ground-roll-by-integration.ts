import { inconsistent, type Numbers } from '../units/index.ts';
import {
  demandGroundRoll,
  demandLiftOff,
  type GroundRoll,
  type GroundRollInputs,
  groundRollDomain,
} from './ground-roll.ts';
import { standardGravity as g_mps2 } from './standard-gravity.ts';

/** Where less of the greatest net force than this is left at either end, the integral is not to be had in steps. */
const leastShare = 1e-4;

/** Two successive halvings of the step that agree to this are taken as the integral. */
const agreement = 1e-10;

/**
 * Ground roll to lift-off from the forces on the aeroplane, summed step by step: the same roll as
 * {@link groundRoll}, without its algebra.
 *
 * m dV/dt = T − D − μ (m g cos θ − L) − m g sin θ; t = ∫ dV/(dV/dt) and s = ∫ (V − V_w) dV/(dV/dt) from V_w to V_LOF by
 * Simpson's rule, the step halved until two sums agree to 1e-10. Units and symbols as in {@link groundRoll}. Drag acts
 * against the motion through the air, so that a tailwind pushes until the aeroplane outruns it.
 *
 * @param x - As for {@link groundRoll}.
 * @returns `distance` over the ground in m and `time` in s.
 * @throws {@link DomainError} as {@link groundRoll}, and when less than a ten-thousandth of the greatest net force is
 * left at either end.
 * @record dynamics.ground-roll-by-integration
 *
 * @example
 * groundRollByIntegration({ mass: kg(900), liftOffSpeed: ktas(52), staticThrust: newtons(2600), thrustChange: kgPerM(-0.9), wingArea: m2(15), density: kgPerM3(1.225), liftCoefficient: ratio(0.5), dragCoefficient: ratio(0.05), rollingFriction: ratio(0.03), slope: percent(0), headwind: kt(0) }).distance // ≈ 172.75 ± 0.01
 */
export function groundRollByIntegration(x: GroundRollInputs): GroundRoll {
  demandGroundRoll(x);
  demandLiftOff(x, Math.atan(x.slope / 100));
  const { mass: m_kg, liftOffSpeed: vlof_kt, headwind: vw_kt, staticThrust: t0_N }: Numbers<GroundRollInputs> = x;
  const vlof_mps = (vlof_kt * 1852) / 3600;
  const vw_mps = (vw_kt * 1852) / 3600;
  const atEnds_N = [netForce_N(x, vw_mps), netForce_N(x, 0), netForce_N(x, vlof_mps)];
  const short_N = leastShare * Math.max(...atEnds_N) - Math.min(...atEnds_N);
  if (short_N > 0) refuseBarelyEnough(t0_N, t0_N + short_N);
  const time = integral((v_mps) => m_kg / netForce_N(x, v_mps), vw_mps, vlof_mps);
  const distance = integral((v_mps) => ((v_mps - vw_mps) * m_kg) / netForce_N(x, v_mps), vw_mps, vlof_mps);
  return { distance, time } as GroundRoll;
}

/** Force along the runway at an airspeed; from behind while the wind overtakes the aeroplane. */
function netForce_N(x: Numbers<GroundRollInputs>, v_mps: number): number {
  const theta_rad = Math.atan(x.slope / 100);
  const weight_N = x.mass * g_mps2;
  const thrust_N = x.staticThrust + x.thrustChange * v_mps ** 2;
  const drag_N = 0.5 * x.density * x.wingArea * x.dragCoefficient * v_mps * Math.abs(v_mps);
  const lift_N = 0.5 * x.density * x.wingArea * x.liftCoefficient * v_mps ** 2;
  const friction_N = x.rollingFriction * (weight_N * Math.cos(theta_rad) - lift_N);
  return thrust_N - drag_N - friction_N - weight_N * Math.sin(theta_rad);
}

function integral(integrand: (v: number) => number, from: number, to: number): number {
  let intervals = 64;
  let last = simpson(integrand, from, to, intervals);
  for (;;) {
    intervals *= 2;
    const sum = simpson(integrand, from, to, intervals);
    if (Math.abs(sum - last) <= agreement * Math.abs(sum)) return sum;
    last = sum;
  }
}

function simpson(integrand: (v: number) => number, from: number, to: number, intervals: number): number {
  const step = (to - from) / intervals;
  let sum = integrand(from) + integrand(to);
  for (let i = 1; i < intervals; i += 1) sum += (i % 2 === 1 ? 4 : 2) * integrand(from + i * step);
  return (sum * step) / 3;
}

function refuseBarelyEnough(received: number, min: number): never {
  const { unit, max } = groundRollDomain.staticThrust;
  const source = 'some force is left at either end of the roll';
  throw inconsistent('staticThrust', received, unit, min, max, source);
}
