// Bounds that several domains share. Each is a constant by itself: an app's bundler drops it where it is not used, which
// it does not dare with a property of another object.

/** Where the tropospheric laws are used: from well below any aerodrome up to the tropopause at 11 000 m. */
export const troposphere = {
  unit: 'ftPA',
  min: -5000,
  max: 36089,
  source: 'troposphere of the ICAO standard atmosphere, Doc 7488/3',
} as const;

/** Pressure altitudes at which density altitudes of real air stay in the troposphere. */
export const lowerTroposphere = { unit: 'ftPA', min: -5000, max: 20000, source: 'library range' } as const;

/** Geopotential altitudes of the tables of the standard atmosphere. */
export const tabulatedGeopotential = {
  unit: 'mGeopotential',
  min: -5000,
  max: 80000,
  source: 'tables of the ICAO standard atmosphere, Doc 7488/3',
} as const;

/** Geometric altitudes of the tables of the standard atmosphere. */
export const tabulatedGeometric = {
  unit: 'mGeometric',
  min: -5000,
  max: 81020,
  source: 'tables of the ICAO standard atmosphere, Doc 7488/3',
} as const;

/** Pressures of the tables of the standard atmosphere: just inside what it has at 80 000 m and at −5 000 m. */
export const tabulatedPressure = {
  unit: 'hPa',
  min: 0.0088628,
  max: 1776.87,
  source: 'ICAO standard atmosphere, -5000 m to 80000 m',
} as const;

/** Air temperatures met in the troposphere. */
export const airTemperature = { unit: 'degC', min: -80, max: 60, source: 'library range' } as const;

/** Air temperatures at which a formula of the vapour pressure is used for the air itself. */
export const humidAirTemperature = { unit: 'degC', min: -40, max: 50, source: 'library range' } as const;

/** Temperatures, dew points among them, for which the vapour pressure of Bolton 1980 is used. */
export const boltonTemperature = {
  unit: 'degC',
  min: -40,
  max: 50,
  source: 'library range; Bolton 1980 states 0.3 % for -35 degC to 35 degC only',
} as const;

/** Elevations of aerodromes and their barometers. */
export const elevationOfAerodrome = { unit: 'ftElevation', min: -2000, max: 15000, source: 'library range' } as const;

/** Altimeter settings, wider than any ever met. */
export const likelyQnh = { unit: 'hPa', min: 850, max: 1085, source: 'library range' } as const;

/** Pressures at aerodromes: those of every QNH in range at every elevation in range. */
export const pressureAtAerodrome = { unit: 'hPa', min: 466, max: 1200, source: 'library range' } as const;

/** Pressures of the air from the tropopause to the lowest ground. */
export const airPressure = { unit: 'hPa', min: 226, max: 1220, source: 'library range' } as const;
