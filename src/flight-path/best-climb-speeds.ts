import type { TrueAirspeed } from '../units/index.ts';
import {
  demandAboveStall,
  demandClimb,
  demandThrustAndDrag,
  type ExcessThrust,
  excessThrust,
  type ThrustAndDragInputs,
} from './thrust-and-drag.ts';

/**
 * V_X, the speed of the best angle of climb in still air, from thrust and drag.
 *
 * V_X = (H/k)^(1/4) with k = ½ ρ S C_D0 − a and H = 2 K (m g)² / (ρ S), where T₀ + a V² − D is greatest: a the change of
 * the thrust in kg/m, ρ the density in kg/m³, S the wing area in m², C_D0 and K of the drag polar C_D0 + K C_L², m the
 * mass in kg, g = 9.80665 m/s², V in m/s; lift equals weight. The static thrust decides only whether there is a climb.
 * It estimates a speed where a manual gives none, and never stands in for the manual's own.
 *
 * @param x - `mass` 100 kg to 10 000 kg, `staticThrust` 100 N to 100 000 N and enough to climb, `thrustChange` −50 kg/m
 * to 0, `wingArea` 1 m² to 200 m², `density` 0.3 kg/m³ to 1.6 kg/m³, `zeroLiftDrag` 0.005 to 0.3, `inducedDragFactor`
 * 0.01 to 0.5, `stallSpeed` 10 KTAS to 200 KTAS and no more than the result.
 * @returns V_X in kt, true airspeed.
 * @throws {@link DomainError} when a parameter is not within its range, the thrust exceeds the drag at no speed, or the
 * speed found would be below the stall.
 * @record flight-path.best-angle-speed
 *
 * @example
 * const climb = { mass: kg(900), staticThrust: newtons(2600), thrustChange: kgPerM(-0.4), wingArea: m2(15), density: kgPerM3(1.225), zeroLiftDrag: ratio(0.03), inducedDragFactor: ratio(0.055) }
 * bestAngleSpeed({ ...climb, stallSpeed: ktas(45) }) // ≈ 56.03 ± 0.01
 * bestAngleSpeed({ ...climb, stallSpeed: ktas(57) }) // throws stallSpeed: 57 ktas is inconsistent with 10 to 56.0
 */
export function bestAngleSpeed(x: ThrustAndDragInputs): TrueAirspeed {
  demandThrustAndDrag(x);
  const excess = excessThrust(x);
  demandClimb(excess);
  const { h_kgM3PerS4, k_kgPerM } = excess;
  const v_mps = (h_kgM3PerS4 / k_kgPerM) ** (1 / 4);
  demandAboveStall(v_mps, excess);
  return ((v_mps * 3600) / 1852) as TrueAirspeed;
}

/**
 * V_Y, the speed of the best rate of climb, from thrust and drag; no wind changes it.
 *
 * V_Y² = [T₀ + √(T₀² + 12 k H)] / (6 k) with k = ½ ρ S C_D0 − a and H = 2 K (m g)² / (ρ S), where (T₀ + a V² − D) V is
 * greatest: T₀ the static thrust in N, a its change in kg/m, ρ the density in kg/m³, S the wing area in m², C_D0 and K of
 * the drag polar C_D0 + K C_L², m the mass in kg, g = 9.80665 m/s², V in m/s; lift equals weight. It estimates a speed
 * where a manual gives none, and never stands in for the manual's own.
 *
 * @param x - `mass` 100 kg to 10 000 kg, `staticThrust` 100 N to 100 000 N and enough to climb, `thrustChange` −50 kg/m
 * to 0, `wingArea` 1 m² to 200 m², `density` 0.3 kg/m³ to 1.6 kg/m³, `zeroLiftDrag` 0.005 to 0.3, `inducedDragFactor`
 * 0.01 to 0.5, `stallSpeed` 10 KTAS to 200 KTAS and no more than the result.
 * @returns V_Y in kt, true airspeed.
 * @throws {@link DomainError} when a parameter is not within its range, the thrust exceeds the drag at no speed, or the
 * speed found would be below the stall.
 * @record flight-path.best-rate-speed
 *
 * @example
 * const climb = { mass: kg(900), staticThrust: newtons(2600), thrustChange: kgPerM(-0.4), wingArea: m2(15), density: kgPerM3(1.225), zeroLiftDrag: ratio(0.03), inducedDragFactor: ratio(0.055) }
 * bestRateSpeed({ ...climb, stallSpeed: ktas(45) }) // ≈ 73.82 ± 0.01
 */
export function bestRateSpeed(x: ThrustAndDragInputs): TrueAirspeed {
  demandThrustAndDrag(x);
  const excess = excessThrust(x);
  demandClimb(excess);
  const v_mps = fastestClimbing_mps(excess);
  demandAboveStall(v_mps, excess);
  return ((v_mps * 3600) / 1852) as TrueAirspeed;
}

/** V_Y in m/s. */
export function fastestClimbing_mps({ t0_N, k_kgPerM: k, h_kgM3PerS4: h }: ExcessThrust): number {
  return Math.sqrt((t0_N + Math.sqrt(t0_N ** 2 + 12 * k * h)) / (6 * k));
}
