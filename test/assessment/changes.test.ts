import { describe, expect, it } from 'vitest';
import { type Changes, prepareLanding, prepareTakeoff } from '../../src/assessment/index.ts';
import { type Changes as Edits, landing, landingRequest, takeoff, takeoffRequest } from './scenario.ts';

const day = {
  from_deg: 190,
  speed_kt: 7,
  gust_kt: 17,
  gustReported: true,
  range_deg: undefined,
  temperature_degC: 26,
  dewPoint_degC: 16,
  pressure: { qnh_hPa: 1006 },
} as const;

function prepared(phase: 'takeoff' | 'landing') {
  const read =
    phase === 'takeoff' ? prepareTakeoff(takeoffRequest('takeoff-28')) : prepareLanding(landingRequest('landing-10'));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

const distanceOf = (phase: 'takeoff' | 'landing', changes?: Changes) =>
  prepared(phase)
    .compare(day, changes)
    .criteria.find(({ id }) => id === `${phase}-distance`);

describe('changes to a prepared assessment', () => {
  it.each([
    ['takeoff', takeoff('takeoff-28', { mass: { value: 1000, unit: 'kg' } })],
    ['landing', landing('landing-10', { mass: { value: 1000, unit: 'kg' } })],
  ] as const)('give for another mass what the whole %s with that mass gives', (phase, assessment) => {
    const { verdict, criteria } = prepared(phase).compare(day, { mass_kg: 1000 });
    expect(verdict).toBe(assessment.verdict);
    expect(criteria.map(({ id, verdict: each, margin }) => [id, each, margin])).toEqual(
      assessment.criteria.map((each) => [
        each.id,
        each.verdict,
        each.verdict === 'undetermined' ? undefined : each.margin.value,
      ]),
    );
  });

  it('multiply the distance by the technique, and the roll with it', () => {
    const plain = distanceOf('takeoff')?.value as number;
    // 770.2 m.
    expect(plain).toBe(771);
    expect(distanceOf('takeoff', { techniqueFactor: 1.1 })?.value).toBe(Math.ceil(770.2 * 1.1));
    expect(distanceOf('landing', { techniqueFactor: 1 })).toEqual(distanceOf('landing'));
  });

  it('put another factor in the place of that for the surface: at 1.293 the take-off turns', () => {
    expect(distanceOf('takeoff', { surfaceFactor: 1.293 })?.verdict).toBe('within');
    expect(distanceOf('takeoff', { surfaceFactor: 1.294 })?.verdict).toBe('outside');
  });

  it.each(['takeoff', 'landing'] as const)('give the distance of a %s alone as among all criteria', (phase) => {
    const one = prepared(phase);
    for (const changes of [{}, { mass_kg: 900 }, { techniqueFactor: 1.2, surfaceFactor: 1.4 }])
      expect(one.compareDistance(day, changes)).toEqual(
        one.compare(day, changes).criteria.find(({ id }) => id === `${phase}-distance`),
      );
    expect(one.compareDistance(day, { mass_kg: 1 })).toBeUndefined();
  });

  it('leave the prepared request as it was', () => {
    const one = prepared('takeoff');
    const before = one.compare(day);
    one.compare(day, { mass_kg: 1050, techniqueFactor: 1.3, surfaceFactor: 2 });
    expect(one.compare(day)).toEqual(before);
  });

  it.each([
    ['mass_kg', { mass_kg: 49 }],
    ['mass_kg', { mass_kg: Number.NaN }],
    ['surfaceFactor', { surfaceFactor: 0.99 }],
    ['techniqueFactor', { techniqueFactor: 3.1 }],
  ])('are refused where %s is not within its bounds', (parameter, changes) => {
    expect(prepared('takeoff').compare(day, changes)).toMatchObject({
      verdict: 'undetermined',
      criteria: [],
      refused: { parameter },
    });
  });
});

describe('a prepared assessment', () => {
  const soft = { 'runway.surface': { kind: 'grass', condition: 'dry', length: 'up to 20 cm', ground: 'soft' } };
  const lighterSlower = {
    'performanceData.landing.0.approachSpeed': {
      axes: [{ quantity: 'mass', unit: 'kg', values: [850, 1050] }],
      unit: 'kias',
      cells: [52, 57],
    },
  };
  const densityAxis = (cells: readonly number[]) => ({
    axes: [{ quantity: 'densityAltitude', unit: 'ftDA', values: [0, 4000] }],
    unit: 'm',
    cells,
  });
  const alongDensity = {
    'performanceData.takeoff.0.distance': densityAxis([400, 600]),
    'performanceData.takeoff.0.groundRoll': densityAxis([200, 300]),
    'performanceData.takeoff.0.associatedConditions.mass': { value: 1050, unit: 'kg' },
  };

  const whole = (name: string, edits: Edits) =>
    name.startsWith('takeoff') ? takeoff(name, edits).criteria : landing(name, edits).criteria;
  const ready = (name: string, edits: Edits) => {
    const read = name.startsWith('takeoff')
      ? prepareTakeoff(takeoffRequest(name, edits))
      : prepareLanding(landingRequest(name, edits));
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    return read.value;
  };

  it.each<[string, string, Edits]>([
    ['an obstacle ahead', 'takeoff-10', {}],
    ['no safety factor', 'takeoff-10', { safetyFactor: 'none' }],
    ['a speed addition', 'takeoff-28', { liftOffSpeedAddition: { value: 4, unit: 'kt' } }],
    ['a virtual temperature', 'takeoff-28', { 'policies.humidity': 'virtual temperature' }],
    ['tables along the density altitude', 'takeoff-28', alongDensity],
    [
      'tables along the density altitude of humid air',
      'takeoff-28',
      { ...alongDensity, 'policies.humidity': 'virtual temperature' },
    ],
    ['first principles', 'takeoff-28', { ...soft, 'policies.firstPrinciples': 'more adverse' }],
    ['first principles and obstacles', 'takeoff-10', { ...soft, 'policies.firstPrinciples': 'more adverse' }],
    ['obstacles before the threshold', 'landing-28', {}],
    ['an approach speed for each mass', 'landing-10', lighterSlower],
    ['excess height', 'landing-10', { excessHeight: { value: 20, unit: 'ftHeight' } }],
  ])('compares as the whole one does, at each mass: %s', (_what, name, edits) => {
    const one = ready(name, edits);
    for (const mass_kg of [880, 1000, 940]) {
      const { criteria } = one.compare(day, { mass_kg });
      expect(criteria.map(({ id, verdict, value, margin }) => [id, verdict, value, margin])).toEqual(
        whole(name, { ...edits, mass: { value: mass_kg, unit: 'kg' } }).map((each) => [
          each.id,
          each.verdict,
          ...(each.verdict === 'undetermined'
            ? [each.atLeast?.value, undefined]
            : [each.value.value, each.margin.value]),
        ]),
      );
      expect(one.compareDistance(day, { mass_kg })).toEqual(criteria.find(({ id }) => id.endsWith('-distance')));
    }
  });
});
