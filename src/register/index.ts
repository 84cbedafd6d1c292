export { compareCheckValues } from '../sources/index.ts';
export { checkValues } from './check-values.ts';
export { formulaRecords } from './records.ts';
