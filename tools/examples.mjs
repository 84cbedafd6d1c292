// Turns every example into a test: `@example` blocks of src, and the ts and js fences of README.md and docs/guides.
// They import the package by its own name, so they run against the build and prove the exports map as well.
//
//   expression // => value         deep equality
//   expression // ≈ value ± tolerance
//   expression // throws [text]    throws, with the text in its message if one is given
//
// A constant may carry the same comments: `const d = ... // ≈ 771 ± 1`.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { entries } from './entries.mjs';

const target = '.cache/examples';
/** Folders whose public functions must all have an example. */
const formulaFolders = [
  'units',
  'atmosphere',
  'airspeed',
  'magnetism',
  'wind',
  'distance',
  'flight-path',
  'dynamics',
  'rules-of-thumb',
  'weather-report',
];
const faults = [];

fs.rmSync(target, { recursive: true, force: true });
fs.mkdirSync(target, { recursive: true });

const { config } = ts.readConfigFile('tsconfig.json', ts.sys.readFile);
const { options } = ts.parseJsonConfigFileContent(config, ts.sys, '.');
const program = ts.createProgram(
  entries.map(({ source }) => source),
  options,
);
const checker = program.getTypeChecker();

/** What each entry exports: name -> specifier. Earlier entries win, an example's own folder before them. */
const exportsOf = new Map(entries.map((entry) => [entry.name, exportedSymbols(entry)]));

function exportedSymbols({ source }) {
  const file = program.getSourceFile(source);
  const module = file && checker.getSymbolAtLocation(file);
  return module ? checker.getExportsOfModule(module).map((symbol) => [symbol.name, resolved(symbol)]) : [];
}

function resolved(symbol) {
  return symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
}

let count = 0;
for (const [name, symbols] of exportsOf) {
  for (const [exportName, symbol] of symbols) {
    const declaration = symbol.declarations?.find((d) => ts.isFunctionDeclaration(d));
    if (declaration && formulaFolders.includes(name) && examplesIn(declaration).length === 0) {
      faults.push(`${where(declaration)}: ${exportName} has no @example`);
    }
  }
}

for (const file of program.getSourceFiles()) {
  const relative = path.relative('.', file.fileName);
  if (!relative.startsWith('src/')) continue;
  const folder = relative.split('/').length === 2 ? 'index' : relative.split('/')[1];
  const blocks = [];
  const visit = (node) => {
    const name = node.name && ts.isIdentifier(node.name) ? node.name.text : undefined;
    if (name && (ts.isFunctionDeclaration(node) || ts.isVariableStatement(node.parent?.parent ?? node))) {
      for (const code of examplesIn(node)) blocks.push({ title: name, code, where: where(node) });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  write(relative.replace(/\.ts$/, ''), blocks, folder, 'ts');
}

for (const document of ['README.md', ...listed('docs/guides')]) {
  if (!fs.existsSync(document)) continue;
  const text = fs.readFileSync(document, 'utf8');
  for (const language of ['ts', 'js']) {
    const fences = [...text.matchAll(/^```(\S+)[^\n]*\n([\s\S]*?)^```/gm)].filter(([, word]) => word === language);
    const blocks = fences.map((fence, i) => {
      const line = text.slice(0, fence.index).split('\n').length;
      return { title: `example ${i + 1}`, code: fence[2], where: `${document}:${line}` };
    });
    write(document.replace(/\.md$/, ''), blocks, undefined, language);
  }
}

function listed(folder) {
  return fs.existsSync(folder)
    ? fs
        .readdirSync(folder)
        .filter((file) => file.endsWith('.md'))
        .map((file) => `${folder}/${file}`)
    : [];
}

function where(node) {
  const file = node.getSourceFile();
  return `${path.relative('.', file.fileName)}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
}

/** The code of every `@example` of a declaration, without the fence that may stand around it. */
function examplesIn(node) {
  return ts
    .getJSDocTags(node)
    .filter((tag) => tag.tagName.text === 'example')
    .map((tag) => (ts.getTextOfJSDocComment(tag.comment) ?? '').replace(/^```\w*\n|\n?```\s*$/g, ''));
}

/** Writes the blocks of one file as one test file; names that a block uses without importing are imported for it. */
function write(name, blocks, folder, language) {
  if (blocks.length === 0) return;
  const imports = new Set([`import { expect, it } from 'vitest';`]);
  const bodies = blocks.map((block) => {
    const { statements, names } = body(block, imports);
    for (const [specifier, used] of folder === undefined ? [] : providers(names, folder)) {
      for (const word of used) imports.add(`import { ${word} } from '${specifier}';`);
    }
    count += 1;
    return `it(${JSON.stringify(`${block.where}: ${block.title}`)}, async () => {\n${statements.join('\n')}\n});`;
  });
  const file = `${name.replaceAll('/', '-')}.test.${language}`;
  const lines = new Set([...imports].flatMap(oneNameALine));
  fs.writeFileSync(path.join(target, file), `${[...lines, ...bodies].join('\n')}\n`);
}

/** Two blocks of one page may import the same name; a name a line, each once. */
function oneNameALine(line) {
  const [, names, from] = /^import \{([^}]*)\} from ('[^']+');?$/s.exec(line.trim()) ?? [];
  if (names === undefined) return [line];
  return names
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '')
    .map((name) => `import { ${name} } from ${from};`);
}

/** Where the names come from: the example's own folder, then the entries in their order. */
function providers(names, folder) {
  const order = [...entries].sort((a, b) => Number(b.name === folder) - Number(a.name === folder));
  const found = new Map();
  for (const name of names) {
    const entry = order.find((candidate) => exportsOf.get(candidate.name)?.some(([exported]) => exported === name));
    if (entry) found.set(entry.specifier, [...(found.get(entry.specifier) ?? []), name]);
  }
  return found;
}

/** The statements of one example, its claims turned into expectations, and the names that it uses. */
function body({ code, where: place }, imports) {
  const source = ts.createSourceFile('example.ts', code, ts.ScriptTarget.ES2022, true);
  const names = new Set();
  const claims = new Set();
  const collect = (node) => {
    if (ts.isIdentifier(node)) names.add(node.text);
    ts.forEachChild(node, collect);
  };
  const statements = [];
  for (const statement of source.statements) {
    if (ts.isImportDeclaration(statement)) {
      imports.add(statement.getText());
      continue;
    }
    collect(statement);
    const line = source.getLineAndCharacterOfPosition(statement.end).line;
    const rest = code.slice(statement.end).split('\n', 1)[0] ?? '';
    const claim = /^\s*;?\s*\/\/\s*(=>|≈|throws\b)\s*(.*)$/.exec(rest);
    if (claim) claims.add(line);
    statements.push(claim ? expectation(statement, claim[1], claim[2].trim(), place) : statement.getText());
  }
  code.split('\n').forEach((text, line) => {
    if (/\/\/\s*(=>|≈|throws\b)/.test(text) && !claims.has(line))
      faults.push(`${place}: "${text.trim()}" stands behind no statement`);
  });
  if (claims.size === 0 && place.startsWith('src/')) faults.push(`${place}: an example that states no result`);
  return { statements, names };
}

function expectation(statement, kind, wanted, place) {
  const declared = ts.isVariableStatement(statement) ? statement.declarationList.declarations[0] : undefined;
  const expression = declared ? declared.name.getText() : statement.getText().replace(/;$/, '');
  const before = declared ? `${statement.getText()}\n` : '';
  if (!declared && !ts.isExpressionStatement(statement)) {
    faults.push(`${place}: only an expression or a constant can state a result`);
    return '';
  }
  if (kind === '=>') return `${before}expect(${expression}).toEqual(${wanted});`;
  if (kind === 'throws')
    return `await expect(async () => ${declared?.initializer?.getText() ?? expression}).rejects.toThrow(${wanted === '' ? '' : JSON.stringify(wanted)});`;
  const [value, tolerance] = wanted.split('±');
  if (!(Number(tolerance) > 0)) {
    faults.push(`${place}: "≈ ${wanted}" needs a tolerance`);
    return '';
  }
  return `${before}expect(Math.abs((${expression}) - (${value})), \`\${${expression}} instead of ${wanted}\`).toBeLessThanOrEqual(${tolerance.trim()});`;
}

// Examples must compile too, against the types of the build.
const project = {
  extends: '../../tsconfig.json',
  compilerOptions: { rootDir: '../..', noUnusedLocals: false, allowJs: false },
  include: ['*.ts'],
};
fs.writeFileSync(path.join(target, 'tsconfig.json'), JSON.stringify(project));
try {
  execFileSync('node_modules/.bin/tsc', ['-p', target], { stdio: 'inherit' });
} catch {
  faults.push('an example does not compile');
}

for (const fault of faults) console.error(fault);
if (faults.length > 0) process.exitCode = 1;
console.log(`${count} examples`);
