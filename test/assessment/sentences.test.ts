import { describe, expect, it } from 'vitest';
import { estimateReasons } from '../../src/assessment/result/estimate-reasons.ts';
import { limitsOfUse, notAssessed } from '../../src/assessment/result/limits-of-use.ts';
import { sentence, sentenceCodes } from '../../src/assessment/result/sentences.ts';

const text = (...of: Parameters<typeof sentence>) => sentence(...of).text;

describe('a sentence', () => {
  // Whatever it asks for is 2, in kilograms.
  const anything = new Proxy({}, { get: (_target, key) => (key === 'unit' ? 'kg' : 2) });

  it.each(sentenceCodes())('of the code %s is a whole one', (code) => {
    const words = text(code, anything);
    expect(words).toMatch(/^\S.*\S\.$/s);
    expect(words).not.toMatch(/undefined\b(?! is)|NaN|\[object/);
  });

  it('keeps its code and its figures', () => {
    const parameters = { cap_kt: 15 };
    expect(sentence('headwind-capped', parameters)).toEqual({
      code: 'headwind-capped',
      parameters,
      text: "The headwind is used up to the manual's last printed wind, 15 kt.",
    });
    expect(sentence('tables-read-dry').parameters).toEqual({});
  });

  it('gives the value that a table does not reach to a tenth', () => {
    const parameters = { table: 'distance', quantity: 'temperature', given: 40.5, min: 0, max: 40, unit: 'degC' };
    expect(text('off-table', parameters)).toBe(
      'The distance table ends at 0 °C to 40 °C of temperature; 40.5 °C is beyond it.',
    );
  });

  it('says to which side a direction is turned', () => {
    const spread = { angle_deg: 102, first: 'distance 811 m, within limits', second: 'distance 729 m, within limits' };
    const sides =
      ': 5° backed (anticlockwise) distance 811 m, within limits, 5° veered (clockwise) distance 729 m, within limits.';
    expect(text('wind-near-abeam', spread)).toBe(
      `The wind is 102° off the runway. Reported directions are rounded to 10°${sides}`,
    );
    expect(text('direction-from-designator', spread)).toContain(`5° out, as if the wind were${sides}`);
  });

  it('gives shares in percent', () => {
    expect(text('headwind-used', { wind_kt: 3.5, share: 0.5 })).toContain('3.50 kt is used: 50 % of the least');
    expect(text('tailwind-used', { wind_kt: 3.5, share: 1.5 })).toContain('150 % of the mean');
  });

  it('says how far above a top or below it a path passes, without a sign', () => {
    const passes = (factored_ft: number, unfactored_ft: number) =>
      text('obstacle-clearance', { obstacle: 'pines', factored_ft, unfactored_ft, clearance_ft: 50 });
    expect(passes(-30, 12)).toBe(
      'pines: the path from the factored distance passes 30 ft below its top, from the unfactored distance 12 ft above its top; 50 ft are asked.',
    );
    expect(passes(0, 0)).toContain('passes 0 ft above its top');
  });

  it('gives a limit with its decimals, rounded down', () => {
    const limit = (value: number, unit: string) =>
      text('other-limit-tailwind', { limit: value, unit, status: 'limitation' });
    expect(limit(8, 'kt')).toBe('The tailwind limit (limitation) is 8 kt.');
    expect(limit(7.7, 'mps')).toBe('The tailwind limit (limitation) is 7.7 m/s.');
    expect(text('other-limit-mass', { limit: 2316.5, unit: 'lb' })).toMatch(/is 2.?316\.5 lb\.$/);
    expect(text('mass-above-maximum', { mass: 750.8, limit: 750.5, unit: 'kg' })).toBe(
      '750.8 kg is above the maximum, 750.5 kg.',
    );
    expect(text('mass-above-maximum', { mass: 751, limit: 750, unit: 'kg' })).toBe(
      '751.0 kg is above the maximum, 750 kg.',
    );
    // Never as if it were not above.
    expect(text('mass-above-maximum', { mass: 750.04, limit: 750, unit: 'kg' })).toContain('750.1 kg is above');
    // 7.7 m/s are 14.97 kt.
    expect(text('crosswind-demonstrated-informs', { crosswind_kt: 15, limit_kt: 14.9676 })).toContain(
      '15 kt of crosswind are above the 14.9 kt demonstrated',
    );
  });

  it('gives what is asked and what counts against the pilot rounded up, and never as if it were not beyond a limit', () => {
    const clearance = { obstacle: 'pines', factored_ft: 49, unfactored_ft: 60 };
    // 15 m are 49.2 ft; 15.24 m, 50 ft with a binary tail.
    expect(text('obstacle-clearance', { ...clearance, clearance_ft: 15 / 0.3048 })).toContain('; 50 ft are asked');
    expect(text('obstacle-clearance', { ...clearance, clearance_ft: 50 + 1e-12 })).toContain('; 50 ft are asked');
    expect(text('excess-height-paid', { height_ft: 20.3, angle_deg: 3 })).toContain('threshold 21 ft too high');
    expect(text('gust-unknown', { threshold_kt: 18, used_kt: 7.2 })).toContain(' 8 kt are used');
    expect(text('hazard-gusts', { increment_kt: 9.2 })).toContain('Gusts of 10 kt above the mean: expect');
    expect(text('hazard-gusts-assumed', { increment_kt: 9.2 })).toBe(
      'No gust is reported. By the policy chosen gusts of 10 kt above the mean are assumed: airspeed and drift may change by as much.',
    );
    expect(text('tailwind-beyond-manual', { wind_kt: 8.04, cap_kt: 8 })).toContain('8.1 kt is beyond');
    expect(text('tailwind-beyond-manual', { wind_kt: 8.04, cap_kt: 7.96 })).toContain('tailwind, 7.9 kt:');
    expect(text('no-tailwind-law', { wind_kt: 1.02 })).toContain('a tailwind of 1.1 kt');
    expect(text('beyond-pro-rating', { steps: 2.01, most: 2 })).toContain('2.1 steps');
    expect(text('hazard-steep-approach', { angle_deg: 3.51 })).toContain('at 3.6° is steeper than 3.5°');
    expect(text('slope-beyond-set', { slope_percent: 2.02, limit_percent: 2 })).toContain(
      'uphill 2.1 % is beyond the 2 %',
    );
    expect(text('slope-beyond-manual', { slope_percent: -1.62, limit_percent: 1.5 })).toBe(
      "The slope downhill 1.7 % is beyond the manual's last printed slope, 1.5 %.",
    );
    expect(text('hazard-steep-slope', { slope_percent: -2.02 })).toContain('downhill 2.1 %');
  });

  it('gives what limits rounded down, and what was put in with its decimal', () => {
    const at = { elevation_ft: 437.2, pressureAltitude_ft: 640.2 };
    expect(text('pressure-altitude', { ...at, qnh_hPa: 1006.4 })).toBe(
      'QNH 1\u00a0006.4 hPa at 438 ft elevation: 641 ft pressure altitude.',
    );
    expect(text('pressure-altitude', { ...at, qnh_hPa: 1006.98 })).toContain('1\u00a0006.9 hPa');
    expect(text('pressure-altitude-from-qfe', { ...at, qfe_hPa: 990 })).toContain('QFE 990 hPa');
    expect(text('headwind-capped', { cap_kt: 14.6 })).toContain('wind, 14.6 kt.');
    // 2 301 lb are 1 043.716 kg.
    expect(text('mass-not-covered', { table: 'take-off', limit_kg: 1043.716 })).toContain('up to 1\u00a0043.7 kg and');
    expect(text('elevation-not-covered', { table: 'take-off', limit_ft: 1999.8 })).toContain(
      'up to 1\u00a0999.8 ft pressure altitude and',
    );
    expect(text('temperature-not-covered', { table: 'take-off', limit_degC: 14.96 })).toContain('up to 14.9 °C and');
    expect(text('crosswind-against-stall', { limit_kt: 8.77, crosswind_kt: 9 })).toContain('0.2 V_S0 is 8.7 kt');
    expect(text('addition-below-half-gust', { addition_kt: 2.97, half_kt: 2.96 })).toMatch(/^2\.9 kt .* is 3\.0 kt\.$/);
  });

  it('gives the figures of a manual and of a set as they are printed', () => {
    const axis = { table: 'distance', quantity: 'mass', min: 850.4, max: 1043.3, unit: 'kg' };
    expect(text('off-table', { ...axis, given: 1043.32 })).toContain(
      '850.4 kg to 1\u00a0043.3 kg of mass; 1\u00a0043.4 kg',
    );
    expect(text('off-table', { ...axis, given: 850.38 })).toContain('; 850.3 kg is beyond it');
    expect(text('read-at-edge', { ...axis, given: 840, edge: 850.4 })).toContain('its edge, 850.4 kg.');
    expect(text('surface-at-least', { condition: 'soft', factor: 1.255 })).toContain('"at least 1.255"');
    expect(text('surface-at-most', { condition: 'soft', factor: 1.2 })).toContain('"at most 1.20"');
    expect(text('slope-of-set', { slope_percent: 1.5, percentPerPercent: 7.5 })).toContain('7.5 % for each 1 %');
  });

  it('gives two bounds as a band, and equal ones as one figure', () => {
    const parameters = { surface: 'wet grass', leastFriction: 0.05, greatestFriction: 0.1, leastKnown: 0.02 };
    const words = (greatestKnown: number, high: number) =>
      text('estimate-surface', { ...parameters, greatestKnown, low: 1.1, high });
    expect(words(0.05, 1.25)).toContain('0.05 to 0.10 on wet grass instead of 0.02 to 0.05 on');
    expect(words(0.05, 1.25)).toContain('by 1.10 to 1.25.');
    expect(words(0.02, 1.1)).toContain('instead of 0.02 on');
    expect(words(0.02, 1.1)).toContain('by 1.10.');
    // The band holds its bounds.
    expect(words(0.05, 1.251)).toContain('by 1.10 to 1.26.');
    const open = text('estimate-surface-open', { ...parameters, low: 1.318 });
    expect(open).toContain('by at least 1.31;');
  });
});

describe('an estimate from first principles', () => {
  const codes = (...of: Parameters<typeof estimateReasons>) => estimateReasons(...of).map(({ code }) => code);

  it('says nothing where there is none', () => {
    expect(estimateReasons(undefined)).toEqual([]);
  });

  it('is a band, open or stuck, each with what it assumes', () => {
    const surface = 'short dry grass';
    expect(codes({ surface, low: 1.1, high: 1.2 })).toEqual(['estimate-surface', 'estimate-assumes']);
    expect(codes({ surface, low: 1.1, high: undefined })).toEqual(['estimate-surface-open', 'estimate-assumes']);
    expect(codes({ surface, low: undefined, high: undefined })).toEqual(['estimate-surface-stuck', 'estimate-assumes']);
  });

  it('gives the friction that it compares', () => {
    const [found] = estimateReasons({ surface: 'long grass', low: 1.1, high: 1.2 });
    expect(Object.keys(found?.parameters ?? {}).sort()).toEqual(
      ['surface', 'leastFriction', 'greatestFriction', 'leastKnown', 'greatestKnown', 'low', 'high'].sort(),
    );
    const [open] = estimateReasons({ surface: 'long grass', low: 1.1, high: undefined });
    expect(open?.parameters).toMatchObject({ surface: 'long grass', leastFriction: 0.1, low: 1.1 });
    const [stuck] = estimateReasons({ surface: 'long grass', low: undefined, high: undefined });
    expect(stuck?.parameters).toMatchObject({ surface: 'long grass', leastFriction: 0.1 });
  });

  it('says where a friction figure is recalled', () => {
    expect(codes({ surface: 'wet grass', low: 1.1, high: 1.2 })).toContain('estimate-recalled');
    expect(codes({ surface: 'long grass', low: 1.1, high: 1.2 })).not.toContain('estimate-recalled');
  });
});

describe('under every result', () => {
  it('stands what it does not cover, what it lacks figures for first, and who decides', () => {
    expect(notAssessed(['obstacles'])).toEqual([
      'obstacles',
      'centre of gravity',
      'engine failure',
      'turbulence and sink behind trees',
      'wires and other obstacles that are not listed',
      'runway width',
      'contamination of the wing',
      'pilot recency',
    ]);
    expect(limitsOfUse.join(' ')).toContain('the pilot in command decide');
  });
});
