import { bracketPrepared, type PreparedTable } from '../../aircraft/index.ts';
import type { Celsius, PressureAltitude } from '../../units/index.ts';
import { convert } from '../../units/unit-table.ts';
import type { Situation } from '../request/situation.ts';
import type { Air } from './air-and-wind.ts';
import { callThrough } from './step.ts';
import { pointOf } from './table-point.ts';

/** The air that the manual's ground roll belongs to. */
export interface AirAsRead {
  readonly pressureAltitude: PressureAltitude;
  readonly temperature: Celsius;
}

/**
 * Where the table was read: today's air, but for the favourable edge, for the next worse value printed, and for what the
 * table is printed for alone, which stands for everything more favourable. A roll that is
 * the same over a range of temperatures belongs to one of them; with today's, a warmer day would make the same roll the
 * work of a stronger aeroplane.
 */
export function airAsRead({ ready, mass_kg, uncoveredAxes }: Situation, air: Air): AirAsRead {
  let pressureAltitude: number = air.pressureAltitude_ft;
  let tableTemperature: number = air.tableTemperature_degC;
  const { groundRoll } = ready;
  if (groundRoll?.table !== undefined) {
    const { table } = groundRoll;
    if (bracketPrepared(table, pointOf(callThrough, groundRoll, mass_kg, air)).ok) {
      pressureAltitude = placeOn(table, 'pressureAltitude') ?? pressureAltitude;
      tableTemperature = placeOn(table, 'temperature') ?? tableTemperature;
    }
  }
  for (const { quantity, holdsFor } of uncoveredAxes) {
    if (quantity === 'elevation') pressureAltitude = Math.max(pressureAltitude, holdsFor);
    if (quantity === 'temperature') tableTemperature = Math.max(tableTemperature, holdsFor);
  }
  return {
    pressureAltitude: pressureAltitude as PressureAltitude,
    temperature: (air.temperature_degC + (tableTemperature - air.tableTemperature_degC)) as Celsius,
  };
}

/** Where the last reading was on an axis, in the unit of readings; none where the table does not run along it. */
function placeOn(table: PreparedTable, quantity: 'pressureAltitude' | 'temperature'): number | undefined {
  const place = table.along.axes.findIndex((each) => each.quantity === quantity);
  if (place < 0) return undefined;
  const { axis, readingUnit } = table.along.axes[place] as PreparedTable['along']['axes'][number];
  return convert(table.along.at[place] as number, axis.unit, readingUnit);
}
