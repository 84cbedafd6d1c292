import { type CalibratedAirspeed, type Domain, demand, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link speedFactor}. */
export interface SpeedFactorInputs {
  /** Speed flown. */
  readonly speed: CalibratedAirspeed;
  /** Speed for which the distance is printed. */
  readonly tableSpeed: CalibratedAirspeed;
}

export const speedFactorDomain = {
  speed: { unit: 'kcas', min: 20, max: 250, source: 'library range' },
  tableSpeed: { unit: 'kcas', min: 20, max: 250, source: 'library range' },
} satisfies Domain<SpeedFactorInputs>;

/**
 * Correction factor for a speed other than that of the table: the energy to be gained or shed goes with its square.
 *
 * k = (V / Vₜ)²: V the speed flown, Vₜ the speed of the table, both calibrated in kt. For the landing distance from
 * 50 ft, or for the take-off ground roll.
 *
 * @param x - `speed` and `tableSpeed` 20 KCAS to 250 KCAS.
 * @returns The correction factor; less than 1 when the speed flown is the lower.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record distance.speed-factor
 *
 * @example
 * speedFactor({ speed: kcas(66), tableSpeed: kcas(60) }) // ≈ 1.21 ± 0.000001
 */
export function speedFactor(x: SpeedFactorInputs): Ratio {
  demand('speed', x.speed, speedFactorDomain.speed);
  demand('tableSpeed', x.tableSpeed, speedFactorDomain.tableSpeed);
  const { speed: v_kt, tableSpeed: vt_kt }: Numbers<SpeedFactorInputs> = x;
  return ((v_kt / vt_kt) ** 2) as Ratio;
}
