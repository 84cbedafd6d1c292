import { describe, expect, it } from 'vitest';
import type { Table } from '../../src/aircraft/index.ts';
import { figureReader, samplesOf } from '../../src/aircraft/samples.ts';

const table: Table<'m'> = {
  axes: [
    { quantity: 'mass', unit: 'kg', values: [700, 900] },
    { quantity: 'temperature', unit: 'degF', values: [32, 50] },
  ],
  unit: 'm',
  cells: [
    [200, null],
    [240, 260],
  ],
};

describe('the places at which a table is printed', () => {
  it('are its cells but the blank ones, in the units of a reading: 32 °F and 50 °F are 0 °C and 10 °C', () => {
    const samples = samplesOf(table);
    expect(samples.map(({ place }) => place)).toEqual(['cells[0][0]', 'cells[1][0]', 'cells[1][1]']);
    expect(samples.map(({ point }) => point.mass)).toEqual([700, 900, 900]);
    expect(samples.map(({ point }) => point.temperature?.toFixed(9))).toEqual([
      '0.000000000',
      '0.000000000',
      '10.000000000',
    ]);
  });

  it('are read back as printed, and nothing beyond them', () => {
    const read = figureReader(table);
    expect(samplesOf(table).map(({ point }) => read(point))).toEqual([200, 240, 260]);
    expect(read({ mass: 900, temperature: 11 })).toBeUndefined();
    expect(read({ mass: 699, temperature: 0 })).toBeUndefined();
  });
});
