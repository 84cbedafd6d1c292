import {
  type Bound,
  type Domain,
  demand,
  demandWord,
  inconsistent,
  type Knots,
  type Quantity,
  type Ratio,
} from '../units/index.ts';
import type { Same } from './components.ts';

/** A series of figures of one unit; NaN or null where the observation does not report the figure. */
export interface ObservationColumn<U extends string> {
  readonly unit: U;
  readonly values: ArrayLike<number | null>;
}

/** Inputs of {@link usabilityFactor}. */
export interface UsabilityFactorInputs<U extends 'degTrue' | 'degMagnetic' = 'degTrue' | 'degMagnetic'> {
  /** Directions the wind blew from, above 0° up to 360°; 0 goes with calm only. None reported: the wind was variable. */
  readonly directions: ObservationColumn<U>;
  /** Mean speeds. None reported: the observation is missing. */
  readonly speeds: ObservationColumn<'kt'>;
  /** Speeds of the gusts. None reported: the mean stands for it. Without this column all is compared at the mean. */
  readonly gusts?: ObservationColumn<'kt'> | undefined;
  /** The directions of use, against the same north as the wind: both ends of a runway where both are used. */
  readonly runways: readonly { readonly name: string; readonly direction: Quantity<Same<U>> }[];
  /** Most crosswind, from either side. */
  readonly crosswindLimit: Knots;
  /** Most tailwind. */
  readonly tailwindLimit: Knots;
  /** The share of a mean tailwind that is reckoned with: 1 for the tailwind itself, 1.5 by the regulation. */
  readonly tailwindShare: Ratio;
}

/** How often the wind was within the limits for one direction of use. */
export interface RunwayUsability {
  readonly name: string;
  readonly direction: Quantity<'degTrue' | 'degMagnetic'>;
  /** Observations within both limits. */
  readonly within: number;
  /** Their share of the observations counted. */
  readonly usabilityFactor: Ratio;
  /** Observations with more crosswind than the limit; one may be outside both limits. */
  readonly outsideCrosswind: number;
  /** Observations with more tailwind than the limit. */
  readonly outsideTailwind: number;
}

/** How often the wind was within the limits, with every observation accounted for. */
export interface Usability {
  /** All observations of the series: those counted and those missing. */
  readonly observations: number;
  /** Observations without a speed; they are in no share. */
  readonly missing: number;
  readonly counted: number;
  /** Of those counted, without any wind: within on every runway. */
  readonly calm: number;
  /** Of those counted, without a direction: the full speed counts as tailwind and as crosswind on every runway. */
  readonly variable: number;
  readonly comparedAt: 'gust' | 'mean';
  readonly runways: readonly RunwayUsability[];
  /** Observations within both limits on at least one of the runways. */
  readonly within: number;
  /** Their share of the observations counted. */
  readonly usabilityFactor: Ratio;
}

export const usabilityFactorDomain = {
  crosswindLimit: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  tailwindLimit: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  tailwindShare: { unit: 'ratio', min: 1, max: 3, source: 'a tailwind counts for no less than is reported' },
} satisfies Domain<UsabilityFactorInputs>;

const direction = { unit: 'deg', min: 0, max: 360, source: 'compass circle' };
const speed = { unit: 'kt', min: 0, max: 200, source: 'library range' };

/** Arithmetic noise that must not put a component that equals a limit outside it. */
const guard_kt = 1e-9;

/**
 * Share of a series of wind observations in which the wind was within the limits of crosswind and tailwind: for each
 * direction of use, and on at least one of them. {@link allowableCrosswinds} holds what authorities ask of aerodromes.
 *
 * F = N_within / N_counted. An observation is within when |X| ≤ X_max and max(b T, T_G) ≤ T_max: X the crosswind and T_G
 * the tailwind of the gust, T that of the mean, in kt, b the share of a tailwind that is reckoned with. Equality is
 * within. A calm is within; a wind without a direction counts in full as tailwind and as crosswind; an observation
 * without a speed is counted apart and is in no share.
 *
 * @param x - columns of one length: `directions` above 0° up to 360°, `speeds` and `gusts` 0 kt to 200 kt, a gust no less
 * than its mean; `runways` with `name` and `direction` 0° to 360°; `crosswindLimit` and `tailwindLimit` 0 kt to 200 kt,
 * `tailwindShare` 1 to 3.
 * @returns `within` and `usabilityFactor` of all runways together and of each of the `runways`, with the observations
 * that were counted, `missing`, `calm` and `variable`.
 * @throws {@link DomainError} when a figure is not within its range, named by its place; and with code `inconsistent` when
 * columns differ in length, a gust is below its mean, a direction of 0 does not go with calm, or nothing can be counted.
 * @record wind.usability-factor
 *
 * @example
 * const directions = { unit: 'degTrue', values: [270, 300, Number.NaN, 0, 180] } as const
 * const speeds = { unit: 'kt', values: [10, 26, 4, 0, null] } as const
 * const runways = [{ name: '27', direction: degTrue(268) }]
 * const limits = { crosswindLimit: kt(12), tailwindLimit: kt(5), tailwindShare: ratio(1) }
 * const usability = usabilityFactor({ directions, speeds, runways, ...limits })
 * usability.usabilityFactor // => 0.75
 * usability.missing // => 1
 */
export function usabilityFactor<U extends 'degTrue' | 'degMagnetic'>(x: UsabilityFactorInputs<U>): Usability {
  demand('crosswindLimit', x.crosswindLimit, usabilityFactorDomain.crosswindLimit);
  demand('tailwindLimit', x.tailwindLimit, usabilityFactorDomain.tailwindLimit);
  demand('tailwindShare', x.tailwindShare, usabilityFactorDomain.tailwindShare);
  demandColumns(x);
  const { directions, speeds, gusts } = x;
  const runways = runwaysOf(x.runways);
  const observations = speeds.values.length;
  const count = { missing: 0, calm: 0, variable: 0, within: 0 };
  for (let i = 0; i < observations; i += 1) {
    const mean_kt = figure('speeds', speeds.values, i, speed);
    if (mean_kt === undefined) {
      count.missing += 1;
      continue;
    }
    const gust_kt = gusts === undefined ? mean_kt : (figure('gusts', gusts.values, i, speed) ?? mean_kt);
    if (gust_kt < mean_kt) refuseGust(i, gust_kt, mean_kt);
    const from_deg = figure('directions', directions.values, i, direction);
    if (gust_kt === 0) count.calm += 1;
    else if (from_deg === undefined) count.variable += 1;
    else if (from_deg === 0) refuseZero(i);
    if (isWithinAny(runways, from_deg, mean_kt, gust_kt, x)) count.within += 1;
  }
  const counted = observations - count.missing;
  if (counted === 0) refuseNothing('speeds', observations);
  return {
    observations,
    counted,
    ...count,
    comparedAt: gusts === undefined ? 'mean' : 'gust',
    runways: runways.map(({ north: _north, east: _east, ...runway }) => ({
      ...runway,
      usabilityFactor: (runway.within / counted) as Ratio,
    })),
    usabilityFactor: (count.within / counted) as Ratio,
  };
}

type Limits = Pick<UsabilityFactorInputs, 'crosswindLimit' | 'tailwindLimit' | 'tailwindShare'>;

interface RunwayCount extends Omit<RunwayUsability, 'usabilityFactor'> {
  within: number;
  outsideCrosswind: number;
  outsideTailwind: number;
  /** Cosine and sine of the direction. */
  readonly north: number;
  readonly east: number;
}

/** Counts one observation on every runway, and says whether it is within the limits on one of them. */
function isWithinAny(
  runways: readonly RunwayCount[],
  from_deg: number | undefined,
  mean_kt: number,
  gust_kt: number,
  x: Limits,
): boolean {
  const from_rad = ((from_deg ?? 0) * Math.PI) / 180;
  const north = Math.cos(from_rad);
  const east = Math.sin(from_rad);
  let isWithin = false;
  for (const runway of runways) {
    const fromBehind = from_deg === undefined ? 1 : Math.max(0, -(north * runway.north + east * runway.east));
    const across = from_deg === undefined ? 1 : Math.abs(east * runway.north - north * runway.east);
    const tailwind_kt = Math.max(x.tailwindShare * mean_kt, gust_kt) * fromBehind;
    const isOutsideCrosswind = gust_kt * across > x.crosswindLimit + guard_kt;
    const isOutsideTailwind = tailwind_kt > x.tailwindLimit + guard_kt;
    if (isOutsideCrosswind) runway.outsideCrosswind += 1;
    if (isOutsideTailwind) runway.outsideTailwind += 1;
    if (isOutsideCrosswind || isOutsideTailwind) continue;
    runway.within += 1;
    isWithin = true;
  }
  return isWithin;
}

function runwaysOf(runways: readonly { readonly name: string; readonly direction: number }[]): RunwayCount[] {
  if (!Array.isArray(runways) || runways.length === 0) refuseNothing('runways', 0);
  return runways.map(({ name, direction: direction_deg }, i) => {
    demand(`runways[${i}].direction`, direction_deg, direction);
    const direction_rad = (direction_deg * Math.PI) / 180;
    return {
      name,
      direction: direction_deg as RunwayUsability['direction'],
      within: 0,
      outsideCrosswind: 0,
      outsideTailwind: 0,
      north: Math.cos(direction_rad),
      east: Math.sin(direction_rad),
    };
  });
}

/** The figure of one observation, or undefined where none is reported. */
function figure(column: string, values: ArrayLike<number | null>, i: number, bound: Bound): number | undefined {
  const value = values[i];
  if (value === null || Number.isNaN(value)) return undefined;
  // The name is built only when it is needed.
  const isWithin = typeof value === 'number' && value >= bound.min && value <= bound.max;
  if (!isWithin) demand(`${column}[${i}]`, value as number, bound);
  return value;
}

function demandColumns({ directions, speeds, gusts }: UsabilityFactorInputs): void {
  demandWord('directions.unit', directions?.unit, ['degTrue', 'degMagnetic'], 'the north of the directions');
  demandWord('speeds.unit', speeds?.unit, ['kt'], 'the unit of the speeds');
  if (gusts !== undefined) demandWord('gusts.unit', gusts.unit, ['kt'], 'the unit of the gusts');
  const length = speeds.values?.length;
  if (typeof length !== 'number')
    throw inconsistent('speeds.values', String(length), 'observations', 0, 'any', 'a list of figures');
  const source = 'one figure of each column for one observation';
  for (const [name, column] of Object.entries({ directions, gusts })) {
    if (column === undefined || column.values?.length === length) continue;
    throw inconsistent(`${name}.values`, String(column.values?.length), 'observations', length, length, source);
  }
}

function refuseGust(i: number, received: number, min: number): never {
  throw inconsistent(`gusts[${i}]`, received, 'kt', min, speed.max, 'a gust is not below the mean speed');
}

function refuseZero(i: number): never {
  throw inconsistent(`directions[${i}]`, 0, 'deg', 'above 0', 360, 'a direction of 0 goes with calm; north is 360');
}

function refuseNothing(parameter: string, received: number): never {
  throw inconsistent(parameter, received, parameter, 1, 'any', 'a share needs something to count');
}
