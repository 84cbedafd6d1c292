import { describe, expect, it } from 'vitest';
import type { LandingAssessment, TakeoffAssessment, TraceStep } from '../../src/assessment/index.ts';
import { formulaRecords } from '../../src/register/index.ts';
import { landing, takeoff } from './scenario.ts';

const byId = new Map(formulaRecords.map((record) => [record.id, record]));

const calmer = { 'weather.wind.from': 'variable', 'weather.wind.speed.value': 4, 'weather.wind.gust': undefined };
const leaflet = { factorSet: 'uk-light-aeroplane-leaflet' };
const cases: readonly [string, TakeoffAssessment | LandingAssessment][] = [
  ['take-off on 28', takeoff('takeoff-28')],
  ['take-off on 10', takeoff('takeoff-10')],
  ['landing on 10', landing('landing-10')],
  ['landing on 28', landing('landing-28')],
  ['take-off by QFE', takeoff('takeoff-28', { 'weather.qnh': undefined, 'weather.qfe': { value: 990, unit: 'hPa' } })],
  ['take-off read at virtual temperature', takeoff('takeoff-28', { 'policies.humidity': 'virtual temperature' })],
  ['take-off with a speed addition', takeoff('takeoff-28', { liftOffSpeedAddition: { value: 2, unit: 'kt' } })],
  [
    'take-off 3 % uphill under the leaflet',
    takeoff('takeoff-10', { ...leaflet, 'runway.ends.0.elevation.value': 356 }),
  ],
  ['landing with a variable wind', landing('landing-10', calmer)],
  [
    'take-off over a far tree with a mark',
    takeoff('takeoff-10', { 'runway.obstacles.0.beyond.value': 1500, 'runway.obstacles.0.height.value': 10 }),
  ],
];

const stepsOf = ({ trace }: TakeoffAssessment | LandingAssessment): TraceStep[] =>
  trace.filter((entry): entry is TraceStep => entry.kind === 'step');

/** Every figure of a result with its place, so that -0, 0 and the last bit are told apart. */
function figures(value: unknown, place = ''): [string, unknown][] {
  if (typeof value !== 'object' || value === null) return [[place, value]];
  return Object.entries(value).flatMap(([key, part]) => figures(part, `${place}.${key}`));
}

describe.each(cases)('%s', (_name, assessment) => {
  it('notes a step for every formula it needs, and each has a record', () => {
    const steps = stepsOf(assessment);
    expect(steps.length).toBeGreaterThan(12);
    expect(steps.filter(({ record }) => !byId.has(record)).map(({ record }) => record)).toEqual([]);
  });

  it('gives every recorded result again, bit for bit', () => {
    for (const { record, label, inputs, output } of stepsOf(assessment)) {
      const again = figures(byId.get(record)?.formula(inputs));
      const before = figures(output);
      expect(again.length).toBe(before.length);
      const differing = before.filter(
        ([place, value], i) => again[i]?.[0] !== place || !Object.is(again[i]?.[1], value),
      );
      expect({ label, differing }).toEqual({ label, differing: [] });
    }
  });

  it('gives them again after a way through JSON, as a reviewer would have them', () => {
    for (const { record, label, inputs, output } of JSON.parse(JSON.stringify(stepsOf(assessment))) as TraceStep[]) {
      const again = JSON.stringify(byId.get(record)?.formula(inputs));
      expect(`${label} ${again}`).toBe(`${label} ${JSON.stringify(output)}`);
    }
  });

  it('ends its steps at the figures that are shown', () => {
    const required = assessment.stairs?.required.value ?? Number.NaN;
    const outputs = stepsOf(assessment).map(({ output }) => output);
    expect(outputs.some((output) => typeof output === 'number' && Math.ceil(output - 1e-9) === required)).toBe(true);
  });
});

it('uses, over all cases, most of the records that an assessment has a use for', () => {
  const used = new Set(cases.flatMap(([, assessment]) => stepsOf(assessment).map(({ record }) => record)));
  for (const id of [
    'atmosphere.pressure-altitude',
    'atmosphere.pressure-altitude-from-qfe',
    'atmosphere.virtual-temperature',
    'aircraft.interpolate-cell',
    'wind.reported',
    'wind.used',
    'distance.wind-factor',
    'distance.slope-factor',
    'distance.pro-rated-factor',
    'distance.roll-with-surface',
    'distance.speed-factor',
    'distance.latest-reject-point',
    'flight-path.climb-gradient',
    'flight-path.latest-path-start',
    'flight-path.landing-distance-lost',
  ]) {
    expect(used).toContain(id);
  }
});
