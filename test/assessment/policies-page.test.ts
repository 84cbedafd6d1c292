import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assessTakeoff, policyDefaults } from '../../src/assessment/index.ts';
import { type Changes, takeoff, takeoffRequest, totals } from './scenario.ts';

const page = fs.readFileSync(new URL('../../docs/guides/policies.md', import.meta.url), 'utf8');

describe('the page of policies', () => {
  it.each(Object.entries(policyDefaults))('has %s with its default and reason', (name, policy) => {
    const unit = 'unit' in policy ? ` ${policy.unit}` : '';
    expect(page).toContain(`| \`${name}\` | ${policy.default}${unit} | ${policy.why} |`);
  });

  it('calls nothing fixed that a policy changes', () => {
    const [fixed] = page.match(/^Fixed for every assessment.*$/m) ?? [''];
    const required = (name: string, changes: Changes) => totals(takeoff(name, changes))['safety factor'] as number;
    // 10 kt straight down runway 28: half of them by default, all of them by choice, and of 30 kt no more than the law prints.
    const headwind = (speed_kt: number, share: number) =>
      required('takeoff-28', {
        'weather.wind': {
          source: 'observed',
          from: { value: 292, unit: 'degTrue' },
          speed: { value: speed_kt, unit: 'kt' },
        },
        'policies.headwindShare': { value: share, unit: 'ratio' },
      });
    expect(headwind(10, 1)).toBeLessThan(headwind(10, 0.5));
    expect(headwind(30, 1)).toBe(headwind(40, 1));
    expect(fixed).toContain('no more headwind is used than is reported, nor than the last that the manual prints');
    // The manual prints no credit for a slope downhill, and no set gives one.
    const slope = required('takeoff-28', { 'policies.favourableSlope': 'of the manual' });
    expect(slope).toBe(required('takeoff-28', {}));
    const law = {
      change: { value: -5, unit: 'percent' },
      per: { value: 1, unit: 'percent' },
      upTo: { value: 2, unit: 'percent' },
    };
    const own = { 'performanceData.takeoff.0.corrections.favourableSlope': { ...law, percentOf: 'distance' } };
    expect(required('takeoff-28', { ...own, 'policies.favourableSlope': 'of the manual' })).toBeLessThan(slope);
    expect(fixed).toContain("no factor set gives credit for a favourable slope, and a manual's own is credited up to");
    const tailwindShare = { 'policies.tailwindShare': { value: 0.9, unit: 'ratio' } };
    expect(assessTakeoff(takeoffRequest('takeoff-28', tailwindShare)).ok).toBe(false);
    expect(fixed).toContain('a tailwind counts in full at least');
  });

  it('has no policy that does not exist', () => {
    const rows = page.match(/^\| `\w+` \|/gm) ?? [];
    expect(rows).toHaveLength(Object.keys(policyDefaults).length);
  });
});
