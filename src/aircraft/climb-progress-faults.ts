import type { Fault } from '../documents/index.ts';
import { gridCells } from './grid.ts';
import type { ClimbProgressData } from './performance-data.ts';
import { type Cell, cellAt, type Table } from './table.ts';

/** What is wrong between the tables of a climb progress: they must reach alike, name their mass and never fall with altitude. */
export function climbProgressFaults(progress: ClimbProgressData, path: string): Fault[] {
  const faults: Fault[] = [];
  const axes = (table: Table) => JSON.stringify(table.axes);
  for (const key of ['fuel', 'distance'] as const) {
    if (axes(progress[key]) !== axes(progress.time))
      faults.push({ path: `${path}.${key}.axes`, message: 'time, fuel and distance must run along the same axes' });
  }
  const quantities = progress.time.axes.map(({ quantity }) => quantity);
  if (!quantities.includes('pressureAltitude'))
    faults.push({ path: `${path}.time.axes`, message: 'an axis of pressureAltitude is needed' });
  const strange = quantities.filter((each) => !['pressureAltitude', 'mass', 'isaDeviation'].includes(each));
  for (const quantity of strange)
    faults.push({ path: `${path}.time.axes`, message: `a climb is not read along ${quantity}` });
  if (quantities.includes('mass') === (progress.associatedConditions.mass !== undefined)) {
    const message = 'either an axis of mass or the mass that the tables hold for is needed';
    faults.push({ path: `${path}.associatedConditions.mass`, message });
  }
  if (quantities.includes('isaDeviation') && progress.aboveStandard !== undefined) {
    const message = 'the tables have an axis of isaDeviation; a law beside it contradicts that';
    faults.push({ path: `${path}.aboveStandard`, message });
  }
  if (faults.length > 0) return faults;
  return (['time', 'fuel', 'distance'] as const).flatMap((key) => fallingCells(progress[key], `${path}.${key}`));
}

function fallingCells(table: Table, path: string): Fault[] {
  const k = table.axes.findIndex(({ quantity }) => quantity === 'pressureAltitude');
  return gridCells(table).flatMap(({ place, indices, cell }) => {
    const i = indices[k] as number;
    if (i === 0 || cell === null) return [];
    const below: Cell = cellAt(
      table.cells,
      indices.map((index, axis) => (axis === k ? i - 1 : index)),
    );
    if (below === null || cell >= below) return [];
    return [
      {
        path: `${path}.cells${place}`,
        message: `${cell} ${table.unit} is less than ${below} ${table.unit} at the altitude below`,
      },
    ];
  });
}
