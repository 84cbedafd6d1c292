import { speedOfSound, standardPressure } from '../atmosphere/index.ts';
import {
  type CalibratedAirspeed,
  type Celsius,
  type Domain,
  DomainError,
  degC,
  demand,
  ftPA,
  type Numbers,
  type PressureAltitude,
  type TrueAirspeed,
} from '../units/index.ts';

/** Inputs of {@link trueAirspeed}. */
export interface TrueAirspeedInputs {
  readonly calibratedAirspeed: CalibratedAirspeed;
  readonly pressureAltitude: PressureAltitude;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

export const trueAirspeedDomain = {
  calibratedAirspeed: { unit: 'kcas', min: 0, max: 350, source: 'library range' },
  pressureAltitude: { unit: 'ftPA', min: -5000, max: 36089, source: 'troposphere of the ICAO standard atmosphere' },
  temperature: { unit: 'degC', min: -80, max: 60, source: 'library range' },
} satisfies Domain<TrueAirspeedInputs>;

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
  demand('calibratedAirspeed', x.calibratedAirspeed, trueAirspeedDomain.calibratedAirspeed);
  demand('pressureAltitude', x.pressureAltitude, trueAirspeedDomain.pressureAltitude);
  demand('temperature', x.temperature, trueAirspeedDomain.temperature);
  const { calibratedAirspeed: vc_kt }: Numbers<TrueAirspeedInputs> = x;
  const P0_hPa: number = standardPressure({ pressureAltitude: ftPA(0) });
  const a0_kt: number = speedOfSound({ temperature: degC(15) });
  const p_hPa: number = standardPressure({ pressureAltitude: x.pressureAltitude });
  const a_kt: number = speedOfSound({ temperature: x.temperature });
  const qc_hPa = P0_hPa * ((1 + 0.2 * (vc_kt / a0_kt) ** 2) ** 3.5 - 1);
  const mach = Math.sqrt(5 * ((qc_hPa / p_hPa + 1) ** (2 / 7) - 1));
  if (mach >= 1) throw supersonic(vc_kt, p_hPa / P0_hPa, a0_kt);
  return (mach * a_kt) as TrueAirspeed;
}

/** Refusal that names the calibrated airspeed of Mach 1, V_C = a0 √(5 ((δ (1.2^3.5 − 1) + 1)^(2/7) − 1)). */
function supersonic(vc_kt: number, delta: number, a0_kt: number): DomainError {
  const { unit, min } = trueAirspeedDomain.calibratedAirspeed;
  const max = a0_kt * Math.sqrt(5 * ((delta * (1.2 ** 3.5 - 1) + 1) ** (2 / 7) - 1));
  const source = 'below Mach 1 at the pressure altitude';
  return new DomainError({
    code: 'inconsistent',
    parameter: 'calibratedAirspeed',
    received: vc_kt,
    unit,
    min,
    max,
    source,
  });
}
