export type { Assessment } from './ledger.ts';
export { worksheetJson, worksheetMarkdown } from './markdown.ts';
export { worksheetText } from './text.ts';
export { type Worksheet, type WorksheetFormula, worksheet } from './worksheet.ts';
