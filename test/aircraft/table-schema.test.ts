import { describe, expect, it } from 'vitest';
import { tableSchema } from '../../src/aircraft/table-schema.ts';
import { readDocument } from '../../src/documents/index.ts';

const schema = tableSchema(['m', 'ft'], 1, 1000);
const faultsOf = (table: unknown) => {
  const read = readDocument(schema, table);
  return read.ok ? [] : read.faults.map(({ path, message }) => (path === '' ? message : `${path}: ${message}`));
};
const mass = { quantity: 'mass', unit: 'kg', values: [800, 900] };
const temperature = { quantity: 'temperature', unit: 'degC', values: [0, 20, 40] };
const two = (cells: unknown) => ({ axes: [mass, temperature], unit: 'm', cells });

describe('the schema of a table', () => {
  it('takes figures up to both bounds, and blanks', () => {
    expect(
      faultsOf(
        two([
          [1, null, 1000],
          [null, 500, null],
        ]),
      ),
    ).toEqual([]);
    expect(faultsOf({ axes: [], unit: 'ft', cells: 700 })).toEqual([]);
  });

  it('names every figure beyond them', () => {
    expect(
      faultsOf(
        two([
          [0.9, 1, 1],
          [1, 1, 1000.5],
        ]),
      ),
    ).toEqual(['cells[0][0]: 0.9 m is not within 1 to 1000 m', 'cells[1][2]: 1000.5 m is not within 1 to 1000 m']);
  });

  it.each([
    [5, ['cells must be a list of 2 along mass']],
    [null, ['cells must be a list of 2 along mass']],
    [[5, [1, 2, 3]], ['cells[0] must be a list of 3 along temperature']],
    [[[1, 2, 3]], ['cells has 1 entries for 2 values of mass']],
    [
      [
        [1, 2],
        [1, 2, 3, 4],
      ],
      ['cells[0] has 2 entries for 3 values of temperature', 'cells[1] has 4 entries for 3 values of temperature'],
    ],
    [
      [
        [1, [2], 3],
        [1, 2, 3],
      ],
      ['cells[0][1] is nested deeper than there are axes'],
    ],
    [
      [
        [null, null, null],
        [null, null, null],
      ],
      ['every cell is blank'],
    ],
  ])('holds the nesting against the axes: %j', (cells, faults) => {
    expect(faultsOf(two(cells))).toEqual(faults);
  });

  it('does not call a table blank that has other faults', () => {
    expect(
      faultsOf({
        axes: [mass, mass],
        unit: 'm',
        cells: [
          [null, null],
          [null, null],
        ],
      }),
    ).toEqual(['two axes run along mass']);
  });

  it.each([
    ['a text', '5'],
    ['NaN', Number.NaN],
    ['a fifth level', [[[[[1]]]]]],
    ['a hole in a list', Object.assign(new Array(2), { 1: 5 })],
    ['an object', {}],
  ])('takes no other cells: %s', (_name, cells) => {
    expect(faultsOf(two(cells))).toEqual(['cells: cells must be numbers or null, nested as deep as there are axes']);
  });

  it('has at most four axes, and takes four', () => {
    const axes = ['mass', 'temperature', 'headwind', 'slope', 'height'].map((quantity, i) => ({
      quantity,
      unit: ['kg', 'degC', 'kt', 'percent', 'mHeight'][i],
      values: [0, 1],
    }));
    const cells = (depth: number): unknown => (depth === 0 ? 5 : [cells(depth - 1), cells(depth - 1)]);
    expect(faultsOf({ axes: axes.slice(0, 4), unit: 'm', cells: cells(4) })).toEqual([]);
    expect(faultsOf({ axes, unit: 'm', cells: cells(4) })).toContain('axes: a table has at most 4 axes');
  });

  it('has axes that rise at every step, in a unit of their own', () => {
    const along = (axis: unknown) => faultsOf({ axes: [axis], unit: 'm', cells: [1, 2, 3] });
    expect(along({ ...temperature, values: [20, 0, 0] })).toEqual([
      'axes[0]: axis values must rise: 0 follows 20',
      'axes[0]: axis values must rise: 0 follows 0',
    ]);
    expect(along({ ...temperature, unit: 'kg' })).toEqual(['axes[0]: kg is not a unit of temperature (degC or degF)']);
    expect(along({ ...temperature, values: ['a', 1, 2] })).toEqual(['axes[0].values[0]: "a" is not a number']);
  });

  it('does not look at the cells of a table whose unit is none', () => {
    expect(faultsOf({ axes: [mass], unit: 'miles', cells: [5, 2000] })).toEqual(['unit: "miles" is none of "m", "ft"']);
  });
});
