import {
  type CalibratedAirspeed,
  type Celsius,
  type Domain,
  demand,
  type EquivalentAirspeed,
  type PressureAltitude,
  type Ratio,
  type TrueAirspeed,
} from '../units/index.ts';
import { equivalentBound, machBound, pressureAltitudeBound, temperatureBound, trueBound } from './airspeed-bounds.ts';
import { calibratedOfMach, machOfEquivalent, machOfTrue, pressureRatio } from './compressible-flow.ts';

/** Inputs of {@link calibratedAirspeedFromMach}. */
export interface CalibratedAirspeedFromMachInputs {
  readonly machNumber: Ratio;
  readonly pressureAltitude: PressureAltitude;
}

/** Inputs of {@link calibratedAirspeedFromEquivalent}. */
export interface CalibratedAirspeedFromEquivalentInputs {
  readonly equivalentAirspeed: EquivalentAirspeed;
  readonly pressureAltitude: PressureAltitude;
}

/** Inputs of {@link calibratedAirspeedFromTrue}. */
export interface CalibratedAirspeedFromTrueInputs {
  readonly trueAirspeed: TrueAirspeed;
  readonly pressureAltitude: PressureAltitude;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

export const calibratedAirspeedFromMachDomain = {
  machNumber: machBound,
  pressureAltitude: pressureAltitudeBound,
} satisfies Domain<CalibratedAirspeedFromMachInputs>;

export const calibratedAirspeedFromEquivalentDomain = {
  equivalentAirspeed: equivalentBound,
  pressureAltitude: pressureAltitudeBound,
} satisfies Domain<CalibratedAirspeedFromEquivalentInputs>;

export const calibratedAirspeedFromTrueDomain = {
  trueAirspeed: trueBound,
  pressureAltitude: pressureAltitudeBound,
  temperature: temperatureBound,
} satisfies Domain<CalibratedAirspeedFromTrueInputs>;

/**
 * Calibrated airspeed from Mach number, up to the speed of sound; the temperature does not enter.
 *
 * q_c = p ((1 + 0.2 M²)^3.5 − 1), V_C = a0 √(5 ((q_c/P0 + 1)^(2/7) − 1)): M the Mach number, p the pressure in hPa at
 * the pressure altitude, V_C in kt, P0 = 1013.25 hPa, a0 = 661.4786 kt.
 *
 * @param x - `machNumber` 0 to 1, `pressureAltitude` −5000 ft to 36 089 ft.
 * @returns Calibrated airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.calibrated-airspeed-from-mach
 *
 * @example
 * calibratedAirspeedFromMach({ machNumber: ratio(0.45228), pressureAltitude: ftPA(10000) }) // ≈ 250 ± 0.01
 */
export function calibratedAirspeedFromMach(x: CalibratedAirspeedFromMachInputs): CalibratedAirspeed {
  demand('machNumber', x.machNumber, calibratedAirspeedFromMachDomain.machNumber);
  demand('pressureAltitude', x.pressureAltitude, calibratedAirspeedFromMachDomain.pressureAltitude);
  return calibratedOfMach(x.machNumber, pressureRatio(x.pressureAltitude)) as CalibratedAirspeed;
}

/**
 * Calibrated airspeed from equivalent airspeed, below the speed of sound only; the temperature does not enter.
 *
 * M = V_E/(a0 √δ), q_c = p ((1 + 0.2 M²)^3.5 − 1), V_C = a0 √(5 ((q_c/P0 + 1)^(2/7) − 1)): V_E the equivalent and V_C
 * the calibrated airspeed in kt, p the pressure in hPa at the pressure altitude, δ = p/P0, P0 = 1013.25 hPa,
 * a0 = 661.4786 kt.
 *
 * @param x - `equivalentAirspeed` 0 kt to 350 kt, `pressureAltitude` −5000 ft to 36 089 ft.
 * @returns Calibrated airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the
 * equivalent airspeed reaches Mach 1 at the pressure altitude.
 * @record airspeed.calibrated-airspeed-from-equivalent
 *
 * @example
 * calibratedAirspeedFromEquivalent({ equivalentAirspeed: keas(248.096), pressureAltitude: ftPA(10000) }) // ≈ 250 ± 0.001
 */
export function calibratedAirspeedFromEquivalent(x: CalibratedAirspeedFromEquivalentInputs): CalibratedAirspeed {
  demand('equivalentAirspeed', x.equivalentAirspeed, calibratedAirspeedFromEquivalentDomain.equivalentAirspeed);
  demand('pressureAltitude', x.pressureAltitude, calibratedAirspeedFromEquivalentDomain.pressureAltitude);
  const delta = pressureRatio(x.pressureAltitude);
  const mach = machOfEquivalent(x.equivalentAirspeed, delta);
  return calibratedOfMach(mach, delta) as CalibratedAirspeed;
}

/**
 * Calibrated airspeed from true airspeed, compressibility included; below the speed of sound only.
 *
 * M = V/a, q_c = p ((1 + 0.2 M²)^3.5 − 1), V_C = a0 √(5 ((q_c/P0 + 1)^(2/7) − 1)): V the true and V_C the calibrated
 * airspeed in kt, a the speed of sound in kt at the outside air temperature, p the pressure in hPa at the pressure
 * altitude, P0 = 1013.25 hPa, a0 = 661.4786 kt.
 *
 * @param x - `trueAirspeed` 0 kt to 660 kt, `pressureAltitude` −5000 ft to 36 089 ft, `temperature` −80 °C to 60 °C.
 * @returns Calibrated airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the true
 * airspeed reaches the speed of sound.
 * @record airspeed.calibrated-airspeed-from-true
 *
 * @example
 * calibratedAirspeedFromTrue({ trueAirspeed: ktas(107.667), pressureAltitude: ftPA(5000), temperature: degC(5.094) }) // ≈ 100 ± 0.001
 */
export function calibratedAirspeedFromTrue(x: CalibratedAirspeedFromTrueInputs): CalibratedAirspeed {
  demand('pressureAltitude', x.pressureAltitude, calibratedAirspeedFromTrueDomain.pressureAltitude);
  demand('trueAirspeed', x.trueAirspeed, calibratedAirspeedFromTrueDomain.trueAirspeed);
  demand('temperature', x.temperature, calibratedAirspeedFromTrueDomain.temperature);
  const mach = machOfTrue(x.trueAirspeed, x.temperature);
  return calibratedOfMach(mach, pressureRatio(x.pressureAltitude)) as CalibratedAirspeed;
}
