import type { UnitWord } from './unit-table.ts';

/** The step to which a figure is rounded before it is compared with a limit; one metre per second would be two knots. */
export function comparisonStep(unit: UnitWord): number {
  return unit === 'percent' || unit === 'mps' ? 0.1 : 1;
}

/** The decimals that such a figure has where it is shown. */
export function comparisonDecimals(unit: UnitWord): number {
  return comparisonStep(unit) < 1 ? 1 : 0;
}
