import { verdictInWords } from '../assessment/index.ts';
import type { RunwayDistanceCell, RunwayDistanceRow, RunwayDistanceTable } from '../study/index.ts';
import { asGiven } from '../units/as-given.ts';
import { formatNumber } from '../units/index.ts';
import { sentenceHtml, textHtml } from './markup.ts';
import { page } from './page.ts';
import type { Paper } from './page-style.ts';

/** How a runway distance table is printed as a page. */
export interface RunwayDistanceTableHtmlOptions {
  /** A6, folded once, if not given; a table of more than seven columns reads better on A4. */
  readonly paper?: Paper;
}

/**
 * A runway distance table as one self-contained, printable HTML page: what it is valid for first, then the grid with a
 * ruled step line between what is within limits and the rest, and under the fold the warmest temperature for each row.
 * Cells that are not within are hatched and worded, so that the page survives black-and-white printing.
 *
 * @param table - what `runwayDistanceTable` returned.
 * @param options - the paper.
 * @returns an HTML document.
 */
export function runwayDistanceTableHtml(
  table: RunwayDistanceTable,
  options: RunwayDistanceTableHtmlOptions = {},
): string {
  const { paper = 'A6' } = options;
  const { title, validOnlyIf, reading, rows, notes, notAssessed, limitsOfUse, version } = table;
  const body = [
    '<main>',
    '<div class="above">',
    `<header><h1>${sentenceHtml(title.text)}</h1>`,
    `<p class="valid">${sentenceHtml(validOnlyIf.text)}</p></header>`,
    gridHtml(table),
    `<p class="reading">Large the distance required in metres, small what is left of it. ${sentenceHtml(reading.text)}</p>`,
    '</div>',
    listHtml(
      'warmest',
      'Warmest',
      rows.map(({ warmest }) => warmest.sentence.text),
    ),
    listHtml('beside', 'Not within limits for another reason than the distance', reasonsBeside(table)),
    listHtml(
      'notes',
      'Notes',
      notes.map(({ text }) => text),
    ),
    listHtml('not-assessed', 'Not assessed', notAssessed.length === 0 ? [] : [`${notAssessed.join('; ')}.`]),
    listHtml('limits-of-use', 'Limits of use', limitsOfUse),
    '</main>',
    `<footer><p>groundroll ${textHtml(version)}.</p></footer>`,
  ];
  return page({
    title: title.text,
    paper,
    body: body.filter((part) => part !== '').join('\n'),
    style: `${style}${paper === 'A6' ? folded : ''}`,
  });
}

function gridHtml({ rowsAlong, temperatures, rows }: RunwayDistanceTable): string {
  const columns = temperatures.map((each) => `<th scope="col">${textHtml(asGiven(each))}</th>`);
  const caption = `Distance required over ${rowsAlong === 'mass' ? 'mass' : 'wind along the runway'} and temperature`;
  const head = `<tr><th scope="col">${rowsAlong === 'mass' ? 'mass' : 'wind'}</th>${columns.join('')}<th scope="col">speeds, KIAS</th></tr>`;
  const body = rows.map((row, i) => rowHtml(row, rows[i + 1]));
  return `<div class="grid" tabindex="0" role="group" aria-label="The table"><table class="distances"><caption class="unseen">${caption}</caption><thead>${head}</thead><tbody>${body.join('\n')}</tbody></table></div>`;
}

function rowHtml({ words, loading, cells, speeds }: RunwayDistanceRow, below: RunwayDistanceRow | undefined): string {
  const said = loading === undefined ? '' : `<span class="detail">${textHtml(loading)}</span>`;
  const flown = speeds.map(
    ({ name, speed }) => `<span class="speed">${textHtml(name)} ${formatNumber(speed.value)}</span>`,
  );
  const content = cells.map((cell, i) => cellHtml(cell, cells[i + 1], below?.cells[i]));
  return `<tr><th scope="row">${textHtml(words)}${said}</th>${content.join('')}<td class="speeds">${flown.join(' ')}</td></tr>`;
}

const isWithin = ({ verdict }: RunwayDistanceCell) => verdict === 'within';

/** A step of the line lies wherever two neighbours differ in being within limits. */
function cellHtml(
  cell: RunwayDistanceCell,
  right: RunwayDistanceCell | undefined,
  below: RunwayDistanceCell | undefined,
): string {
  const marks = [
    ...(isWithin(cell) ? [] : ['hatched']),
    ...(right !== undefined && isWithin(right) !== isWithin(cell) ? ['step-right'] : []),
    ...(below !== undefined && isWithin(below) !== isWithin(cell) ? ['step-below'] : []),
  ];
  const { required, spare, verdict } = cell;
  const large = required === undefined ? '' : `<b>${textHtml(formatNumber(required.value))}</b>`;
  const metres = spare === undefined ? '' : formatNumber(Math.abs(spare.value));
  const small =
    spare !== undefined && spare.value < 0
      ? `${metres}\u00a0short`
      : isWithin(cell)
        ? `${metres}\u00a0spare`
        : verdictInWords(verdict);
  return `<td${marks.length === 0 ? '' : ` class="${marks.join(' ')}"`}><span class="figures">${large}<small>${textHtml(small)}</small></span></td>`;
}

/** Why a cell is not within although its metres would do, or although it has none; one line for each row. */
function reasonsBeside({ rows }: RunwayDistanceTable): string[] {
  return rows.flatMap(({ words, cells }) => {
    const others = cells.filter((cell) => !isWithin(cell) && !(cell.spare !== undefined && cell.spare.value < 0));
    const reasons = others.map(({ verdict, temperature, sentence }) => {
      const what = verdict === 'outside' ? sentence.parameters['what'] : sentence.text.replace(/\.$/, '');
      return `at ${asGiven(temperature)} ${what}`;
    });
    return reasons.length === 0 ? [] : [`${words}: ${reasons.join('; ')}.`];
  });
}

function listHtml(id: string, title: string, lines: readonly string[]): string {
  if (lines.length === 0) return '';
  const items = lines.map((each) => `<li>${sentenceHtml(each)}</li>`);
  return `<section aria-labelledby="${id}"><h2 id="${id}">${textHtml(title)}</h2><ul>${items.join('')}</ul></section>`;
}

const style = `
h1{font-size:1.25rem;margin-bottom:.5rem}
.valid,.reading{font-size:.92rem}
.grid{overflow-x:auto;margin:1rem 0 .5rem}
.distances{border-collapse:collapse;width:auto;min-width:100%}
.distances th,.distances td{border:1px solid var(--rule);padding:.25rem .35rem;text-align:center;vertical-align:middle;overflow-wrap:normal}
.distances th[scope=row],.distances .speeds{text-align:left}
.distances thead th,.speeds{font-size:.85em}
.figures{display:inline-block;padding:0 .2rem}
.figures b{display:block;font-size:1.2em;line-height:1.15}
.figures small{display:block;font-size:.78em;line-height:1.2}
.speed{display:block;white-space:nowrap}
.hatched{background:repeating-linear-gradient(135deg,var(--ink) 0 .7px,transparent .7px 5px);-webkit-print-color-adjust:exact;print-color-adjust:exact}
.hatched .figures{background:var(--paper)}
.distances .step-right{border-right:3px solid var(--ink)}
.distances .step-below{border-bottom:3px solid var(--ink)}
.distances .detail{font-weight:400}
@media screen{.distances th[scope=row]{min-width:6.5rem}}
li{padding:.15rem 0}
@media print{
 .distances{width:100%}
 .distances th,.distances td{padding:.12rem .1rem}
 .distances th[scope=row]{padding-left:.2rem}
 .distances .step-right{border-right-width:2pt}
 .distances .step-below{border-bottom-width:2pt}
 .grid{overflow:visible;margin:.5rem 0 .3rem}
 li{padding:.05rem 0}
}
`;

/** On A6 the grid fills the upper half of the sheet, and a dotted line says where to fold it. */
const folded = `
@page{margin:5mm 7mm}
@media print{
 html{font-size:6.3pt}
 body{line-height:1.22}
 .above{min-height:69mm;border-bottom:.3mm dotted var(--ink)}
 h1{font-size:1.4rem;margin-bottom:.3rem}
 h2{margin:.6rem 0 .1rem;padding-bottom:.1rem}
 p{margin:.2rem 0}
 .figures b{font-size:1.45em}
 .distances th[scope=row]{min-width:15mm}
 footer{margin-top:.4rem}
}
`;
