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

  it('gives two bounds as a band, and equal ones as one figure', () => {
    const parameters = { surface: 'wet grass', leastFriction: 0.05, greatestFriction: 0.1, leastKnown: 0.02 };
    const words = (greatestKnown: number, high: number) =>
      text('estimate-surface', { ...parameters, greatestKnown, low: 1.1, high });
    expect(words(0.05, 1.25)).toContain('0.05 to 0.10 on wet grass instead of 0.02 to 0.05 on');
    expect(words(0.05, 1.25)).toContain('by 1.10 to 1.25.');
    expect(words(0.02, 1.1)).toContain('instead of 0.02 on');
    expect(words(0.02, 1.1)).toContain('by 1.10.');
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
