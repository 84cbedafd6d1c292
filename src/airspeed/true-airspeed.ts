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
  machBound,
  pressureAltitudeBound,
  temperatureBound,
} from './airspeed-bounds.ts';
import {
  densityRatioAt,
  machBelow1OfCalibrated,
  machOfEquivalent,
  pressureRatio,
  soundAt_kt,
} from './compressible-flow.ts';

/** Inputs of {@link trueAirspeed}. */
export interface TrueAirspeedInputs {
  readonly calibratedAirspeed: CalibratedAirspeed;
  readonly pressureAltitude: PressureAltitude;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

/** Inputs of {@link trueAirspeedFromEquivalent}. */
export interface TrueAirspeedFromEquivalentInputs {
  readonly equivalentAirspeed: EquivalentAirspeed;
  readonly pressureAltitude: PressureAltitude;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

/** Inputs of {@link trueAirspeedFromMach}. */
export interface TrueAirspeedFromMachInputs {
  readonly machNumber: Ratio;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

export const trueAirspeedDomain = {
  calibratedAirspeed: calibratedBound,
  pressureAltitude: pressureAltitudeBound,
  temperature: temperatureBound,
} satisfies Domain<TrueAirspeedInputs>;

export const trueAirspeedFromEquivalentDomain = {
  equivalentAirspeed: equivalentBound,
  pressureAltitude: pressureAltitudeBound,
  temperature: temperatureBound,
} satisfies Domain<TrueAirspeedFromEquivalentInputs>;

export const trueAirspeedFromMachDomain = {
  machNumber: machBound,
  temperature: temperatureBound,
} satisfies Domain<TrueAirspeedFromMachInputs>;

/**
 * True airspeed from calibrated airspeed, compressibility included; below the speed of sound only.
 *
 * q_c = P0 ((1 + 0.2 (V_C/a0)²)^3.5 − 1), M = √(5 ((q_c/p + 1)^(2/7) − 1)), V = M a: V_C the calibrated airspeed and
 * V the true airspeed in kt, p the pressure in hPa at the pressure altitude, a the speed of sound in kt at the outside
 * air temperature, P0 = 1013.25 hPa, a0 = 661.4786 kt.
 *
 * @param x - `calibratedAirspeed` 0 kt to 350 kt, `pressureAltitude` −5000 ft to 36 089 ft, `temperature` −80 °C to
 * 60 °C.
 * @returns True airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the
 * calibrated airspeed reaches Mach 1 at the pressure altitude.
 * @record airspeed.true-airspeed
 *
 * @example
 * trueAirspeed({ calibratedAirspeed: kcas(100), pressureAltitude: ftPA(5000), temperature: degC(5.094) }) // ≈ 107.667 ± 0.001
 */
export function trueAirspeed(x: TrueAirspeedInputs): TrueAirspeed {
  demand('temperature', x.temperature, trueAirspeedDomain.temperature);
  demand('calibratedAirspeed', x.calibratedAirspeed, trueAirspeedDomain.calibratedAirspeed);
  demand('pressureAltitude', x.pressureAltitude, trueAirspeedDomain.pressureAltitude);
  const mach = machBelow1OfCalibrated(x.calibratedAirspeed, pressureRatio(x.pressureAltitude));
  const a_kt = soundAt_kt(x.temperature);
  return (mach * a_kt) as TrueAirspeed;
}

/**
 * True airspeed from equivalent airspeed, below the speed of sound only.
 *
 * V = V_E/√σ, σ = (p/P0) (T0/T): V_E the equivalent airspeed in kt, p the pressure at the pressure altitude, T the
 * outside air temperature in K, here given in °C, P0 = 1013.25 hPa, T0 = 288.15 K.
 *
 * @param x - `equivalentAirspeed` 0 kt to 350 kt, `pressureAltitude` −5000 ft to 36 089 ft, `temperature` −80 °C to
 * 60 °C.
 * @returns True airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the
 * equivalent airspeed reaches Mach 1 at the pressure altitude.
 * @record airspeed.true-airspeed-from-equivalent
 *
 * @example
 * trueAirspeedFromEquivalent({ equivalentAirspeed: keas(248.096), pressureAltitude: ftPA(10000), temperature: degC(-4.812) }) // ≈ 288.702 ± 0.001
 */
export function trueAirspeedFromEquivalent(x: TrueAirspeedFromEquivalentInputs): TrueAirspeed {
  demand('equivalentAirspeed', x.equivalentAirspeed, trueAirspeedFromEquivalentDomain.equivalentAirspeed);
  demand('pressureAltitude', x.pressureAltitude, trueAirspeedFromEquivalentDomain.pressureAltitude);
  const { equivalentAirspeed: ve_kt, temperature: t_degC }: Numbers<TrueAirspeedFromEquivalentInputs> = x;
  const delta = pressureRatio(x.pressureAltitude);
  machOfEquivalent(ve_kt, delta);
  demand('temperature', x.temperature, trueAirspeedFromEquivalentDomain.temperature);
  const sigma = densityRatioAt(delta, t_degC);
  return (ve_kt / Math.sqrt(sigma)) as TrueAirspeed;
}

/**
 * True airspeed from Mach number, up to the speed of sound; the altitude does not enter.
 *
 * V = M a: M the Mach number, V the true airspeed and a the speed of sound at the outside air temperature, both in kt.
 *
 * @param x - `machNumber` 0 to 1, `temperature` −80 °C to 60 °C.
 * @returns True airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.true-airspeed-from-mach
 *
 * @example
 * trueAirspeedFromMach({ machNumber: ratio(0.45228), temperature: degC(-4.812) }) // ≈ 288.70 ± 0.01
 */
export function trueAirspeedFromMach(x: TrueAirspeedFromMachInputs): TrueAirspeed {
  demand('machNumber', x.machNumber, trueAirspeedFromMachDomain.machNumber);
  demand('temperature', x.temperature, trueAirspeedFromMachDomain.temperature);
  const { machNumber: mach }: Numbers<TrueAirspeedFromMachInputs> = x;
  const a_kt = soundAt_kt(x.temperature);
  return (mach * a_kt) as TrueAirspeed;
}
