import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  degEast,
  degEastPerYear,
  formatAcrossRunway,
  formatAlongRunway,
  formatNumber,
  formatQuantity,
  formatSlope,
  formatValue,
  ftPA,
  kt,
  percent,
  roundDown,
  roundUp,
  type UnitWord,
} from '../../src/units/index.ts';
import { unitTable } from '../../src/units/unit-table.ts';
import { evenly } from '../evenly.ts';

describe('rounding', () => {
  it.each([
    [771, 771],
    [771.0000000004, 771],
    [771.0000001, 772],
    [770.2, 771],
    [-3.2, -3],
    [0, 0],
  ])('takes %d up to %d', (value, expected) => expect(roundUp(value)).toBe(expected));

  it.each([
    [829, 829],
    [828.9999999996, 829],
    [828.9999, 828],
    [-3.2, -4],
    [0, 0],
  ])('takes %d down to %d', (value, expected) => expect(roundDown(value)).toBe(expected));

  it('leaves no binary tail on a decimal step, and no minus on zero', () => {
    expect(roundUp(0.25, 0.1)).toBe(0.3);
    expect(roundDown(0.39, 0.1)).toBe(0.3);
    expect(Object.is(roundUp(-0.2), 0)).toBe(true);
    expect(Object.is(roundUp(-0.02, 0.1), 0)).toBe(true);
    // 0.3 / 0.1 is a last bit below 3.
    expect(roundDown(0.3, 0.1)).toBe(0.3);
  });

  it('never favours the pilot by more than the guard, nor costs a whole step', () => {
    fc.assert(
      fc.property(evenly(-1e5, 1e5), (value) => {
        expect(roundUp(value) - value).toBeGreaterThanOrEqual(-1.0001e-9);
        expect(roundUp(value) - value).toBeLessThan(1);
        expect(value - roundDown(value)).toBeGreaterThanOrEqual(-1.0001e-9);
        expect(value - roundDown(value)).toBeLessThan(1);
      }),
    );
  });
});

describe('formatNumber', () => {
  it.each([
    [1095, {}, '1\u00a0095'],
    [999, {}, '999'],
    [1234567.891, { decimals: 2 }, '1\u00a0234\u00a0567.89'],
    [-12, {}, '\u221212'],
    [-0.2, {}, '0'],
    [-0.2, { rounding: 'down' }, '\u22121'],
    [0.3, { decimals: 1, rounding: 'up' }, '0.3'],
    [1.9, { rounding: 'down' }, '1'],
  ] as const)('prints %d with %o as %s', (value, options, expected) => {
    expect(formatNumber(value, options)).toBe(expected);
  });
});

describe('quantities in words', () => {
  it('show every unit word in a form that is not a word of the code', () => {
    for (const word of Object.keys(unitTable) as UnitWord[]) {
      expect(formatValue(2, word)).not.toMatch(/ft[A-Z]|deg|mps|kt[a-z]|kgPer|undefined/);
    }
    expect(formatQuantity(ftPA(1095), 'ftPA')).toBe('1\u00a0095 ft pressure altitude');
    expect(formatValue(190, 'degTrue')).toBe('190° true');
    expect(formatValue(15, 'degC')).toBe('15 °C');
    expect(formatValue(1.15, 'ratio', { decimals: 2 })).toBe('1.15');
    expect(formatValue(65, 'kias')).toBe('65 KIAS');
  });

  it('show a variation by its hemisphere', () => {
    expect(formatQuantity(degEast(3.25), 'degEast', { decimals: 1 })).toBe('3.3° E');
    expect(formatQuantity(degEast(-3), 'degEast')).toBe('3° W');
    expect(formatQuantity(degEastPerYear(-0.2), 'degEastPerYear', { decimals: 1 })).toBe('0.2° W per year');
  });

  it('show slopes and wind components without a bare sign', () => {
    expect(formatSlope(percent(-0.04))).toBe('level');
    expect(formatSlope(percent(-1.9))).toBe('downhill 1.9 %');
    expect(formatAlongRunway(kt(4.9))).toBe('4 kt headwind');
    expect(formatAlongRunway(kt(-0.1))).toBe('1 kt tailwind');
    expect(formatAcrossRunway(kt(8.1))).toBe('9 kt from the right');
    expect(formatAcrossRunway(kt(-8.1))).toBe('9 kt from the left');
  });
});
