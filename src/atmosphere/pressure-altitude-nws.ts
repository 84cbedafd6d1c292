import {
  type Domain,
  demand,
  type Elevation,
  type Hectopascals,
  type Numbers,
  type PressureAltitude,
} from '../units/index.ts';
import { elevationOfAerodrome, likelyQnh } from './standard-atmosphere-bounds.ts';

/** Inputs of {@link pressureAltitudeNws}. */
export interface PressureAltitudeNwsInputs {
  /** Elevation of the point, such as the highest point of the aerodrome. */
  readonly elevation: Elevation;
  readonly altimeterSetting: Hectopascals;
}

export const pressureAltitudeNwsDomain = {
  elevation: elevationOfAerodrome,
  altimeterSetting: likelyQnh,
} satisfies Domain<PressureAltitudeNwsInputs>;

/**
 * Pressure altitude with the constants of the National Weather Service, which the conversion table beside the density
 * altitude chart of the Federal Aviation Administration follows.
 *
 * PA = He + 145366.45 (1 − (A/1013.25)^0.190284): He the elevation in ft, A the altimeter setting in hPa. Within 0.8 ft
 * of {@link pressureAltitude} from 28 inHg to 31 inHg.
 *
 * @param x - `elevation` −2000 ft to 15 000 ft, `altimeterSetting` 850 hPa to 1085 hPa.
 * @returns Pressure altitude in ft.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.pressure-altitude-nws
 *
 * @example
 * pressureAltitudeNws({ elevation: ftElevation(0), altimeterSetting: hectopascalsFromInchesOfMercury(inHg(30.1)) }) // ≈ -164.85 ± 0.01
 */
export function pressureAltitudeNws(x: PressureAltitudeNwsInputs): PressureAltitude {
  demand('elevation', x.elevation, pressureAltitudeNwsDomain.elevation);
  demand('altimeterSetting', x.altimeterSetting, pressureAltitudeNwsDomain.altimeterSetting);
  const { elevation: elevation_ft, altimeterSetting: a_hPa }: Numbers<PressureAltitudeNwsInputs> = x;
  return (elevation_ft + 145366.45 * (1 - (a_hPa / 1013.25) ** 0.190284)) as PressureAltitude;
}
