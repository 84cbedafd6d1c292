import { DomainError } from '../units/index.ts';

/** The piece of a digitised curve on which it is read, and the value of the family that the curve stands for. */
export interface CurvePiece {
  /** The value of the family; for a guide line its ordinate on the reference line. */
  readonly at: number;
  readonly from: readonly [along: number, ordinate: number];
  readonly to: readonly [along: number, ordinate: number];
}

/** Inputs of {@link interpolateCurves}. */
export interface InterpolateCurvesInputs {
  /** Where the panel is read, on the scale along it. */
  readonly along: number;
  /** The value of the family, or the ordinate carried over to the reference line. */
  readonly at: number;
  readonly lower: CurvePiece;
  /** The same as `lower` where the value lies on a drawn curve. */
  readonly upper: CurvePiece;
}

/**
 * Reads between two digitised curves of a chart: along each by the straight line between its points, then between the
 * two in proportion to the value of the family.
 *
 * y(c) = y₁ + (y₂ − y₁) (x − x₁) / (x₂ − x₁) on each curve c, and y = y(l) + (y(u) − y(l)) (a − a(l)) / (a(u) − a(l)).
 *
 * @param x - where the panel is read, and the pieces of the two curves around that place.
 * @returns the ordinate, in the unit of the points.
 * @throws {@link DomainError} when the place is not on the pieces, or the value not between the two curves.
 * @record aircraft.interpolate-curves
 *
 * @example
 * const lower = { at: 0, from: [10, 300], to: [20, 330] } as const;
 * const upper = { at: 2000, from: [10, 360], to: [30, 420] } as const;
 * interpolateCurves({ along: 15, at: 1000, lower, upper }) // => 345
 */
export function interpolateCurves(x: InterpolateCurvesInputs): number {
  const { along, at, lower, upper } = x;
  if (!(at >= lower.at && at <= upper.at)) throw outside('at', at, lower.at, upper.at);
  const onLower = onPiece(along, lower);
  if (upper.at === lower.at) return onLower;
  const onUpper = onPiece(along, upper);
  return onLower + ((onUpper - onLower) * (at - lower.at)) / (upper.at - lower.at);
}

function onPiece(along: number, { from, to }: CurvePiece): number {
  // By index: taking a pair apart by its iterator costs more than reading it.
  const x1 = from[0];
  const y1 = from[1];
  const x2 = to[0];
  const y2 = to[1];
  if (!(along >= x1 && along <= x2)) throw outside('along', along, x1, x2);
  return x2 === x1 ? y1 : y1 + ((y2 - y1) * (along - x1)) / (x2 - x1);
}

function outside(parameter: string, received: number, min: number, max: number): DomainError {
  const source = 'the pieces given';
  const shown = Number.isFinite(received) ? received : String(received);
  return new DomainError({ code: 'out-of-range', parameter, received: shown, unit: 'chart unit', min, max, source });
}
