// How the lessons show things: tables, figures and sentences, each as text and as what a notebook renders. Await them.

import * as Plot from '@observablehq/plot';
import type { TakeoffAssessment } from 'groundroll';
import { formulaMathml } from 'groundroll/register';
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

/** A box that is as wide as the page lets it be, and in which what is wider scrolls. */
const scrolling = (html: string) =>
  `<div style="overflow-x: auto; width: 0; min-width: 100%" tabindex="0">${html}</div>`;

/** An equation of a record, set where a notebook sets mathematics, and as the record writes it elsewhere. */
export function equation(tex: string): Promise<void> {
  return show({ 'text/plain': tex, 'text/html': `<p>${mathematics(tex)}</p>` });
}

/** MathML of the register; what it does not hold stays as it is written. */
const mathematics = (text: string) => formulaMathml[text] ?? escaped(text);

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
    `<tr>${columns.map((column) => `<${tag} style="text-align: left">${cell(column)}</${tag}>`).join('')}</tr>`;
  // A column of symbols is set like the equations that they stand in.
  const body = (row: Readonly<Record<string, string>>) => (column: string) =>
    (column === 'symbol' ? mathematics : escaped)(row[column] ?? '');
  return show({
    'text/plain': [line((column) => column), ...rows.map((row) => line((column) => row[column] ?? ''))].join('\n'),
    'text/html': `<table>${cells('th', escaped)}${rows.map((row) => cells('td', body(row))).join('')}</table>`,
  });
}

/** A figure in ink; the sentence says what it shows, also to those who cannot see it. */
export function figure(sentence: string, options: Plot.PlotOptions): Promise<void> {
  const { document } = parseHTML('<!doctype html><html><body></body></html>');
  // On a telephone a figure scrolls rather than shrink until nobody can read it.
  const style = { fontSize: '13px', minWidth: '540px' };
  const margins = { marginLeft: 60, marginTop: 30, marginBottom: 44 };
  const drawn = Plot.plot({ document, width: 640, height: 340, ...margins, grid: true, style, ...options });
  // The whole is one image with one name: names of its parts would be read by nobody.
  for (const part of drawn.querySelectorAll('[aria-label], [aria-description]')) {
    part.removeAttribute('aria-label');
    part.removeAttribute('aria-description');
  }
  drawn.setAttribute('role', 'img');
  drawn.setAttribute('aria-label', sentence);
  // Thousands stand apart as everywhere else: 1 100, not 1,100.
  const svg = drawn.outerHTML.replace(/(?<=>−?\d{1,3}),(?=\d{3}<)/g, '\u00a0');
  return show({
    'text/plain': sentence,
    'image/svg+xml': svg,
    'text/html': `<figure style="margin: 0">${scrolling(svg)}<figcaption>${escaped(sentence)}</figcaption></figure>`,
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

const decimalsOf = ({ unit }: Measure): FormatOptions => ({ decimals: unit === 'percent' || unit === 'mps' ? 1 : 0 });

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
