import {
  bibliography,
  type CheckValueCollection,
  type FormulaDescription,
  type FormulaRecord,
} from '../sources/index.ts';
import { unitTable } from '../units/unit-table.ts';
import { version } from '../version.ts';
import { checkValues } from './check-values.ts';
import { formulaRecords } from './records.ts';

/**
 * All check values with the formulas, units and sources that they name, as plain data: what ships as
 * `groundroll/check-values.json`, so that an implementation in any language can test itself.
 *
 * @example
 * checkValueCollection().units['ft'] // => { kind: 'length', scale: 0.3048 }
 * checkValueCollection().formulas.find(({ id }) => id === 'wind.components')?.inputs['speed']?.unit // => 'kt'
 */
export function checkValueCollection(): CheckValueCollection {
  return {
    schema: 'groundroll/check-values/2',
    version,
    units: unitTable,
    sources: bibliography,
    formulas: formulaRecords.map(describe),
    checkValues,
  };
}

function describe(record: FormulaRecord): FormulaDescription {
  const inputs = Object.entries(record.inputs).map(([name, input]) => {
    const bound = record.domain[name];
    if (bound === undefined) return [name, input] as const;
    const { unit, min, max, source: bounds } = bound;
    return [name, { ...input, unit, min, max, bounds }] as const;
  });
  const { id, title, equation, outputs, citations, homogeneous, checkValues: stated } = record;
  return {
    id,
    title,
    equation,
    inputs: Object.fromEntries(inputs),
    outputs,
    citations,
    homogeneous,
    ...(stated === 'published' ? {} : stated),
  };
}
