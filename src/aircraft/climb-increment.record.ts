import type { FormulaRecord } from '../sources/index.ts';
import { climbIncrement } from './climb-increment.ts';

export const climbIncrementRecord = {
  id: 'aircraft.climb-increment',
  title: 'Time, fuel or distance of a climb between two altitudes',
  equation: 'y = k\\,(y_2 - y_1)',
  formula: climbIncrement,
  // What a table prints is in its own unit; the bounds are its printed altitudes.
  domain: {},
  inputs: {
    atLower: { symbol: 'y_1', meaning: 'figure at the altitude from which the climb begins' },
    atUpper: { symbol: 'y_2', meaning: 'figure at the altitude to which it leads' },
    factor: { symbol: 'k', meaning: 'factor of the manual, 1 where there is none' },
  },
  outputs: { result: { symbol: 'y', unit: 'data', meaning: 'time, fuel or distance, in the unit of the table' } },
  citations: [{ source: 'faa-phak', locator: 'ch. 11, sample problems 4 and 5', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof climbIncrement>;
