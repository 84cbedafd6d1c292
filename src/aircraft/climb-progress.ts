import { printedLawFactor } from '../distance/index.ts';
import {
  type CelsiusDifference,
  DomainError,
  type Kilograms,
  type Measure,
  type Minutes,
  type NauticalMiles,
  type Percent,
  type PressureAltitude,
  type Ratio,
} from '../units/index.ts';
import { convert } from '../units/unit-table.ts';
import { climbIncrement } from './climb-increment.ts';
import { interpolateTable } from './interpolate-table.ts';
import type { ClimbProgressData } from './performance-data.ts';
import type { CellUnit, FuelUnit, Table } from './table.ts';

/** Inputs of {@link climbProgress}. */
export interface ClimbProgressInputs {
  readonly data: ClimbProgressData;
  /** Pressure altitude from which the climb begins. */
  readonly from: PressureAltitude;
  /** Pressure altitude to which it leads. */
  readonly to: PressureAltitude;
  readonly mass: Kilograms;
  /** Above the standard temperature positive; colder air gets no credit. */
  readonly isaDeviation: CelsiusDifference;
}

/** What a climb takes, in the units of the manual. */
export interface ClimbProgress {
  readonly time: Minutes;
  readonly fuel: Measure<FuelUnit>;
  /** In still air. */
  readonly distance: NauticalMiles;
}

/**
 * Time, fuel and distance of a climb from one pressure altitude to another, by the manual's tables that count from their
 * lowest altitude: the difference of two readings, times what the manual asks for in warm air.
 *
 * @param x - the tables, both altitudes, the mass and the deviation from the standard temperature.
 * @returns time in min, fuel in the unit of the manual, distance in NM through still air.
 * @throws {@link DomainError} when the climb does not lead upwards, when the tables do not reach, and when the air is
 * warmer than the manual has figures for.
 * @record aircraft.climb-increment
 *
 * @example
 * const along = (cells: number[]) => ({ axes: [{ quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 4000] } as const], cells });
 * const data = { name: 'normal', flap: '0', power: 'full', speed: { axes: [], unit: 'kias', cells: 70 }, associatedConditions: { mass: { value: 1000, unit: 'kg' } }, time: { ...along([0, 8]), unit: 'min' }, fuel: { ...along([0, 5]), unit: 'L' }, distance: { ...along([0, 10]), unit: 'NM' } } as const;
 * climbProgress({ data, from: ftPA(1000), to: ftPA(3000), mass: kg(950), isaDeviation: degCDifference(0) }).time // => 4
 * climbProgress({ data, from: ftPA(1000), to: ftPA(3000), mass: kg(950), isaDeviation: degCDifference(8) }) // throws
 */
export function climbProgress(x: ClimbProgressInputs): ClimbProgress {
  const { data, from, to, mass } = x;
  if (!(to > from)) refuse('to', to, 'ftPA', from, 'any', 'a climb leads upwards');
  const limit = data.associatedConditions.mass;
  const limit_kg = limit === undefined ? undefined : (convert(limit.value, limit.unit, 'kg') as number);
  if (limit_kg !== undefined && !(mass <= limit_kg))
    refuse('mass', mass, 'kg', 0, limit_kg, 'associated conditions of the table');
  const factor = warmAirFactor(x);
  const between = <U extends CellUnit>(table: Table<U>): number => {
    const lowest = lowestAltitude(table);
    // Below its lowest altitude a table would be read at that altitude, which would leave a part of the climb out.
    if (from < lowest) refuse('from', from, 'ftPA', lowest, 'any', 'printed axis');
    const at = (pressureAltitude: PressureAltitude) =>
      interpolateTable({
        table,
        at: { mass, pressureAltitude, isaDeviation: x.isaDeviation },
        worse: 'greater',
      }) as number;
    return climbIncrement({ atLower: at(from), atUpper: at(to), factor });
  };
  return {
    time: between(data.time) as Minutes,
    fuel: { value: between(data.fuel), unit: data.fuel.unit },
    distance: between(data.distance) as NauticalMiles,
  };
}

/** The manual's own law for air above standard, where its tables have no axis of it. */
function warmAirFactor({ data, isaDeviation }: ClimbProgressInputs): number {
  const hasAxis = data.time.axes.some(({ quantity }) => quantity === 'isaDeviation' || quantity === 'temperature');
  if (hasAxis || isaDeviation <= 0) return 1;
  const law = data.aboveStandard;
  const upTo = law?.upTo.value ?? 0;
  if (law === undefined || isaDeviation > upTo)
    refuse('isaDeviation', isaDeviation, 'degCDifference', 'any', upTo, "the manual's figures for warm air");
  const steps = (isaDeviation / law.per.value) as Ratio;
  return printedLawFactor({ percentPerStep: law.change.value as Percent, steps });
}

function lowestAltitude(table: Table): number {
  return table.axes.find(({ quantity }) => quantity === 'pressureAltitude')?.values[0] as number;
}

function refuse(
  parameter: string,
  received: number,
  unit: string,
  min: number | string,
  max: number | string,
  source: string,
): never {
  throw new DomainError({ code: 'out-of-range', parameter, received, unit, min, max, source });
}
