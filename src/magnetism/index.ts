export {
  type MagneticFromTrueInputs,
  magneticFromTrue,
  type TrueFromMagneticInputs,
  trueFromMagnetic,
} from './conversion.ts';
export { type MagneticModel, magneticModel } from './model.ts';
export {
  type MagneticVariation,
  type MagneticVariationInputs,
  magneticVariation,
  type UnusableVariation,
  type UsableVariation,
} from './variation.ts';
