import type { Fault } from '../documents/index.ts';

/** Why what stands beside a request is no list to go through; nothing is wrong with one that has entries. */
export function listFaults(path: string, given: unknown): Fault[] {
  if (!Array.isArray(given)) return [{ path, message: 'is not a list' }];
  return given.length === 0 ? [{ path, message: 'is empty' }] : [];
}

/** Why what stands beside a request is no object to take choices from. */
export function objectFaults(path: string, given: unknown): Fault[] {
  const isObject = typeof given === 'object' && given !== null && !Array.isArray(given);
  return isObject ? [] : [{ path, message: 'is not an object' }];
}

/** The choices that nobody takes: a slip of the pen would else leave the default in place without a word. */
export function strayFaults(path: string, given: object, known: readonly string[]): Fault[] {
  return Object.keys(given)
    .filter((key) => !known.includes(key))
    .map((key) => ({ path: `${path}.${key}`, message: `is none of ${known.join(', ')}` }));
}

/** Why a choice is no whole number within its bounds. */
export function wholeFaults(path: string, given: unknown, min: number, max: number): Fault[] {
  const fits = typeof given === 'number' && Number.isInteger(given) && given >= min && given <= max;
  return fits ? [] : [{ path, message: `${inFault(given)} is not a whole number within ${min} to ${max}` }];
}

/** Why a choice is no number within its bounds. */
export function numberFaults(path: string, given: unknown, min: number, max: number, unit = ''): Fault[] {
  const fits = typeof given === 'number' && given >= min && given <= max;
  return fits ? [] : [{ path, message: `${inFault(given)}${unit} is not within ${min} to ${max}${unit}` }];
}

/** What is wrong in several places of one question for one reason is said once. */
export function withoutRepeats(faults: readonly Fault[]): Fault[] {
  return [...new Map(faults.map((fault) => [`${fault.path} ${fault.message}`, fault])).values()];
}

/** What was received, as it stands in a fault: a text is told from a number. */
function inFault(given: unknown): string {
  return typeof given === 'string' ? JSON.stringify(given) : String(given);
}
