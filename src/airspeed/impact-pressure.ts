import { type CalibratedAirspeed, type Domain, demand, type Hectopascals, type Numbers } from '../units/index.ts';
import { calibratedBound } from './airspeed-bounds.ts';
import { impactRatio, machOfImpactRatio, seaLevelPressure_hPa, seaLevelSound_kt } from './compressible-flow.ts';

/** Inputs of {@link impactPressure}. */
export interface ImpactPressureInputs {
  readonly calibratedAirspeed: CalibratedAirspeed;
}

/** Inputs of {@link calibratedAirspeedFromImpactPressure}. */
export interface CalibratedAirspeedFromImpactPressureInputs {
  /** Pitot pressure less static pressure. */
  readonly impactPressure: Hectopascals;
}

export const impactPressureDomain = { calibratedAirspeed: calibratedBound } satisfies Domain<ImpactPressureInputs>;

export const calibratedAirspeedFromImpactPressureDomain = {
  impactPressure: { unit: 'hPa', min: 0, max: 213, source: 'library range, 350 KCAS' },
} satisfies Domain<CalibratedAirspeedFromImpactPressureInputs>;

/**
 * Impact pressure at a calibrated airspeed: how much higher the pitot pressure is than the static pressure. An airspeed
 * indicator without error shows the calibrated airspeed of the pressure put to it, at any altitude.
 *
 * q_c = P0 ((1 + 0.2 (V_C/a0)²)^3.5 − 1): V_C the calibrated airspeed in kt, P0 = 1013.25 hPa, a0 = 661.4786 kt.
 *
 * @param x - `calibratedAirspeed` 0 kt to 350 kt.
 * @returns Pressure in hPa.
 * @throws {@link DomainError} when the calibrated airspeed is not within its range.
 * @record airspeed.impact-pressure
 *
 * @example
 * impactPressure({ calibratedAirspeed: kcas(100) }) // ≈ 16.3028 ± 0.0001
 * inchesOfWaterFromHectopascals(impactPressure({ calibratedAirspeed: kcas(70) })) // ≈ 3.20 ± 0.01
 */
export function impactPressure(x: ImpactPressureInputs): Hectopascals {
  demand('calibratedAirspeed', x.calibratedAirspeed, impactPressureDomain.calibratedAirspeed);
  const { calibratedAirspeed: vc_kt }: Numbers<ImpactPressureInputs> = x;
  const qc_hPa = seaLevelPressure_hPa * impactRatio(vc_kt / seaLevelSound_kt);
  return qc_hPa as Hectopascals;
}

/**
 * Calibrated airspeed at an impact pressure, as when an airspeed indicator is tested with a column of water.
 *
 * V_C = a0 √(5 ((q_c/P0 + 1)^(2/7) − 1)): q_c the impact pressure in hPa, P0 = 1013.25 hPa, a0 = 661.4786 kt.
 *
 * @param x - `impactPressure` 0 hPa to 213 hPa.
 * @returns Calibrated airspeed in kt.
 * @throws {@link DomainError} when the impact pressure is not within its range.
 * @record airspeed.calibrated-airspeed-from-impact-pressure
 *
 * @example
 * calibratedAirspeedFromImpactPressure({ impactPressure: hectopascalsFromInchesOfWater(inH2O(6.56)) }) // ≈ 100.02 ± 0.01
 */
export function calibratedAirspeedFromImpactPressure(
  x: CalibratedAirspeedFromImpactPressureInputs,
): CalibratedAirspeed {
  demand('impactPressure', x.impactPressure, calibratedAirspeedFromImpactPressureDomain.impactPressure);
  const { impactPressure: qc_hPa }: Numbers<CalibratedAirspeedFromImpactPressureInputs> = x;
  const vc_kt = seaLevelSound_kt * machOfImpactRatio(qc_hPa / seaLevelPressure_hPa);
  return vc_kt as CalibratedAirspeed;
}
