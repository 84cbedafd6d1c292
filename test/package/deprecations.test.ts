import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from './packed.ts';

const { version } = JSON.parse(fs.readFileSync(path.join(root, 'package.json'), 'utf8')) as { version: string };
const reports = fs.readdirSync(path.join(root, 'tools/api')).map((file) => path.join(root, 'tools/api', file));
const published = reports.map((file) => fs.readFileSync(file, 'utf8')).join('\n');

const isAfter = (a: string, b: string) => a.localeCompare(b, 'en', { numeric: true }) > 0;
const isPublished = (name: string) => new RegExp(`^export [a-z ]+ ${name}\\b`, 'm').test(published);

/** What is wrong with the deprecations in a text: each names a published replacement and a version still to come. */
function faultsIn(text: string, current: string): string[] {
  return [...text.matchAll(/@deprecated\b([^\n]*)/g)].flatMap(([, words = '']) => {
    const form = /^ Use `(\w+)`.*; to be removed in (\d+\.\d+\.\d+)\.$/.exec(words);
    if (form === null) return [`"@deprecated${words}" names no replacement and version`];
    const [, replacement = '', removal = ''] = form;
    if (!isPublished(replacement)) return [`${replacement} is not published`];
    return isAfter(removal, current) ? [] : [`${removal} has come, and what was to be removed in it is still there`];
  });
}

describe('a deprecation', () => {
  const files = (fs.readdirSync(path.join(root, 'src'), { recursive: true }) as string[]).filter((file) =>
    file.endsWith('.ts'),
  );

  it.each(files.filter((file) => fs.readFileSync(path.join(root, 'src', file), 'utf8').includes('@deprecated')))(
    'in %s says what to use instead, and until when it stays',
    (file) => {
      expect(faultsIn(fs.readFileSync(path.join(root, 'src', file), 'utf8'), version)).toEqual([]);
    },
  );

  it('is looked for in every file of the library', () => {
    expect(files.length).toBeGreaterThan(300);
    expect(files).toContain(path.join('wind', 'components.ts'));
  });

  it.each([
    [' * @deprecated Use `windComponents`; to be removed in 0.3.0.\n', []],
    [' * @deprecated Use `windComponents` with its own speed; to be removed in 0.10.0.\n', []],
    [' * @deprecated\n', ['"@deprecated" names no replacement and version']],
    [' * @deprecated Use another.\n', ['"@deprecated Use another." names no replacement and version']],
    [' * @deprecated Use `windParts`; to be removed in 0.3.0.\n', ['windParts is not published']],
    [
      ' * @deprecated Use `windComponents`; to be removed in 0.2.0.\n',
      ['0.2.0 has come, and what was to be removed in it is still there'],
    ],
  ])('of the form %j is judged as it should be', (text, faults) => {
    expect(faultsIn(text, '0.2.1')).toEqual(faults);
  });
});
