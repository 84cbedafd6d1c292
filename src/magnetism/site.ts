import { type Domain, demand, type ElevationInMetres, type Latitude, type Longitude } from '../units/index.ts';
import { type FieldAtEpoch, fieldAtEpoch } from './field-at-epoch.ts';

/** A place for which the magnetic model is asked. */
export interface MagneticSite {
  readonly latitude: Latitude;
  readonly longitude: Longitude;
  /** Elevation of the place; 0 if not given, which costs up to 0.08° of variation at 3000 m in the normal zone. */
  readonly elevation?: ElevationInMetres | undefined;
}

export const magneticSiteDomain = {
  // The last doubles before the poles.
  latitude: {
    unit: 'degLatitude',
    min: -90 + 2 ** -46,
    max: 90 - 2 ** -46,
    source: 'WGS 84, without the poles, where no true north exists',
  },
  longitude: { unit: 'degLongitude', min: -180, max: 360, source: 'WGS 84, counted to 180 or to 360' },
  elevation: { unit: 'mElevation', min: -1000, max: 850_000, source: 'height range of WMM2025' },
} satisfies Domain<MagneticSite>;

/** When the model holds. */
export const magneticDateDomain = {
  // The last double before 2030.
  date: { unit: 'year', min: 2025, max: 2030 - 2 ** -42, source: 'validity of WMM2025, 2030.0 excluded' },
} as const;

/** The field at a place that is first held against its bounds. */
export function fieldAt(site: MagneticSite): FieldAtEpoch {
  const { latitude, longitude } = site;
  const elevation_m: number = site.elevation === undefined ? 0 : site.elevation;
  demand('latitude', latitude, magneticSiteDomain.latitude);
  demand('longitude', longitude, magneticSiteDomain.longitude);
  demand('elevation', elevation_m, magneticSiteDomain.elevation);
  return fieldAtEpoch(latitude, canonical(longitude), elevation_m / 1000);
}

/** The same angle above −180° up to 180°; exact for −180° to 360°. */
export function canonical(angle: number): number {
  if (angle > 180) return angle - 360;
  return angle === -180 ? 180 : angle;
}
