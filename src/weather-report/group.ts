import type { Fault } from '../documents/index.ts';

/** One word of a report, with the character at which it starts, counted from 1. */
export interface Group {
  readonly text: string;
  readonly position: number;
}

/** A group as it was read, or what is wrong with it. */
export type GroupReading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** The words of a text, in one pass; the sign that ends a report is a word of its own, wherever it stands. */
export function groupsOf(text: string): Group[] {
  const groups: Group[] = [];
  let start = -1;
  for (let i = 0; i <= text.length; i += 1) {
    const character = i === text.length ? ' ' : text.charAt(i);
    const isWord = !isWhiteSpace(character) && character !== '=';
    if (isWord && start < 0) start = i;
    if (!isWord && start >= 0) {
      groups.push({ text: text.slice(start, i), position: start + 1 });
      start = -1;
    }
    if (character === '=') groups.push({ text: character, position: i + 1 });
  }
  return groups;
}

/** A space, a tab or the end of a line; a report has no other white space. */
function isWhiteSpace(character: string): boolean {
  return character === ' ' || character === '\t' || character === '\n' || character === '\r';
}

/** What is wrong with one group: its text, where it stands, and why. */
export function groupFault(path: string, { text, position }: Group, problem: string): Fault {
  return { path, message: `"${text.slice(0, 40)}" at character ${position} ${problem}` };
}
