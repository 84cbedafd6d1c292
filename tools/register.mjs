// What the register holds, folder by folder: formulas, sources, check values, and how far our figures are from the
// published ones at most. With --formulas every formula with all its figures, or those of the ids and folders that
// follow; with --json the same as JSON. Ends with code 1 if a figure is outside its tolerance.
import { agreement, foldersOf, registerData, summary } from './register-data.mjs';
import { formulaText } from './register-text.mjs';

const data = await registerData();
const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const isAsked = ({ id, folder }) => asked.length === 0 || asked.includes(id) || asked.includes(folder);
const unknown = asked.filter((word) => !data.formulas.some(({ id, folder }) => word === id || word === folder));
if (unknown.length > 0) {
  console.error(`no formula and no folder of formulas: ${unknown.join(', ')}`);
  process.exit(2);
}
const formulas = data.formulas.filter(isAsked);
const folders = foldersOf(formulas).map((folder) => ({
  folder,
  ...summary(formulas.filter((formula) => formula.folder === folder)),
}));
const report = { folders, total: summary(formulas) };
const rows = formulas.flatMap(({ checkValues }) => checkValues.flatMap(({ figures }) => figures));
const outside = rows.filter(({ share }) => !(share <= agreement));
const isWhole = process.argv.includes('--formulas');

if (process.argv.includes('--json'))
  console.log(isWhole ? JSON.stringify({ ...data, formulas }) : JSON.stringify(report, null, 2));
else {
  if (isWhole) for (const formula of formulas) console.log(formulaText(formula, data));
  const percent = (row) => (row === null ? '' : `${(row.share * 100).toFixed(1)} %`);
  const cells = ({
    folder,
    formulas,
    formulasWithCheckValues,
    sources,
    checkValues: values,
    figures,
    largestResidual,
  }) =>
    [
      folder,
      formulas,
      formulasWithCheckValues,
      sources,
      values.published + values.defined + values.independent,
      figures.published,
      figures.defined,
      figures.independent,
      percent(largestResidual),
      largestResidual === null ? '' : `${largestResidual.record}, ${largestResidual.checkValue}`,
    ].map(String);
  const heads = ['', 'formulas', 'with check values', 'sources', 'check values', 'published', 'defined', 'independent'];
  const table = [
    [...heads, 'largest residual', 'of tolerance at'],
    ...folders.map(cells),
    cells({ folder: 'total', ...report.total }),
  ];
  const widths = table[0].map((_, column) => Math.max(...table.map((line) => line[column].length)));
  const pad = (cell, column) =>
    column === 0 || column === widths.length - 1 ? cell.padEnd(widths[column]) : cell.padStart(widths[column]);
  for (const line of table) console.log(line.map(pad).join('  ').trimEnd());
  console.log('\nA check value is one case; its single figures, each compared with ours, are counted in three kinds.');
  console.log('published: printed tables, worked examples, official test values; defined: definitions and common');
  console.log('practice; independent: results of other programs, which nobody published as a check.');
}
for (const { record, checkValue, output, share } of outside) {
  console.error(`${record}, ${checkValue}, ${output}: ${share.toFixed(3)} of the tolerance`);
}
if (outside.length > 0) process.exitCode = 1;
