import {
  type Domain,
  demand,
  type Elevation,
  type Hectopascals,
  type Height,
  type Numbers,
  type PressureAltitude,
} from '../units/index.ts';
import { altitudeOfPressure_ft } from './pressure-law.ts';
import { likelyQnh, pressureAtAerodrome, troposphere } from './standard-atmosphere-bounds.ts';

/** Inputs of {@link indicatedAltitude}. */
export interface IndicatedAltitudeInputs {
  readonly pressureAltitude: PressureAltitude;
  /** What the altimeter is set to. */
  readonly qnh: Hectopascals;
}

/** Inputs of {@link indicatedHeight}. */
export interface IndicatedHeightInputs {
  readonly pressureAltitude: PressureAltitude;
  /** What the altimeter is set to. */
  readonly qfe: Hectopascals;
}

export const indicatedAltitudeDomain = {
  pressureAltitude: troposphere,
  qnh: likelyQnh,
} satisfies Domain<IndicatedAltitudeInputs>;

export const indicatedHeightDomain = {
  pressureAltitude: troposphere,
  qfe: pressureAtAerodrome,
} satisfies Domain<IndicatedHeightInputs>;

/**
 * Altitude above mean sea level that an altimeter set to QNH shows at a pressure altitude.
 *
 * HQ = H − (T0/L) (1 − (QNH/P0)^(R L/g0)): H the pressure altitude in ft, QNH in hPa, T0/L about 145 442.156 ft,
 * P0 = 1013.25 hPa, R L/g0 about 0.190263. It is the true altitude in standard temperature only.
 *
 * @param x - `pressureAltitude` −5000 ft to 36 089 ft, `qnh` 850 hPa to 1085 hPa.
 * @returns Altitude in ft above mean sea level.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.indicated-altitude
 *
 * @example
 * indicatedAltitude({ pressureAltitude: ftPA(5000), qnh: hPa(1013.25) }) // => 5000
 * indicatedAltitude({ pressureAltitude: ftPA(5000), qnh: hPa(1000) }) // ≈ 4636.206 ± 0.001
 */
export function indicatedAltitude(x: IndicatedAltitudeInputs): Elevation {
  demand('pressureAltitude', x.pressureAltitude, indicatedAltitudeDomain.pressureAltitude);
  demand('qnh', x.qnh, indicatedAltitudeDomain.qnh);
  const { pressureAltitude: altitude_ft, qnh: qnh_hPa }: Numbers<IndicatedAltitudeInputs> = x;
  return (altitude_ft - altitudeOfPressure_ft(qnh_hPa)) as Elevation;
}

/**
 * Height above the datum of the QFE that an altimeter set to QFE shows at a pressure altitude.
 *
 * HF = H − (T0/L) (1 − (QFE/P0)^(R L/g0)): H the pressure altitude in ft, QFE in hPa, T0/L about 145 442.156 ft,
 * P0 = 1013.25 hPa, R L/g0 about 0.190263. It is the true height in standard temperature only.
 *
 * @param x - `pressureAltitude` −5000 ft to 36 089 ft, `qfe` 466 hPa to 1200 hPa.
 * @returns Height in ft above the aerodrome, or the threshold, that the QFE is given for.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.indicated-height
 *
 * @example
 * indicatedHeight({ pressureAltitude: ftPA(2200), qfe: hPa(970) }) // ≈ 997.4 ± 0.5
 */
export function indicatedHeight(x: IndicatedHeightInputs): Height {
  demand('pressureAltitude', x.pressureAltitude, indicatedHeightDomain.pressureAltitude);
  demand('qfe', x.qfe, indicatedHeightDomain.qfe);
  const { pressureAltitude: altitude_ft, qfe: qfe_hPa }: Numbers<IndicatedHeightInputs> = x;
  return (altitude_ft - altitudeOfPressure_ft(qfe_hPa)) as Height;
}
