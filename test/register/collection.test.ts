import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { checkValueCollection, checkValues, compareCheckValues, formulaRecords } from '../../src/register/index.ts';
import { checkValueCollectionSchema } from '../../src/sources/check-value-collection-schema.ts';
import type { FormulaRecord } from '../../src/sources/index.ts';

describe('checkValueCollection', () => {
  const collection = checkValueCollection();

  it('passes the schema that is published with it, and loses nothing as JSON', () => {
    const json = JSON.parse(JSON.stringify(collection));
    const { success, issues } = v.safeParse(checkValueCollectionSchema, json);
    expect(success, issues?.map((issue) => `${v.getDotPath(issue)}: ${issue.message}`).join('\n')).toBe(true);
    expect(json).toEqual(collection);
  });

  it('gives every formula the bounds of its record, and a reason where there are no check values', () => {
    expect(collection.formulas).toHaveLength(formulaRecords.length);
    for (const [i, record] of formulaRecords.entries()) {
      const formula = collection.formulas[i];
      expect(formula).not.toHaveProperty('formula');
      expect(Object.keys(formula?.inputs ?? {})).toEqual(Object.keys(record.inputs));
      for (const [name, { unit, min, max }] of Object.entries(record.domain)) {
        expect(formula?.inputs[name]).toMatchObject({ unit, min, max });
      }
      const hasValues = checkValues.some((value) => value.record === record.id);
      expect(formula?.nonePublished === undefined, record.id).toBe(hasValues);
    }
  });

  it('is enough to tell a right implementation from a wrong one', () => {
    const wind = formulaRecords.find(({ id }) => id === 'wind.components') as FormulaRecord;
    const values = collection.checkValues.filter(({ record }) => record === wind.id);
    const worst = (formula: FormulaRecord['formula']) =>
      Math.max(...compareCheckValues([{ ...wind, formula }], values).map(({ share }) => share));
    const components = (x: { from: number; speed: number; direction: number }, across: 1 | -1) => {
      const angle_rad = ((x.from - x.direction) * Math.PI) / 180;
      return { headwind: x.speed * Math.cos(angle_rad), crosswind: across * x.speed * Math.sin(angle_rad) };
    };
    expect(worst((x) => components(x, 1))).toBeLessThanOrEqual(1 + 1e-9);
    expect(worst((x) => components(x, -1))).toBeGreaterThan(1);
  });
});
