import { windFactor } from '../distance/index.ts';
import type { Knots, Measure, Percent } from '../units/index.ts';
import { convert, type UnitWord } from '../units/unit-table.ts';
import { axisFacts } from './axis.ts';
import { type Figures, printedRange } from './figures.ts';
import type { DistanceData, PerformanceData, PrintedLaw } from './performance-data.ts';
import type { PrintedExample } from './printed-example.ts';
import type { TablePoint } from './read-table.ts';
import { figureAt } from './samples.ts';

/** One figure of a printed example beside what the transcribed data give. */
export interface ExampleRow {
  readonly locator: string;
  readonly quantity: 'ground roll' | 'distance' | 'rate of climb';
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
  return (data.examples ?? []).flatMap((example) =>
    example.of === 'climb' ? climbRows(data, example) : distanceRows(data, example),
  );
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
  const value = climb && figureAt(climb.rateOfClimb, pointOf(example));
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
  const value = figures && figureAt(figures, point);
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
  const stated = Object.entries(at).map(([quantity, { value, unit }]) => [
    quantity,
    convert(value, unit, axisFacts[quantity as keyof typeof at].readingUnit),
  ]);
  return { headwind: 0, slope: 0, ...Object.fromEntries(stated) };
}
