import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import {
  calendarDate,
  faultLine,
  finiteNumber,
  measureSchema,
  numberWithin,
  readDocument,
  schemaVersion,
  text,
} from '../../src/documents/index.ts';

const faultsOf = (schema: v.GenericSchema<unknown, unknown>, json: unknown) => {
  const read = readDocument(schema, json);
  return read.ok ? [] : read.faults;
};
const part = v.strictObject({ name: text, inner: v.array(v.strictObject({ value: finiteNumber })) });

describe('readDocument', () => {
  it('gives the value, a copy of what it was given', () => {
    const json = { name: 'a', inner: [{ value: 1 }] };
    const read = readDocument(part, json);
    expect(read).toEqual({ ok: true, value: json });
    expect(read.ok && read.value).not.toBe(json);
  });

  it('names every fault by its path from the top', () => {
    const json = { name: '', inner: [{ value: 1 }, { value: 'x', more: 1 }], more: 1 };
    expect(faultsOf(part, json)).toEqual([
      { path: 'name', message: 'is empty' },
      { path: 'inner[1].value', message: '"x" is not a number' },
      { path: 'inner[1].more', message: 'is not a key of this document' },
      { path: 'more', message: 'is not a key of this document' },
    ]);
    expect(faultsOf(part, {})).toEqual([
      { path: 'name', message: 'is missing' },
      { path: 'inner', message: 'is missing' },
    ]);
    expect(faultsOf(part, { name: undefined, inner: [{ value: 1, more: undefined }] })).toEqual([
      { path: 'name', message: 'is undefined: a key without a value is left out' },
      { path: 'inner[0].more', message: 'is not a key of this document' },
    ]);
    expect(faultsOf(v.array(text), [1])).toEqual([{ path: '[0]', message: '1 is not a text' }]);
    expect(faultsOf(part, 7)).toEqual([{ path: '', message: '7 is not an object' }]);
    expect(faultsOf(v.array(text), {})).toEqual([{ path: '', message: 'an object is not a list' }]);
    expect(faultsOf(v.boolean(), [])).toEqual([{ path: '', message: 'a list is not true or false' }]);
    expect(faultsOf(v.literal('m'), 'ft')).toEqual([{ path: '', message: '"ft" is not "m"' }]);
    expect(faultsOf(v.picklist(['m', 'ft']), 'miles')).toEqual([{ path: '', message: '"miles" is none of "m", "ft"' }]);
  });

  it('has the word of a schema that says by itself what is wrong', () => {
    const own = v.custom<string>((input) => input === 'x', 'is not x');
    expect(faultsOf(v.strictObject({ a: own }), { a: 'y' })).toEqual([{ path: 'a', message: 'is not x' }]);
    expect(faultsOf(v.strictObject({ a: own }), {})).toEqual([{ path: 'a', message: 'is missing' }]);
  });
});

describe('the version of a document', () => {
  const document = v.strictObject({ schema: v.literal('groundroll/thing/3'), a: v.number() });

  it('is said at once where it is another, and nothing else is', () => {
    const message = (words: string) => [
      { path: 'schema', message: `${words} than version 3, the one that is read here` },
    ];
    expect(faultsOf(document, { schema: 'groundroll/thing/2' })).toEqual(message('version 2 is older'));
    expect(faultsOf(document, { schema: 'groundroll/thing/4' })).toEqual(message('version 4 is newer'));
    expect(faultsOf(document, { schema: 'groundroll/thing/3' })).toEqual([{ path: 'a', message: 'is missing' }]);
    expect(faultsOf(document, { schema: 'groundroll/other/2' }).map(({ path }) => path)).toEqual(['schema', 'a']);
  });

  it.each([
    ['groundroll/thing/12', 12],
    ['groundroll/thing/123456', 123_456],
    ['groundroll/thing/1234567', undefined],
    ['groundroll/thing/', undefined],
    ['groundroll/thing/1e3', undefined],
    ['groundroll/thing/-1', undefined],
    ['groundroll/things/1', undefined],
    ['a groundroll/thing/1', undefined],
    [1, undefined],
    [['groundroll/thing/1'], undefined],
  ])('of %j is %j', (schema, version) => {
    expect(schemaVersion({ schema }, 'thing')).toBe(version);
  });

  it.each([null, undefined, 'groundroll/thing/1', 1, {}])('of %j is none', (json) => {
    expect(schemaVersion(json, 'thing')).toBeUndefined();
  });
});

describe('the size of a document', () => {
  const any = v.unknown();
  const nested = (levels: number): unknown => (levels === 0 ? 1 : [nested(levels - 1)]);

  it('ends at 60 entries of a list', () => {
    expect(faultsOf(any, { list: new Array(60).fill(1) })).toEqual([]);
    expect(faultsOf(any, { list: new Array(61).fill(1) })).toEqual([
      { path: 'list', message: 'a list of 61 entries is longer than 60' },
    ]);
  });

  it('ends at 15 levels, the top among them', () => {
    expect(faultsOf(any, nested(15))).toEqual([]);
    expect(faultsOf(any, nested(16))).toEqual([{ path: '[0]'.repeat(15), message: 'nested deeper than 14 levels' }]);
  });

  it('ends at 2000 characters of a text and of a key', () => {
    expect(faultsOf(any, { a: { b: 'x'.repeat(2000) } })).toEqual([]);
    expect(faultsOf(any, { ['k'.repeat(2000)]: 1 })).toEqual([]);
    expect(faultsOf(any, { a: { b: 'x'.repeat(2001) } })).toEqual([
      { path: 'a.b', message: 'a text of 2001 characters is longer than 2000' },
    ]);
    expect(faultsOf(any, { a: { ['k'.repeat(2001)]: 1 } })).toEqual([
      { path: 'a', message: 'a key of 2001 characters is longer than 2000' },
    ]);
  });

  it('ends at 40 000 values, the document itself among them', () => {
    const values = (count: number) => Object.fromEntries(Array.from({ length: count - 1 }, (_, i) => [`k${i}`, i]));
    const full = [{ path: 'k39999', message: 'the document has more than 40000 values' }];
    expect(faultsOf(any, values(40_000))).toEqual([]);
    expect(faultsOf(any, { ...values(39_999), last: 'a text' })).toEqual([]);
    expect(faultsOf(any, values(40_001))).toEqual(full);
    expect(faultsOf(any, values(40_002))).toEqual([{ ...full[0], path: '' }]);
  });

  it('counts a list as one value and each of its entries as one', () => {
    // 1 document, 655 lists of 60 entries and 44 numbers: 1 + 655 x 61 + 44 = 40 000.
    const lists = Array.from({ length: 655 }, (_, i) => [`list ${i}`, new Array(60).fill(1)]);
    const numbers = Array.from({ length: 44 }, (_, i) => [`number ${i}`, 1]);
    const full = Object.fromEntries([...lists, ...numbers]);
    expect(faultsOf(any, full)).toEqual([]);
    expect(faultsOf(any, { ...full, more: 1 })).toHaveLength(1);
  });

  it('counts nothing but plain objects', () => {
    const inherited = [{ path: 'a', message: 'is not a plain object: only its own values are looked at' }];
    expect(faultsOf(any, { a: Object.create({ b: 1 }) })).toEqual(inherited);
    expect(faultsOf(any, { a: new (class Wind {})() })).toEqual(inherited);
    expect(faultsOf(any, { a: Object.create(null) })).toEqual([]);
  });
});

describe('the parts of documents', () => {
  it('measures: a value within the bounds, stated in the first unit and converted to the others', () => {
    const length = measureSchema(['m', 'ft'], 100, 5000);
    expect(faultsOf(length, { value: 100, unit: 'm' })).toEqual([]);
    expect(faultsOf(length, { value: 5000, unit: 'm' })).toEqual([]);
    expect(faultsOf(length, { value: 99, unit: 'm' })).toEqual([
      { path: 'value', message: '99 m is not within 100 to 5000 m' },
    ]);
    // 100 m is 328.084 ft, by the definition of the foot.
    expect(faultsOf(length, { value: 328, unit: 'ft' })).toEqual([
      { path: 'value', message: '328 ft is not within 328.084 to 16404.2 ft' },
    ]);
    expect(faultsOf(length, { value: 1, unit: 'kg' }).map(({ path }) => path)).toEqual(['unit']);
    expect(faultsOf(length, { value: Number.NaN, unit: 'm' })).toHaveLength(1);
    expect(faultsOf(length, { value: Number.POSITIVE_INFINITY, unit: 'm' })).toHaveLength(1);
    expect(faultsOf(length, { value: 200, unit: 'm', per: 1 })).toHaveLength(1);
  });

  it('measures in one unit alone: value and unit are looked at together', () => {
    const length = measureSchema(['m'], 100, 5000);
    expect(faultsOf(length, { value: 100, unit: 'm' })).toEqual([]);
    expect(faultsOf(length, { value: 99, unit: 'ft' })).toEqual([
      { path: 'value', message: '99 m is not within 100 to 5000 m' },
      { path: 'unit', message: '"ft" is not "m"' },
    ]);
  });

  it('bare numbers, at both ends', () => {
    const share = numberWithin(1, 2, 'ratio');
    expect([1, 2].map((value) => faultsOf(share, value))).toEqual([[], []]);
    expect(faultsOf(share, 2.001)).toEqual([{ path: '', message: '2.001 ratio is not within 1 to 2 ratio' }]);
    expect(faultsOf(finiteNumber, Number.NEGATIVE_INFINITY)).toEqual([{ path: '', message: 'is not a finite number' }]);
  });

  it('dates of the calendar', () => {
    expect(faultsOf(calendarDate, '2026-07-14')).toEqual([]);
    expect(faultsOf(calendarDate, '14.7.2026')).toEqual([
      { path: '', message: '"14.7.2026" is not a date YYYY-MM-DD' },
    ]);
  });

  it('a fault as a line, with its path where it has one', () => {
    expect(faultLine({ path: 'a.b', message: 'is missing' })).toBe('a.b: is missing');
    expect(faultLine({ path: '', message: 'is empty' })).toBe('is empty');
  });
});
