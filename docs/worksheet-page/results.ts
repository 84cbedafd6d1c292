import { formatValue } from 'groundroll/units';
import { gradientsFigure, sentenceHtml, stairsFigure, textHtml, windRulersFigure } from 'groundroll/worksheet';
import { type SharedLine, type SharedSection, sharedSections } from './lines.ts';
import { type LedgerSentence, orderOf, type Row, rowsOf, type Tread, undetermined } from './rows.ts';
import type { Assessment, WorkedEnd, WorkedOut } from './work-out.ts';

/** Steps of the working that a place on the page opens to. */
export interface Way {
  readonly assessment: Assessment;
  readonly steps: readonly number[];
}

/** What stands on the page as figures; each place that opens leaves its way under its key. */
export class Results {
  readonly ways = new Map<string, Way>();
  /** The sentences of the ledger as their treads follow one another. */
  readonly order: readonly LedgerSentence[];
  private readonly rows: readonly Record<LedgerSentence, Row>[];

  constructor(private readonly worked: WorkedOut) {
    const assessments = worked.ends.map(({ assessment }) => assessment);
    this.order = orderOf(assessments);
    this.rows = assessments.map((assessment) => rowsOf(assessment, this.order));
  }

  /** The verdict of each end with the tightest criterion, and what must be said before any figure is used. */
  head(): string {
    const verdicts = this.worked.ends.map(
      (end) => `<p class="verdict" data-end-verdict="${end.place}">${sentenceHtml(headlineOf(end))}</p>`,
    );
    const said = sharedSections(this.worked.ends).find(({ id }) => id === 'head')?.lines ?? [];
    const others = said.filter(({ line }) => !this.isHeadline(line.sentence));
    return `${verdicts.join('')}${others.map((each, i) => this.line(`head-${i}`, each)).join('')}`;
  }

  /** The right edge of every sentence of the ledger, and why there is no figure where there is none. */
  edges(): Record<LedgerSentence | 'distances', string> {
    const edges = this.order.map((sentence) => [sentence, this.edge(sentence)]);
    return { ...Object.fromEntries(edges), distances: this.needed() };
  }

  private edge(sentence: LedgerSentence): string {
    const rows = this.rows.map((each) => each[sentence]);
    const sentences = [...new Set(rows.flatMap(({ treads }) => treads.map((tread) => tread.sentence)))];
    const carried = this.worked.ends.map((_, end) => this.before(sentence, end));
    const lines = sentences.map((said, i) => {
      const treads = rows.map((row) => row.treads.find((tread) => tread.sentence === said));
      const cells = this.worked.ends.map((end, at) => {
        const tread = treads[at];
        carried[at] = tread?.total ?? this.carriedOn(rows[at], carried[at]);
        return this.cell(end, `${sentence}-${i}`, tread, carried[at] ?? '');
      });
      return this.treadHtml(`${said}${this.details(treads)}`, cells);
    });
    // Below the last figure of a sentence its total may be undetermined after all; without one it is carried on.
    const last = rows.map(({ total }, at) => (sentences.length === 0 || total !== carried[at] ? total : undefined));
    if (last.some((total) => total !== undefined && total !== '')) {
      const cells = this.worked.ends.map((end, at) => this.cell(end, sentence, undefined, last[at] ?? ''));
      lines.push(this.treadHtml('', cells));
    }
    return `${this.refusals(sentence)}${lines.join('')}`;
  }

  /** The total of an end that a line says nothing of. */
  private carriedOn(row: Row | undefined, carried: string | undefined): string {
    const isRefused = row !== undefined && row.treads.length === 0 && row.total === undetermined;
    return isRefused ? undetermined : (carried ?? '');
  }

  /** The running total above a sentence. */
  private before(sentence: LedgerSentence, end: number): string {
    const previous = this.order[this.order.indexOf(sentence) - 1];
    return previous === undefined ? '' : (this.rows[end]?.[previous].total ?? '');
  }

  private details(treads: readonly (Tread | undefined)[]): string {
    const said = treads.map((tread) => {
      const factor = tread?.factor === undefined ? [] : [`\u00d7 ${tread.factor}`];
      return [...factor, ...(tread?.detail === undefined ? [] : [tread.detail])].join(', ');
    });
    const [first = '', second = ''] = said;
    if (first === second) return first === '' ? '' : `: ${first}`;
    const named = this.worked.ends.flatMap(({ name }, i) => (said[i] === '' ? [] : [`${name}: ${said[i]}`]));
    return `; ${named.join('; ')}`;
  }

  private treadHtml(words: string, cells: readonly string[]): string {
    return `<div class="tread"><span class="says">${sentenceHtml(words)}</span>${cells.join('')}</div>`;
  }

  private cell({ name, place, assessment }: WorkedEnd, key: string, tread: Tread | undefined, carried: string): string {
    const head = `<span class="unseen">${textHtml(name)}: </span><span class="of" aria-hidden="true">${textHtml(name)}</span>`;
    if (tread === undefined || assessment === undefined) {
      const nothing =
        carried === undetermined || carried === ''
          ? ''
          : '<span class="adds"><span class="unseen">adds </span>nothing</span>';
      const wide = nothing === '' ? ' wide' : '';
      return `<span class="cost">${head}${nothing}<span class="total${wide}"><span class="unseen">total </span>${textHtml(carried)}</span></span>`;
    }
    const adds =
      tread.added === undefined
        ? ''
        : `<span class="adds"><span class="unseen">adds </span>${textHtml(tread.added)}</span>`;
    const total = `<span class="total"><span class="unseen">total </span>${textHtml(tread.total)}</span>`;
    return this.opener(`${key}-${place}`, { assessment, steps: tread.steps }, `${head}${adds}${total}`);
  }

  private opener(key: string, way: Way, content: string): string {
    if (way.steps.length === 0) return `<span class="cost">${content}</span>`;
    this.ways.set(key, way);
    return `<button type="button" class="cost" data-way="${key}" aria-expanded="false" aria-controls="way-${key}">${content}</button>`;
  }

  private refusals(sentence: LedgerSentence): string {
    const said = this.rows.flatMap((each, end) =>
      each[sentence].refusal.map((text) => ({ text, name: this.worked.ends[end]?.name ?? '' })),
    );
    const texts = [...new Set(said.map(({ text }) => text))];
    return texts
      .map((text) => {
        const names = said.filter((each) => each.text === text).map(({ name }) => name);
        const both = names.length === this.worked.ends.length;
        return `<p class="refusal">${both ? '' : `${textHtml(names.join(', '))}: `}${sentenceHtml(text)}</p>`;
      })
      .join('');
  }

  /** The end of the ledger: what is needed, of what there is. */
  private needed(): string {
    const cells = this.worked.ends.map(({ name, assessment }) => {
      const { stairs } = assessment ?? {};
      const said =
        stairs === undefined
          ? undetermined
          : `${formatValue(stairs.required.value, 'm')} of ${formatValue(stairs.available.value, 'm')}`;
      return `<span class="cost"><span class="unseen">${textHtml(name)} needs </span><span class="of" aria-hidden="true">${textHtml(name)}</span><span class="total wide">${textHtml(said)}</span></span>`;
    });
    return `<div class="tread sum"><span class="says">Needed, of what is available</span>${cells.join('')}</div>`;
  }

  /** What was put in, as the library words it. */
  inputs(): string[] {
    const sections = sharedSections(this.worked.ends);
    return sections.find(({ id }) => id === 'inputs')?.lines.map(({ line }) => line.sentence) ?? [];
  }

  /** Everything below the ledger. */
  sections(): string {
    return sharedSections(this.worked.ends)
      .filter(({ id }) => id !== 'head')
      .map((section) => `${this.section(section)}${this.figuresAfter(section.id)}`)
      .join('');
  }

  private section({ id, title, lines }: SharedSection): string {
    const items = lines.map((each, i) => `<li${verdictClass(each)}>${this.line(`${id}-${i}`, each)}</li>`);
    return `<section aria-labelledby="part-${id}"><h2 id="part-${id}">${textHtml(title)}</h2><ul class="lines">${items.join('')}</ul></section>`;
  }

  private isHeadline(sentence: string): boolean {
    return this.worked.ends.some(({ assessment }) => assessment?.headline[0]?.text === sentence);
  }

  private line(key: string, { ends, line }: SharedLine): string {
    const all = ends.length === this.worked.ends.length;
    const label = all ? '' : `<span class="ends">${textHtml(ends.map(({ name }) => name).join(', '))}</span>`;
    const words = `${label}<span>${sentenceHtml(line.sentence)}</span>`;
    const { assessment } = ends[0] ?? {};
    const isWorked = line.steps.some((i) => assessment?.trace[i]?.kind === 'step');
    if (assessment === undefined || !isWorked) return `<div class="line">${words}</div>`;
    this.ways.set(key, { assessment, steps: line.steps });
    return `<details data-way="${key}"><summary class="line">${words}</summary><div class="way"></div></details>`;
  }

  private figuresAfter(id: string): string {
    if (id !== 'criteria') return '';
    const figures = [
      {
        draw: stairsFigure,
        caption: 'The distance in metres: each correction a step, the distance available a ruled line',
      },
      {
        draw: gradientsFigure,
        caption:
          'The climb-out: the gradient that each obstacle demands from the 50 ft point, and the one achieved over the ground',
      },
      { draw: windRulersFigure, caption: 'The wind across and along the runway, against each limit' },
    ].flatMap(({ draw, caption }) =>
      this.worked.ends.flatMap(({ place, name, assessment }) => {
        const drawing = assessment === undefined ? undefined : draw(assessment);
        return drawing === undefined
          ? []
          : [
              `<figure class="end-${place}"><figcaption>${textHtml(`${name}. ${caption}.`)}</figcaption>${drawing}</figure>`,
            ];
      }),
    );
    return figures.length === 0
      ? ''
      : `<section aria-labelledby="part-figures"><h2 id="part-figures">Figures</h2><div class="figures">${figures.join('')}</div></section>`;
  }
}

function verdictClass({ line }: SharedLine): string {
  return line.verdict === undefined || line.verdict === 'within' ? '' : ` class="${line.verdict}"`;
}

/** The head of the library's own worksheet; what is refused is undetermined. */
export function headlineOf({ name, assessment }: WorkedEnd): string {
  return assessment?.headline[0]?.text ?? `${name}: undetermined; something in the sentences is refused.`;
}
