import {
  type CalibratedAirspeed,
  type Celsius,
  type Domain,
  demand,
  type EquivalentAirspeed,
  type Numbers,
  type PressureAltitude,
  type Ratio,
  type TrueAirspeed,
} from '../units/index.ts';
import {
  calibratedBound,
  equivalentBound,
  pressureAltitudeBound,
  temperatureBound,
  trueBound,
} from './airspeed-bounds.ts';
import { machBelow1OfCalibrated, machOfEquivalent, machOfTrue, pressureRatio } from './compressible-flow.ts';

/** Inputs of {@link machNumberFromCalibrated}. */
export interface MachNumberFromCalibratedInputs {
  readonly calibratedAirspeed: CalibratedAirspeed;
  readonly pressureAltitude: PressureAltitude;
}

/** Inputs of {@link machNumberFromEquivalent}. */
export interface MachNumberFromEquivalentInputs {
  readonly equivalentAirspeed: EquivalentAirspeed;
  readonly pressureAltitude: PressureAltitude;
}

/** Inputs of {@link machNumberFromTrue}. */
export interface MachNumberFromTrueInputs {
  readonly trueAirspeed: TrueAirspeed;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

export const machNumberFromCalibratedDomain = {
  calibratedAirspeed: calibratedBound,
  pressureAltitude: pressureAltitudeBound,
} satisfies Domain<MachNumberFromCalibratedInputs>;

export const machNumberFromEquivalentDomain = {
  equivalentAirspeed: equivalentBound,
  pressureAltitude: pressureAltitudeBound,
} satisfies Domain<MachNumberFromEquivalentInputs>;

export const machNumberFromTrueDomain = {
  trueAirspeed: trueBound,
  temperature: temperatureBound,
} satisfies Domain<MachNumberFromTrueInputs>;

/**
 * Mach number from calibrated airspeed, below the speed of sound only; the temperature does not enter.
 *
 * q_c = P0 ((1 + 0.2 (V_C/a0)²)^3.5 − 1), M = √(5 ((q_c/p + 1)^(2/7) − 1)): V_C the calibrated airspeed in kt, p the
 * pressure in hPa at the pressure altitude, P0 = 1013.25 hPa, a0 = 661.4786 kt.
 *
 * @param x - `calibratedAirspeed` 0 kt to 350 kt, `pressureAltitude` −5000 ft to 36 089 ft.
 * @returns Mach number, a ratio below 1.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the
 * calibrated airspeed reaches Mach 1 at the pressure altitude.
 * @record airspeed.mach-number-from-calibrated
 *
 * @example
 * machNumberFromCalibrated({ calibratedAirspeed: kcas(250), pressureAltitude: ftPA(10000) }) // ≈ 0.45228 ± 0.00001
 */
export function machNumberFromCalibrated(x: MachNumberFromCalibratedInputs): Ratio {
  demand('calibratedAirspeed', x.calibratedAirspeed, machNumberFromCalibratedDomain.calibratedAirspeed);
  demand('pressureAltitude', x.pressureAltitude, machNumberFromCalibratedDomain.pressureAltitude);
  const { calibratedAirspeed: vc_kt }: Numbers<MachNumberFromCalibratedInputs> = x;
  return machBelow1OfCalibrated(vc_kt, pressureRatio(x.pressureAltitude)) as Ratio;
}

/**
 * Mach number from equivalent airspeed, below the speed of sound only; the temperature does not enter.
 *
 * M = V_E / (a0 √δ): V_E the equivalent airspeed in kt, δ the pressure at the pressure altitude as a ratio of
 * 1013.25 hPa, a0 = 661.4786 kt.
 *
 * @param x - `equivalentAirspeed` 0 kt to 350 kt, `pressureAltitude` −5000 ft to 36 089 ft.
 * @returns Mach number, a ratio below 1.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the
 * equivalent airspeed reaches Mach 1 at the pressure altitude.
 * @record airspeed.mach-number-from-equivalent
 *
 * @example
 * machNumberFromEquivalent({ equivalentAirspeed: keas(248.096), pressureAltitude: ftPA(10000) }) // ≈ 0.45228 ± 0.00001
 */
export function machNumberFromEquivalent(x: MachNumberFromEquivalentInputs): Ratio {
  demand('equivalentAirspeed', x.equivalentAirspeed, machNumberFromEquivalentDomain.equivalentAirspeed);
  demand('pressureAltitude', x.pressureAltitude, machNumberFromEquivalentDomain.pressureAltitude);
  const { equivalentAirspeed: ve_kt }: Numbers<MachNumberFromEquivalentInputs> = x;
  return machOfEquivalent(ve_kt, pressureRatio(x.pressureAltitude)) as Ratio;
}

/**
 * Mach number from true airspeed, below the speed of sound only; the altitude does not enter.
 *
 * M = V/a: V the true airspeed and a the speed of sound at the outside air temperature, both in kt.
 *
 * @param x - `trueAirspeed` 0 kt to 660 kt, `temperature` −80 °C to 60 °C.
 * @returns Mach number, a ratio below 1.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the true
 * airspeed reaches the speed of sound.
 * @record airspeed.mach-number-from-true
 *
 * @example
 * machNumberFromTrue({ trueAirspeed: ktas(288.702), temperature: degC(-4.812) }) // ≈ 0.45228 ± 0.00001
 */
export function machNumberFromTrue(x: MachNumberFromTrueInputs): Ratio {
  demand('trueAirspeed', x.trueAirspeed, machNumberFromTrueDomain.trueAirspeed);
  demand('temperature', x.temperature, machNumberFromTrueDomain.temperature);
  const { trueAirspeed: v_kt }: Numbers<MachNumberFromTrueInputs> = x;
  return machOfTrue(v_kt, x.temperature) as Ratio;
}
