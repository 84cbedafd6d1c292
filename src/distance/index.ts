export { type AccelerationCheckSpeedInputs, accelerationCheckSpeed } from './acceleration-check.ts';
export { type CorrectedDistanceInputs, correctedDistance } from './corrected-distance.ts';
export { type DistanceForExcessHeightInputs, distanceForExcessHeight } from './excess-height.ts';
export { factorInWords } from './factor-sets/factor-in-words.ts';
export type {
  FactorKind,
  FactorOrigin,
  FactorSet,
  PhaseCorrections,
  SafetyAlternative,
  SafetyTest,
  SlopeRule,
  SteppedRule,
  SurfaceFactor,
} from './factor-sets/factor-set.ts';
export { factorsOf } from './factor-sets/factors-of.ts';
export { type FactorSetId, factorSets } from './factor-sets/index.ts';
export { type SurfaceEffect, surfaceEffect } from './factor-sets/surface-effect.ts';
export {
  type HydroplaningSpeedInputs,
  hydroplaningSpeed,
  hydroplaningSpeedAtTouchdown,
  hydroplaningSpeedEarlierHandbook,
} from './hydroplaning.ts';
export { type LatestLiftOffInputs, latestLiftOff } from './latest-lift-off.ts';
export { type LatestTouchdownPointInputs, latestTouchdownPoint } from './latest-touchdown.ts';
export {
  type PrintedLawFactorInputs,
  printedLawFactor,
  type SlopeFactorInputs,
  slopeFactor,
  type WindFactorInputs,
  windFactor,
} from './linear-factor.ts';
export { type ProRatedFactorInputs, proRatedFactor } from './pro-rated-factor.ts';
export { type LatestRejectPointInputs, latestRejectPoint } from './reject-point.ts';
export { type RollWithSurfaceInputs, rollWithSurface } from './roll-on-surface.ts';
export {
  type RunwayConditionCode,
  type RunwayConditionMeaning,
  runwayConditionCodeCitation,
  runwayConditionCodes,
} from './runway-condition-code.ts';
export { type SpeedFactorInputs, speedFactor } from './speed-factor.ts';
export { type Surface, type SurfaceAspect, surfaceAspects, surfaceInWords } from './surface.ts';
