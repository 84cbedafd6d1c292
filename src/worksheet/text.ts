import type { Assessment, WorksheetLine } from './ledger.ts';
import { type WorksheetSection, worksheetSections } from './sections.ts';

const width = 88;

/** Sections that follow one another without a title, as one reads them. */
const untitled: ReadonlySet<WorksheetSection['id']> = new Set(['head', 'ledger', 'criteria']);

/**
 * A finished assessment as plain text: the ledger in sentences, with the metres that each costs at its right edge.
 *
 * @param assessment - what `assessTakeoff` or `assessLanding` returned.
 * @returns lines of text; the head is its first paragraph.
 */
export function worksheetText(assessment: Assessment): string {
  const [head, ...rest] = worksheetSections(assessment);
  const lines = [...(head?.lines ?? []).map(({ sentence }) => sentence), ...rest.flatMap(sectionLines)];
  return `${lines.flatMap((line) => wrap(line)).join('\n')}\n`;
}

function sectionLines({ id, title, lines }: WorksheetSection): string[] {
  if (untitled.has(id)) return ['', ...lines.map(ledgerLine)];
  return ['', `${title}:`, ...lines.map(({ sentence }) => `  ${sentence}`)];
}

function ledgerLine({ sentence, factor, added = '', total }: WorksheetLine): string {
  if (total === undefined) return sentence;
  const words = `${sentence}${factor === undefined ? '' : `, x ${factor}`}`;
  return `${words.padEnd(width - 24)}${added.padStart(12)}${total.padStart(12)}`;
}

/** Breaks a long sentence at spaces; continued lines are indented. */
function wrap(line: string): string[] {
  if (line.length <= width) return [line];
  const indent = line.startsWith('  ') ? '    ' : '  ';
  const lines: string[] = [];
  let rest = line;
  while (rest.length > width) {
    const at = lastBreak(rest);
    if (at <= indent.length) break;
    lines.push(rest.slice(0, at));
    rest = indent + rest.slice(at + 1);
  }
  return [...lines, rest];
}

/** The last space that parts no number from its unit. */
function lastBreak(line: string): number {
  let at = line.lastIndexOf(' ', width);
  while (at > 0 && /\d/.test(line.charAt(at - 1)) && !/[A-Z(]/.test(line.charAt(at + 1)))
    at = line.lastIndexOf(' ', at - 1);
  return at;
}
