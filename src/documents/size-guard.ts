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
  const walk = { values: 0, keys: [] as (string | number)[], message: '' };
  return isSmall(json, walk) ? undefined : { path: pathOf(walk.keys), message: walk.message };
}

/** Where a walk through a document stands: the path is kept as keys, and written out only for a fault. */
interface Walk {
  values: number;
  readonly keys: (string | number)[];
  message: string;
}

function isSmall(value: unknown, walk: Walk): boolean {
  walk.values += 1;
  if (walk.values > mostValues) return refuse(walk, `the document has more than ${mostValues} values`);
  if (typeof value === 'string' && value.length > longestText) {
    return refuse(walk, `a text of ${value.length} characters is longer than ${longestText}`);
  }
  if (typeof value !== 'object' || value === null) return true;
  if (walk.keys.length > deepestNesting) return refuse(walk, `nested deeper than ${deepestNesting} levels`);
  return Array.isArray(value) ? isSmallList(value, walk) : isSmallObject(value, walk);
}

function isSmallList(list: readonly unknown[], walk: Walk): boolean {
  if (list.length > longestArray)
    return refuse(walk, `a list of ${list.length} entries is longer than ${longestArray}`);
  for (let i = 0; i < list.length; i += 1) {
    if (isCounted(list[i], walk)) continue;
    walk.keys.push(i);
    if (!isSmall(list[i], walk)) return false;
    walk.keys.pop();
  }
  return true;
}

function isSmallObject(object: object, walk: Walk): boolean {
  if (!isPlain(object)) return refuse(walk, 'is not a plain object: only its own values are looked at');
  const keys = Object.keys(object);
  if (keys.length > mostValues) return refuse(walk, `the document has more than ${mostValues} values`);
  for (const key of keys) {
    if (key.length > longestText)
      return refuse(walk, `a key of ${key.length} characters is longer than ${longestText}`);
    const value = (object as Record<string, unknown>)[key];
    if (isCounted(value, walk)) continue;
    walk.keys.push(key);
    if (!isSmall(value, walk)) return false;
    walk.keys.pop();
  }
  return true;
}

/** Numbers, of which tables consist, can only be too many. */
function isCounted(value: unknown, walk: Walk): boolean {
  if (typeof value !== 'number' || walk.values >= mostValues) return false;
  walk.values += 1;
  return true;
}

function refuse(walk: Walk, message: string): false {
  walk.message = message;
  return false;
}

/**
 * Whether an object has nothing from another, as JSON makes it; one from another frame or worker too. What an object
 * inherits would be read as its own, past every guard.
 */
function isPlain(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null || Object.getPrototypeOf(prototype) === null;
}

function pathOf(keys: readonly (string | number)[]): string {
  return keys.reduce<string>((path, key) => {
    if (typeof key === 'number') return `${path}[${key}]`;
    return path === '' ? key : `${path}.${key}`;
  }, '');
}
