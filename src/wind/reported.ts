import {
  type Bound,
  type Domain,
  type DomainError,
  demand,
  inconsistent,
  type Knots,
  type MagneticDirection,
  type TrueDirection,
} from '../units/index.ts';
import type { Same } from './components.ts';

/** Inputs of {@link reportedWindComponents}. */
export interface ReportedWindInputs<N extends TrueDirection | MagneticDirection = TrueDirection | MagneticDirection> {
  /** Direction the wind blows from; `'variable'` where the report gives none. */
  readonly from: N | 'variable';
  /** Mean speed of the wind. */
  readonly speed: Knots;
  /** Speed of the gusts; equal to the mean where that is how an unreported gust is to be read. */
  readonly gust: Knots;
  /** The directions between which the wind varies, clockwise from the first to the second, against the same north. */
  readonly range?: { readonly from: Same<N>; readonly to: Same<N> } | undefined;
  /** Direction of the runway in use, against the same north as the wind. */
  readonly direction: Same<N>;
}

/** A reported wind taken apart along and across a runway, with the worst of the directions that the report allows. */
export interface ReportedWindComponents {
  /** Mean wind along the runway at the reported direction: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
  /** Mean wind across the runway at the reported direction: positive from the right; a variable wind has no side and counts positive. */
  readonly crosswind: Knots;
  /** As `headwind`, at the speed of the gusts. */
  readonly headwindAtGust: Knots;
  /** As `crosswind`, at the speed of the gusts. */
  readonly crosswindAtGust: Knots;
  /** The least of `headwind` over all directions of the report; negative when there may be a tailwind. */
  readonly leastHeadwind: Knots;
  /** As `leastHeadwind`, at the speed of the gusts. */
  readonly leastHeadwindAtGust: Knots;
  /** The greatest crosswind from the left over all directions of the report, at the speed of the gusts; 0 if there is none. */
  readonly crosswindFromLeft: Knots;
  /** As `crosswindFromLeft`, from the right. */
  readonly crosswindFromRight: Knots;
}

// The bound of `from` stands here although the type cannot ask for it: a variable wind has no direction to check.
export const reportedWindDomain = {
  from: { unit: 'deg', min: 0, max: 360, source: 'compass circle' },
  speed: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  direction: { unit: 'deg', min: 0, max: 360, source: 'compass circle' },
  gust: { unit: 'kt', min: 0, max: 200, source: 'library range' },
} satisfies Domain<ReportedWindInputs> & { from: Bound<'deg'> };

const calm = {
  headwind: 0,
  crosswind: 0,
  headwindAtGust: 0,
  crosswindAtGust: 0,
  leastHeadwind: 0,
  leastHeadwindAtGust: 0,
  crosswindFromLeft: 0,
  crosswindFromRight: 0,
};

/**
 * Components of a wind as it is reported, with gusts and with a range of directions, and the worst of them.
 *
 * At the reported direction H = W cos(φ − θ) and X = W sin(φ − θ), at the mean and at the gust. The least headwind is
 * the least W cos(ψ − θ) over the directions ψ clockwise from the first to the second end of the range, both ends and
 * the reported direction included; the crosswind from each side is the greatest G sin(ψ − θ) and −G sin(ψ − θ). A
 * range of two equal directions is that one direction. A variable wind is the full speed as a tailwind and the full
 * gust as a crosswind from either side, which is also the worst of any range reported with it. Calm gives zeros.
 *
 * @param x - `from` 0° to 360° or `'variable'`, `speed` 0 kt to 200 kt, `gust` from the speed to 200 kt,
 * `range.from` and `range.to` 0° to 360°, `direction` 0° to 360°, all against the same north.
 * @returns Components in kt: headwind positive, crosswind positive from the right; the crosswinds by side positive.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the gust is
 * below the mean speed.
 * @record wind.reported
 *
 * @example
 * reportedWindComponents({ from: degTrue(190), speed: kt(7), gust: kt(17), range: { from: degTrue(150), to: degTrue(230) }, direction: degTrue(112) }).leastHeadwind // ≈ -3.286 ± 0.001
 * reportedWindComponents({ from: degTrue(190), speed: kt(7), gust: kt(17), range: { from: degTrue(150), to: degTrue(230) }, direction: degTrue(112) }).crosswindFromRight // => 17
 */
export function reportedWindComponents<N extends TrueDirection | MagneticDirection>(
  x: ReportedWindInputs<N>,
): ReportedWindComponents {
  const { from, range } = x;
  if (from !== 'variable') demand('from', from, reportedWindDomain.from);
  demand('speed', x.speed, reportedWindDomain.speed);
  demand('gust', x.gust, reportedWindDomain.gust);
  demand('direction', x.direction, reportedWindDomain.direction);
  if (range !== undefined) demand('range.from', range.from, reportedWindDomain.from);
  if (range !== undefined) demand('range.to', range.to, reportedWindDomain.from);
  const speed_kt: number = x.speed;
  const gust_kt: number = x.gust;
  if (gust_kt < speed_kt) throw gustBelowMean(speed_kt, gust_kt);
  if (gust_kt === 0) return calm as ReportedWindComponents;
  if (from === 'variable') return variableWind(speed_kt, gust_kt);

  // One report stands against one north, and so does the runway; mean and gust blow from the same directions.
  const direction: number = x.direction;
  const angle_rad = ((from - direction) * Math.PI) / 180;
  const ahead = Math.cos(angle_rad);
  const across = Math.sin(angle_rad);
  let leastHeadwind = speed_kt * ahead;
  let leastHeadwindAtGust = gust_kt * ahead;
  let crosswindFromLeft = Math.max(0, -gust_kt * across);
  let crosswindFromRight = Math.max(0, gust_kt * across);
  if (range !== undefined) {
    const first_rad = ((range.from - direction) * Math.PI) / 180;
    const last_rad = ((range.to - direction) * Math.PI) / 180;
    const leastAhead = Math.min(ahead, Math.cos(first_rad), Math.cos(last_rad));
    const firstAcross = Math.sin(first_rad);
    const lastAcross = Math.sin(last_rad);
    leastHeadwind = speed_kt * leastAhead;
    leastHeadwindAtGust = gust_kt * leastAhead;
    crosswindFromLeft = gust_kt * Math.max(0, -across, -firstAcross, -lastAcross);
    crosswindFromRight = gust_kt * Math.max(0, across, firstAcross, lastAcross);
    // Between its ends a range is worst where the wind blows straight along or straight across the runway.
    const arc = clockwise(range.from, range.to);
    if (clockwise(range.from, direction + 180) <= arc) {
      leastHeadwind = -speed_kt;
      leastHeadwindAtGust = -gust_kt;
    }
    if (clockwise(range.from, direction + 270) <= arc) crosswindFromLeft = gust_kt;
    if (clockwise(range.from, direction + 90) <= arc) crosswindFromRight = gust_kt;
  }
  return {
    headwind: speed_kt * ahead,
    crosswind: speed_kt * across,
    headwindAtGust: gust_kt * ahead,
    crosswindAtGust: gust_kt * across,
    leastHeadwind,
    leastHeadwindAtGust,
    crosswindFromLeft,
    crosswindFromRight,
  } as ReportedWindComponents;
}

/** Degrees turned clockwise from one direction to another: 0 to 360. */
function clockwise(from: number, to: number): number {
  return (to - from + 720) % 360;
}

function variableWind(speed_kt: number, gust_kt: number): ReportedWindComponents {
  return {
    headwind: 0 - speed_kt,
    crosswind: speed_kt,
    headwindAtGust: -gust_kt,
    crosswindAtGust: gust_kt,
    leastHeadwind: 0 - speed_kt,
    leastHeadwindAtGust: -gust_kt,
    crosswindFromLeft: gust_kt,
    crosswindFromRight: gust_kt,
  } as ReportedWindComponents;
}

function gustBelowMean(speed_kt: number, gust_kt: number): DomainError {
  const source = 'a gust is not below the mean speed';
  const { unit, max } = reportedWindDomain.gust;
  return inconsistent('gust', gust_kt, unit, speed_kt, max, source);
}
