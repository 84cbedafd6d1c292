import fs from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPerformanceData } from '../../src/aircraft/index.ts';

const folder = new URL('../../examples/performance-data/', import.meta.url);
const texts = fs.readdirSync(folder).map((name) => fs.readFileSync(new URL(name, folder), 'utf8'));

// 10 000 in every run; `npm run mutations` sets a million.
const numRuns = Number(process.env['GROUNDROLL_MUTATIONS'] ?? 10_000);

type Part = Record<string, unknown>;

/** Walks into a document by a list of random numbers and changes what is found at the end of it. */
function mutate(document: unknown, steps: readonly number[], change: (parent: Part, key: string) => void): unknown {
  let part = document as Part;
  for (const step of steps) {
    const keys = Object.keys(part);
    if (keys.length === 0) break;
    const key = keys[step % keys.length] as string;
    const next = part[key];
    if (typeof next !== 'object' || next === null || step % 7 === 0) {
      change(part, key);
      return document;
    }
    part = next as Part;
  }
  return document;
}

const strange = fc.constantFrom(
  undefined,
  null,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  -1,
  0,
  1e308,
  '',
  'kg',
  '12',
  [],
  {},
  [[]],
  true,
  { value: 1, unit: 'm' },
);
const changes = fc.oneof(
  strange.map((value) => (parent: Part, key: string) => {
    parent[key] = value;
  }),
  fc.constant((parent: Part, key: string) => {
    delete parent[key];
  }),
  fc.string({ maxLength: 8 }).map((name) => (parent: Part) => {
    parent[name] = 1;
  }),
  fc.double({ min: -2, max: 3, noNaN: true }).map((factor) => (parent: Part, key: string) => {
    if (typeof parent[key] === 'number') parent[key] = (parent[key] as number) * factor;
  }),
  fc.constant((parent: Part, key: string) => {
    if (Array.isArray(parent[key])) (parent[key] as unknown[]).reverse();
  }),
  fc.constant((parent: Part, key: string) => {
    if (Array.isArray(parent[key])) (parent[key] as unknown[]).push((parent[key] as unknown[])[0]);
  }),
);

describe('a mutated performance data document', () => {
  it(`is valid or has faults, each with words: never a throw, never NaN (${numRuns} mutations)`, {
    timeout: 3_600_000,
  }, () => {
    let valid = 0;
    fc.assert(
      fc.property(
        fc.nat(texts.length - 1),
        fc.array(fc.nat(999), { minLength: 1, maxLength: 9 }),
        changes,
        (which, steps, change) => {
          const result = readPerformanceData(mutate(JSON.parse(texts[which] as string), steps, change));
          if (result.ok) valid += 1;
          const words = result.ok ? result.findings : result.faults;
          for (const { message } of words) expect(message).not.toBe('');
          if (!result.ok) expect(result.faults.length).toBeGreaterThan(0);
          if (result.ok) expect(JSON.stringify(result.value)).not.toMatch(/\bnull,"unit"|NaN|Infinity/);
        },
      ),
      { numRuns },
    );
    // Both answers occur: a mutation that never mattered, or always broke the document, would test nothing.
    expect(valid).toBeGreaterThan(numRuns / 100);
    expect(valid).toBeLessThan(numRuns * 0.9);
  });
});
