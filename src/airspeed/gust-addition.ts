import {
  type Domain,
  type DomainError,
  demand,
  type IndicatedAirspeed,
  inconsistent,
  type Knots,
  type Numbers,
} from '../units/index.ts';

/** Inputs of {@link gustIncrement}. */
export interface GustIncrementInputs {
  /** Mean speed of the wind. */
  readonly meanSpeed: Knots;
  /** Speed of the gusts, at least the mean. */
  readonly gust: Knots;
}

/** Inputs of {@link approachSpeed}. */
export interface ApproachSpeedInputs {
  /** Approach speed that the manual publishes. */
  readonly publishedSpeed: IndicatedAirspeed;
  /** Gust minus mean, from {@link gustIncrement}. */
  readonly gustIncrement: Knots;
}

export const gustIncrementDomain = {
  meanSpeed: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  gust: { unit: 'kt', min: 0, max: 200, source: 'library range' },
} satisfies Domain<GustIncrementInputs>;

export const approachSpeedDomain = {
  publishedSpeed: { unit: 'kias', min: 20, max: 200, source: 'library range' },
  gustIncrement: { unit: 'kt', min: 0, max: 200, source: 'library range' },
} satisfies Domain<ApproachSpeedInputs>;

/**
 * Gust increment: how much faster the gusts are than the mean wind.
 *
 * ΔW = G − W: G the gust and W the mean wind in kt.
 *
 * @param x - `meanSpeed` 0 kt to 200 kt, `gust` from the mean speed to 200 kt.
 * @returns Speed in kt, 0 without gusts.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the gust is
 * below the mean speed.
 * @record airspeed.gust-increment
 *
 * @example
 * gustIncrement({ meanSpeed: kt(7), gust: kt(17) }) // => 10
 */
export function gustIncrement(x: GustIncrementInputs): Knots {
  demand('meanSpeed', x.meanSpeed, gustIncrementDomain.meanSpeed);
  demand('gust', x.gust, gustIncrementDomain.gust);
  const { meanSpeed: mean_kt, gust: gust_kt }: Numbers<GustIncrementInputs> = x;
  if (gust_kt < mean_kt) throw gustBelowMean(mean_kt, gust_kt);
  return (gust_kt - mean_kt) as Knots;
}

/**
 * Approach speed in gusts: the manual's speed plus half the gust increment, unrounded.
 *
 * V = V_pub + ΔW/2: V_pub the published indicated airspeed and ΔW the gust increment in kt.
 *
 * @param x - `publishedSpeed` 20 kt to 200 kt, `gustIncrement` 0 kt to 200 kt.
 * @returns Indicated airspeed in kt; round it up before it is flown.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.approach-speed
 *
 * @example
 * approachSpeed({ publishedSpeed: kias(62), gustIncrement: kt(10) }) // => 67
 */
export function approachSpeed(x: ApproachSpeedInputs): IndicatedAirspeed {
  demand('publishedSpeed', x.publishedSpeed, approachSpeedDomain.publishedSpeed);
  demand('gustIncrement', x.gustIncrement, approachSpeedDomain.gustIncrement);
  const { publishedSpeed: published_kt, gustIncrement: increment_kt }: Numbers<ApproachSpeedInputs> = x;
  return (published_kt + increment_kt / 2) as IndicatedAirspeed;
}

function gustBelowMean(mean_kt: number, gust_kt: number): DomainError {
  const { unit, max } = gustIncrementDomain.gust;
  const source = 'a gust is not below the mean speed';
  return inconsistent('gust', gust_kt, unit, mean_kt, max, source);
}
