import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { finiteNumbers, measureSchema, readDocument } from '../../src/documents/index.ts';

// 100 ft are 30.48 m, 1000 ft 304.8 m.
const height = measureSchema(['ftHeight', 'mHeight'], 100, 1000);
const bounds: Readonly<Record<string, readonly [number, number]>> = {
  ftHeight: [100, 1000],
  mHeight: [30.48, 304.8],
};

describe('a quantity of a document', () => {
  it('is read where it is a value within bounds, a unit of its own and nothing else; anything else is refused', () => {
    const some = fc.oneof(
      fc.constantFrom(30.48, 304.8, 100, 1000, 99.999, 1000.001, -0, Number.NaN, Number.POSITIVE_INFINITY),
      fc.double({ min: 0, max: 1100, noNaN: true }),
      fc.constantFrom('100', null, undefined, true),
    );
    const given = fc.record(
      { value: some, unit: fc.constantFrom('ftHeight', 'mHeight', 'm', 'ft', null), more: fc.constant(1) },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(given, (json) => {
        const { value, unit } = json;
        const [least, most] = bounds[String(unit)] ?? [1, 0];
        const isRight = !('more' in json) && typeof value === 'number' && value >= least && value <= most;
        const read = readDocument(height, json);
        expect(read.ok).toBe(isRight);
        if (read.ok) expect(read.value).toEqual({ value, unit });
        else expect(read.faults.length).toBeGreaterThan(0);
      }),
      { numRuns: 3000 },
    );
  });

  it('is given out as a copy, so that what was read stays what it was', () => {
    const json = { value: 500, unit: 'ftHeight' };
    const read = readDocument(height, json);
    json.value = 5;
    expect(read).toEqual({ ok: true, value: { value: 500, unit: 'ftHeight' } });
  });

  it('is looked at once for its value and once for its unit where it is right', () => {
    const looks: PropertyKey[] = [];
    const get = (quantity: object, key: PropertyKey) => {
      looks.push(key);
      return Reflect.get(quantity, key);
    };
    const length = measureSchema(['m', 'ft'], 30.48, 304.8);
    for (const [value, unit] of [
      [30.48, 'm'],
      [304.8, 'm'],
      [100, 'ft'],
      [1000, 'ft'],
    ]) {
      expect(v.is(length, new Proxy({ value, unit }, { get }))).toBe(true);
    }
    expect(looks).toEqual(new Array(4).fill(['value', 'unit']).flat());
  });

  it('is named with its value, bounds and unit where it is refused', () => {
    expect(readDocument(height, { value: 30, unit: 'mHeight' })).toEqual({
      ok: false,
      faults: [{ path: 'value', message: '30 mHeight is not within 30.48 to 304.8 mHeight' }],
    });
    expect(readDocument(height, { value: 500, unit: 'ftHeight', more: 1 })).toEqual({
      ok: false,
      faults: [{ path: 'more', message: 'is not a key of this document' }],
    });
    expect(readDocument(height, null)).toEqual({
      ok: false,
      faults: [{ path: '', message: 'null is not an object' }],
    });
    const callable = Object.assign(() => 500, { value: 500, unit: 'ftHeight' });
    for (const json of [500, 'ftHeight', [500, 'ftHeight'], {}, callable])
      expect(readDocument(height, json).ok).toBe(false);
  });
});

describe('a list of numbers of a document', () => {
  it('is read as a copy', () => {
    const json = [1, -0, 2.5];
    const read = readDocument(finiteNumbers, json);
    json[0] = 7;
    expect(read).toEqual({ ok: true, value: [1, -0, 2.5] });
    expect(readDocument(finiteNumbers, [])).toEqual({ ok: true, value: [] });
  });

  it('is refused with the place of what is no number', () => {
    const faultsOf = (json: unknown) => {
      const read = readDocument(finiteNumbers, json);
      return read.ok ? [] : read.faults.map(({ path, message }) => `${path}: ${message}`);
    };
    expect(faultsOf([1, '2', Number.NaN, 1 / 0])).toEqual([
      '[1]: "2" is not a number',
      '[2]: NaN is not a number',
      '[3]: is not a finite number',
    ]);
    const holed = [1, 2, 3];
    delete holed[1];
    expect(faultsOf(holed).map((fault) => fault.slice(0, 3))).toEqual(['[1]']);
    expect(faultsOf({ length: 0 })).toEqual([': an object is not a list']);
  });
});
