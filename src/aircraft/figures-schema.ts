import * as v from 'valibot';
import { chartSchema } from './chart-schema.ts';
import type { Figures } from './figures.ts';
import { tableSchema } from './table-schema.ts';

/** Figures in a table or in a chart; which of the two a document means is told by its key `panels`. */
export function figuresSchema<const U extends 'm' | 'ft' | 'ftPerMin'>(
  units: readonly [U, ...U[]],
  min: number,
  max: number,
): v.GenericSchema<unknown, Figures<U>> {
  const table = tableSchema(units, min, max);
  const chart = chartSchema(units, min, max);
  const isChart = (json: unknown) => typeof json === 'object' && json !== null && Object.hasOwn(json, 'panels');
  return v.lazy((json) => (isChart(json) ? chart : table)) as v.GenericSchema<unknown, Figures<U>>;
}
