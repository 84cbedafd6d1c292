import {
  type Degrees,
  type Domain,
  demand,
  type Knots,
  type MagneticDirection,
  type Numbers,
  type TrueDirection,
} from '../units/index.ts';
import { type Same, windComponentsDomain } from './components.ts';

/** Inputs of {@link windComponentSpread}. */
export interface WindComponentSpreadInputs<
  N extends TrueDirection | MagneticDirection = TrueDirection | MagneticDirection,
> {
  /** Direction the wind blows from, as it is stated. */
  readonly from: N;
  /** How far the direction may lie to either side of what is stated: 5° for one rounded to ten degrees. */
  readonly halfWidth: Degrees;
  /** Speed of the wind. */
  readonly speed: Knots;
  /** Direction of the runway in use, or of the track, against the same north as the wind. */
  readonly direction: Same<N>;
}

/** The least and the greatest of each component over all directions that the stated one may stand for. */
export interface WindComponentSpread {
  /** Negative when there may be a tailwind. */
  readonly leastHeadwind: Knots;
  readonly greatestHeadwind: Knots;
  /** The end towards the left: negative a wind from the left. */
  readonly leastCrosswind: Knots;
  /** The end towards the right: positive a wind from the right. */
  readonly greatestCrosswind: Knots;
}

export const windComponentSpreadDomain = {
  ...windComponentsDomain,
  halfWidth: { unit: 'deg', min: 0, max: 180, source: 'half the compass circle' },
} satisfies Domain<WindComponentSpreadInputs>;

/**
 * Between which values the headwind and the crosswind lie when the direction of the wind is known to so many degrees
 * only; the same for a runway whose direction is no better known than its designator.
 *
 * H = W cos ψ and X = W sin ψ over all ψ within φ − θ ± δ: W the wind speed in kt, φ the direction it blows from, θ the
 * direction of the runway and δ the half width in degrees. The extremes stand at the ends of the interval, or within it
 * where the wind would blow straight along or straight across the runway; nothing is sampled.
 *
 * @param x - `from` 0° to 360°, `halfWidth` 0° to 180°, `speed` 0 kt to 200 kt, `direction` 0° to 360°; the two
 * directions against the same north.
 * @returns `leastHeadwind`, `greatestHeadwind`, `leastCrosswind` and `greatestCrosswind` in kt: headwind positive,
 * crosswind positive from the right.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record wind.component-spread
 *
 * @example
 * windComponentSpread({ from: degTrue(200), halfWidth: degrees(5), speed: kt(20), direction: degTrue(112) }).leastHeadwind // ≈ -1.0467 ± 0.0001
 * windComponentSpread({ from: degTrue(200), halfWidth: degrees(5), speed: kt(20), direction: degTrue(112) }).greatestHeadwind // ≈ 2.4374 ± 0.0001
 * windComponentSpread({ from: degTrue(200), halfWidth: degrees(5), speed: kt(20), direction: degTrue(112) }).greatestCrosswind // => 20
 */
export function windComponentSpread<N extends TrueDirection | MagneticDirection>(
  x: WindComponentSpreadInputs<N>,
): WindComponentSpread {
  demand('from', x.from, windComponentSpreadDomain.from);
  demand('halfWidth', x.halfWidth, windComponentSpreadDomain.halfWidth);
  demand('speed', x.speed, windComponentSpreadDomain.speed);
  demand('direction', x.direction, windComponentSpreadDomain.direction);
  const { from, halfWidth, speed: speed_kt, direction }: Numbers<WindComponentSpreadInputs> = x;
  const first_rad = ((clockwise(0, from - halfWidth) - direction) * Math.PI) / 180;
  const last_rad = ((clockwise(0, from + halfWidth) - direction) * Math.PI) / 180;
  const firstHeadwind = speed_kt * Math.cos(first_rad);
  const lastHeadwind = speed_kt * Math.cos(last_rad);
  const firstCrosswind = speed_kt * Math.sin(first_rad);
  const lastCrosswind = speed_kt * Math.sin(last_rad);
  // How far beyond the first direction the wind would blow straight along or straight across the runway.
  const begin = from - halfWidth;
  const arc = 2 * halfWidth;
  return {
    leastHeadwind: clockwise(begin, direction + 180) <= arc ? 0 - speed_kt : Math.min(firstHeadwind, lastHeadwind),
    greatestHeadwind: clockwise(begin, direction) <= arc ? speed_kt : Math.max(firstHeadwind, lastHeadwind),
    leastCrosswind: clockwise(begin, direction + 270) <= arc ? 0 - speed_kt : Math.min(firstCrosswind, lastCrosswind),
    greatestCrosswind: clockwise(begin, direction + 90) <= arc ? speed_kt : Math.max(firstCrosswind, lastCrosswind),
  } as WindComponentSpread;
}

/** Degrees turned clockwise from one angle to another: 0 to below 360. */
function clockwise(from: number, to: number): number {
  return (to - from + 720) % 360;
}
