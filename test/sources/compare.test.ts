import { describe, expect, it } from 'vitest';
import { type CheckValue, compareCheckValues, type FormulaRecord } from '../../src/sources/index.ts';

const bound = { unit: 'deg', min: 0, max: 360, source: 'compass circle' };

/** A formula that gives back what it receives, so that only the comparison is under test. */
const echo: FormulaRecord = {
  id: 'test.echo',
  title: 'echo',
  equation: 'y = x',
  formula: (x: { direction?: number; length?: number }) => ({
    direction: x.direction,
    length: x.length,
    word: 'grass',
  }),
  domain: { direction: bound, length: { unit: 'm', min: 0, max: 1e6, source: 'test' } },
  inputs: {},
  outputs: {
    direction: { symbol: 'd', meaning: 'direction', unit: 'degTrue' },
    length: { symbol: 'l', meaning: 'length', unit: 'm' },
    word: { symbol: 'w', meaning: 'word', unit: 'text' },
  },
  citations: [{ source: 'mathematics', locator: 'identity', access: 'derived' }],
  homogeneous: false,
  checkValues: 'published',
};

function checkValue(inputs: CheckValue['inputs'], expected: CheckValue['expected'], record = 'test.echo'): CheckValue {
  const citation = { source: 'mathematics', locator: 'identity', access: 'derived' } as const;
  return { id: 'one', record, inputs, expected, toleranceFrom: 'round-off', origin: 'definition', citation };
}

describe('compareCheckValues', () => {
  it.each([
    [359, 1, -2],
    [1, 359, 2],
    [10, 350, 20],
    [180, 0, -180],
    [90, 90, 0],
  ])('compares directions around the circle: ours %d, published %d', (ours, published, residual) => {
    const value = checkValue(
      { direction: { value: ours, unit: 'degTrue' } },
      { direction: { value: published, unit: 'degTrue', tolerance: 0.5 } },
    );
    const [row] = compareCheckValues([echo], [value]);
    expect(row?.residual).toBe(residual);
    expect(row?.share).toBe(Math.abs(residual) / 0.5);
  });

  it('does not wrap what is no direction', () => {
    const value = checkValue({ length: { value: 400, unit: 'm' } }, { length: { value: 40, unit: 'm', tolerance: 1 } });
    expect(compareCheckValues([echo], [value])[0]?.residual).toBe(360);
  });

  it('takes inputs and results in the printed unit', () => {
    const value = checkValue(
      { length: { value: 1000, unit: 'ft' } },
      { length: { value: 1001, unit: 'ft', tolerance: 0.5 } },
    );
    const [row] = compareCheckValues([echo], [value]);
    expect(row?.ours).toBeCloseTo(1000, 9);
    expect(row?.residual).toBeCloseTo(-1, 9);
    expect(row?.share).toBeCloseTo(2, 9);
  });

  it('takes a result in the unit of the data to be in the printed unit', () => {
    const inData = { ...echo, outputs: { length: { symbol: 'l', meaning: 'length', unit: 'data' } } };
    const value = checkValue(
      { length: { value: 1000, unit: 'm' } },
      { length: { value: 998, unit: 'ft', tolerance: 1 } },
    );
    const [row] = compareCheckValues([inData], [value]);
    expect(row).toMatchObject({ ours: 1000, unit: 'ft', residual: 2, share: 2 });
  });

  it('compares a text as a whole', () => {
    const rows = compareCheckValues([echo], [checkValue({}, { word: 'grass' }), checkValue({}, { word: 'paved' })]);
    expect(rows.map((row) => row.share)).toEqual([0, Number.POSITIVE_INFINITY]);
  });

  it('says of which record, check value and output a row is', () => {
    const value = checkValue({ length: { value: 3, unit: 'm' } }, { length: { value: 3, unit: 'm', tolerance: 1 } });
    const [row] = compareCheckValues([echo], [value]);
    expect(row).toMatchObject({ record: 'test.echo', checkValue: 'one', output: 'length', published: 3, tolerance: 1 });
  });

  it('takes a formula that returns one quantity by the name result', () => {
    const bare = { ...echo, formula: () => 12, outputs: { result: { symbol: 'y', meaning: 'length', unit: 'm' } } };
    const [row] = compareCheckValues([bare], [checkValue({}, { result: { value: 10, unit: 'm', tolerance: 4 } })]);
    expect(row).toMatchObject({ ours: 12, residual: 2, share: 0.5 });
  });

  it('refuses a formula that returns nothing, and a result that the record does not declare', () => {
    const expected = { result: { value: 10, unit: 'm', tolerance: 4 } };
    const nothing = { ...echo, formula: () => null };
    const undeclared = { ...echo, formula: () => ({ result: 10 }) };
    for (const record of [nothing, undeclared]) {
      expect(() => compareCheckValues([record], [checkValue({}, expected)])).toThrow(
        'check value one, result: the formula has no such output',
      );
    }
  });

  it.each(['grass', 7, null, undefined, [1, 2], { value: 3 }, { unit: 'm' }, { height: 'tall' }])(
    'hands %j to the formula as it stands, for it is no quantity',
    (surface) => {
      let received: unknown = 'nothing yet';
      const formula = (x: { surface: unknown }) => {
        received = x.surface;
        return { word: 'grass' };
      };
      compareCheckValues([{ ...echo, formula }], [checkValue({ surface }, { word: 'grass' })]);
      expect(received).toBe(surface);
    },
  );

  it.each([
    ['degTrue', 90, 90],
    ['degMagnetic', 90, 90],
    ['rad', Math.PI, 180],
  ])('takes a direction in %s as an angle where the formula wants one', (unit, printed_deg, ours_deg) => {
    const value = checkValue(
      { direction: { value: printed_deg, unit } },
      { direction: { value: ours_deg, unit: 'degTrue', tolerance: 1e-9 } },
    );
    expect(compareCheckValues([echo], [value])[0]?.share).toBeLessThanOrEqual(1);
  });

  it.each([
    ['a record that does not exist', checkValue({}, { word: 'grass' }, 'test.none'), /no record test\.none/],
    ['an input that the formula does not have', checkValue({ mass: { value: 1, unit: 'kg' } }, {}), /no quantity mass/],
    [
      'an input of another kind',
      checkValue({ length: { value: 1, unit: 'kg' } }, {}),
      /length: kg does not convert to m/,
    ],
    [
      'a direction for a length',
      checkValue({ length: { value: 1, unit: 'degTrue' } }, {}),
      /length: degTrue does not convert to m/,
    ],
    [
      'a length for a direction',
      checkValue({ direction: { value: 1, unit: 'm' } }, {}),
      /direction: m does not convert to deg/,
    ],
    [
      'a unit word that does not exist',
      checkValue({ length: { value: 1, unit: 'feet' } }, {}),
      /feet does not convert to m/,
    ],
    [
      'a height for a length',
      checkValue({ length: { value: 1, unit: 'ftHeight' } }, {}),
      /ftHeight does not convert to m/,
    ],
    [
      'an output that the formula does not have',
      checkValue({}, { width: { value: 1, unit: 'm', tolerance: 1 } }),
      /width: the formula has no such output/,
    ],
    [
      'an output that came out empty',
      checkValue({}, { length: { value: 1, unit: 'm', tolerance: 1 } }),
      /length: the formula has no such output/,
    ],
    [
      'an output of another kind',
      checkValue({ length: { value: 1, unit: 'm' } }, { length: { value: 1, unit: 's', tolerance: 1 } }),
      /length: m does not convert to s/,
    ],
  ])('refuses %s', (_name, value, message) => {
    expect(() => compareCheckValues([echo], [value])).toThrow(message);
  });
});
