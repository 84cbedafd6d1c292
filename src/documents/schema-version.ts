import type { Fault } from './fault.ts';

/** The number at the end of a document's `schema`; none where it names no document of that kind. */
export function schemaVersion(json: unknown, kind: string): number | undefined {
  const schema = typeof json === 'object' && json !== null && 'schema' in json ? json.schema : undefined;
  if (typeof schema !== 'string' || !schema.startsWith(`groundroll/${kind}/`)) return undefined;
  const number = schema.slice(`groundroll/${kind}/`.length);
  return /^\d{1,6}$/.test(number) ? Number(number) : undefined;
}

/** A document of the right kind in another version: said at once, instead of every key that has changed since. */
export function versionFault(json: unknown, readable: string): Fault | undefined {
  const [, kind = '', version] = readable.split('/');
  const found = schemaVersion(json, kind);
  if (found === undefined || found === Number(version)) return undefined;
  const age = found < Number(version) ? 'older' : 'newer';
  return { path: 'schema', message: `version ${found} is ${age} than version ${version}, the one that is read here` };
}
