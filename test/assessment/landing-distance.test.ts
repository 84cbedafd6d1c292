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

  it('is there whatever is flown over in the air', () => {
    // Nothing lengthens the roll on dry pavement at the speed of the table: only the bits of two sums differ.
    const plain = {
      'runway.surface': { kind: 'paved', condition: 'dry' },
      approachSpeedAddition: { value: 0, unit: 'kt' },
    };
    const without = touchdown(plain);
    expect(without).toBeTypeOf('number');
    for (let height = 1; height <= 49; height += 1) {
      expect(touchdown({ ...plain, excessHeight: { value: height, unit: 'ftHeight' } }), `${height} ft`).toBe(without);
    }
  });

  it('takes of a credit for the slope what shortens the roll, not what shortens the part in the air', () => {
    const credit = (speed: Changes) =>
      touchdown({
        'runway.surface': { kind: 'paved', condition: 'dry' },
        'performanceData.landing.0.corrections.favourableSlope': {
          change: { value: -2, unit: 'percent' },
          per: { value: 1, unit: 'percent' },
          upTo: { value: 2, unit: 'percent' },
          percentOf: 'distance',
        },
        'policies.favourableSlope': 'of the manual',
        ...speed,
      });
    // Recomputed: 145.23 x 0.99345 = 144.28 m of roll, less 2 x 1.872867 %, is 138.87 m; the addition for half the gust
    // increment costs 54.0 m on the ground: 830 - 192.9 m.
    expect(credit({})).toBe(637);
    expect(credit({ approachSpeedAddition: { value: 0, unit: 'kt' } })).toBe(Math.floor(830 - 138.87));
  });

  it('stands on a figure that may be too long', () => {
    // In the wind used 383.73 x 0.99345 = 381.2 m with 145.23 x 0.99345 = 144.3 m of roll: 830 - 144.3 - 0.6 x 381.2 m.
    expect(touchdown(wetGrass('very short', 'firm'))).toBe(456);
  });
});
