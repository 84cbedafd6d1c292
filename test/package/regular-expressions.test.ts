import fs from 'node:fs';
import path from 'node:path';
import { check } from 'recheck';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { root } from './packed.ts';

/** Those whose time may grow with the square of the text, and why their text is short. */
const shortTexts: Readonly<Record<string, string>> = {
  '/\\B(?=(\\d{3})+$)/g': 'the digits of one number that is written without an exponent: 309 at most',
};

interface Found {
  readonly source: string;
  readonly flags: string;
  readonly file: string;
}

/** Every regular expression of `src`: literals, and the texts that are made into one. */
function regularExpressions(): Found[] {
  const found = new Map<string, Found>();
  const files = fs.readdirSync(path.join(root, 'src'), { recursive: true, encoding: 'utf8' });
  for (const file of files.filter((name) => name.endsWith('.ts'))) {
    const text = fs.readFileSync(path.join(root, 'src', file), 'utf8');
    const visit = (node: ts.Node): void => {
      if (ts.isRegularExpressionLiteral(node)) {
        const end = node.text.lastIndexOf('/');
        const [source, flags] = [node.text.slice(1, end), node.text.slice(end + 1)];
        found.set(node.text, { source, flags, file });
      }
      if (ts.isNewExpression(node) && node.expression.getText() === 'RegExp') {
        const [pattern, flags] = (node.arguments ?? []).map((each) => written(each, node.getSourceFile()));
        found.set(`${pattern}`, { source: pattern ?? '', flags: flags ?? '', file });
      }
      ts.forEachChild(node, visit);
    };
    visit(ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true));
  }
  return [...found.values()];
}

/** The text of a pattern in which constants of the same file stand. */
function written(node: ts.Expression, file: ts.SourceFile): string {
  if (ts.isStringLiteralLike(node)) return node.text;
  if (!ts.isTemplateExpression(node)) throw new Error(`${file.fileName}: a pattern that is not written out`);
  const inserted = (name: string) => {
    const constant = new RegExp(`^const ${name} = '([^']*)';$`, 'm').exec(file.text)?.[1];
    if (constant === undefined) throw new Error(`${file.fileName}: ${name} is not a constant of the file`);
    return constant;
  };
  return node.templateSpans.reduce(
    (text, { expression, literal }) => text + inserted(expression.getText()) + literal.text,
    node.head.text,
  );
}

describe('the regular expressions of the library', () => {
  const all = regularExpressions();

  it('are found', () => {
    expect(all.length).toBeGreaterThan(20);
  });

  it.each(all.map((each) => [`/${each.source}/${each.flags}`, each] as const))(
    '%s takes a time in proportion to the text',
    async (name, { source, flags, file }) => {
      const found = await check(source, flags, { timeout: 60_000 });
      if (name in shortTexts) expect(found).toMatchObject({ status: 'vulnerable', complexity: { type: 'polynomial' } });
      else expect(`${file}: ${found.status}`).toBe(`${file}: safe`);
    },
  );

  it('have no reason that is not needed', () => {
    const names = all.map(({ source, flags }) => `/${source}/${flags}`);
    expect(Object.keys(shortTexts).filter((name) => !names.includes(name))).toEqual([]);
  });

  it('would be found slow by the checker', async () => {
    expect((await check('^(a+)+$', '')).status).toBe('vulnerable');
    expect((await check('\\s*\\n\\s*x', '')).status).toBe('vulnerable');
  });
});
