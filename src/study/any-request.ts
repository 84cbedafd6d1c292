import type { LandingData, TakeoffData } from '../aircraft/index.ts';
import {
  assessLanding,
  assessTakeoff,
  type Conditions,
  conditionsOf,
  type LandingAssessment,
  type LandingRequest,
  type Prepared,
  policyDefaults,
  prepareLanding,
  prepareTakeoff,
  type RunwayEnd,
  readLandingRequest,
  readTakeoffRequest,
  type TakeoffAssessment,
  type TakeoffRequest,
} from '../assessment/index.ts';
import type { ReadResult } from '../documents/index.ts';

/** A request of either phase of flight. */
export type AnyRequest = TakeoffRequest | LandingRequest;

/** A finished assessment of either phase of flight. */
export type AnyAssessment = TakeoffAssessment | LandingAssessment;

/** What is no request at all, not even an object, is none; the reader says what it lacks. */
export function isTakeoff(request: AnyRequest): request is TakeoffRequest {
  return request?.schema === 'groundroll/takeoff-request/1';
}

/** Reads a request of either phase. */
export function readAny(request: AnyRequest): ReadResult<AnyRequest> {
  return isTakeoff(request) ? readTakeoffRequest(request) : readLandingRequest(request);
}

/** Assesses a request of either phase. */
export function assessAny(request: AnyRequest): ReadResult<AnyAssessment> {
  return isTakeoff(request) ? assessTakeoff(request) : assessLanding(request);
}

/** Prepares a request of either phase. */
export function prepareAny(request: AnyRequest): ReadResult<Prepared<AnyAssessment>> {
  return isTakeoff(request) ? prepareTakeoff(request) : prepareLanding(request);
}

/** The weather of a request in plain figures, by its own policy on unreported gusts. */
export function weatherOf({ weather, policies }: AnyRequest): Conditions {
  return conditionsOf(weather, { unreportedGust: policies?.unreportedGust ?? policyDefaults.unreportedGust.default });
}

/** The ends of the runway as it is used: the one that is used, and the far one. */
export function endsOf({ runway, runwayInUse }: AnyRequest): { near: RunwayEnd; far: RunwayEnd } {
  const [a, b] = runway.ends;
  return a.designator === runwayInUse ? { near: a, far: b } : { near: b, far: a };
}

/** The configuration flown; the only one of the phase where the request names none. */
export function configurationOf(request: AnyRequest): string | undefined {
  const phase = isTakeoff(request) ? 'takeoff' : 'landing';
  return request.configuration ?? request.performanceData.configurations.find((each) => each.phase === phase)?.id;
}

/** The manual's distances for the configuration flown. */
export function tableOf(request: AnyRequest): TakeoffData | LandingData | undefined {
  const configuration = configurationOf(request);
  const tables = isTakeoff(request) ? request.performanceData.takeoff : request.performanceData.landing;
  return tables.find((each) => each.configuration === configuration);
}
