import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from './packed.ts';

describe('the worked cases', () => {
  const { stdout, stderr, status } = spawnSync('node', [path.join(root, 'examples/cases.mjs')], {
    encoding: 'utf8',
    cwd: root,
  });
  const plain = stdout.replaceAll('\u00a0', ' ');

  it('run to their end', () => {
    expect(stderr).toBe('');
    expect(status).toBe(0);
  });

  // The figures are those of test/assessment/worked-cases.test.ts, which rebuilds them.
  it.each([
    /^Take-off on 06: undetermined; /m,
    /Surface factor: within limits up to 1\.685; beyond that the take-off distance/,
    /Mass: not within limits anywhere in the range, .*undetermined\./,
    /Assess again if .*the ground softens, /,
    /^Landing on 15: within limits; /m,
    /Assess again if .*gusts rise above 13 kt, /,
    /^Take-off on 15: outside limits; tightest is the gradient over spruces/m,
    /Mass: within limits up to 910 kg; beyond that the gradient over spruces/,
    /^Take-off on 27: outside limits; tightest is crosswind, 4 kt short\.$/m,
    /^Landing on 27: outside limits; tightest is crosswind, 4 kt short\.$/m,
    /Mass: outside limits throughout the range, .*the crosswind, 4 kt short\./,
    /Steady crosswind: within limits up to 18 kt;/,
    /^ {2}Landing on 27: within limits; tightest is crosswind, 1 kt to spare\.$/m,
  ])('print %s', (line) => {
    expect(plain).toMatch(line);
  });
});
