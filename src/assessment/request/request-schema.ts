import * as v from 'valibot';
import { performanceDataSchema } from '../../aircraft/performance-data-schema.ts';
import { type FactorSet, type FactorSetId, factorSets } from '../../distance/index.ts';
import { calendarDate, measureSchema, text } from '../../documents/index.ts';
import { factorSetSchema } from './factor-set-schema.ts';
import { policyDefaults } from './policies.ts';
import type { LandingRequest, TakeoffRequest } from './request.ts';

const runwayDistance = measureSchema(['m', 'ft'], 0, 6000);
const elevation = measureSchema(['ftElevation', 'mElevation'], -2000, 15_000);
const direction = measureSchema(['degTrue', 'degMagnetic'], 0, 360);
const windSpeed = measureSchema(['kt', 'mph', 'mps'], 0, 100);
const clearance = measureSchema(['ftHeight', 'mHeight'], 0, 1000);
const designator = v.pipe(
  v.string(),
  v.regex(/^(0?[1-9]|[12]\d|3[0-6])[LCR]?$/, (issue) => `${issue.received} is not a runway designator`),
);

const runwayEnd = v.strictObject({
  designator,
  direction,
  directionFrom: v.exactOptional(v.picklist(['survey', 'designator'])),
  elevation,
  declaredDistances: v.exactOptional(
    v.strictObject({
      TORA: v.exactOptional(runwayDistance),
      TODA: v.exactOptional(runwayDistance),
      ASDA: v.exactOptional(runwayDistance),
      LDA: v.exactOptional(runwayDistance),
    }),
  ),
  displacedThreshold: v.exactOptional(runwayDistance),
});

const condition = v.picklist(['dry', 'wet']);
const surface = v.variant('kind', [
  v.strictObject({
    kind: v.literal('paved'),
    condition,
    conditionCode: v.exactOptional(v.picklist([0, 1, 2, 3, 4, 5, 6])),
  }),
  v.strictObject({ kind: v.literal('gravel'), condition }),
  v.strictObject({ kind: v.literal('snow') }),
  v.strictObject({
    kind: v.literal('grass'),
    condition,
    length: v.picklist(['very short', 'up to 20 cm', 'over 20 cm']),
    ground: v.picklist(['firm', 'soft']),
  }),
]);

const obstacle = v.strictObject({
  name: text,
  end: designator,
  beyond: measureSchema(['m', 'ft', 'NM'], 0, 20_000),
  topElevation: v.exactOptional(elevation),
  groundElevation: v.exactOptional(elevation),
  height: v.exactOptional(measureSchema(['ftHeight', 'mHeight'], 0, 3000)),
  lateralOffset: v.exactOptional(measureSchema(['m', 'ft'], 0, 5000)),
});

const runway = v.strictObject({
  aerodrome: text,
  aerodromeElevation: v.exactOptional(elevation),
  length: measureSchema(['m', 'ft'], 50, 6000),
  surface,
  ends: v.strictTuple([runwayEnd, runwayEnd]),
  obstacles: v.exactOptional(v.array(obstacle)),
});

/** The schema of the weather of a request; prepared assessments read weather alone. */
export const weatherSchema = v.strictObject({
  wind: v.strictObject({
    source: v.picklist(['METAR', 'TAF', 'FAA tower', 'FAA ATIS', 'ICAO ATIS', 'observed']),
    from: v.union([direction, v.picklist(['variable', 'not reported'])]),
    speed: windSpeed,
    gust: v.exactOptional(windSpeed),
    range: v.exactOptional(v.strictObject({ from: direction, to: direction })),
  }),
  temperature: measureSchema(['degC', 'degF'], -40, 50),
  dewPoint: v.exactOptional(measureSchema(['degC', 'degF'], -40, 50)),
  qnh: v.exactOptional(measureSchema(['hPa', 'inHg'], 850, 1085)),
  qfe: v.exactOptional(measureSchema(['hPa', 'inHg'], 500, 1085)),
});

const share = (min: number, max: number) => v.exactOptional(measureSchema(['ratio'], min, max));

/** One of the options of a policy. */
const chosen = <const O extends readonly string[]>({ options }: { readonly options: O }) =>
  v.exactOptional(v.picklist(options));

const policies = v.strictObject({
  headwindShare: share(0, 1),
  tailwindShare: share(1, 3),
  demonstratedCrosswind: chosen(policyDefaults.demonstratedCrosswind),
  favourableSlope: chosen(policyDefaults.favourableSlope),
  favourableEdge: chosen(policyDefaults.favourableEdge),
  betweenPrintedValues: chosen(policyDefaults.betweenPrintedValues),
  humidity: chosen(policyDefaults.humidity),
  unreportedGust: chosen(policyDefaults.unreportedGust),
  speedAdditionInDistance: chosen(policyDefaults.speedAdditionInDistance),
  verticalClearance: v.exactOptional(clearance),
  approachClearance: v.exactOptional(clearance),
  approachAngle: v.exactOptional(measureSchema(['deg'], 2, 10)),
  reactionTime: v.exactOptional(measureSchema(['s'], 0.5, 10)),
  firstPrinciples: chosen(policyDefaults.firstPrinciples),
  confirmations: v.exactOptional(v.array(v.strictObject({ factorId: text, edition: text, date: calendarDate }))),
});

const namedFactorSet = v.picklist(Object.keys(factorSets) as FactorSetId[]);

const base = {
  performanceData: performanceDataSchema,
  mass: measureSchema(['kg', 'lb'], 50, 10_000),
  configuration: v.exactOptional(text),
  runway,
  runwayInUse: designator,
  weather: weatherSchema,
  variation: v.exactOptional(v.strictObject({ value: measureSchema(['degEast'], -180, 180), source: text })),
  factorSet: v.lazy((json) => (typeof json === 'string' ? namedFactorSet : factorSetSchema)) as v.GenericSchema<
    unknown,
    FactorSetId | FactorSet
  >,
  safetyFactor: v.exactOptional(v.picklist(['of the set', 'none'])),
  personalLimits: v.exactOptional(
    v.strictObject({
      crosswind: v.exactOptional(measureSchema(['kt'], 0, 60)),
      tailwind: v.exactOptional(measureSchema(['kt'], 0, 30)),
    }),
  ),
  policies: v.exactOptional(policies),
};

/** The schema of a take-off request. */
export const takeoffRequestSchema = v.strictObject({
  schema: v.literal('groundroll/takeoff-request/1'),
  ...base,
  lineUpLoss: v.exactOptional(measureSchema(['m', 'ft'], 0, 500)),
  liftOffSpeedAddition: v.exactOptional(measureSchema(['kt'], 0, 30)),
  brakingCoefficient: v.exactOptional(measureSchema(['ratio'], 0.02, 0.8)),
}) satisfies v.GenericSchema<unknown, TakeoffRequest>;

/** The schema of a landing request. */
export const landingRequestSchema = v.strictObject({
  schema: v.literal('groundroll/landing-request/1'),
  ...base,
  approachSpeedAddition: v.exactOptional(measureSchema(['kt'], 0, 30)),
  excessHeight: v.exactOptional(measureSchema(['ftHeight', 'mHeight'], 0, 200)),
}) satisfies v.GenericSchema<unknown, LandingRequest>;
