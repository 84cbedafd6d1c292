import {
  type Domain,
  DomainError,
  demand,
  demandWord,
  type Knots,
  type MagneticDirection,
  type Ratio,
  type TrueDirection,
} from '../units/index.ts';
import { windUsed } from './accountability.ts';
import type { Same } from './components.ts';
import {
  type ReportedWindComponents,
  type ReportedWindInputs,
  reportedWindComponents,
  reportedWindDomain,
} from './reported.ts';
import { onCompass } from './wind-triangle.ts';

/** A wind as it is reported, for any runway. */
export type ReportedWind<N extends TrueDirection | MagneticDirection = TrueDirection | MagneticDirection> = Omit<
  ReportedWindInputs<N>,
  'direction'
>;

/** One end of a runway: the direction in which it is used. */
export interface RunwayEnd<N extends TrueDirection | MagneticDirection = TrueDirection | MagneticDirection> {
  /** As the user knows it, a designator for instance. */
  readonly name: string;
  /** Direction of use as a bearing, against the same north as the wind. */
  readonly direction: N;
}

/** Inputs of {@link runwayOrder}. */
export interface RunwayOrderInputs<N extends TrueDirection | MagneticDirection = TrueDirection | MagneticDirection> {
  readonly wind: ReportedWind<N>;
  readonly runways: readonly RunwayEnd<Same<N>>[];
  /** What comes first: `'along'` the most wind from ahead, `'across'` the least crosswind. */
  readonly by: 'along' | 'across';
  /** The share of a headwind that is counted on. */
  readonly headwindShare: Ratio;
  /** The share of a tailwind that is reckoned with. */
  readonly tailwindShare: Ratio;
}

/** The wind on one runway end, as it enters an order. */
export interface WindOnRunway {
  /** Wind used along the runway: positive a headwind, negative a tailwind. */
  readonly windUsed: Knots;
  /** The greatest crosswind from either side over all directions of the report, at the speed of the gusts. */
  readonly worstCrosswind: Knots;
}

/** One runway end in its place. */
export interface RunwayInOrder extends WindOnRunway {
  /** From 1; runway ends with the same wind share a place. */
  readonly place: number;
  readonly name: string;
  readonly direction: TrueDirection | MagneticDirection;
  readonly components: ReportedWindComponents;
  /**
   * The wind with the reported directions turned by 5° to the left and to the right, for a wind 70° to 110° off the
   * runway: the rounding of a report can turn a headwind into a tailwind there. It never decides the place.
   */
  readonly turnedByFiveDegrees?: readonly [WindOnRunway, WindOnRunway];
}

/** Runway ends in the order of their wind. */
export interface RunwayOrder {
  /** What the order rests on, and what it leaves out. */
  readonly basis: { readonly code: 'wind-only'; readonly text: string };
  readonly runways: readonly RunwayInOrder[];
}

export const runwayOrderDomain = {
  headwindShare: { unit: 'ratio', min: 0, max: 1, source: 'a headwind counts for no more than is reported' },
  tailwindShare: { unit: 'ratio', min: 1, max: 3, source: 'a tailwind counts for no less than is reported' },
} satisfies Domain<RunwayOrderInputs>;

const first = { along: 'most wind from ahead first', across: 'least crosswind first' };

/**
 * All runway ends in the order of their wind components in one reported wind. The order rests on the wind alone and
 * recommends nothing: length, surface, slope, obstacles, limits and the runway in use are not in it.
 *
 * Along: by the wind used U of {@link windUsed}, the greatest first, then by the crosswind; across: by the crosswind X, the
 * least first, then by U. X is the greatest from either side at the gust; both are the worst over the directions of
 * the report, and a variable wind counts in full as tailwind and crosswind, as in {@link reportedWindComponents}.
 *
 * @param x - `wind` as reported, `runways` with `name` and `direction`, `by` `'along'` or `'across'`, `headwindShare` 0 to
 * 1, `tailwindShare` 1 to 3.
 * @returns `basis`, what the order rests on, and the `runways` from the first place to the last; equal winds share a place.
 * @throws {@link DomainError} when a parameter is not within its range or there is no runway.
 * @record wind.runway-order
 *
 * @example
 * const wind = { from: degMagnetic(190), speed: kt(12), gust: kt(18) }
 * const runways = [{ name: '10', direction: degMagnetic(102) }, { name: '28', direction: degMagnetic(282) }, { name: '16', direction: degMagnetic(158) }]
 * const order = runwayOrder({ wind, runways, by: 'along', headwindShare: ratio(0.5), tailwindShare: ratio(1.5) })
 * order.runways.map(({ place, name }) => `${place}: ${name}`) // => ['1: 16', '2: 10', '3: 28']
 * order.basis.text // => 'By the wind alone, most wind from ahead first: length, surface, slope, obstacles, limits and the runway in use are not considered.'
 */
export function runwayOrder<N extends TrueDirection | MagneticDirection>(x: RunwayOrderInputs<N>): RunwayOrder {
  demandWord('by', x.by, ['along', 'across'], 'what the order goes by');
  demand('headwindShare', x.headwindShare, runwayOrderDomain.headwindShare);
  demand('tailwindShare', x.tailwindShare, runwayOrderDomain.tailwindShare);
  if (!Array.isArray(x.runways) || x.runways.length === 0) refuseNoRunway();
  for (const [i, { direction }] of x.runways.entries()) {
    demand(`runways[${i}].direction`, direction, reportedWindDomain.direction);
  }
  const winds = x.runways.map((runway) => windOn(runway as RunwayEnd, x as RunwayOrderInputs));
  const keys: Record<typeof x.by, (wind: WindOnRunway) => readonly [number, number]> = {
    along: ({ windUsed: used, worstCrosswind }) => [-settled(used), settled(worstCrosswind)],
    across: ({ windUsed: used, worstCrosswind }) => [settled(worstCrosswind), -settled(used)],
  };
  const key = keys[x.by];
  const compare = (a: WindOnRunway, b: WindOnRunway) => key(a)[0] - key(b)[0] || key(a)[1] - key(b)[1];
  const sorted = [...winds].sort(compare);
  const runways = sorted.map((wind) => ({
    place: 1 + sorted.findIndex((other) => compare(other, wind) === 0),
    ...wind,
  }));
  const text = `By the wind alone, ${first[x.by]}: length, surface, slope, obstacles, limits and the runway in use are not considered.`;
  return { basis: { code: 'wind-only', text }, runways };
}

function windOn({ name, direction }: RunwayEnd, x: RunwayOrderInputs): Omit<RunwayInOrder, 'place'> {
  const { wind } = x;
  const components = reportedWindComponents({ ...wind, direction } as ReportedWindInputs);
  const on = { name, direction, components, ...asUsed(components, x) };
  if (wind.from === 'variable' || wind.gust === 0 || !isNearlyAcross(wind.from, direction)) return on;
  const turned = (by_deg: number) =>
    asUsed(reportedWindComponents({ ...turnedBy(by_deg, wind), direction } as ReportedWindInputs), x);
  return { ...on, turnedByFiveDegrees: [turned(-5), turned(5)] };
}

function asUsed(components: ReportedWindComponents, x: RunwayOrderInputs): WindOnRunway {
  const { leastHeadwind, leastHeadwindAtGust, crosswindFromLeft, crosswindFromRight } = components;
  const { headwindShare, tailwindShare } = x;
  const used = windUsed({ leastHeadwind, leastHeadwindAtGust, headwindShare, tailwindShare });
  return {
    windUsed: settled(used) as Knots,
    worstCrosswind: Math.max(crosswindFromLeft, crosswindFromRight) as Knots,
  };
}

/** Two figures that differ by the noise of a sine are one: a wind straight across has no sign along the runway. */
function settled(value_kt: number): number {
  return Math.round(value_kt * 1e9) / 1e9 + 0;
}

function isNearlyAcross(from_deg: number, direction_deg: number): boolean {
  const angle_deg = Math.abs(((from_deg - direction_deg + 540) % 360) - 180);
  return angle_deg >= 70 && angle_deg <= 110;
}

function turnedBy(by_deg: number, wind: ReportedWind): ReportedWind {
  const turn = (from: number) => onCompass(from + by_deg) as TrueDirection;
  const { range } = wind;
  const from = turn(wind.from as number);
  return range === undefined
    ? { ...wind, from }
    : { ...wind, from, range: { from: turn(range.from), to: turn(range.to) } };
}

function refuseNoRunway(): never {
  const source = 'an order needs a runway';
  throw new DomainError({
    code: 'out-of-range',
    parameter: 'runways',
    received: 0,
    unit: 'runways',
    min: 1,
    max: 'any',
    source,
  });
}
