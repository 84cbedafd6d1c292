import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { factorSets } from '../../src/distance/index.ts';
import { factorRows } from './factor-rows.ts';

const page = fs.readFileSync(new URL('../../docs/guides/factor-sets.md', import.meta.url), 'utf8');

describe('the page of factor sets', () => {
  it.each(Object.values(factorSets))('has every figure of $title, and no other', (set) => {
    const part = page.split(`\n### ${set.title}\n`)[1]?.split('\n### ')[0] ?? '';
    const rows = part.split('\n').filter((line) => /^\| (take-off|landing) \|/.test(line));
    expect(rows).toEqual(factorRows(set));
    expect(part).toContain(`${set.edition}: ${set.scope}.`);
  });

  it('has no set that does not exist', () => {
    expect(page.match(/^### .*/gm)).toHaveLength(Object.keys(factorSets).length);
  });
});
