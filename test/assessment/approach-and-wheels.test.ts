import { describe, expect, it } from 'vitest';
import { assessTakeoff } from '../../src/assessment/index.ts';
import { codes, criterion, judged, landing, takeoff, takeoffRequest, totals, withoutSteps } from './scenario.ts';

const feet = (value: number) => ({ value, unit: 'ftHeight' });
const mark = (assessment: ReturnType<typeof landing>, id: string) => assessment.marks.find((each) => each.id === id);
const said = (sentences: readonly { code: string; parameters: Readonly<Record<string, unknown>> }[], code: string) =>
  sentences.find((each) => each.code === code)?.parameters;

describe('excess height over the threshold', () => {
  const plain = landing('landing-10');
  const high = landing('landing-10', { excessHeight: feet(10) });

  it('costs what is flown over at the path angle, before the safety factor', () => {
    // 10 ft at 3°: 3.048 m / 0.052408 = 58.16 m.
    expect(totals(high)['excess height']).toBeCloseTo((totals(plain)['speed addition'] as number) + 58.2, 0);
    expect(totals(high)['safety factor']).toBeCloseTo((totals(plain)['safety factor'] as number) + 58.16 / 0.7, 0);
    expect(codes(high.trace.flatMap((each) => (each.kind === 'decision' ? [each] : [])))).toContain(
      'excess-height-paid',
    );
  });

  it('moves no mark on the ground: it lies in the air', () => {
    expect(withoutSteps(high.marks)).toEqual(withoutSteps(plain.marks));
  });
});

describe('the approach path', () => {
  it('aims 50 ft over the tangent past the threshold, farther by what an obstacle takes', () => {
    expect(mark(landing('landing-10'), 'aiming-point')?.at).toEqual({ value: 291, unit: 'm' });
    // 612 m are lost over the pines; 130 m farther out 130 x 0.0524078 / (0.0524078 - 0.0187287) = 202.3 m less: 409.1 + 290.8.
    const farther = { 'runway.obstacles.0.beyond': { value: 155, unit: 'm' } };
    expect(mark(landing('landing-28', farther), 'aiming-point')?.at).toEqual({ value: 700, unit: 'm' });
  });

  it('aims at nothing beyond the far end of the runway', () => {
    // 612 m are lost over the pines: 611.4 + 290.8 are 903 of 830 m.
    const aiming = mark(landing('landing-28'), 'aiming-point');
    expect(aiming?.at).toBeUndefined();
    expect(aiming?.reasons.map(({ code }) => code)).toEqual(['mark-aiming-beyond']);
    // Of 830 m: 538.3 + 290.8 m, and 539.8 + 290.8 m.
    const beyond = (value: number) => ({ 'runway.obstacles.0.beyond': { value, unit: 'm' } });
    expect(mark(landing('landing-28', beyond(72)), 'aiming-point')?.at).toEqual({ value: 830, unit: 'm' });
    expect(mark(landing('landing-28', beyond(71)), 'aiming-point')?.at).toBeUndefined();
  });

  it('says how fast it goes down: ground speed times the tangent', () => {
    const { groundSpeed_kt, rate_ftPerMin } = said(landing('landing-10').dataNotes, 'approach-rate') as {
      groundSpeed_kt: number;
      rate_ftPerMin: number;
    };
    const tangent = groundSpeed_kt * (6076.115 / 60) * Math.tan((3 * Math.PI) / 180);
    expect(rate_ftPerMin).toBeGreaterThanOrEqual(tangent - 10);
    expect(rate_ftPerMin % 10).toBe(0);
  });

  it('warns of a steep one, and of one that goes down faster than a thousand feet a minute', () => {
    const at = (deg: number) => landing('landing-10', { policies: { approachAngle: { value: deg, unit: 'deg' } } });
    expect(codes(at(3.5).hazards)).not.toContain('hazard-steep-approach');
    expect(codes(at(3.6).hazards)).toContain('hazard-steep-approach');
    expect(codes(at(5).hazards)).not.toContain('hazard-approach-rate');
    expect(codes(at(9.5).hazards)).toContain('hazard-approach-rate');
  });

  it('names the path that would lose nothing over a farther obstacle', () => {
    const obstacles = [
      {
        name: 'poplars',
        end: '10',
        beyond: { value: 400, unit: 'm' },
        height: feet(100),
        groundElevation: { value: 387, unit: 'ftElevation' },
      },
    ];
    const assessment = landing('landing-10', { 'runway.obstacles': obstacles });
    // (100 + clearance - 50) ft of height in 400 m before the threshold.
    const clearance_ft = 30;
    const angle = (Math.atan(((100 + clearance_ft - 50) * 0.3048) / 400) * 180) / Math.PI;
    expect(said(assessment.dataNotes, 'approach-angle-without-loss')?.['angle_deg']).toBeCloseTo(
      Math.ceil(angle * 10) / 10,
      9,
    );
    expect(codes(assessment.reasons)).toContain('approach-loss');
  });

  it('leaves no distance, never less than none, where an obstacle takes more than there is', () => {
    const tall = landing('landing-28', { 'runway.obstacles.0.height': { value: 60, unit: 'mHeight' } });
    const { verdict, limit, value, margin } = judged(tall, 'landing-distance');
    expect([verdict, limit, margin]).toEqual(['outside', 0, -(value as number)]);
    expect(said(tall.reasons, 'approach-loss')?.['lost_m']).toBeGreaterThan(830);
  });

  it('says that the decision falls before the threshold where no go-around clears what stands ahead', () => {
    expect(codes(landing('landing-10').hazards)).toContain('hazard-commits-before-threshold');
    expect(codes(landing('landing-28').hazards)).not.toContain('hazard-commits-before-threshold');
  });
});

describe('wheels on a wet or contaminated paved runway', () => {
  const paved = (surface: object) => ({ 'runway.surface': { kind: 'paved', ...surface } });

  it('may hydroplane above 7.7 and 9 times the root of the tyre pressure, rounded down', () => {
    const { hazards } = landing('quarry-landing-04');
    expect(said(hazards, 'hazard-hydroplaning')).toEqual({
      pressure_psi: 29,
      rolling_kt: Math.floor(9 * Math.sqrt(29)),
      touchdown_kt: Math.floor(7.7 * Math.sqrt(29)),
    });
    expect(codes(landing('quarry-landing-04', paved({ condition: 'dry' })).hazards)).not.toContain(
      'hazard-hydroplaning',
    );
    const unknown = landing('quarry-landing-04', { 'performanceData.airframe': undefined });
    expect(codes(unknown.hazards)).toContain('hazard-hydroplaning-unknown');
  });

  it('are warned of with the meaning of the code below 6, and of nothing where there is none', () => {
    const { hazards } = landing('quarry-landing-04', paved({ condition: 'wet', conditionCode: 5 }));
    expect(said(hazards, 'hazard-condition-code')).toEqual({
      code: 5,
      surface: 'frost, wet, or up to 3 mm of slush, dry snow or wet snow',
      braking: 'good',
    });
    for (const surface of [{ condition: 'dry', conditionCode: 6 }, { condition: 'wet' }])
      expect(codes(landing('quarry-landing-04', paved(surface)).hazards)).not.toContain('hazard-condition-code');
    const wetGrass = { kind: 'grass', condition: 'wet', length: 'up to 20 cm', ground: 'firm' };
    expect(codes(landing('quarry-landing-04', { 'runway.surface': wetGrass }).hazards)).not.toContain(
      'hazard-hydroplaning',
    );
  });

  it('have a figure down to code 5 and none below: no factor for a wet runway is meant for snow or ice', () => {
    const at = (conditionCode: number) => landing('quarry-landing-04', paved({ condition: 'wet', conditionCode }));
    expect(judged(at(5), 'landing-distance')).toEqual(judged(landing('quarry-landing-04'), 'landing-distance'));
    for (const code of [4, 3, 2, 1, 0]) {
      expect(judged(at(code), 'landing-distance').verdict).toBe('undetermined');
      expect(said(at(code).hazards, 'hazard-condition-code')).toMatchObject({ code });
    }
  });

  it("have no figure of the manual's for a wet runway either, where snow or ice lies on it", () => {
    const own = [
      { surface: 'paved', condition: 'wet', increase: { value: 20, unit: 'percent' }, percentOf: 'distance' },
    ];
    const changes = (phase: string, conditionCode: number) => ({
      ...paved({ condition: 'wet', conditionCode }),
      [`performanceData.${phase}.0.corrections.surfaces`]: own,
    });
    const down = (code: number) => landing('quarry-landing-04', changes('landing', code));
    const up = (code: number) => takeoff('quarry-takeoff-04', changes('takeoff', code));
    const wet = landing('quarry-landing-04', { 'performanceData.landing.0.corrections.surfaces': own });
    expect(totals(down(5))['surface']).toBe(totals(wet)['surface']);
    expect(judged(down(5), 'landing-distance')).toEqual(judged(wet, 'landing-distance'));
    for (const code of [4, 3, 2, 1, 0]) {
      expect(criterion(down(code), 'landing-distance')).toMatchObject({
        verdict: 'undetermined',
        reasons: [{ code: 'surface-no-factor' }],
      });
      expect(judged(up(code), 'takeoff-distance').verdict).toBe('undetermined');
    }
  });

  it.each([
    [{ kind: 'paved', condition: 'wet', conditionCode: 6 }, 'runway condition code 6 (dry) contradicts "wet"'],
    [{ kind: 'gravel', condition: 'wet', conditionCode: 5 }, 'runway condition codes are for paved runways only'],
    [
      { kind: 'grass', condition: 'wet', length: 'up to 20 cm', ground: 'firm', conditionCode: 3 },
      'runway condition codes are for paved runways only',
    ],
  ])('refuse %o', (surface, message) => {
    expect(assessTakeoff(takeoffRequest('takeoff-28', { 'runway.surface': surface }))).toEqual({
      ok: false,
      faults: [{ path: 'runway.surface.conditionCode', message }],
    });
  });
});

describe('an obstacle beside the centreline', () => {
  const offset = { 'runway.obstacles.0.lateralOffset': { value: 80, unit: 'm' } };

  it('is assessed as if it stood on it, and said to stand beside it with the half-width for two engines', () => {
    const beside = takeoff('takeoff-10', offset);
    expect(judged(beside, 'obstacle')).toEqual(judged(takeoff('takeoff-10'), 'obstacle'));
    expect(said(beside.dataNotes, 'obstacle-beside')).toEqual({ obstacle: 'pines', offset_m: 80 });
    // Half of 10.4 m, 60 m, and an eighth of the 25 m past the end of the TODA.
    expect(said(beside.dataNotes, 'obstacle-beside-strip')).toEqual({ obstacle: 'pines', halfWidth_m: 69 });
  });

  it('has the least half-width before the end of the TODA, and an offset of nothing is none', () => {
    // 855 m out, within 900 m: 5.2 + 60 m. 80.7 m are at least 80.
    const within = takeoff('takeoff-10', {
      'runway.obstacles.0.lateralOffset': { value: 80.7, unit: 'm' },
      'runway.ends.0.declaredDistances.TODA.value': 900,
    });
    expect(said(within.dataNotes, 'obstacle-beside')).toEqual({ obstacle: 'pines', offset_m: 80 });
    expect(said(within.dataNotes, 'obstacle-beside-strip')).toEqual({ obstacle: 'pines', halfWidth_m: 66 });
    const onLine = takeoff('takeoff-10', { 'runway.obstacles.0.lateralOffset': { value: 0, unit: 'm' } });
    expect(codes(onLine.dataNotes)).not.toContain('obstacle-beside');
    expect(codes(takeoff('takeoff-28', { 'runway.obstacles': undefined }).dataNotes)).not.toContain('obstacle-beside');
  });

  it('has no half-width without a wingspan, and no note without an offset', () => {
    const noSpan = takeoff('takeoff-10', { ...offset, 'performanceData.airframe': undefined });
    expect(codes(noSpan.dataNotes)).not.toContain('obstacle-beside-strip');
    expect(codes(takeoff('takeoff-10').dataNotes)).not.toContain('obstacle-beside');
  });
});
