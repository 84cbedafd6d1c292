export {
  type CalibratedAirspeedFromEquivalentInputs,
  type CalibratedAirspeedFromMachInputs,
  type CalibratedAirspeedFromTrueInputs,
  calibratedAirspeedFromEquivalent,
  calibratedAirspeedFromMach,
  calibratedAirspeedFromTrue,
} from './calibrated-airspeed.ts';
export {
  type CompressibilityFactorInputs,
  compressibilityFactor,
  type EquivalentAirspeedFromCalibratedInputs,
  type EquivalentAirspeedFromMachInputs,
  type EquivalentAirspeedFromTrueInputs,
  equivalentAirspeedFromCalibrated,
  equivalentAirspeedFromMach,
  equivalentAirspeedFromTrue,
} from './equivalent-airspeed.ts';
export {
  type ApproachSpeedInputs,
  approachSpeed,
  type GustIncrementInputs,
  gustIncrement,
} from './gust-addition.ts';
export {
  type GustRule,
  gustRules,
  type HalfGustIncrementInputs,
  halfGustIncrement,
  type QuarterMeanOrHalfIncrementInputs,
  quarterMeanOrHalfIncrement,
} from './gust-rules.ts';
export {
  type CalibratedAirspeedFromImpactPressureInputs,
  calibratedAirspeedFromImpactPressure,
  type ImpactPressureInputs,
  impactPressure,
} from './impact-pressure.ts';
export {
  type CalibratedAirspeedIncompressibleInputs,
  calibratedAirspeedIncompressible,
  type TrueAirspeedIncompressibleInputs,
  trueAirspeedIncompressible,
} from './incompressible.ts';
export { type LoadFactorInTurnInputs, loadFactorInTurn } from './load-factor.ts';
export {
  type LoadFactorAtStallInputs,
  loadFactorAtStall,
  type StallSpeedAtLoadFactorInputs,
  stallSpeedAtLoadFactor,
} from './load-factor-speed.ts';
export {
  type MachNumberFromCalibratedInputs,
  type MachNumberFromEquivalentInputs,
  type MachNumberFromTrueInputs,
  machNumberFromCalibrated,
  machNumberFromEquivalent,
  machNumberFromTrue,
} from './mach-number.ts';
export { type ManoeuvringSpeedInputs, manoeuvringSpeed } from './manoeuvring-speed.ts';
export { type PublishedSpeedMultiple, publishedSpeedMultiples } from './published-speed-multiples.ts';
export {
  type StallSpeedInputs,
  type StallSpeedMultipleInputs,
  stallSpeed,
  stallSpeedMultiple,
} from './stall-speed.ts';
export {
  type TrueAirspeedFromEquivalentInputs,
  type TrueAirspeedFromMachInputs,
  type TrueAirspeedInputs,
  trueAirspeed,
  trueAirspeedFromEquivalent,
  trueAirspeedFromMach,
} from './true-airspeed.ts';
