import type { PerformanceData } from './performance-data.ts';
import { bracketTable, type TableReading } from './read-table.ts';
import type { Table } from './table.ts';

/** The calibration of one flap setting as a table on indicated airspeed; none if the data have none for that flap. */
export function calibrationTable(data: PerformanceData, flap: string): Table<'kcas'> | undefined {
  const calibration = data.calibrations.find((candidate) => candidate.flap === flap);
  if (calibration === undefined) return undefined;
  const { indicated, calibrated } = calibration;
  return {
    axes: [{ quantity: 'indicatedAirspeed', unit: 'kias', values: indicated.values }],
    unit: 'kcas',
    cells: calibrated.values,
  };
}

/** Where a calibration is read; it is never extrapolated, at neither end. */
export function bracketCalibration(table: Table<'kcas'>, speed_kias: number): TableReading {
  return bracketTable(
    table,
    { indicatedAirspeed: speed_kias },
    { favourableEdge: 'refuse', between: 'interpolate', worse: 'greater', highIsFavourable: ['headwind'] },
  );
}
