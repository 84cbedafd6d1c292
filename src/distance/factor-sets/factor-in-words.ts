import { formatNumber } from '../../units/index.ts';
import type { FactorKind, FactorOrigin, SafetyTest, SlopeRule, SteppedRule, SurfaceFactor } from './factor-set.ts';

type AnyFactor = FactorOrigin & Partial<SurfaceFactor & SlopeRule & SteppedRule & SafetyTest>;

const bounds: { readonly [K in FactorKind]: string } = { value: '', 'at-least': 'at least ', 'at-most': 'at most ' };

/**
 * A factor of a set in words, with where it stands.
 *
 * @example
 * factorInWords({ id: 'a', locator: 'Table 1', access: 'read', condition: 'dry grass', factor: 1.2 } as never) // => 'dry grass x 1.20 (Table 1)'
 */
export function factorInWords(origin: FactorOrigin): string {
  const { condition, factor, kind = 'value', percentPerPercent, factorPerStep, locator }: AnyFactor = origin;
  const times = (value: number) => `${bounds[kind]}x ${formatNumber(value, { decimals: 2 })}`;
  if (condition !== undefined && factor !== undefined) return `${condition} ${times(factor)} (${locator})`;
  if (percentPerPercent !== undefined) return `slope ${formatNumber(percentPerPercent)} % for each 1 % (${locator})`;
  if (factorPerStep !== undefined) return `${times(factorPerStep)} a step (${locator})`;
  return factor === undefined ? locator : `safety factor ${times(factor)} (${locator})`;
}
