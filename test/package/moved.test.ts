import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { node, root } from './packed.ts';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'groundroll-moved-'));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

/** The tarball of this very build, with one statement of its code replaced by another. */
function doctored(name: string, file: string, statement: string, other: string): string {
  const place = path.join(folder, name, 'package');
  fs.mkdirSync(place, { recursive: true });
  for (const part of ['dist', 'package.json']) {
    fs.cpSync(path.join(root, part), path.join(place, part), { recursive: true });
  }
  const text = fs.readFileSync(path.join(place, file), 'utf8');
  if (!text.includes(statement)) throw new Error(`${file} has no ${statement}`);
  fs.writeFileSync(path.join(place, file), text.replace(statement, other));
  const tarball = path.join(folder, `${name}.tgz`);
  execFileSync('tar', ['-czf', tarball, '-C', path.join(folder, name), 'package']);
  return tarball;
}

describe('the list of results that moved', () => {
  const components = 'dist/internal/wind/components.js';
  let printed: string;
  beforeAll(() => {
    const statement = 'const crosswind = speed_kt';
    const tarball = doctored('older', components, statement, 'const crosswind = 0.98 * speed_kt');
    printed = node(root, 'tools/moved.mjs', tarball);
  });

  it('has the formula with the largest change and the figure that moved most', () => {
    const row = printed.split('\n').find((line) => line.startsWith('| `wind.components` |')) ?? '';
    expect(row).toMatch(/^\| `wind\.components` \| 2 % \| \d+ of \d+ \| [\w-]+: -?[\d.]+ is now -?[\d.]+ kt \|$/);
    const [, moved, all] = /(\d+) of (\d+)/.exec(row) ?? [];
    // The crosswind has moved, the headwind beside it has not.
    expect(Number(moved)).toBeGreaterThan(3);
    expect(Number(moved)).toBeLessThanOrEqual(Number(all) / 2);
  });

  it('has the assessments that rest on it, and no formula that does not', () => {
    expect(printed).toMatch(/^\| examples\/requests\/takeoff-28\.json \| .* \| \d+ of \d+ \| /m);
    expect(printed).not.toContain('atmosphere.');
    expect(printed).not.toMatch(/^(?:Gone|New):/m);
  });

  it('is in the order of size', () => {
    const sizes = [...printed.matchAll(/^\| `[^|]+ \| ([^|]+) \|/gm)].map(([, size = '']) =>
      size === 'another answer' ? Number.POSITIVE_INFINITY : Number.parseFloat(size),
    );
    expect(sizes.length).toBeGreaterThan(1);
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
  });

  it('is empty for the same results, and for a change below the promise', () => {
    const tarball = doctored(
      'same',
      components,
      'return { headwind',
      'const crosswind_kt = crosswind;return { headwind',
    );
    const { version } = JSON.parse(fs.readFileSync(path.join(root, 'package.json'), 'utf8')) as { version: string };
    expect(node(root, 'tools/moved.mjs', tarball)).toBe(
      `Results that have moved since ${version}, relative to themselves:\n\nNo formula has moved.\n\nNo example has moved.\n`,
    );
    const slight = doctored(
      'slight',
      components,
      'const crosswind = speed_kt',
      'const crosswind = (1 + 1e-15) * speed_kt',
    );
    expect(node(root, 'tools/moved.mjs', slight)).toContain('No formula has moved.');
  });
});
