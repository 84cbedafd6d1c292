export { compareCheckValues } from '../sources/index.ts';
export { checkValues } from './check-values.ts';
export { checkValueCollection } from './collection.ts';
export { formulaRecords } from './records.ts';
