import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { Ajv, type ValidateFunction } from 'ajv';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkValueCollection, checkValues, formulaRecords } from '../../src/register/index.ts';
import type { CheckValueCollection } from '../../src/sources/index.ts';
import { consumer, node, root } from './packed.ts';

const read = (file: string) => JSON.parse(fs.readFileSync(path.join(root, file), 'utf8'));
const built: CheckValueCollection = read('dist/check-values.json');

describe('check-values.json', () => {
  let validate: ValidateFunction;
  beforeAll(() => {
    validate = new Ajv({ strict: true, strictTypes: false, strictTuples: false }).compile(
      read('schemas/check-values.json'),
    );
  });

  it('has the form that its schema describes', () => {
    expect(validate(built), JSON.stringify(validate.errors)).toBe(true);
  });

  const output = Object.keys(built.checkValues[0]?.expected ?? {})[0];
  it.each([
    ['of another form', 'schema', 'groundroll/check-values/1'],
    ['without units', 'units', undefined],
    ['with a key too many', 'remarks', ''],
    ['with a tolerance of nothing', `checkValues.0.expected.${output}.tolerance`, 0],
    ['with a figure that is a text', `checkValues.0.expected.${output}.value`, '1'],
    ['with an unknown source', 'checkValues.0.citation.source', 'hearsay'],
    ['with an unknown origin', 'checkValues.0.origin', 'own computation'],
    ['with a formula that cites nothing', 'formulas.0.citations', []],
  ])('would not pass %s', (_name, place, value) => {
    const keys = place.split('.');
    const last = keys.pop() as string;
    const changed = structuredClone(built) as unknown as Record<string, unknown>;
    const parent = keys.reduce((at, key) => at[key] as Record<string, unknown>, changed);
    if (value === undefined) delete parent[last];
    else parent[last] = value;
    expect(validate(changed)).toBe(false);
  });

  it('is what the register holds, all of it', () => {
    expect(built).toEqual(JSON.parse(JSON.stringify(checkValueCollection())));
    expect(built.checkValues).toHaveLength(checkValues.length);
    expect(built.formulas.map(({ id }) => id)).toEqual(formulaRecords.map(({ id }) => id));
    expect(built.version).toBe(read('package.json').version);
  });

  it('names nothing that it does not hold: formulas, inputs, outputs, units, sources', () => {
    const formulas = new Map(built.formulas.map((formula) => [formula.id, formula]));
    for (const { id, record, inputs, expected, citation } of built.checkValues) {
      const formula = formulas.get(record);
      expect(formula, record).toBeDefined();
      expect(formula?.nonePublished, record).toBeUndefined();
      expect(Object.hasOwn(built.sources, citation.source), citation.source).toBe(true);
      for (const [name, input] of Object.entries(inputs)) {
        const described = formula?.inputs[name];
        expect(described, `${id}: ${name}`).toBeDefined();
        if (described?.unit === undefined) continue;
        const { unit } = input as { unit: string };
        const isDirection = described.unit === 'deg' && (unit === 'degTrue' || unit === 'degMagnetic');
        expect(isDirection || built.units[unit]?.kind === built.units[described.unit]?.kind, `${id}: ${name}`).toBe(
          true,
        );
      }
      for (const [name, figure] of Object.entries(expected)) {
        expect(Object.hasOwn(formula?.outputs ?? {}, name), `${id}: ${name}`).toBe(true);
        if (typeof figure !== 'string') expect(Object.hasOwn(built.units, figure.unit), figure.unit).toBe(true);
      }
    }
    for (const { id, citations } of built.formulas) {
      for (const { source } of citations) expect(Object.hasOwn(built.sources, source), `${id}: ${source}`).toBe(true);
    }
  });

  it('gives every kind of unit a base unit', () => {
    const kinds = new Set(Object.values(built.units).map(({ kind }) => kind));
    const bases = Object.values(built.units).filter(({ scale, offset }) => scale === 1 && offset === undefined);
    expect(new Set(bases.map(({ kind }) => kind))).toEqual(kinds);
  });

  it('marks the units that go around a circle', () => {
    const around = Object.entries(built.units).flatMap(([word, { circle }]) => (circle === undefined ? [] : [word]));
    expect(around.sort()).toEqual(['degEast', 'degLongitude', 'degMagnetic', 'degTrue']);
  });
});

describe('the packed tarball', () => {
  let project: ReturnType<typeof consumer>;
  beforeAll(() => {
    const esm = `
import collection from 'groundroll/check-values.json' with { type: 'json' };
import schema from 'groundroll/schemas/check-values.json' with { type: 'json' };
console.log(JSON.stringify([collection.checkValues.length, schema.properties.schema.const]));
`;
    const cjs = `
const collection = require('groundroll/check-values.json');
const schema = require('groundroll/schemas/check-values.json');
console.log(JSON.stringify([collection.checkValues.length, schema.properties.schema.const]));
`;
    project = consumer({ 'package.json': '{}', 'values.mjs': esm, 'values.cjs': cjs });
  });
  afterAll(() => project.remove());

  it.each(['values.mjs', 'values.cjs'])('has the check values and their schema for %s', (script) => {
    expect(JSON.parse(node(project.folder, '--no-warnings', script))).toEqual([
      checkValues.length,
      'groundroll/check-values/2',
    ]);
  });
});

describe('npm run register', () => {
  const run = (...options: string[]) =>
    execFileSync(process.execPath, ['tools/register.mjs', ...options], { cwd: root, encoding: 'utf8' });
  type Counts = { published: number; defined: number; independent: number };
  type Summary = {
    formulas: number;
    formulasWithCheckValues: number;
    checkValues: Counts;
    figures: Counts;
    largestResidual: { record: string; share: number } | null;
  };
  const report: { folders: (Summary & { folder: string })[]; total: Summary } = JSON.parse(run('--json'));
  const sum = ({ published, defined, independent }: Counts) => published + defined + independent;

  it('counts every formula and every check value once', () => {
    const { folders, total } = report;
    expect(total.formulas).toBe(formulaRecords.length);
    expect(sum(total.checkValues)).toBe(checkValues.length);
    for (const count of ['formulas', 'formulasWithCheckValues'] as const) {
      expect(folders.reduce((all, folder) => all + folder[count], 0)).toBe(total[count]);
    }
    for (const part of ['checkValues', 'figures'] as const) {
      expect(folders.reduce((all, folder) => all + sum(folder[part]), 0)).toBe(sum(total[part]));
    }
    expect(sum(total.figures)).toBe(checkValues.reduce((all, { expected }) => all + Object.keys(expected).length, 0));
  });

  it('counts the results of other programs apart from what was published', () => {
    const independent = checkValues.filter(({ origin }) => origin === 'independent-program').length;
    expect(report.total.checkValues.independent).toBe(independent);
    expect(report.total.checkValues.published).toBeGreaterThan(independent / 2);
  });

  it('names the largest residual, which is within its tolerance', () => {
    for (const { folder, largestResidual } of report.folders) {
      if (largestResidual === null) continue;
      expect(largestResidual.record.startsWith(`${folder}.`)).toBe(true);
      expect(largestResidual.share).toBeLessThanOrEqual(1 + 1e-9);
      expect(largestResidual.share).toBeLessThanOrEqual(report.total.largestResidual?.share ?? 0);
    }
  });

  it('prints one line for each folder and one for all', () => {
    const lines = run().split('\n');
    const names = lines.map((line) => /^\S+/.exec(line)?.[0]);
    for (const { folder, formulas } of report.folders) {
      expect(lines[names.indexOf(folder)]).toMatch(new RegExp(`^${folder}\\s+${formulas} `));
    }
    expect(lines[names.indexOf('total')]).toMatch(new RegExp(`^total\\s+${report.total.formulas} `));
  });
});
