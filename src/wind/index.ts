export { type WindUsedInputs, windUsed } from './accountability.ts';
export { type AllowableCrosswind, allowableCrosswinds } from './allowable-crosswinds.ts';
export {
  type BaseToFinalBankInputs,
  type BaseToFinalTurn,
  type BaseToFinalTurnInputs,
  baseToFinalBank,
  baseToFinalTurn,
} from './base-to-final-turn.ts';
export {
  type BaseToFinalBankLimit,
  type BaseToFinalVerdict,
  type BaseToFinalVerdictInputs,
  baseToFinalBankLimit,
  baseToFinalVerdict,
} from './base-to-final-verdict.ts';
export {
  type Circuit,
  type CircuitLeg,
  type CircuitLegInputs,
  type CircuitLegName,
  type CircuitLegsInputs,
  circuitLeg,
  circuitLegs,
} from './circuit-leg.ts';
export { type WindComponents, type WindComponentsInputs, windComponents } from './components.ts';
export { type WindComponentSpread, type WindComponentSpreadInputs, windComponentSpread } from './direction-spread.ts';
export { type GroundSpeedInputs, groundSpeed } from './ground-speed.ts';
export {
  flightTestWindExponent,
  type HeadwindAtHeightInputs,
  headwindAtHeight,
  type WindProfileExponent,
} from './headwind-at-height.ts';
export {
  type LargestWind,
  type LargestWindAtAngle,
  type LargestWindInputs,
  type LargestWindsInputs,
  largestWind,
  largestWinds,
} from './largest-wind.ts';
export { type ReportedWindComponents, type ReportedWindInputs, reportedWindComponents } from './reported.ts';
export {
  type ReportedWind,
  type RunwayEnd,
  type RunwayInOrder,
  type RunwayOrder,
  type RunwayOrderInputs,
  runwayOrder,
  type WindOnRunway,
} from './runway-order.ts';
export {
  type BankAroundPointInputs,
  bankAroundPoint,
  type RateOfTurnInputs,
  rateOfTurn,
  type TurnRadiusInputs,
  type TurnTimeInputs,
  turnRadius,
  turnTime,
} from './turn.ts';
export {
  type ObservationColumn,
  type RunwayUsability,
  type Usability,
  type UsabilityFactorInputs,
  usabilityFactor,
} from './usability-factor.ts';
export { type WindTriangle, type WindTriangleInputs, windTriangle } from './wind-triangle.ts';
export {
  type CrabAngleInputs,
  crabAngle,
  type SideslipAngleInputs,
  type SideslipBankInputs,
  sideslipAngle,
  sideslipBank,
} from './wing-low.ts';
