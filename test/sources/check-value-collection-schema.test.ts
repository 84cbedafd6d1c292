import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { checkValueCollectionSchema } from '../../src/sources/check-value-collection-schema.ts';

/** The smallest collection with every part in it: one unit of each shape, one formula, one check value. */
const citation = { source: 'mathematics', locator: 'identity', access: 'derived' };
const collection = {
  schema: 'groundroll/check-values/2',
  version: '1.0.0',
  units: { degF: { kind: 'temperature', scale: 0.5, offset: 459.67 }, deg: { kind: 'angle', scale: 1, circle: 360 } },
  sources: { mathematics: { title: 'Mathematics', publisher: 'none', edition: 'none' } },
  formulas: [
    {
      id: 'test.echo',
      title: 'echo',
      equation: 'y = x',
      inputs: { length: { symbol: 'x', meaning: 'length', unit: 'm', min: 0, max: 1, bounds: 'the test' } },
      outputs: { result: { symbol: 'y', meaning: 'length', unit: 'm' } },
      citations: [citation],
      homogeneous: true,
      nonePublished: 'nobody publishes an echo',
    },
  ],
  checkValues: [
    {
      id: 'one',
      record: 'test.echo',
      inputs: { length: { value: 1, unit: 'm' }, word: 'grass' },
      expected: { result: { value: 1, unit: 'm', tolerance: 0.5 }, word: 'grass' },
      toleranceFrom: 'round-off',
      origin: 'definition',
      citation,
      note: 'a note',
    },
  ],
};

type Json = Record<string, unknown>;

/** The collection with one value changed, or taken away where it is undefined. */
function withValue(path: string, value: unknown): unknown {
  const copy = JSON.parse(JSON.stringify(collection)) as Json;
  const keys = path.split('.');
  const last = keys.pop() as string;
  const parent = keys.reduce<Json>((object, key) => object[key] as Json, copy);
  if (value === undefined) delete parent[last];
  else parent[last] = value;
  return copy;
}

const placesOfFaults = (json: unknown) =>
  (v.safeParse(checkValueCollectionSchema, json).issues ?? []).map((issue) => v.getDotPath(issue));

const objects = [
  'units.deg',
  'sources.mathematics',
  'formulas.0',
  'formulas.0.inputs.length',
  'formulas.0.outputs.result',
  'formulas.0.citations.0',
  'checkValues.0',
  'checkValues.0.citation',
];
const optional = new Set([
  'units.deg.circle',
  ...['unit', 'min', 'max', 'bounds'].map((key) => `formulas.0.inputs.length.${key}`),
  'formulas.0.nonePublished',
  'checkValues.0.note',
]);
const valueAt = (path: string) => path.split('.').reduce((object: unknown, key) => (object as Json)[key], collection);
const keysOf = (path: string) => Object.keys(valueAt(path) as object).map((key) => `${path}.${key}`);
const properties = [...Object.keys(collection), ...objects.flatMap(keysOf)];

describe('the schema of a collection of check values', () => {
  it('passes one with every part in it', () => {
    expect(placesOfFaults(collection)).toEqual([]);
  });

  it.each(properties)('wants %s where it is not optional', (path) => {
    expect(placesOfFaults(withValue(path, undefined))).toEqual(optional.has(path) ? [] : [path]);
  });

  it.each(['', ...objects].map((path) => (path === '' ? 'more' : `${path}.more`)))('knows no key %s', (path) => {
    expect(placesOfFaults(withValue(path, 1))).toEqual([path]);
  });

  it.each([
    ['schema', 'groundroll/check-values/1'],
    ['version', ''],
    ['units.deg.kind', ''],
    ['units.deg.scale', 0],
    ['units.deg.scale', Number.POSITIVE_INFINITY],
    ['units.deg.circle', -360],
    ['units.degF.offset', 'none'],
    ['sources.mathematics.title', ''],
    ['sources.mathematics.publisher', 1],
    ['sources.mathematics.edition', ''],
    ['formulas.0.equation', ''],
    ['formulas.0.inputs.length.min', '0'],
    ['formulas.0.inputs.length.max', Number.NaN],
    ['formulas.0.outputs.result.unit', ''],
    ['formulas.0.citations', []],
    ['formulas.0.citations.0.source', 'hearsay'],
    ['formulas.0.citations.0.access', 'guessed'],
    ['formulas.0.citations.0.locator', ''],
    ['formulas.0.homogeneous', 'yes'],
    ['checkValues.0.toleranceFrom', 'wished'],
    ['checkValues.0.origin', 'this library'],
    ['checkValues.0.citation.source', 'hearsay'],
    ['checkValues.0.expected.word', ''],
    ['checkValues.0.note', ''],
  ])('refuses %s: %j', (path, value) => {
    expect(placesOfFaults(withValue(path, value))).toEqual([path]);
  });

  it.each([
    { value: 1, unit: 'm', tolerance: 0 },
    { value: 1, unit: 'm' },
    { value: 1, tolerance: 0.5 },
    { value: Number.NaN, unit: 'm', tolerance: 0.5 },
    { value: 1, unit: 'm', tolerance: 0.5, more: 1 },
    1,
  ])('refuses to expect %j', (expected) => {
    expect(placesOfFaults(withValue('checkValues.0.expected.result', expected))).not.toEqual([]);
  });
});
