import type * as v from 'valibot';
import type { Fault } from './fault.ts';

/** What the schema library reports, as a fault in our own words. */
export function faultOf(issue: v.BaseIssue<unknown>): Fault {
  return { path: pathOf(issue), message: messageOf(issue) };
}

function pathOf(issue: v.BaseIssue<unknown>): string {
  return (issue.path ?? []).reduce((path, { key }) => {
    if (typeof key === 'number') return `${path}[${key}]`;
    return path === '' ? String(key) : `${path}.${String(key)}`;
  }, '');
}

/** Our own sentence for what the schema library reports in general words. */
function messageOf(issue: v.BaseIssue<unknown>): string {
  if (issue.kind !== 'schema') return issue.message;
  if (issue.type === 'strict_object' && issue.expected === 'never') return 'is not a key of this document';
  if (issue.received === 'undefined')
    return isGiven(issue) ? 'is undefined: a key without a value is left out' : 'is missing';
  if (issue.type === 'custom') return issue.message;
  const received = inWords(issue.received);
  const expected = issue.expected ?? 'expected';
  // A choice is printed as ("m" | "ft").
  return expected.startsWith('(')
    ? `${received} is none of ${expected.slice(1, -1).split(' | ').join(', ')}`
    : `${received} is not ${inWords(expected)}`;
}

const kinds: Readonly<Record<string, string>> = {
  Object: 'an object',
  Array: 'a list',
  number: 'a number',
  string: 'a text',
  boolean: 'true or false',
};

/** The kinds of JSON as a reader calls them; anything else, a value or a word of the schema, as it is. */
function inWords(kind: string): string {
  return Object.hasOwn(kinds, kind) ? (kinds[kind] as string) : kind;
}

/** Whether the key itself is there; JSON has none without a value, a program may. */
function isGiven({ path }: v.BaseIssue<unknown>): boolean {
  const last = path?.[path.length - 1];
  return typeof last?.input === 'object' && last.input !== null && Object.hasOwn(last.input, last.key as PropertyKey);
}
