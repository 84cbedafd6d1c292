import * as v from 'valibot';
import { calendarDate, measureSchema, numberWithin, text } from '../documents/index.ts';
import { figuresSchema } from './figures-schema.ts';
import type { PerformanceData } from './performance-data.ts';
import { tableSchema } from './table-schema.ts';

const mass = measureSchema(['kg', 'lb'], 50, 10_000);
const airspeed = measureSchema(['kias', 'kcas'], 10, 400);
const wind = measureSchema(['kt', 'mph', 'mps'], 1, 100);
const lengthFigures = figuresSchema(['m', 'ft'], 1, 20_000);
const speedTable = tableSchema(['kias'], 10, 400);

const knots = measureSchema(['kt'], 0.5, 50);
const windLaw = v.strictObject({ change: measureSchema(['percent'], -90, 100), per: knots, upTo: knots });

const slopeLaw = (least: number, greatest: number) =>
  v.strictObject({
    change: measureSchema(['percent'], least, greatest),
    per: measureSchema(['percent'], 0.1, 10),
    upTo: measureSchema(['percent'], 0.1, 10),
    percentOf: v.exactOptional(v.picklist(['distance', 'ground roll'])),
  });

const corrections = v.strictObject({
  headwind: v.exactOptional(windLaw),
  tailwind: v.exactOptional(windLaw),
  mass: v.exactOptional(
    v.strictObject({
      change: measureSchema(['percent'], 0, 100),
      per: measureSchema(['kg', 'lb'], 1, 500),
      upTo: mass,
    }),
  ),
  pressureAltitude: v.exactOptional(
    v.strictObject({
      change: measureSchema(['percent'], 0, 100),
      per: measureSchema(['ftPA'], 100, 5000),
      upTo: measureSchema(['ftPA'], -2000, 20_000),
    }),
  ),
  temperature: v.exactOptional(
    v.strictObject({
      change: measureSchema(['percent'], 0, 100),
      per: measureSchema(['degCDifference'], 1, 50),
      upTo: measureSchema(['degC', 'degF'], -60, 60),
    }),
  ),
  surfaces: v.exactOptional(
    v.array(
      v.strictObject({
        surface: v.picklist(['paved', 'grass', 'gravel']),
        condition: v.picklist(['dry', 'wet']),
        increase: measureSchema(['percent'], 0, 200),
        percentOf: v.picklist(['distance', 'ground roll']),
      }),
    ),
  ),
  adverseSlope: v.exactOptional(slopeLaw(0, 50)),
  favourableSlope: v.exactOptional(slopeLaw(-50, 0)),
});

const stated = v.union([v.boolean(), v.literal('not stated')]);

const distanceData = {
  configuration: text,
  includes: v.strictObject({ safetyFactor: stated, windAccountability: stated }),
  associatedConditions: v.strictObject({
    surface: v.literal('paved'),
    surfaceCondition: v.literal('dry'),
    slope: measureSchema(['percent'], 0, 0),
    mass: v.exactOptional(mass),
    pressureAltitude: v.exactOptional(measureSchema(['ftPA'], -2000, 20_000)),
    temperature: v.exactOptional(measureSchema(['degC', 'degF'], -60, 60)),
  }),
  // Only figures to or from 50 ft (or 15 m): those to 35 ft belong to another certification and are refused.
  screenHeight: measureSchema(['ftHeight', 'mHeight'], 49, 50),
  groundRoll: lengthFigures,
  distance: lengthFigures,
  corrections,
};

const printedExample = v.strictObject({
  locator: text,
  configuration: text,
  of: v.picklist(['takeoff', 'landing', 'climb', 'climb progress']),
  at: v.strictObject({
    mass: v.exactOptional(mass),
    from: v.exactOptional(measureSchema(['ftPA'], -2000, 20_000)),
    pressureAltitude: v.exactOptional(measureSchema(['ftPA'], -2000, 20_000)),
    densityAltitude: v.exactOptional(measureSchema(['ftDA'], -5000, 25_000)),
    temperature: v.exactOptional(measureSchema(['degC', 'degF'], -60, 60)),
    isaDeviation: v.exactOptional(measureSchema(['degCDifference'], -60, 60)),
    headwind: v.exactOptional(measureSchema(['kt'], -50, 50)),
    slope: v.exactOptional(measureSchema(['percent'], -10, 10)),
  }),
  printed: v.strictObject({
    groundRoll: v.exactOptional(measureSchema(['m', 'ft'], 1, 20_000)),
    distance: v.exactOptional(measureSchema(['m', 'ft'], 1, 20_000)),
    rateOfClimb: v.exactOptional(measureSchema(['ftPerMin'], -3000, 6000)),
    time: v.exactOptional(measureSchema(['min'], 0, 300)),
    fuel: v.exactOptional(measureSchema(['L', 'USgal', 'kg', 'lb'], 0, 1000)),
    distanceFlown: v.exactOptional(measureSchema(['NM'], 0, 500)),
  }),
  tolerance: numberWithin(0, 200, 'printed units'),
});

/** The schema of a performance data document. */
export const performanceDataSchema = v.strictObject({
  schema: v.literal('groundroll/performance-data/1'),
  identity: v.strictObject({ name: text, description: v.exactOptional(text) }),
  provenance: v.strictObject({
    document: text,
    edition: text,
    transcribedBy: text,
    transcribedOn: calendarDate,
    remarks: v.exactOptional(text),
  }),
  airframe: v.exactOptional(
    v.strictObject({
      wingspan: v.exactOptional(measureSchema(['m', 'ft'], 3, 60)),
      mainTyrePressure: v.exactOptional(measureSchema(['psi', 'hPa'], 5, 300)),
    }),
  ),
  masses: v.strictObject({ maximumTakeoff: mass, maximumLanding: mass }),
  configurations: v.pipe(
    v.array(
      v.strictObject({
        id: text,
        name: text,
        phase: v.picklist(['takeoff', 'landing']),
        flap: text,
        power: text,
        technique: v.picklist(['normal', 'short-field', 'soft-field']),
      }),
    ),
    v.minLength(1, 'at least one configuration is needed'),
  ),
  stallSpeeds: v.array(v.strictObject({ name: v.picklist(['V_S0', 'V_S1']), flap: text, speed: airspeed, mass })),
  speeds: v.array(
    v.strictObject({
      name: v.picklist(['V_X', 'V_Y', 'V_A', 'V_FE', 'V_NO', 'V_NE']),
      flap: text,
      speed: measureSchema(['kias'], 10, 400),
    }),
  ),
  calibrations: v.array(
    v.strictObject({
      flap: text,
      indicated: v.strictObject({ unit: v.literal('kias'), values: v.array(numberWithin(5, 400, 'kias')) }),
      calibrated: v.strictObject({ unit: v.literal('kcas'), values: v.array(numberWithin(5, 400, 'kcas')) }),
    }),
  ),
  crosswind: v.array(v.strictObject({ speed: wind, status: v.picklist(['limitation', 'demonstrated']) })),
  tailwind: v.array(v.strictObject({ speed: wind, status: v.picklist(['limitation', 'demonstrated']) })),
  takeoff: v.array(v.strictObject({ ...distanceData, liftOffSpeed: speedTable, speedAtScreenHeight: speedTable })),
  landing: v.array(v.strictObject({ ...distanceData, approachSpeed: speedTable })),
  climb: v.array(
    v.strictObject({
      configuration: text,
      use: v.picklist(['initial', 'balked landing']),
      flap: text,
      speed: speedTable,
      rateOfClimb: figuresSchema(['ftPerMin'], -3000, 6000),
    }),
  ),
  climbProgress: v.exactOptional(
    v.array(
      v.strictObject({
        name: text,
        flap: text,
        power: text,
        speed: speedTable,
        associatedConditions: v.strictObject({ mass: v.exactOptional(mass) }),
        time: tableSchema(['min'], 0, 300),
        fuel: tableSchema(['L', 'USgal', 'kg', 'lb'], 0, 1000),
        distance: tableSchema(['NM'], 0, 500),
        aboveStandard: v.exactOptional(
          v.strictObject({
            change: measureSchema(['percent'], 0, 100),
            per: measureSchema(['degCDifference'], 1, 50),
            upTo: measureSchema(['degCDifference'], 1, 50),
          }),
        ),
      }),
    ),
  ),
  examples: v.exactOptional(v.array(printedExample)),
}) satisfies v.GenericSchema<unknown, PerformanceData>;
