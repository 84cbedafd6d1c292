export { type PerformanceData, type PerformanceDataResult, readPerformanceData } from './aircraft/index.ts';
export {
  assessLanding,
  assessTakeoff,
  type Criterion,
  type LandingAssessment,
  type LandingRequest,
  prepareLanding,
  prepareTakeoff,
  readLandingRequest,
  readTakeoffRequest,
  type TakeoffAssessment,
  type TakeoffRequest,
  type Verdict,
} from './assessment/index.ts';
export type { Fault, ReadResult } from './documents/index.ts';
export { DomainError, type DomainErrorDetail } from './units/index.ts';
