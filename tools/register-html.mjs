// The register as HTML fragments without a blank line, so that they can stand in Markdown; both the pages of the
// documentation and the printed register are made of them.
import katex from 'katex';
import { bundled } from './bundled.mjs';
import { groupedBy, worstOf } from './register-data.mjs';

const { formatNumber, formatValue } = await bundled('register-format', `export * from './units/index.ts';`);

/** A table with more rows than this is folded away where it can be unfolded. */
const foldedAbove = 40;

/** @type {Readonly<Record<string, string>>} */
export const accessMeaning = {
  read: 'Seen in the document or in a public copy of it.',
  'second-hand': 'Seen only as quoted by others.',
  recalled: 'From memory; not yet seen again.',
  'common-practice': 'Taught throughout the trade, no single source.',
  derived: 'Our own algebra.',
  policy: 'Our own judgement, which the user may change.',
};

const kindShown = { published: 'published', defined: 'defined', independent: 'from an independent program' };
const originShown = {
  'printed-table': 'printed table',
  'worked-example': 'worked example',
  'official-test-values': 'official test values',
  'independent-program': 'independent program',
  definition: 'definition',
  'common-practice': 'common practice',
};
const toleranceShown = {
  'half-last-digit': 'half of the last printed digit',
  'stated-by-source': 'as stated by the source',
  'round-off': 'the round-off of a double',
  'chart-reading': 'what reading a chart allows',
};

/** Text for HTML inside Markdown: nothing in it is mark-up of either. */
export const text = (value) => String(value).replace(/[&<>"'`[\]{}@*_\\$|~]/g, (sign) => `&#${sign.codePointAt(0)};`);

export const accessShown = (access) => access.replace('common-practice', 'common practice');

/** MathML of a TeX expression; one that does not parse stops the build. */
function math(tex, isEquation = false) {
  const html = katex.renderToString(tex, { output: 'mathml', displayMode: isEquation, throwOnError: true });
  return html.replace(/<annotation.*<\/annotation>/s, '').replaceAll('\n', ' ');
}

function decimalsOf(value) {
  const [mantissa, exponent = '0'] = String(value).split('e');
  return Math.max(0, (mantissa.split('.')[1]?.length ?? 0) - Number(exponent));
}

/** As many decimals as the number has; very small and very large ones as a power of ten. */
function number(value, decimals = decimalsOf(value)) {
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-4 || size >= 1e9)) {
    const [mantissa, exponent] = value.toExponential().split('e');
    const digits = Number(mantissa).toPrecision(Math.min(mantissa.replace(/\D/g, '').length, 6));
    return `${formatNumber(Number(digits), { decimals: decimalsOf(Number(digits)) })} × 10<sup>${formatNumber(Number(exponent))}</sup>`;
  }
  return formatNumber(value, { decimals });
}

/** Two digits of a small figure. */
const twoDigits = (value) => (value === 0 ? '0' : number(Number(value.toPrecision(2))));

/** The word of a unit as a reader sees it; empty where a number stands alone. */
function unitShown(unit) {
  if (unit === undefined) return '';
  if (unit === 'text') return 'text';
  if (unit === 'data') return 'as the data';
  if (unit === 'ratio') return '';
  if (unit.startsWith('degEast')) return `° east${unit.endsWith('PerYear') ? ' per year' : ''}`;
  return formatValue(1, unit).replace(/^1\s?/u, '').trim();
}

const isMeasure = (value) => typeof value === 'object' && value !== null && 'value' in value && 'unit' in value;

function measure(value, unit, decimals = decimalsOf(value)) {
  if (unit === 'year') return value.toFixed(decimals);
  if (unit.startsWith('degEast')) return formatValue(value, unit, { decimals });
  const shown = unitShown(unit);
  return `${number(value, decimals)}${shown === '' || shown.startsWith('°') ? '' : ' '}${text(shown)}`;
}

function argument(value) {
  if (value === undefined) return 'not given';
  if (isMeasure(value)) return measure(value.value, value.unit);
  if (typeof value === 'number') return number(value);
  return typeof value === 'string' ? text(value) : `<code>${text(JSON.stringify(value))}</code>`;
}

/** A table in a box of its own that scrolls where the page is narrow. */
export function table(label, heads, bodies) {
  const head = heads.map((cell) => `<th scope="col">${cell}</th>`).join('');
  const body = bodies.map((rows) => `<tbody>${rows.map((row) => `<tr>${row}</tr>`).join('\n')}</tbody>`).join('\n');
  return `<div class="table" tabindex="0" role="group" aria-label="${text(label)}"><table>\n<thead><tr>${head}</tr></thead>\n${body}\n</table></div>`;
}

/** Sentences get room to breathe; figures and single words do not need it. */
const roomFor = (cell) => (/[a-z] +[a-z]/i.test(String(cell).replace(/<[^>]*>/g, '')) ? ' class="words"' : '');
const cells = (list) => list.map((cell) => `<td${roomFor(cell)}>${cell}</td>`).join('');
export const rowOf = ([first, ...rest]) => `<th scope="row"${roomFor(first)}>${first}</th>${cells(rest)}`;
const figureCells = (list) => list.map((cell) => `<td class="figure">${cell}</td>`).join('');

export const equation = (formula) =>
  `<div class="equation" tabindex="0" role="group" aria-label="Equation of ${text(formula.title)}">${math(formula.equation, true)}</div>`;

// The name heads the row: a screen reader may find no text in mathematics.
const symbolRow = (symbol, name, rest) =>
  `<td>${math(symbol)}</td><th scope="row"><code>${name}</code></th>${cells(rest)}`;

// The unit stands in the row already, except for what is never shown with a sign.
const bound = (value, unit) => (unit === 'year' || unit.startsWith('degEast') ? measure(value, unit) : number(value));

export function symbolsTable(formula, units) {
  const unitCell = (unit) => {
    if (unit === undefined) return 'no quantity';
    const shown = unitShown(unit);
    const kind = units[unit]?.kind ?? '';
    const words = [shown, shown.includes(kind) ? '' : kind].filter((word) => word !== '').join(', ');
    return shown === unit ? text(words) : `${text(words)} <code>${text(unit)}</code>`;
  };
  const inputs = Object.entries(formula.inputs).map(([name, input]) => {
    const { symbol, meaning, unit, min, max, bounds } = input;
    const range = min === undefined ? ['', '', ''] : [bound(min, unit), bound(max, unit), text(bounds)];
    return symbolRow(symbol, name, [text(meaning), unitCell(unit), ...range]);
  });
  const outputs = Object.entries(formula.outputs).map(([name, { symbol, meaning, unit }]) =>
    symbolRow(symbol, name, [text(meaning), unitCell(unit), 'result', '', '']),
  );
  const heads = ['Symbol', 'In code', 'Meaning', 'Unit, kind of quantity', 'Least', 'Greatest', 'Range from'];
  return table(`Symbols of ${formula.title}`, heads, [inputs, outputs]);
}

export function citationsTable(formula, sources, sourceLink) {
  const rows = formula.citations.map(({ source, locator, access }) => {
    const { publisher, edition } = sources[source];
    return rowOf([sourceLink(source), text(locator), text(publisher), text(edition), text(accessShown(access))]);
  });
  return table(`Sources of ${formula.title}`, ['Source', 'Where in it', 'Publisher', 'Edition', 'Access'], [rows]);
}

/** How many figures, of which kinds, and how far we are from them at most. */
export function figuresSentence(formula) {
  if (formula.nonePublished !== undefined)
    return `None were found: ${text(formula.nonePublished)}.`.replace(/\.\.$/, '.');
  const figures = formula.checkValues.flatMap((value) => value.figures.map((row) => ({ ...row, kind: value.kind })));
  const kinds = [...groupedBy(figures, ({ kind }) => kind)].map(
    ([kind, list]) => `${count(list.length)} ${kindShown[kind]}`,
  );
  const { checkValue, share } = worstOf(figures);
  const counted = `${figuresCounted(figures.length)}: ${kinds.join(', ')}.`;
  return `${counted} The largest residual is ${shareShown(share)} of its tolerance, at <code>${text(checkValue)}</code>.`;
}

const figuresCounted = (figures) => `${count(figures)} figure${figures === 1 ? '' : 's'}`;

/** A whole number. */
export const count = (value) => formatNumber(value);

export const shareShown = (share) => `${formatNumber(share * 100, { decimals: 1 })} %`;

/** All check values of a formula, one table for each source, origin and set of inputs. */
export function checkValueTables(formula, sources, sourceLink, { folded }) {
  const groups = groupedBy(formula.checkValues, ({ citation, origin, toleranceFrom, inputs }) =>
    JSON.stringify([citation.source, citation.access, origin, toleranceFrom, Object.keys(inputs)]),
  );
  return [...groups.values()].map((values) => checkValueTable(formula, values, sources, sourceLink, folded)).join('\n');
}

function checkValueTable(formula, values, sources, sourceLink, folded) {
  const [{ citation, origin, kind, toleranceFrom, inputs }] = values;
  const names = Object.keys(inputs);
  const unitOf = new Map(names.map((name) => [name, commonUnit(values.map((value) => value.inputs[name]))]));
  const hasOneOutput = Object.keys(formula.outputs).length === 1;
  const inputHeads = names.map((name) => {
    const unit = unitShown(unitOf.get(name));
    return `<code>${name}</code>${unit === '' ? '' : `, ${text(unit)}`}`;
  });
  const results = ['Published', 'Ours', 'Residual', 'Tolerance', 'Share of it'];
  // What all rows share stands above them once.
  const isOnePlace = values.length > 1 && new Set(values.map(placeOf)).size === 1;
  const heads = [
    ...(isOnePlace ? [] : ['Where in the source']),
    ...inputHeads,
    ...(hasOneOutput ? [] : ['Result']),
    ...results,
  ];
  const bodies = values.map((value) =>
    value.figures.map((row, i) => {
      const shared = i > 0 ? '' : leadingCells(value, names, unitOf, !isOnePlace);
      return `${shared}${hasOneOutput ? '' : `<td><code>${row.output}</code></td>`}${figureCells(comparison(row))}`;
    }),
  );
  const rows = values.reduce((sum, { figures }) => sum + figures.length, 0);
  const { title } = sources[citation.source];
  const access = text(accessShown(citation.access));
  const facts = `Origin: ${originShown[origin]}${kind === 'independent' ? '' : ` (${kindShown[kind]})`}. Access: ${access}. Tolerance: ${toleranceShown[toleranceFrom]}`;
  const where = isOnePlace ? `, ${placeOf(values[0]).replace('<br>', '; ')}` : '';
  const origins = `${sourceLink(citation.source)}${where}. ${facts}.`;
  const label = figuresCounted(rows);
  const shown = table(`Check values of ${formula.title} from ${title}, ${originShown[origin]}`, heads, bodies);
  if (folded && rows > foldedAbove) {
    return `<p class="origin">${origins}</p>\n<details><summary>${label}</summary>\n${shown}\n</details>`;
  }
  return `<p class="origin">${origins} ${label}.</p>\n${shown}`;
}

/** Where in its source a check value stands, with what is to be known about it. */
const placeOf = ({ citation, note }) =>
  `${text(citation.locator)}${note === undefined ? '' : `<br><small>${text(note)}</small>`}`;

/** Place and inputs, which all figures of a check value share. */
function leadingCells(value, names, unitOf, hasPlace) {
  const rows = value.figures.length;
  const span = rows === 1 ? '' : ` rowspan="${rows}"`;
  const scope = rows === 1 ? 'row' : 'rowgroup';
  const place = hasPlace ? `<th scope="${scope}" class="words"${span}>${placeOf(value)}</th>` : '';
  const inputs = names.map((name) => {
    const input = value.inputs[name];
    const cell = unitOf.get(name) === undefined || input.unit === 'year' ? argument(input) : number(input.value);
    return `<td class="figure"${span}>${cell}</td>`;
  });
  return place + inputs.join('');
}

/** The unit that all have, unless it is one that is shown with each figure. */
function commonUnit(inputs) {
  const units = new Set(inputs.map((input) => (isMeasure(input) ? input.unit : undefined)));
  const [unit] = units;
  return units.size === 1 && unit !== undefined && !unit.startsWith('degEast') ? unit : undefined;
}

function comparison({ published, ours, unit, residual, tolerance, share }) {
  if (unit === 'text') return [text(published), text(ours), share === 0 ? 'same' : 'differs', 'same text', ''];
  const whole = Math.max(1, Math.ceil(Math.log10(Math.abs(ours) + 1)));
  const wanted = Math.max(decimalsOf(published), Math.ceil(-Math.log10(tolerance))) + 2;
  const decimals = Math.max(0, Math.min(wanted, 15 - whole));
  const oursShown = Number(ours.toFixed(decimals)) === 0 ? ours : Number(ours.toFixed(decimals));
  const isSmall = Math.abs(oursShown) < 1e-4;
  const needsUnit = unit === 'year' || unit.startsWith('degEast');
  const precise = isSmall ? number(oursShown) : number(oursShown, decimals);
  return [
    measure(published, unit),
    needsUnit ? measure(oursShown, unit, decimals) : precise,
    twoDigits(residual),
    number(tolerance),
    shareShown(share),
  ];
}
