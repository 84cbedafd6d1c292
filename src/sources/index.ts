export type { Access } from './access.ts';
export { bibliography, type Source, type SourceId } from './bibliography.ts';
export type { CheckValue, CheckValueFile, ExpectedMeasure } from './check-value.ts';
export type {
  CheckValueCollection,
  FormulaDescription,
  InputDescription,
  OutputDescription,
  UnitDescription,
} from './check-value-collection.ts';
export type { Citation } from './citation.ts';
export { type ComparisonRow, compareCheckValues } from './compare.ts';
export type { Formula, FormulaRecord, InputSymbol, OutputSymbol } from './formula-record.ts';
