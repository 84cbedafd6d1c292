import type { AnyRequest } from '../../src/study/any-request.ts';
import { type RunwayDistanceAxes, type RunwayDistanceTable, runwayDistanceTable } from '../../src/study/index.ts';
import { takeoffRequest } from '../assessment/scenario.ts';

export const kg = (...values: number[]) => values.map((value) => ({ mass: { value, unit: 'kg' as const } }));
export const degC = (...values: number[]) => values.map((value) => ({ value, unit: 'degC' as const }));
export const knots = (...values: number[]) => values.map((value) => ({ value, unit: 'kt' as const }));

/** A fault fails the test with all of them. */
export function tableOf(request: AnyRequest, axes: RunwayDistanceAxes): RunwayDistanceTable {
  const result = runwayDistanceTable(request, axes);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

export function faults(axes: unknown, request: AnyRequest = takeoffRequest('takeoff-28')): string[] {
  const result = runwayDistanceTable(request, axes as RunwayDistanceAxes);
  return result.ok ? [] : result.faults.map(({ path, message }) => `${path}: ${message}`);
}
