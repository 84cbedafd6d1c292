import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from './packed.ts';

/** Runs an example of the built package as its user would. */
function run(script: string, ...args: string[]) {
  return spawnSync('node', [path.join(root, 'examples', script), ...args], { encoding: 'utf8', cwd: root });
}

function broken(change: (request: Record<string, unknown>) => void) {
  const request = JSON.parse(fs.readFileSync(path.join(root, 'examples/requests/takeoff-28.json'), 'utf8'));
  request.performanceData = path.join(root, 'examples/performance-data/corran-four.json');
  change(request);
  const file = path.join(fs.mkdtempSync(path.join(os.tmpdir(), 'groundroll-demo-')), 'request.json');
  fs.writeFileSync(file, JSON.stringify(request));
  return run('demo.mjs', file);
}

describe('the demo', () => {
  it('prints the four worksheets with their verdicts', () => {
    const { stdout, status } = run('demo.mjs');
    expect(status).toBe(0);
    const heads = stdout.match(/^(Take-off|Landing) on \d\d: (within|outside) limits/gm);
    expect(heads).toEqual([
      'Take-off on 28: within limits',
      'Take-off on 10: outside limits',
      'Landing on 10: within limits',
      'Landing on 28: outside limits',
    ]);
  });

  it('prints what the README shows', () => {
    const { stdout } = run('demo.mjs', 'examples/requests/takeoff-28.json');
    const shown =
      /```text\n([\s\S]*?)\n```/.exec(fs.readFileSync(path.join(root, 'README.md'), 'utf8'))?.[1] ?? 'nothing';
    expect(stdout.startsWith(shown)).toBe(true);
  });

  it('lists every fault of a broken request and ends with code 2', () => {
    const { stderr, stdout, status } = broken((request) => {
      request['mass'] = { value: 'heavy', unit: 'kg' };
      request['colour'] = 'red';
    });
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toContain('mass.value: ');
    expect(stderr).toContain('colour: ');
  });

  it('ends with code 2 for a file that is not there', () => {
    expect(run('demo.mjs', 'no-such-file.json').status).toBe(2);
  });
});

describe('the example with a variation from the model', () => {
  it('comes to the same verdict as with true directions', () => {
    const { stdout, status } = run('variation.mjs');
    expect(status).toBe(0);
    expect(stdout).toContain('Take-off on 28: within limits');
  });
});
