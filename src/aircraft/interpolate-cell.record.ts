import type { FormulaRecord } from '../sources/index.ts';
import { interpolateCell } from './interpolate-cell.ts';

export const interpolateCellRecord = {
  id: 'aircraft.interpolate-cell',
  title: 'Reading between the printed figures of a table',
  equation: 'y = y_1 + (y_2 - y_1)\\,\\frac{x - x_1}{x_2 - x_1}',
  formula: interpolateCell,
  // The bounds of a reading are the printed values around it, not figures of the library.
  domain: {},
  inputs: {
    lower: { symbol: 'x_1', meaning: 'printed axis value at or below the point' },
    upper: { symbol: 'x_2', meaning: 'printed axis value at or above the point' },
    at: { symbol: 'x', meaning: 'the point' },
    corners: { symbol: 'y_1, y_2', meaning: 'printed figures at the axis values' },
  },
  outputs: { result: { symbol: 'y', unit: 'data', meaning: 'figure at the point, in the unit of the table' } },
  citations: [
    { source: 'faa-phak', locator: '25A p. 10-19, interpolation between chart values', access: 'read' },
    { source: 'mathematics', locator: 'linear interpolation', access: 'derived' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof interpolateCell>;
