import { describe, expect, it } from 'vitest';
import { unconfirmedFactors } from '../../src/assessment/request/unconfirmed-factors.ts';
import { type FactorSet, factorSets, type SurfaceFactor } from '../../src/distance/index.ts';

const safety = (access: 'read' | 'recalled') => ({ id: 'own-landing', factor: 1.5, locator: 'p. 9', access }) as const;
const [grass] = factorSets['easa-class-b'].takeoff.surfaces as [SurfaceFactor];
const own = (id: string, access: SurfaceFactor['access']): SurfaceFactor => ({ ...grass, id, access });
const soft = {
  ...own('own-soft', 'recalled'),
  condition: 'soft ground',
  factor: 1.25,
  kind: 'at-least',
  locator: 'p. 2',
} as const;
const set: FactorSet = {
  id: 'own',
  title: 'own set',
  edition: '2nd edition',
  scope: 'a club',
  hasSafetyFactor: true,
  takeoff: {
    surfaces: [own('own-grass', 'read'), soft],
    slope: {
      id: 'own-slope',
      percentPerPercent: 5,
      upTo: 2,
      beyond: 'no figure',
      locator: 'p. 3',
      access: 'second-hand',
    },
    tailwind: { id: 'own-tailwind', factorPerStep: 1.2, step: 10, locator: 'p. 4', access: 'recalled' },
    safety: [
      {
        needs: 'nothing',
        tests: [{ id: 'own-tora', against: 'TORA', factor: 1.33, locator: 'p. 5', access: 'recalled' }],
      },
    ],
  },
  landing: { surfaces: [], safety: safety('recalled') },
};
const confirm = (...ids: string[]) => ids.map((factorId) => ({ factorId, edition: '3rd', date: '2026-07-14' }));
const ids = (phase: 'takeoff' | 'landing', ...confirmed: string[]) => [
  ...unconfirmedFactors(set, phase, confirm(...confirmed)).keys(),
];

describe('the factors that nobody has confirmed', () => {
  it('are those of the phase that are recalled, wherever in the set they stand', () => {
    expect(ids('takeoff')).toEqual(['own-soft', 'own-tailwind', 'own-tora']);
    expect(ids('landing')).toEqual(['own-landing']);
    expect([
      ...unconfirmedFactors({ ...set, landing: { surfaces: [], safety: safety('read') } }, 'landing', []),
    ]).toEqual([]);
  });

  it('are no longer those that somebody has', () => {
    expect(ids('takeoff', 'own-tailwind', 'own-landing')).toEqual(['own-soft', 'own-tora']);
    expect(ids('landing', 'own-landing')).toEqual([]);
  });

  it('are said in words, with what to compare and to confirm', () => {
    expect(unconfirmedFactors(set, 'takeoff', []).get('own-soft')).toEqual({
      code: 'recalled-factor',
      parameters: { factorId: 'own-soft', factor: 'soft ground at least x 1.25 (p. 2)', edition: '2nd edition' },
    });
  });
});
