import type { WorkingEntry } from '../assessment/index.ts';
import type { WorksheetLine } from './ledger.ts';
import { textMarkdown } from './markup.ts';
import { type WorksheetSection, worksheetSections } from './sections.ts';
import { named, shownOutput, shownSource } from './shown-value.ts';
import type { Worksheet, WorksheetFormula } from './worksheet.ts';

/**
 * A worksheet as Markdown with its whole working: each step with its figures, each formula in LaTeX with its sources.
 *
 * @param sheet - what `worksheet` returned.
 * @returns a Markdown document.
 */
export function worksheetMarkdown(sheet: Worksheet): string {
  const { assessment, formulas } = sheet;
  const sections = worksheetSections(assessment);
  // The working stands before what it was worked out from.
  const end = sections.findIndex(({ id }) => id === 'inputs');
  const lines = [
    ...sections.slice(0, end).flatMap(sectionLines),
    ...working(assessment.trace, formulas),
    '',
    '## Formulas',
    ...formulas.flatMap(formulaLines),
    ...sections.slice(end).flatMap(sectionLines),
  ];
  return `${lines.join('\n')}\n`;
}

/** A worksheet as JSON text, two spaces deep; every figure in it is finite. */
export function worksheetJson(sheet: Worksheet): string {
  return `${JSON.stringify(sheet, undefined, 2)}\n`;
}

function sectionLines({ id, title, lines }: WorksheetSection): string[] {
  if (id === 'ledger') return ['', '| | adds | total |', '|---|---:|---:|', ...lines.map(ledgerRow)];
  if (id !== 'head') return ['', `## ${title}`, '', ...lines.map(({ sentence }) => `- ${textMarkdown(sentence)}`)];
  const [head, ...rest] = lines;
  return [`# ${textMarkdown(head?.sentence ?? '')}`, ...rest.flatMap(({ sentence }) => ['', textMarkdown(sentence)])];
}

function ledgerRow({ sentence, detail, factor, added = '', total = '' }: WorksheetLine): string {
  const words = [sentence, ...(factor === undefined ? [] : [`x ${factor}`])].join(', ');
  const said = textMarkdown(`${words}${detail === undefined ? '' : ` (${detail})`}`);
  return `| ${said.replaceAll('|', '\\|')} | ${added} | ${total} |`;
}

function formulaLines({ id, title, equation, citations }: WorksheetFormula): string[] {
  const sources = citations.map((citation) => `- ${shownSource(citation)} (${citation.access})`);
  return ['', `### ${title} (\`${id}\`)`, '', `$$${equation}$$`, '', ...sources];
}

function working(trace: readonly WorkingEntry[], formulas: readonly WorksheetFormula[]): string[] {
  const unitsOf = new Map(formulas.map(({ id, units }) => [id, units]));
  return [
    '',
    '## Working',
    '',
    ...trace.map((entry) => {
      if (entry.kind === 'decision') return `- ${textMarkdown(entry.text)}`;
      const units = unitsOf.get(entry.record) ?? {};
      const inputs = named(entry.inputs, units).join(', ');
      return `- ${textMarkdown(`${entry.label}: ${shownOutput(entry, units)}`)} (\`${entry.record}\`: ${textMarkdown(inputs)})`;
    }),
  ];
}
