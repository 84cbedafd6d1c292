import { type WorksheetLine, worksheetSections } from 'groundroll/worksheet';
import type { WorkedEnd } from './work-out.ts';

/** A line of the worksheet below the ledger, for the ends of which it holds. */
export interface SharedLine {
  readonly ends: readonly WorkedEnd[];
  readonly line: WorksheetLine;
}

export interface SharedSection {
  readonly id: string;
  readonly title: string;
  readonly lines: readonly SharedLine[];
}

/** The sections of both worksheets in their order; what both ends say stands once, first. */
export function sharedSections(ends: readonly WorkedEnd[]): SharedSection[] {
  const sheets = ends.flatMap((end) =>
    end.assessment === undefined ? [] : [{ end, sections: worksheetSections(end.assessment) }],
  );
  const order = [...new Map(sheets.flatMap(({ sections }) => sections.map(({ id, title }) => [id, title] as const)))];
  return order
    .filter(([id]) => id !== 'ledger')
    .sort(([a], [b]) => place(a) - place(b))
    .map(([id, title]) => {
      const found = sheets.flatMap(({ end, sections }) =>
        (sections.find((each) => each.id === id)?.lines ?? []).map((line) => ({ end, line })),
      );
      return { id, title, lines: merged(found) };
    });
}

const ids = [
  'head',
  'criteria',
  'why',
  'choices',
  'break-evens',
  'marks',
  'speeds',
  'first-principles',
  'advice',
  'hazards',
  'data-notes',
  'inputs',
  'not-assessed',
  'limits-of-use',
];
const place = (id: string) => ids.indexOf(id);

function merged(found: readonly { readonly end: WorkedEnd; readonly line: WorksheetLine }[]): SharedLine[] {
  const bySentence = new Map<string, { ends: WorkedEnd[]; line: WorksheetLine }>();
  for (const { end, line } of found) {
    const known = bySentence.get(line.sentence);
    if (known === undefined) bySentence.set(line.sentence, { ends: [end], line });
    else known.ends.push(end);
  }
  const all = [...bySentence.values()];
  const most = Math.max(0, ...all.map(({ ends }) => ends.length));
  const shared = all.filter(({ ends }) => ends.length === most && most > 1);
  const own = all.filter((each) => !shared.includes(each)).sort((a, b) => placeOf(a) - placeOf(b));
  return [...shared, ...own];
}

const placeOf = ({ ends }: SharedLine) => ends[0]?.place ?? 0;
