import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { landingAssessmentSchema, takeoffAssessmentSchema } from '../../src/assessment/result/assessment-schema.ts';
import { codes, criterion, landing, takeoff } from './scenario.ts';

const soft = { 'runway.surface': { kind: 'grass', condition: 'dry', length: 'up to 20 cm', ground: 'soft' } };
const lastTread = (assessment: ReturnType<typeof takeoff>) => assessment.stairs?.steps.at(-1)?.step;

describe('a finished assessment', () => {
  it('says up to which factor a surface would do, where the distance is undetermined for want of one', () => {
    expect(takeoff('takeoff-28', soft).reasons.at(-1)).toMatchObject({
      code: 'break-even-surface',
      parameters: { factor: 1.293 },
    });
    expect(codes(takeoff('takeoff-28').reasons)).not.toContain('break-even-surface');
    expect(codes(takeoff('takeoff-28', { configuration: 'flap-0' }).reasons)).not.toContain('break-even-surface');
  });

  it('calls its last tread by whether a safety factor is in it', () => {
    expect(lastTread(takeoff('takeoff-28'))).toBe('safety factor');
    expect(lastTread(takeoff('takeoff-28', { safetyFactor: 'none' }))).toBe('no safety factor');
    expect(
      lastTread(
        takeoff('takeoff-28', {
          factorSet: 'manufacturer-only',
          'runway.surface': { kind: 'paved', condition: 'dry' },
        }),
      ),
    ).toBe('no safety factor');
    const included = { 'performanceData.takeoff.0.includes.safetyFactor': true };
    expect(lastTread(takeoff('takeoff-28', included))).toBe('no safety factor');
    expect(
      lastTread(
        takeoff('takeoff-28', { ...included, 'performanceData.takeoff.0.includes.safetyFactor': 'not stated' }),
      ),
    ).toBe('safety factor');
  });

  it('has stairs or what is known of them, never both', () => {
    const known = takeoff('takeoff-28');
    expect(known.stairs).toBeDefined();
    expect(Object.keys(known)).not.toContain('stairsKnown');
    const open = takeoff('takeoff-28', soft);
    expect(Object.keys(open)).not.toContain('stairs');
    expect(open.stairsKnown?.map(({ step }) => step)).toEqual(['manual', 'wind']);
    const none = takeoff('takeoff-28', { configuration: 'flap-0' });
    expect(Object.keys(none)).not.toContain('stairs');
    expect(Object.keys(none)).not.toContain('stairsKnown');
  });

  it('has the steps of the safety factor behind the distance', () => {
    const assessment = takeoff('takeoff-28');
    const steps = criterion(assessment, 'takeoff-distance').steps;
    expect(steps).toEqual(assessment.stairs?.steps.at(-1)?.steps);
    expect(steps).toHaveLength(1);
    expect(criterion(takeoff('takeoff-28', soft), 'takeoff-distance').steps).toEqual([]);
  });

  it('has its set, its slope, its speeds and the edges at which those were read', () => {
    const assessment = takeoff('takeoff-28', { 'mass.value': 800 });
    expect(assessment.factorSet.title).toBe('EASA performance class B');
    expect(assessment.slope).toEqual({ value: expect.closeTo((-51 * 0.3048 * 100) / 830, 9), unit: 'percent' });
    expect(assessment.speeds.map(({ name }) => name)).toEqual(['lift-off', 'at 50 ft', 'V_X, flap 15', 'V_Y, flap 0']);
    const edges = assessment.dataNotes.filter(({ code }) => code === 'read-at-edge');
    expect(edges.map(({ parameters }) => parameters['table'])).toEqual(['lift-off speed', '50 ft speed']);
    const refused = takeoff('takeoff-28', { 'mass.value': 800, 'policies.favourableEdge': 'refuse' });
    expect(codes(refused.dataNotes)).not.toContain('read-at-edge');
    expect(refused.speeds.map(({ name }) => name)).toEqual(['V_X, flap 15', 'V_Y, flap 0']);
    const down = landing('landing-10');
    expect(down.speeds[0]).toMatchObject({ name: 'approach', speed: { unit: 'kias' } });
    expect(down.speeds[0]?.steps).toHaveLength(2);
  });

  it('has the reasons of every criterion in their order, and what it does not cover', () => {
    const assessment = takeoff('takeoff-10', { 'runway.obstacles': undefined, 'mass.value': 1051 });
    expect(codes(assessment.reasons)).toContain('obstacles-not-assessed');
    expect(codes(assessment.reasons)[0]).toBe('mass-above-maximum');
    expect(assessment.notAssessed[0]).toBe('obstacles');
    expect(takeoff('takeoff-10').notAssessed[0]).toBe('centre of gravity');
    expect(assessment.limitsOfUse).toHaveLength(2);
    expect(assessment.verdict).toBe('outside');
  });

  it('has hazards of the day, of the wheels and of the phase', () => {
    const wet = landing('quarry-landing-04');
    expect(codes(wet.hazards)).toContain('hazard-hydroplaning');
    const noClimb = landing('landing-10', { 'performanceData.climb': [] });
    expect(codes(noClimb.hazards)).toContain('hazard-no-go-around');
    expect(codes(noClimb.hazards).indexOf('hazard-obstacles')).toBeLessThan(
      codes(noClimb.hazards).indexOf('hazard-no-go-around'),
    );
  });

  it('is what its schema says', () => {
    expect(v.is(takeoffAssessmentSchema, takeoff('takeoff-28'))).toBe(true);
    expect(v.is(takeoffAssessmentSchema, takeoff('takeoff-28', soft))).toBe(true);
    expect(v.is(landingAssessmentSchema, landing('landing-10'))).toBe(true);
    expect(v.is(landingAssessmentSchema, takeoff('takeoff-28'))).toBe(false);
  });
});
