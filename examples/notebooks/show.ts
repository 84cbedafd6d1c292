// How the lessons show things: tables, figures and sentences, each as text and as what a notebook renders. Await them.

import * as Plot from '@observablehq/plot';
import type { TakeoffAssessment } from 'groundroll';
import { type FormatOptions, formatValue, type Measure, type UnitWord } from 'groundroll/units';
import { parseHTML } from 'linkedom';

type ByMediaType = Record<string, string>;

/** What the kernel offers of its own. */
declare const Deno: { readonly jupyter: { display(shown: ByMediaType, options: { raw: true }): Promise<void> } };
/** Where the cells are run without a kernel, what they show is kept. */
const { keep } = globalThis as { readonly keep?: (shown: ByMediaType) => void };

/** The kernel hands an output on without waiting; a cell that ended at once could overtake it. */
const headStart_ms = 25;

/** Shows one thing; the notebook picks the richest media type that it renders. */
async function show(shown: ByMediaType): Promise<void> {
  if (keep !== undefined) {
    keep(shown);
    return;
  }
  await Deno.jupyter.display(shown, { raw: true });
  await new Promise((resolve) => setTimeout(resolve, headStart_ms));
}

const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** A measure of a document with its unit: `771 m`; a dash where there is none. */
export function inWords(measured: Measure | undefined, options?: FormatOptions): string {
  return measured === undefined ? '–' : formatValue(measured.value, measured.unit as UnitWord, options);
}

/** Sentences, one a line. */
export function sentences(...lines: readonly string[]): Promise<void> {
  return show({
    'text/plain': lines.join('\n'),
    'text/html': lines.map((line) => `<p>${escaped(line)}</p>`).join(''),
  });
}

/** Rows with the same columns; the figures come with their units. */
export function table(rows: readonly Readonly<Record<string, string>>[]): Promise<void> {
  const columns = Object.keys(rows[0] ?? {});
  const width = (column: string) => Math.max(column.length, ...rows.map((row) => (row[column] ?? '').length));
  const line = (cell: (column: string) => string) =>
    columns
      .map((column) => cell(column).padEnd(width(column)))
      .join('  ')
      .trimEnd();
  const cells = (tag: string, cell: (column: string) => string) =>
    `<tr>${columns.map((column) => `<${tag} style="text-align: left">${escaped(cell(column))}</${tag}>`).join('')}</tr>`;
  return show({
    'text/plain': [line((column) => column), ...rows.map((row) => line((column) => row[column] ?? ''))].join('\n'),
    'text/html': `<table>${cells('th', (column) => column)}${rows.map((row) => cells('td', (column) => row[column] ?? '')).join('')}</table>`,
  });
}

/** A figure in ink; the sentence says what it shows, also to those who cannot see it. */
export function figure(sentence: string, options: Plot.PlotOptions): Promise<void> {
  const { document } = parseHTML('<!doctype html><html><body></body></html>');
  const drawn = Plot.plot({ document, width: 640, height: 320, marginLeft: 60, grid: true, ...options });
  drawn.setAttribute('role', 'img');
  drawn.setAttribute('aria-label', sentence);
  const svg = drawn.outerHTML;
  return show({
    'text/plain': sentence,
    'image/svg+xml': svg,
    'text/html': `<figure style="margin: 0">${svg}<figcaption>${escaped(sentence)}</figcaption></figure>`,
  });
}

/** Every criterion of an assessment, the limiting ones to be found by the reader. */
export function criteria(assessment: Pick<TakeoffAssessment, 'criteria'>): Promise<void> {
  return table(
    assessment.criteria.map((criterion) => ({
      criterion: criterion.subject,
      quantity: criterion.quantity,
      value: criterion.verdict === 'undetermined' ? '–' : inWords(criterion.value, decimalsOf(criterion.value)),
      sense: criterion.sense,
      limit: inWords(criterion.limit, criterion.limit && decimalsOf(criterion.limit)),
      'status of the limit': criterion.limitStatus,
      verdict: criterion.verdict,
    })),
  );
}

const decimalsOf = ({ unit }: Measure): FormatOptions => ({ decimals: unit === 'percent' ? 1 : 0 });

/** The stairs from the manual's figure to the distance required. */
export function stairs({ stairs: found }: Pick<TakeoffAssessment, 'stairs'>): Promise<void> {
  if (found === undefined) return sentences('The distance is undetermined: there are no stairs to climb.');
  return table(
    found.steps.map(({ step, factor, added, total }) => ({
      step,
      factor: factor.toFixed(3),
      added: inWords(added, { decimals: 1 }),
      total: inWords(total, { decimals: 1 }),
    })),
  );
}
