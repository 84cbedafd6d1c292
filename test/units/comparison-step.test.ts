import { describe, expect, it } from 'vitest';
import { comparisonDecimals, comparisonStep } from '../../src/units/comparison-step.ts';

describe('the step of a comparison', () => {
  it('is a tenth of a percent and of a metre per second, and one of everything else', () => {
    expect((['percent', 'mps'] as const).map(comparisonStep)).toEqual([0.1, 0.1]);
    expect((['m', 'ft', 'kt', 'kg', 'lb', 'mph', 'ftHeight'] as const).map(comparisonStep)).toEqual(Array(7).fill(1));
  });

  it('has a decimal where it is a tenth', () => {
    expect((['percent', 'mps', 'm', 'kt'] as const).map(comparisonDecimals)).toEqual([1, 1, 0, 0]);
  });
});
