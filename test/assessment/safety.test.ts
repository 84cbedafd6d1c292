import { describe, expect, it } from 'vitest';
import { takeoffSituationOf } from '../../src/assessment/assess-takeoff.ts';
import type { Chain } from '../../src/assessment/kernel/chain.ts';
import { type SafetyRule, safetyRuleOf, takeoffSafety } from '../../src/assessment/kernel/safety.ts';
import { callThrough, TraceRecorder } from '../../src/assessment/kernel/step.ts';
import type { RunwayInUse, Situation } from '../../src/assessment/request/situation.ts';
import type { FactorOrigin, SafetyAlternative, SafetyTest } from '../../src/distance/index.ts';
import { takeoffRequest } from './scenario.ts';

const test = (against: SafetyTest['against'], factor: number, access: FactorOrigin['access'] = 'read'): SafetyTest => ({
  id: `own-${against}-${factor}`,
  against,
  factor,
  locator: 'p. 1',
  access,
});
const way = (...tests: SafetyTest[]): SafetyAlternative => ({ needs: 'nothing', tests });

const chain = (distance_m: number, changes: Partial<Chain> = {}) =>
  ({ distance_m, kind: 'value', used: [], missing: [], ...changes }) as unknown as Chain;

type Declared = Pick<RunwayInUse, 'tora_m' | 'toda_m' | 'asda_m'>;
const declared = (tora_m: number, toda_m = tora_m, asda_m = tora_m): Declared => ({ tora_m, toda_m, asda_m });

type Settled = Situation & { readonly safetyRule: SafetyRule };
const situation = (
  runway: Declared,
  usable: readonly SafetyAlternative[],
  { rule, ...changes }: Partial<Settled> & { readonly rule?: Partial<SafetyRule> } = {},
) =>
  ({
    runway,
    safety: 'of the set',
    unconfirmed: new Map(),
    safetyRule: { isIncluded: false, usable, climbOutFactor: 1.25, ...rule },
    ...changes,
  }) as unknown as Settled;

const safety = (distance_m: number, runway: Declared, ...usable: SafetyAlternative[]) =>
  takeoffSafety(callThrough, situation(runway, usable), chain(distance_m));
const figures = (distance_m: number, runway: Declared, ...usable: SafetyAlternative[]) => {
  const { judged, factor, available_m } = safety(distance_m, runway, ...usable);
  const { verdict, value, limit, margin } = judged;
  return { verdict, value, limit, margin, factor, available_m };
};

// The two ways of performance class B.
const plain = way(test('TORA', 1.25));
const threefold = way(test('TORA', 1), test('TODA', 1.15), test('ASDA', 1.3));

describe('a take-off distance', () => {
  it('is multiplied by the factor and compared with the distance that the test names', () => {
    // 1.25 x 400.2 = 500.25, rounded up; 520.6 rounded down.
    expect(safety(400.2, declared(520.6, 900, 950), plain)).toMatchObject({
      judged: {
        id: 'takeoff-distance',
        limitStatus: 'distance available',
        verdict: 'within',
        value: 501,
        limit: 520,
        margin: 19,
      },
      factored_m: 1.25 * 400.2,
      factor: 1.25,
      available_m: 520.6,
      runFactor: 1.25,
      used: plain.tests,
    });
    expect(figures(400, declared(520, 900, 950), way(test('TODA', 2)))).toMatchObject({ value: 800, limit: 900 });
    expect(figures(400, declared(520, 900, 950), way(test('ASDA', 2)))).toMatchObject({ value: 800, limit: 950 });
  });

  it('is a step of the working for each test, named by what it is compared with', () => {
    const r = new TraceRecorder();
    takeoffSafety(r, situation(declared(700, 760, 780), [plain, threefold]), chain(500));
    const steps = r.trace.filter(({ kind }) => kind === 'step');
    expect(steps).toMatchObject([
      { label: 'factored against TORA', inputs: { distance: 500, factors: [1.25] }, output: 625 },
      { label: 'factored against TORA', inputs: { distance: 500, factors: [1] }, output: 500 },
      { label: 'factored against TODA', inputs: { distance: 500, factors: [1.15] } },
      { label: 'factored against ASDA', inputs: { distance: 500, factors: [1.3] }, output: 650 },
    ]);
    expect(steps.every((step) => 'record' in step && step.record === 'distance.corrected-distance')).toBe(true);
  });

  it('that is a bound stays one', () => {
    const bounded = (kind: Chain['kind'], tora_m: number) =>
      takeoffSafety(callThrough, situation(declared(tora_m), [plain]), chain(400, { kind })).judged;
    expect(bounded('at-least', 600)).toMatchObject({ verdict: 'undetermined', atLeast: 500 });
    expect(bounded('at-least', 499)).toMatchObject({ verdict: 'outside' });
    expect(bounded('at-most', 499)).toMatchObject({ verdict: 'undetermined', atMost: 500 });
  });
});

describe('within one way', () => {
  it('all tests must pass: the one that fails decides, wherever it stands', () => {
    // 600, 690 and 780 m required.
    expect(figures(600, declared(599, 900, 900), threefold)).toMatchObject({ verdict: 'outside', factor: 1 });
    expect(figures(600, declared(900, 689, 900), threefold)).toMatchObject({ verdict: 'outside', factor: 1.15 });
    expect(figures(600, declared(900, 900, 779), threefold)).toMatchObject({ verdict: 'outside', factor: 1.3 });
    expect(figures(600, declared(600, 690, 780), threefold)).toMatchObject({ verdict: 'within', margin: 0 });
  });

  it('the test with the least share to spare is shown, the first of equal ones', () => {
    // 100 of 700, 70 of 760, 130 of 910: 14.3, 9.2 and 14.3 %.
    expect(figures(600, declared(700, 760, 910), threefold)).toEqual({
      verdict: 'within',
      value: 690,
      limit: 760,
      margin: 70,
      factor: 1.15,
      available_m: 760,
    });
    // 10 of 100 each.
    const twice = way(test('TODA', 1.8), test('ASDA', 1.8));
    expect(figures(50, declared(100), twice)).toMatchObject({ available_m: 100, factor: 1.8 });
    expect(safety(50, declared(1000, 100, 100), twice).judged).toMatchObject({ limit: 100 });
    expect(safety(50, declared(100, 100, 100), way(test('TORA', 1.8), test('ASDA', 1.8)))).toMatchObject({
      runFactor: 1.8,
    });
  });

  it('the factor against the TORA multiplies the ground roll, whichever test decides', () => {
    expect(safety(600, declared(900, 900, 790), threefold)).toMatchObject({ factor: 1.3, runFactor: 1 });
    expect(safety(600, declared(900), way(test('ASDA', 1.3), test('TORA', 1.1)))).toMatchObject({
      factor: 1.3,
      runFactor: 1.1,
    });
  });

  it('the factor that decides multiplies the ground roll where none is against the TORA', () => {
    const runFactor = (toda_m: number, asda_m: number) =>
      safety(600, declared(900, toda_m, asda_m), way(test('TODA', 1.15), test('ASDA', 1.3))).runFactor;
    expect(runFactor(700, 2000)).toBe(1.15);
    expect(runFactor(2000, 800)).toBe(1.3);
  });
});

describe('of several ways', () => {
  const decided = (distance_m: number, runway: Declared, ...usable: SafetyAlternative[]) => {
    const { judged, factor, used } = safety(distance_m, runway, ...usable);
    return { verdict: judged.verdict, factor, place: usable.findIndex(({ tests }) => tests === used) };
  };

  it('one that passes is enough, wherever it stands', () => {
    // 750 of 700 m; 600 of 700, 690 of 760, 780 of 780.
    const wet = declared(700, 760, 780);
    expect(decided(600, wet, plain, threefold)).toEqual({ verdict: 'within', factor: 1.3, place: 1 });
    expect(decided(600, wet, threefold, plain)).toEqual({ verdict: 'within', factor: 1.3, place: 0 });
  });

  it('of two that pass the one with the greater share to spare decides, by its tightest test', () => {
    // 500 of 900 is 44 % to spare; 400 of 900, 460 of 900, 520 of 900: least 42 %.
    expect(decided(400, declared(900), plain, threefold)).toMatchObject({ place: 0 });
    expect(decided(400, declared(900), threefold, plain)).toMatchObject({ place: 1 });
    // With 950 m of ASDA the least is 45 %.
    expect(decided(400, declared(900, 900, 950), plain, threefold)).toMatchObject({ place: 1 });
  });

  it('of two that fail the one that lacks the smaller share decides', () => {
    // 1250 of 900 lacks 39 %; 1300 of 950 lacks 37 %, 1150 of 900 28 %, 1000 of 900 11 %.
    expect(decided(1000, declared(900, 900, 950), plain, threefold)).toEqual({
      verdict: 'outside',
      factor: 1.3,
      place: 1,
    });
    expect(decided(1000, declared(900, 900, 930), plain, threefold)).toMatchObject({ place: 0 });
  });

  it('the share is of the distance available: 180 of 210 before 450 of 500', () => {
    // 14.3 % to spare and 10 %, though 30 m and 50 m.
    const far = way(test('TORA', 4.5));
    const near = way(test('TODA', 1.8));
    expect(decided(100, declared(500, 210), far, near)).toMatchObject({ place: 1 });
    expect(decided(100, declared(500, 210), near, far)).toMatchObject({ place: 0 });
  });

  it('the unrounded share decides, and equally good ones keep their order', () => {
    // 2500.1 and 2500.9 of 3500 m are both 2501.
    const less = way(test('TORA', 1.25005));
    const more = way(test('TORA', 1.25045));
    expect(decided(2000, declared(3500), more, less)).toMatchObject({ place: 1 });
    expect(decided(2000, declared(3500), less, more)).toMatchObject({ place: 0 });
    const same = way(test('TODA', 1.25));
    expect(decided(400, declared(700), plain, same)).toMatchObject({ place: 0 });
    expect(decided(400, declared(700), same, plain)).toMatchObject({ place: 0 });
    // Better by the noise of a division alone.
    const noise = way(test('TORA', 1.25 * (1 - 1e-11)));
    expect(decided(400, declared(700), plain, noise)).toMatchObject({ place: 0 });
  });

  it('within goes before undetermined before outside, whatever is to spare', () => {
    // At least 500 m: nothing within, and outside above the distance available.
    const open = (usable: readonly SafetyAlternative[], kind: Chain['kind']) => {
      const { judged, used } = takeoffSafety(callThrough, situation(declared(700, 450), usable), chain(400, { kind }));
      return [judged.verdict, usable.findIndex(({ tests }) => tests === used)];
    };
    const small = way(test('TODA', 1.25));
    expect(open([small, plain], 'at-least')).toEqual(['undetermined', 1]);
    expect(open([plain, small], 'at-least')).toEqual(['undetermined', 0]);
    expect(open([small, plain], 'at-most')).toEqual(['within', 1]);
    expect(open([plain, small], 'at-most')).toEqual(['within', 0]);
  });

  it('the first of two open ones stands: a bound has no share to spare', () => {
    const first = way(test('TODA', 1));
    const { judged } = takeoffSafety(
      callThrough,
      situation(declared(700, 450), [first, plain]),
      chain(400, { kind: 'at-least' }),
    );
    expect(judged).toMatchObject({ verdict: 'undetermined', limit: 450, atLeast: 400 });
  });

  it('a way is as good as its worst test: within and outside together are outside', () => {
    const mixed = way(test('TORA', 1), test('TODA', 1.3));
    // 400 of 700 passes, 520 of 450 does not; 750 of 700 fails by less than 520 of 450 does.
    expect(decided(400, declared(700, 450), mixed, way(test('TORA', 1.76)))).toEqual({
      verdict: 'outside',
      factor: 1.76,
      place: 1,
    });
    expect(decided(400, declared(700, 450), mixed, plain)).toMatchObject({ verdict: 'within', place: 1 });
  });

  it('a third is tried as well', () => {
    const best = way(test('TORA', 1.1));
    expect(decided(400, declared(900), plain, threefold, best)).toMatchObject({ place: 2 });
    expect(decided(400, declared(900), best, plain, threefold)).toMatchObject({ place: 0 });
  });

  it('the one that decides is said, and only where there is a choice', () => {
    const decisions = (...usable: SafetyAlternative[]) => {
      const r = new TraceRecorder();
      takeoffSafety(r, situation(declared(700, 760, 780), usable), chain(600));
      return r.trace.filter(({ kind }) => kind === 'decision');
    };
    expect(decisions(plain)).toEqual([]);
    expect(decisions(plain, threefold)).toMatchObject([
      {
        code: 'safety-alternative',
        parameters: {
          tests: '1 x distance against TORA, 1.15 x distance against TODA, 1.3 x distance against ASDA',
        },
      },
    ]);
  });

  it('no distance available at all is no share of anything', () => {
    // A TODA of nothing counts as 1 m: 499 m short of it, where the TORA lacks 0.25 of itself.
    expect(decided(400, declared(400, 0), way(test('TODA', 1.25)), plain)).toMatchObject({ place: 1 });
  });
});

describe('a distance that is not known', () => {
  const missing = [{ code: 'surface-no-factor', parameters: {} }] as const;

  it('leaves the criterion undetermined against the TORA, rounded down, and uses no factor', () => {
    const r = new TraceRecorder();
    const found = takeoffSafety(r, situation(declared(520.6, 900, 950), [plain, threefold]), chain(400, { missing }));
    expect(found).toMatchObject({
      judged: { sense: 'at most', verdict: 'undetermined', limit: 520, atLeast: undefined, reasons: missing },
      factored_m: 0,
      factor: 1,
      available_m: 520.6,
      runFactor: 1,
    });
    expect(found.used).toEqual([]);
    expect(found.notConfirmed).toEqual([]);
    expect(r.trace).toEqual([]);
  });
});

describe('a factor that is recalled', () => {
  const recalled = way(test('TORA', 1.25, 'recalled'));
  const soft: FactorOrigin = { id: 'own-soft', locator: 'p. 2', access: 'recalled' };
  const reason = (factorId: string) => ({ code: 'recalled-factor', parameters: { factorId } }) as const;
  const open = (used: readonly FactorOrigin[], ...ids: string[]) => {
    const unconfirmed = new Map(ids.map((id) => [id, reason(id)]));
    const today = situation(declared(700), [recalled], { unconfirmed });
    const { judged, factored_m } = takeoffSafety(callThrough, today, chain(400, { used }));
    expect(factored_m).toBe(500);
    return [judged.verdict, ...judged.reasons.map(({ parameters }) => parameters['factorId'])];
  };

  it('of the chain and of the test takes the verdict back until both are confirmed', () => {
    expect(open([soft], 'own-soft', 'own-TORA-1.25')).toEqual(['undetermined', 'own-soft', 'own-TORA-1.25']);
    expect(open([soft], 'own-TORA-1.25')).toEqual(['undetermined', 'own-TORA-1.25']);
    expect(open([soft], 'own-soft')).toEqual(['undetermined', 'own-soft']);
    expect(open([soft])).toEqual(['within']);
    expect(open([], 'own-soft', 'own-TORA-1.25')).toEqual(['undetermined', 'own-TORA-1.25']);
  });

  it('of a way that does not decide takes nothing back', () => {
    const { judged } = safety(400, declared(700), recalled, way(test('TORA', 1.2)));
    expect(judged).toMatchObject({ verdict: 'within', value: 480 });
  });
});

describe('the rule of a runway and a table', () => {
  const clearwayOnly = { needs: 'clearway', tests: [test('TODA', 1.2)] } as const;
  const either = { needs: 'stopway or clearway', tests: threefold.tests } as const;
  const set = { takeoff: { safety: [way(test('TORA', 1.25), test('TODA', 1.4)), clearwayOnly, either] } };
  const rule = (runway: Partial<RunwayInUse>, changes: Partial<Situation> = {}) =>
    safetyRuleOf({
      runway: { hasClearway: false, hasStopway: false, ...runway },
      set,
      safety: 'of the set',
      table: { includes: { safetyFactor: false } },
      ...changes,
    } as unknown as Situation);

  it.each([
    [{}, ['nothing']],
    [{ hasStopway: true }, ['nothing', 'stopway or clearway']],
    [{ hasClearway: true }, ['nothing', 'clearway', 'stopway or clearway']],
    [{ hasClearway: true, hasStopway: true }, ['nothing', 'clearway', 'stopway or clearway']],
  ])('with %j offers the ways that need %j', (runway, needs) => {
    expect(rule(runway).usable.map((each) => each.needs)).toEqual(needs);
  });

  it('starts the climb-out from the greatest factor of the first way, whatever else may be used', () => {
    expect(rule({})).toMatchObject({ isIncluded: false, climbOutFactor: 1.4 });
    expect(rule({ hasClearway: true, hasStopway: true }).climbOutFactor).toBe(1.4);
  });

  it.each([
    ['it is chosen to go without', { safety: 'none' }, false],
    ['the table includes it', { table: { includes: { safetyFactor: true } } }, true],
  ])('has no factor where %s, even with a clearway', (_why, changes, isIncluded) => {
    const found = rule({ hasClearway: true }, changes as unknown as Partial<Situation>);
    expect(found).toEqual({
      isIncluded,
      usable: [
        {
          needs: 'nothing',
          tests: [{ id: 'none', against: 'TORA', factor: 1, locator: 'none', access: 'policy' }],
        },
      ],
      climbOutFactor: 1,
    });
  });

  it.each([
    ['a table that does not say', { includes: { safetyFactor: 'not stated' } }],
    ['no table', undefined],
  ])('applies the set with %s', (_what, table) => {
    expect(rule({}, { table: table as never })).toMatchObject({ isIncluded: false, climbOutFactor: 1.4 });
  });

  it('is settled with the request', () => {
    const { safetyRule } = takeoffSituationOf(takeoffRequest('quarry-takeoff-04'));
    expect(safetyRule.usable.map(({ tests }) => tests.map(({ factor }) => factor))).toEqual([[1.25], [1, 1.15, 1.3]]);
    expect(safetyRule.climbOutFactor).toBe(1.25);
    const without = takeoffSituationOf(takeoffRequest('quarry-takeoff-04', { safetyFactor: 'none' }));
    expect(without.safetyRule.usable.map(({ tests }) => tests.map(({ factor }) => factor))).toEqual([[1]]);
  });
});

describe('going without a safety factor', () => {
  const said = (changes: Partial<Settled> & { readonly rule?: Partial<SafetyRule> }) => {
    const r = new TraceRecorder();
    takeoffSafety(r, situation(declared(700), [way(test('TORA', 1))], changes), chain(400));
    return r.trace.flatMap((entry) => (entry.kind === 'decision' ? [entry.code] : []));
  };

  it('is said, with which of the two it is', () => {
    expect(said({ safety: 'none' })).toEqual(['safety-factor-none']);
    expect(said({ rule: { isIncluded: true } })).toEqual(['safety-factor-included']);
    expect(said({})).toEqual([]);
  });

  it('starts the climb-out from the distance itself', () => {
    const plainly = situation(declared(700), [way(test('TORA', 1))], { rule: { climbOutFactor: 1 } });
    expect(takeoffSafety(callThrough, plainly, chain(400)).factored_m).toBe(400);
  });
});
