import { type Domain, demand, type Knots, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link windUsed}. */
export interface WindUsedInputs {
  /** The least headwind of the mean over the reported directions; negative when there may be a tailwind. */
  readonly leastHeadwind: Knots;
  /** As `leastHeadwind`, at the speed of the gusts. */
  readonly leastHeadwindAtGust: Knots;
  /** The share of a headwind that is counted on. */
  readonly headwindShare: Ratio;
  /** The share of a tailwind that is reckoned with. */
  readonly tailwindShare: Ratio;
}

export const windUsedDomain = {
  leastHeadwind: { unit: 'kt', min: -200, max: 200, source: 'library range' },
  leastHeadwindAtGust: { unit: 'kt', min: -200, max: 200, source: 'library range' },
  headwindShare: { unit: 'ratio', min: 0, max: 1, source: 'a headwind counts for no more than is reported' },
  tailwindShare: { unit: 'ratio', min: 1, max: 3, source: 'a tailwind counts for no less than is reported' },
} satisfies Domain<WindUsedInputs>;

/**
 * The wind along the runway that a distance is worked with: a part of the headwind, or more than the whole tailwind.
 *
 * Without any tailwind U = a H; otherwise U = −max(b max(0, −H), max(0, −G)): H the least headwind of the mean and G
 * that of the gust in kt, a the share of the headwind and b that of the tailwind. The shares of the regulation are
 * 0.5 and 1.5; that a tailwind in a gust counts in full is a policy of this library.
 *
 * @param x - `leastHeadwind` and `leastHeadwindAtGust` −200 kt to 200 kt, `headwindShare` 0 to 1, `tailwindShare` 1 to 3.
 * @returns The wind used in kt: positive a headwind, negative a tailwind.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record wind.used
 *
 * @example
 * windUsed({ leastHeadwind: kt(8), leastHeadwindAtGust: kt(12), headwindShare: ratio(0.5), tailwindShare: ratio(1.5) }) // => 4
 * windUsed({ leastHeadwind: kt(-4), leastHeadwindAtGust: kt(-9), headwindShare: ratio(0.5), tailwindShare: ratio(1.5) }) // => -9
 */
export function windUsed(x: WindUsedInputs): Knots {
  demand('leastHeadwind', x.leastHeadwind, windUsedDomain.leastHeadwind);
  demand('leastHeadwindAtGust', x.leastHeadwindAtGust, windUsedDomain.leastHeadwindAtGust);
  demand('headwindShare', x.headwindShare, windUsedDomain.headwindShare);
  demand('tailwindShare', x.tailwindShare, windUsedDomain.tailwindShare);
  const {
    leastHeadwind: mean_kt,
    leastHeadwindAtGust: gust_kt,
    headwindShare,
    tailwindShare,
  }: Numbers<WindUsedInputs> = x;
  if (mean_kt >= 0 && gust_kt >= 0) return (headwindShare * mean_kt) as Knots;
  const meanTailwind_kt = Math.max(0, -mean_kt);
  const gustTailwind_kt = Math.max(0, -gust_kt);
  return -Math.max(tailwindShare * meanTailwind_kt, gustTailwind_kt) as Knots;
}
