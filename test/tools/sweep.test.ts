import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
// @ts-expect-error: a tool without types
import { file, guide, tableOf, withTable } from '../../tools/sweep-table.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (name: string) => fs.readFileSync(path.join(root, name), 'utf8');
const measured = JSON.parse(read(file));

describe('the measured sweep', () => {
  it('is ten million take-offs, the same in one thread, over the cores and through Arrow', () => {
    expect(measured.takeoffs).toHaveLength(3);
    const [{ within, outside, undetermined, refused, runways }] = measured.takeoffs;
    for (const each of measured.takeoffs) {
      expect(each).toMatchObject({ evaluations: 10_000_000, within, outside, undetermined, refused, runways });
    }
    expect(within + outside + undetermined).toBe(10_000_000);
  });

  it('names machine, Node version, commit and date', () => {
    expect(measured.commit).toMatch(/^[0-9a-f]{10}$/);
    expect(measured.date).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(measured.node).toMatch(/^v\d+\.\d+\.\d+$/);
    expect(measured.cpu).not.toBe('');
    expect(measured.cores).toBeGreaterThan(0);
  });

  it('stands in the guide as it was measured', () => {
    expect(withTable(read(guide), measured)).toBe(read(guide));
    expect(tableOf(measured)).toContain('10\u00a0000\u00a0000');
    expect(() => withTable('nothing', measured)).toThrow('no place for the table');
  });
});
