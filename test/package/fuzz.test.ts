import { describe, expect, it } from 'vitest';
import { node, root } from './packed.ts';

interface Result {
  readonly name: string;
  readonly ok: number;
  readonly refused: number;
  readonly problems: readonly unknown[];
}

describe('every public reader', () => {
  // A thousand inputs for each in every run; `npm run fuzz` gives each a million. It stops where one has no inputs.
  it('gives a value without NaN or faults with words, changes nothing, keeps nothing and is quick', () => {
    const inputs = 1000;
    const results: Result[] = JSON.parse(node(root, 'tools/fuzz/run.mjs', 'all', String(inputs), '--json'));
    expect(results.length).toBeGreaterThan(10);
    for (const { name, ok, refused, problems } of results) {
      expect.soft(problems, name).toEqual([]);
      expect.soft(ok + refused, name).toBe(inputs);
      // Both answers occur: inputs that are all alike would find nothing.
      expect.soft(ok, name).toBeGreaterThan(inputs / 100);
      expect.soft(refused, name).toBeGreaterThan(inputs / 10);
    }
  });
});
