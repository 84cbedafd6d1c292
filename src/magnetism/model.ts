import type { DecimalYear } from '../units/index.ts';

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
}

/** The World Magnetic Model that {@link magneticVariation} uses. */
export const magneticModel: MagneticModel = {
  name: 'WMM2025',
  epoch: 2025 as DecimalYear,
  release: '2024-12-17',
  validFrom: 2025 as DecimalYear,
  validTo: 2030 as DecimalYear,
};
