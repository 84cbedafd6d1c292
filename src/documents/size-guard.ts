import type { Fault } from './fault.ts';

const longestArray = 60;
const deepestNesting = 14;
const longestText = 2000;
const mostValues = 40_000;

/**
 * Refuses a document that is too large or too deep before anything else looks at it, so that reading takes bounded
 * time whatever is sent. The largest tables of a light aeroplane are two orders of magnitude smaller.
 */
export function sizeFault(json: unknown): Fault | undefined {
  let values = 0;
  const visit = (value: unknown, path: string, depth: number): Fault | undefined => {
    values += 1;
    if (values > mostValues) return { path, message: `the document has more than ${mostValues} values` };
    if (typeof value === 'string' && value.length > longestText) {
      return { path, message: `a text of ${value.length} characters is longer than ${longestText}` };
    }
    if (typeof value !== 'object' || value === null) return undefined;
    if (depth > deepestNesting) return { path, message: `nested deeper than ${deepestNesting} levels` };
    if (Array.isArray(value) && value.length > longestArray) {
      return { path, message: `a list of ${value.length} entries is longer than ${longestArray}` };
    }
    if (!isPlain(value)) return { path, message: 'is not a plain object: only its own values are looked at' };
    const keys = Object.keys(value);
    if (keys.length > mostValues) return { path, message: `the document has more than ${mostValues} values` };
    for (const key of keys) {
      if (key.length > longestText) {
        return { path, message: `a key of ${key.length} characters is longer than ${longestText}` };
      }
      const part = (value as Record<string, unknown>)[key];
      const fault = visit(part, childPath(path, key, Array.isArray(value)), depth + 1);
      if (fault !== undefined) return fault;
    }
    return undefined;
  };
  return visit(json, '', 0);
}

/**
 * Whether an object has nothing from another, as JSON makes it; one from another frame or worker too. What an object
 * inherits would be read as its own, past every guard.
 */
function isPlain(value: object): boolean {
  if (Array.isArray(value)) return true;
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}

function childPath(path: string, key: string, isIndex: boolean): string {
  if (isIndex) return `${path}[${key}]`;
  return path === '' ? key : `${path}.${key}`;
}
