import type { DecimalYear, Degrees, Nanotesla } from '../units/index.ts';

/** One standard deviation of each part of the modelled field from the real one, without local disturbances and storms. */
export interface FieldUncertainty {
  readonly north: Nanotesla;
  readonly east: Nanotesla;
  readonly down: Nanotesla;
  readonly horizontalIntensity: Nanotesla;
  readonly totalIntensity: Nanotesla;
  readonly inclination: Degrees;
}

/** Which magnetic model stands behind a variation, and when it holds. */
export interface MagneticModel {
  readonly name: string;
  /** The date for which the main field of the model is given. */
  readonly epoch: DecimalYear;
  /** Calendar date on which the model was released. */
  readonly release: string;
  /** The first instant at which the model holds. */
  readonly validFrom: DecimalYear;
  /** The instant at which the model no longer holds. */
  readonly validTo: DecimalYear;
  /** The same everywhere; that of the declination depends on the place and stands in each variation. */
  readonly uncertainty: FieldUncertainty;
}

/** The World Magnetic Model that {@link magneticVariation} and {@link magneticField} use. */
export const magneticModel: MagneticModel = {
  name: 'WMM2025',
  epoch: 2025 as DecimalYear,
  release: '2024-12-17',
  validFrom: 2025 as DecimalYear,
  validTo: 2030 as DecimalYear,
  uncertainty: {
    north: 137 as Nanotesla,
    east: 89 as Nanotesla,
    down: 141 as Nanotesla,
    horizontalIntensity: 133 as Nanotesla,
    totalIntensity: 138 as Nanotesla,
    inclination: 0.2 as Degrees,
  },
};
