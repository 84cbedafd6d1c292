import { describe, expect, it } from 'vitest';
import { type Changes, codes, judged, landing } from './scenario.ts';

const leaflet = { factorSet: 'uk-light-aeroplane-leaflet' };
const noGust = { 'weather.wind.gust': undefined };

describe('the stairs of a landing', () => {
  it('show by what factor the speed and the height lengthen it', () => {
    const { stairs } = landing('landing-10', { excessHeight: { value: 10, unit: 'ftHeight' } });
    const factor = (name: string) => stairs?.steps.find(({ step }) => step === name)?.factor;
    // (63.3 / 59.1)²; 10 ft / 0.0524078 are 58.16 m on 502.9 m.
    expect(factor('speed addition')).toBeCloseTo(1.14718, 5);
    expect(factor('excess height')).toBeCloseTo(1 + 58.16 / 502.9, 4);
  });
});

describe('the safety factor of a landing', () => {
  it('is one of the factors that the headline answers for, unless it is left out', () => {
    const paved = { ...leaflet, ...noGust, 'runway.surface': { kind: 'paved', condition: 'dry' } };
    expect(codes(landing('landing-10', paved).headline)).toContain('second-hand-factors');
    expect(codes(landing('landing-10', { ...paved, safetyFactor: 'none' }).headline)).not.toContain(
      'second-hand-factors',
    );
  });

  it('is left out where the request says so: 502.9 m', () => {
    expect(judged(landing('landing-10', { safetyFactor: 'none' }), 'landing-distance')).toMatchObject({ value: 503 });
  });
});

describe('the latest touchdown point', () => {
  const touchdown = (changes: Changes) => {
    const mark = landing('landing-10', changes).marks.find(({ id }) => id === 'latest-touchdown-point');
    return mark?.at === undefined ? codes(mark?.reasons ?? []) : mark.at.value;
  };
  const wetGrass = (length: string, ground: string) => ({
    'runway.surface': { kind: 'grass', condition: 'wet', length, ground },
    ...leaflet,
    ...noGust,
  });

  it('is none without a figure, or with one that may be too short', () => {
    expect(touchdown({ 'runway.surface': { kind: 'snow' } })).toEqual(['mark-not-known']);
    // Soft ground costs 1.25 at least, very short wet grass 1.60 at most.
    expect(touchdown(wetGrass('up to 20 cm', 'soft'))).toEqual(['mark-lower-bound']);
    expect(touchdown(wetGrass('very short', 'soft'))).toEqual(['mark-lower-bound']);
  });

  it('stands on a figure that may be too long', () => {
    // In the wind used 383.73 x 0.99345 = 381.2 m with 145.23 x 0.99345 = 144.3 m of roll: 830 - 144.3 - 0.6 x 381.2 m.
    expect(touchdown(wetGrass('very short', 'firm'))).toBe(456);
  });
});
