import { DomainError, inconsistent } from '../units/index.ts';

/** Inputs of {@link interpolateCell}; one entry of `lower`, `upper` and `at` per axis, of which a table has up to four. */
export interface InterpolateCellInputs {
  /** The printed axis values at or below the point, in the table's units. */
  readonly lower: ArrayLike<number>;
  /** The printed axis values at or above the point; equal to `lower` where the point lies on a printed value. */
  readonly upper: ArrayLike<number>;
  /** Where the table is read, in the table's units. */
  readonly at: ArrayLike<number>;
  /** The printed figures around the point, the last axis running fastest, lower before upper: two per axis, multiplied. */
  readonly corners: ArrayLike<number>;
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
  const { at, corners } = x;
  if (at.length > mostAxes) demandFit('at', at.length, mostAxes, 'a table has up to four axes');
  demandFit('corners', corners.length, 1 << at.length, 'two figures per axis, multiplied');
  const figure = between(x);
  if (!Number.isFinite(figure)) throw outside('corners', figure, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
  return figure;
}

const mostAxes = 4;

/** Written out for each number of axes: lists for what is halfway cost more than the arithmetic. */
function between(x: InterpolateCellInputs): number {
  const { corners } = x;
  switch (x.at.length) {
    case 0:
      return corners[0] as number;
    case 1:
      return alongOne(corners, 0, shareOn(x, 0));
    case 2: {
      const second = shareOn(x, 1);
      return alongTwo(corners, 0, shareOn(x, 0), second);
    }
    case 3: {
      const third = shareOn(x, 2);
      const second = shareOn(x, 1);
      return alongThree(corners, 0, shareOn(x, 0), second, third);
    }
    default: {
      const fourth = shareOn(x, 3);
      const third = shareOn(x, 2);
      const second = shareOn(x, 1);
      const y1 = alongThree(corners, 0, second, third, fourth);
      const y2 = alongThree(corners, 8, second, third, fourth);
      return y1 + (y2 - y1) * shareOn(x, 0);
    }
  }
}

/** How far along an axis the point lies between the printed values around it: 0 to 1. */
function shareOn({ at, lower, upper }: InterpolateCellInputs, axis: number): number {
  const x0 = at[axis] as number;
  const x1 = lower[axis] as number;
  const x2 = upper[axis] as number;
  if (!(x0 >= x1 && x0 <= x2)) throw outside(`at[${axis}]`, x0, x1, x2);
  return x2 === x1 ? 0 : (x0 - x1) / (x2 - x1);
}

function alongOne(corners: ArrayLike<number>, from: number, share: number): number {
  const y1 = corners[from] as number;
  return y1 + ((corners[from + 1] as number) - y1) * share;
}

function alongTwo(corners: ArrayLike<number>, from: number, first: number, second: number): number {
  const y1 = alongOne(corners, from, second);
  return y1 + (alongOne(corners, from + 2, second) - y1) * first;
}

/** Most tables have three axes: written out, because beyond a certain depth the engine calls instead of compiling in. */
function alongThree(c: ArrayLike<number>, from: number, first: number, second: number, third: number): number {
  const c1 = c[from] as number;
  const c3 = c[from + 2] as number;
  const c5 = c[from + 4] as number;
  const c7 = c[from + 6] as number;
  const y1 = c1 + ((c[from + 1] as number) - c1) * third;
  const y2 = c3 + ((c[from + 3] as number) - c3) * third;
  const y3 = c5 + ((c[from + 5] as number) - c5) * third;
  const y4 = c7 + ((c[from + 7] as number) - c7) * third;
  const z1 = y1 + (y2 - y1) * second;
  const z2 = y3 + (y4 - y3) * second;
  return z1 + (z2 - z1) * first;
}

function demandFit(parameter: string, received: number, wanted: number, source: string): void {
  if (received === wanted) return;
  throw inconsistent(parameter, received, 'figures', wanted, wanted, source);
}

function outside(parameter: string, received: number, min: number, max: number): DomainError {
  const source = 'the bracket given';
  return new DomainError({
    code: 'out-of-range',
    parameter,
    received: Number.isFinite(received) ? received : String(received),
    unit: 'table unit',
    min: Number.isFinite(min) ? min : String(min),
    max: Number.isFinite(max) ? max : String(max),
    source,
  });
}
