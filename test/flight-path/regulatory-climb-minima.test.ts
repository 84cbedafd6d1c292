import { describe, expect, it } from 'vitest';
import { regulatoryClimbMinima } from '../../src/flight-path/index.ts';
import { bibliography } from '../../src/sources/index.ts';
import { convert, isUnitWord, type UnitWord } from '../../src/units/unit-table.ts';

const minimum = (id: string) => regulatoryClimbMinima.find((row) => row.id === id)?.minimum;

describe('regulatoryClimbMinima', () => {
  it('have ids of their own, a source of the bibliography and a place in it', () => {
    const ids = regulatoryClimbMinima.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const row of regulatoryClimbMinima) {
      expect(Object.keys(bibliography)).toContain(row.source);
      expect(row.locator.trim(), row.id).not.toBe('');
      expect(row.condition.trim(), row.id).not.toBe('');
    }
  });

  it('are gradients of at most 10 % or rates of at most 3 m/s', () => {
    for (const { id, minimum: least } of regulatoryClimbMinima) {
      if (least === 'measurably positive') continue;
      const word = isUnitWord(least.unit) ? least.unit : undefined;
      const isRate = word === 'mpsVertical';
      const value = isRate ? least.value : convert(least.value, word as UnitWord, 'percent');
      expect(value, id).toBeGreaterThan(0);
      expect(value, id).toBeLessThanOrEqual(isRate ? 3 : 10);
    }
  });

  it('mark every figure that was not seen', () => {
    const recalled = regulatoryClimbMinima.filter(({ access }) => access !== 'read');
    expect(recalled.map(({ access }) => access)).toEqual(recalled.map(() => 'recalled'));
    expect(recalled.map(({ source }) => source)).toEqual([
      'easa-cs-vla',
      'easa-cs-23',
      'easa-cs-23',
      'astm-f2245',
      'astm-f2245',
    ]);
  });

  it('keep both balked landing gradients: 3.3 % before Amendment 23-64, 3 % since', () => {
    expect(minimum('cfr-23-77-a')).toEqual({ value: 3.3, unit: 'percent' });
    expect(minimum('cfr-23-2120-c')).toEqual({ value: 3, unit: 'percent' });
  });

  it('ask two engines of performance class B for a climb on one', () => {
    expect(minimum('cat-pol-a-340-a-1')).toEqual({ value: 4, unit: 'percent' });
    expect(minimum('cat-pol-a-340-a-2-400')).toBe('measurably positive');
    expect(minimum('cat-pol-a-340-a-2-1500')).toEqual({ value: 0.75, unit: 'percent' });
  });
});
