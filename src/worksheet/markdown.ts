import type { WorkingEntry } from '../assessment/index.ts';
import { formatNumber, formatValue } from '../units/index.ts';
import { isUnitWord } from '../units/unit-table.ts';
import { breakEvenSentence, completedFor, criterionSentence, markSentence, stairLines } from './ledger.ts';
import type { Worksheet, WorksheetFormula } from './worksheet.ts';

/**
 * A worksheet as Markdown with its whole working: each step with its figures, each formula in LaTeX with its sources.
 *
 * @param sheet - what `worksheet` returned.
 * @returns a Markdown document.
 */
export function worksheetMarkdown(sheet: Worksheet): string {
  const { assessment, formulas } = sheet;
  const unitsOf = new Map(formulas.map(({ id, units }) => [id, units]));
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
      'From first principles, beside the factors',
      assessment.estimates.map(({ text }) => text),
    ),
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
    ...list(
      'Working',
      assessment.trace.map((entry) =>
        workingLine(entry, entry.kind === 'step' ? (unitsOf.get(entry.record) ?? {}) : {}),
      ),
    ),
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

/** One step with its figures in words, each with its unit; lists stand in the units of the manual's table. */
function workingLine(entry: WorkingEntry, units: WorksheetFormula['units']): string {
  if (entry.kind === 'decision') return entry.text;
  const named = (values: object) =>
    Object.entries(values)
      .filter(([, value]) => value !== undefined)
      .map(([name, value]) => `${name} ${shown(value, units[name])}`)
      .join(', ');
  const { label, record, inputs, output } = entry;
  const result = typeof output === 'object' && output !== null ? named(output) : shown(output, units['result']);
  return `${label}: ${result} (\`${record}\`: ${named(inputs)})`;
}

function shown(value: unknown, unit: string | undefined): string {
  if (Array.isArray(value)) return `[${value.map((each) => shown(each, undefined)).join(', ')}]`;
  if (typeof value === 'object' && value !== null)
    return `(${Object.entries(value)
      .map(([name, each]) => `${name} ${shown(each, unit)}`)
      .join(', ')})`;
  if (typeof value !== 'number') return String(value);
  // Up to four decimals, without a tail of noughts on what was printed whole.
  const decimals = Math.max(0, Math.min(4, decimalsOf(value)));
  return unit !== undefined && isUnitWord(unit)
    ? formatValue(value, unit, { decimals })
    : formatNumber(value, { decimals });
}

function decimalsOf(value: number): number {
  return String(Number(value.toFixed(4))).split('.')[1]?.length ?? 0;
}
