import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkValues, compareCheckValues, formulaRecords } from '../../src/register/index.ts';
import { bibliography } from '../../src/sources/index.ts';

const page = (address: string) => readFileSync(`site/${address}`, 'utf8');
const count = (html: string, mark: RegExp) => html.match(mark)?.length ?? 0;

/** One for each figure that is compared: five cells with the result in them. */
const shares = /<td class="figure">[^<]*<\/td><\/tr>/g;

const rows = compareCheckValues(formulaRecords, checkValues);

describe('the pages of the formula register', () => {
  it.each(formulaRecords.map((record) => [record.id, record] as const))(
    'have one of %s with its equation, files, symbols, citations and every figure',
    (id, record) => {
      const html = page(`register/formulas/${id}.html`);
      expect(count(html, /<div class="equation"[^>]*><span class="katex"><math/g)).toBe(1);
      for (const name of [...Object.keys(record.inputs), ...Object.keys(record.outputs)]) {
        expect(html).toContain(`<th scope="row"><code>${name}</code></th>`);
      }
      for (const { source } of record.citations) expect(html).toContain(`href="../sources/${source}.html"`);
      expect(html).toMatch(
        new RegExp(`<dd><a href="../../functions/[^"]+"[^>]*>${record.formula.name.replace(/\d+$/, '')}`),
      );
      const [, code = ''] = /<dt>Code<\/dt><dd><code>([^<]+)<\/code>/.exec(html) ?? [];
      expect(existsSync(code)).toBe(true);
      expect(count(html, shares)).toBe(rows.filter((row) => row.record === id).length);
      if (record.checkValues !== 'published') expect(html).toContain('None were found: ');
    },
  );

  it('have one of each source, and name every source in the index', () => {
    const index = page('register/sources.html');
    for (const key of Object.keys(bibliography)) {
      expect(existsSync(`site/register/sources/${key}.html`)).toBe(true);
      expect(index).toContain(`href="sources/${key}.html"`);
    }
  });

  it('list a formula under each access status of its citations and under no other', () => {
    const [, ...sections] = page('register/access.html').split(/<h2 id="/);
    for (const section of sections) {
      const access = section.slice(0, section.indexOf('"'));
      const listed = new Set([...section.matchAll(/href="formulas\/([^"]+)\.html"/g)].map(([, id]) => id));
      const expected = formulaRecords.filter(({ citations }) =>
        citations.some((citation) => citation.access === access),
      );
      expect(listed).toEqual(new Set(expected.map(({ id }) => id)));
    }
    expect(sections.length).toBe(6);
  });

  it('say the same once more for print, every figure of it', () => {
    const printed = page('media/printed-register.html');
    expect(count(printed, shares)).toBe(rows.length);
    for (const { id } of formulaRecords) expect(printed).toContain(`<h3 id="${id}">`);
  });

  it('say the same once more as JSON', () => {
    const { formulas } = JSON.parse(page('media/register.json'));
    expect(formulas.map(({ id }: { id: string }) => id)).toEqual(formulaRecords.map(({ id }) => id));
    const figures = formulas.flatMap(({ checkValues: values }: { checkValues: { figures: unknown[] }[] }) =>
      values.flatMap((value) => value.figures),
    );
    expect(figures.length).toBe(rows.length);
  });

  it('say the same as npm run register, whose text has every figure too', () => {
    const register = (...options: string[]) =>
      execFileSync(process.execPath, ['tools/register.mjs', '--formulas', ...options], {
        encoding: 'utf8',
        maxBuffer: 2 ** 26,
      });
    expect(register('--json') === page('media/register.json')).toBe(true);
    const text = register();
    expect(count(text, /: theirs .*, ours .*, residual .*, tolerance /g)).toBe(rows.length);
    for (const { id, title } of formulaRecords) expect(text).toContain(`${id}  ${title}\n`);
  });

  it('are printed for one formula or one folder by npm run register, which knows no other word', () => {
    const register = (...words: string[]) =>
      spawnSync(process.execPath, ['tools/register.mjs', '--formulas', ...words], { encoding: 'utf8' });
    const one = register('wind.components');
    expect(one.status).toBe(0);
    expect(one.stdout).toMatch(/^wind\.components {2}Headwind/);
    expect(one.stdout).not.toContain('wind.used  ');
    const folder = JSON.parse(register('study', '--json').stdout) as { formulas: { id: string }[] };
    expect(folder.formulas.map(({ id }) => id)).toEqual(
      formulaRecords.map(({ id }) => id).filter((id) => id.startsWith('study.')),
    );
    expect(register('wind.nothing')).toMatchObject({ status: 2, stdout: '' });
  });

  it('are what the comment of a function leads to', () => {
    const html = page('functions/wind.windComponents.html');
    expect(html).toContain('<a href="../register/formulas/wind.components.html"');
  });
});
