import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { root } from './packed.ts';

describe('the search for mixed units', () => {
  it('finds additions, subtractions and comparisons of different tags, and only those', () => {
    const script = ['tools/mixed-tags.mjs', 'test/package/mixed-tags/fixture.ts'];
    const { status, stderr } = spawnSync(process.execPath, script, { cwd: root, encoding: 'utf8' });
    const found = stderr
      .trim()
      .split('\n')
      .map((line) => line.replace(/^.*fixture\.ts:\d+ /, ''));
    expect(found).toEqual([
      'length_ft + length_m mixes ft with m',
      'length_ft - ft(1) - length_m mixes ft with m',
      'height < elevation mixes ftHeight with ftElevation',
      'cas >= tas mixes kcas with ktas',
    ]);
    expect(status).toBe(1);
  });
});
