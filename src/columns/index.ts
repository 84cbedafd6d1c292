export type { Column, PerRow } from './column.ts';
export {
  type Allocate,
  type ComparisonColumns,
  type CriterionColumns,
  type CriterionId,
  rowsBetween,
  verdictWords,
} from './criterion-columns.ts';
export {
  type DensityAltitudeColumn,
  type DensityAltitudeColumnInputs,
  densityAltitudeColumn,
} from './density-altitude.ts';
export {
  type CompareColumnsInputs,
  type NewComparisonColumnsInputs,
  type PreparedColumns,
  prepareLandingColumns,
  prepareTakeoffColumns,
} from './prepare.ts';
export type { RefusedRow, RefusedRows } from './refused-rows.ts';
export { type VariationColumn, type VariationColumnInputs, variationColumn, variationZones } from './variation.ts';
export type { WeatherColumns } from './weather.ts';
export {
  type WindComponentsColumns,
  type WindComponentsColumnsInputs,
  windComponentsColumns,
} from './wind-components.ts';
