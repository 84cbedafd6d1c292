import { trueAirspeed } from '../airspeed/index.ts';
import { type CalibratedAirspeed, type Celsius, DomainError, type PressureAltitude } from '../units/index.ts';
import { convert } from '../units/unit-table.ts';
import { axisFacts } from './axis.ts';
import { preparedCalibration } from './calibrate.ts';
import { type Figures, isChart } from './figures.ts';
import { gridCells } from './grid.ts';
import { interpolateCell } from './interpolate-cell.ts';
import type { DistanceData, PerformanceData, TakeoffData } from './performance-data.ts';
import { bracketPrepared } from './read-table.ts';
import { rollAtEachDistance } from './roll-and-distance.ts';
import { figureReader, samplesOf } from './samples.ts';
import { cellAt } from './table.ts';
import type { TablePoint } from './table-point.ts';
import { verifyExamples } from './verify-examples.ts';

/** Something about typed figures that is possible but unlikely; it points at the cell, and refuses nothing. */
export interface Finding {
  readonly code:
    | 'surfaces'
    | 'acceleration'
    | 'stall-speed'
    | 'distance-to-roll'
    | 'monotonic'
    | 'neighbours'
    | 'example';
  readonly path: string;
  readonly message: string;
}

/** How a light aeroplane's figures usually lie (convention of the library; common practice). */
const usual = {
  /** V²/(2 roll) in m/s², V the true airspeed at lift-off; feet typed as metres fall outside. */
  acceleration: { min: 0.8, max: 2.5 },
  takeoffDistanceToRoll: { min: 1.5, max: 2.6 },
  landingDistanceToRoll: { min: 1.5, max: 3.5 },
  /** As a share of what the neighbours lead to; for small figures, of the least that counts. */
  offNeighbours: 0.12,
  least: { m: 50, ft: 150, ftPerMin: 300 },
} as const;

/** Looks for slips of the keyboard: feet for metres, a digit too many, two rows exchanged. */
export function plausibilityFindings(data: PerformanceData): Finding[] {
  return [
    ...exampleFindings(data),
    ...data.takeoff.flatMap((table, i) => [
      ...surfaceFindings(table, `takeoff[${i}]`),
      ...ratioFindings(table, `takeoff[${i}]`, usual.takeoffDistanceToRoll),
      ...accelerationFindings(data, table, `takeoff[${i}]`),
      ...stallSpeedFindings(data, table, `takeoff[${i}]`),
      ...neighbourFindings(table.groundRoll, `takeoff[${i}].groundRoll`),
      ...neighbourFindings(table.distance, `takeoff[${i}].distance`),
      ...monotonicFindings(table.groundRoll, `takeoff[${i}].groundRoll`, 'greater'),
      ...monotonicFindings(table.distance, `takeoff[${i}].distance`, 'greater'),
    ]),
    ...data.landing.flatMap((table, i) => [
      ...surfaceFindings(table, `landing[${i}]`),
      ...ratioFindings(table, `landing[${i}]`, usual.landingDistanceToRoll),
      ...neighbourFindings(table.groundRoll, `landing[${i}].groundRoll`),
      ...neighbourFindings(table.distance, `landing[${i}].distance`),
      ...monotonicFindings(table.groundRoll, `landing[${i}].groundRoll`, 'greater'),
      ...monotonicFindings(table.distance, `landing[${i}].distance`, 'greater'),
    ]),
    ...data.climb.flatMap((table, i) => monotonicFindings(table.rateOfClimb, `climb[${i}].rateOfClimb`, 'less')),
  ];
}

/** A wet surface that costs less than the same one dry was probably exchanged with it. */
function surfaceFindings({ corrections }: DistanceData, path: string): Finding[] {
  const surfaces = corrections.surfaces ?? [];
  return surfaces.flatMap((wet, i) => {
    const dry = surfaces.find(
      (each) => each.condition === 'dry' && each.surface === wet.surface && each.percentOf === wet.percentOf,
    );
    if (wet.condition !== 'wet' || dry === undefined || wet.increase.value >= dry.increase.value) return [];
    const message = `wet ${wet.surface} costs ${wet.increase.value} %, less than dry, ${dry.increase.value} %`;
    return [{ code: 'surfaces' as const, path: `${path}.corrections.surfaces[${i}]`, message }];
  });
}

function ratioFindings(table: DistanceData, path: string, range: { min: number; max: number }): Finding[] {
  return rollAtEachDistance(table).flatMap(({ placeOf, cell, roll }) => {
    const ratio = cell / roll;
    if (ratio >= range.min && ratio <= range.max) return [];
    const message = `distance is ${ratio.toFixed(2)} times the ground roll; ${range.min} to ${range.max} is usual`;
    return [{ code: 'distance-to-roll' as const, path: `${path}.distance.${placeOf()}`, message }];
  });
}

function accelerationFindings(data: PerformanceData, table: TakeoffData, path: string): Finding[] {
  const rollAt = figureReader(table.groundRoll);
  const liftOffAt = liftOffTrueAirspeed(data, table);
  return samplesOf(table.groundRoll).flatMap(({ place, point }) => {
    const cell = rollAt({ ...point, height: 0 });
    const speed_ktas = cell === undefined ? undefined : liftOffAt(point);
    if (cell === undefined || speed_ktas === undefined) return [];
    const roll_m = convert(cell, table.groundRoll.unit, 'm') as number;
    const acceleration = ((speed_ktas * 1852) / 3600) ** 2 / (2 * roll_m);
    const { min, max } = usual.acceleration;
    if (acceleration >= min && acceleration <= max) return [];
    const message = `reaching lift-off in ${Math.round(cell)} ${table.groundRoll.unit} takes ${acceleration.toFixed(2)} m/s²; ${min} to ${max} is usual: feet and metres exchanged?`;
    return [{ code: 'acceleration' as const, path: `${path}.groundRoll.${place}`, message }];
  });
}

/**
 * Lift-off at no more than V_S1. With flap it may be so, and a lighter aeroplane than the one that V_S1 is printed for
 * stalls more slowly: it is pointed at for that mass and above, and refuses nothing.
 */
function stallSpeedFindings({ stallSpeeds }: PerformanceData, table: TakeoffData, path: string): Finding[] {
  const liftOffAt = figureReader(table.liftOffSpeed);
  const stated = table.associatedConditions.mass;
  const clean = stallSpeeds.filter(({ name, speed }) => name === 'V_S1' && speed.unit === 'kias');
  return samplesOf(table.liftOffSpeed).flatMap(({ place, point }) => {
    const liftOff = liftOffAt(point) as number;
    const mass_kg = point.mass ?? (stated && convert(stated.value, stated.unit, 'kg')) ?? 0;
    return clean.flatMap(({ flap, speed, mass }) => {
      const isLighter = mass_kg < (convert(mass.value, mass.unit, 'kg') as number) - 1e-9;
      if (liftOff > speed.value || isLighter) return [];
      const message = `lift-off at ${liftOff} kias is not above V_S1 ${speed.value} kias with flap ${flap}`;
      return [{ code: 'stall-speed' as const, path: `${path}.liftOffSpeed.${place}`, message }];
    });
  });
}

/** Only where the data hold everything that the true airspeed needs; nothing is assumed. */
function liftOffTrueAirspeed(data: PerformanceData, table: TakeoffData): (point: TablePoint) => number | undefined {
  const flap = data.configurations.find(({ id }) => id === table.configuration)?.flap;
  const calibration = flap === undefined ? undefined : preparedCalibration(data, flap);
  if (calibration === undefined) return () => undefined;
  const indicatedAt = figureReader(table.liftOffSpeed);
  return (point) => {
    const { pressureAltitude, temperature } = point;
    if (pressureAltitude === undefined || temperature === undefined) return undefined;
    const indicated = indicatedAt(point);
    if (indicated === undefined) return undefined;
    const calibrated = bracketPrepared(calibration, { indicatedAirspeed: indicated });
    if (!calibrated.ok) return undefined;
    return trueAirspeedWithin(interpolateCell(calibrated.cell), pressureAltitude, temperature);
  };
}

/** None where the data go beyond the air in which the formula holds: that is no matter of metres and feet. */
function trueAirspeedWithin(vc_kt: number, pressureAltitude: number, temperature: number): number | undefined {
  try {
    return trueAirspeed({
      calibratedAirspeed: vc_kt as CalibratedAirspeed,
      pressureAltitude: pressureAltitude as PressureAltitude,
      temperature: temperature as Celsius,
    });
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}

/** A printed example that the data do not give back: either was mistyped. */
function exampleFindings(data: PerformanceData): Finding[] {
  return verifyExamples(data)
    .filter(({ agrees }) => !agrees)
    .map(({ locator, quantity, printed, ours, unit }) => ({
      code: 'example' as const,
      path: 'examples',
      message: `${locator}: ${quantity} is printed ${printed} ${unit}, these data give ${ours === undefined ? 'none' : `${ours.toFixed(1)} ${unit}`}`,
    }));
}

/** Printed figures lie on smooth curves: one that its two neighbours on an axis do not lead to is probably mistyped. */
function neighbourFindings(table: Figures, path: string): Finding[] {
  if (isChart(table)) return [];
  return gridCells(table).flatMap(({ place, indices, cell }) =>
    table.axes.flatMap((axis, k) => {
      const i = indices[k] as number;
      const at = (index: number) =>
        cellAt(
          table.cells,
          indices.map((other, axisIndex) => (axisIndex === k ? index : other)),
        );
      if (i === 0 || i === axis.values.length - 1 || cell === null) return [];
      const [before, after] = [at(i - 1), at(i + 1)];
      if (before === null || after === null) return [];
      const [x1, x0, x2] = [i - 1, i, i + 1].map((index) => axis.values[index] as number) as [number, number, number];
      const expected = before + ((after - before) * (x0 - x1)) / (x2 - x1);
      if (Math.abs(cell - expected) <= usual.offNeighbours * Math.max(Math.abs(expected), usual.least[table.unit]))
        return [];
      const message = `${cell} ${table.unit} lies off its neighbours along ${axisFacts[axis.quantity].words}, ${before} and ${after}`;
      return [{ code: 'neighbours' as const, path: `${path}.cells${place}`, message }];
    }),
  );
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
