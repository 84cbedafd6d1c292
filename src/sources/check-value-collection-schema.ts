import * as v from 'valibot';
import { bibliography, type SourceId } from './bibliography.ts';
import type { CheckValueCollection } from './check-value-collection.ts';

const filled = v.pipe(v.string(), v.nonEmpty());
const number = v.pipe(v.number(), v.finite());
const access = v.picklist(['read', 'second-hand', 'recalled', 'common-practice', 'derived', 'policy']);
const citation = v.strictObject({
  source: v.picklist(Object.keys(bibliography) as SourceId[]),
  locator: filled,
  access,
});

const unit = v.strictObject({
  kind: filled,
  scale: v.pipe(number, v.minValue(1e-15)),
  offset: v.exactOptional(number),
  circle: v.exactOptional(v.pipe(number, v.minValue(1e-15))),
});

const source = v.strictObject({ title: filled, publisher: filled, edition: filled });

const input = v.strictObject({
  symbol: filled,
  meaning: filled,
  unit: v.exactOptional(filled),
  min: v.exactOptional(number),
  max: v.exactOptional(number),
  bounds: v.exactOptional(filled),
});

const formula = v.strictObject({
  id: filled,
  title: filled,
  equation: filled,
  inputs: v.record(v.string(), input),
  outputs: v.record(v.string(), v.strictObject({ symbol: filled, meaning: filled, unit: filled })),
  citations: v.pipe(v.array(citation), v.nonEmpty()),
  homogeneous: v.boolean(),
  nonePublished: v.exactOptional(filled),
});

const checkValue = v.strictObject({
  id: filled,
  record: filled,
  inputs: v.record(v.string(), v.unknown()),
  expected: v.record(
    v.string(),
    v.union([filled, v.strictObject({ value: number, unit: filled, tolerance: v.pipe(number, v.minValue(1e-15)) })]),
  ),
  toleranceFrom: v.picklist(['half-last-digit', 'stated-by-source', 'round-off', 'chart-reading']),
  origin: v.picklist([
    'printed-table',
    'worked-example',
    'official-test-values',
    'independent-program',
    'definition',
    'common-practice',
  ]),
  citation,
  note: v.exactOptional(filled),
});

/** The schema of the collection that ships as `check-values.json`. */
export const checkValueCollectionSchema = v.strictObject({
  schema: v.literal('groundroll/check-values/2'),
  version: filled,
  units: v.record(v.string(), unit),
  sources: v.record(v.string(), source),
  formulas: v.array(formula),
  checkValues: v.array(checkValue),
}) satisfies v.GenericSchema<unknown, CheckValueCollection>;
