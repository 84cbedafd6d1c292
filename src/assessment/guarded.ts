import { faultOfRefusal, type ReadResult } from '../documents/index.ts';
import { DomainError } from '../units/index.ts';

/**
 * Runs an assessment whose document was read without faults. A formula that refuses what the schemas let through is
 * reported as a fault like any other: nothing a pilot may enter makes an assessment throw.
 */
export function guarded<T>(assess: () => T): ReadResult<T> {
  try {
    return { ok: true, value: assess() };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { ok: false, faults: [faultOfRefusal(error)] };
  }
}
