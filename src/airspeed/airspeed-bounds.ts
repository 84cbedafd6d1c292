// Ranges that the conversions between airspeeds share.

export const calibratedBound = { unit: 'kcas', min: 0, max: 350, source: 'library range' } as const;
export const equivalentBound = { unit: 'keas', min: 0, max: 350, source: 'library range' } as const;
export const trueBound = { unit: 'ktas', min: 0, max: 660, source: 'library range' } as const;
export const machBound = { unit: 'ratio', min: 0, max: 1, source: 'not above the speed of sound' } as const;
export const pressureAltitudeBound = {
  unit: 'ftPA',
  min: -5000,
  max: 36089,
  source: 'troposphere of the ICAO standard atmosphere',
} as const;
export const temperatureBound = { unit: 'degC', min: -80, max: 60, source: 'library range' } as const;
