import { densityRatio } from '../atmosphere/index.ts';
import {
  type CalibratedAirspeed,
  type Celsius,
  type Domain,
  demand,
  type Numbers,
  type PressureAltitude,
  type TrueAirspeed,
} from '../units/index.ts';
import { calibratedBound, pressureAltitudeBound, temperatureBound, trueBound } from './airspeed-bounds.ts';

/** Inputs of {@link trueAirspeedIncompressible}. */
export interface TrueAirspeedIncompressibleInputs {
  readonly calibratedAirspeed: CalibratedAirspeed;
  readonly pressureAltitude: PressureAltitude;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

/** Inputs of {@link calibratedAirspeedIncompressible}. */
export interface CalibratedAirspeedIncompressibleInputs {
  readonly trueAirspeed: TrueAirspeed;
  readonly pressureAltitude: PressureAltitude;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

export const trueAirspeedIncompressibleDomain = {
  calibratedAirspeed: calibratedBound,
  pressureAltitude: pressureAltitudeBound,
  temperature: temperatureBound,
} satisfies Domain<TrueAirspeedIncompressibleInputs>;

export const calibratedAirspeedIncompressibleDomain = {
  trueAirspeed: trueBound,
  pressureAltitude: pressureAltitudeBound,
  temperature: temperatureBound,
} satisfies Domain<CalibratedAirspeedIncompressibleInputs>;

/**
 * True airspeed as if air could not be compressed: an approximation, too high above mean sea level. Against
 * `trueAirspeed` in standard air it reads 0.06 kt high at 100 kt and 5000 ft, at most 0.5 kt up to 150 kt and 10 000 ft,
 * 2.2 kt at 250 kt and 10 000 ft, 35 kt at 300 kt and 35 000 ft.
 *
 * V ≈ V_C/√σ, σ = (p/P0) (T0/T): V_C the calibrated airspeed in kt, p the pressure at the pressure altitude, T the
 * outside air temperature in K, here given in °C, P0 = 1013.25 hPa, T0 = 288.15 K.
 *
 * @param x - `calibratedAirspeed` 0 kt to 350 kt, `pressureAltitude` −5000 ft to 36 089 ft, `temperature` −80 °C to
 * 60 °C.
 * @returns True airspeed in kt, approximate.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.true-airspeed-incompressible
 *
 * @example
 * trueAirspeedIncompressible({ calibratedAirspeed: kcas(100), pressureAltitude: ftPA(5000), temperature: degC(5.094) }) // ≈ 107.73 ± 0.01
 */
export function trueAirspeedIncompressible(x: TrueAirspeedIncompressibleInputs): TrueAirspeed {
  demand('calibratedAirspeed', x.calibratedAirspeed, trueAirspeedIncompressibleDomain.calibratedAirspeed);
  const { calibratedAirspeed: vc_kt }: Numbers<TrueAirspeedIncompressibleInputs> = x;
  const sigma: number = densityRatio(x);
  return (vc_kt / Math.sqrt(sigma)) as TrueAirspeed;
}

/**
 * Calibrated airspeed as if air could not be compressed: an approximation, too low above mean sea level. Against
 * `calibratedAirspeedFromTrue` in standard air it reads 0.06 kt low at 107.7 kt and 5000 ft, at most 0.5 kt up to
 * 174 kt and 10 000 ft, 1.9 kt at 288.7 kt and 10 000 ft.
 *
 * V_C ≈ V √σ, σ = (p/P0) (T0/T): V the true airspeed in kt, p the pressure at the pressure altitude, T the outside air
 * temperature in K, here given in °C, P0 = 1013.25 hPa, T0 = 288.15 K. The result is the equivalent airspeed exactly.
 *
 * @param x - `trueAirspeed` 0 kt to 660 kt, `pressureAltitude` −5000 ft to 36 089 ft, `temperature` −80 °C to 60 °C.
 * @returns Calibrated airspeed in kt, approximate.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.calibrated-airspeed-incompressible
 *
 * @example
 * calibratedAirspeedIncompressible({ trueAirspeed: ktas(107.667), pressureAltitude: ftPA(5000), temperature: degC(5.094) }) // ≈ 99.94 ± 0.01
 */
export function calibratedAirspeedIncompressible(x: CalibratedAirspeedIncompressibleInputs): CalibratedAirspeed {
  demand('trueAirspeed', x.trueAirspeed, calibratedAirspeedIncompressibleDomain.trueAirspeed);
  const { trueAirspeed: v_kt }: Numbers<CalibratedAirspeedIncompressibleInputs> = x;
  const sigma: number = densityRatio(x);
  return (v_kt * Math.sqrt(sigma)) as CalibratedAirspeed;
}
