import { roundDown } from '../../units/index.ts';
import type { Verdict } from './criterion.ts';

/** Where one criterion turns while everything else stays. */
export interface BreakEven {
  readonly quantity: 'tailwind' | 'surface factor' | 'mass' | 'temperature';
  readonly unit: 'kt' | 'ratio' | 'kg' | 'degC';
  /** The greatest value that is still within limits; rounded down. */
  readonly value: number | undefined;
  /** `undetermined` where nothing is within and not all that was tried is outside. */
  readonly answer: 'value' | 'withinThroughoutRange' | 'outsideThroughoutRange' | 'undetermined';
  readonly range: { readonly from: number; readonly to: number };
}

/** The range searched and the step to which the answer is given. */
export interface Search {
  readonly quantity: BreakEven['quantity'];
  readonly unit: BreakEven['unit'];
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/** The greatest value that is within, rounded down to the step; or why there is none. */
export type GreatestWithin = Pick<BreakEven, 'value' | 'answer'>;

/**
 * Bisects for the greatest value that is within; what is undetermined does not count as within. Where `from` is not, the
 * favourable end, nothing is: both ends then say whether that is because all is outside.
 */
export function greatestWithin(
  { from, to, step }: { readonly from: number; readonly to: number; readonly step: number },
  verdictAt: (value: number) => Verdict,
): GreatestWithin {
  const isWithin = (value: number) => verdictAt(value) === 'within';
  const best = verdictAt(from);
  if (best !== 'within') {
    const isOutside = best === 'outside' && verdictAt(to) === 'outside';
    return { value: undefined, answer: isOutside ? 'outsideThroughoutRange' : 'undetermined' };
  }
  if (isWithin(to)) return { value: undefined, answer: 'withinThroughoutRange' };
  let within = from;
  let not = to;
  while (not - within > step / 1000) {
    const middle = (within + not) / 2;
    if (isWithin(middle)) within = middle;
    else not = middle;
  }
  return { value: Math.max(from, roundDown(within, step)), answer: 'value' };
}

/** The break-even of one quantity of a distance criterion. */
export function breakEven(search: Search, verdictAt: (value: number) => Verdict): BreakEven {
  const { quantity, unit, from, to } = search;
  return { quantity, unit, range: { from, to }, ...greatestWithin(search, verdictAt) };
}
