import { densityRatio } from '../atmosphere/index.ts';
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
import { calibratedBound, machBound, pressureAltitudeBound, temperatureBound, trueBound } from './airspeed-bounds.ts';
import { equivalentOfMach, machBelow1OfCalibrated, pressureRatio } from './compressible-flow.ts';

/** Inputs of {@link equivalentAirspeedFromCalibrated}. */
export interface EquivalentAirspeedFromCalibratedInputs {
  readonly calibratedAirspeed: CalibratedAirspeed;
  readonly pressureAltitude: PressureAltitude;
}

/** Inputs of {@link equivalentAirspeedFromMach}. */
export interface EquivalentAirspeedFromMachInputs {
  readonly machNumber: Ratio;
  readonly pressureAltitude: PressureAltitude;
}

/** Inputs of {@link equivalentAirspeedFromTrue}. */
export interface EquivalentAirspeedFromTrueInputs {
  readonly trueAirspeed: TrueAirspeed;
  readonly pressureAltitude: PressureAltitude;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

/** Inputs of {@link compressibilityFactor}. */
export interface CompressibilityFactorInputs {
  /** Above zero, because the factor is a quotient by it. */
  readonly calibratedAirspeed: CalibratedAirspeed;
  readonly pressureAltitude: PressureAltitude;
}

export const equivalentAirspeedFromCalibratedDomain = {
  calibratedAirspeed: calibratedBound,
  pressureAltitude: pressureAltitudeBound,
} satisfies Domain<EquivalentAirspeedFromCalibratedInputs>;

export const equivalentAirspeedFromMachDomain = {
  machNumber: machBound,
  pressureAltitude: pressureAltitudeBound,
} satisfies Domain<EquivalentAirspeedFromMachInputs>;

export const equivalentAirspeedFromTrueDomain = {
  trueAirspeed: trueBound,
  pressureAltitude: pressureAltitudeBound,
  temperature: temperatureBound,
} satisfies Domain<EquivalentAirspeedFromTrueInputs>;

export const compressibilityFactorDomain = {
  calibratedAirspeed: { ...calibratedBound, min: 10 },
  pressureAltitude: pressureAltitudeBound,
} satisfies Domain<CompressibilityFactorInputs>;

/**
 * Equivalent airspeed from calibrated airspeed, below the speed of sound only; the temperature does not enter.
 *
 * q_c = P0 ((1 + 0.2 (V_C/a0)²)^3.5 − 1), M = √(5 ((q_c/p + 1)^(2/7) − 1)), V_E = M a0 √δ: V_C the calibrated and V_E
 * the equivalent airspeed in kt, p the pressure in hPa at the pressure altitude, δ = p/P0, P0 = 1013.25 hPa,
 * a0 = 661.4786 kt.
 *
 * @param x - `calibratedAirspeed` 0 kt to 350 kt, `pressureAltitude` −5000 ft to 36 089 ft.
 * @returns Equivalent airspeed in kt: less than calibrated above mean sea level, more below it.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the
 * calibrated airspeed reaches Mach 1 at the pressure altitude.
 * @record airspeed.equivalent-airspeed-from-calibrated
 *
 * @example
 * equivalentAirspeedFromCalibrated({ calibratedAirspeed: kcas(250), pressureAltitude: ftPA(10000) }) // ≈ 248.096 ± 0.001
 * equivalentAirspeedFromCalibrated({ calibratedAirspeed: kcas(100), pressureAltitude: ftPA(5000) }) // ≈ 99.943 ± 0.001
 */
export function equivalentAirspeedFromCalibrated(x: EquivalentAirspeedFromCalibratedInputs): EquivalentAirspeed {
  demand('calibratedAirspeed', x.calibratedAirspeed, equivalentAirspeedFromCalibratedDomain.calibratedAirspeed);
  demand('pressureAltitude', x.pressureAltitude, equivalentAirspeedFromCalibratedDomain.pressureAltitude);
  const delta = pressureRatio(x.pressureAltitude);
  const mach = machBelow1OfCalibrated(x.calibratedAirspeed, delta);
  return equivalentOfMach(mach, delta) as EquivalentAirspeed;
}

/**
 * Equivalent airspeed from Mach number, up to the speed of sound; the temperature does not enter.
 *
 * V_E = M a0 √δ: M the Mach number, δ the pressure at the pressure altitude as a ratio of 1013.25 hPa, a0 = 661.4786 kt,
 * V_E in kt.
 *
 * @param x - `machNumber` 0 to 1, `pressureAltitude` −5000 ft to 36 089 ft.
 * @returns Equivalent airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.equivalent-airspeed-from-mach
 *
 * @example
 * equivalentAirspeedFromMach({ machNumber: ratio(0.45228), pressureAltitude: ftPA(10000) }) // ≈ 248.095 ± 0.005
 */
export function equivalentAirspeedFromMach(x: EquivalentAirspeedFromMachInputs): EquivalentAirspeed {
  demand('machNumber', x.machNumber, equivalentAirspeedFromMachDomain.machNumber);
  demand('pressureAltitude', x.pressureAltitude, equivalentAirspeedFromMachDomain.pressureAltitude);
  return equivalentOfMach(x.machNumber, pressureRatio(x.pressureAltitude)) as EquivalentAirspeed;
}

/**
 * Equivalent airspeed from true airspeed; exact at any Mach number.
 *
 * V_E = V √σ, σ = (p/P0) (T0/T): V the true airspeed in kt, p the pressure at the pressure altitude, T the outside air
 * temperature in K, here given in °C, P0 = 1013.25 hPa, T0 = 288.15 K.
 *
 * @param x - `trueAirspeed` 0 kt to 660 kt, `pressureAltitude` −5000 ft to 36 089 ft, `temperature` −80 °C to 60 °C.
 * @returns Equivalent airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.equivalent-airspeed-from-true
 *
 * @example
 * equivalentAirspeedFromTrue({ trueAirspeed: ktas(288.702), pressureAltitude: ftPA(10000), temperature: degC(-4.812) }) // ≈ 248.096 ± 0.001
 */
export function equivalentAirspeedFromTrue(x: EquivalentAirspeedFromTrueInputs): EquivalentAirspeed {
  demand('trueAirspeed', x.trueAirspeed, equivalentAirspeedFromTrueDomain.trueAirspeed);
  const { trueAirspeed: v_kt }: Numbers<EquivalentAirspeedFromTrueInputs> = x;
  const sigma: number = densityRatio(x);
  return (v_kt * Math.sqrt(sigma)) as EquivalentAirspeed;
}

/**
 * Compressibility factor: equivalent over calibrated airspeed.
 *
 * f = V_E/V_C, with V_E as {@link equivalentAirspeedFromCalibrated} gives it: V_E and V_C in kt.
 *
 * @param x - `calibratedAirspeed` 10 kt to 350 kt, `pressureAltitude` −5000 ft to 36 089 ft.
 * @returns Ratio: 1 at mean sea level, less above it.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the
 * calibrated airspeed reaches Mach 1 at the pressure altitude.
 * @record airspeed.compressibility-factor
 *
 * @example
 * compressibilityFactor({ calibratedAirspeed: kcas(150), pressureAltitude: ftPA(10000) }) // ≈ 0.997 ± 0.0005
 */
export function compressibilityFactor(x: CompressibilityFactorInputs): Ratio {
  demand('calibratedAirspeed', x.calibratedAirspeed, compressibilityFactorDomain.calibratedAirspeed);
  const { calibratedAirspeed: vc_kt }: Numbers<CompressibilityFactorInputs> = x;
  const ve_kt: number = equivalentAirspeedFromCalibrated(x);
  return (ve_kt / vc_kt) as Ratio;
}
