import { windFactor } from '../distance/index.ts';
import {
  type CelsiusDifference,
  DomainError,
  type Kilograms,
  type Knots,
  type Measure,
  type Percent,
  type PressureAltitude,
} from '../units/index.ts';
import { convert, type UnitWord } from '../units/unit-table.ts';
import { axisFacts } from './axis.ts';
import { type ClimbProgress, climbProgress } from './climb-progress.ts';
import { type Figures, printedRange } from './figures.ts';
import type { DistanceData, PerformanceData, PrintedLaw } from './performance-data.ts';
import type { PrintedExample } from './printed-example.ts';
import { figureReader } from './samples.ts';
import type { TablePoint } from './table-point.ts';

/** One figure of a printed example beside what the transcribed data give. */
export interface ExampleRow {
  readonly locator: string;
  readonly quantity: 'ground roll' | 'distance' | 'rate of climb' | 'time' | 'fuel' | 'distance flown';
  readonly printed: number;
  /** In the printed unit; none where the data have no figure for the conditions of the example. */
  readonly ours: number | undefined;
  readonly unit: string;
  readonly tolerance: number;
  readonly agrees: boolean;
}

/**
 * Runs the worked examples that the manual prints against the data transcribed from it. The wind of an example is used
 * whole, by the manual's own law; no factor of any set enters.
 *
 * @param data - performance data with printed examples.
 * @returns one row for each printed figure; an empty list where the data carry no examples.
 *
 * @example
 * verifyExamples({ examples: [] } as never) // => []
 */
export function verifyExamples(data: PerformanceData): ExampleRow[] {
  return (data.examples ?? []).flatMap((example) => {
    if (example.of === 'climb progress') return progressRows(data, example);
    return example.of === 'climb' ? climbRows(data, example) : distanceRows(data, example);
  });
}

function progressRows(data: PerformanceData, example: PrintedExample): ExampleRow[] {
  const found = progressOf(data, example);
  const { time, fuel, distanceFlown } = example.printed;
  return [
    ...row(example, 'time', time, found && { value: found.time, unit: 'min' }),
    ...row(example, 'fuel', fuel, found?.fuel),
    ...row(example, 'distance flown', distanceFlown, found && { value: found.distance, unit: 'NM' }),
  ];
}

/** None where the tables have no figure for the conditions of the example. */
function progressOf(data: PerformanceData, example: PrintedExample): ClimbProgress | undefined {
  const progress = data.climbProgress?.find(({ name }) => name === example.configuration);
  const { mass, pressureAltitude, isaDeviation = 0 } = pointOf(example);
  const from = example.at.from?.value;
  if (progress === undefined || mass === undefined || pressureAltitude === undefined || from === undefined)
    return undefined;
  try {
    return climbProgress({
      data: progress,
      from: from as PressureAltitude,
      to: pressureAltitude as PressureAltitude,
      mass: mass as Kilograms,
      isaDeviation: isaDeviation as CelsiusDifference,
    });
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}

function distanceRows(data: PerformanceData, example: PrintedExample): ExampleRow[] {
  const table = data[example.of as 'takeoff' | 'landing'].find(
    ({ configuration }) => configuration === example.configuration,
  );
  const point = pointOf(example);
  const height =
    table === undefined ? 0 : (convert(table.screenHeight.value, table.screenHeight.unit, 'mHeight') as number);
  const { groundRoll, distance } = example.printed;
  return [
    ...row(example, 'ground roll', groundRoll, corrected(table, table?.groundRoll, { ...point, height: 0 })),
    ...row(example, 'distance', distance, corrected(table, table?.distance, { ...point, height })),
  ];
}

function climbRows(data: PerformanceData, example: PrintedExample): ExampleRow[] {
  const climb = data.climb.find(({ configuration }) => configuration === example.configuration);
  const value = climb && figureReader(climb.rateOfClimb)(pointOf(example));
  return row(
    example,
    'rate of climb',
    example.printed.rateOfClimb,
    value === undefined ? undefined : { value, unit: 'ftPerMin' },
  );
}

type Figure = { readonly value: number; readonly unit: UnitWord } | undefined;

/** The table's figure with the manual's own wind law, where the table has no axis of wind. */
function corrected(
  table: DistanceData | undefined,
  figures: Figures<'m' | 'ft'> | undefined,
  point: TablePoint,
): Figure {
  const value = figures && figureReader(figures)(point);
  if (table === undefined || figures === undefined || value === undefined) return undefined;
  const wind = point.headwind ?? 0;
  if (wind === 0 || printedRange(figures, 'headwind') !== undefined) return { value, unit: figures.unit };
  const law: PrintedLaw<'kt'> | undefined = wind > 0 ? table.corrections.headwind : table.corrections.tailwind;
  if (law === undefined || Math.abs(wind) > law.upTo.value) return undefined;
  const percentPerKnot = (law.change.value / law.per.value) as Percent;
  return { value: value * windFactor({ wind: Math.abs(wind) as Knots, percentPerKnot }), unit: figures.unit };
}

function row(
  example: PrintedExample,
  quantity: ExampleRow['quantity'],
  printed: Measure<UnitWord> | undefined,
  found: Figure,
): ExampleRow[] {
  if (printed === undefined) return [];
  const { locator, tolerance } = example;
  const ours = found && (convert(found.value, found.unit, printed.unit) as number);
  // A tie of the printed rounding must not fail on the last bit.
  const agrees = ours !== undefined && Math.abs(ours - printed.value) <= tolerance * (1 + 1e-9);
  return [{ locator, quantity, printed: printed.value, ours, unit: printed.unit, tolerance, agrees }];
}

/** The conditions of an example in reading units; calm and level where it states neither. */
function pointOf({ at }: PrintedExample): TablePoint {
  const { from: _start, ...quantities } = at;
  const stated = Object.entries(quantities).map(([quantity, { value, unit }]) => [
    quantity,
    convert(value, unit, axisFacts[quantity as keyof typeof quantities].readingUnit),
  ]);
  return { headwind: 0, slope: 0, ...Object.fromEntries(stated) };
}
