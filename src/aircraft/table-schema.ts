import * as v from 'valibot';
import { finiteNumber } from '../documents/index.ts';
import { type AxisQuantity, axisFacts } from './axis.ts';
import type { Cell, Cells, CellUnit, Table } from './table.ts';

const quantities = Object.keys(axisFacts) as AxisQuantity[];
const axisUnits = [...new Set(quantities.flatMap((quantity) => axisFacts[quantity].units))];

const axisSchema = v.pipe(
  v.strictObject({
    quantity: v.picklist(quantities),
    unit: v.picklist(axisUnits),
    values: v.pipe(v.array(finiteNumber), v.minLength(2, 'an axis has at least 2 values')),
  }),
  v.check(
    (axis) => axisFacts[axis.quantity].units.includes(axis.unit),
    (issue) => {
      const { quantity, unit } = issue.input;
      return `${unit} is not a unit of ${quantity} (${axisFacts[quantity].units.join(' or ')})`;
    },
  ),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    const { values } = dataset.value;
    for (let i = 1; i < values.length; i += 1) {
      const [before, here] = [values[i - 1] as number, values[i] as number];
      if (!(here > before)) addIssue({ message: `axis values must rise: ${here} follows ${before}` });
    }
  }),
);

/** Cells nested to any depth up to four; whether the nesting fits the axes is checked with the whole table. */
export const cellsSchema = v.custom<Cells>(
  (cells) => isCells(cells, 4),
  'cells must be numbers or null, nested as deep as there are axes',
);

/** A table whose cells stand in one of the given units, within bounds that hold for any of them. */
export function tableSchema<const U extends CellUnit>(
  units: readonly [U, ...U[]],
  min: number,
  max: number,
): v.GenericSchema<unknown, Table<U>> {
  const table = v.pipe(
    v.strictObject({
      axes: v.pipe(v.array(axisSchema), v.maxLength(4, 'a table has at most 4 axes')),
      unit: v.picklist(units),
      cells: cellsSchema,
    }),
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return;
      for (const message of shapeFaults(dataset.value as Table, min, max)) addIssue({ message });
    }),
  );
  return table as unknown as v.GenericSchema<unknown, Table<U>>;
}

function isCells(cells: unknown, depth: number): boolean {
  if (cells === null || (typeof cells === 'number' && Number.isFinite(cells))) return true;
  // Spread, so that a hole in a list is seen.
  return depth > 0 && Array.isArray(cells) && [...cells].every((part) => isCells(part, depth - 1));
}

/** Everything wrong between the cells and the axes, each with the place of the cell. */
function shapeFaults(table: Table, min: number, max: number): string[] {
  const faults: string[] = [];
  const seen = new Set<string>();
  for (const { quantity } of table.axes) {
    if (seen.has(quantity)) faults.push(`two axes run along ${quantity}`);
    seen.add(quantity);
  }
  let filled = 0;
  const visit = (part: Cells, axis: number, place: string): void => {
    const wanted = table.axes[axis]?.values.length;
    if (wanted === undefined) {
      if (Array.isArray(part)) faults.push(`cells${place} is nested deeper than there are axes`);
      else if (part !== null) {
        filled += 1;
        const figure = part as number;
        if (figure < min || figure > max)
          faults.push(`cells${place}: ${figure} ${table.unit} is not within ${min} to ${max} ${table.unit}`);
      }
      return;
    }
    if (!Array.isArray(part))
      faults.push(`cells${place} must be a list of ${wanted} along ${table.axes[axis]?.quantity}`);
    else if (part.length !== wanted)
      faults.push(`cells${place} has ${part.length} entries for ${wanted} values of ${table.axes[axis]?.quantity}`);
    else
      for (const [i, inner] of (part as readonly (Cells | Cell)[]).entries()) visit(inner, axis + 1, `${place}[${i}]`);
  };
  visit(table.cells, 0, '');
  if (faults.length === 0 && filled === 0) faults.push('every cell is blank');
  return faults;
}
