import type { WorkingEntry } from '../assessment/index.ts';
import { formatNumber } from '../units/index.ts';
import { breakEvenSentence, completedFor, criterionSentence, markSentence, stairLines } from './ledger.ts';
import type { Worksheet } from './worksheet.ts';

/**
 * A worksheet as Markdown with its whole working: each step with its figures, each formula in LaTeX with its sources.
 *
 * @param sheet - what `worksheet` returned.
 * @returns a Markdown document.
 */
export function worksheetMarkdown(sheet: Worksheet): string {
  const { assessment, formulas } = sheet;
  const [head = { text: '' }, ...rest] = assessment.headline;
  const lines = [
    `# ${head.text}`,
    '',
    ...rest.map(({ text }) => `${text}\n`),
    completedFor(assessment),
    '',
    '| | adds | total |',
    '|---|---:|---:|',
    ...stairLines(assessment).map(({ sentence, added = '', total = '' }) => `| ${sentence} | ${added} | ${total} |`),
    ...list('Criteria', assessment.criteria.map(criterionSentence)),
    ...list(
      'Why',
      assessment.reasons.map(({ text }) => text),
    ),
    ...list(
      'Held against the distance available, everything else as it is',
      assessment.breakEvens.map(breakEvenSentence),
    ),
    ...list('Marks on the ground', assessment.marks.map(markSentence)),
    ...list(
      'Advice',
      assessment.advice.map(({ text }) => text),
    ),
    ...list(
      'Hazards',
      assessment.hazards.map(({ text }) => text),
    ),
    ...list(
      'Data notes',
      assessment.dataNotes.map(({ text }) => text),
    ),
    ...list('Working', assessment.trace.map(workingLine)),
    '',
    '## Formulas',
    ...formulas.flatMap(({ id, title, equation, citations }) => [
      '',
      `### ${title} (\`${id}\`)`,
      '',
      `$$${equation}$$`,
      '',
      ...citations.map(
        ({ title: source, edition, locator, access }) => `- ${source}, ${edition}; ${locator} (${access})`,
      ),
    ]),
    ...list('Not assessed', assessment.notAssessed),
    ...list('Limits of use', assessment.limitsOfUse),
  ];
  return `${lines.join('\n')}\n`;
}

/** A worksheet as JSON text, two spaces deep; every figure in it is finite. */
export function worksheetJson(sheet: Worksheet): string {
  return `${JSON.stringify(sheet, undefined, 2)}\n`;
}

function list(title: string, entries: readonly string[]): string[] {
  return entries.length === 0 ? [] : ['', `## ${title}`, '', ...[...new Set(entries)].map((entry) => `- ${entry}`)];
}

function workingLine(entry: WorkingEntry): string {
  if (entry.kind === 'decision') return entry.text;
  const inputs = Object.entries(entry.inputs).map(([name, value]) => `${name} ${figures(value)}`);
  return `${entry.label}: ${figures(entry.output)} (\`${entry.record}\`: ${inputs.join(', ')})`;
}

function figures(value: unknown): string {
  if (typeof value === 'number') return formatNumber(value, { decimals: 4 });
  if (Array.isArray(value)) return `[${value.map(figures).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return String(value);
  return Object.entries(value)
    .map(([name, part]) => `${name} ${figures(part)}`)
    .join('; ');
}
