export { assessLanding } from './assess-landing.ts';
export { assessTakeoff } from './assess-takeoff.ts';
export type {
  BreakEvenFound,
  Criterion,
  DecidedCriterion,
  LandingAssessment,
  MarkFound,
  SpeedFound,
  StairStep,
  Stairs,
  TakeoffAssessment,
  UndeterminedCriterion,
  WorkingEntry,
} from './assessment.ts';
export type { Conditions } from './conditions.ts';
export type { LimitStatus, Verdict } from './criterion.ts';
export type { Parameters } from './parameters.ts';
export { type Confirmation, type Policy, policyDefaults } from './policies.ts';
export { type Comparison, type Prepared, prepareLanding, prepareTakeoff } from './prepare.ts';
export { marginInWords, verdictInWords } from './present.ts';
export { readLandingRequest, readTakeoffRequest, readWeather } from './read-request.ts';
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
} from './request.ts';
export type { Sentence, SentenceCode } from './sentences.ts';
export type { TraceStep } from './step.ts';
