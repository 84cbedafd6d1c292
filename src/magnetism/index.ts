export {
  type MagneticFromTrueInputs,
  magneticFromTrue,
  type TrueFromMagneticInputs,
  trueFromMagnetic,
} from './conversion.ts';
export type { MagneticVariation, UnusableVariation, UsableVariation } from './declination.ts';
export {
  type DesignatorDirection,
  type DesignatorDirectionInputs,
  designatorDirection,
  type NearestDesignators,
  type NearestDesignatorsInputs,
  nearestDesignators,
  type OneDesignator,
  type TwoDesignators,
} from './designator.ts';
export { type MagneticField, type MagneticFieldInputs, magneticField } from './field.ts';
export { type FieldUncertainty, type MagneticModel, magneticModel } from './model.ts';
export type { MagneticSite } from './site.ts';
export { type MagneticVariationInputs, magneticVariation } from './variation.ts';
export { type VariationOnDate, variationAt } from './variation-at.ts';
