import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cut, roundStep, spread, widthOf, wrapped } from '../../src/worksheet/figures/layout.ts';
import { evenly } from '../evenly.ts';

const label = fc.record({ at: evenly(0, 300), height: fc.integer({ min: 5, max: 30 }) });

describe('spread', () => {
  it('leaves labels where they are wanted if they do not overlap', () => {
    const wanted = [
      { at: 10, height: 10 },
      { at: 50, height: 10 },
    ];
    expect(spread(wanted, 0, 100)).toEqual([10, 50]);
  });

  it('parts two labels by the same amount', () => {
    const wanted = [
      { at: 50, height: 10 },
      { at: 52, height: 10 },
    ];
    expect(spread(wanted, 0, 100)).toEqual([46, 56]);
  });

  it('lets none overlap, keeps their order, and stays within the bounds where there is room', () => {
    fc.assert(
      fc.property(fc.array(label, { maxLength: 10 }), (wanted) => {
        const centres = spread(wanted, 0, 320);
        const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a]?.at ?? 0) - (wanted[b]?.at ?? 0));
        let end = 0;
        for (const i of order) {
          const half = (wanted[i]?.height ?? 0) / 2;
          expect((centres[i] ?? 0) - half).toBeGreaterThanOrEqual(end - 1e-6);
          end = (centres[i] ?? 0) + half;
        }
        expect(end).toBeLessThanOrEqual(320 + 1e-6);
      }),
    );
  });
});

describe('words in a drawing', () => {
  it('are no wider than they may be', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), fc.integer({ min: 40, max: 200 }), (text, width) => {
        for (const each of [...wrapped(text, width, 11), cut(text, width, 11)]) {
          expect(widthOf(each, 11)).toBeLessThanOrEqual(width + 11);
        }
      }),
    );
  });

  it('keep a number with its unit, and say that something is missing', () => {
    expect(wrapped('Acceleration check 286 m, 34 KIAS due', 82, 11, 4)).toEqual([
      'Acceleration',
      'check 286\u00a0m,',
      '34\u00a0KIAS due',
    ]);
    expect(wrapped('one two three', 22, 11, 2).at(-1)).toMatch(/\u2026$/);
    expect(cut('pines by the lake road', 60, 11)).toMatch(/^pines.*\u2026$/);
    expect(cut('pines', 60, 11)).toBe('pines');
  });
});

describe('roundStep', () => {
  it.each([
    [900, 10, 100],
    [1000, 10, 100],
    [1001, 10, 200],
    [22.5, 6, 5],
    [3.4, 6, 1],
    [0.9, 6, 0.2],
  ])('divides %d into no more than %d parts by %d', (span, parts, step) => {
    expect(roundStep(span, parts)).toBeCloseTo(step, 12);
  });
});
