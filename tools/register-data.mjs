// The whole register as one plain object: every formula with its symbols, bounds, sources, files and check values,
// each figure beside ours. The pages of the documentation, the printed register and `npm run register` read this.
import fs from 'node:fs';
import path from 'node:path';
import { bundled } from './bundled.mjs';
import { entries } from './entries.mjs';

/** @type {Readonly<Record<string, 'published' | 'defined' | 'independent'>>} */
export const kindOfOrigin = {
  'printed-table': 'published',
  'worked-example': 'published',
  'official-test-values': 'published',
  definition: 'defined',
  'common-practice': 'defined',
  'independent-program': 'independent',
};

/** A tie of the printed rounding must not count as outside on the last bit of a double. */
export const agreement = 1 + 1e-9;

export const folderOf = (id) => id.slice(0, id.indexOf('.'));

/** The row with the largest share of its tolerance. */
export const worstOf = (figures) =>
  figures.reduce((worst, row) => (worst === undefined || row.share > worst.share ? row : worst), undefined);

/** Every file below a folder whose name ends so, with what it holds. */
function texts(folder, ending) {
  return fs
    .readdirSync(folder, { recursive: true })
    .filter((file) => file.endsWith(ending))
    .sort()
    .map((file) => ({ file: path.posix.join(folder, file.split(path.sep).join('/')) }))
    .map(({ file }) => ({ file, text: fs.readFileSync(file, 'utf8') }));
}

/** The only file that holds a pattern. */
function onlyFile(files, pattern, what) {
  const found = files.filter(({ text }) => pattern.test(text));
  if (found.length !== 1) throw new Error(`${what}: expected one file, found ${found.length}`);
  return found[0].file;
}

/** Entries with the same key, by key, in the order in which keys first occur. */
export function groupedBy(list, keyOf) {
  const groups = new Map();
  for (const entry of list) {
    const key = keyOf(entry);
    if (!groups.has(key)) groups.set(key, []);
    groups.get(key).push(entry);
  }
  return groups;
}

export async function registerData() {
  const names = entries.map(({ source }, i) => `export * as entry${i} from './${source.slice('src/'.length)}';`);
  const library = await bundled('register-data', [...names, `export * from './register/index.ts';`].join('\n'));
  const { checkValueCollection, checkValues, compareCheckValues, formulaRecords } = library;
  const { formulas, sources, units, version } = checkValueCollection();

  // The root entry repeats what the folders export.
  const exported = entries.flatMap(({ name }, i) =>
    name === 'index' ? [] : Object.entries(library[`entry${i}`]).map(([key, value]) => ({ entry: name, key, value })),
  );
  const code = texts('src', '.ts');
  const tests = texts('test', '.test.ts');
  const documents = texts('src', '.check-values.json').map(({ file, text }) => ({ file, content: JSON.parse(text) }));
  const valuesOf = groupedBy(checkValues, ({ record }) => record);

  const described = formulas.map((formula, i) => {
    const record = formulaRecords[i];
    const folder = folderOf(record.id);
    const found = exported.find(({ entry, value }) => entry === folder && value === record.formula);
    if (found === undefined) throw new Error(`${record.id}: its formula is not exported by groundroll/${folder}`);
    const name = found.key;
    const declared = new RegExp(`^export (?:async )?(?:function|const) ${name}\\b`, 'm');
    return {
      ...formula,
      folder,
      function: { entry: found.entry, name },
      files: {
        code: onlyFile(
          code.filter(({ file }) => file.startsWith(`src/${folder}/`)),
          declared,
          name,
        ),
        record: onlyFile(code, new RegExp(`^ +id: '${record.id.replaceAll('.', '\\.')}',$`, 'm'), record.id),
        checkValues: documents
          .filter(({ content }) => content.checkValues.some((value) => value.record === record.id))
          .map(({ file }) => file),
        tests: tests
          .filter(({ file, text }) => file.startsWith(`test/${folder}/`) && new RegExp(`\\b${name}\\b`).test(text))
          .map(({ file }) => file),
      },
      checkValues: (valuesOf.get(record.id) ?? []).map((value) => ({
        ...value,
        kind: kindOfOrigin[value.origin],
        figures: compareCheckValues([record], [value]),
      })),
    };
  });
  return { version, units, sources, formulas: described };
}

/** Formulas, sources, check values and figures of a part of the register, counted. */
export function summary(formulas) {
  const values = formulas.flatMap(({ checkValues }) => checkValues);
  const figures = values.flatMap((value) => value.figures.map((figure) => ({ ...figure, kind: value.kind })));
  const counted = (list) => {
    const counts = { published: 0, defined: 0, independent: 0 };
    for (const { kind } of list) counts[kind] += 1;
    return counts;
  };
  const cited = [...formulas.flatMap(({ citations }) => citations), ...values.map(({ citation }) => citation)];
  const { kind: _, ...largest } = worstOf(figures) ?? {};
  return {
    formulas: formulas.length,
    formulasWithCheckValues: formulas.filter(({ nonePublished }) => nonePublished === undefined).length,
    sources: new Set(cited.map(({ source }) => source)).size,
    checkValues: counted(values),
    figures: counted(figures),
    largestResidual: figures.length === 0 ? null : largest,
  };
}

/** The folders that have formulas, in the order of the register. */
export const foldersOf = (formulas) => [...new Set(formulas.map(({ folder }) => folder))];
