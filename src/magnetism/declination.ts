import type { DecimalYear, Degrees, Nanotesla, Variation, VariationChange } from '../units/index.ts';
import type { FieldAtEpoch } from './field-at-epoch.ts';
import { type MagneticModel, magneticModel } from './model.ts';
import { canonical } from './site.ts';

interface ModelledDeclination {
  /** How fast the declination changes, eastward positive. */
  readonly annualChange: VariationChange;
  /** One standard deviation of the declination from the real field, without local disturbances and magnetic storms. */
  readonly uncertainty: Degrees;
  /** The part of the field that turns a compass. */
  readonly horizontalIntensity: Nanotesla;
  /** The date for which the model was asked. */
  readonly date: DecimalYear;
  readonly model: MagneticModel;
}

/** A variation where a compass is usable; in the caution zone with care. */
export interface UsableVariation extends ModelledDeclination {
  /** `normal`: horizontal intensity 6000 nT or more; `caution`: 2000 nT or more, below 6000 nT. */
  readonly zone: 'normal' | 'caution';
  /** Magnetic north east of true north, above −180° up to 180°; west is negative. */
  readonly variation: Variation;
}

/** Near a magnetic pole, where a compass is not usable: there is no variation to fly by. */
export interface UnusableVariation extends ModelledDeclination {
  /** `blackout`: horizontal intensity below 2000 nT. */
  readonly zone: 'blackout';
  /** What the model gives, east positive, above −180° up to 180°; for comparison with published values only. */
  readonly modelledDeclination: Degrees;
}

/** The variation at a place, after its zone has been asked. */
export type MagneticVariation = UsableVariation | UnusableVariation;

const blackoutBelow_nT = 2000;
const cautionBelow_nT = 6000;

/** The variation by the field of one place on a date; no evaluation of the model, because it is linear in time. */
export function variationOn(field: FieldAtEpoch, date: DecimalYear): MagneticVariation {
  const { northChange_nT, eastChange_nT } = field;
  const years = (date as number) - magneticModel.epoch;
  const north_nT = field.north_nT + years * northChange_nT;
  const east_nT = field.east_nT + years * eastChange_nT;
  const intensity_nT = Math.sqrt(north_nT * north_nT + east_nT * east_nT);
  const declination = canonical((Math.atan2(east_nT, north_nT) * 180) / Math.PI);
  const change_radPerYear = (north_nT * eastChange_nT - east_nT * northChange_nT) / (intensity_nT * intensity_nT);
  const sigma = 5417 / intensity_nT;
  const uncertainty = Math.sqrt(0.26 * 0.26 + sigma * sigma) as Degrees;
  const annualChange = ((change_radPerYear * 180) / Math.PI) as VariationChange;
  const horizontalIntensity = intensity_nT as Nanotesla;
  const model = magneticModel;
  if (intensity_nT < blackoutBelow_nT) {
    const modelledDeclination = declination as Degrees;
    return { zone: 'blackout', modelledDeclination, annualChange, uncertainty, horizontalIntensity, date, model };
  }
  const zone = intensity_nT < cautionBelow_nT ? 'caution' : 'normal';
  const variation = declination as Variation;
  return { zone, variation, annualChange, uncertainty, horizontalIntensity, date, model };
}
