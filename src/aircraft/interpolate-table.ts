import type {
  Celsius,
  CelsiusDifference,
  DensityAltitude,
  IndicatedAirspeed,
  Kilograms,
  Knots,
  Percent,
  PressureAltitude,
  Quantity,
} from '../units/index.ts';
import { DomainError } from '../units/index.ts';
import { interpolateCell } from './interpolate-cell.ts';
import { bracketTable, type NoReading } from './read-table.ts';
import type { ReadingMode } from './reading-mode.ts';
import type { CellUnit, Table } from './table.ts';

/** Inputs of {@link interpolateTable}. */
export interface InterpolateTableInputs<U extends CellUnit>
  extends Partial<Omit<ReadingMode, 'worse' | 'highIsFavourable'>> {
  readonly table: Table<U>;
  /** A value for each axis of the table. */
  readonly at: {
    readonly mass?: Kilograms;
    readonly pressureAltitude?: PressureAltitude;
    readonly temperature?: Celsius;
    readonly densityAltitude?: DensityAltitude;
    readonly isaDeviation?: CelsiusDifference;
    /** Positive a headwind, negative a tailwind. */
    readonly headwind?: Knots;
    /** Positive uphill in the direction of use. */
    readonly slope?: Percent;
    readonly indicatedAirspeed?: IndicatedAirspeed;
  };
  /** Which way the figures get worse along every axis; `greater` for distances, `less` for rates of climb. */
  readonly worse: ReadingMode['worse'];
  /** The axes whose high end is the favourable one; the headwind if not given. A landing table adds the slope. */
  readonly highIsFavourable?: ReadingMode['highIsFavourable'];
}

/**
 * Reads a table of the flight manual on up to four axes.
 *
 * Between printed values it interpolates linearly, or takes the next worse printed figure. Beyond the favourable edge
 * (lighter, lower, colder, more headwind) it reads at the edge where the table gets no better from there, or refuses. Beyond any
 * other edge, and beside a blank cell, there is no figure.
 *
 * @param x - the table, the point, and how to read.
 * @returns the figure in the table's own unit.
 * @throws {@link DomainError} when the table has no figure for the point.
 * @record aircraft.interpolate-cell
 *
 * @example
 * const table = { axes: [{ quantity: 'pressureAltitude', unit: 'ftPA', values: [2000, 3000] }], unit: 'ft', cells: [1115, 1230] } as const;
 * interpolateTable({ table, at: { pressureAltitude: ftPA(2500) }, worse: 'greater' }) // => 1172.5
 * interpolateTable({ table, at: { pressureAltitude: ftPA(2500) }, worse: 'greater', between: 'next-worse' }) // => 1230
 * interpolateTable({ table, at: { pressureAltitude: ftPA(3001) }, worse: 'greater' }) // throws
 */
export function interpolateTable<U extends CellUnit>(x: InterpolateTableInputs<U>): Quantity<U> {
  const { table, at, worse, favourableEdge = 'read-at-edge', between = 'interpolate' } = x;
  const { highIsFavourable = ['headwind'] } = x;
  const reading = bracketTable(table, at, { favourableEdge, between, worse, highIsFavourable });
  if (!reading.ok) throw new DomainError(whyNot(reading));
  return interpolateCell(reading.cell) as Quantity<U>;
}

function whyNot(reading: NoReading) {
  if (reading.reason === 'blank') {
    const received = JSON.stringify(reading.at);
    return {
      code: 'out-of-range',
      parameter: 'at',
      received,
      unit: 'table point',
      min: 'printed cells',
      max: 'printed cells',
      source: 'a cell beside it is blank',
    } as const;
  }
  const { axis } = reading;
  const source = reading.reason === 'not-monotonic' ? 'figures improve from the edge' : 'printed axis';
  const received = reading.reason === 'axis-missing' ? 'none' : reading.at;
  const code = reading.reason === 'axis-missing' ? 'not-a-number' : 'out-of-range';
  const min = axis.values[0] as number;
  const max = axis.values[axis.values.length - 1] as number;
  return { code, parameter: `at.${axis.quantity}`, received, unit: axis.unit, min, max, source } as const;
}
