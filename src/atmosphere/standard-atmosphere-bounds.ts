/** Where the tropospheric laws are used: from well below any aerodrome up to the tropopause at 11 000 m. */
export const troposphere = {
  unit: 'ftPA',
  min: -5000,
  max: 36089,
  source: 'troposphere of the ICAO standard atmosphere, Doc 7488/3',
} as const;

/** Air temperatures met in the troposphere. */
export const airTemperature = { unit: 'degC', min: -80, max: 60, source: 'library range' } as const;
