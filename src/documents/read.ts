import * as v from 'valibot';
import type { ReadResult } from './fault.ts';
import { faultOf } from './issue-in-words.ts';
import { versionFault } from './schema-version.ts';
import { sizeFault } from './size-guard.ts';

/** Reads a document by its schema; all faults at once, never a throw. */
export function readDocument<T>(schema: v.GenericSchema<unknown, T>, json: unknown): ReadResult<T> {
  return readPlain(json, () => {
    const otherVersion = versionFault(json, literalOf(schema));
    if (otherVersion !== undefined) return { ok: false, faults: [otherVersion] };
    const result = v.safeParse(schema, json);
    return result.success ? { ok: true, value: result.output } : { ok: false, faults: result.issues.map(faultOf) };
  });
}

/**
 * Reads what is small enough. JSON has no code, but a caller may hand over an object whose properties throw: that is a
 * fault of the document like any other.
 */
export function readPlain<T>(json: unknown, read: () => ReadResult<T>): ReadResult<T> {
  try {
    const tooLarge = sizeFault(json);
    return tooLarge === undefined ? read() : { ok: false, faults: [tooLarge] };
  } catch {
    return { ok: false, faults: [{ path: '', message: 'is not plain data: looking at it throws' }] };
  }
}

/** The `schema` that a document must carry; empty for parts of documents, which carry none. */
function literalOf(schema: v.GenericSchema<unknown, unknown>): string {
  const { entries } = schema as { entries?: { schema?: { literal?: string } } };
  return entries?.schema?.literal ?? '';
}
