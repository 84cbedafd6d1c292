// What the register holds, folder by folder: formulas, sources, check values, and how far our figures are from the
// published ones at most. With --json the same as JSON. Ends with code 1 if a figure is outside its tolerance.
import { bundled } from './bundled.mjs';

const { checkValues, compareCheckValues, formulaRecords } = await bundled(
  'register',
  `export * from './register/index.ts';`,
);

/** @type {Readonly<Record<string, 'published' | 'defined' | 'independent'>>} */
const kindOfOrigin = {
  'printed-table': 'published',
  'worked-example': 'published',
  'official-test-values': 'published',
  definition: 'defined',
  'common-practice': 'defined',
  'independent-program': 'independent',
};
/** A tie of the printed rounding must not count as outside on the last bit of a double. */
const agreement = 1 + 1e-9;

const folderOf = (id) => id.slice(0, id.indexOf('.'));
const rows = compareCheckValues(formulaRecords, checkValues);
const originOf = new Map(checkValues.map((value) => [`${value.record} ${value.id}`, kindOfOrigin[value.origin]]));

function summary(isIn) {
  const records = formulaRecords.filter(({ id }) => isIn(id));
  const values = checkValues.filter(({ record }) => isIn(record));
  const figures = rows.filter(({ record }) => isIn(record));
  const counted = (list, kindOf) => {
    const counts = { published: 0, defined: 0, independent: 0 };
    for (const each of list) counts[kindOf(each)] += 1;
    return counts;
  };
  const cited = [...records.flatMap(({ citations }) => citations), ...values.map(({ citation }) => citation)];
  const largest = figures.reduce(
    (worst, row) => (worst === undefined || row.share > worst.share ? row : worst),
    undefined,
  );
  return {
    formulas: records.length,
    formulasWithCheckValues: records.filter((record) => record.checkValues === 'published').length,
    sources: new Set(cited.map(({ source }) => source)).size,
    checkValues: counted(values, ({ origin }) => kindOfOrigin[origin]),
    figures: counted(figures, ({ record, checkValue }) => originOf.get(`${record} ${checkValue}`)),
    largestResidual: largest ?? null,
  };
}

const folders = [...new Set(formulaRecords.map(({ id }) => folderOf(id)))].map((folder) => ({
  folder,
  ...summary((id) => folderOf(id) === folder),
}));
const report = { folders, total: summary(() => true) };
const outside = rows.filter(({ share }) => !(share <= agreement));

if (process.argv.includes('--json')) console.log(JSON.stringify(report, null, 2));
else {
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
