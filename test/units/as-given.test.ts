import { expect, it } from 'vitest';
import { asGiven, decimalsGiven } from '../../src/units/as-given.ts';

it('has the decimals with which a figure was put in, and none of a binary tail', () => {
  expect([1006, 1006.4, 29.92, 0.1 + 0.2, -2.5].map(decimalsGiven)).toEqual([0, 1, 2, 1, 1]);
  expect(asGiven({ value: 1006.4, unit: 'hPa' })).toBe('1\u00a0006.4 hPa');
  expect(asGiven({ value: 26, unit: 'degC' })).toBe('26 °C');
});
