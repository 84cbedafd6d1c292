import * as v from 'valibot';
import { finiteNumbers } from '../documents/index.ts';
import { type AxisQuantity, axisFacts } from './axis.ts';
import type { Cells, CellUnit, Table } from './table.ts';

const quantities = Object.keys(axisFacts) as AxisQuantity[];
const axisUnits = [...new Set(quantities.flatMap((quantity) => axisFacts[quantity].units))];

const axisSchema = v.pipe(
  v.strictObject({
    quantity: v.picklist(quantities),
    unit: v.picklist(axisUnits),
    values: v.pipe(finiteNumbers, v.minLength(2, 'an axis has at least 2 values')),
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
  if (depth === 0 || !Array.isArray(cells)) return false;
  // By index, so that a hole in a list is seen.
  for (let i = 0; i < cells.length; i += 1) if (!isCells(cells[i], depth - 1)) return false;
  return true;
}

/** Everything wrong between the cells and the axes, each with the place of the cell, which is put into words for a fault only. */
function shapeFaults({ axes, unit, cells }: Table, min: number, max: number): string[] {
  const faults: string[] = [];
  const quantities = axes.map(({ quantity }) => quantity);
  for (const [i, quantity] of quantities.entries()) {
    if (quantities.indexOf(quantity) < i) faults.push(`two axes run along ${quantity}`);
  }
  let filled = 0;
  const place: number[] = [];
  const at = () => `cells${place.map((i) => `[${i}]`).join('')}`;
  const visit = (part: Cells): void => {
    const axis = axes[place.length];
    if (axis === undefined) {
      if (Array.isArray(part)) faults.push(`${at()} is nested deeper than there are axes`);
      else if (part !== null) {
        filled += 1;
        const figure = part as number;
        if (figure < min || figure > max)
          faults.push(`${at()}: ${figure} ${unit} is not within ${min} to ${max} ${unit}`);
      }
      return;
    }
    const { length } = axis.values;
    if (!Array.isArray(part)) faults.push(`${at()} must be a list of ${length} along ${axis.quantity}`);
    else if (part.length !== length)
      faults.push(`${at()} has ${part.length} entries for ${length} values of ${axis.quantity}`);
    else {
      for (let i = 0; i < length; i += 1) {
        place.push(i);
        visit(part[i] as Cells);
        place.pop();
      }
    }
  };
  visit(cells);
  if (faults.length === 0 && filled === 0) faults.push('every cell is blank');
  return faults;
}
