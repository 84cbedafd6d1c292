import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Distribution, inputUncertainties, plausibleChanges } from '../../src/study/index.ts';
import { formatValue, type UnitWord } from '../../src/units/index.ts';

const page = fs.readFileSync(new URL('../../docs/guides/studies.md', import.meta.url), 'utf8');

function figure(value: number, unit: UnitWord): string {
  return unit === 'ratio' ? String(value) : formatValue(value, unit, { decimals: Number.isInteger(value) ? 0 : 1 });
}

function spread(distribution: Distribution, unit: UnitWord): string {
  if (distribution.shape === 'rectangular')
    return `rectangular, ${figure(distribution.from, unit)} to ${figure(distribution.to, unit)}`;
  const deviation = figure(distribution.standardDeviation, distribution.shape === 'lognormal' ? 'ratio' : unit);
  return `${distribution.shape}, standard deviation ${deviation}`;
}

const changes = Object.entries(plausibleChanges).map(
  ([id, { change, why }]) => `| \`${id}\` | ${figure(change.value, change.unit)} | ${why} |`,
);
const spreads = Object.entries(inputUncertainties).map(
  ([id, { distribution, unit, why }]) => `| \`${id}\` | ${spread(distribution, unit)} | ${why} |`,
);

describe('the page of studies', () => {
  it.each([...changes, ...spreads])('has %s', (row) => expect(page).toContain(row));

  it('has no row of anything that does not exist', () => {
    const rows = page.match(/^\| `\w+` \|.*$/gm) ?? [];
    expect(rows).toEqual([...changes, ...spreads]);
  });
});
