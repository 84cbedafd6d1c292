import type { Citation } from '../sources/index.ts';
import type { Domain, Knots, Numbers } from '../units/index.ts';
import { type GustIncrementInputs, gustIncrement, gustIncrementDomain } from './gust-addition.ts';

/** Inputs of {@link halfGustIncrement}. */
export interface HalfGustIncrementInputs {
  /** Mean speed of the wind. */
  readonly meanSpeed: Knots;
  /** Speed of the gusts, at least the mean. */
  readonly gust: Knots;
}

/** Inputs of {@link quarterMeanOrHalfIncrement}. */
export interface QuarterMeanOrHalfIncrementInputs {
  /** Mean speed of the wind. */
  readonly meanSpeed: Knots;
  /** Speed of the gusts, at least the mean. */
  readonly gust: Knots;
}

/** A way of adding to the approach speed in gusts, with where it is taught. */
export interface GustRule {
  readonly id: string;
  readonly title: string;
  /** What the rule says, in words of our own. */
  readonly words: string;
  /** What the rule adds to the approach speed, unrounded. */
  readonly addition: (x: GustIncrementInputs) => Knots;
  readonly citation: Citation;
}

export const halfGustIncrementDomain = gustIncrementDomain satisfies Domain<HalfGustIncrementInputs>;

export const quarterMeanOrHalfIncrementDomain = gustIncrementDomain satisfies Domain<QuarterMeanOrHalfIncrementInputs>;

/** Up to this mean wind, itself included, the second rule adds nothing. */
const noAdditionUpTo_kt = 16;

/**
 * Addition to the approach speed of half the gust increment.
 *
 * ΔV = (G − W)/2: G the gust and W the mean wind in kt.
 *
 * @param x - `meanSpeed` 0 kt to 200 kt, `gust` from the mean speed to 200 kt.
 * @returns Speed in kt, unrounded.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the gust is
 * below the mean speed.
 * @record airspeed.half-gust-increment
 *
 * @example
 * halfGustIncrement({ meanSpeed: kt(12), gust: kt(25) }) // => 6.5
 */
export function halfGustIncrement(x: HalfGustIncrementInputs): Knots {
  const increment_kt: number = gustIncrement(x);
  return (increment_kt / 2) as Knots;
}

/**
 * Addition to the approach speed of a quarter of the mean wind or half the gust increment, whichever is more, in a mean
 * wind above 16 kt. Up to 16 kt it adds nothing, however strong the gusts; at 16 kt it jumps by 4 kt.
 *
 * ΔV = max(W/4, (G − W)/2) for W > 16 kt, otherwise 0: G the gust and W the mean wind in kt.
 *
 * @param x - `meanSpeed` 0 kt to 200 kt, `gust` from the mean speed to 200 kt.
 * @returns Speed in kt, unrounded.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the gust is
 * below the mean speed.
 * @record airspeed.quarter-mean-or-half-increment
 *
 * @example
 * quarterMeanOrHalfIncrement({ meanSpeed: kt(24), gust: kt(34) }) // => 6
 * quarterMeanOrHalfIncrement({ meanSpeed: kt(12), gust: kt(25) }) // => 0
 */
export function quarterMeanOrHalfIncrement(x: QuarterMeanOrHalfIncrementInputs): Knots {
  const increment_kt: number = gustIncrement(x);
  const { meanSpeed: mean_kt }: Numbers<QuarterMeanOrHalfIncrementInputs> = x;
  if (mean_kt <= noAdditionUpTo_kt) return 0 as Knots;
  return Math.max(mean_kt / 4, increment_kt / 2) as Knots;
}

/** Nothing, but a bad wind is still refused. */
function noAddition(x: GustIncrementInputs): Knots {
  gustIncrement(x);
  return 0 as Knots;
}

/**
 * The rules for the approach speed in gusts, from the least addition to the most. The manual's own comes before all of
 * them. An addition is paid for in landing distance.
 *
 * @example
 * gustRules.map(({ addition }) => addition({ meanSpeed: kt(12), gust: kt(25) }) as number) // => [0, 0, 6.5, 13]
 */
export const gustRules: readonly GustRule[] = [
  {
    id: 'none',
    title: 'No addition',
    words: 'Fly the speed that the manual publishes, whatever the gusts.',
    addition: noAddition,
    citation: { source: 'groundroll', locator: 'the least of the rules, for comparison', access: 'policy' },
  },
  {
    id: 'quarter-mean-or-half-increment',
    title: 'A quarter of the mean wind or half the gust increment',
    words: 'In a mean wind above 16 kt add a quarter of it or half the gust increment, whichever is more.',
    addition: quarterMeanOrHalfIncrement,
    citation: { source: 'danish-ppl-textbook', locator: 'p. 523', access: 'read' },
  },
  {
    id: 'half-increment',
    title: 'Half the gust increment',
    words: 'Add half of what the gusts exceed the mean wind by.',
    addition: halfGustIncrement,
    citation: { source: 'faa-afh', locator: 'ch. 9, p. 9-20 and 9-21 of edition C', access: 'read' },
  },
  {
    id: 'whole-increment',
    title: 'The whole gust increment',
    words: 'Add all of what the gusts exceed the mean wind by.',
    addition: gustIncrement,
    citation: { source: 'groundroll', locator: 'the most of the rules, for comparison', access: 'policy' },
  },
];
