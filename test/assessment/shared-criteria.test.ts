import { describe, expect, it } from 'vitest';
import { takeoffSituationOf } from '../../src/assessment/assess-takeoff.ts';
import type { Wind } from '../../src/assessment/kernel/air-and-wind.ts';
import { atMost, type Judged, named, undetermined, withheldFor } from '../../src/assessment/kernel/criterion.ts';
import { addWindCriteria, notConfirmed, windAdvice } from '../../src/assessment/kernel/shared-criteria.ts';
import { callThrough, TraceRecorder } from '../../src/assessment/kernel/step.ts';
import type { Situation } from '../../src/assessment/request/situation.ts';
import type { FactorOrigin } from '../../src/distance/index.ts';
import { type Changes, takeoffRequest } from './scenario.ts';

// The example: crosswind demonstrated 19 kt, the pilot's own limit 18; tailwind limitation 8 kt,
// the pilot's own 5; V_S0 37 KIAS with flap 35, which the calibration printed for that flap makes 44 KCAS.
const situation = (changes?: Changes) => takeoffSituationOf(takeoffRequest('takeoff-28', changes));
const wind = (worstCrosswind_kt: number, used_kt: number) => ({ worstCrosswind_kt, used_kt }) as Wind;
const noLimits: Changes = {
  personalLimits: undefined,
  'performanceData.crosswind': [],
  'performanceData.tailwind': [],
};

describe('the wind', () => {
  const judgedIn = (today: Wind, changes?: Changes) => {
    const judged: Judged[] = [];
    addWindCriteria(judged, situation(changes), today);
    return judged.map(({ id, limitStatus, unit, verdict, value, limit, margin, reasons }) =>
      verdict === 'undetermined'
        ? [id, limitStatus, unit, verdict, ...reasons.flatMap(({ code, parameters }) => [code, parameters])]
        : [id, limitStatus, unit, verdict, value, limit, margin],
    );
  };

  it('is compared with every limit, the data first: crosswind as it is, a tailwind as a positive figure', () => {
    expect(judgedIn(wind(18.3, -5.2))).toEqual([
      ['crosswind', 'demonstrated', 'kt', 'within', 19, 19, 0],
      ['crosswind', 'personal', 'kt', 'outside', 19, 18, -1],
      ['tailwind', 'limitation', 'kt', 'within', 6, 8, 2],
      ['tailwind', 'personal', 'kt', 'outside', 6, 5, -1],
    ]);
  });

  it('from ahead is no tailwind at all', () => {
    expect(judgedIn(wind(3, 9)).slice(2)).toEqual([
      ['tailwind', 'limitation', 'kt', 'within', 0, 8, 8],
      ['tailwind', 'personal', 'kt', 'within', 0, 5, 5],
    ]);
  });

  it('is compared in the unit of the limit: 15 kt are 7.717 m/s, 7.8 rounded up', () => {
    const stated = (value: number) => [{ speed: { value, unit: 'mps' }, status: 'limitation' }];
    const limits = { ...noLimits, 'performanceData.crosswind': stated(7.7), 'performanceData.tailwind': stated(7.8) };
    expect(judgedIn(wind(15, -15), limits)).toEqual([
      ['crosswind', 'limitation', 'mps', 'outside', 7.8, 7.7, -0.1],
      ['tailwind', 'limitation', 'mps', 'within', 7.8, 7.8, 0],
    ]);
  });

  it('without a limit is undetermined, each by itself', () => {
    expect(judgedIn(wind(4.2, -2.5), noLimits)).toEqual([
      ['crosswind', 'none given', 'kt', 'undetermined', 'no-crosswind-limit', { wind_kt: 5 }],
      ['tailwind', 'none given', 'kt', 'undetermined', 'no-tailwind-limit', { wind_kt: 3 }],
    ]);
    expect(judgedIn(wind(4.2, 6), noLimits).map(([id]) => id)).toEqual(['crosswind']);
    expect(judgedIn(wind(0, -2.5), noLimits).map(([id]) => id)).toEqual(['tailwind']);
  });

  it('that does not blow needs no limit', () => {
    expect(judgedIn(wind(0, 0), noLimits)).toEqual([]);
    // Noise of a cosine is no wind.
    expect(judgedIn(wind(1e-12, -1e-12), noLimits)).toEqual([]);
  });
});

describe('what is said of the wind', () => {
  const advice = (today: Wind, changes: Changes = {}, judged: readonly Judged[] = []) =>
    windAdvice(callThrough, situation(changes), today, judged);
  const informs = { policies: { demonstratedCrosswind: 'information' } };

  describe('advises another runway or aerodrome', () => {
    const judgedAs = (id: Judged['id'], verdict: 'outside' | 'within' | 'undetermined') => {
      const words = named(id, id, id, 'kt', 'personal');
      return verdict === 'undetermined'
        ? undetermined(words, 'at most', [])
        : atMost(words, verdict === 'outside' ? 20 : 10, 18);
    };

    it.each([
      ['crosswind', 'outside', true],
      ['tailwind', 'outside', true],
      ['crosswind', 'within', false],
      ['tailwind', 'undetermined', false],
      ['takeoff-distance', 'outside', false],
    ] as const)('with %s %s: %s', (id, verdict, isAdvised) => {
      const judged = [judgedAs('mass', 'within'), judgedAs(id, verdict)];
      const said = advice(wind(20, 0), {}, judged).filter(({ code }) => code === 'choose-another');
      expect(said).toEqual(isAdvised ? [{ code: 'choose-another', parameters: {} }] : []);
    });
  });

  describe('names a demonstrated crosswind that only informs', () => {
    const informed = (crosswind_kt: number, changes: Changes) =>
      advice(wind(crosswind_kt, 0), changes).filter(({ code }) => code === 'crosswind-demonstrated-informs');

    it('above it, the wind rounded up', () => {
      expect(informed(19.1, informs)).toEqual([
        { code: 'crosswind-demonstrated-informs', parameters: { crosswind_kt: 20, limit_kt: 19 } },
      ]);
    });

    it('in knots, whatever the unit of the data', () => {
      const stated = [{ speed: { value: 20, unit: 'mph' }, status: 'demonstrated' }];
      const [reason] = informed(18, { ...informs, 'performanceData.crosswind': stated });
      // A mile has 1609.344 m, a nautical mile 1852 m.
      expect(reason?.parameters['limit_kt']).toBeCloseTo((20 * 1609.344) / 1852, 9);
    });

    it('not at it, not where it limits, and not of a limitation', () => {
      expect(informed(19, informs)).toEqual([]);
      expect(informed(25, {})).toEqual([]);
      const stated = [{ speed: { value: 19, unit: 'kt' }, status: 'limitation' }];
      expect(informed(25, { ...informs, 'performanceData.crosswind': stated })).toEqual([]);
    });
  });

  describe('compares it with 0.2 V_S0', () => {
    it('in CAS, by the calibration printed for its flap: 0.2 x 44, not 0.2 x 37', () => {
      const said = advice(wind(11.2, 0));
      expect(said).toHaveLength(1);
      expect(said[0]).toMatchObject({ code: 'crosswind-against-stall', parameters: { crosswind_kt: 12 } });
      expect(said[0]?.parameters['limit_kt']).toBeCloseTo(8.8, 9);
    });

    it('as a step of the working', () => {
      const r = new TraceRecorder();
      windAdvice(r, situation(), wind(11.2, 0), []);
      expect(r.trace).toMatchObject([
        { record: 'airspeed.stall-speed-multiple', label: '0.2 V_S0', inputs: { stallSpeed: 44, multiple: 0.2 } },
      ]);
    });

    it('as it is where the data state it in CAS', () => {
      const stated = {
        name: 'V_S0',
        flap: '35',
        speed: { value: 41, unit: 'kcas' },
        mass: { value: 1050, unit: 'kg' },
      };
      const [said] = advice(wind(11.2, 0), { 'performanceData.stallSpeeds': [stated] });
      expect(said?.parameters['limit_kt']).toBeCloseTo(8.2, 9);
    });

    it('takes V_S0 and no other stall speed', () => {
      const stated = { name: 'V_S1', flap: '0', speed: { value: 43, unit: 'kcas' }, mass: { value: 1050, unit: 'kg' } };
      expect(advice(wind(11.2, 0), { 'performanceData.stallSpeeds': [stated] })).toEqual([
        { code: 'no-stall-speed', parameters: {} },
      ]);
    });

    it('says that it cannot without a calibration, after what else there is to say', () => {
      const without = { ...informs, 'performanceData.calibrations': [] };
      expect(advice(wind(20, 0), without)).toEqual([
        { code: 'crosswind-demonstrated-informs', parameters: { crosswind_kt: 20, limit_kt: 19 } },
        { code: 'no-stall-speed', parameters: {} },
      ]);
    });

    it('has a plain zero for no crosswind, and for noise', () => {
      expect(advice(wind(0, 0))[0]?.parameters['crosswind_kt']).toBe(0);
      expect(advice(wind(3 + 1e-12, 0))[0]?.parameters['crosswind_kt']).toBe(3);
    });
  });
});

describe('a recalled factor', () => {
  const origin = (id: string, access: FactorOrigin['access']): FactorOrigin => ({ id, access, locator: 'p. 1' });
  const soft = origin('own-soft', 'recalled');
  const snow = origin('own-snow', 'recalled');
  const read = origin('own-grass', 'read');
  const heard = origin('own-wet', 'second-hand');
  const judged = atMost(named('takeoff-run', 'run', 'run', 'm', 'distance available'), 500, 800);
  const recalled = (factorId: string) => ({ code: 'recalled-factor', parameters: { factorId } }) as const;
  const open = (...ids: string[]) =>
    ({ unconfirmed: new Map(ids.map((id) => [id, recalled(id)])) }) as unknown as Situation;

  it('takes the verdict back, and is named', () => {
    const { verdict, value, margin, limit, reasons } = withheldFor(
      judged,
      notConfirmed(open('own-soft', 'own-snow'), [read, soft, heard]),
    );
    expect({ verdict, value, margin, limit }).toEqual({
      verdict: 'undetermined',
      value: undefined,
      margin: undefined,
      limit: 800,
    });
    expect(reasons).toEqual([recalled('own-soft')]);
  });

  it('does not once it is confirmed, itself and not another', () => {
    expect(withheldFor(judged, notConfirmed(open('own-snow'), [soft, read]))).toBe(judged);
    expect(withheldFor(judged, notConfirmed(open('own-soft'), [soft])).reasons).toEqual([recalled('own-soft')]);
  });

  it('does as long as one of several is open', () => {
    const { verdict, reasons } = withheldFor(judged, notConfirmed(open('own-snow'), [soft, snow]));
    expect({ verdict, reasons }).toEqual({ verdict: 'undetermined', reasons: [recalled('own-snow')] });
  });

  it('is the only one that does: what was read or heard at second hand stands, and so does what needs no factor', () => {
    expect(withheldFor(judged, notConfirmed(open('own-soft', 'own-snow'), [read, heard]))).toBe(judged);
    expect(withheldFor(judged, notConfirmed(open('own-soft'), []))).toBe(judged);
  });
});
