import {
  type Domain,
  demand,
  inconsistent,
  type Knots,
  type Numbers,
  type Percent,
  type Ratio,
} from '../units/index.ts';

/** Inputs of {@link windFactor}. */
export interface WindFactorInputs {
  /** Amount of the wind component used, of the kind (head or tail) for which the law is printed. */
  readonly wind: Knots;
  /** Change of the distance for each knot, in percent: negative where the wind shortens it. */
  readonly percentPerKnot: Percent;
}

/** Inputs of {@link slopeFactor}. */
export interface SlopeFactorInputs {
  /** Amount of the slope, of the kind (uphill or downhill) for which the law is printed. */
  readonly slope: Percent;
  /** Change of the distance for each percent of slope, in percent: negative only for a credit that a manual prints. */
  readonly percentPerPercent: Percent;
}

/** Inputs of {@link printedLawFactor}. */
export interface PrintedLawFactorInputs {
  /** Change of the distance for each step. */
  readonly percentPerStep: Percent;
  /** How many steps; parts of a step count in proportion. */
  readonly steps: Ratio;
}

export const printedLawFactorDomain = {
  percentPerStep: { unit: 'percent', min: 0, max: 100, source: 'library range, adverse laws only' },
  steps: { unit: 'ratio', min: 0, max: 20, source: 'library range' },
} satisfies Domain<PrintedLawFactorInputs>;

export const windFactorDomain = {
  wind: { unit: 'kt', min: 0, max: 50, source: 'library range' },
  percentPerKnot: { unit: 'percent', min: -10, max: 25, source: 'library range' },
} satisfies Domain<WindFactorInputs>;

export const slopeFactorDomain = {
  slope: { unit: 'percent', min: 0, max: 10, source: 'library range' },
  percentPerPercent: { unit: 'percent', min: -10, max: 25, source: 'library range' },
} satisfies Domain<SlopeFactorInputs>;

/** Below this a straight line has been carried beyond anything that a manual prints. */
const leastFactor = 0.2;

/**
 * Correction factor of a wind law that is a straight line.
 *
 * k = 1 + p W / 100: W the wind component used in kt, p the change of the distance in percent for each knot.
 * "10 % less for each 9 kt of headwind" is p = −10/9.
 *
 * @param x - `wind` 0 kt to 50 kt, `percentPerKnot` −10 % to 25 %.
 * @returns The correction factor.
 * @throws {@link DomainError} when a parameter is not within its range, or the factor would be less than 0.2.
 * @record distance.wind-factor
 *
 * @example
 * windFactor({ wind: kt(8), percentPerKnot: percent(-2.5) }) // ≈ 0.8 ± 0.000001
 */
export function windFactor(x: WindFactorInputs): Ratio {
  demand('wind', x.wind, windFactorDomain.wind);
  demand('percentPerKnot', x.percentPerKnot, windFactorDomain.percentPerKnot);
  const { wind: wind_kt, percentPerKnot }: Numbers<WindFactorInputs> = x;
  const factor = 1 + (percentPerKnot * wind_kt) / 100;
  if (factor < leastFactor) refuseSmallFactor('wind', wind_kt, 'kt', percentPerKnot);
  return factor as Ratio;
}

/**
 * Correction factor of a slope law that is a straight line.
 *
 * k = 1 + p s / 100: s the slope in percent, p the change of the distance in percent for each percent of slope.
 *
 * @param x - `slope` 0 % to 10 %, `percentPerPercent` −10 % to 25 %.
 * @returns The correction factor.
 * @throws {@link DomainError} when a parameter is not within its range, or the factor would be less than 0.2.
 * @record distance.slope-factor
 *
 * @example
 * slopeFactor({ slope: percent(1.9), percentPerPercent: percent(5) }) // ≈ 1.095 ± 0.000001
 */
export function slopeFactor(x: SlopeFactorInputs): Ratio {
  demand('slope', x.slope, slopeFactorDomain.slope);
  demand('percentPerPercent', x.percentPerPercent, slopeFactorDomain.percentPerPercent);
  const { slope: slope_percent, percentPerPercent }: Numbers<SlopeFactorInputs> = x;
  const factor = 1 + (percentPerPercent * slope_percent) / 100;
  if (factor < leastFactor) refuseSmallFactor('slope', slope_percent, 'percent', percentPerPercent);
  return factor as Ratio;
}

/**
 * Correction factor of a law that a manual prints in steps and draws as a straight line through them.
 *
 * k = 1 + p n / 100: p the change of the distance in percent for each step, n the number of steps, parts of steps included.
 *
 * @param x - `percentPerStep` 0 % to 100 %, `steps` 0 to 20.
 * @returns The correction factor.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record distance.printed-law-factor
 *
 * @example
 * printedLawFactor({ percentPerStep: percent(10), steps: ratio(1.5) }) // ≈ 1.15 ± 0.000001
 */
export function printedLawFactor(x: PrintedLawFactorInputs): Ratio {
  demand('percentPerStep', x.percentPerStep, printedLawFactorDomain.percentPerStep);
  demand('steps', x.steps, printedLawFactorDomain.steps);
  const { percentPerStep, steps }: Numbers<PrintedLawFactorInputs> = x;
  const factor = 1 + (percentPerStep * steps) / 100;
  return factor as Ratio;
}

function refuseSmallFactor(parameter: string, received: number, unit: string, percentPerUnit: number): never {
  const max = (100 * (leastFactor - 1)) / percentPerUnit;
  const source = `a factor below ${leastFactor} is beyond any straight line`;
  throw inconsistent(parameter, received, unit, 0, max, source);
}
