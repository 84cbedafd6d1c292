import { type Cell, type Cells, cellAt, type Table } from './table.ts';
import type { TablePoint } from './table-point.ts';

/** One printed cell with the place it stands at and the axis values it is printed for. */
export interface GridCell {
  /** `[1][0][2]`, empty for a table without axes. */
  readonly place: string;
  readonly indices: readonly number[];
  readonly point: TablePoint;
  readonly cell: Cell;
}

/** Every cell of a table, in printed order; axis values in the table's own units. */
export function gridCells(table: Table): GridCell[] {
  const places = table.axes.reduce<number[][]>(
    (found, axis) => found.flatMap((indices) => axis.values.map((_, i) => [...indices, i])),
    [[]],
  );
  return places.map((indices) => ({
    place: indices.map((i) => `[${i}]`).join(''),
    indices,
    point: Object.fromEntries(table.axes.map((axis, k) => [axis.quantity, axis.values[indices[k] as number]])),
    cell: cellAt(table.cells as Cells, indices),
  }));
}

/** The place of a cell that is counted in printed order, as `[1][0][2]`. */
export function placeOfCell(axes: Table['axes'], count: number): string {
  let place = '';
  let left = count;
  for (let k = axes.length - 1; k >= 0; k -= 1) {
    const { length } = (axes[k] as Table['axes'][number]).values;
    place = `[${left % length}]${place}`;
    left = Math.floor(left / length);
  }
  return place;
}
