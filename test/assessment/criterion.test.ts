import { describe, expect, it } from 'vitest';
import {
  atLeast,
  atMost,
  isTighter,
  type Judged,
  limiting,
  named,
  overall,
  undetermined,
  type Verdict,
  withheldFor,
  worse,
} from '../../src/assessment/kernel/criterion.ts';

// What is required rounds up, what is available or achieved down, to 1 m, 1 kt, 1 ft, 1 kg or 0.1 %; equality is within.
const metres = named('takeoff-distance', 'the distance', 'distance required', 'm', 'distance available');
const gradient = named('obstacle', 'the gradient', 'gradient over pines', 'percent', 'clearance asked');
const feet = named('obstacle', 'the gradient', 'height over pines', 'ftHeight', 'clearance asked');
const knots = named('crosswind', 'crosswind', 'crosswind in gusts', 'kt', 'personal');
const metresPerSecond = named('tailwind', 'tailwind', 'tailwind used', 'mps', 'limitation');

const why = [{ code: 'obstacles-not-assessed', parameters: {} }] as const;
const besides = [{ code: 'recalled-factor', parameters: { factorId: 'own', edition: '2' } }] as const;
const gradientAtLeast = (value: number, limit: number) => atLeast(gradient, value, limit, 'value', why);

describe('a figure that must not exceed its limit', () => {
  it('rounds up against a limit that rounds down: 770.2 m of 829.7 m are 771 of 829, 58 to spare', () => {
    expect(atMost(metres, 770.2, 829.7, 'value', why)).toEqual({
      id: 'takeoff-distance',
      subject: 'the distance',
      quantity: 'distance required',
      unit: 'm',
      limitStatus: 'distance available',
      sense: 'at most',
      verdict: 'within',
      limit: 829,
      value: 771,
      margin: 58,
      unroundedValue: 770.2,
      unroundedMargin: 829.7 - 770.2,
      atLeast: undefined,
      atMost: undefined,
      reasons: why,
    });
  });

  it('is within at the limit and outside a step above it', () => {
    expect(atMost(metres, 829, 829)).toMatchObject({ verdict: 'within', value: 829, limit: 829, margin: 0 });
    expect(atMost(metres, 829.1, 829)).toMatchObject({ verdict: 'outside', value: 830, limit: 829, margin: -1 });
  });

  it('is outside where only the rounding to the safe side tells them apart: 829.2 m of 829.7 m', () => {
    expect(atMost(metres, 829.2, 829.7)).toMatchObject({ verdict: 'outside', value: 830, limit: 829, margin: -1 });
  });

  it('is within where both are the same, though it is no whole step', () => {
    expect(atMost(metres, 829.7, 829.7)).toMatchObject({ verdict: 'within', value: 829, limit: 829, margin: 0 });
  });

  it('takes what differs in the last bits alone for the same, in proportion to a limit above 1', () => {
    expect(atMost(metres, 2500.7 + 2e-6, 2500.7)).toMatchObject({ verdict: 'within', value: 2500, margin: 0 });
    expect(atMost(metres, 2500.7 + 3e-6, 2500.7)).toMatchObject({ verdict: 'outside', value: 2501, margin: -1 });
    expect(atMost(metresPerSecond, 0.05 + 6e-10, 0.05)).toMatchObject({ verdict: 'within', value: 0, limit: 0 });
    expect(atMost(metresPerSecond, 0.05 + 2e-9, 0.05)).toMatchObject({ verdict: 'outside', value: 0.1, limit: 0 });
  });

  it('has no reasons of its own', () => {
    expect(atMost(metres, 1, 2).reasons).toEqual([]);
  });
});

describe('the step', () => {
  it.each([
    ['kt', knots, 15.2, 15.7, 16, 15],
    ['m/s, where one would be two knots', metresPerSecond, 7.72, 7.79, 7.8, 7.7],
    ['%', gradient, 3.71, 3.99, 3.8, 3.9],
  ])('of %s', (_unit, words, value, limit, shown, bound) => {
    const found = atMost(words, value, limit);
    expect(found).toMatchObject({ value: shown, limit: bound });
    // No binary tail: 3.9 - 3.8 is 0.1 here.
    expect(found.margin).toBe(Math.round((bound - shown) * 10) / 10);
  });
});

describe('the step of a unit', () => {
  it.each([
    ['m', 1],
    ['kt', 1],
    ['mph', 1],
    ['ftHeight', 1],
    ['kg', 1],
    ['lb', 1],
    ['mps', 0.1],
    ['percent', 0.1],
  ] as const)('%s is %d', (unit, step) => {
    expect(named('mass', 'mass', 'mass', unit, 'limitation').step).toBe(step);
  });
});

describe('a bound of a figure', () => {
  it('that is at least so much proves outside, and leaves within open with the bound', () => {
    expect(atMost(metres, 900, 829, 'at-least')).toMatchObject({ verdict: 'outside', value: 900, margin: -71 });
    expect(atMost(metres, 770.2, 829.7, 'at-least', why)).toEqual({
      id: 'takeoff-distance',
      subject: 'the distance',
      quantity: 'distance required',
      unit: 'm',
      limitStatus: 'distance available',
      sense: 'at most',
      verdict: 'undetermined',
      limit: 829,
      value: undefined,
      margin: undefined,
      unroundedValue: undefined,
      unroundedMargin: undefined,
      atLeast: 771,
      atMost: undefined,
      reasons: [...why, { code: 'bound-at-least', parameters: {} }],
    });
  });

  it('that is at most so much proves within, and leaves outside open with the bound', () => {
    expect(atMost(metres, 700, 829, 'at-most')).toMatchObject({ verdict: 'within', value: 700, margin: 129 });
    expect(atMost(metres, 900.5, 829, 'at-most')).toMatchObject({
      verdict: 'undetermined',
      limit: 829,
      value: undefined,
      atLeast: undefined,
      atMost: 901,
    });
  });

  it.each([700, 900])('that is neither proves nothing, and there is none to show: %d m of 829', (value) => {
    expect(atMost(metres, value, 829, 'no bound')).toMatchObject({
      verdict: 'undetermined',
      limit: 829,
      value: undefined,
      atLeast: undefined,
      atMost: undefined,
    });
  });
});

describe('a figure that must reach its limit', () => {
  it('rounds down against a limit that rounds up: 5.37 % against 4.12 % are 5.3 against 4.2, 1.1 to spare', () => {
    expect(gradientAtLeast(5.37, 4.12)).toEqual({
      id: 'obstacle',
      subject: 'the gradient',
      quantity: 'gradient over pines',
      unit: 'percent',
      limitStatus: 'clearance asked',
      sense: 'at least',
      verdict: 'within',
      limit: 4.2,
      value: 5.3,
      margin: 1.1,
      unroundedValue: 5.37,
      unroundedMargin: 5.37 - 4.12,
      atLeast: undefined,
      atMost: undefined,
      reasons: why,
    });
  });

  it('is within at the limit and outside a step below it', () => {
    expect(gradientAtLeast(4.2, 4.2)).toMatchObject({ verdict: 'within', value: 4.2, limit: 4.2, margin: 0 });
    expect(gradientAtLeast(4.2, 4.25)).toMatchObject({ verdict: 'outside', value: 4.2, limit: 4.3, margin: -0.1 });
  });

  it('is outside where only the rounding to the safe side tells them apart: 4.18 % against 4.12 %', () => {
    expect(gradientAtLeast(4.18, 4.12)).toMatchObject({ verdict: 'outside', value: 4.1, limit: 4.2, margin: -0.1 });
  });

  it('is within where both are the same, though it is no whole step', () => {
    expect(gradientAtLeast(4.17, 4.17)).toMatchObject({ verdict: 'within', value: 4.1, limit: 4.1, margin: 0 });
    expect(atLeast(feet, 49, 48.2, 'value', [])).toMatchObject({ verdict: 'within', value: 49, limit: 49, margin: 0 });
  });

  it.each([
    ['at-least', 3, 'outside'],
    ['at-least', 5, 'undetermined'],
    ['at-most', 3, 'undetermined'],
    ['at-most', 5, 'within'],
    ['no bound', 3, 'undetermined'],
    ['no bound', 5, 'undetermined'],
  ] as const)('after a distance that is %s: %d %% against 4 %% is %s', (kind, value, verdict) => {
    const found = atLeast(gradient, value, 4, kind, why);
    expect(found).toMatchObject({ verdict, sense: 'at least' });
    const added = { 'at-least': 'bound-at-least', 'at-most': 'bound-at-most', 'no bound': 'bounds-both-ways' }[kind];
    expect(found.reasons.map(({ code }) => code)).toEqual([
      'obstacles-not-assessed',
      ...(verdict === 'undetermined' ? [added] : []),
    ]);
    expect(found.value).toBe(verdict === 'undetermined' ? undefined : value);
  });
});

describe('a comparison that cannot be made', () => {
  it('has its words, its reasons and the limit where there is one, and no figure', () => {
    const open: Judged = {
      id: 'crosswind',
      subject: 'crosswind',
      quantity: 'crosswind in gusts',
      unit: 'kt',
      limitStatus: 'personal',
      sense: 'at most',
      verdict: 'undetermined',
      limit: undefined,
      value: undefined,
      margin: undefined,
      unroundedValue: undefined,
      unroundedMargin: undefined,
      atLeast: undefined,
      atMost: undefined,
      reasons: why,
    };
    expect(undetermined(knots, 'at most', why)).toEqual(open);
    expect(undetermined(knots, 'at most', why, 18)).toEqual({ ...open, limit: 18 });
  });
});

describe('a verdict withheld', () => {
  it('loses its figures, keeps words and limit, and says why after what it said before', () => {
    const before = atMost(metres, 900, 829, 'value', why);
    expect(withheldFor(before, besides)).toEqual({
      ...before,
      verdict: 'undetermined',
      value: undefined,
      margin: undefined,
      unroundedValue: undefined,
      unroundedMargin: undefined,
      reasons: [...why, ...besides],
    });
  });
});

describe('of several verdicts', () => {
  // Outside before undetermined before within.
  const verdicts: readonly Verdict[] = ['outside', 'undetermined', 'within'];
  const judgedAs: Readonly<Record<Verdict, Judged>> = {
    outside: atMost(metres, 900, 829),
    undetermined: undetermined(metres, 'at most', why),
    within: atMost(metres, 700, 829),
  };

  it('the worse one is taken, whichever stands first', () => {
    for (const [i, a] of verdicts.entries())
      for (const [j, b] of verdicts.entries()) expect(worse(a, b)).toBe(verdicts[Math.min(i, j)]);
  });

  it.each([
    [[], 'within'],
    [['within', 'within'], 'within'],
    [['within', 'undetermined', 'within'], 'undetermined'],
    [['undetermined', 'outside', 'within'], 'outside'],
  ] as const)('%j is %s over all', (each, verdict) => {
    expect(overall(each.map((one) => judgedAs[one]))).toBe(verdict);
  });

  it('the worst one limits, whatever its margin', () => {
    const { outside, undetermined: open, within } = judgedAs;
    const equal = atMost(knots, 18, 18);
    expect(limiting([equal, within, open, outside])).toBe(outside);
    expect(limiting([equal, open, within])).toBe(open);
    expect(isTighter(outside, open)).toBe(true);
    expect(isTighter(open, outside)).toBe(false);
  });
});

describe('of criteria with the same verdict', () => {
  it('the one with the smallest margin as a share of its limit limits', () => {
    const far = atMost(metres, 980, 1000); // 2 %
    const near = atMost(knots, 9, 10); // 10 %
    expect(limiting([near, far])).toBe(far);
    expect(limiting([far, near])).toBe(far);
    const farOut = atMost(metres, 1020, 1000); // -2 %
    const nearOut = atMost(knots, 11, 10); // -10 %
    expect(limiting([nearOut, farOut])).toBe(nearOut);
    expect(limiting([farOut, nearOut])).toBe(nearOut);
  });

  it('the first of equal ones limits', () => {
    const first = atMost(metres, 900, 1000);
    const second = atMost(knots, 9, 10);
    expect(limiting([first, second])).toBe(first);
    expect(limiting([second, first])).toBe(second);
    const open = undetermined(metres, 'at most', why, 829);
    expect(limiting([open, undetermined(knots, 'at most', why)])).toBe(open);
  });

  it('a limit of nothing is reached by any figure', () => {
    const none = atMost(knots, 0, 0);
    const some = atMost(metres, 1, 1000);
    expect(limiting([some, none])).toBe(none);
    const above = atMost(knots, 1, 0);
    expect(limiting([atMost(metres, 3000, 1000), above])).toBe(above);
  });
});
