import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ruleOfThumbInWords, rulesOfThumb } from '../../src/rules-of-thumb/index.ts';

const page = fs.readFileSync(new URL('../../docs/guides/rules-of-thumb.md', import.meta.url), 'utf8');

describe('the page of rules of thumb', () => {
  it('has every rule with its errors as computed today, and no other', () => {
    const lines = page.split('\n').filter((line) => line.startsWith('- '));
    expect(lines).toEqual(Object.values(rulesOfThumb).map((rule) => `- ${ruleOfThumbInWords(rule)}`));
  });
});
