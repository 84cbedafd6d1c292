// The invented aeroplanes and fields of `examples`, read and checked.

import { readFileSync } from 'node:fs';
import {
  type Fault,
  type LandingRequest,
  type PerformanceData,
  type ReadResult,
  readLandingRequest,
  readPerformanceData,
  readTakeoffRequest,
  type TakeoffRequest,
} from 'groundroll';

/** The document as it stands in the file, not yet read as anything. */
export function json(file: string): Record<string, unknown> {
  return JSON.parse(readFileSync(new URL(`../${file}.json`, import.meta.url), 'utf8'));
}

/** The value, or all faults at once. */
export function accepted<T>(result: ReadResult<T>): T {
  if (!result.ok) throw new Error(faultLines(result.faults).join('\n'));
  return result.value;
}

/** Each fault as a line. */
export function faultLines(faults: readonly Fault[]): string[] {
  return faults.map(({ path, message }) => `${path}: ${message}`);
}

/** `corran-four`, `skerry-two`, `linnet-two` or `plover-two`. */
export function performanceData(name: string): PerformanceData {
  return accepted(readPerformanceData(json(`performance-data/${name}`)));
}

function requested(name: string): unknown {
  return { ...json(`requests/${name}`), performanceData: performanceData('corran-four') };
}

/** A take-off of the Corran Four: `takeoff-28`, `takeoff-10` or `quarry-takeoff-04`. */
export function takeoffRequest(name: string): TakeoffRequest {
  return accepted(readTakeoffRequest(requested(name)));
}

/** A landing of the Corran Four: `landing-10`, `landing-28` or `quarry-landing-04`. */
export function landingRequest(name: string): LandingRequest {
  return accepted(readLandingRequest(requested(name)));
}
