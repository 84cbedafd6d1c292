import {
  type Domain,
  demand,
  type FeetPerMinute,
  inconsistent,
  type Numbers,
  type TrueAirspeed,
} from '../units/index.ts';
import { demandThrustAndDrag, excessThrust, type ThrustAndDragInputs, thrustAndDragDomain } from './thrust-and-drag.ts';

/** Inputs of {@link rateFromThrust}. */
export interface RateFromThrustInputs extends ThrustAndDragInputs {
  /** Speed flown, no less than the stall speed. */
  readonly trueAirspeed: TrueAirspeed;
}

export const rateFromThrustDomain = {
  ...thrustAndDragDomain,
  trueAirspeed: { unit: 'ktas', min: 10, max: 300, source: 'library range' },
} satisfies Domain<RateFromThrustInputs>;

/**
 * Rate of climb at a steady speed from thrust and drag.
 *
 * ROC = (T₀ − k V² − H/V²) V / (m g) with k = ½ ρ S C_D0 − a and H = 2 K (m g)² / (ρ S): T₀ the static thrust in N, a its
 * change in kg/m, ρ the density in kg/m³, S the wing area in m², C_D0 and K of the drag polar C_D0 + K C_L², m the mass in
 * kg, g = 9.80665 m/s², V the true airspeed in m/s, given in kt; lift equals weight, which overstates the induced drag
 * of a steep path a little.
 *
 * @param x - `mass` 100 kg to 10 000 kg, `staticThrust` 100 N to 100 000 N, `thrustChange` −50 kg/m to 0, `wingArea` 1 m²
 * to 200 m², `density` 0.3 kg/m³ to 1.6 kg/m³, `zeroLiftDrag` 0.005 to 0.3, `inducedDragFactor` 0.01 to 0.5, `stallSpeed`
 * 10 KTAS to 200 KTAS, `trueAirspeed` 10 KTAS to 300 KTAS and no less than the stall speed.
 * @returns The rate of climb in ft/min; negative where the drag exceeds the thrust.
 * @throws {@link DomainError} when a parameter is not within its range, or the speed is below the stall.
 * @record flight-path.rate-from-thrust
 *
 * @example
 * const climb = { mass: kg(900), staticThrust: newtons(2600), thrustChange: kgPerM(-0.4), wingArea: m2(15), density: kgPerM3(1.225), zeroLiftDrag: ratio(0.03), inducedDragFactor: ratio(0.055), stallSpeed: ktas(45) }
 * rateFromThrust({ ...climb, trueAirspeed: ktas(60) }) // ≈ 1009.8 ± 0.1
 */
export function rateFromThrust(x: RateFromThrustInputs): FeetPerMinute {
  demandThrustAndDrag(x);
  demand('trueAirspeed', x.trueAirspeed, rateFromThrustDomain.trueAirspeed);
  const { t0_N, k_kgPerM, h_kgM3PerS4, weight_N, stall_mps } = excessThrust(x);
  const { trueAirspeed: v_kt }: Numbers<RateFromThrustInputs> = x;
  const v_mps = (v_kt * 1852) / 3600;
  if (v_mps < stall_mps) refuseBelowStall(v_kt, x.stallSpeed);
  const excess_N = t0_N - k_kgPerM * v_mps ** 2 - h_kgM3PerS4 / v_mps ** 2;
  const roc_mps = (excess_N * v_mps) / weight_N;
  return ((roc_mps * 60) / 0.3048) as FeetPerMinute;
}

function refuseBelowStall(received: number, min: number): never {
  const { unit, max } = rateFromThrustDomain.trueAirspeed;
  const source = 'the speed is not below the stall';
  throw inconsistent('trueAirspeed', received, unit, min, max, source);
}
