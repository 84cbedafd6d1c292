import { convert } from '../units/unit-table.ts';
import { axisFacts } from './axis.ts';
import type { Chart, ChartScale } from './chart.ts';
import { type Figures, isChart } from './figures.ts';
import { gridCells } from './grid.ts';
import { interpolateCell } from './interpolate-cell.ts';
import { prepareTable } from './prepared-table.ts';
import { readChart } from './read-chart.ts';
import { bracketPrepared } from './read-table.ts';
import type { ReadingMode } from './reading-mode.ts';
import type { CellUnit, Table } from './table.ts';
import type { TablePoint } from './table-point.ts';

/** A place at which figures are printed: where in the document, and for which values, in reading units. */
export interface Sample {
  readonly place: string;
  readonly point: TablePoint;
}

/** Every place at which figures are printed: each cell of a table, each point of a chart's first panel. */
export function samplesOf(figures: Figures | Table<CellUnit>): Sample[] {
  if (isChart(figures)) return chartSamples(figures);
  return gridCells(figures).flatMap(({ place, point, cell }) =>
    cell === null ? [] : [{ place: `cells${place}`, point: inReadingUnits(figures.axes, point) }],
  );
}

/** The first panel's points with every other panel at its reference line, where a chart is read without following guides. */
function chartSamples({ panels }: Chart): Sample[] {
  const [first, ...guides] = panels;
  const atReference = Object.fromEntries(
    guides.map(({ along, referenceLine }) => [along.quantity, inReading(along, referenceLine)]),
  );
  return first.curves.flatMap(({ at, points }, i) =>
    points.map(([along], k) => ({
      place: `panels[0].curves[${i}].points[${k}]`,
      point: {
        ...atReference,
        [first.family.quantity]: inReading(first.family, at),
        [first.along.quantity]: inReading(first.along, along),
      },
    })),
  );
}

const mode: ReadingMode = {
  favourableEdge: 'refuse',
  between: 'interpolate',
  worse: 'greater',
  highIsFavourable: ['headwind'],
};

/** Reads figures at many points, without edge rules; undefined where the figures have none. */
export function figureReader(figures: Figures | Table<CellUnit>): (point: TablePoint) => number | undefined {
  if (isChart(figures)) {
    return (point) => {
      const reading = readChart(figures, point, mode);
      return reading.ok ? reading.value : undefined;
    };
  }
  const prepared = prepareTable(figures, mode);
  return (point) => {
    const reading = bracketPrepared(prepared, point);
    return reading.ok ? interpolateCell(reading.cell) : undefined;
  };
}

function inReadingUnits(axes: Table['axes'], point: TablePoint): TablePoint {
  return Object.fromEntries(axes.map((axis) => [axis.quantity, inReading(axis, point[axis.quantity] as number)]));
}

function inReading({ quantity, unit }: ChartScale, value: number): number {
  return convert(value, unit, axisFacts[quantity].readingUnit) as number;
}
