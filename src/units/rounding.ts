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
  if (step === 1) return Math.ceil(value - guard) + 0;
  return whole(Math.ceil(value / step - guard), step);
}

/**
 * Rounds down to a whole step; for what is available or achieved.
 *
 * @example
 * roundDown(829.7) // => 829
 * roundDown(0.289, 0.1) // => 0.2
 */
export function roundDown(value: number, step = 1): number {
  if (step === 1) return Math.floor(value + guard) + 0;
  return whole(Math.floor(value / step + guard), step);
}

/**
 * A number of steps as a number: 108 steps of 0.1 are 10.8, not 10.8 and a binary tail, because a division by ten
 * rounds to the nearest decimal where a multiplication by a tenth does not. Adding 0 removes the sign of zero.
 */
function whole(steps: number, step: number): number {
  return (step < 1 ? steps / Math.round(1 / step) : steps * step) + 0;
}
