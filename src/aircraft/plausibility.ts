import { trueAirspeed } from '../airspeed/index.ts';
import type { CalibratedAirspeed, Celsius, PressureAltitude } from '../units/index.ts';
import { convert } from '../units/unit-table.ts';
import { bracketCalibration, calibrationTable } from './calibrate.ts';
import { rollAtEachDistance } from './consistency.ts';
import { type Figures, isChart } from './figures.ts';
import { gridCells } from './grid.ts';
import { interpolateCell } from './interpolate-cell.ts';
import type { DistanceData, PerformanceData, TakeoffData } from './performance-data.ts';
import type { TablePoint } from './read-table.ts';
import { figureAt, samplesOf } from './samples.ts';
import { cellAt } from './table.ts';

/** Something about typed figures that is possible but unlikely; it points at the cell, and refuses nothing. */
export interface Finding {
  readonly code: 'acceleration' | 'distance-to-roll' | 'monotonic';
  readonly path: string;
  readonly message: string;
}

/** How a light aeroplane's figures usually lie (convention of the library; common practice). */
const usual = {
  /** V²/(2 roll) in m/s², V the true airspeed at lift-off; feet typed as metres fall outside. */
  acceleration: { min: 0.8, max: 2.5 },
  takeoffDistanceToRoll: { min: 1.5, max: 2.6 },
  landingDistanceToRoll: { min: 1.5, max: 3.5 },
} as const;

/** Looks for slips of the keyboard: feet for metres, a digit too many, two rows exchanged. */
export function plausibilityFindings(data: PerformanceData): Finding[] {
  return [
    ...data.takeoff.flatMap((table, i) => [
      ...ratioFindings(table, `takeoff[${i}]`, usual.takeoffDistanceToRoll),
      ...accelerationFindings(data, table, `takeoff[${i}]`),
      ...monotonicFindings(table.groundRoll, `takeoff[${i}].groundRoll`, 'greater'),
      ...monotonicFindings(table.distance, `takeoff[${i}].distance`, 'greater'),
    ]),
    ...data.landing.flatMap((table, i) => [
      ...ratioFindings(table, `landing[${i}]`, usual.landingDistanceToRoll),
      ...monotonicFindings(table.groundRoll, `landing[${i}].groundRoll`, 'greater'),
      ...monotonicFindings(table.distance, `landing[${i}].distance`, 'greater'),
    ]),
    ...data.climb.flatMap((table, i) => monotonicFindings(table.rateOfClimb, `climb[${i}].rateOfClimb`, 'less')),
  ];
}

function ratioFindings(table: DistanceData, path: string, range: { min: number; max: number }): Finding[] {
  return rollAtEachDistance(table).flatMap(({ place, cell, roll }) => {
    const ratio = cell / roll;
    if (ratio >= range.min && ratio <= range.max) return [];
    const message = `distance is ${ratio.toFixed(2)} times the ground roll; ${range.min} to ${range.max} is usual`;
    return [{ code: 'distance-to-roll' as const, path: `${path}.distance.${place}`, message }];
  });
}

function accelerationFindings(data: PerformanceData, table: TakeoffData, path: string): Finding[] {
  return samplesOf(table.groundRoll).flatMap(({ place, point }) => {
    const cell = figureAt(table.groundRoll, { ...point, height: 0 });
    const speed_ktas = cell === undefined ? undefined : liftOffTrueAirspeed(data, table, point);
    if (cell === undefined || speed_ktas === undefined) return [];
    const roll_m = convert(cell, table.groundRoll.unit, 'm') as number;
    const acceleration = ((speed_ktas * 1852) / 3600) ** 2 / (2 * roll_m);
    const { min, max } = usual.acceleration;
    if (acceleration >= min && acceleration <= max) return [];
    const message = `reaching lift-off in ${Math.round(cell)} ${table.groundRoll.unit} takes ${acceleration.toFixed(2)} m/s²; ${min} to ${max} is usual: feet and metres exchanged?`;
    return [{ code: 'acceleration' as const, path: `${path}.groundRoll.${place}`, message }];
  });
}

/** Only where the data hold everything that the true airspeed needs; nothing is assumed. */
function liftOffTrueAirspeed(data: PerformanceData, table: TakeoffData, point: TablePoint): number | undefined {
  const { pressureAltitude, temperature } = point;
  const flap = data.configurations.find(({ id }) => id === table.configuration)?.flap;
  const calibration = flap === undefined ? undefined : calibrationTable(data, flap);
  if (pressureAltitude === undefined || temperature === undefined || calibration === undefined) return undefined;
  const indicated = figureAt(table.liftOffSpeed, point);
  if (indicated === undefined) return undefined;
  const calibrated = bracketCalibration(calibration, indicated);
  if (!calibrated.ok) return undefined;
  return trueAirspeed({
    calibratedAirspeed: interpolateCell(calibrated.bracket) as CalibratedAirspeed,
    pressureAltitude: pressureAltitude as PressureAltitude,
    temperature: temperature as Celsius,
  });
}

/** Heavier, higher and warmer is never better; a cell that says otherwise is probably mistyped. */
function monotonicFindings(table: Figures, path: string, worse: 'greater' | 'less'): Finding[] {
  // The guide lines of a chart are held in order by its schema.
  if (isChart(table)) return [];
  return gridCells(table).flatMap(({ place, indices, cell }) =>
    table.axes.flatMap((axis, k) => {
      const i = indices[k] as number;
      if (i === 0 || cell === null) return [];
      const before = cellAt(
        table.cells,
        indices.map((index, other) => (other === k ? i - 1 : index)),
      );
      if (before === null) return [];
      // More headwind is better; a slope is better or worse by the phase, which a single table does not say.
      const rises = (worse === 'greater') !== (axis.quantity === 'headwind');
      if (axis.quantity === 'slope' || (rises ? cell >= before : cell <= before)) return [];
      const message = `${cell} ${table.unit} is better than ${before} one step down in ${axis.quantity}`;
      return [{ code: 'monotonic' as const, path: `${path}.cells${place}`, message }];
    }),
  );
}
