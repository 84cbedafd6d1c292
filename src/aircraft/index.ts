export { type AxisQuantity, type AxisUnit, axisFacts } from './axis.ts';
export { calibrationTable, preparedCalibration } from './calibrate.ts';
export type { Chart, ChartCurve, ChartPoint, ChartScale, CurvePanel, GuidePanel } from './chart.ts';
export { type ClimbIncrementInputs, climbIncrement } from './climb-increment.ts';
export { type ClimbProgress, type ClimbProgressInputs, climbProgress } from './climb-progress.ts';
export { consistencyFaults } from './consistency.ts';
export { type Figures, isChart, type PrintedRange, printedRange, runsAlong } from './figures.ts';
export { type InterpolateCellInputs, interpolateCell } from './interpolate-cell.ts';
export { type CurvePiece, type InterpolateCurvesInputs, interpolateCurves } from './interpolate-curves.ts';
export { type InterpolateTableInputs, interpolateTable } from './interpolate-table.ts';
export { migratePerformanceData } from './migrate-performance-data.ts';
export type {
  Airframe,
  AssociatedConditions,
  Calibration,
  ClimbData,
  ClimbProgressData,
  Configuration,
  Corrections,
  DistanceData,
  Includes,
  LandingData,
  NamedSpeed,
  PerformanceData,
  PrintedLaw,
  SlopeLaw,
  StallSpeed,
  SurfaceCorrection,
  TakeoffData,
  WindValue,
} from './performance-data.ts';
export { type Finding, plausibilityFindings } from './plausibility.ts';
export { type PreparedTable, prepareTable } from './prepared-table.ts';
export type { PrintedExample } from './printed-example.ts';
export { type CallPanel, type ChartReading, type NoChartReading, readChart } from './read-chart.ts';
export { type PerformanceDataResult, readPerformanceData } from './read-performance-data.ts';
export { bracketPrepared, bracketTable, type NoReading, type TableReading } from './read-table.ts';
export type { ReadingMode } from './reading-mode.ts';
export type { Cell, Cells, CellUnit, FuelUnit, Table, TableAxis } from './table.ts';
export type { TablePoint } from './table-point.ts';
export { type ExampleRow, verifyExamples } from './verify-examples.ts';
