import type { TraceStep } from '../assessment/index.ts';
import { textHtml } from './markup.ts';
import { shownSource, shownValue } from './shown-value.ts';
import type { WorksheetCheckValue, WorksheetFormula } from './worksheet.ts';

/** MathML by TeX, as `formulaMathml` of `groundroll/register` has it. */
export type MathmlByTex = Readonly<Record<string, string>>;

/** One step as it stands on a page of somebody else's. */
export interface WorkingStepHtmlOptions {
  /** MathML by TeX, of which the letters and the equation of the formula are enough. */
  readonly mathml?: MathmlByTex;
  /** The id of the step on the page; those inside it begin with it. */
  readonly id: string;
}

/**
 * One step of the working as markup for a page of one's own: its result, the formula, what went in and came out, the
 * sources with their access status, and the figures of others with our residual.
 *
 * @param step - a step of the `trace` of an assessment.
 * @param formula - its formula, as `worksheetFormula` gives it.
 * @param options - the id on the page, and MathML for the formula.
 * @returns an element; everything in it from documents is textHtml.
 */
export function workingStepHtml(step: TraceStep, formula: WorksheetFormula, options: WorkingStepHtmlOptions): string {
  const { id, mathml = {} } = options;
  return stepHtml(id, step, formula, mathml, checksHtml(formula, `${id}-checks`));
}

/** One step opened: formula, what went in, what came out, sources and check values. */
export function stepHtml(id: string, step: TraceStep, formula: WorksheetFormula, mathml: MathmlByTex, checks: string) {
  const { equation, title, citations } = formula;
  const sources = citations.map(
    (citation) =>
      `<li>${textHtml(shownSource(citation))} <span class="access">(${textHtml(citation.access)})</span></li>`,
  );
  const { output } = step;
  const results = typeof output === 'object' && output !== null ? rows(output, formula, mathml) : [];
  return `<div class="step" id="${textHtml(id)}">
<p class="result"><span>${textHtml(step.label)}</span> <span>${textHtml(resultOf(step, formula))}</span></p>
<p>${textHtml(title)}</p>
<div class="equation" tabindex="0" role="group" aria-label="${textHtml(`Equation: ${title}`)}">${equationHtml(equation, mathml)}</div>
${tableHtml('What goes in', rows(step.inputs, formula, mathml))}
${tableHtml('What comes out', results)}
<ul class="sources" aria-label="Sources">${sources.join('')}</ul>
${checks}
</div>`;
}

/** The one result of a step; several stand in a table of their own. */
export function resultOf({ output }: TraceStep, { units }: WorksheetFormula): string {
  return typeof output === 'object' && output !== null ? '' : shownValue(output, units['result']);
}

function tableHtml(caption: string, content: readonly string[]): string {
  return content.length === 0 ? '' : `<table><caption>${caption}</caption><tbody>${content.join('')}</tbody></table>`;
}

function equationHtml(tex: string, mathml: MathmlByTex): string {
  return mathml[tex]?.replaceAll('<math>', '<math display="block">') ?? `<code>${textHtml(tex)}</code>`;
}

/** A row for each quantity: its letter, what it is, and its value today. */
function rows(values: object, { symbols, units }: WorksheetFormula, mathml: MathmlByTex): string[] {
  return Object.entries(values).flatMap(([name, value]) => {
    if (value === undefined) return [];
    const { symbol, meaning } = symbols[name] ?? { symbol: '', meaning: name };
    const letter = mathml[symbol] ?? `<code>${textHtml(symbol)}</code>`;
    return [
      `<tr><td>${letter}</td><td>${textHtml(meaning)}</td><td class="figure">${textHtml(shownValue(value, units[name]))}</td></tr>`,
    ];
  });
}

/** The figures of others that a formula must reproduce, ours beside each; nothing where none were joined. */
export function checksHtml(formula: WorksheetFormula, place = checksId(formula.id)): string {
  const { checkValues, nonePublished, symbols } = formula;
  if (checkValues === undefined) return '';
  if (nonePublished !== undefined) return `<p>No published figure to compare with: ${textHtml(nonePublished)}</p>`;
  const agreeing = checkValues.filter(({ agrees }) => agrees).length;
  // Some are the results of programs written apart from this one, which nobody published; each row says whose it is.
  const count = `${checkValues.length} ${checkValues.length === 1 ? 'figure' : 'figures'} of others to compare with`;
  const head = ['theirs', 'ours', 'residual'].map((each) => `<th scope="col" class="figure">${each}</th>`);
  return `<details id="${textHtml(place)}"><summary>${count}, ${agreeing} within tolerance</summary>
<table class="checks"><thead><tr>${head.join('')}</tr></thead>${checkValues.map((each) => checkRows(each, symbols)).join('')}</table></details>`;
}

export function checksId(record: string): string {
  return `checks-${record}`;
}

/** Two rows for each figure: who published it, from what; and below, that figure and ours. */
function checkRows(row: WorksheetCheckValue, symbols: WorksheetFormula['symbols']): string {
  const { inputs, output, published, ours, unit, residual, tolerance, citation } = row;
  const { title, locator, access } = citation;
  const meaning = (name: string) => symbols[name]?.meaning ?? name;
  const given = Object.entries(inputs).map(([name, value]) => `${meaning(name)} ${shownValue(value, undefined)}`);
  const allowed = `${shownValue(tolerance, undefined)} allowed`;
  const difference = residual === undefined ? '' : `${residualOf(residual)}, ${allowed}`;
  const cells = [
    shownValue(published, unit),
    typeof ours === 'string' ? ours : shownValue(ours, undefined),
    difference,
  ];
  const by = `${textHtml(`${title}; ${locator}`)} <span class="access">(${textHtml(access)})</span>`;
  const from = `<span class="detail">${textHtml(`${meaning(output)}, from ${given.join('; ')}`)}</span>`;
  return `<tbody><tr><th scope="rowgroup" colspan="3">${by}${from}</th></tr><tr>${cells.map((each) => `<td class="figure">${textHtml(each)}</td>`).join('')}</tr></tbody>`;
}

/** In the unit of the published figure beside it; one below every printed decimal is said to be so, not to be nothing. */
function residualOf(residual: number): string {
  return residual !== 0 && Math.abs(residual) < 5e-5 ? 'under 0.0001' : shownValue(residual, undefined);
}
