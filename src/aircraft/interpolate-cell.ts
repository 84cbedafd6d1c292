import { DomainError } from '../units/index.ts';

/** Inputs of {@link interpolateCell}; one entry of `lower`, `upper` and `at` per axis. */
export interface InterpolateCellInputs {
  /** The printed axis values at or below the point, in the table's units. */
  readonly lower: readonly number[];
  /** The printed axis values at or above the point; equal to `lower` where the point lies on a printed value. */
  readonly upper: readonly number[];
  /** Where the table is read, in the table's units. */
  readonly at: readonly number[];
  /** The printed figures around the point, the last axis running fastest, lower before upper: two per axis, multiplied. */
  readonly corners: readonly number[];
}

/**
 * Reads between the printed figures of a table, linearly along each axis, the last axis first.
 *
 * y = y₁ + (y₂ − y₁) (x − x₁) / (x₂ − x₁) on each axis. A point on a printed value returns the printed figure
 * unchanged.
 *
 * @param x - the bracket of each axis, the point within it, and the figures at its corners.
 * @returns the figure in the unit of the corners.
 * @throws {@link DomainError} when a point is not within its bracket, or the number of figures does not fit.
 * @record aircraft.interpolate-cell
 *
 * @example
 * interpolateCell({ lower: [2000], upper: [3000], at: [2500], corners: [1115, 1230] }) // => 1172.5
 */
export function interpolateCell(x: InterpolateCellInputs): number {
  const { lower, upper, at, corners } = x;
  demandFit('corners', corners.length, 2 ** at.length);
  const figures = corners.slice();
  for (let axis = at.length - 1; axis >= 0; axis -= 1) {
    const [x0, x1, x2] = [at[axis], lower[axis], upper[axis]] as [number, number, number];
    if (!(x0 >= x1 && x0 <= x2)) throw outside(axis, x0, x1, x2);
    const share = x2 === x1 ? 0 : (x0 - x1) / (x2 - x1);
    // Half as many figures after each axis, written over the ones that they come from.
    for (let i = 0; i < 2 ** axis; i += 1) {
      const [y1, y2] = [figures[2 * i], figures[2 * i + 1]] as [number, number];
      figures[i] = y1 + (y2 - y1) * share;
    }
  }
  const figure = figures[0] as number;
  if (!Number.isFinite(figure)) throw outside(0, figure, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
  return figure;
}

function demandFit(parameter: string, received: number, wanted: number): void {
  if (received === wanted) return;
  const source = 'two figures per axis, multiplied';
  throw new DomainError({
    code: 'inconsistent',
    parameter,
    received,
    unit: 'figures',
    min: wanted,
    max: wanted,
    source,
  });
}

function outside(axis: number, received: number, min: number, max: number): DomainError {
  const source = 'the bracket given';
  return new DomainError({
    code: 'out-of-range',
    parameter: `at[${axis}]`,
    received: Number.isFinite(received) ? received : String(received),
    unit: 'table unit',
    min: Number.isFinite(min) ? min : String(min),
    max: Number.isFinite(max) ? max : String(max),
    source,
  });
}
