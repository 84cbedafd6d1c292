import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { consumer, node, root } from './packed.ts';

let project: ReturnType<typeof consumer>;
let folder: string;

beforeAll(() => {
  project = consumer({ 'package.json': '{}' }, ['tinypool', 'apache-arrow']);
  for (const each of ['columns', 'requests', 'performance-data']) {
    fs.cpSync(path.join(root, 'examples', each), path.join(project.folder, each), { recursive: true });
  }
  folder = path.join(project.folder, 'columns');
});
afterAll(() => project.remove());

const json = (...words: string[]) => JSON.parse(node(folder, ...words, '--json'));

describe('the examples of columns, run from the packed tarball', () => {
  it('find the same in one thread, over the cores and through Arrow', () => {
    const sweeps = ['sweep.mjs', 'sweep-over-cores.mjs', 'sweep-arrow.mjs'].map((program) => json(program));
    const [one, ...others] = sweeps.map(
      ({ name: _, threads: __, seconds: ___, processorSeconds: ____, perSecond: _____, ...found }) => found,
    );
    expect(one).toMatchObject({ evaluations: 100_000, runways: 12 });
    for (const other of others) expect(other).toEqual(one);
    const { within, outside, undetermined, refused } = one;
    expect(within + outside + undetermined).toBe(100_000);
    expect(Math.min(within, outside)).toBeGreaterThan(10_000);
    // One report in a thousand has no temperature.
    expect(refused).toBeGreaterThan(50);
    expect(refused).toBeLessThan(200);
    expect(undetermined).toBeGreaterThanOrEqual(refused);
  });

  it('do as many as they are asked for, whatever is left of the last year', () => {
    const ask = ['--evaluations', '8761'];
    const sweeps = ['sweep.mjs', 'sweep-over-cores.mjs', 'sweep-arrow.mjs'].map((program) => json(program, ...ask));
    for (const sweep of sweeps) expect(sweep).toMatchObject({ evaluations: 8761, runways: 2 });
    expect(new Set(sweeps.map(({ required_m }) => required_m)).size).toBe(1);
  });

  it('print what they found, and how long it took', () => {
    const printed = node(folder, 'sweep.mjs', '--evaluations', '1000').trim().split('\n');
    expect(printed[0]).toBe('1 000 take-offs on 1 runway ends, in one thread (1)');
    expect(printed[1]).toMatch(/^\d+\.\d % within, \d+\.\d % outside, \d+\.\d % undetermined$/);
    expect(printed[3]).toMatch(/^\d+\.\d\d s, of processors \d+\.\d\d s; [\d ]+ take-offs a second$/);
    const arrow = node(folder, 'sweep-arrow.mjs', '--evaluations', '1000').trim().split('\n');
    expect(arrow[4]).toMatch(/^1000 rows for the first runway end, \d+ without a distance/);
    expect(Object.keys(JSON.parse(arrow[5] as string))).toEqual([
      'verdict',
      'takeoff_distance_required_m',
      'takeoff_distance_margin_m',
    ]);
  });

  it('show single formulas', () => {
    const printed = node(folder, 'formulas.mjs', '--evaluations', '1').trim().split('\n');
    expect(printed).toHaveLength(6);
    expect(printed[0]).toMatch(/^crosswind from the right: at most \d+\.\d kt$/);
    expect(printed[1]).toMatch(/^density altitude: at most \d+\.\d ft, [1-9]\d* hours refused$/);
  });

  it('refuse to guess how many are meant', () => {
    expect(() => node(folder, 'sweep.mjs', '--evaluations', 'many')).toThrow(/--evaluations: a whole number/);
  });
});
