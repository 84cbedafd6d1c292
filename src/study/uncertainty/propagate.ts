import { type Bound, demand, demandEach, demandWhole, inconsistent } from '../../units/index.ts';
import { combinedStandardUncertainty } from './combined-standard-uncertainty.ts';
import { type Distribution, demandDistribution, draw, meanOf, standardUncertaintyOf } from './distribution.ts';
import { randomStreams } from './random-stream.ts';

/** An input quantity of a model: what it is stated as, and how it may differ. */
export interface UncertainQuantity {
  readonly name: string;
  readonly value: number;
  readonly distribution: Distribution;
}

/** Inputs of {@link propagate}. */
export interface PropagateInputs {
  /**
   * The result for values of the input quantities, in their order, within ±10¹²; undefined where there is none. The list
   * is used again for the next case.
   */
  readonly model: (values: ArrayLike<number>) => number | undefined;
  readonly quantities: readonly UncertainQuantity[];
  /** How many draws; a whole number from 100 to 1 000 000. 10 000 if not given. */
  readonly cases?: number;
  /** A whole number within 32 bits; the same seed gives the same cases everywhere. 1 if not given. */
  readonly seed?: number;
  /** Shares of the cases to be covered, each 0.000 001 to 1; none if not given. */
  readonly shares?: readonly number[];
  /** Half the width of each difference quotient, in standard uncertainties, 0.000 001 to 3; 1 if not given. */
  readonly reach?: number;
}

/** What one input quantity adds to the uncertainty of the result, to first order. */
export interface Contribution {
  readonly name: string;
  readonly standardUncertainty: number;
  /** Change of the result for one unit of the quantity. */
  readonly sensitivityCoefficient: number;
  /** Their product without sign, in the unit of the result. */
  readonly contribution: number;
  /** Its square as a share of all. */
  readonly shareOfVariance: number;
}

/** The uncertainty to first order. */
export interface FirstOrder {
  /** The result at the means of the quantities. */
  readonly value: number;
  readonly standardUncertainty: number;
  /** The greatest first. */
  readonly contributions: readonly Contribution[];
}

/** A value that so many of the cases do not exceed; none where too many cases have no result. */
export interface Covering {
  readonly share: number;
  readonly value?: number;
  /** Between these the value lies in 95 % of repetitions with other seeds: what the number of cases leaves open. */
  readonly from?: number;
  readonly to?: number;
}

/** The uncertainty by drawing cases. */
export interface MonteCarlo {
  readonly cases: number;
  readonly seed: number;
  /** Cases without a result; no share counts them as covered. */
  readonly withoutResult: number;
  /** Of the cases with a result; absent where there are none. */
  readonly mean?: number;
  readonly standardDeviation?: number;
  readonly coverings: readonly Covering[];
}

/** Both ways to an uncertainty. */
export interface Propagation {
  /** Absent where the model has no result at the means, or next to them. */
  readonly firstOrder?: FirstOrder;
  readonly monteCarlo: MonteCarlo;
}

/**
 * Carries the uncertainties of input quantities through a model, to first order and by drawing cases. The quantities are
 * independent of each other.
 *
 * @param inputs - the model, its quantities with their distributions, the number of cases, the seed and the shares.
 * @returns both results; the first order by differences of one standard uncertainty to either side.
 * @throws {@link DomainError} naming what is not within its range, or not whole where it is to be; what the model gives
 *   back is named `model`.
 *
 * @example
 * const quantities = [{ name: 'x', value: 2, distribution: { shape: 'normal', standardDeviation: 0.5 } }] as const;
 * const found = propagate({ model: (values) => 3 * (values[0] ?? 0), quantities });
 * found.firstOrder?.standardUncertainty ?? 0 // ≈ 1.5 ± 1e-9
 */
export function propagate(inputs: PropagateInputs): Propagation {
  const { quantities, cases = 10_000, seed = 1, shares = [], reach = 1 } = inputs;
  demandWhole('cases', cases, bounds.cases);
  demandWhole('seed', seed, bounds.seed);
  demandEach('shares', shares, bounds.share);
  demand('reach', reach, bounds.reach);
  demandQuantities(quantities);
  const model: Model = (values) => {
    const result = inputs.model(values);
    if (result !== undefined) demand('model', result, bounds.figure);
    return result;
  };
  const firstOrder = toFirstOrder(model, quantities, reach);
  const monteCarlo = byCases(model, quantities, shares, cases, seed);
  return { ...(firstOrder === undefined ? {} : { firstOrder }), monteCarlo };
}

type Model = PropagateInputs['model'];

const libraryRange = { source: 'library range' };
const bounds = {
  cases: { unit: 'cases', min: 100, max: 1_000_000, ...libraryRange },
  seed: { unit: 'in 32 bits', min: -(2 ** 31), max: 2 ** 31 - 1, ...libraryRange },
  share: { unit: 'of the cases', min: 1e-6, max: 1, ...libraryRange },
  reach: { unit: 'standard uncertainties', min: 1e-6, max: 3, ...libraryRange },
  figure: { unit: 'units', min: -1e12, max: 1e12, ...libraryRange },
} satisfies Record<string, Bound>;

function demandQuantities(quantities: readonly UncertainQuantity[]): void {
  if (!Array.isArray(quantities))
    throw inconsistent('quantities', String(quantities), 'quantities', 0, 'any', 'a list of quantities');
  for (const [i, quantity] of quantities.entries()) {
    demand(`quantities[${i}].value`, quantity?.value, bounds.figure);
    demandDistribution(`quantities[${i}].distribution`, quantity.distribution);
  }
}

function toFirstOrder(model: Model, quantities: readonly UncertainQuantity[], reach: number): FirstOrder | undefined {
  const means = Float64Array.from(quantities, ({ value, distribution }) => meanOf(value, distribution));
  const value = model(means);
  if (value === undefined) return undefined;
  const parts: { name: string; standardUncertainty: number; sensitivityCoefficient: number }[] = [];
  for (const [i, { name, value: stated, distribution }] of quantities.entries()) {
    const standardUncertainty = standardUncertaintyOf(stated, distribution);
    const step = standardUncertainty * reach;
    const at = (difference: number): number | undefined => {
      const moved = means.slice();
      moved[i] = (means[i] as number) + difference;
      return model(moved);
    };
    const [below, above] = step === 0 ? [value, value] : [at(-step), at(step)];
    if (below === undefined && above === undefined) return undefined;
    // At an edge from the one side that has a result.
    const width = (below === undefined ? 0 : step) + (above === undefined ? 0 : step);
    const sensitivityCoefficient = step === 0 ? 0 : ((above ?? value) - (below ?? value)) / width;
    parts.push({ name, standardUncertainty, sensitivityCoefficient });
  }
  const standardUncertainty = combinedStandardUncertainty({
    sensitivityCoefficients: parts.map((part) => part.sensitivityCoefficient),
    standardUncertainties: parts.map((part) => part.standardUncertainty),
  });
  const contributions = parts.map((part) => {
    const contribution = Math.abs(part.sensitivityCoefficient * part.standardUncertainty);
    const shareOfVariance = standardUncertainty === 0 ? 0 : (contribution / standardUncertainty) ** 2;
    return { ...part, contribution, shareOfVariance };
  });
  return {
    value,
    standardUncertainty,
    contributions: contributions.sort((a, b) => b.contribution - a.contribution),
  };
}

function byCases(
  model: Model,
  quantities: readonly UncertainQuantity[],
  shares: readonly number[],
  cases: number,
  seed: number,
): MonteCarlo {
  const streams = randomStreams(seed, quantities.length);
  const values = new Float64Array(quantities.length);
  const results = new Float64Array(cases);
  let withoutResult = 0;
  for (let n = 0; n < cases; n += 1) {
    for (let i = 0; i < values.length; i += 1) {
      const { value, distribution } = quantities[i] as UncertainQuantity;
      values[i] = draw(value, distribution, streams[i] as () => number);
    }
    const result = model(values);
    // Beyond every other: a case without a result is covered by no value.
    results[n] = result ?? Number.POSITIVE_INFINITY;
    if (result === undefined) withoutResult += 1;
  }
  results.sort();
  const drawn = { cases, seed, withoutResult };
  const found = results.subarray(0, cases - withoutResult);
  const coverings = shares.map((share) => coveringOf(results, share));
  if (found.length === 0) return { ...drawn, coverings };
  const mean = found.reduce((sum, result) => sum + result, 0) / found.length;
  const squares = found.reduce((sum, result) => sum + (result - mean) ** 2, 0);
  const standardDeviation = Math.sqrt(squares / Math.max(1, found.length - 1));
  return { ...drawn, mean, standardDeviation, coverings };
}

/** The order statistic that a share of the cases does not exceed, with those that bound it in 95 % of repetitions. */
function coveringOf(sorted: Float64Array, share: number): Covering {
  const count = sorted.length;
  const rank = Math.ceil(share * count - 1e-9);
  const spread = 1.96 * Math.sqrt(count * share * (1 - share));
  const at = (place: number) => sorted[Math.min(count, Math.max(1, place)) - 1] as number;
  const named = { value: at(rank), from: at(Math.floor(rank - spread)), to: at(Math.ceil(rank + spread)) };
  const finite = Object.entries(named).filter(([, value]) => Number.isFinite(value));
  return { share, ...Object.fromEntries(finite) };
}
