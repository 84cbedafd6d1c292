export { compareCheckValues } from '../sources/index.ts';
export { checkValues } from './check-values.ts';
export { checkValueCollection } from './collection.ts';
export { formulaMathml } from './mathml.ts';
export { formulaRecords } from './records.ts';
