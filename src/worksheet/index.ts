export { gradientsFigure } from './figures/gradients.ts';
export { stairsFigure } from './figures/stairs.ts';
export { windRulersFigure } from './figures/wind-rulers.ts';
export { type WorksheetHtmlOptions, worksheetHtml } from './html.ts';
export type { Assessment, WorksheetLine } from './ledger.ts';
export { worksheetJson, worksheetMarkdown } from './markdown.ts';
export { sentenceHtml, textHtml } from './markup.ts';
export type { Paper } from './page-style.ts';
export { runwayDistanceTableCsv } from './runway-table-csv.ts';
export { type RunwayDistanceTableHtmlOptions, runwayDistanceTableHtml } from './runway-table-html.ts';
export { runwayDistanceTableMarkdown } from './runway-table-markdown.ts';
export { type WorksheetSection, worksheetSections } from './sections.ts';
export { type MathmlByTex, type WorkingStepHtmlOptions, workingStepHtml } from './step-html.ts';
export { worksheetText } from './text.ts';
export {
  type Worksheet,
  type WorksheetCheckValue,
  type WorksheetFormula,
  worksheet,
  worksheetFormula,
} from './worksheet.ts';
