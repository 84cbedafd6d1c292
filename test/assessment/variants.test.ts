import { describe, expect, it } from 'vitest';
import { assessTakeoff } from '../../src/assessment/index.ts';
import { factorSets } from '../../src/distance/index.ts';
import {
  type Changes,
  codes,
  criterion,
  example,
  judged,
  landing,
  takeoff,
  takeoffRequest,
  totals,
  turning,
} from './scenario.ts';

const grass = (condition: string, length = 'up to 20 cm', ground = 'firm') => ({
  kind: 'grass',
  condition,
  length,
  ground,
});

const faultsOf = (changes: Record<string, unknown>) => {
  const result = assessTakeoff(takeoffRequest('takeoff-28', changes));
  return result.ok ? [] : result.faults;
};

/** 950 kg at 2 000 ft and 20 °C in calm air on a dry, paved, level runway, with no safety factor. */
const asPrinted = {
  'mass.value': 950,
  'runway.surface': { kind: 'paved', condition: 'dry' },
  'runway.ends.0.elevation.value': 2000,
  'runway.ends.1.elevation.value': 2000,
  'runway.obstacles': [],
  'weather.wind': { source: 'METAR', from: { value: 0, unit: 'degTrue' }, speed: { value: 0, unit: 'kt' } },
  'weather.temperature.value': 20,
  'weather.qnh.value': 1013.25,
  safetyFactor: 'none',
};

describe("the manual's own conditions", () => {
  it('give its own figures back, 240 and 485 m', () => {
    const assessment = takeoff('takeoff-28', asPrinted);
    expect(judged(assessment, 'takeoff-run')).toEqual({ verdict: 'within', value: 240, limit: 830, margin: 590 });
    expect(judged(assessment, 'takeoff-distance')).toEqual({ verdict: 'within', value: 485, limit: 830, margin: 345 });
    expect(totals(assessment)).toEqual({ manual: 485, wind: 485, 'no safety factor': 485 });
  });

  it('put into the headline that no safety factor was applied', () => {
    expect(codes(takeoff('takeoff-28', asPrinted).headline)).toContain('safety-factor-none');
    expect(codes(takeoff('takeoff-28').headline)).not.toContain('safety-factor-none');
    expect(codes(landing('landing-10', { safetyFactor: 'none' }).headline)).toContain('safety-factor-none');
  });
});

describe('the day a little different', () => {
  it('turns to outside on wet grass', () => {
    const assessment = takeoff('takeoff-28', { 'runway.surface': grass('wet') });
    expect(assessment.verdict).toBe('outside');
    expect(judged(assessment, 'takeoff-distance')).toEqual({ verdict: 'outside', value: 835, limit: 830, margin: -5 });
    expect(codes(assessment.hazards)).toContain('hazard-wet-grass');
  });

  it('stays within at 185° and turns to outside at 180°', () => {
    const at = (from: number) => takeoff('takeoff-28', { 'weather.wind.from.value': from });
    expect(judged(at(185), 'takeoff-distance')).toMatchObject({ verdict: 'within', value: 814, margin: 16 });
    expect(judged(at(180), 'takeoff-distance')).toMatchObject({ verdict: 'outside', value: 855, margin: -25 });
    expect(at(180).verdict).toBe('outside');
  });

  it('costs more with the factor of the other set', () => {
    const assessment = takeoff('takeoff-28', { factorSet: 'uk-light-aeroplane-leaflet' });
    expect(judged(assessment, 'takeoff-distance')).toMatchObject({ verdict: 'within', value: 820 });
  });

  it('is outside above the maximum mass, whatever the runway', () => {
    const assessment = takeoff('takeoff-28', { 'mass.value': 1051, 'runway.length.value': 3000 });
    expect(assessment.verdict).toBe('outside');
    expect(judged(assessment, 'mass')).toEqual({ verdict: 'outside', value: 1051, limit: 1050, margin: -1 });
    expect(codes(assessment.reasons)).toContain('mass-above-maximum');
  });
});

describe('a configuration', () => {
  it('without a table is undetermined, and says which', () => {
    const assessment = takeoff('takeoff-28', { configuration: 'flap-0' });
    expect(assessment.verdict).toBe('undetermined');
    expect(criterion(assessment, 'takeoff-distance')).toMatchObject({ verdict: 'undetermined' });
    expect(criterion(assessment, 'takeoff-distance').reasons[0]).toMatchObject({
      code: 'no-table',
      parameters: { configuration: 'flap-0' },
    });
    expect(assessment.stairs).toBeUndefined();
  });

  it('without a table still has its limits, rounded down: 2723 ft are 829.97 m', () => {
    const assessment = takeoff('takeoff-28', {
      configuration: 'flap-0',
      'runway.length': { value: 2723, unit: 'ft' },
      'runway.ends.1.declaredDistances': undefined,
    });
    for (const id of ['takeoff-run', 'takeoff-distance'])
      expect(criterion(assessment, id)).toMatchObject({ verdict: 'undetermined', limit: { value: 829, unit: 'm' } });
  });

  it('not named among several is refused with the choice', () => {
    const [fault, ...others] = faultsOf({ configuration: undefined });
    expect(others).toEqual([]);
    expect(fault?.path).toBe('configuration');
    expect(fault?.message).toContain('"flap-15", "flap-0"');
  });

  it('may go unnamed where there is one', () => {
    expect(landing('landing-10', { configuration: undefined }).verdict).toBe('within');
  });

  it('of the other phase is refused', () => {
    expect(faultsOf({ configuration: 'flap-35' })).toMatchObject([{ path: 'configuration' }]);
  });
});

describe('a condition without a figure', () => {
  const soft = { 'runway.surface': grass('dry', 'up to 20 cm', 'soft') };

  it('soft ground has no factor in the class B set: undetermined, with what it may cost', () => {
    const assessment = takeoff('takeoff-28', soft);
    expect(assessment.verdict).toBe('undetermined');
    expect(codes(criterion(assessment, 'takeoff-distance').reasons)).toEqual(['surface-no-factor']);
    expect(turning(assessment)['surface factor']).toBe(1.293);
    expect(assessment.reasons.at(-1)).toMatchObject({ code: 'break-even-surface', parameters: { factor: 1.293 } });
  });

  it('soft ground is "at least 1.25" in the leaflet: it can prove outside, never within', () => {
    const confirmations = [{ factorId: 'uk-leaflet-takeoff-soft', edition: '7c', date: '2026-07-14' }];
    const on = (changes: object) =>
      takeoff('takeoff-28', {
        ...soft,
        factorSet: 'uk-light-aeroplane-leaflet',
        'policies.confirmations': confirmations,
        ...changes,
      });
    expect(judged(on({}), 'takeoff-distance')).toMatchObject({ verdict: 'outside', value: 1025, margin: -195 });
    const long = on({
      'runway.length.value': 1200,
      'runway.ends.1.declaredDistances': undefined,
      'runway.ends.0.declaredDistances': undefined,
    });
    expect(criterion(long, 'takeoff-distance')).toMatchObject({
      verdict: 'undetermined',
      limit: { value: 1200 },
      atLeast: { value: 1025, unit: 'm' },
    });
    expect(long.verdict).toBe('undetermined');
    expect(codes(long.reasons)).toContain('break-even-surface');
  });

  it('very short wet grass is "at most 1.60": it can prove within, never outside', () => {
    const veryShort = { 'runway.surface': grass('wet', 'very short') };
    const within = landing('landing-10', { ...veryShort, 'weather.wind.gust': undefined });
    expect(judged(within, 'landing-distance').verdict).toBe('undetermined');
    const long = landing('landing-10', {
      ...veryShort,
      'runway.length.value': 1200,
      'runway.ends.0.declaredDistances': undefined,
      'runway.ends.1.declaredDistances': undefined,
    });
    expect(judged(long, 'landing-distance')).toMatchObject({ verdict: 'within' });
  });

  it('long grass and snow have none', () => {
    for (const surface of [grass('dry', 'over 20 cm'), { kind: 'snow' }, { kind: 'gravel', condition: 'dry' }]) {
      const assessment = takeoff('takeoff-28', { 'runway.surface': surface });
      expect(assessment.verdict).toBe('undetermined');
      expect(turning(assessment)['surface factor']).toBe(1.293);
    }
  });

  it('leaves the distance available, without the noise of a difference: 700.3 - 189.3 m are 511', () => {
    const assessment = landing('landing-10', {
      'runway.surface': { kind: 'snow' },
      'runway.length.value': 700.3,
      'runway.ends.0.displacedThreshold': { value: 189.3, unit: 'm' },
      'runway.ends.0.declaredDistances': undefined,
      'runway.ends.1.declaredDistances': undefined,
    });
    expect(criterion(assessment, 'landing-distance')).toMatchObject({ verdict: 'undetermined', limit: { value: 511 } });
  });

  it('a blank cell beside the day is undetermined', () => {
    const blank = (place: string) =>
      takeoff('takeoff-28', { [`performanceData.takeoff.0.distance.cells.${place}`]: null });
    const assessment = blank('1.0.2');
    expect(assessment.verdict).toBe('undetermined');
    expect(codes(criterion(assessment, 'takeoff-distance').reasons)).toEqual(['blank-cell']);
    expect(assessment.breakEvens.map(({ quantity }) => quantity)).toContain('surface factor');
    // The cells that the day does not touch do not matter.
    expect(blank('2.2.4').verdict).toBe('within');
    expect(judged(blank('2.2.4'), 'takeoff-distance')).toMatchObject({ value: 771 });
  });

  it('off the unfavourable edge is undetermined; off the favourable edge is read at the edge', () => {
    expect(takeoff('takeoff-28', { 'weather.temperature.value': 41 }).verdict).toBe('undetermined');
    const edge = takeoff('takeoff-28', { 'mass.value': 800 });
    expect(totals(edge)['manual']).toBe(totals(takeoff('takeoff-28', { 'mass.value': 850 }))['manual']);
    expect(edge.trace.some((entry) => entry.kind === 'decision' && entry.code === 'read-at-edge')).toBe(true);
    const refused = takeoff('takeoff-28', { 'mass.value': 800, 'policies.favourableEdge': 'refuse' });
    expect(refused.verdict).toBe('undetermined');
  });

  it('a tailwind beyond the last printed one is outside, because that is a limitation', () => {
    const assessment = takeoff('takeoff-28', {
      'weather.wind.from.value': 112,
      'weather.wind.speed.value': 9,
      'weather.wind.gust': undefined,
    });
    expect(assessment.verdict).toBe('outside');
    expect(judged(assessment, 'takeoff-distance')).toEqual({ verdict: 'undetermined' });
    expect(codes(assessment.advice)).toContain('choose-another');
  });

  it('a slope beyond 2 % has no factor under the class B set', () => {
    const steep = { 'runway.ends.1.elevation.value': 445, 'runway.obstacles': [] };
    expect(takeoff('takeoff-10', steep).verdict).toBe('undetermined');
    expect(codes(takeoff('takeoff-10', steep).hazards)).toContain('hazard-steep-slope');
  });
});

describe('the pressure', () => {
  it('of a high at 30 ft still answers: read at the edge of the table', () => {
    const assessment = takeoff('takeoff-28', {
      'runway.ends.0.elevation.value': 30,
      'runway.ends.1.elevation.value': 30,
      'runway.obstacles': [],
      'weather.qnh.value': 1035,
    });
    expect(assessment.verdict).toBe('within');
    const air = assessment.headline.find(({ code }) => code === 'pressure-altitude');
    expect(air?.parameters['pressureAltitude_ft']).toBeLessThan(-500);
    const seaLevel = takeoff('takeoff-28', {
      'runway.ends.0.elevation.value': 0,
      'runway.ends.1.elevation.value': 0,
      'runway.obstacles': [],
      'weather.qnh.value': 1013.25,
    });
    expect(totals(assessment)['manual']).toBe(totals(seaLevel)['manual']);
  });

  it('of a QFE under the key of the QNH is answered, with all three figures in one sentence at the head', () => {
    const assessment = takeoff('takeoff-28', {
      'runway.ends.0.elevation.value': 500,
      'runway.ends.1.elevation.value': 500,
      'runway.obstacles': [],
      'weather.qnh.value': 988,
    });
    const text = assessment.headline.find(({ code }) => code === 'pressure-altitude')?.text ?? '';
    expect(text).toContain('QNH 988 hPa');
    expect(text).toContain('500 ft elevation');
    expect(text).toMatch(/1.197 ft pressure altitude/);
  });

  it('of a QFE under its own key needs no elevation', () => {
    const assessment = takeoff('takeoff-28', {
      'weather.qnh': undefined,
      'weather.qfe': { value: 1013.25, unit: 'hPa' },
    });
    const air = assessment.headline.find(({ code }) => code === 'pressure-altitude-from-qfe');
    expect(air?.parameters['pressureAltitude_ft']).toBeCloseTo(0, 6);
  });
});

describe('obstacles', () => {
  it('that nobody looked for leave the verdict undetermined, and are not assessed', () => {
    for (const assessment of [
      takeoff('takeoff-28', { 'runway.obstacles': undefined }),
      landing('landing-10', { 'runway.obstacles': undefined }),
    ]) {
      expect(assessment.verdict).toBe('undetermined');
      expect(codes(assessment.reasons)).toContain('obstacles-not-assessed');
      expect(assessment.notAssessed.some((each) => each.includes('obstacles') && !each.includes('listed'))).toBe(true);
    }
  });

  it('that there are none of is said by an empty list', () => {
    const assessment = takeoff('takeoff-10', { 'runway.obstacles': [] });
    expect(assessment.verdict).toBe('within');
    expect(codes(assessment.dataNotes)).toContain('obstacles-none');
  });

  it('may be given by the elevation of the top', () => {
    const byTop = { name: 'pines', end: '28', beyond: { value: 25, unit: 'm' } };
    const top = { value: 438 * 0.3048 + 28, unit: 'mElevation' };
    const assessment = takeoff('takeoff-10', { 'runway.obstacles': [{ ...byTop, topElevation: top }] });
    expect(judged(assessment, 'obstacle')).toEqual(judged(takeoff('takeoff-10'), 'obstacle'));
  });
});

describe('an obstacle before the 50 ft point', () => {
  const at = (height_ft: number, changes: Changes = {}) =>
    takeoff('takeoff-10', {
      ...changes,
      'runway.length.value': 600,
      'runway.ends.0.declaredDistances': { TORA: { value: 600, unit: 'm' }, TODA: { value: 900, unit: 'm' } },
      'runway.ends.1.declaredDistances': undefined,
      'runway.ends.0.elevation.value': 438,
      'runway.obstacles.0.height': { value: height_ft, unit: 'ftHeight' },
      'policies.verticalClearance': { value: 30, unit: 'ftHeight' },
    });

  it('is outside where top and clearance reach 50 ft, because no height is assumed there', () => {
    expect(judged(at(20), 'obstacle')).toEqual({ verdict: 'outside', value: 49, limit: 50, margin: -1 });
    expect(judged(at(33), 'obstacle')).toEqual({ verdict: 'outside', value: 49, limit: 63, margin: -14 });
  });

  it('is called by the height that is missing, not by a gradient', () => {
    const { verdict, headline, criteria } = at(200);
    expect(verdict).toBe('outside');
    expect(headline[0]?.text).toContain('the height over pines, 181 ft short');
    expect(criteria.find(({ id }) => id === 'obstacle')).toMatchObject({
      subject: 'the height over pines',
      quantity: 'height over pines',
    });
  });

  it('is outside no more where the distance is no more than computed, for the point may lie before it', () => {
    const grass = (kind: string) => {
      const set = structuredClone(factorSets['easa-class-b']);
      const surfaces = set.takeoff.surfaces.map((each) => ({ ...each, kind }));
      return { factorSet: { ...set, takeoff: { ...set.takeoff, surfaces } } };
    };
    expect(judged(at(33, grass('value')), 'obstacle')).toEqual({
      verdict: 'outside',
      value: 49,
      limit: 63,
      margin: -14,
    });
    expect(judged(at(33, grass('at-least')), 'obstacle')).toMatchObject({ verdict: 'outside' });
    expect(judged(at(33, grass('at-most')), 'obstacle')).toEqual({ verdict: 'undetermined' });
    expect(codes(criterion(at(33, grass('at-most')), 'obstacle').reasons)).toEqual([
      'obstacle-before-screen',
      'bound-at-most',
    ]);
  });

  it('is undetermined below that', () => {
    expect(judged(at(19), 'obstacle')).toEqual({ verdict: 'undetermined' });
    expect(codes(criterion(at(19), 'obstacle').reasons)).toEqual(['obstacle-before-screen']);
  });
});

describe('the two norths', () => {
  const magnetic = {
    'runway.ends.0.direction': { value: 99, unit: 'degMagnetic' },
    'runway.ends.1.direction': { value: 279, unit: 'degMagnetic' },
  };

  it('mixed without a variation are refused', () => {
    const faults = faultsOf({ ...magnetic, variation: undefined });
    expect(faults.map(({ path }) => path)).toEqual(['variation']);
    expect(faults[0]?.message).toContain('degTrue');
    expect(faults[0]?.message).toContain('degMagnetic');
  });

  it('mixed with the variation give the same as all true', () => {
    const [mixed, all] = [takeoff('takeoff-28', magnetic), takeoff('takeoff-28')];
    expect(mixed.criteria).toEqual(all.criteria);
    expect(totals(mixed)).toEqual(totals(all));
    expect(turning(mixed)).toEqual(turning(all));
    expect(codes(mixed.dataNotes)).toContain('north-converted');
    expect(codes(all.dataNotes)).not.toContain('north-converted');
  });

  it('taken for each other would be 106 m short, which is why nothing is converted silently', () => {
    const mixedUp = takeoff('takeoff-28', {
      'runway.ends.0.direction.value': 99,
      'runway.ends.1.direction.value': 279,
    });
    expect(judged(mixedUp, 'takeoff-distance')).toMatchObject({ verdict: 'within', value: 665 });
  });

  it('are settled by the source of the report', () => {
    expect(faultsOf({ 'weather.wind.from.unit': 'degMagnetic' }).map(({ path }) => path)).toEqual([
      'weather.wind.from',
    ]);
  });
});

describe('a wind without a direction', () => {
  const vrb = {
    'weather.wind': { source: 'METAR', from: 'variable', speed: { value: 3, unit: 'kt' } },
  };

  it('counts in full as a tailwind and as a crosswind', () => {
    const assessment = takeoff('takeoff-28', vrb);
    // 150 % of 3 kt: 443.0 x (1 + 0.045 x 4.5) x 1.2 x 1.25.
    expect(judged(assessment, 'takeoff-distance')).toMatchObject({ verdict: 'within', value: 800 });
    const [crosswind] = assessment.criteria.filter(({ id }) => id === 'crosswind');
    expect(crosswind).toMatchObject({ value: { value: 3, unit: 'kt' } });
    const [tailwind] = assessment.criteria.filter(({ id }) => id === 'tailwind');
    expect(tailwind).toMatchObject({ value: { value: 5, unit: 'kt' } });
    expect(codes(assessment.dataNotes)).toContain('direction-unknown');
  });

  it('is the same from both ends of a level runway', () => {
    const level = { ...vrb, 'runway.ends.0.elevation.value': 438, 'runway.obstacles': [] };
    expect(totals(takeoff('takeoff-10', level))).toEqual(totals(takeoff('takeoff-28', level)));
  });

  it('with a gust above 150 % of the mean counts the gust', () => {
    const gusting = { ...vrb, 'weather.wind.gust': { value: 7, unit: 'kt' } };
    const [tailwind] = takeoff('takeoff-28', gusting).criteria.filter(({ id }) => id === 'tailwind');
    expect(tailwind).toMatchObject({ value: { value: 7, unit: 'kt' } });
  });

  it('says that an unreported gust is unknown, not absent', () => {
    expect(codes(takeoff('takeoff-28', vrb).dataNotes)).toContain('gust-unknown');
  });
});

describe('a recalled factor', () => {
  const wetPaved = {
    'runway.surface': { kind: 'paved', condition: 'wet' },
    factorSet: 'uk-light-aeroplane-leaflet',
  };
  const confirmed = (factorId: string) => ({
    ...wetPaved,
    'policies.confirmations': [{ factorId, edition: '7c', date: '2026-07-14' }],
  });

  it('decides nothing until it is confirmed', () => {
    const assessment = takeoff('takeoff-28', wetPaved);
    expect(assessment.verdict).toBe('undetermined');
    expect(judged(assessment, 'takeoff-distance')).toEqual({ verdict: 'undetermined' });
    // Run and distance rest on it; it is said once.
    const recalled = assessment.reasons.filter(({ code }) => code === 'recalled-factor');
    expect(recalled).toMatchObject([{ parameters: { factorId: 'uk-leaflet-takeoff-paved-wet' } }]);
    expect(landing('landing-10', wetPaved).verdict).toBe('undetermined');
  });

  it('decides once it is confirmed', () => {
    const assessment = takeoff('takeoff-28', confirmed('uk-leaflet-takeoff-paved-wet'));
    // 443.0 x 1.159 x 1.00 x 1.33.
    expect(judged(assessment, 'takeoff-distance')).toMatchObject({ verdict: 'within', value: 683 });
    expect(landing('landing-10', confirmed('uk-leaflet-landing-paved-wet')).verdict).toBe('within');
  });

  it('is not confirmed by confirming another, and a confirmation of nothing is a fault', () => {
    expect(takeoff('takeoff-28', confirmed('uk-leaflet-takeoff-soft')).verdict).toBe('undetermined');
    const result = assessTakeoff(takeoffRequest('takeoff-28', confirmed('uk-leaflet-takeoff-fog')));
    expect(result).toMatchObject({ ok: false, faults: [{ path: 'policies.confirmations[0].factorId' }] });
  });
});

describe('an aeroplane whose manual prints a single figure', () => {
  const single = (value: number, unit = 'm') => ({ axes: [], unit, cells: value });
  const stated = {
    surface: 'paved',
    surfaceCondition: 'dry',
    slope: { value: 0, unit: 'percent' },
    mass: { value: 1050, unit: 'kg' },
    pressureAltitude: { value: 0, unit: 'ftPA' },
    temperature: { value: 15, unit: 'degC' },
  };
  const base = {
    'performanceData.takeoff.0.associatedConditions': stated,
    'performanceData.takeoff.0.groundRoll': single(200),
    'performanceData.takeoff.0.distance': single(390),
    factorSet: 'uk-light-aeroplane-leaflet',
    'runway.obstacles': [],
    'weather.wind': asPrinted['weather.wind'],
    'weather.dewPoint': undefined,
    'weather.qnh.value': 1013.25,
  };

  // The worked example printed with the leaflet's factors (known from memory): 390 m x 1.33 = 519 m.
  it('is 519 m with the safety factor alone', () => {
    const assessment = takeoff('takeoff-28', {
      ...base,
      'runway.surface': { kind: 'paved', condition: 'dry' },
      'runway.ends.0.elevation.value': 0,
      'runway.ends.1.elevation.value': 0,
      'weather.temperature.value': 15,
    });
    expect(judged(assessment, 'takeoff-distance')).toMatchObject({ verdict: 'within', value: 519 });
  });

  // 390 m x 1.2 dry grass x 1.1 for 2 % uphill x 1.05 for 500 ft x 1.1 for 10 °C x 1.33 = 791 m.
  it('is 791 m at 500 ft, 10 °C warmer, on dry grass, 2 % uphill', () => {
    const assessment = takeoff('takeoff-10', {
      ...base,
      'runway.ends.0.elevation': { value: 500 * 0.3048 - 16.6, unit: 'mElevation' },
      'runway.ends.1.elevation.value': 500,
      'weather.temperature.value': 25,
    });
    expect(totals(assessment)['safety factor']).toBe(790.8);
    expect(judged(assessment, 'takeoff-distance')).toMatchObject({ verdict: 'within', value: 791 });
    expect(assessment.stairs?.steps.map(({ step, factor }) => [step, Number(factor.toFixed(4))])).toEqual([
      ['manual', 1],
      ['elevation', 1.05],
      ['temperature', 1.1],
      ['wind', 1],
      ['surface', 1.2],
      ['slope', 1.1],
      ['safety factor', 1.33],
    ]);
  });

  it('has no figure for heat under a set without a rule for it', () => {
    const assessment = takeoff('takeoff-28', {
      ...base,
      factorSet: 'easa-class-b',
      'weather.temperature.value': 16,
      'runway.ends.0.elevation.value': 0,
      'runway.ends.1.elevation.value': 0,
    });
    expect(codes(criterion(assessment, 'takeoff-distance').reasons)).toEqual(['temperature-not-covered']);
  });
});

describe('speeds that are flown faster', () => {
  it('cost landing distance, unless the policy ignores it', () => {
    const faster = landing('landing-10', { approachSpeedAddition: { value: 3, unit: 'kt' } });
    // 60 KIAS is 61.5 KCAS: 438.4 x (61.5 / 59.1)² = 474.7.
    expect(totals(faster)['speed addition']).toBe(474.7);
    const ignored = landing('landing-10', { 'policies.speedAdditionInDistance': 'ignored' });
    expect(totals(ignored)['speed addition']).toBeUndefined();
    // 438.4 / 0.7.
    expect(judged(ignored, 'landing-distance')).toMatchObject({ value: 627 });
  });

  it('cost ground roll at take-off', () => {
    const faster = takeoff('takeoff-28', { liftOffSpeedAddition: { value: 2, unit: 'kt' } });
    // At 940 kg the table's roll belongs to 47.7 KIAS, 50.16 KCAS; 50 KIAS is 52 KCAS: 359.8 x ((52 / 50.16)² - 1) = 26.9 m.
    expect(totals(faster)['speed addition']).toBe(643.1);
  });
});

it('has examples that read without a fault', () => {
  for (const name of ['takeoff-28', 'takeoff-10']) {
    expect(assessTakeoff(example(name) as never).ok).toBe(true);
  }
});
