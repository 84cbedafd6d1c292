import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  assessLanding,
  assessTakeoff,
  type LandingRequest,
  readLandingRequest,
  readTakeoffRequest,
  type TakeoffRequest,
} from '../../src/assessment/index.ts';
import { anyDay } from './any-day.ts';
import { type Changes, example } from './scenario.ts';
import { requestOf } from './worsening.ts';

const names = readdirSync(new URL('../../examples/requests/', import.meta.url)).map((name) =>
  name.replace('.json', ''),
);

const written = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const isTakeoff = (request: TakeoffRequest | LandingRequest) => request.schema === 'groundroll/takeoff-request/1';

function read(json: TakeoffRequest | LandingRequest): TakeoffRequest | LandingRequest {
  const result = isTakeoff(json) ? readTakeoffRequest(json) : readLandingRequest(json);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

function assess(request: TakeoffRequest | LandingRequest) {
  const result = isTakeoff(request)
    ? assessTakeoff(request as TakeoffRequest)
    : assessLanding(request as LandingRequest);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

function changesNothing(json: TakeoffRequest | LandingRequest): void {
  const first = read(json);
  expect(first).toEqual(json);
  expect(read(written(first))).toEqual(first);
  const assessment = assess(json);
  expect(assessment.request).toEqual(json);
  expect(assess(written(assessment.request))).toEqual(assessment);
}

/** Every key that the examples leave out, in units that they do not use. */
const unusual: Changes = {
  mass: { value: 2072.3, unit: 'lb' },
  'runway.length': { value: 2723, unit: 'ft' },
  'runway.aerodromeElevation': { value: 140.123, unit: 'mElevation' },
  'runway.obstacles': [
    { name: 'mast', end: '10', beyond: { value: 0.3, unit: 'NM' }, topElevation: { value: 520, unit: 'ftElevation' } },
  ],
  'weather.wind': {
    source: 'observed',
    from: { value: 190, unit: 'degTrue' },
    speed: { value: 3.6, unit: 'mps' },
    gust: { value: 12.5, unit: 'mph' },
    range: { from: { value: 160, unit: 'degTrue' }, to: { value: 230, unit: 'degTrue' } },
  },
  'weather.temperature': { value: 78.8, unit: 'degF' },
  'weather.dewPoint': undefined,
  'weather.qnh': undefined,
  'weather.qfe': { value: 29.25, unit: 'inHg' },
  policies: {
    headwindShare: { value: 1 / 3, unit: 'ratio' },
    tailwindShare: { value: 2, unit: 'ratio' },
    betweenPrintedValues: 'next-worse',
    reactionTime: { value: 4, unit: 's' },
  },
};

describe('a request read, written and read again', () => {
  it.each(names)('is the same, and so is its assessment: %s', (name) => {
    changesNothing(example(name) as TakeoffRequest | LandingRequest);
  });

  it.each(['takeoff-28', 'landing-10'])('is the same with unusual keys and units: %s', (name) => {
    const declared = { 'runway.ends.0.declaredDistances': undefined, 'runway.ends.1.declaredDistances': undefined };
    changesNothing(example(name, { ...unusual, ...declared }) as TakeoffRequest | LandingRequest);
  });

  it('is the same on any day', () => {
    fc.assert(
      fc.property(anyDay, (day) => changesNothing(requestOf(day))),
      { numRuns: 25 },
    );
  });
});
