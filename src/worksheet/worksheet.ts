import {
  bibliography,
  type CheckValue,
  type Citation,
  type ComparisonRow,
  compareCheckValues,
  type FormulaRecord,
  type Source,
} from '../sources/index.ts';
import type { Assessment } from './ledger.ts';

/** One published figure that a formula of the working must reproduce, beside ours. */
export interface WorksheetCheckValue {
  readonly id: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  /** The name of the result; `result` for a formula that returns one. */
  readonly output: string;
  readonly published: number | string;
  readonly ours: number | string;
  /** The unit in which it is printed. */
  readonly unit: string;
  /** Ours minus published; absent for a text. */
  readonly residual?: number;
  /** What the printing allows. */
  readonly tolerance: number;
  readonly agrees: boolean;
  readonly citation: Citation & Source;
}

/** A formula of the working with what a reviewer needs to follow it to its source. */
export interface WorksheetFormula {
  readonly id: string;
  readonly title: string;
  /** TeX. */
  readonly equation: string;
  /** The unit word of each quantity that goes in or comes out; `result` for a formula that returns one. */
  readonly units: Readonly<Record<string, string>>;
  /** What stands for each of them in the equation, in TeX, and what it is. */
  readonly symbols: Readonly<Record<string, { readonly symbol: string; readonly meaning: string }>>;
  readonly citations: readonly (Citation & Source)[];
  /** Absent where no check values were joined; empty where nobody published any, with the reason below. */
  readonly checkValues?: readonly WorksheetCheckValue[];
  readonly nonePublished?: string;
}

/** A finished assessment joined with the records of the formulas in its working. */
export interface Worksheet {
  readonly schema: 'groundroll/worksheet/1';
  readonly assessment: Assessment;
  readonly formulas: readonly WorksheetFormula[];
}

/**
 * Joins an assessment with the records of its formulas, in the order of the working; plain JSON.
 *
 * @param assessment - what `assessTakeoff` or `assessLanding` returned.
 * @param records - the formula records, `formulaRecords` of `groundroll/register`.
 * @param checkValues - the published check values, `checkValues` of `groundroll/register`; without them the worksheet
 * ends at the sources.
 * @throws an Error naming a formula of the working that has no record among them.
 */
export function worksheet(
  assessment: Assessment,
  records: readonly FormulaRecord[],
  checkValues?: readonly CheckValue[],
): Worksheet {
  const byId = new Map(records.map((record) => [record.id, record]));
  const ids = new Set(assessment.trace.flatMap((entry) => (entry.kind === 'step' ? [entry.record] : [])));
  const formulas = [...ids].map((id) => {
    const record = byId.get(id);
    if (record === undefined) throw new Error(`no formula record ${id} among those given`);
    return worksheetFormula(record, checkValues);
  });
  return { schema: 'groundroll/worksheet/1', assessment, formulas };
}

/**
 * A formula record as a worksheet carries it; plain JSON, for apps that load the formulas one by one.
 *
 * @param record - one of `formulaRecords` of `groundroll/register`.
 * @param checkValues - as for `worksheet`; those of other records are left out.
 */
export function worksheetFormula(record: FormulaRecord, checkValues?: readonly CheckValue[]): WorksheetFormula {
  const { id, title, equation, domain, inputs, outputs, citations } = record;
  const quantities = [...Object.entries(domain), ...Object.entries(outputs)];
  const symbols = [...Object.entries(inputs), ...Object.entries(outputs)];
  return {
    id,
    title,
    equation,
    units: Object.fromEntries(quantities.map(([name, { unit }]) => [name, unit])),
    symbols: Object.fromEntries(symbols.map(([name, { symbol, meaning }]) => [name, { symbol, meaning }])),
    citations: citations.map(withSource),
    ...(checkValues === undefined ? {} : { checkValues: checked(record, checkValues) }),
    ...(record.checkValues === 'published' ? {} : record.checkValues),
  };
}

function checked(record: FormulaRecord, checkValues: readonly CheckValue[]): WorksheetCheckValue[] {
  return checkValues
    .filter((each) => each.record === record.id)
    .flatMap((each) => compareCheckValues([record], [each]).map((row) => checkValueOf(each, row)));
}

function checkValueOf({ id, inputs, citation }: CheckValue, row: ComparisonRow): WorksheetCheckValue {
  const { output, published, ours, unit, residual, tolerance, share } = row;
  return {
    id,
    inputs,
    output,
    published,
    ours,
    unit,
    ...(typeof published === 'number' ? { residual } : {}),
    tolerance,
    // The guard of the register's own test: a residual of exactly the tolerance agrees.
    agrees: share <= 1 + 1e-9,
    citation: withSource(citation),
  };
}

function withSource(citation: Citation): Citation & Source {
  return { ...citation, ...bibliography[citation.source] };
}
