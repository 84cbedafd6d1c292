import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { node, root } from './packed.ts';

const recorded = fs.readFileSync(path.join(root, 'test/package/tarball-contents.txt'), 'utf8');
const files = recorded.trimEnd().split('\n');
const read = (folder: string, file: string) => fs.readFileSync(path.join(folder, file));

describe('what the tarball holds', () => {
  it('is the committed list of files; `npm run sizes` renews it', () => {
    expect(node(root, 'tools/tarball-contents.mjs').split('\n')).toEqual(recorded.split('\n'));
  });

  it('has names that no change of content changes, and nothing but code, types, data and words', () => {
    const odd = files.filter((file) => !/^(?:dist|schemas)\/[a-z0-9./-]+\.(?:c?js|d\.c?ts|json)$/.test(file));
    const words = /^(?:[A-Z]+(?:\.md)?|package\.json|dist\/third-party-notices\.md)$/;
    expect(odd.filter((file) => !words.test(file))).toEqual([]);
    expect(files.filter((file) => /chunk-|-[A-Za-z0-9_]{8}\.d\.c?ts$/.test(path.basename(file)))).toEqual([]);
  });

  it('says nothing of the machine that built it', () => {
    const places = [root.replace(/\/$/, ''), os.homedir(), `//# sourceMappingURL`];
    const telling = files.filter((file) => {
      const text = read(root, file).toString('utf8');
      return places.some((place) => place.length > 1 && text.includes(place));
    });
    expect(telling).toEqual([]);
  });
});

describe('a second build, at another place', () => {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'groundroll-second-build-'));
  afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

  it('gives the same bytes, but for the declarations, which `npm run pack:verify` compares', () => {
    for (const part of ['src', 'tools', 'package.json', 'tsconfig.json', 'tsup.config.ts']) {
      fs.cpSync(path.join(root, part), path.join(folder, part), { recursive: true });
    }
    fs.symlinkSync(path.join(root, 'node_modules'), path.join(folder, 'node_modules'));
    const run = (...words: string[]) => execFileSync(process.execPath, words, { cwd: folder, stdio: 'pipe' });
    run('node_modules/tsup/dist/cli-default.js', '--config', 'tsup.config.ts', '--no-dts', '--silent');
    for (const tool of ['name-files', 'schemas', 'check-values']) run(`tools/${tool}.mjs`);
    const built = files.filter((file) => /^(?:dist|schemas)\/.*\.(?:c?js|json)$/.test(file));
    expect(built.length).toBeGreaterThan(500);
    expect(built.filter((file) => !read(folder, file).equals(read(root, file)))).toEqual([]);
  });
});
