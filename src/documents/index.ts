export { type Fault, faultLine, type ReadResult } from './fault.ts';
export { calendarDate, measureSchema, numberWithin, text } from './measure-schema.ts';
export { readDocument } from './read.ts';
export { schemaVersion } from './schema-version.ts';
