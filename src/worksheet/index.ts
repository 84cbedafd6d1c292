export type { Assessment } from './ledger.ts';
export { worksheetJson, worksheetMarkdown } from './markdown.ts';
export { runwayTableCsv } from './runway-table-csv.ts';
export { runwayTableMarkdown } from './runway-table-markdown.ts';
export { worksheetText } from './text.ts';
export { type Worksheet, type WorksheetFormula, worksheet } from './worksheet.ts';
