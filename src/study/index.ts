export type { AnyRequest } from './any-request.ts';
export { compareFactorSets, type FactorSetRow } from './compare-factor-sets.ts';
export { compareRunways, type RunwayComparison, type RunwayRow } from './compare-runways.ts';
export { assessDepartureAndArrival, type DepartureAndArrivalAssessment } from './departure-and-arrival/assess.ts';
export { readDepartureAndArrivalRequest } from './departure-and-arrival/read-request.ts';
export type {
  ArrivalThenDepartureRequest,
  DepartureAndArrivalRequest,
  DepartureThenArrivalRequest,
} from './departure-and-arrival/request.ts';
export { type MostAdverseSurface, mostAdverseSurface, type SurfaceVerdict } from './most-adverse-surface.ts';
export { type PlausibleChange, plausibleChanges, type SensitivityInputId } from './plausible-changes.ts';
export { type ReassessTrigger, type ReassessTriggers, reassessTriggers } from './reassess-triggers.ts';
export type { RunwayDistanceAxes } from './runway-distance-table/axes.ts';
export type {
  RunwayDistanceCell,
  RunwayDistanceRow,
  RunwayDistanceTable,
  WarmestTemperature,
} from './runway-distance-table/data.ts';
export { readRunwayDistanceTable } from './runway-distance-table/read-table.ts';
export { runwayDistanceTable } from './runway-distance-table/table.ts';
export {
  type ChangesGiven,
  type MarginSensitivity,
  type Sensitivities,
  type Sensitivity,
  sensitivities,
} from './sensitivities.ts';
export {
  type SensitivitySeries,
  type SeriesAlong,
  type SeriesMargin,
  type SeriesPoint,
  sensitivitySeries,
} from './sensitivity-series.ts';
export type { StudySentence, StudySentenceCode } from './sentences.ts';
export type { SolvedLimit } from './solve.ts';
export {
  greatestCrosswind,
  greatestSurfaceFactor,
  greatestTailwind,
  highestTemperature,
  performanceLimitedMass,
  shortestRunway,
  tallestObstacle,
} from './solved-limits.ts';
export {
  type CombinedStandardUncertaintyInputs,
  combinedStandardUncertainty,
} from './uncertainty/combined-standard-uncertainty.ts';
export type { Distribution } from './uncertainty/distribution.ts';
export {
  type LognormalMoments,
  type LognormalMomentsInputs,
  lognormalMoments,
} from './uncertainty/lognormal-moments.ts';
export { type NormalDeviateInputs, normalDeviate } from './uncertainty/normal-deviate.ts';
export {
  type Contribution,
  type Covering,
  type FirstOrder,
  type MonteCarlo,
  type PropagateInputs,
  type Propagation,
  propagate,
  type UncertainQuantity,
} from './uncertainty/propagate.ts';
export {
  type RectangularStandardUncertaintyInputs,
  rectangularStandardUncertainty,
} from './uncertainty/rectangular-standard-uncertainty.ts';
export { type InputUncertainty, inputUncertainties, type UncertainInputId } from './uncertainty/uncertain-inputs.ts';
export type { UncertainInput, UncertaintiesGiven } from './uncertainty/uncertain-request.ts';
export {
  type CoveringDistance,
  type UncertainInputUsed,
  type Uncertainty,
  type UncertaintyOptions,
  uncertainty,
} from './uncertainty/uncertainty.ts';
