import { describe, expect, it } from 'vitest';
import { type Changes, prepareLanding, prepareTakeoff } from '../../src/assessment/index.ts';
import { landing, landingRequest, takeoff, takeoffRequest } from './scenario.ts';

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
