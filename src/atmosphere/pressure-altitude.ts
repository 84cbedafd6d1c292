import {
  type Domain,
  demand,
  type Elevation,
  type Hectopascals,
  type Numbers,
  type PressureAltitude,
} from '../units/index.ts';
import { altitudeOfPressure_ft } from './pressure-law.ts';
import { elevationOfAerodrome, likelyQnh, pressureAtAerodrome } from './standard-atmosphere-bounds.ts';

/** Inputs of {@link pressureAltitude}. */
export interface PressureAltitudeInputs {
  /** Elevation of the point, such as the highest point of the aerodrome. */
  readonly elevation: Elevation;
  /** Altimeter setting that makes the altimeter show elevation on the ground. */
  readonly qnh: Hectopascals;
}

/** Inputs of {@link pressureAltitudeFromQfe}. */
export interface PressureAltitudeFromQfeInputs {
  /** Pressure at the point itself. */
  readonly qfe: Hectopascals;
}

export const pressureAltitudeDomain = {
  elevation: elevationOfAerodrome,
  qnh: likelyQnh,
} satisfies Domain<PressureAltitudeInputs>;

export const pressureAltitudeFromQfeDomain = {
  qfe: pressureAtAerodrome,
} satisfies Domain<PressureAltitudeFromQfeInputs>;

/**
 * Pressure altitude of a point from its elevation and the QNH, in the ICAO form.
 *
 * PA = He + (T0/L) (1 − (QNH/P0)^(R L/g0)): He the elevation in ft above mean sea level, QNH in hPa, T0/L about
 * 145 442.156 ft, P0 = 1013.25 hPa, R L/g0 about 0.190263. Elevation is taken as geopotential; below 6 000 ft the
 * difference is less than 2 ft.
 *
 * @param x - `elevation` −2000 ft to 15 000 ft, `qnh` 850 hPa to 1085 hPa.
 * @returns Pressure altitude in ft.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.pressure-altitude
 *
 * @example
 * pressureAltitude({ elevation: ftElevation(1200), qnh: hPa(1013.25) }) // => 1200
 * pressureAltitude({ elevation: ftElevation(1200), qnh: hPa(1000) }) // ≈ 1563.794 ± 0.001
 */
export function pressureAltitude(x: PressureAltitudeInputs): PressureAltitude {
  demand('elevation', x.elevation, pressureAltitudeDomain.elevation);
  demand('qnh', x.qnh, pressureAltitudeDomain.qnh);
  const { elevation: elevation_ft, qnh: qnh_hPa }: Numbers<PressureAltitudeInputs> = x;
  return (elevation_ft + altitudeOfPressure_ft(qnh_hPa)) as PressureAltitude;
}

/**
 * Pressure altitude of a point from the QFE, the pressure at that point.
 *
 * PA = (T0/L) (1 − (QFE/P0)^(R L/g0)): QFE in hPa, T0/L about 145 442.156 ft, P0 = 1013.25 hPa, R L/g0 about 0.190263.
 *
 * @param x - `qfe` 466 hPa to 1200 hPa.
 * @returns Pressure altitude in ft.
 * @throws {@link DomainError} when the QFE is not within its range.
 * @record atmosphere.pressure-altitude-from-qfe
 *
 * @example
 * pressureAltitudeFromQfe({ qfe: hPa(900) }) // ≈ 3243.111 ± 0.001
 */
export function pressureAltitudeFromQfe(x: PressureAltitudeFromQfeInputs): PressureAltitude {
  demand('qfe', x.qfe, pressureAltitudeFromQfeDomain.qfe);
  return altitudeOfPressure_ft(x.qfe) as PressureAltitude;
}
