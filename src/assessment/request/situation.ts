import type { ClimbData, LandingData, TakeoffData } from '../../aircraft/index.ts';
import {
  bracketCalibration,
  bracketTable,
  calibrationTable,
  interpolateCell,
  isChart,
  type PerformanceData,
  printedRange,
  type ReadingMode,
  runsAlong,
  type Table,
  type WindValue,
} from '../../aircraft/index.ts';
import { type FactorSet, factorSets, type Surface, type SurfaceEffect, surfaceEffect } from '../../distance/index.ts';
import { magneticFromTrue, trueFromMagnetic } from '../../magnetism/index.ts';
import { type MagneticDirection, quantityOf, roundUp, type TrueDirection } from '../../units/index.ts';
import { convert, type UnitWord } from '../../units/unit-table.ts';
import { edgeReasons, noReading } from '../kernel/no-reading.ts';
import type { Reason } from '../result/reason.ts';
import { type Confirmation, type Policies, policyDefaults } from './policies.ts';
import type { LandingRequest, PoliciesGiven, TakeoffRequest } from './request.ts';
import { phaseOf } from './request-consistency.ts';

/** An obstacle seen from one end of the runway. */
export interface PlacedObstacle {
  readonly name: string;
  /** From the end of the runway beyond which it stands, in metres. */
  readonly beyond_m: number;
  readonly top_mElevation: number;
  /** From the extended centreline, where stated. */
  readonly offset_m: number | undefined;
}

/** The runway as it is used today, in metres and degrees. */
export interface RunwayInUse {
  readonly designator: string;
  /** Bearing against the north of the wind report. */
  readonly direction_deg: number;
  readonly directionFrom: 'survey' | 'designator';
  readonly length_m: number;
  /** Uphill positive in the direction of use. */
  readonly slope_percent: number;
  readonly start_mElevation: number;
  readonly aerodrome_ft: number;
  readonly surface: Surface;
  readonly tora_m: number;
  readonly toda_m: number;
  readonly asda_m: number;
  readonly lda_m: number;
  readonly hasClearway: boolean;
  readonly hasStopway: boolean;
  readonly displaced_m: number;
  /** From the painted end to where the roll starts: line-up loss, and the part of the runway that a shorter TORA leaves out. */
  readonly offset_m: number;
  readonly toraShorter_m: number;
  /** Beyond the far end and beyond the near one; undefined where nobody has looked. */
  readonly ahead: readonly PlacedObstacle[] | undefined;
  readonly behind: readonly PlacedObstacle[] | undefined;
}

/** A speed, calibrated where the data allow; one that is flown is rounded up to a whole knot first. */
export interface FlownSpeed {
  readonly kias: number;
  readonly kcas: number | undefined;
}

/** A speed, or why the data have none for this mass. */
export type SpeedReading =
  | ({ readonly ok: true; readonly edges: readonly Reason[] } & FlownSpeed)
  | { readonly ok: false; readonly reason: Reason };

/** A wind limit in the unit in which it is stated. */
export interface WindLimit {
  readonly value: number;
  readonly unit: 'kt' | 'mph' | 'mps';
  readonly status: 'limitation' | 'demonstrated' | 'personal';
}

/** Everything about a request that does not change with the weather. */
export interface Situation<T extends TakeoffData | LandingData = TakeoffData | LandingData> {
  readonly phase: 'takeoff' | 'landing';
  readonly data: PerformanceData;
  readonly configuration: string;
  readonly flap: string;
  readonly table: T | undefined;
  readonly climb: ClimbData | undefined;
  /** Height to which the take-off distance, or from which the landing distance, is measured. */
  readonly screen_m: number;
  readonly mass_kg: number;
  /** The maximum mass in the unit in which the data state it. */
  readonly maximumMass: { readonly value: number; readonly unit: 'kg' | 'lb' };
  readonly runway: RunwayInUse;
  readonly set: FactorSet;
  /** By flap setting, as tables that are read. */
  readonly calibrations: ReadonlyMap<string, Table<'kcas'>>;
  /** Whether any table or chart of this phase runs along density altitude. */
  readonly readsDensityAltitude: boolean;
  /** What the set says of today's surface. */
  readonly surfaceEffect: SurfaceEffect;
  readonly safety: 'of the set' | 'none';
  readonly policies: Policies;
  readonly confirmations: readonly Confirmation[];
  /** How tables are read: for distances and speeds, and for rates of climb. */
  readonly reading: { readonly greaterIsWorse: ReadingMode; readonly lessIsWorse: ReadingMode };
  readonly crosswindLimits: readonly WindLimit[];
  readonly tailwindLimits: readonly WindLimit[];
  readonly notes: readonly Reason[];
}

/** A measure of a request in one unit; the reader has already held its unit against its kind. */
export function inUnit(measured: { value: number; unit: UnitWord }, unit: UnitWord): number {
  return convert(measured.value, measured.unit, unit) as number;
}

/** Settles everything that does not change with the weather. */
export function situationOf(request: TakeoffRequest | LandingRequest): Situation {
  const phase = phaseOf(request);
  const data = request.performanceData;
  const configuration =
    request.configuration ?? (data.configurations.find((each) => each.phase === phase)?.id as string);
  const flap = data.configurations.find(({ id }) => id === configuration)?.flap as string;
  const use = phase === 'takeoff' ? 'initial' : 'balked landing';
  const policies = settle(request.policies ?? {});
  const reading = {
    favourableEdge: policies.favourableEdge,
    between: policies.betweenPrintedValues,
    // A slope is stated uphill positive: for a landing it is the downhill end that costs.
    highIsFavourable: phase === 'takeoff' ? (['headwind'] as const) : (['headwind', 'slope'] as const),
  };
  const notes: Reason[] = [];
  const table = data[phase].find((each) => each.configuration === configuration);
  const { personalLimits } = request;
  const set = typeof request.factorSet === 'string' ? factorSets[request.factorSet] : request.factorSet;
  const climb = data.climb.find((each) => each.configuration === configuration && each.use === use);
  const read = [table?.groundRoll, table?.distance, climb?.rateOfClimb];
  return {
    phase,
    data,
    configuration,
    flap,
    table,
    screen_m: table === undefined ? 50 * 0.3048 : inUnit(table.screenHeight, 'mHeight'),
    climb,
    calibrations: new Map(
      data.calibrations.flatMap(({ flap: each }) => {
        const calibration = calibrationTable(data, each);
        return calibration === undefined ? [] : [[each, calibration] as const];
      }),
    ),
    readsDensityAltitude: read.some((figures) => figures !== undefined && runsAlong(figures, 'densityAltitude')),
    mass_kg: inUnit(request.mass, 'kg'),
    maximumMass: phase === 'takeoff' ? data.masses.maximumTakeoff : data.masses.maximumLanding,
    runway: runwayInUse(request, notes),
    set,
    surfaceEffect: surfaceEffect(set[phase], request.runway.surface),
    safety: request.safetyFactor ?? 'of the set',
    policies,
    confirmations: request.policies?.confirmations ?? [],
    reading: { greaterIsWorse: { ...reading, worse: 'greater' }, lessIsWorse: { ...reading, worse: 'less' } },
    crosswindLimits: windLimits(data.crosswind, personalLimits?.crosswind),
    tailwindLimits: windLimits(data.tailwind, personalLimits?.tailwind),
    notes,
  };
}

function windLimits(stated: readonly WindValue[], personal: { value: number; unit: 'kt' } | undefined): WindLimit[] {
  const limits: WindLimit[] = stated.map(({ speed, status }) => ({ ...speed, status }));
  return personal === undefined ? limits : [...limits, { ...personal, status: 'personal' }];
}

function settle(given: PoliciesGiven): Policies {
  const number = (measured: { value: number; unit: UnitWord } | undefined, unit: UnitWord, otherwise: number) =>
    measured === undefined ? otherwise : inUnit(measured, unit);
  const d = policyDefaults;
  return {
    headwindShare: number(given.headwindShare, 'ratio', d.headwindShare.default),
    tailwindShare: number(given.tailwindShare, 'ratio', d.tailwindShare.default),
    demonstratedCrosswind: given.demonstratedCrosswind ?? d.demonstratedCrosswind.default,
    favourableSlope: given.favourableSlope ?? d.favourableSlope.default,
    favourableEdge: given.favourableEdge ?? d.favourableEdge.default,
    betweenPrintedValues: given.betweenPrintedValues ?? d.betweenPrintedValues.default,
    humidity: given.humidity ?? d.humidity.default,
    unreportedGust: given.unreportedGust ?? d.unreportedGust.default,
    speedAdditionInDistance: given.speedAdditionInDistance ?? d.speedAdditionInDistance.default,
    verticalClearance: number(given.verticalClearance, 'ftHeight', d.verticalClearance.default),
    approachClearance: number(given.approachClearance, 'ftHeight', d.approachClearance.default),
    approachAngle: number(given.approachAngle, 'deg', d.approachAngle.default),
    reactionTime: number(given.reactionTime, 's', d.reactionTime.default),
    firstPrinciples: given.firstPrinciples ?? d.firstPrinciples.default,
  };
}

function runwayInUse(request: TakeoffRequest | LandingRequest, notes: Reason[]): RunwayInUse {
  const { runway, runwayInUse: inUse } = request;
  const [a, b] = runway.ends;
  const [near, far] = a.designator === inUse ? [a, b] : [b, a];
  const length_m = inUnit(runway.length, 'm');
  const start = inUnit(near.elevation, 'mElevation');
  const end = inUnit(far.elevation, 'mElevation');
  const highest_ft = Math.max(inUnit(near.elevation, 'ftElevation'), inUnit(far.elevation, 'ftElevation'));
  const declared = near.declaredDistances ?? {};
  const lineUp_m = 'lineUpLoss' in request && request.lineUpLoss !== undefined ? inUnit(request.lineUpLoss, 'm') : 0;
  const displaced_m = near.displacedThreshold === undefined ? 0 : inUnit(near.displacedThreshold, 'm');
  const tora = declared.TORA === undefined ? length_m : inUnit(declared.TORA, 'm');
  const toda = declared.TODA === undefined ? tora : inUnit(declared.TODA, 'm');
  const asda = declared.ASDA === undefined ? tora : inUnit(declared.ASDA, 'm');
  const placed = (designator: string) =>
    runway.obstacles
      ?.filter((obstacle) => obstacle.end === designator)
      .map(({ name, beyond, topElevation, groundElevation, height, lateralOffset }) => ({
        name,
        offset_m: lateralOffset === undefined ? undefined : inUnit(lateralOffset, 'm'),
        beyond_m: inUnit(beyond, 'm'),
        top_mElevation:
          topElevation !== undefined
            ? inUnit(topElevation, 'mElevation')
            : inUnit(groundElevation as never, 'mElevation') + inUnit(height as never, 'mHeight'),
      }));
  return {
    designator: near.designator,
    direction_deg: directionForWind(request, near.direction, notes),
    directionFrom: near.directionFrom ?? 'survey',
    length_m,
    slope_percent: ((end - start) / length_m) * 100,
    start_mElevation: start,
    aerodrome_ft:
      runway.aerodromeElevation === undefined ? highest_ft : inUnit(runway.aerodromeElevation, 'ftElevation'),
    surface: runway.surface,
    tora_m: tora - lineUp_m,
    toda_m: toda - lineUp_m,
    asda_m: asda - lineUp_m,
    lda_m: declared.LDA === undefined ? length_m - displaced_m : inUnit(declared.LDA, 'm'),
    hasClearway: toda > tora,
    hasStopway: asda > tora,
    displaced_m,
    // Which end of the runway a shorter TORA leaves out is not stated; nearer to what stands ahead is the safer reading.
    offset_m: lineUp_m + Math.max(0, length_m - tora),
    toraShorter_m: Math.max(0, length_m - tora),
    ahead: placed(far.designator),
    behind: placed(near.designator),
  };
}

/** The runway direction against the north of the wind; converted through the variation given where they differ. */
function directionForWind(
  request: TakeoffRequest | LandingRequest,
  direction: { value: number; unit: 'degTrue' | 'degMagnetic' },
  notes: Reason[],
): number {
  const { from, range } = request.weather.wind;
  const north = typeof from === 'string' ? range?.from.unit : from.unit;
  const { variation } = request;
  if (north === undefined || north === direction.unit || variation === undefined) return direction.value;
  const given = direction.value as TrueDirection & MagneticDirection;
  const value = quantityOf(variation.value);
  const converted: number =
    north === 'degTrue'
      ? trueFromMagnetic({ direction: given, variation: value })
      : magneticFromTrue({ direction: given, variation: value });
  const words = (unit: string) => (unit === 'degTrue' ? 'true' : 'magnetic');
  const hemisphere = variation.value.value < 0 ? 'W' : 'E';
  notes.push({
    code: 'north-converted',
    parameters: {
      given_deg: direction.value,
      givenNorth: words(direction.unit),
      converted_deg: converted,
      convertedNorth: words(north),
      variation: `${Math.abs(variation.value.value).toFixed(1)}° ${hemisphere}`,
      source: variation.source,
    },
  });
  return converted;
}

/** The speed printed for this mass, rounded up to a whole knot, with an addition before rounding. */
export function flownSpeed(
  situation: Situation,
  speeds: Table<'kias'>,
  name: string,
  addition_kt = 0,
  flap = situation.flap,
): SpeedReading {
  const printed = printedSpeed(situation, speeds, name);
  if (!printed.ok) return printed;
  const kias = roundUp(printed.kias + addition_kt);
  return { ...printed, kias, kcas: calibrated(situation, flap, kias) };
}

/** The speed printed for this mass, unrounded. */
export function printedSpeed(situation: Situation, speeds: Table<'kias'>, name: string): SpeedReading {
  return speedAt(situation, speeds, name, situation.mass_kg, situation.reading.greaterIsWorse);
}

/**
 * The speed that today's reading of the distance table belongs to, unrounded. Always interpolated: of two speeds the
 * slower is the worse one to pay an addition from.
 */
export function tableSpeed(situation: Situation, speeds: Table<'kias'>, name: string): SpeedReading {
  const mode = { ...situation.reading.greaterIsWorse, between: 'interpolate' } as const;
  return speedAt(situation, speeds, name, massOfTable(situation), mode);
}

/** The mass that the distance table is read at, where that is more than today's: stated, the first printed, or the next worse. */
function massOfTable({ table, mass_kg, policies }: Situation): number {
  if (table === undefined) return mass_kg;
  const { distance, associatedConditions } = table;
  if (associatedConditions.mass !== undefined) return Math.max(mass_kg, inUnit(associatedConditions.mass, 'kg'));
  const range = printedRange(distance, 'mass');
  if (range === undefined) return mass_kg;
  const inKilograms = (value: number) => inUnit({ value, unit: range.unit }, 'kg');
  if (policies.betweenPrintedValues === 'interpolate' || isChart(distance))
    return Math.max(mass_kg, inKilograms(range.from));
  const printed = distance.axes.find(({ quantity }) => quantity === 'mass')?.values ?? [];
  return printed.map(inKilograms).find((each) => each >= mass_kg) ?? mass_kg;
}

function speedAt(
  situation: Situation,
  speeds: Table<'kias'>,
  name: string,
  mass_kg: number,
  mode: ReadingMode,
): SpeedReading {
  const point = { mass: mass_kg };
  const reading = bracketTable(speeds, point, mode);
  if (!reading.ok) return { ok: false, reason: noReading(reading, name) };
  const kias = interpolateCell(reading.bracket);
  const edges = edgeReasons(reading.bracket.atEdge, point, name);
  return { ok: true, kias, kcas: calibrated(situation, situation.flap, kias), edges };
}

/** An indicated airspeed through the data's own calibration for that flap; none without one. */
export function calibrated(situation: Situation, flap: string, kias: number): number | undefined {
  const calibration = situation.calibrations.get(flap);
  const reading = calibration === undefined ? undefined : bracketCalibration(calibration, kias);
  return reading?.ok === true ? interpolateCell(reading.bracket) : undefined;
}
