import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { consumer, node, root, specifiers } from './packed.ts';

const call = 'windComponents({ from: degMagnetic(140), speed: kt(25), direction: degMagnetic(170) })';

const esm = `
import { degMagnetic, kt } from 'groundroll/units';
import { windComponents } from 'groundroll/wind';
${specifiers.map((specifier, i) => `import * as entry${i} from '${specifier}';`).join('\n')}
const entries = [${specifiers.map((_, i) => `entry${i}`).join(', ')}].map((entry) => Object.keys(entry).sort());
console.log(JSON.stringify({ entries, answer: ${call} }));
`;

const cjs = `
const { degMagnetic, kt } = require('groundroll/units');
const { windComponents } = require('groundroll/wind');
const entries = ${JSON.stringify(specifiers)}.map((specifier) => Object.keys(require(specifier)).sort());
console.log(JSON.stringify({ entries, answer: ${call}, version: require('groundroll/package.json').version }));
`;

const typed = `
import { DomainError, degMagnetic, kt, type Knots } from 'groundroll/units';
import { windComponents } from 'groundroll/wind';
${specifiers.map((specifier, i) => `import * as entry${i} from '${specifier}';`).join('\n')}
const crosswind: Knots = ${call}.crosswind;
export const entries = [${specifiers.map((_, i) => `entry${i}`).join(', ')}];
export const kept: [Knots, typeof DomainError] = [crosswind, DomainError];
`;

/** The type tests of a folder of test/, with the published entries in place of the source folders. */
function typeTests(folder: string): [string, string][] {
  const files = fs.readdirSync(path.join(root, 'test', folder)).filter((file) => file.endsWith('.test-d.ts'));
  return files.map((file) => {
    const text = fs.readFileSync(path.join(root, 'test', folder, file), 'utf8');
    const published = text.replaceAll(/'\.\.\/\.\.\/src\/([\w-]+)\/index\.ts'/g, "'groundroll/$1'");
    const own = published.replace(
      /^import .* from 'vitest';$/m,
      'declare const it: (name: string, body: () => void) => void;',
    );
    return [file.replace('.test-d.ts', '.ts'), own];
  });
}

const compilerOptions = { target: 'ES2022', lib: ['ES2022'], strict: true, noEmit: true, types: [] };

function tsconfig(options: Record<string, unknown>, files: readonly string[]): string {
  return JSON.stringify({ compilerOptions: { ...compilerOptions, ...options }, files });
}

describe('the packed tarball in an empty project', () => {
  let project: ReturnType<typeof consumer>;
  const typeTestFiles = typeTests('units').map(([name, text]) => [name.replace(/\.ts$/, '.mts'), text] as const);

  beforeAll(() => {
    const nodeFiles = ['consumer.mts', 'consumer.cts', ...typeTestFiles.map(([name]) => name)];
    project = consumer({
      'package.json': '{}',
      'esm.mjs': esm,
      'cjs.cjs': cjs,
      'consumer.mts': typed,
      'consumer.cts': typed,
      'consumer.ts': typed,
      ...Object.fromEntries(typeTestFiles),
      'newest.json': tsconfig({ module: 'NodeNext', moduleResolution: 'NodeNext' }, nodeFiles),
      'bundler.json': tsconfig({ module: 'ESNext', moduleResolution: 'Bundler' }, ['consumer.ts']),
      // The oldest compiler cannot read the typings of a dependency of ours; ours themselves it must.
      'oldest.json': tsconfig({ module: 'Node16', moduleResolution: 'Node16', skipLibCheck: true }, nodeFiles),
    });
  });
  afterAll(() => project.remove());

  it('works as an ES module and as CommonJS, with the same names in every entry', () => {
    const asModule = JSON.parse(node(project.folder, 'esm.mjs'));
    const asCommonJs = JSON.parse(node(project.folder, 'cjs.cjs'));
    expect(asModule.answer.headwind).toBeCloseTo(21.65, 2);
    expect(asCommonJs.answer).toEqual(asModule.answer);
    expect(asCommonJs.entries).toEqual(asModule.entries);
    expect(asModule.entries[specifiers.indexOf('groundroll/wind')]).toContain('windComponents');
  });

  it('carries no sources, tests or tools', () => {
    const folder = path.join(project.folder, 'node_modules/groundroll');
    expect(fs.readdirSync(folder).sort()).toEqual([
      'CHANGELOG.md',
      'LICENSE',
      'README.md',
      'dist',
      'package.json',
      'schemas',
    ]);
  });

  it.each([
    ['TypeScript 6, Node resolution, libraries checked too', 'typescript', 'newest.json'],
    ['TypeScript 6, bundler resolution', 'typescript', 'bundler.json'],
    ['TypeScript 4.7, the oldest promised', 'typescript-4.7', 'oldest.json'],
  ])('compiles, and refuses every mixture of references, with %s', (_name, compiler, config) => {
    expect(typeTestFiles.length).toBeGreaterThan(0);
    expect(compile(project.folder, compiler, config)).toBe('');
  });

  it('would show a mixture that compiles: the compiler complains of a needless @ts-expect-error', () => {
    const text = `import { ft } from 'groundroll/units';\n// @ts-expect-error\nft(1);\n`;
    fs.writeFileSync(path.join(project.folder, 'needless.mts'), text);
    const config = tsconfig({ module: 'Node16', moduleResolution: 'Node16', skipLibCheck: true }, ['needless.mts']);
    fs.writeFileSync(path.join(project.folder, 'needless.json'), config);
    expect(compile(project.folder, 'typescript-4.7', 'needless.json')).toContain('TS2578');
  });
});

/** What the compiler complains of; empty when it is content. */
function compile(folder: string, compiler: string, config: string): string {
  try {
    return node(folder, path.join(root, 'node_modules', compiler, 'lib/tsc.js'), '-p', config);
  } catch (error) {
    return String((error as { stdout?: string }).stdout);
  }
}
