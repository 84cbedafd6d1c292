import { execFileSync, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const parent = fs.mkdtempSync(path.join(os.tmpdir(), 'groundroll-release-'));
afterAll(() => fs.rmSync(parent, { recursive: true, force: true }));

let folder = '';
const at = (file: string) => path.join(folder, file);
const read = (file: string) => fs.readFileSync(at(file), 'utf8');
const write = (file: string, text: string) => {
  fs.mkdirSync(path.dirname(at(file)), { recursive: true });
  fs.writeFileSync(at(file), text);
};
const git = (...words: string[]) =>
  execFileSync('git', ['-c', 'user.name=test', '-c', 'user.email=test', ...words], { cwd: folder, stdio: 'pipe' });
const commit = () => {
  git('add', '-A');
  git('commit', '--quiet', '--allow-empty', '-m', 'test');
};
const run = (...words: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, words, { cwd: folder, encoding: 'utf8' });
  return { status, printed: `${stdout}${stderr}` };
};
const note = (weight: string, words: string) => `---\n'groundroll': ${weight}\n---\n\n${words}\n`;

/** A repository with what the version stands in, and nothing else. */
beforeEach(() => {
  folder = fs.mkdtempSync(path.join(parent, 'repository-'));
  write('package.json', '{\n  "name": "groundroll",\n  "version": "0.0.0",\n  "keywords": ["one", "two"]\n}\n');
  write(
    'package-lock.json',
    '{\n  "name": "groundroll",\n  "version": "0.0.0",\n  "packages": { "": { "version": "0.0.0" } }\n}\n',
  );
  write('src/version.ts', `export const version = '0.0.0';\n`);
  write('.gitignore', 'node_modules\n');
  for (const file of ['CHANGELOG.md', 'tools/changelog.cjs', 'tools/next-version.mjs', 'tools/release.mjs']) {
    write(file, fs.readFileSync(path.join(root, file), 'utf8'));
  }
  write('.changeset/config.json', fs.readFileSync(path.join(root, '.changeset/config.json'), 'utf8'));
  // What has been released already is not what this is about.
  write('CHANGELOG.md', read('CHANGELOG.md').split('\n## ')[0] as string);
  fs.symlinkSync(path.join(root, 'node_modules'), at('node_modules'));
  git('init', '--quiet', '--initial-branch=main');
});

describe('the next version', () => {
  it('is made of the notes, with the introduction of the changelog above the newest', () => {
    const [title, ...introduction] = read('CHANGELOG.md').trimEnd().split('\n');
    write(
      '.changeset/one.md',
      note('minor', '**Wind.** Moved figures:\n\n| formula | change |\n|---|---|\n| `a` | 2 % |'),
    );
    write('.changeset/two.md', note('patch', 'Words.'));
    commit();
    expect(run('tools/next-version.mjs').status).toBe(0);
    write('.changeset/three.md', note('patch', 'Later words.'));
    expect(run('tools/next-version.mjs').status).toBe(0);
    const changelog = read('CHANGELOG.md');
    expect(changelog.startsWith([title, ...introduction].join('\n'))).toBe(true);
    expect(changelog.split(introduction.join('\n'))).toHaveLength(2);
    expect(changelog.match(/^#.*$/gm)).toEqual([
      title,
      expect.stringMatching(/^## 0\.1\.1, \d{4}-\d{2}-\d{2}$/),
      '### Mended',
      expect.stringMatching(/^## 0\.1\.0, /),
      '### New and changed',
      '### Mended',
    ]);
    expect(changelog).toMatch(/^- \*\*Wind\.\*\* Moved figures:$/m);
    expect(changelog).toMatch(/^ {2}\| `a` +\| 2 % +\|$/m);
    expect(fs.readdirSync(at('.changeset'))).toEqual(['config.json']);
  });

  it('stands wherever a version stands, and changes nothing else', () => {
    const before = read('package.json');
    write('.changeset/one.md', note('minor', 'Words.'));
    commit();
    run('tools/next-version.mjs');
    expect(read('package.json')).toBe(before.replace('0.0.0', '0.1.0'));
    expect(read('src/version.ts')).toBe(`export const version = '0.1.0';\n`);
    const { version, packages } = JSON.parse(read('package-lock.json'));
    expect([version, packages[''].version]).toEqual(['0.1.0', '0.1.0']);
  });

  it('is none without a note', () => {
    commit();
    expect(run('tools/next-version.mjs')).toMatchObject({ status: 1 });
    expect(read('package.json')).toContain('"version": "0.0.0"');
  });
});

describe('a release', () => {
  const look = () => run('tools/release.mjs', '--only-look');
  const released = () => {
    write('.changeset/one.md', note('minor', 'Words.'));
    commit();
    run('tools/next-version.mjs');
    commit();
  };

  it('may begin once the version is made and committed', () => {
    released();
    expect(look()).toEqual({
      status: 0,
      printed: expect.stringMatching(/^groundroll 0\.1\.0 at \w+ can be released\n$/),
    });
    git('tag', 'v0.1.0');
    expect(look().status).toBe(0);
  });

  it.each([
    ['a change is not committed', () => write('src/other.ts', ''), /not clean/],
    ['a note is left', () => write('.changeset/more.md', note('patch', 'More.')), /1 notes are in no version/],
    [
      'the lock file is of another version',
      () => write('package-lock.json', '{"version":"0.0.9","packages":{"":{}}}'),
      /package-lock/,
    ],
    ['the library says another version', () => write('src/version.ts', `'0.0.9'`), /src\/version\.ts/],
    ['the changelog says nothing', () => write('CHANGELOG.md', '# Changelog\n'), /nothing of 0\.1\.0/],
    [
      'the version is a preliminary one',
      () => write('package.json', '{"name":"groundroll","version":"0.1.0-rc"}'),
      /no version to release/,
    ],
  ] as const)('is refused when %s', (name, spoil, words) => {
    released();
    spoil();
    if (name !== 'a change is not committed') commit();
    const { status, printed } = look();
    expect(status).toBe(1);
    expect(printed).toMatch(words);
  });

  it('is refused before there is a version, and when its tag stands elsewhere', () => {
    commit();
    expect(look().printed).toContain('0.0.0 is no version to release');
    released();
    git('tag', 'v0.1.0');
    commit();
    expect(look().printed).toContain('the tag v0.1.0 stands at another commit');
  });
});
