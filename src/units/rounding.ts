/** Arithmetic noise that must not push a value over a step: 771.0000000004 rounds up to 771, not 772. */
const guard = 1e-9;

/**
 * Rounds up to a whole step; for what is required, and for winds and speeds that count against the pilot.
 *
 * @example
 * roundUp(770.2) // => 771
 * roundUp(771.0000000004) // => 771
 * roundUp(0.123, 0.1) // => 0.2
 */
export function roundUp(value: number, step = 1): number {
  return tidy(Math.ceil(value / step - guard) * step);
}

/**
 * Rounds down to a whole step; for what is available or achieved.
 *
 * @example
 * roundDown(829.7) // => 829
 * roundDown(0.289, 0.1) // => 0.2
 */
export function roundDown(value: number, step = 1): number {
  return tidy(Math.floor(value / step + guard) * step);
}

/** Removes the binary tail of a product with a decimal step (0.30000000000000004) and the sign of zero. */
function tidy(value: number): number {
  return Number(value.toPrecision(12)) + 0;
}
