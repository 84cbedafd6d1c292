import type { Fault } from '../documents/index.ts';

/** Why what stands beside a request is no list to go through; nothing is wrong with one that has entries. */
export function listFaults(path: string, given: unknown): Fault[] {
  if (!Array.isArray(given)) return [{ path, message: 'is not a list' }];
  return given.length === 0 ? [{ path, message: 'is empty' }] : [];
}

/** Why what stands beside a request is no object to take choices from. */
export function objectFaults(path: string, given: unknown): Fault[] {
  return typeof given === 'object' && given !== null && !Array.isArray(given)
    ? []
    : [{ path, message: 'is not an object' }];
}
