import { axisFacts, bracketPrepared, printedRange, type TablePoint } from '../../aircraft/index.ts';
import type { Celsius, PressureAltitude } from '../../units/index.ts';
import { convert } from '../../units/unit-table.ts';
import type { ReadyFigures } from '../request/ready-figures.ts';
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
 * Where the roll was read: in today's air, but for the favourable edge, for the next worse value printed, and for the one
 * value that a table may be printed for, which stands for everything more favourable. A roll that is the same over a range
 * of temperatures belongs to one of them; with today's, a warmer day would make it the work of a stronger aeroplane.
 */
export function airAsRead({ ready, mass_kg, uncoveredAxes }: Situation, air: Air): AirAsRead {
  let pressureAltitude: number = air.pressureAltitude_ft;
  let tableTemperature: number = air.tableTemperature_degC;
  const { groundRoll } = ready;
  if (groundRoll !== undefined) {
    const place = placesOf(groundRoll, pointOf(callThrough, groundRoll, mass_kg, air));
    pressureAltitude = place('pressureAltitude') ?? pressureAltitude;
    tableTemperature = place('temperature') ?? tableTemperature;
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

type Quantity = 'pressureAltitude' | 'temperature';

/** Where figures are read on their axes, in the units of readings; none on an axis where it is today's value, or none. */
function placesOf(
  { figures, table, mode }: ReadyFigures,
  point: TablePoint,
): (quantity: Quantity) => number | undefined {
  if (table !== undefined) {
    const reading = bracketPrepared(table, point);
    const { axes, at } = table.along;
    return (quantity) => {
      const place = axes.findIndex((each) => each.quantity === quantity);
      const found = axes[place];
      if (!reading.ok || found === undefined) return undefined;
      return convert(at[place] as number, found.axis.unit, found.readingUnit);
    };
  }
  // From guide line to guide line a chart gives one roll to many temperatures: the coldest asks for the least thrust.
  return (quantity) => {
    const printed = printedRange(figures, quantity);
    const coldest = printed && convert(printed.from, printed.unit, axisFacts[quantity].readingUnit);
    const today = point[quantity];
    if (coldest === undefined || today === undefined) return undefined;
    return mode.between === 'next-worse' ? coldest : Math.max(coldest, today);
  };
}
