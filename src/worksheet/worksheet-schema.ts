import * as v from 'valibot';
import { landingAssessmentSchema, takeoffAssessmentSchema } from '../assessment/result/assessment-schema.ts';
import { bibliography, type SourceId } from '../sources/index.ts';
import type { Worksheet } from './worksheet.ts';

const citation = v.strictObject({
  source: v.picklist(Object.keys(bibliography) as [SourceId, ...SourceId[]]),
  locator: v.string(),
  access: v.picklist(['read', 'second-hand', 'recalled', 'common-practice', 'derived', 'policy']),
  title: v.string(),
  publisher: v.string(),
  edition: v.string(),
});

const figure = v.union([v.number(), v.string()]);
const checkValue = v.strictObject({
  id: v.string(),
  inputs: v.record(v.string(), v.unknown()),
  output: v.string(),
  published: figure,
  ours: figure,
  unit: v.string(),
  residual: v.exactOptional(v.number()),
  tolerance: v.number(),
  agrees: v.boolean(),
  citation,
});

const formula = v.strictObject({
  id: v.string(),
  title: v.string(),
  equation: v.string(),
  units: v.record(v.string(), v.string()),
  symbols: v.record(v.string(), v.strictObject({ symbol: v.string(), meaning: v.string() })),
  citations: v.array(citation),
  checkValues: v.exactOptional(v.array(checkValue)),
  nonePublished: v.exactOptional(v.string()),
});

/** The schema of a worksheet: a finished assessment with the formulas of its working. */
export const worksheetSchema = v.strictObject({
  schema: v.literal('groundroll/worksheet/1'),
  assessment: v.variant('schema', [takeoffAssessmentSchema, landingAssessmentSchema]),
  formulas: v.array(formula),
}) satisfies v.GenericSchema<unknown, Worksheet>;
