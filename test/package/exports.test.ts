import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { subpaths } from '../../tools/subpaths.ts';
import { root, specifiers } from './packed.ts';

describe('the exports map', () => {
  it('has one entry for every folder that is built', () => {
    const built = Object.keys(subpaths).map((name) => (name === 'index' ? 'groundroll' : `groundroll/${name}`));
    expect([...specifiers].sort()).toEqual(built.sort());
  });

  it('names files that the build writes', () => {
    const { exports } = JSON.parse(fs.readFileSync(path.join(root, 'package.json'), 'utf8'));
    const targets = Object.values<unknown>(exports).filter((target) => typeof target === 'object');
    const files = targets
      .flatMap((target) => Object.values(target as Record<string, Record<string, string>>))
      .flatMap(Object.values);
    expect(files.length).toBe(4 * specifiers.length);
    expect(files.filter((file) => !fs.existsSync(path.join(root, file)))).toEqual([]);
  });
});
