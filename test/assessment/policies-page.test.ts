import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { policyDefaults } from '../../src/assessment/index.ts';

const page = fs.readFileSync(new URL('../../docs/guides/policies.md', import.meta.url), 'utf8');

describe('the page of policies', () => {
  it.each(Object.entries(policyDefaults))('has %s with its default and reason', (name, policy) => {
    const unit = 'unit' in policy ? ` ${policy.unit}` : '';
    expect(page).toContain(`| \`${name}\` | ${policy.default}${unit} | ${policy.why} |`);
  });

  it('has no policy that does not exist', () => {
    const rows = page.match(/^\| `\w+` \|/gm) ?? [];
    expect(rows).toHaveLength(Object.keys(policyDefaults).length);
  });
});
