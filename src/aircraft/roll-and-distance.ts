import { convert } from '../units/unit-table.ts';
import { type Figures, isChart } from './figures.ts';
import { placeOfCell } from './grid.ts';
import type { DistanceData } from './performance-data.ts';
import { cellsInOneRow, isSameAxes } from './prepared-table.ts';
import { figureReader, samplesOf } from './samples.ts';
import type { Table } from './table.ts';

/** A printed distance with the ground roll of the same conditions, in the distance's unit. */
export interface RollAndDistance {
  /** Where in the distance table or chart; asked for only where something is to be said of it. */
  readonly placeOf: () => string;
  readonly cell: number;
  readonly roll: number;
}

/** Each printed distance with the ground roll of the same conditions; the roll at no height, the distance at its own. */
export function rollAtEachDistance(table: DistanceData): RollAndDistance[] {
  const { groundRoll, distance } = table;
  return isGrid(groundRoll) && isGrid(distance) && isSameAxes(groundRoll.axes, distance.axes)
    ? cellByCell(groundRoll, distance)
    : sampleBySample(table);
}

function isGrid(figures: Figures): figures is Table<'m' | 'ft'> {
  return !isChart(figures);
}

/** Two tables on the same axes have their figures in the same places: nothing needs to be read between them. */
function cellByCell(groundRoll: Table, distance: Table): RollAndDistance[] {
  const rolls = cellsInOneRow(groundRoll);
  const found: RollAndDistance[] = [];
  for (const [i, cell] of cellsInOneRow(distance).entries()) {
    const roll = convert(rolls[i] as number, groundRoll.unit, distance.unit) as number;
    // A blank cell is NaN here.
    if (!Number.isNaN(cell) && !Number.isNaN(roll)) {
      found.push({ placeOf: () => `cells${placeOfCell(distance.axes, i)}`, cell, roll });
    }
  }
  return found;
}

function sampleBySample({ groundRoll, distance, screenHeight }: DistanceData): RollAndDistance[] {
  const screen_m = convert(screenHeight.value, screenHeight.unit, 'mHeight') as number;
  const distanceAt = figureReader(distance);
  const rollAt = figureReader(groundRoll);
  return samplesOf(distance).flatMap(({ place, point }) => {
    const cell = distanceAt({ ...point, height: screen_m });
    const printed = rollAt({ ...point, height: 0 });
    const roll = printed === undefined ? undefined : convert(printed, groundRoll.unit, distance.unit);
    return cell === undefined || roll === undefined ? [] : [{ placeOf: () => place, cell, roll }];
  });
}
