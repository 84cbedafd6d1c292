import { beforeAll, describe, expect, it } from 'vitest';
import { isBrowserMissing } from '../browser.ts';
import { node, root } from './packed.ts';

interface Comparison {
  readonly numbers: number;
  readonly greatest: number;
  readonly otherTexts: number;
  readonly beyond: readonly string[];
}

let found: { formulas: number; answered: number; platforms: Record<string, Comparison | { missing: string }> };

// A few inputs for each formula, on what is installed; `npm run platforms` takes thousands, and other Nodes besides.
beforeAll(() => {
  found = JSON.parse(node(root, 'tools/platforms.mjs', '--quick', '--json'));
});

describe('the results of this Node', () => {
  it('cover every formula and every example', () => {
    expect(found.formulas).toBeGreaterThan(200);
    expect(found.answered).toBeGreaterThan(10_000);
  });

  const same = (name: string) => {
    const platform = found.platforms[name];
    expect(platform).not.toHaveProperty('missing');
    expect(platform).toMatchObject({ beyond: [], otherTexts: 0 });
    expect((platform as Comparison).numbers).toBeGreaterThan(40_000);
    expect((platform as Comparison).greatest).toBeLessThanOrEqual(1e-12);
  };
  it('are those of Deno to 1e-12, with the same words', () => same('Deno'));
  it.skipIf(isBrowserMissing)('are those of Chromium to 1e-12, with the same words', () => same('Chromium'));
});
