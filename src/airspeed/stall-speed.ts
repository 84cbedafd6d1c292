import {
  type CalibratedAirspeed,
  type Degrees,
  type Domain,
  demand,
  type Kilograms,
  type Numbers,
  type Ratio,
} from '../units/index.ts';
import { loadFactorInTurn, loadFactorInTurnDomain } from './load-factor.ts';

/** Inputs of {@link stallSpeed}. */
export interface StallSpeedInputs {
  /** Stall speed at the reference mass with wings level, in the configuration to be flown. */
  readonly referenceStallSpeed: CalibratedAirspeed;
  /** Mass for which that speed is given. */
  readonly referenceMass: Kilograms;
  /** Mass to be flown. */
  readonly mass: Kilograms;
  /** Angle of bank in a level turn; 0° for wings level. */
  readonly bank: Degrees;
}

/** Inputs of {@link stallSpeedMultiple}. */
export interface StallSpeedMultipleInputs {
  /** Stall speed; calibrated, because a multiple of an indicated stall speed is not the multiple that was meant. */
  readonly stallSpeed: CalibratedAirspeed;
  /** The multiple, such as 1.3. */
  readonly multiple: Ratio;
}

const speedBound = { unit: 'kcas', min: 10, max: 150, source: 'library range' } as const;
const massBound = { unit: 'kg', min: 100, max: 5700, source: 'library range, class B' } as const;

export const stallSpeedDomain = {
  referenceStallSpeed: speedBound,
  referenceMass: massBound,
  mass: massBound,
  bank: loadFactorInTurnDomain.bank,
} satisfies Domain<StallSpeedInputs>;

export const stallSpeedMultipleDomain = {
  stallSpeed: speedBound,
  multiple: { unit: 'ratio', min: 0, max: 2, source: 'library range' },
} satisfies Domain<StallSpeedMultipleInputs>;

/**
 * Stall speed at another mass and in a level turn.
 *
 * V_S = V_ref √(m/m_ref) √(1/cos φ): V_ref the calibrated stall speed in kt at the mass m_ref with wings level, m the
 * mass in kg, φ the angle of bank in degrees.
 *
 * @param x - `referenceStallSpeed` 10 kt to 150 kt, `referenceMass` and `mass` 100 kg to 5700 kg, `bank` 0° to 85°.
 * @returns Calibrated airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.stall-speed
 *
 * @example
 * stallSpeed({ referenceStallSpeed: kcas(50), referenceMass: kg(1000), mass: kg(810), bank: degrees(0) }) // ≈ 45 ± 1e-9
 * stallSpeed({ referenceStallSpeed: kcas(50), referenceMass: kg(1000), mass: kg(1000), bank: degrees(60) }) // ≈ 70.711 ± 0.001
 */
export function stallSpeed(x: StallSpeedInputs): CalibratedAirspeed {
  demand('referenceStallSpeed', x.referenceStallSpeed, stallSpeedDomain.referenceStallSpeed);
  demand('referenceMass', x.referenceMass, stallSpeedDomain.referenceMass);
  demand('mass', x.mass, stallSpeedDomain.mass);
  demand('bank', x.bank, stallSpeedDomain.bank);
  const { referenceStallSpeed: vRef_kt, referenceMass: mRef_kg, mass: m_kg }: Numbers<StallSpeedInputs> = x;
  const n: number = loadFactorInTurn({ bank: x.bank });
  return (vRef_kt * Math.sqrt(m_kg / mRef_kg) * Math.sqrt(n)) as CalibratedAirspeed;
}

/**
 * A multiple of a stall speed, such as 1.3 V_S0 for the approach or 0.2 V_S0 for the demonstrated crosswind.
 *
 * V = k V_S: V_S the calibrated stall speed in kt, k the multiple.
 *
 * @param x - `stallSpeed` 10 kt to 150 kt, `multiple` 0 to 2.
 * @returns Calibrated airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.stall-speed-multiple
 *
 * @example
 * stallSpeedMultiple({ stallSpeed: kcas(44), multiple: ratio(1.3) }) // ≈ 57.2 ± 1e-9
 */
export function stallSpeedMultiple(x: StallSpeedMultipleInputs): CalibratedAirspeed {
  demand('stallSpeed', x.stallSpeed, stallSpeedMultipleDomain.stallSpeed);
  demand('multiple', x.multiple, stallSpeedMultipleDomain.multiple);
  const { stallSpeed: vs_kt, multiple: k }: Numbers<StallSpeedMultipleInputs> = x;
  return (k * vs_kt) as CalibratedAirspeed;
}
