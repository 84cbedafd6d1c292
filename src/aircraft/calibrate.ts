import type { PerformanceData } from './performance-data.ts';
import { type PreparedTable, prepareTable } from './prepared-table.ts';
import type { ReadingMode } from './reading-mode.ts';
import type { Table } from './table.ts';

/** Never extrapolated, at neither end. */
const within: ReadingMode = {
  favourableEdge: 'refuse',
  between: 'interpolate',
  worse: 'greater',
  highIsFavourable: ['headwind'],
};

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

/** As `calibrationTable`, ready for many readings. */
export function preparedCalibration(data: PerformanceData, flap: string): PreparedTable | undefined {
  const table = calibrationTable(data, flap);
  return table === undefined ? undefined : prepareTable(table, within);
}
