export { type Fault, faultLine, type ReadResult } from './fault.ts';
export { faultOfRefusal } from './fault-of-refusal.ts';
export { calendarDate, finiteNumber, finiteNumbers, measureSchema, numberWithin, text } from './measure-schema.ts';
export { readDocument, readPlain } from './read.ts';
export { schemaVersion } from './schema-version.ts';
