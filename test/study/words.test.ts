import { describe, expect, it } from 'vitest';
import { capital, decimalsOf, inWords, named, overallVerdict, stepOf } from '../../src/study/words.ts';

describe('the words of a study', () => {
  it('have the steps that an instrument is read to', () => {
    expect((['kg', 'm', 'ftHeight', 'degC', 'hPa', 'kt'] as const).map(stepOf)).toEqual([1, 1, 1, 1, 1, 1]);
    expect((['ratio', 'inHg', 'NM', 'percent'] as const).map(stepOf)).toEqual([0.001, 0.01, 0.1, 0.1]);
  });

  it('have as many decimals as the step', () => {
    expect([10, 1, 0.1, 0.01, 0.001].map(decimalsOf)).toEqual([0, 0, 1, 2, 3]);
    expect(inWords({ value: 29.926, unit: 'inHg' })).toBe('29.93 inHg');
    expect(inWords({ value: 29.926, unit: 'inHg' }, undefined, 'down')).toBe('29.92 inHg');
    expect(inWords({ value: 5.31, unit: 'kt' }, 0.1, 'up')).toBe('5.4 kt');
    expect(inWords({ value: 5.5, unit: 'NM' })).toBe('5.5 NM');
  });

  it('name a subject with one article, and begin a sentence', () => {
    expect([named('crosswind'), named('the field')]).toEqual(['the crosswind', 'the field']);
    expect([capital('wind speed'), capital('')]).toEqual(['Wind speed', '']);
  });

  it('take the worst of verdicts, undetermined where there is none', () => {
    expect(overallVerdict(['within', 'undetermined', 'outside'])).toBe('outside');
    expect(overallVerdict(['within', 'undetermined'])).toBe('undetermined');
    expect(overallVerdict(['within'])).toBe('within');
    expect(overallVerdict([])).toBe('undetermined');
  });
});
