import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { checkValues, formulaRecords } from '../../src/register/index.ts';
import { type Access, bibliography, type CheckValue } from '../../src/sources/index.ts';
import { convert, isUnitWord } from '../../src/units/unit-table.ts';

const src = fileURLToPath(new URL('../../src', import.meta.url));
const files = (fs.readdirSync(src, { recursive: true }) as string[])
  .filter((name) => name.endsWith('.check-values.json'))
  .sort();

const accessWords = [
  'read',
  'second-hand',
  'recalled',
  'common-practice',
  'derived',
  'policy',
] as const satisfies readonly Access[];
const filled = v.pipe(v.string(), v.trim(), v.nonEmpty());
const unit = v.pipe(v.string(), v.check(isUnitWord, 'not a unit word'));
const number = v.pipe(v.number(), v.finite());
const citation = v.strictObject({
  source: v.picklist(Object.keys(bibliography)),
  locator: filled,
  access: v.picklist(accessWords),
});
const checkValueFile = v.strictObject({
  schema: v.literal('groundroll/check-values/1'),
  checkValues: v.pipe(
    v.array(
      v.strictObject({
        id: filled,
        record: v.picklist(formulaRecords.map(({ id }) => id)),
        inputs: v.record(v.string(), v.unknown()),
        expected: v.pipe(
          v.record(
            v.string(),
            v.union([filled, v.strictObject({ value: number, unit, tolerance: v.pipe(number, v.gtValue(0)) })]),
          ),
          v.check((expected) => Object.keys(expected).length > 0, 'expects nothing'),
        ),
        toleranceFrom: v.picklist([
          'half-last-digit',
          'stated-by-source',
          'round-off',
          'chart-reading',
        ] satisfies CheckValue['toleranceFrom'][]),
        origin: v.picklist([
          'printed-table',
          'worked-example',
          'official-test-values',
          'independent-program',
          'definition',
          'common-practice',
        ] satisfies CheckValue['origin'][]),
        citation,
        note: v.optional(filled),
      }),
    ),
    v.nonEmpty(),
  ),
});

/** Every `{ value, unit }` among the inputs, however deep, with its place. */
function measuresIn(inputs: unknown, place: string): { value: unknown; unit: string; place: string }[] {
  if (typeof inputs !== 'object' || inputs === null) return [];
  if ('value' in inputs && 'unit' in inputs) return [{ value: inputs.value, unit: String(inputs.unit), place }];
  return Object.entries(inputs).flatMap(([name, input]) => measuresIn(input, place === '' ? name : `${place}.${name}`));
}

describe.each(files)('%s', (file) => {
  const document: unknown = JSON.parse(fs.readFileSync(path.join(src, file), 'utf8'));

  it('has the form of a file of check values, its citations in the bibliography', () => {
    const { success, issues } = v.safeParse(checkValueFile, document);
    expect(success, issues?.map((issue) => `${v.getDotPath(issue)}: ${issue.message}`).join('\n')).toBe(true);
  });

  it('is among the check values of the register', () => {
    const registered = new Set(checkValues.map(({ record, id }) => `${record} ${id}`));
    const { checkValues: own } = document as { checkValues: CheckValue[] };
    expect(own.filter(({ record, id }) => !registered.has(`${record} ${id}`))).toEqual([]);
  });

  it('gives every quantity in a unit that its record understands', () => {
    const { checkValues: own } = document as { checkValues: CheckValue[] };
    for (const { id, record: recordId, inputs, expected } of own) {
      const record = formulaRecords.find((candidate) => candidate.id === recordId);
      for (const { value, unit: word, place } of measuresIn(inputs, '')) {
        const wanted = record?.domain[place]?.unit ?? 'no such input';
        const isDirection = wanted === 'deg' && (word === 'degTrue' || word === 'degMagnetic');
        const converts = isUnitWord(word) && isUnitWord(wanted) && convert(0, word, wanted) !== undefined;
        expect(isDirection || converts, `${id}: ${place} in ${word}, wanted ${wanted}`).toBe(true);
        expect(value, `${id}: ${place}`).toSatisfy(Number.isFinite);
      }
      for (const [output, measure] of Object.entries(expected)) {
        const given = record?.outputs[output]?.unit ?? 'no such output';
        const word = typeof measure === 'string' ? 'text' : measure.unit;
        const converts = isUnitWord(word) && isUnitWord(given) && convert(0, given, word) !== undefined;
        const fits = word === given || (given === 'data' && isUnitWord(word)) || converts;
        expect(fits, `${id}: ${output} in ${word}, the formula gives ${given}`).toBe(true);
      }
    }
  });
});

describe('formula records', () => {
  it.each(formulaRecords.map((record) => [record.id, record] as const))(
    '%s: cites what is in the bibliography',
    (_id, record) => {
      expect(record.citations.length).toBeGreaterThan(0);
      for (const cited of record.citations) expect(v.safeParse(citation, cited).issues).toBeUndefined();
    },
  );

  it.each(formulaRecords.map((record) => [record.id, record] as const))(
    '%s: bounds and symbols are complete',
    (_id, record) => {
      for (const [name, { unit: word, min, max, source }] of Object.entries(record.domain)) {
        expect(isUnitWord(word), `${name}: ${word}`).toBe(true);
        expect(min, name).toBeLessThan(max);
        expect(Number.isFinite(min) && Number.isFinite(max), name).toBe(true);
        expect(source.trim(), name).not.toBe('');
        expect(record.inputs[name]?.symbol.trim(), name).toBeTruthy();
      }
      for (const { unit: word } of Object.values(record.outputs))
        expect(isUnitWord(word) || word === 'text' || word === 'data', word).toBe(true);
      expect(record.equation.trim()).not.toBe('');
    },
  );

  it('have ids of their own', () => {
    const ids = formulaRecords.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('are all in the register', () => {
    const written = (fs.readdirSync(src, { recursive: true }) as string[])
      .filter((name) => name.endsWith('.record.ts'))
      .flatMap((name) =>
        [...fs.readFileSync(path.join(src, name), 'utf8').matchAll(/^\s+id: '([^']+)'/gm)].map(([, id]) => id),
      );
    expect(written.sort()).toEqual(formulaRecords.map(({ id }) => id).sort());
  });

  it('leave no source uncited', () => {
    const cited = new Set<string>(
      [...formulaRecords.flatMap(({ citations }) => citations), ...checkValues.map((value) => value.citation)].map(
        ({ source }) => source,
      ),
    );
    const text = (fs.readdirSync(src, { recursive: true }) as string[])
      .filter((name) => name.endsWith('.ts') && !name.endsWith('bibliography.ts'))
      .map((name) => fs.readFileSync(path.join(src, name), 'utf8'))
      .join('\n');
    expect(Object.keys(bibliography).filter((key) => !cited.has(key) && !text.includes(`source: '${key}'`))).toEqual(
      [],
    );
  });
});
