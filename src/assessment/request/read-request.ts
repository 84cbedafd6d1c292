import { type Fault, type ReadResult, readDocument } from '../../documents/index.ts';
import type { LandingRequest, TakeoffRequest, Weather } from './request.ts';
import { requestFaults } from './request-consistency.ts';
import { landingRequestSchema, takeoffRequestSchema, weatherSchema } from './request-schema.ts';
import { weatherFaults } from './weather-faults.ts';

/**
 * Reads a take-off request: all faults at once, each with its path; never a throw.
 *
 * @example
 * readTakeoffRequest({ schema: 'groundroll/landing-request/1' }).ok // => false
 */
export function readTakeoffRequest(json: unknown): ReadResult<TakeoffRequest> {
  return consistent(readDocument<TakeoffRequest>(takeoffRequestSchema, json), requestFaults);
}

/**
 * Reads a landing request: all faults at once, each with its path; never a throw.
 *
 * @example
 * readLandingRequest({ schema: 'groundroll/takeoff-request/1' }).ok // => false
 */
export function readLandingRequest(json: unknown): ReadResult<LandingRequest> {
  return consistent(readDocument<LandingRequest>(landingRequestSchema, json), requestFaults);
}

/** Reads the weather of a request by itself. */
export function readWeather(json: unknown): ReadResult<Weather> {
  return consistent(readDocument<Weather>(weatherSchema, json), weatherFaults);
}

function consistent<T>(
  read: ReadResult<T>,
  faultsOf: (value: T) => readonly { path: string; message: string }[],
): ReadResult<T> {
  if (!read.ok) return { ok: false, faults: read.faults.map(worded) };
  const faults = faultsOf(read.value);
  return faults.length === 0 ? read : { ok: false, faults };
}

/** Says why, where "not a key of this document" alone would leave the pilot guessing. */
function worded(fault: Fault): Fault {
  if (fault.path !== 'runway.surface.conditionCode' || !fault.message.endsWith('of this document')) return fault;
  return { ...fault, message: 'runway condition codes are for paved runways only' };
}
