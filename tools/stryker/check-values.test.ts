import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type CheckValueFile, compareCheckValues, type FormulaRecord } from '../../src/sources/index.ts';

// The published figures of one folder alone: the register would import every folder for every mutant.
const folder = new URL(`../../src/${process.env['GROUNDROLL_FOLDER']}/`, import.meta.url);
const names = fs.readdirSync(folder, { recursive: true, encoding: 'utf8' });

const modules = await Promise.all(
  names
    .filter((name) => name.endsWith('.record.ts'))
    .map((name) => import(/* @vite-ignore */ new URL(name, folder).pathname) as Promise<Record<string, FormulaRecord>>),
);
const records = modules.flatMap((module) => Object.values(module));
const checkValues = names
  .filter((name) => name.endsWith('.check-values.json'))
  .flatMap((name) => (JSON.parse(fs.readFileSync(new URL(name, folder), 'utf8')) as CheckValueFile).checkValues);

describe('the published figures of', () => {
  it.each(records.map((record) => [record.id, record] as const))('%s', (id, record) => {
    const own = checkValues.filter((checkValue) => checkValue.record === id);
    for (const row of compareCheckValues([record], own)) expect(row.share).toBeLessThanOrEqual(1 + 1e-9);
  });
});
