import * as v from 'valibot';
import type { FactorSet } from '../../distance/index.ts';
import { numberWithin, text } from '../../documents/index.ts';

const origin = {
  id: text,
  locator: text,
  access: v.picklist(['read', 'second-hand', 'recalled', 'common-practice', 'derived', 'policy']),
};
const kind = v.picklist(['value', 'at-least', 'at-most']);
const factor = numberWithin(1, 3, 'ratio');

const surface = v.strictObject({
  ...origin,
  condition: text,
  factor,
  kind,
  basis: v.literal('total distance'),
  covers: v.pipe(
    v.array(v.picklist(['grass', 'long grass', 'wet', 'contaminated', 'soft ground', 'gravel', 'snow'])),
    v.minLength(1, 'covers nothing'),
  ),
  only: v.exactOptional(
    v.strictObject({
      kind: v.exactOptional(v.picklist(['paved', 'grass'])),
      length: v.exactOptional(v.literal('very short')),
    }),
  ),
  replaces: v.array(text),
});

const slope = v.strictObject({
  ...origin,
  percentPerPercent: numberWithin(0, 25, 'percent'),
  upTo: numberWithin(0.1, 10, 'percent'),
  beyond: v.picklist(['no figure', 'pro-rated']),
});

const stepped = v.strictObject({
  ...origin,
  factorPerStep: numberWithin(1, 2, 'ratio'),
  kind: v.exactOptional(kind),
  step: numberWithin(0.1, 10_000, 'steps'),
});

const phase = {
  surfaces: v.array(surface),
  slope: v.exactOptional(slope),
  mass: v.exactOptional(stepped),
  elevation: v.exactOptional(stepped),
  temperature: v.exactOptional(stepped),
  tailwind: v.exactOptional(stepped),
};

const alternative = v.strictObject({
  needs: v.picklist(['nothing', 'clearway', 'stopway or clearway']),
  tests: v.pipe(
    v.array(v.strictObject({ ...origin, against: v.picklist(['TORA', 'TODA', 'ASDA']), factor })),
    v.minLength(1, 'at least one test is needed'),
  ),
});

/** The schema of a factor set that a user brings: an operator's, a club's, another State's. */
export const factorSetSchema = v.pipe(
  v.strictObject({
    id: text,
    title: text,
    edition: text,
    scope: text,
    hasSafetyFactor: v.boolean(),
    takeoff: v.strictObject({
      ...phase,
      safety: v.pipe(v.array(alternative), v.minLength(1, 'at least one alternative is needed')),
    }),
    landing: v.strictObject({ ...phase, safety: v.strictObject({ ...origin, factor }) }),
  }),
  v.check(
    ({ takeoff }) => takeoff.safety[0]?.needs === 'nothing',
    'the first alternative at take-off must need nothing',
  ),
) satisfies v.GenericSchema<unknown, FactorSet>;
