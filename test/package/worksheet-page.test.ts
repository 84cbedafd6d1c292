import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { root } from './packed.ts';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'groundroll-pages-'));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

describe('the example that writes pages', () => {
  const target = path.join(folder, 'new', 'pages');
  const script = path.join(root, 'examples/worksheet-page.mjs');
  const { status, stdout, stderr } = spawnSync('node', [script, target], { encoding: 'utf8', cwd: folder });

  it('writes the four worksheets for two papers, and the runway distance table, into the folder named', () => {
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(fs.readdirSync(target).sort()).toEqual([
      'landing-10-a6.html',
      'landing-10.html',
      'landing-28-a6.html',
      'landing-28.html',
      'runway-table-28.html',
      'takeoff-10-a6.html',
      'takeoff-10.html',
      'takeoff-28-a6.html',
      'takeoff-28.html',
    ]);
    expect(stdout).toContain('takeoff-10.html: Take-off on 10: outside limits');
  });

  it('writes pages with figures, formulas and check values', () => {
    const page = fs.readFileSync(path.join(target, 'takeoff-10.html'), 'utf8');
    expect(page.startsWith('<!doctype html>')).toBe(true);
    expect(page.match(/<svg /g)).toHaveLength(3);
    expect(page).toContain('<math display="block">');
    expect(page).toContain('figures of others to compare with, ');
    expect(fs.readFileSync(path.join(target, 'takeoff-10-a6.html'), 'utf8')).toContain('size:105mm 148mm');
  });
});
