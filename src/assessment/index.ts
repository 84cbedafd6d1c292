export { assessLanding } from './assess-landing.ts';
export { assessTakeoff } from './assess-takeoff.ts';
export type { Changes } from './changes.ts';
export { type GreatestWithin, greatestWithin } from './kernel/break-even.ts';
export type { LimitStatus, Verdict } from './kernel/criterion.ts';
export type { TraceStep } from './kernel/step.ts';
export { type Comparison, type Prepared, prepareLanding, prepareTakeoff } from './prepare.ts';
export { type Conditions, conditionsOf } from './request/conditions.ts';
export type { North } from './request/north.ts';
export { type Confirmation, type Policy, policyDefaults } from './request/policies.ts';
export { readLandingRequest, readTakeoffRequest, readWeather } from './request/read-request.ts';
export type {
  DeclaredDistances,
  LandingRequest,
  Obstacle,
  PoliciesGiven,
  ReportedWind,
  RequestBase,
  Runway,
  RunwayEnd,
  TakeoffRequest,
  VariationGiven,
  Weather,
} from './request/request.ts';
export { weatherFromMetar } from './request/weather-from-metar.ts';
export type {
  BreakEvenFound,
  ClimbOutFound,
  Criterion,
  DecidedCriterion,
  LandingAssessment,
  MarkFound,
  ObstacleAhead,
  SpeedFound,
  StairStep,
  Stairs,
  TakeoffAssessment,
  UndeterminedCriterion,
  WorkingEntry,
} from './result/assessment.ts';
export { limitsOfUse } from './result/limits-of-use.ts';
export type { Parameters } from './result/parameters.ts';
export { marginInWords, verdictInWords } from './result/present.ts';
export type { Sentence, SentenceCode } from './result/sentences.ts';
export type { WindLimitFound, WindOnRunway } from './result/wind-on-runway.ts';
