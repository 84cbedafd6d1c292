// Begins a formula family: `npm run scaffold -- wind my-formula` writes the four siblings and adds them to the folder's
// index and to the register. Everything compiles, and the tests fail until formula, record and check values are written.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';

const capital = (word) => word[0].toUpperCase() + word.slice(1);
const camel = (name) =>
  name
    .split('-')
    .map((word, i) => (i === 0 ? word : capital(word)))
    .join('');

function refuse(reason) {
  console.error(`${reason}\nusage: npm run scaffold -- folder name-of-the-result`);
  process.exit(1);
}

const [folder = '', name = '', ...rest] = process.argv.slice(2);
if (rest.length > 0 || folder === '' || name === '') refuse('a folder and a name are needed');
const records = fs.readFileSync('src/register/records.ts', 'utf8');
if (!/^[a-z-]+$/.test(folder) || !new RegExp(`'\\.\\./${folder}/[a-z0-9-]+\\.record\\.ts'`).test(records))
  refuse(`src/${folder} is no folder of formulas`);
if (!/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(name)) refuse(`${name}: a name is words in small letters, joined by hyphens`);

const formula = camel(name);
const taken = fs
  .readdirSync('src', { recursive: true })
  .filter((file) => file.endsWith('.ts'))
  .find((file) =>
    new RegExp(`^export (?:function|const) ${formula}\\b`, 'm').test(fs.readFileSync(`src/${file}`, 'utf8')),
  );
if (taken !== undefined) refuse(`${formula} stands in src/${taken.replaceAll('\\', '/')} already`);

const inputs = `${capital(formula)}Inputs`;
const domain = `${formula}Domain`;
const record = `${formula}Record`;
const imported = fs.readFileSync('src/register/check-values.ts', 'utf8').includes(`import ${formula} from`);
const values = imported ? camel(`${folder}-${name}`) : formula;

const siblings = {
  [`src/${folder}/${name}.ts`]: `import { type Domain, demand, type Metres, type Numbers } from '../units/index.ts';

/** Inputs of {@link ${formula}}. */
export interface ${inputs} {
  /** What it is, and from where to where it is measured. */
  readonly distance: Metres;
}

export const ${domain} = {
  distance: { unit: 'm', min: 0, max: 10_000, source: 'library range' },
} satisfies Domain<${inputs}>;

/**
 * A sentence that says what the result is.
 *
 * The equation, with the unit and the reference of each letter.
 *
 * @param x - \`distance\` 0 m to 10 000 m.
 * @returns the result in m.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record ${folder}.${name}
 *
 * @example
 * ${formula}({ distance: m(100) }) // ≈ 0 ± 0
 */
export function ${formula}(x: ${inputs}): Metres {
  demand('distance', x.distance, ${domain}.distance);
  const { distance: distance_m }: Numbers<${inputs}> = x;
  throw new Error(\`${formula} is not written yet: \${distance_m} m\`);
}
`,
  [`src/${folder}/${name}.record.ts`]: `import type { FormulaRecord } from '../sources/index.ts';
import { ${formula}, ${domain} } from './${name}.ts';

export const ${record} = {
  id: '${folder}.${name}',
  title: '${capital(name.replaceAll('-', ' '))}',
  equation: 'y = f(d)',
  formula: ${formula},
  domain: ${domain},
  inputs: {
    distance: { symbol: 'd', meaning: 'what it is' },
  },
  outputs: { result: { symbol: 'y', unit: 'm', meaning: 'what it is' } },
  citations: [{ source: 'mathematics', locator: 'where it stands in the source', access: 'derived' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof ${formula}>;
`,
  [`src/${folder}/${name}.check-values.json`]: `{
 "schema": "groundroll/check-values/1",
 "checkValues": []
}
`,
  [`test/${folder}/${name}.test.ts`]: `import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ${formula} } from '../../src/${folder}/index.ts';
import { DomainError, m } from '../../src/units/index.ts';

const distance = fc.double({ min: 0, max: 10_000, noNaN: true }).map(m);

describe('${formula}', () => {
  it('has a property that holds for all inputs', () => {
    fc.assert(
      fc.property(distance, (d) => {
        expect(${formula}({ distance: d })).toBe('what must hold');
      }),
    );
  });

  it.each([
    ['distance', { distance: -0.1 }],
    ['distance', { distance: 10_000.1 }],
    ['distance', { distance: Number.NaN }],
    ['distance', {}],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => ${formula}(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(\`^\${parameter}: \`));
  });
});
`,
};

for (const file of Object.keys(siblings)) if (fs.existsSync(file)) refuse(`${file} exists already`);

/** Adds an import, which the formatter puts in its place, and an entry at the end of the list. */
function register(file, line, entry, end) {
  const text = fs.readFileSync(file, 'utf8');
  const at = text.lastIndexOf(end);
  if (at < 0) throw new Error(`${file}: no list ends with ${JSON.stringify(end)}`);
  fs.writeFileSync(file, `${line}\n${text.slice(0, at)}\n  ${entry},${text.slice(at)}`);
}

for (const [file, text] of Object.entries(siblings)) fs.writeFileSync(file, text);
const index = `src/${folder}/index.ts`;
fs.appendFileSync(index, `export { type ${inputs}, ${formula} } from './${name}.ts';\n`);
register('src/register/records.ts', `import { ${record} } from '../${folder}/${name}.record.ts';`, record, '\n];');
register(
  'src/register/check-values.ts',
  `import ${values} from '../${folder}/${name}.check-values.json' with { type: 'json' };`,
  values,
  '\n];',
);

const written = [...Object.keys(siblings), index, 'src/register/records.ts', 'src/register/check-values.ts'];
const { status } = spawnSync('node_modules/.bin/biome', ['check', '--config-path=tools', '--write', ...written], {
  stdio: ['ignore', 'ignore', 'inherit'],
});
for (const file of written) console.log(file);
console.log('\nNow write equation, range, record, check values and properties; the tests fail until then.');
process.exitCode = status ?? 1;
