import { type Degrees, type Domain, demand, demandEach, type Knots, type Numbers, type Ratio } from '../units/index.ts';

/** The limits that a wind is held against. */
interface WindLimits {
  /** Most crosswind, from either side. */
  readonly crosswindLimit: Knots;
  /** Most tailwind. */
  readonly tailwindLimit: Knots;
  /** Most headwind, where there is such a limit. */
  readonly headwindLimit?: Knots | undefined;
  /** The share of a tailwind that is reckoned with: 1 for the tailwind itself, 1.5 by the regulation. */
  readonly tailwindShare: Ratio;
  /** The strongest wind considered. */
  readonly upTo: Knots;
}

/** Inputs of {@link largestWind}. */
export interface LargestWindInputs extends WindLimits {
  /** Angle between the runway direction and the direction the wind blows from, to either side. */
  readonly angle: Degrees;
}

/** Inputs of {@link largestWinds}. */
export interface LargestWindsInputs extends WindLimits {
  /** Angles between the runway direction and the direction the wind blows from, to either side. */
  readonly angles: readonly Degrees[];
}

/** The largest wind within the limits and the limit that it reaches; or that none is reached up to the strongest wind considered. */
export type LargestWind =
  | { readonly limitedBy: 'crosswind' | 'tailwind' | 'headwind'; readonly speed: Knots }
  | { readonly limitedBy: 'none' };

/** The largest wind at one angle of a series. */
export type LargestWindAtAngle = LargestWind & { readonly angle: Degrees };

export const largestWindDomain = {
  angle: { unit: 'deg', min: 0, max: 180, source: 'from straight ahead to straight behind' },
  crosswindLimit: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  tailwindLimit: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  headwindLimit: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  tailwindShare: { unit: 'ratio', min: 1, max: 3, source: 'a tailwind counts for no less than is reported' },
  upTo: { unit: 'kt', min: 1, max: 200, source: 'library range' },
} satisfies Domain<LargestWindInputs>;

/** A sine or cosine smaller than this is the noise of a wind straight along or straight across. */
const noise = 1e-12;

/**
 * The largest wind from one angle off the runway that stays within a set of limits. A gust counts in full: it is the
 * gust, where there is one, that may reach this speed.
 *
 * W = min(X_max / sin a, T_max / (−b cos a) from behind, H_max / cos a from ahead): a the angle between the runway
 * direction and the direction the wind blows from, X_max, T_max and H_max the limits of crosswind, tailwind and headwind
 * in kt, b the share of a tailwind that is reckoned with. At the speed returned the wind is within: it equals a limit.
 *
 * @param x - `angle` 0° to 180°, `crosswindLimit`, `tailwindLimit` and, where there is one, `headwindLimit` 0 kt to 200 kt,
 * `tailwindShare` 1 to 3, `upTo` 1 kt to 200 kt.
 * @returns The `speed` in kt and the limit that it reaches, `limitedBy`; `'none'` without a speed where no wind up to `upTo`
 * exceeds a limit.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record wind.largest-wind
 *
 * @example
 * const limits = { crosswindLimit: kt(14), tailwindLimit: kt(5), tailwindShare: ratio(1.5), upTo: kt(60) }
 * largestWind({ ...limits, angle: degrees(40) }).limitedBy // => 'crosswind'
 * largestWind({ ...limits, angle: degrees(180) }) // => { limitedBy: 'tailwind', speed: 5 / 1.5 }
 * largestWind({ ...limits, angle: degrees(5) }) // => { limitedBy: 'none' }
 */
export function largestWind(x: LargestWindInputs): LargestWind {
  demand('angle', x.angle, largestWindDomain.angle);
  demandLimits(x);
  return within(x.angle, x);
}

/**
 * The largest wind within a set of limits at each of several angles off the runway. Each is that of {@link largestWind}.
 *
 * @param x - `angles` each 0° to 180°, the others as for {@link largestWind}.
 * @returns One result for each angle, in the order given, with its `angle`.
 * @throws {@link DomainError} when a parameter is not within its range; an angle is named by its place.
 * @record wind.largest-wind
 *
 * @example
 * const limits = { crosswindLimit: kt(14), tailwindLimit: kt(5), headwindLimit: kt(35), tailwindShare: ratio(1), upTo: kt(60) }
 * largestWinds({ ...limits, angles: [0, 45, 90, 135, 180].map(degrees) }).map(({ limitedBy }) => limitedBy) // => ['headwind', 'crosswind', 'crosswind', 'tailwind', 'tailwind']
 */
export function largestWinds(x: LargestWindsInputs): readonly LargestWindAtAngle[] {
  demandEach('angles', x.angles, largestWindDomain.angle);
  demandLimits(x);
  return x.angles.map((angle) => ({ angle, ...within(angle, x) }));
}

function demandLimits(x: WindLimits): void {
  demand('crosswindLimit', x.crosswindLimit, largestWindDomain.crosswindLimit);
  demand('tailwindLimit', x.tailwindLimit, largestWindDomain.tailwindLimit);
  if (x.headwindLimit !== undefined) demand('headwindLimit', x.headwindLimit, largestWindDomain.headwindLimit);
  demand('tailwindShare', x.tailwindShare, largestWindDomain.tailwindShare);
  demand('upTo', x.upTo, largestWindDomain.upTo);
}

function within(angle_deg: number, x: Numbers<WindLimits>): LargestWind {
  const angle_rad = (angle_deg * Math.PI) / 180;
  const ahead = Math.cos(angle_rad);
  const across = Math.sin(angle_rad);
  let limitedBy: LargestWind['limitedBy'] = 'none';
  let speed = x.upTo;
  if (isReached(x.crosswindLimit, across, speed)) {
    limitedBy = 'crosswind';
    speed = x.crosswindLimit / across;
  }
  const behind = -x.tailwindShare * ahead;
  if (isReached(x.tailwindLimit, behind, speed)) {
    limitedBy = 'tailwind';
    speed = x.tailwindLimit / behind;
  }
  if (x.headwindLimit !== undefined && isReached(x.headwindLimit, ahead, speed)) {
    limitedBy = 'headwind';
    speed = x.headwindLimit / ahead;
  }
  return limitedBy === 'none' ? { limitedBy } : ({ limitedBy, speed } as LargestWind);
}

/** Whether a wind of which this share counts reaches the limit at no more than the speed. */
function isReached(limit_kt: number, share: number, speed_kt: number): boolean {
  return share > noise && limit_kt / share <= speed_kt;
}
