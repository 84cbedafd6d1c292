import type { TraceStep } from '../assessment/index.ts';
import { gradientsFigure } from './figures/gradients.ts';
import { stairsFigure } from './figures/stairs.ts';
import { windRulersFigure } from './figures/wind-rulers.ts';
import type { WorksheetLine } from './ledger.ts';
import { sentenceHtml, textHtml } from './markup.ts';
import { page } from './page.ts';
import type { Paper } from './page-style.ts';
import { type WorksheetSection, worksheetSections } from './sections.ts';
import { checksHtml, checksId, type MathmlByTex, resultOf, stepHtml } from './step-html.ts';
import type { Worksheet, WorksheetFormula } from './worksheet.ts';

/** How a worksheet is printed as a page. */
export interface WorksheetHtmlOptions {
  /** MathML by TeX, `formulaMathml` of `groundroll/register`; put on the page as it is. Without it formulas stand as TeX. */
  readonly mathml?: MathmlByTex;
  /** The sheet that the page prints on; A4 if not given. */
  readonly paper?: Paper;
  /** Whether the working stands open, as for a print of everything; closed if not given. */
  readonly working?: 'closed' | 'open';
}

/**
 * A worksheet as one self-contained, printable HTML page: the ledger in sentences, the figures, and under each sentence
 * that rests on a formula the way back to step, formula, sources and check values, which opens in place without a script.
 *
 * @param sheet - what `worksheet` returned.
 * @param options - MathML for the formulas, the paper, and whether the working stands open.
 * @returns an HTML document.
 */
export function worksheetHtml(sheet: Worksheet, options: WorksheetHtmlOptions = {}): string {
  const { paper = 'A4' } = options;
  const sections = worksheetSections(sheet.assessment);
  const working = new WorkingOnPage(sheet, options);
  const [head, ...rest] = sections;
  const title = head?.lines[0]?.sentence ?? '';
  const body = [
    '<main>',
    `<header>${headHtml(head, working)}</header>`,
    ...rest.flatMap((section) => [
      // What no sentence leads to stands before what the working was worked out from.
      ...(section.id === 'inputs' ? [working.restHtml()] : []),
      sectionHtml(section, working),
      ...figuresAfter(section.id, sheet),
    ]),
    '</main>',
    `<footer><p>groundroll ${textHtml(sheet.assessment.version)}.<span class="on-screen"> Each sentence with a wedge beside it opens to its formula, sources and check values.</span></p></footer>`,
  ];
  return page({ title, paper, body: body.filter((part) => part !== '').join('\n') });
}

/** The steps of the working: each stands on the page once in full, where it is first needed, and is linked to after that. */
class WorkingOnPage {
  private readonly shown = new Set<number>();
  private readonly checked = new Set<string>();
  private readonly formulas: ReadonlyMap<string, WorksheetFormula>;
  private readonly mathml: MathmlByTex;
  private readonly open: string;

  constructor(
    private readonly sheet: Worksheet,
    { mathml = {}, working = 'closed' }: WorksheetHtmlOptions,
  ) {
    this.formulas = new Map(sheet.formulas.map((each) => [each.id, each]));
    this.mathml = mathml;
    this.open = working === 'open' ? ' open' : '';
  }

  /** A line as it is, or with the steps behind it to be opened in place. */
  line({ steps }: WorksheetLine, content: string, row = ''): string {
    const ways = steps.map((i) => this.step(i)).filter((each) => each !== '');
    if (ways.length === 0) return `<div class="line">${content}</div>`;
    return `<details${this.open}><summary${row}>${content}</summary><div class="way">${ways.join('')}</div></details>`;
  }

  /** What no sentence has led to. */
  restHtml(): string {
    const items = this.sheet.assessment.trace.flatMap((entry, i) => {
      if (entry.kind !== 'step' || this.shown.has(i)) return [];
      return [`<li>${this.line({ sentence: entry.label, steps: [i] }, textHtml(entry.label))}</li>`];
    });
    return items.length === 0
      ? ''
      : `<section aria-labelledby="further"${this.open === '' ? ' class="on-screen"' : ''}><h2 id="further">Further steps of the working</h2><ul>${items.join('')}</ul></section>`;
  }

  private step(i: number): string {
    const entry = this.sheet.assessment.trace[i];
    const formula = entry?.kind === 'step' ? this.formulas.get(entry.record) : undefined;
    if (entry?.kind !== 'step' || formula === undefined) return '';
    if (this.shown.has(i)) return this.again(i, entry, formula);
    this.shown.add(i);
    return stepHtml(`step-${i}`, entry, formula, this.mathml, this.checks(formula));
  }

  private again(i: number, step: TraceStep, formula: WorksheetFormula): string {
    return `<p class="result"><a href="#step-${i}">${textHtml(step.label)}</a> <span>${textHtml(resultOf(step, formula))}</span></p>`;
  }

  private checks(formula: WorksheetFormula): string {
    const { id, checkValues, nonePublished } = formula;
    if (!this.checked.has(id) || checkValues === undefined || nonePublished !== undefined) {
      this.checked.add(id);
      return checksHtml(formula);
    }
    return `<p><a href="#${textHtml(checksId(id))}">The figures of others that this formula is compared with</a></p>`;
  }
}

function headHtml(head: WorksheetSection | undefined, working: WorkingOnPage): string {
  const [first, ...rest] = head?.lines ?? [];
  const lines = rest.map((each) => working.line(each, sentenceHtml(each.sentence)));
  return `<h1>${sentenceHtml(first?.sentence ?? '')}</h1>\n${lines.join('\n')}`;
}

function sectionHtml({ id, title, lines }: WorksheetSection, working: WorkingOnPage): string {
  const list = id === 'ledger' ? ledgerHtml(lines, working) : listHtml(id, lines, working);
  return `<section aria-labelledby="${id}"><h2 id="${id}">${textHtml(title)}</h2>\n${list}\n</section>`;
}

function listHtml(id: WorksheetSection['id'], lines: readonly WorksheetLine[], working: WorkingOnPage): string {
  const items = lines.map((each) => {
    const mark = each.verdict === undefined || each.verdict === 'within' ? '' : ` class="${each.verdict}"`;
    return `<li${mark}>${working.line(each, sentenceHtml(each.sentence))}</li>`;
  });
  return `<ul${id === 'criteria' ? ' class="criteria"' : ''}>${items.join('\n')}</ul>`;
}

function ledgerHtml(lines: readonly WorksheetLine[], working: WorkingOnPage): string {
  const items = lines.map((each) => {
    const { sentence, detail, factor, added, total = '' } = each;
    const words = `${textHtml(sentence)}${factor === undefined ? '' : `, \u00d7&#160;${factor}`}`;
    const today = detail === undefined ? '' : `<span class="detail">${sentenceHtml(detail)}</span>`;
    const adds =
      added === undefined ? '' : `<span class="adds"><span class="unseen">adds </span>${textHtml(added)}</span>`;
    const sum = `<span class="total${added === undefined ? ' wide' : ''}"><span class="unseen">total </span>${textHtml(total)}</span>`;
    return `<li>${working.line(each, `<span>${words}</span>${adds}${sum}${today}`, ' class="row"')}</li>`;
  });
  return `<p class="columns" aria-hidden="true"><span>adds</span><span>total</span></p>\n<ol class="ledger">${items.join('\n')}</ol>`;
}

/** Each figure stands where its subject was just spoken of. */
function figuresAfter(id: WorksheetSection['id'], { assessment }: Worksheet): string[] {
  if (id === 'ledger') {
    return figureHtml(
      stairsFigure(assessment),
      'The distance in metres: each correction a step, the distance available a ruled line.',
    );
  }
  if (id !== 'criteria') return [];
  const figures = [
    ...figureHtml(
      gradientsFigure(assessment),
      'The climb-out: the gradient that each obstacle demands from the 50 ft point, and the one achieved over the ground.',
    ),
    ...figureHtml(windRulersFigure(assessment), 'The wind across and along the runway, against each limit.'),
  ];
  return [`<div class="figures">${figures.join('\n')}</div>`];
}

function figureHtml(drawing: string | undefined, caption: string): string[] {
  return drawing === undefined ? [] : [`<figure><figcaption>${textHtml(caption)}</figcaption>${drawing}</figure>`];
}
