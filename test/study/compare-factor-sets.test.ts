import { describe, expect, it } from 'vitest';
import { compareFactorSets } from '../../src/study/index.ts';
import { landingRequest, takeoffRequest } from '../assessment/scenario.ts';

const figures = (result: ReturnType<typeof compareFactorSets>) => {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return Object.fromEntries(
    result.value.map(({ set, distance }) => [
      set,
      distance.verdict === 'undetermined' ? distance.verdict : distance.value.value,
    ]),
  );
};

describe('compareFactorSets', () => {
  it('sets the take-off on 28 under each side by side', () => {
    expect(figures(compareFactorSets(takeoffRequest('takeoff-28')))).toEqual({
      'EASA performance class B': 771,
      // 616.2 m by the leaflet's 1.33.
      'UK light-aeroplane leaflet': 820,
      // Grass has no factor in any of these: never 1.0.
      'EASA Part-NCO': 'undetermined',
      'FAA handbook relations': 'undetermined',
      'Flight manual alone': 'undetermined',
    });
  });

  it('on a level paved runway has a figure under every set, and says where none asks for a margin', () => {
    const paved = {
      'runway.surface': { kind: 'paved', condition: 'dry' },
      'runway.ends.0.elevation.value': 438,
    };
    const result = compareFactorSets(takeoffRequest('takeoff-28', paved), [
      'part-nco',
      'manufacturer-only',
      'faa-handbook',
    ]);
    // 443.02 m in the tailwind used, without any factor.
    expect(Object.values(figures(result))).toEqual([514, 514, 514]);
    expect(
      result.ok &&
        result.value.every(({ headline }) => headline.some(({ code }) => code === 'set-without-safety-factor')),
    ).toBe(true);
  });

  it('gives each set what the request confirms of its factors, and refuses what is a factor of none', () => {
    const confirming = (...ids: string[]) =>
      takeoffRequest('takeoff-28', {
        'runway.surface': { kind: 'paved', condition: 'wet' },
        factorSet: 'uk-light-aeroplane-leaflet',
        'policies.confirmations': ids.map((factorId) => ({ factorId, edition: '7c', date: '2026-07-14' })),
      });
    const wet = 'uk-leaflet-takeoff-paved-wet';
    // 443.02 m in the tailwind used: 514 m by 1.00 for wet paved in both sets, by 1.33 and by 1.25.
    const both = { 'UK light-aeroplane leaflet': 683, 'EASA performance class B': 642 };
    const sets = ['uk-light-aeroplane-leaflet', 'easa-class-b'] as const;
    expect(figures(compareFactorSets(confirming(wet), sets))).toEqual(both);
    expect(figures(compareFactorSets(confirming(wet), ['easa-class-b']))).toEqual({
      'EASA performance class B': 642,
    });
    expect(compareFactorSets(confirming(wet, 'nobodys'), sets)).toMatchObject({
      ok: false,
      faults: [{ path: 'policies.confirmations[1].factorId' }],
    });
  });

  it('answers what is no set, and what is no list of confirmations, with faults', () => {
    const confirming = (confirmations: unknown) =>
      takeoffRequest('takeoff-28', { 'policies.confirmations': confirmations });
    const faultsOf = (...given: Parameters<typeof compareFactorSets>) => {
      const result = compareFactorSets(...given);
      return result.ok ? [] : result.faults.map(({ path }) => path);
    };
    expect(faultsOf(confirming([]), ['nobodys' as never])).toEqual(['factorSet']);
    expect(faultsOf(confirming(5))).toEqual(['policies.confirmations']);
    expect(faultsOf(confirming([null]))).toEqual(['policies.confirmations[0]']);
    expect(faultsOf({ ...confirming([]), factorSet: 'nobodys' as never }, ['easa-class-b'])).toEqual([]);
    expect(faultsOf({ ...confirming([]), policies: 'mine' as never })).toEqual(['policies']);
  });

  it('takes a set of the user as data, by its own factors', () => {
    const club = {
      id: 'club',
      title: 'Club rules',
      edition: '2026',
      scope: 'our own aeroplanes',
      hasSafetyFactor: true,
      takeoff: {
        surfaces: [
          {
            id: 'club-grass',
            condition: 'our grass',
            factor: 1.25,
            kind: 'value',
            basis: 'total distance',
            covers: ['grass'],
            replaces: [],
            locator: 'club book',
            access: 'read',
          },
        ],
        safety: [
          {
            needs: 'nothing',
            tests: [{ id: 'club-tora', against: 'TORA', factor: 1.3, locator: 'club book', access: 'read' }],
          },
        ],
      },
      landing: { surfaces: [], safety: { id: 'club-lda', factor: 1.5, locator: 'club book', access: 'read' } },
    } as const;
    // 513.5 m by 1.25 and 1.3.
    expect(figures(compareFactorSets(takeoffRequest('takeoff-28'), [club]))).toEqual({ 'Club rules': 835 });
    const broken = compareFactorSets(takeoffRequest('takeoff-28'), [
      { ...club, takeoff: { ...club.takeoff, safety: [] } },
    ]);
    expect(broken).toMatchObject({
      ok: false,
      faults: expect.arrayContaining([expect.objectContaining({ path: 'factorSet.takeoff.safety' })]),
    });
  });

  it('knows the bound of a handbook relation: at least 21 % for 10 % of mass proves no landing or take-off within', () => {
    const table = 'performanceData.takeoff.0';
    const single = (metres: number) => ({ axes: [], unit: 'm', cells: metres });
    const heavier = {
      'runway.surface': { kind: 'paved', condition: 'dry' },
      'runway.ends.0.elevation.value': 438,
      [`${table}.distance`]: single(400),
      [`${table}.groundRoll`]: single(200),
      [`${table}.associatedConditions.mass`]: { value: 900, unit: 'kg' },
      [`${table}.associatedConditions.pressureAltitude`]: { value: 2000, unit: 'ftPA' },
      [`${table}.associatedConditions.temperature`]: { value: 30, unit: 'degC' },
    };
    expect(figures(compareFactorSets(takeoffRequest('takeoff-28', heavier), ['faa-handbook']))).toEqual({
      'FAA handbook relations': 'undetermined',
    });
  });

  it('serves landings too', () => {
    expect(figures(compareFactorSets(landingRequest('landing-10'), ['easa-class-b']))).toEqual({
      'EASA performance class B': 719,
    });
  });
});
