import { demand, demandWord } from '../../units/index.ts';
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

const shapes = ['rectangular', 'normal', 'lognormal'];
const difference = { unit: 'units', min: -1e6, max: 1e6, source: 'library range' };
const deviation = { unit: 'units', min: 0, max: 1e6, source: 'library range' };
const logarithmDeviation = { unit: 'of the logarithm', min: 0, max: 2, source: 'library range' };

/** Refuses what is no distribution, by the name of its part; the units are those of the quantity. */
export function demandDistribution(parameter: string, distribution: Distribution): void {
  // What is no object at all has no shape.
  const shape = distribution?.shape;
  demandWord(`${parameter}.shape`, shape, shapes, 'how a quantity may differ');
  if (distribution.shape === 'rectangular') {
    const { from, to } = distribution;
    demand(`${parameter}.from`, from, difference);
    demand(`${parameter}.to`, to, { ...difference, min: from, source: 'not below where it begins' });
  } else {
    const bound = shape === 'lognormal' ? logarithmDeviation : deviation;
    demand(`${parameter}.standardDeviation`, distribution.standardDeviation, bound);
  }
}
