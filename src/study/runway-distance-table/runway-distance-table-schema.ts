import * as v from 'valibot';
import { finiteNumber, measureSchema, text } from '../../documents/index.ts';

const verdict = v.picklist(['within', 'outside', 'undetermined']);
const sentence = v.strictObject({
  code: text,
  parameters: v.record(v.string(), v.union([v.string(), finiteNumber])),
  text,
});
const metres = measureSchema(['m'], -100_000, 100_000);
const temperature = measureSchema(['degC'], -40, 50);

const cell = v.strictObject({
  temperature,
  verdict,
  required: v.exactOptional(metres),
  available: v.exactOptional(metres),
  spare: v.exactOptional(metres),
  sentence,
});

const speed = v.strictObject({
  name: text,
  speed: measureSchema(['kias'], 0, 400),
  calibrated: v.exactOptional(measureSchema(['kcas'], 0, 400)),
});

const warmest = v.strictObject({
  answer: v.picklist(['value', 'withinThroughoutRange', 'outsideThroughoutRange', 'undetermined']),
  value: v.exactOptional(temperature),
  range: v.strictObject({ from: temperature, to: temperature }),
  sentence,
});

const row = v.strictObject({
  at: v.variant('unit', [
    v.strictObject({ value: finiteNumber, unit: v.literal('kg') }),
    v.strictObject({ value: finiteNumber, unit: v.literal('lb') }),
    v.strictObject({ value: finiteNumber, unit: v.literal('kt') }),
  ]),
  words: text,
  loading: v.exactOptional(text),
  cells: v.array(cell),
  speeds: v.array(speed),
  warmest,
});

/** The schema of a runway distance table that was stored. */
export const runwayDistanceTableSchema = v.strictObject({
  schema: v.literal('groundroll/runway-distance-table/1'),
  version: text,
  phase: v.picklist(['takeoff', 'landing']),
  aeroplane: text,
  aerodrome: text,
  designator: text,
  title: sentence,
  validOnlyIf: sentence,
  rowsAlong: v.picklist(['mass', 'headwind']),
  temperatures: v.pipe(v.array(temperature), v.minLength(1, 'is empty')),
  rows: v.pipe(v.array(row), v.minLength(1, 'is empty')),
  reading: sentence,
  notes: v.array(sentence),
  notAssessed: v.array(text),
  limitsOfUse: v.pipe(v.array(text), v.minLength(1, 'the limits of use are missing')),
});
