import { lognormalMoments } from './lognormal-moments.ts';
import { normalDeviate } from './normal-deviate.ts';
import type { RandomStream } from './random-stream.ts';
import { rectangularStandardUncertainty } from './rectangular-standard-uncertainty.ts';

/** How a quantity may differ from its stated value; differences are in its unit. */
export type Distribution =
  /** Anywhere between two differences with equal right, as what was rounded. */
  | { readonly shape: 'rectangular'; readonly from: number; readonly to: number }
  /** About the stated value, nearer more often than farther. */
  | { readonly shape: 'normal'; readonly standardDeviation: number }
  /** A factor on the stated value with the median 1; the standard deviation is that of its natural logarithm. */
  | { readonly shape: 'lognormal'; readonly standardDeviation: number };

/** The mean of a quantity that is stated as `value`. */
export function meanOf(value: number, distribution: Distribution): number {
  if (distribution.shape === 'rectangular') return value + (distribution.from + distribution.to) / 2;
  return distribution.shape === 'normal' ? value : value * lognormalMoments(distribution).mean;
}

/** The standard uncertainty of a quantity that is stated as `value`. */
export function standardUncertaintyOf(value: number, distribution: Distribution): number {
  if (distribution.shape === 'rectangular')
    return rectangularStandardUncertainty({ halfWidth: (distribution.to - distribution.from) / 2 });
  if (distribution.shape === 'normal') return distribution.standardDeviation;
  return Math.abs(value) * lognormalMoments(distribution).standardDeviation;
}

/** One draw of a quantity that is stated as `value`. */
export function draw(value: number, distribution: Distribution, next: RandomStream): number {
  if (distribution.shape === 'rectangular')
    return value + distribution.from + (distribution.to - distribution.from) * next();
  // The stream may give 0 and never 1; the logarithm needs it the other way round.
  const deviate = normalDeviate({ first: 1 - next(), second: next() }) * distribution.standardDeviation;
  return distribution.shape === 'normal' ? value + deviate : value * Math.exp(deviate);
}

/** What is wrong with a distribution that a caller gives. */
export function distributionFault(distribution: unknown): string | undefined {
  const given = (distribution ?? {}) as Partial<Record<string, unknown>>;
  const isNumber = (value: unknown) => typeof value === 'number' && Math.abs(value) <= 1e6;
  const { shape, from, to, standardDeviation: deviation } = given;
  if (shape === 'rectangular') {
    const fits = isNumber(from) && isNumber(to) && (from as number) <= (to as number);
    return fits ? undefined : `a rectangular distribution from ${from} to ${to}: two numbers in order are needed`;
  }
  const most = shape === 'lognormal' ? 2 : 1e6;
  if (shape !== 'normal' && shape !== 'lognormal') return `"${shape}" is not rectangular, normal or lognormal`;
  const fits = typeof deviation === 'number' && deviation >= 0 && deviation <= most;
  return fits ? undefined : `standardDeviation: ${deviation} is not within 0 to ${most}`;
}
