import * as v from 'valibot';
import { landingRequestSchema, takeoffRequestSchema } from '../request/request-schema.ts';
import type { LandingAssessment, TakeoffAssessment } from './assessment.ts';
import { sentenceCodes } from './sentences.ts';

/** Results are written by the library and not read by it: this is what stands in them, for those who read them elsewhere. */
const measure = v.strictObject({ value: v.number(), unit: v.string() });
const measureIn = <const U extends string>(...units: [U, ...U[]]) =>
  v.strictObject({ value: v.number(), unit: v.picklist(units) });

const verdict = v.picklist(['within', 'outside', 'undetermined']);
const steps = v.array(v.pipe(v.number(), v.integer(), v.minValue(0)));
const stepsGiven = v.exactOptional(steps);

const sentence = {
  code: v.picklist(sentenceCodes()),
  parameters: v.record(v.string(), v.union([v.number(), v.string()])),
  text: v.string(),
  steps: stepsGiven,
};
/** One sentence of a result. */
export const sentenceSchema = v.strictObject(sentence);
const sentences = v.array(sentenceSchema);

const criterion = {
  id: v.string(),
  subject: v.string(),
  quantity: v.string(),
  sense: v.picklist(['at most', 'at least']),
  limitStatus: v.picklist([
    'limitation',
    'demonstrated',
    'personal',
    'distance available',
    'clearance asked',
    'none given',
  ]),
  reasons: sentences,
  steps,
};
const criteria = v.array(
  v.variant('verdict', [
    v.strictObject({
      ...criterion,
      verdict: v.picklist(['within', 'outside']),
      value: measure,
      limit: measure,
      margin: measure,
    }),
    v.strictObject({
      ...criterion,
      verdict: v.literal('undetermined'),
      limit: v.exactOptional(measure),
      atLeast: v.exactOptional(measure),
      atMost: v.exactOptional(measure),
    }),
  ]),
);

const metres = measureIn('m');
const percent = measureIn('percent');
const knots = measureIn('kt');

const treads = v.array(v.strictObject({ step: v.string(), factor: v.number(), added: metres, total: metres, steps }));
const stairs = v.strictObject({
  steps: treads,
  required: metres,
  available: metres,
});

const breakEven = v.strictObject({
  quantity: v.string(),
  answer: v.picklist(['value', 'withinThroughoutRange', 'outsideThroughoutRange', 'undetermined']),
  value: v.exactOptional(measure),
  range: v.strictObject({ from: measure, to: measure }),
  otherLimits: sentences,
});

const windLimits = v.array(
  v.strictObject({
    speed: measureIn('kt', 'mph', 'mps'),
    status: v.picklist(['limitation', 'demonstrated', 'personal']),
    binds: v.boolean(),
  }),
);
const windOnRunway = v.strictObject({
  across: v.strictObject({
    least: knots,
    greatest: knots,
    from: v.picklist(['left', 'right', 'either side', 'neither side']),
    limits: windLimits,
  }),
  along: v.strictObject({ least: knots, greatest: knots, used: knots, inTables: knots, limits: windLimits }),
});

const mark = v.strictObject({
  id: v.string(),
  at: v.exactOptional(metres),
  shareOfRunway: v.exactOptional(percent),
  speed: v.exactOptional(measureIn('kias')),
  reasons: sentences,
  steps,
});

const speed = v.strictObject({
  name: v.string(),
  speed: measureIn('kias'),
  calibrated: v.exactOptional(measureIn('kcas')),
  steps,
});

const working = v.variant('kind', [
  v.strictObject({
    kind: v.literal('step'),
    label: v.string(),
    record: v.string(),
    inputs: v.record(v.string(), v.unknown()),
    output: v.unknown(),
  }),
  v.strictObject({ kind: v.literal('decision'), ...sentence }),
]);

const base = {
  version: v.string(),
  verdict,
  headline: sentences,
  reasons: sentences,
  criteria,
  stairs: v.exactOptional(stairs),
  stairsKnown: v.exactOptional(treads),
  factorSet: v.strictObject({ title: v.string(), edition: v.string() }),
  slope: percent,
  windOnRunway,
  breakEvens: v.array(breakEven),
  marks: v.array(mark),
  speeds: v.array(speed),
  advice: sentences,
  estimates: sentences,
  hazards: sentences,
  dataNotes: sentences,
  notAssessed: v.array(v.string()),
  limitsOfUse: v.array(v.string()),
  trace: v.array(working),
};

const climbOut = v.strictObject({
  achieved: v.exactOptional(percent),
  obstacles: v.array(v.strictObject({ name: v.string(), required: v.exactOptional(percent) })),
});

/** The schema of a finished take-off assessment. */
export const takeoffAssessmentSchema = v.strictObject({
  schema: v.literal('groundroll/takeoff-assessment/1'),
  request: takeoffRequestSchema,
  climbOut: v.exactOptional(climbOut),
  ...base,
}) satisfies v.GenericSchema<unknown, TakeoffAssessment>;

/** The schema of a finished landing assessment. */
export const landingAssessmentSchema = v.strictObject({
  schema: v.literal('groundroll/landing-assessment/1'),
  request: landingRequestSchema,
  ...base,
}) satisfies v.GenericSchema<unknown, LandingAssessment>;
