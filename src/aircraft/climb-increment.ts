import { DomainError } from '../units/index.ts';

/** Inputs of {@link climbIncrement}. */
export interface ClimbIncrementInputs {
  /** Figure printed for the altitude from which the climb begins. */
  readonly atLower: number;
  /** Figure printed for the altitude to which it leads. */
  readonly atUpper: number;
  /** What the manual multiplies by, in air warmer than standard for instance; 1 where nothing. */
  readonly factor: number;
}

/**
 * What a climb from one altitude to another takes by a table that counts from its lowest: time, fuel or distance.
 *
 * y = k (y₂ − y₁): y₁ and y₂ the figures printed for the two altitudes, k the manual's factor.
 *
 * @param x - `atLower` and `atUpper` in the unit of the table, the upper no less than the lower; `factor` at least 1.
 * @returns The increment in the unit of the table.
 * @throws {@link DomainError} when the figures fall with altitude or the factor would shorten.
 * @record aircraft.climb-increment
 *
 * @example
 * climbIncrement({ atLower: 9, atUpper: 15, factor: 1 }) // => 6
 * climbIncrement({ atLower: 0, atUpper: 20, factor: 1.1 }) // => 22
 */
export function climbIncrement(x: ClimbIncrementInputs): number {
  const { atLower, atUpper, factor } = x;
  demandAtLeast('atLower', atLower, 0, 'counted from the lowest altitude of the table');
  demandAtLeast('atUpper', atUpper, atLower, 'what is counted from below does not fall with altitude');
  demandAtLeast('factor', factor, 1, 'no credit for colder air');
  return factor * (atUpper - atLower);
}

function demandAtLeast(parameter: string, received: number, min: number, source: string): void {
  if (received >= min && received < Number.POSITIVE_INFINITY) return;
  const shown = Number.isFinite(received) ? received : String(received);
  throw new DomainError({
    code: 'out-of-range',
    parameter,
    received: shown,
    unit: 'table unit',
    min,
    max: 'any',
    source,
  });
}
