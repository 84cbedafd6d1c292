import { bibliography, type Citation, type FormulaRecord, type Source } from '../sources/index.ts';
import type { Assessment } from './ledger.ts';

/** A formula of the working with what a reviewer needs to follow it to its source. */
export interface WorksheetFormula {
  readonly id: string;
  readonly title: string;
  /** TeX. */
  readonly equation: string;
  /** The unit word of each quantity that goes in or comes out; `result` for a formula that returns one. */
  readonly units: Readonly<Record<string, string>>;
  readonly citations: readonly (Citation & Source)[];
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
 * @throws an Error naming a formula of the working that has no record among them.
 */
export function worksheet(assessment: Assessment, records: readonly FormulaRecord[]): Worksheet {
  const byId = new Map(records.map((record) => [record.id, record]));
  const ids = new Set(assessment.trace.flatMap((entry) => (entry.kind === 'step' ? [entry.record] : [])));
  const formulas = [...ids].map((id) => {
    const record = byId.get(id);
    if (record === undefined) throw new Error(`no formula record ${id} among those given`);
    const citations = record.citations.map((citation) => ({ ...citation, ...bibliography[citation.source] }));
    const quantities = [...Object.entries(record.domain), ...Object.entries(record.outputs)];
    const units = Object.fromEntries(quantities.map(([name, { unit }]) => [name, unit]));
    return { id, title: record.title, equation: record.equation, units, citations };
  });
  return { schema: 'groundroll/worksheet/1', assessment, formulas };
}
