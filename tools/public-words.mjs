// Every word by which an app tells results and documents apart, beside the types: ids, codes, keys and words of the
// schemas, column names. Prints them as the build has them; with --write it renews the committed list.
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';

/** Types that are a choice of words, of which the reports of the public types show the name only. */
const choices = {
  criteria: ['assessment/kernel/criterion.ts', 'Judged', 'id'],
  marks: ['assessment/kernel/mark.ts', 'Mark', 'id'],
  sentences: ['assessment/result/sentences.ts', 'SentenceCode'],
  sentencesOfStudies: ['study/sentences.ts', 'StudySentenceCode'],
  refusals: ['units/domain-error.ts', 'DomainErrorDetail', 'code'],
};

function wordsOfTypes() {
  const { config } = ts.readConfigFile('tsconfig.json', ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, '.');
  const files = Object.values(choices).map(([file]) => path.join('src', file));
  const program = ts.createProgram(files, options);
  const checker = program.getTypeChecker();
  return Object.fromEntries(
    Object.entries(choices).map(([name, [file, typeName, property]]) => {
      const source = program.getSourceFile(path.join('src', file));
      const found = checker
        .getExportsOfModule(checker.getSymbolAtLocation(source))
        .find((each) => each.name === typeName);
      const type = checker.getDeclaredTypeOfSymbol(found);
      const words = property === undefined ? type : checker.getTypeOfSymbol(type.getProperty(property));
      return [name, (words.isUnion() ? words.types : [words]).map(({ value }) => value).sort()];
    }),
  );
}

/** Keys by document, and the words that each key may have in any of them. */
function wordsOfSchemas(bibliography) {
  const keys = {};
  const words = {};
  for (const file of fs.readdirSync('schemas').sort()) {
    const name = path.basename(file, '.json');
    const found = new Set();
    const visit = (part, key) => {
      if (typeof part !== 'object' || part === null) return;
      for (const word of [part.const, ...(part.enum ?? [])]) {
        if (typeof word !== 'string') continue;
        words[key] ??= new Set();
        words[key].add(word);
      }
      for (const [each, inner] of Object.entries(part.properties ?? {})) {
        found.add(each);
        visit(inner, each);
      }
      for (const inner of [part.items, part.additionalProperties, part.additionalItems]) visit(inner, key);
      for (const inner of [part.anyOf, part.oneOf, part.allOf, part.prefixItems].flatMap((list) => list ?? [])) {
        visit(inner, key);
      }
      if (Array.isArray(part.items)) for (const inner of part.items) visit(inner, key);
      for (const [each, inner] of Object.entries(part.$defs ?? {})) visit(inner, each);
    };
    visit(JSON.parse(fs.readFileSync(path.join('schemas', file), 'utf8')), name);
    keys[name] = [...found].sort();
  }
  // The codes of sentences stand above, the units in the report of the public types, and so do most sources.
  for (const key of ['code', 'unit']) delete words[key];
  for (const source of Object.keys(bibliography)) words.source.delete(source);
  return {
    keys,
    words: Object.fromEntries(
      Object.entries(words)
        .sort()
        .map(([key, set]) => [key, [...set].sort()]),
    ),
  };
}

const entry = (name) => import(pathToFileURL(path.resolve('dist', `${name}.js`)).href);

async function wordsOfResults() {
  const [{ formulaRecords }, { factorSets }, { runwayDistanceTable }, { runwayDistanceTableCsv }] = await Promise.all(
    ['register', 'distance', 'study', 'worksheet'].map(entry),
  );
  const idsWithin = (part) =>
    typeof part !== 'object' || part === null
      ? []
      : [...(typeof part.id === 'string' ? [part.id] : []), ...Object.values(part).flatMap(idsWithin)];
  const columns = ['takeoff-28', 'landing-28'].flatMap((name) => {
    const request = JSON.parse(fs.readFileSync(`examples/requests/${name}.json`, 'utf8'));
    request.performanceData = JSON.parse(
      fs.readFileSync(path.join('examples/requests', request.performanceData), 'utf8'),
    );
    const temperatures = [{ value: 20, unit: 'degC' }];
    return [{ masses: [{ mass: request.mass }] }, { headwinds: [{ value: 0, unit: 'kt' }] }].flatMap((rows) => {
      const table = runwayDistanceTable(request, { ...rows, temperatures });
      if (!table.ok) throw new Error(JSON.stringify(table.faults));
      return runwayDistanceTableCsv(table.value).split('\r\n', 1)[0].split(',');
    });
  });
  return {
    formulas: formulaRecords.map(({ id }) => id).sort(),
    factors: Object.fromEntries(
      Object.entries(factorSets).map(([id, { takeoff, landing }]) => [
        id,
        [...new Set(idsWithin({ takeoff, landing }))].sort(),
      ]),
    ),
    columns: [...new Set(columns)].sort(),
  };
}

const text = `${JSON.stringify({ ...wordsOfTypes(), ...(await wordsOfResults()), schemas: wordsOfSchemas((await entry('sources')).bibliography) }, null, 1)}\n`;
if (process.argv.includes('--write')) fs.writeFileSync('test/package/public-words.json', text);
process.stdout.write(text);
