import {
  type Domain,
  demand,
  type GeometricAltitudeInMetres,
  type GeopotentialAltitudeInMetres,
} from '../units/index.ts';
import { tabulatedGeometric, tabulatedGeopotential } from './standard-atmosphere-bounds.ts';
import { r_m } from './standard-atmosphere-constants.ts';

/** Inputs of {@link geopotentialAltitude}. */
export interface GeopotentialAltitudeInputs {
  readonly geometricAltitude: GeometricAltitudeInMetres;
}

/** Inputs of {@link geometricAltitude}. */
export interface GeometricAltitudeInputs {
  readonly geopotentialAltitude: GeopotentialAltitudeInMetres;
}

export const geopotentialAltitudeDomain = {
  geometricAltitude: tabulatedGeometric,
} satisfies Domain<GeopotentialAltitudeInputs>;

export const geometricAltitudeDomain = {
  geopotentialAltitude: tabulatedGeopotential,
} satisfies Domain<GeometricAltitudeInputs>;

/**
 * Geopotential altitude: the altitude at which constant gravity would have cost the same work.
 *
 * H = r h/(r + h): h the geometric altitude in m above mean sea level, r = 6 356 766 m.
 *
 * @param x - `geometricAltitude` −5000 m to 81 020 m.
 * @returns Geopotential altitude in m; below 1780 m less than 0.5 m lower.
 * @throws {@link DomainError} when the altitude is not within its range.
 * @record atmosphere.geopotential-altitude
 *
 * @example
 * geopotentialAltitude({ geometricAltitude: mGeometric(11019) }) // ≈ 10999.93 ± 0.01
 */
export function geopotentialAltitude(x: GeopotentialAltitudeInputs): GeopotentialAltitudeInMetres {
  demand('geometricAltitude', x.geometricAltitude, geopotentialAltitudeDomain.geometricAltitude);
  return geopotentialAltitude_m(x.geometricAltitude) as GeopotentialAltitudeInMetres;
}

/**
 * Geometric altitude, the metres above mean sea level, from the geopotential altitude.
 *
 * h = r H/(r − H): H the geopotential altitude in m, r = 6 356 766 m.
 *
 * @param x - `geopotentialAltitude` −5000 m to 80 000 m.
 * @returns Geometric altitude in m.
 * @throws {@link DomainError} when the altitude is not within its range.
 * @record atmosphere.geometric-altitude
 *
 * @example
 * geometricAltitude({ geopotentialAltitude: mGeopotential(11000) }) // ≈ 11019.07 ± 0.01
 */
export function geometricAltitude(x: GeometricAltitudeInputs): GeometricAltitudeInMetres {
  demand('geopotentialAltitude', x.geopotentialAltitude, geometricAltitudeDomain.geopotentialAltitude);
  return geometricAltitude_m(x.geopotentialAltitude) as GeometricAltitudeInMetres;
}

/** H = r h/(r + h). */
export function geopotentialAltitude_m(h_m: number): number {
  return (r_m * h_m) / (r_m + h_m);
}

/** h = r H/(r − H). */
export function geometricAltitude_m(H_m: number): number {
  return (r_m * H_m) / (r_m - H_m);
}
