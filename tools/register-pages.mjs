// Writes the pages of the formula register into .cache/docs/register, where TypeDoc finds them: a page for each formula,
// the indexes by topic, source and access status, the printed register, and all of it as JSON. Nothing in them is
// written by hand: they say what the records and the check values say.
import fs from 'node:fs';
import path from 'node:path';
import { foldersOf, groupedBy, registerData, summary, worstOf } from './register-data.mjs';
import {
  accessMeaning,
  accessShown,
  checkValueTables,
  citationsTable,
  count,
  equation,
  figuresSentence,
  rowOf,
  shareShown,
  symbolsTable,
  table,
  text,
} from './register-html.mjs';

export const folder = '.cache/docs/register';

const sum = ({ published, defined, independent }) => published + defined + independent;
const topicTitle = (topic) => `${topic[0].toUpperCase()}${topic.slice(1)}`.replaceAll('-', ' ');
const shareOfWorst = (formula) => {
  const worst = worstOf(formula.checkValues.flatMap(({ figures }) => figures));
  return worst === undefined ? 'no figures' : shareShown(worst.share);
};
const figureCount = (checkValues) => checkValues.reduce((count, { figures }) => count + figures.length, 0);
const accesses = ({ citations }) => [...new Set(citations.map(({ access }) => accessShown(access)))].join(', ');

/** A page for TypeDoc: front matter, a heading, what follows. */
function write(file, front, title, parts) {
  const lines = Object.entries({ title, ...front }).map(([key, value]) => `${key}: ${JSON.stringify(value)}`);
  const target = path.join(folder, file);
  fs.mkdirSync(path.dirname(target), { recursive: true });
  fs.writeFileSync(target, `---\n${lines.join('\n')}\n---\n\n# ${text(title)}\n\n${parts.join('\n\n')}\n`);
}

/** Links as they stand in a file so many folders below the register's. */
function linksFrom(up, sources) {
  return {
    formula: ({ id, title }) => `<a href="${up}formulas/${id}.md">${text(title)}</a>`,
    source: (key) => `<a href="${up}sources/${key}.md">${text(sources[key].title)}</a>`,
    access: (access) => `<a href="${up}access.md#${access}">${accessShown(access)}</a>`,
    topic: (topic) => `<a href="${up}${topic}.md">${topicTitle(topic)}</a>`,
    code: ({ entry, name }) => `{@link ${entry}.${name} | ${name}}`,
  };
}

const fileList = (files) => files.map((file) => `<code>${text(file)}</code>`).join(', ');

function factsOf(formula, codeLink) {
  const { code, record, checkValues, tests } = formula.files;
  const facts = [
    ['Function', `${codeLink(formula.function)} of <code>groundroll/${formula.function.entry}</code>`],
    ['Record', `<code>${text(formula.id)}</code>`],
    ['Code', fileList([code])],
    ['Record in', fileList([record])],
    ['Check values in', checkValues.length === 0 ? 'none' : fileList(checkValues)],
    ['Tests', `<code>test/${formula.folder}</code>${tests.length === 0 ? '' : `: ${fileList(tests)}`}`],
    ['Units', formula.homogeneous ? 'holds in any consistent units' : 'holds in the units stated only'],
  ];
  return `<dl class="facts">${facts.map(([term, fact]) => `<dt>${term}</dt><dd>${fact}</dd>`).join('\n')}</dl>`;
}

function formulaPage(formula, { sources, units }) {
  const link = linksFrom('../', sources);
  const { id, title, inputs, outputs, citations } = formula;
  const words = [...Object.entries(inputs), ...Object.entries(outputs)].map(
    ([name, { meaning }]) => `${name} ${meaning}`,
  );
  const cited = [
    ...new Set([...citations, ...formula.checkValues.map(({ citation }) => citation)].map((c) => c.source)),
  ];
  const search = [title, id, formula.function.name, ...words, ...cited.map((key) => sources[key].title)].join('\n');
  write(`formulas/${id}.md`, { record: id, search }, title, [
    equation(formula),
    factsOf(formula, link.code),
    '## Symbols',
    symbolsTable(formula, units),
    '## Sources',
    citationsTable(formula, sources, link.source),
    '## Check values',
    `<p>${figuresSentence(formula)}</p>`,
    ...(formula.checkValues.length === 0 ? [] : [checkValueTables(formula, sources, link.source, { folded: true })]),
  ]);
}

function topicPage(topic, formulas, sources) {
  const link = linksFrom('', sources);
  const rows = formulas.map((formula) =>
    rowOf([
      link.formula(formula),
      link.code(formula.function),
      accesses(formula),
      count(figureCount(formula.checkValues)),
      shareOfWorst(formula),
    ]),
  );
  const heads = ['Formula', 'Function', 'Access to its sources', 'Figures compared', 'Largest residual, of tolerance'];
  const children = formulas.map(({ id }) => `formulas/${id}.md`);
  write(`${topic}.md`, { group: 'Formula register', children }, topicTitle(topic), [
    `Formulas of {@link ${topic} | groundroll/${topic}}.`,
    table(`Formulas of ${topicTitle(topic)}`, heads, [rows]),
  ]);
}

function sourcePages({ formulas, sources }) {
  const usesOf = (key) =>
    formulas.flatMap((formula) => {
      const citations = formula.citations.filter(({ source }) => source === key);
      const values = formula.checkValues.filter(({ citation }) => citation.source === key);
      return citations.length + values.length === 0 ? [] : [{ formula, citations, values }];
    });
  const used = Object.entries(sources)
    .map(([key, source]) => ({ key, source, uses: usesOf(key) }))
    .sort((a, b) => a.source.title.localeCompare(b.source.title, 'en'));
  const statusesOf = (uses) => {
    const cited = uses.flatMap(({ citations, values }) => [...citations, ...values.map(({ citation }) => citation)]);
    return Object.keys(accessMeaning).filter((status) => cited.some(({ access }) => access === status));
  };

  for (const { key, source, uses } of used) {
    const link = linksFrom('../', sources);
    const rows = uses.map(({ formula, citations, values }) => {
      const where = citations.map(({ locator, access }) => `${text(locator)} (${accessShown(access)})`).join('; ');
      return rowOf([link.formula(formula), where === '' ? 'check values only' : where, count(figureCount(values))]);
    });
    const heads = ['Formula', 'Where in the source (access)', 'Figures compared'];
    const facts = [`Publisher: ${text(source.publisher)}.`, `Edition: ${text(source.edition)}.`, `Key: \`${key}\`.`];
    const statuses = statusesOf(uses).map(link.access).join(', ');
    const body =
      rows.length === 0
        ? ['No formula cites it; factors or other data of the library do.']
        : [`<p>Access: ${statuses}.</p>`, table(`Formulas that cite ${source.title}`, heads, [rows])];
    write(`sources/${key}.md`, { search: `${source.title}\n${source.publisher}\n${key}` }, source.title, [
      facts.join(' '),
      ...body,
    ]);
  }

  const link = linksFrom('', sources);
  const rows = used.map(({ key, source, uses }) => {
    const statuses = statusesOf(uses).map(accessShown).join(', ');
    const figures = count(figureCount(uses.flatMap(({ values }) => values)));
    return rowOf([link.source(key), text(source.publisher), statuses, uses.length, figures]);
  });
  const heads = ['Source', 'Publisher', 'Access', 'Formulas', 'Figures compared'];
  const children = used.map(({ key }) => `sources/${key}.md`);
  write('sources.md', { group: 'Formula register', children }, 'By source', [
    'Every source that the library cites, and the formulas that rest on it.',
    table('Sources', heads, [rows]),
  ]);
}

function accessPage({ formulas, sources }) {
  const link = linksFrom('', sources);
  const sections = Object.entries(accessMeaning).flatMap(([access, meaning]) => {
    const rows = formulas.flatMap((formula) => {
      const citations = formula.citations.filter((citation) => citation.access === access);
      if (citations.length === 0) return [];
      const cited = citations.map(({ source, locator }) => `${link.source(source)}, ${text(locator)}`).join('; ');
      return [rowOf([link.formula(formula), cited])];
    });
    const values = formulas
      .flatMap(({ checkValues }) => checkValues)
      .filter(({ citation }) => citation.access === access);
    const counts = `Formulas with such a citation: ${rows.length}. Check values so known: ${count(values.length)}.`;
    const list =
      rows.length === 0 ? [] : [table(`Formulas known as ${accessShown(access)}`, ['Formula', 'Citation'], [rows])];
    return [`## ${access}`, `${meaning} ${counts}`, ...list];
  });
  write('access.md', { group: 'Formula register' }, 'By access status', [
    'How each statement of a source is known to us. A formula stands under every status that one of its citations has.',
    ...sections,
  ]);
}

function countsTable(formulas, topicLink) {
  const row = (name, part) => {
    const counts = summary(part);
    const worst = counts.largestResidual === null ? 'no figures' : shareShown(counts.largestResidual.share);
    const { published, defined, independent } = counts.figures;
    const { formulas: all, formulasWithCheckValues, sources, checkValues } = counts;
    const numbers = [all, formulasWithCheckValues, sources, sum(checkValues), published, defined, independent];
    return rowOf([name, ...numbers.map(count), worst]);
  };
  const topics = foldersOf(formulas).map((topic) =>
    row(
      topicLink(topic),
      formulas.filter((f) => f.folder === topic),
    ),
  );
  const heads = [
    'Topic',
    'Formulas',
    'With check values',
    'Sources',
    'Check values',
    'Published figures',
    'Defined figures',
    'Independent figures',
    'Largest residual, of tolerance',
  ];
  return table('The register in numbers', heads, [topics, [row('All', formulas)]]);
}

const kindsExplained =
  'A check value is one case; its single figures, each compared with ours, are of three kinds. Published: printed tables, worked examples, official test values. Defined: definitions and common practice. Independent: results of other programs, which nobody published as a check.';

function overviewPage({ formulas, sources }) {
  const link = linksFrom('', sources);
  write('index.md', { group: 'Formula register' }, 'Overview', [
    'Every formula of the library with its equation, symbols, range, sources and check values. These pages are made from the records and check values themselves when the documentation is built; every figure of ours on them was computed then.',
    countsTable(formulas, link.topic),
    kindsExplained,
    '- [By source](sources.md): which formulas rest on which document\n- [By access status](access.md): what was read, what is quoted by others, what is our own\n- [The whole register on one page](printed-register.html), for print\n- [The whole register as JSON](register.json); `npm run register -- --formulas --json` writes the same',
    'How another implementation tests itself with these figures: [check values](../../../docs/guides/check-values.md).',
  ]);
}

function printedRegister({ formulas, sources, units, version }) {
  const sourceLink = (key) => `<a href="#source-${key}">${text(sources[key].title)}</a>`;
  const codeName = ({ name }) => `<code>${name}</code>`;
  const topics = foldersOf(formulas);
  const contents = topics.map((topic) => {
    const items = formulas
      .filter((f) => f.folder === topic)
      .map(({ id, title }) => `<li><a href="#${id}">${text(title)}</a></li>`);
    return `<h3><a href="#${topic}">${topicTitle(topic)}</a></h3>\n<ul>${items.join('\n')}</ul>`;
  });
  const sections = topics.map((topic) => {
    const articles = formulas
      .filter((f) => f.folder === topic)
      .map((formula) =>
        [
          `<section><h3 id="${formula.id}">${text(formula.title)}</h3>`,
          equation(formula),
          factsOf(formula, codeName),
          '<h4>Symbols</h4>',
          symbolsTable(formula, units),
          '<h4>Sources</h4>',
          citationsTable(formula, sources, sourceLink),
          '<h4>Check values</h4>',
          `<p>${figuresSentence(formula)}</p>`,
          checkValueTables(formula, sources, sourceLink, { folded: false }),
          '</section>',
        ].join('\n'),
      );
    return `<h2 id="${topic}">${topicTitle(topic)}</h2>\n${articles.join('\n')}`;
  });
  const cited = Object.entries(sources).map(
    ([key, { title, publisher, edition }]) =>
      `<li id="source-${key}">${text(title)}. ${text(publisher)}. Edition: ${text(edition)}.</li>`,
  );
  const html = `<!DOCTYPE html>
<html lang="en">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Formula register of groundroll ${text(version)}</title>
<style>
${fs.readFileSync('docs/site.css', 'utf8')}</style></head>
<body class="printed"><main>
<h1>Formula register of groundroll ${text(version)}</h1>
<p><a href="../register/index.html">Back to the documentation</a></p>
${countsTable(formulas, (topic) => topicTitle(topic))}
<p>${kindsExplained}</p>
<nav aria-label="Contents"><h2>Contents</h2>
${contents.join('\n')}
<h3><a href="#sources">Sources</a></h3></nav>
${sections.join('\n')}
<h2 id="sources">Sources</h2>
<ul>${cited.join('\n')}</ul>
</main></body></html>
`;
  fs.writeFileSync(path.join(folder, 'printed-register.html'), html);
}

/** Writes all pages of the register. */
export async function writeRegisterPages() {
  const data = await registerData();
  fs.rmSync(folder, { recursive: true, force: true });
  fs.mkdirSync(folder, { recursive: true });
  fs.writeFileSync(path.join(folder, 'register.json'), `${JSON.stringify(data)}\n`);
  printedRegister(data);
  overviewPage(data);
  for (const formula of data.formulas) formulaPage(formula, data);
  for (const [topic, formulas] of groupedBy(data.formulas, (formula) => formula.folder))
    topicPage(topic, formulas, data.sources);
  sourcePages(data);
  accessPage(data);
}
