import fs from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { beforeAll, describe, expect, it } from 'vitest';
import { root } from './packed.ts';

// What the built files may touch. Everything else that a file does not declare itself is a fault: the console, clocks,
// timers, the network, files, the page, the process, whatever a platform adds. The compiler resolves each name, with the
// language alone in view.
const allowed = new Set([
  ...[
    'Array',
    'Boolean',
    'Error',
    'Float64Array',
    'Int32Array',
    'JSON',
    'Map',
    'Math',
    'Number',
    'Object',
    'RangeError',
    'RegExp',
  ],
  ...['Set', 'String', 'Uint8Array', 'undefined'],
]);
/** Dates that are given, never the present one. */
const allowedDates = [/^Date\.parse\(.+\)$/s, /^Date\.UTC\(.+\)$/s, /^new Date\(.+\)$/s];
/** What depends on chance or on the settings of the machine. */
const forbiddenMembers = /^(random|now|toLocale\w*|localeCompare|constructor|__proto__)$/;
const packages = [/^\.{1,2}\//, /^valibot$/, /^geomagnetism$/, /^pure-rand\//];
const changing =
  /^(set|add|delete|clear|push|pop|shift|unshift|splice|sort|reverse|fill|copyWithin|assign|defineProperty)$/;

/** Module-level state that is meant; each with its reason. */
const statesMeant: Readonly<Record<string, string>> = {
  'field-at-epoch.js atEpoch': 'the magnetic model, made at the first call, always the same',
  'field-at-epoch.js atYearLater': 'the magnetic model a year later, likewise',
  'field-at-epoch.cjs atEpoch': 'as in the ES module',
  'field-at-epoch.cjs atYearLater': 'as in the ES module',
  ...Object.fromEntries(
    ['domain-error', 'html', 'distance-chain', 'step'].map((file) => [
      `${file}.cjs _class`,
      'a class with initial values, written by the bundler while the module is loaded',
    ]),
  ),
};

let program: ts.Program;
let checker: ts.TypeChecker;
let files: readonly ts.SourceFile[];

beforeAll(() => {
  const dist = path.join(root, 'dist');
  const names = fs.readdirSync(dist, { recursive: true, encoding: 'utf8' }).filter((name) => /\.c?js$/.test(name));
  program = ts.createProgram(
    names.map((name) => path.join(dist, name)),
    {
      allowJs: true,
      noResolve: true,
      noEmit: true,
      types: [],
      lib: ['lib.es2022.d.ts'],
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.ESNext,
      moduleDetection: ts.ModuleDetectionKind.Force,
    },
  );
  checker = program.getTypeChecker();
  files = program.getSourceFiles().filter(({ isDeclarationFile }) => !isDeclarationFile);
});

describe('the built files', () => {
  it('are all looked at, in both formats', () => {
    expect(files.filter(({ fileName }) => fileName.endsWith('.js')).length).toBeGreaterThan(200);
    expect(files.filter(({ fileName }) => fileName.endsWith('.cjs')).length).toBeGreaterThan(200);
  });

  it('use the language alone: no console, clock, chance, timer, network, file, page, process or evaluation', () => {
    expect(files.flatMap(foreignUses)).toEqual([]);
  });

  it('import each other and the three dependencies, nothing else', () => {
    expect(files.flatMap(imports).filter(({ name }) => !packages.some((each) => each.test(name)))).toEqual([]);
  });

  it('keep no state: nothing at the top of a module is changed after it is made', () => {
    const found = files.flatMap(changedState).filter((each) => !(each in statesMeant));
    expect([...new Set(found)]).toEqual([]);
    const all = new Set(files.flatMap(changedState));
    expect(Object.keys(statesMeant).filter((each) => !all.has(each))).toEqual([]);
  });

  it.each([
    ['console.log(1);', 'console'],
    ['const now = Date.now();', 'now'],
    ['const now = new Date();', 'Date'],
    ['const a = Math.random();', 'random'],
    ['fetch("x");', 'fetch'],
    ['globalThis.x = 1;', 'globalThis'],
    ['const f = new Function("return 1");', 'Function'],
    ['const f = (0, eval)("1");', 'eval'],
    ['const f = (() => {}).constructor("return 1");', 'constructor'],
    ['const url = import.meta.url;', 'import.meta'],
    ['const a = await import("./a.js");', 'import'],
    ['process.exit();', 'process'],
    ['const text = (1).toLocaleString();', 'toLocaleString'],
  ])('would be refused with %s', (text, name) => {
    const found = inspected(text, foreignUses);
    expect(found.length).toBeGreaterThan(0);
    expect(found.join()).toContain(name);
  });

  it.each([
    'let last; export function f(x) { last = x; }',
    'let count = 0; export const f = () => { count += 1; };',
    'let count = 0; export const f = () => count++;',
    'const cache = new Map(); export const f = (x) => { cache.set(x, 1); };',
    'const seen = []; export const f = (x) => { seen.push(x); };',
    'const kept = {}; export const f = (x) => { kept[x] = 1; };',
    'const kept = { inner: [] }; export const f = (x) => { kept.inner.push(1); };',
    'const kept = {}; export const f = (x) => { Object.assign(kept, x); };',
    'const kept = {}; export const f = (x) => { delete kept.a; };',
  ])('would be refused with the state of %s', (text) => {
    expect(inspected(text, changedState)).toHaveLength(1);
  });

  it('may change what a call has made itself', () => {
    expect(inspected('export const f = () => { const a = []; a.push(1); let n = 0; n += 1; };', changedState)).toEqual(
      [],
    );
  });
});

/** The faults of a text as a module of its own. */
function inspected(text: string, inspect: (file: ts.SourceFile) => string[]): string[] {
  const before = [program, checker] as const;
  const name = path.join(root, 'dist/inspected.js');
  const host = ts.createCompilerHost(program.getCompilerOptions());
  const { getSourceFile } = host;
  host.getSourceFile = (file, ...rest) =>
    file === name
      ? ts.createSourceFile(name, text, ts.ScriptTarget.ES2022, true)
      : getSourceFile.call(host, file, ...rest);
  program = ts.createProgram([name], program.getCompilerOptions(), host);
  checker = program.getTypeChecker();
  try {
    return inspect(program.getSourceFile(name) as ts.SourceFile);
  } finally {
    [program, checker] = before;
  }
}

function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  ts.forEachChild(node, (child) => walk(child, visit));
}

function place(node: ts.Node): string {
  const file = node.getSourceFile();
  const { line } = file.getLineAndCharacterOfPosition(node.getStart());
  return `${path.basename(file.fileName)}:${line + 1}: ${node.parent.getText().slice(0, 80)}`;
}

/** Uses of what neither the file nor the list of the language declares. */
function foreignUses(file: ts.SourceFile): string[] {
  const faults: string[] = [];
  walk(file, (node) => {
    if (ts.isMetaProperty(node) || node.kind === ts.SyntaxKind.ImportKeyword) {
      if (!ts.isImportDeclaration(node.parent)) faults.push(`import.meta or import(): ${place(node)}`);
    }
    if (!ts.isIdentifier(node)) return;
    if (ts.isPropertyAccessExpression(node.parent) && node.parent.name === node) {
      if (forbiddenMembers.test(node.text)) faults.push(place(node));
      return;
    }
    if (isPropertyName(node)) return;
    // An assignment to a property of it passes for a declaration.
    if (node.text !== 'globalThis' && (isDeclaredInFile(node, file) || allowed.has(node.text))) return;
    const use = ts.isPropertyAccessExpression(node.parent) ? node.parent.parent : node.parent;
    if (node.text === 'Date' && allowedDates.some((each) => each.test(use.getText()))) return;
    if (file.fileName.endsWith('.cjs') && /^(require\((["'])[^"']+\2\)|module\.exports)$/.test(node.parent.getText()))
      return;
    faults.push(place(node));
  });
  return faults;
}

function isPropertyName(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isExportSpecifier(parent) || ts.isImportSpecifier(parent)) return true;
  if (ts.isBindingElement(parent)) return parent.propertyName === node;
  const isNamed =
    ts.isPropertyAssignment(parent) ||
    ts.isMethodDeclaration(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isGetAccessor(parent);
  return isNamed && parent.name === node;
}

function symbolOf(node: ts.Identifier): ts.Symbol | undefined {
  return ts.isShorthandPropertyAssignment(node.parent)
    ? checker.getShorthandAssignmentValueSymbol(node.parent)
    : checker.getSymbolAtLocation(node);
}

function isDeclaredInFile(node: ts.Identifier, file: ts.SourceFile): boolean {
  return symbolOf(node)?.declarations?.some((declaration) => declaration.getSourceFile() === file) ?? false;
}

function imports(file: ts.SourceFile): { name: string; place: string }[] {
  const found: { name: string; place: string }[] = [];
  walk(file, (node) => {
    const isFrom = ts.isImportDeclaration(node) || ts.isExportDeclaration(node);
    const specifier = isFrom
      ? node.moduleSpecifier
      : ts.isCallExpression(node) && node.expression.getText() === 'require'
        ? node.arguments[0]
        : undefined;
    if (specifier === undefined) return;
    found.push({ name: ts.isStringLiteralLike(specifier) ? specifier.text : '(computed)', place: place(specifier) });
  });
  return found;
}

/** Names at the top of a module that something in it assigns to, or changes by one of the changing methods. */
function changedState(file: ts.SourceFile): string[] {
  const faults: string[] = [];
  const note = (target: ts.Node) => {
    const owner = ownerOf(target);
    const declaration = owner === undefined ? undefined : symbolOf(owner)?.valueDeclaration;
    if (owner === undefined || declaration === undefined || !isAtTop(declaration)) return;
    faults.push(`${path.basename(file.fileName)} ${owner.text}`);
  };
  walk(file, (node) => {
    if (ts.isBinaryExpression(node) && isAssignment(node.operatorToken.kind)) note(node.left);
    if (ts.isPrefixUnaryExpression(node) || ts.isPostfixUnaryExpression(node)) {
      const { operator } = node;
      if (operator === ts.SyntaxKind.PlusPlusToken || operator === ts.SyntaxKind.MinusMinusToken) note(node.operand);
    }
    if (ts.isDeleteExpression(node)) note(node.expression);
    if (!ts.isCallExpression(node) || !ts.isPropertyAccessExpression(node.expression)) return;
    const { expression, name } = node.expression;
    if (!changing.test(name.text)) return;
    note(expression.getText() === 'Object' ? (node.arguments[0] ?? expression) : expression);
  });
  return faults;
}

function isAssignment(kind: ts.SyntaxKind): boolean {
  return kind >= ts.SyntaxKind.FirstAssignment && kind <= ts.SyntaxKind.LastAssignment;
}

/** The name to which a target belongs: `a` of `a.b[0].c`. */
function ownerOf(target: ts.Node): ts.Identifier | undefined {
  let node = target;
  while (ts.isPropertyAccessExpression(node) || ts.isElementAccessExpression(node)) node = node.expression;
  return ts.isIdentifier(node) ? node : undefined;
}

function isAtTop(declaration: ts.Declaration): boolean {
  if (!ts.isVariableDeclaration(declaration))
    return ts.isFunctionDeclaration(declaration) && ts.isSourceFile(declaration.parent);
  return ts.isSourceFile(declaration.parent.parent.parent);
}
