import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

let site: string;
beforeEach(() => {
  site = mkdtempSync(join(tmpdir(), 'groundroll-site-'));
});
afterEach(() => rmSync(site, { recursive: true, force: true }));

/** The faults of a site of these files. */
function faultsOf(files: Readonly<Record<string, string>>): string[] {
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(dirname(join(site, name)), { recursive: true });
    writeFileSync(join(site, name), content);
  }
  const { status, stderr } = spawnSync(process.execPath, ['tools/site-links.mjs', site], { encoding: 'utf8' });
  const faults = stderr.split('\n').filter((line) => line !== '');
  expect(status).toBe(faults.length === 0 ? 0 : 1);
  return faults;
}

const sound = {
  'index.html':
    '<link rel="stylesheet" href="assets/a.css"/><a href="sub/page.html#a-place">on</a><a href="#here">here</a><p id="here">x</p>',
  'sub/page.html':
    '<h2 id="a-place">A place</h2><a href="../index.html">back</a><a href="..">base</a><img src="data:image/png;base64,AA==">',
  'assets/a.css': 'p { background: url("data:image/svg+xml;utf8,<svg xmlns=\'http://www.w3.org/2000/svg\'/>") }',
};

describe('the look through the built site', () => {
  it('finds nothing on a sound site', () => {
    expect(faultsOf(sound)).toEqual([]);
  });

  it.each([
    ['a page that is not there', '<a href="sub/pge.html">on</a>', 'leads nowhere: sub/pge.html'],
    [
      'a place that is not on the page',
      '<a href="sub/page.html#a-plac">on</a>',
      'no such place on the page: sub/page.html#a-plac',
    ],
    ['a place that is not on its own page', '<a href="#there">on</a>', 'no such place on the page: #there'],
    ['an asset that is not there', '<script src="assets/b.js"></script>', 'leads nowhere: assets/b.js'],
    ['a link to another host', '<a href="https://example.org/">out</a>', 'leads to another host: https://example.org/'],
    ['an asset of another host', '<img src="//example.org/a.png">', 'leads to another host: //example.org/a.png'],
    ['an equation that does not parse', '<span class="katex-error">x</span>', 'an equation does not parse'],
  ])('finds %s', (_, mark, fault) => {
    expect(faultsOf({ ...sound, 'other.html': mark })).toEqual([`other.html: ${fault}`]);
  });

  it('finds a style sheet that loads from another host', () => {
    const faults = faultsOf({ ...sound, 'assets/a.css': 'p { background: url(https://example.org/a.png) }' });
    expect(faults).toEqual(['assets/a.css: leads to another host: https://example.org/a.png']);
  });

  it('follows the addresses of the sidebar', () => {
    const nodes = [
      {
        text: 'Guides',
        children: [
          { text: 'A', path: 'sub/page.html' },
          { text: 'B', path: 'sub/gone.html' },
        ],
      },
    ];
    const data = deflateSync(JSON.stringify(nodes)).toString('base64');
    const faults = faultsOf({ ...sound, 'assets/navigation.js': `window.navigationData = "${data}"` });
    expect(faults).toEqual(['index.html: leads nowhere: sub/gone.html']);
  });
});
