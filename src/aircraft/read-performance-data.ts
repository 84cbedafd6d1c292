import { type Fault, readDocument } from '../documents/index.ts';
import { consistencyFaults } from './consistency.ts';
import type { PerformanceData } from './performance-data.ts';
import { performanceDataSchema } from './performance-data-schema.ts';
import { type Finding, plausibilityFindings } from './plausibility.ts';

/** Performance data with what looks unlikely in them, or everything that is wrong with the document. */
export type PerformanceDataResult =
  | { readonly ok: true; readonly value: PerformanceData; readonly findings: readonly Finding[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Reads a performance data document: all faults at once, each with its path; never a throw.
 *
 * @param json - the document as parsed from JSON.
 * @returns the data with plausibility findings, or the faults.
 *
 * @example
 * readPerformanceData({ schema: 'groundroll/performance-data/1' }).ok // => false
 */
export function readPerformanceData(json: unknown): PerformanceDataResult {
  const read = readDocument<PerformanceData>(performanceDataSchema, json);
  if (!read.ok) return read;
  const faults = consistencyFaults(read.value);
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, value: read.value, findings: plausibilityFindings(read.value) };
}
