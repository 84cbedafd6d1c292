import { describe, expect, it } from 'vitest';
import {
  DomainError,
  demand,
  demandEach,
  formatAcrossRunway,
  formatAlongRunway,
  formatNumber,
  formatSlope,
  kt,
  percent,
  roundDown,
  roundUp,
} from '../../src/units/index.ts';
import { detailOf } from '../refusal.ts';

const bound = { unit: 'ratio', min: 1, max: 10, source: 'library range' } as const;

describe('a list within bounds', () => {
  it('is accepted with both ends', () => demandEach('factors', [1, 5, 10], bound));

  it.each([
    [0.999, 'out-of-range', 0.999],
    [10.001, 'out-of-range', 10.001],
    ['5', 'not-a-number', '5'],
    [Number.NaN, 'not-finite', 'NaN'],
    [undefined, 'not-a-number', 'undefined'],
  ])('is refused with %o in it, named by its place', (value, code, received) => {
    const detail = detailOf(() => demandEach('factors', [1, value as number], bound));
    expect(detail).toMatchObject({ code, parameter: 'factors[1]', received, min: 1, max: 10 });
  });
});

describe('a refusal', () => {
  it('keeps a number that was received as a number, and what JSON cannot hold as text', () => {
    expect(detailOf(() => demand('k', 11, bound)).received).toBe(11);
    expect(detailOf(() => demand('k', Number.POSITIVE_INFINITY, bound)).received).toBe('Infinity');
  });

  it('says whether a value is out of range or does not fit another', () => {
    const detail = { parameter: 'k', received: 11, unit: 'ratio', min: 1, max: 10, source: 'test' };
    expect(new DomainError({ ...detail, code: 'out-of-range' }).message).toBe(
      'k: 11 ratio is not within 1 to 10 ratio (test)',
    );
    expect(new DomainError({ ...detail, code: 'inconsistent' }).message).toBe(
      'k: 11 ratio is inconsistent with 1 to 10 ratio (test)',
    );
  });
});

describe('numbers for a reader', () => {
  it('round as they are told', () => {
    expect(formatNumber(770.2, { rounding: 'up' })).toBe('771');
    expect(formatNumber(770.8, { rounding: 'down' })).toBe('770');
    expect(formatNumber(770.5)).toBe('771');
    expect(formatNumber(-0.04, { decimals: 1 })).toBe('0.0');
  });

  it('round to whole steps of more and of less than 1', () => {
    expect([roundUp(771, 5), roundUp(770, 5), roundDown(774, 5), roundUp(3, 2)]).toEqual([775, 770, 770, 4]);
    expect([roundUp(0.11, 0.1), roundDown(0.19, 0.1), roundUp(1.001, 0.01)]).toEqual([0.2, 0.1, 1.01]);
  });

  it('say the side, and nothing of a side where there is none', () => {
    expect([1.9, -1.9, 0, 0.04, -0.04].map((value) => formatSlope(percent(value)))).toEqual([
      'uphill 1.9 %',
      'downhill 1.9 %',
      'level',
      'level',
      'level',
    ]);
    expect([4.7, -3.2, 0].map((value) => formatAlongRunway(kt(value)))).toEqual([
      '4 kt headwind',
      '4 kt tailwind',
      '0 kt headwind',
    ]);
    expect([8.3, -8.3, 0].map((value) => formatAcrossRunway(kt(value)))).toEqual([
      '9 kt from the right',
      '9 kt from the left',
      'no crosswind',
    ]);
  });
});
