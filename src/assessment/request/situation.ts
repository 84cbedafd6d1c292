import {
  type ClimbData,
  type LandingData,
  type PerformanceData,
  type PreparedTable,
  preparedCalibration,
  type TakeoffData,
} from '../../aircraft/index.ts';
import { type FactorSet, factorSets, type Surface, type SurfaceEffect, surfaceEffect } from '../../distance/index.ts';
import { magneticFromTrue, trueFromMagnetic } from '../../magnetism/index.ts';
import { type MagneticDirection, quantityOf, type TrueDirection } from '../../units/index.ts';
import type { UnitWord } from '../../units/unit-table.ts';
import type { Judged } from '../kernel/criterion.ts';
import { massCriterion } from '../kernel/mass-criterion.ts';
import type { Reason } from '../result/reason.ts';
import { inUnit } from './in-unit.ts';
import { northOfWind } from './north.ts';
import { type OwnSurface, ownSurfaceOf } from './own-surface.ts';
import { type PlacedObstacle, placedObstacle } from './placed-obstacle.ts';
import { type Confirmation, type Policies, policyDefaults } from './policies.ts';
import { type ReadingModes, type ReadyData, readyData } from './ready-figures.ts';
import type { LandingRequest, PoliciesGiven, TakeoffRequest } from './request.ts';
import { phaseOf } from './request-consistency.ts';
import { unconfirmedFactors } from './unconfirmed-factors.ts';
import { type UncoveredAxis, uncoveredAxes } from './uncovered-axes.ts';
import { type WindLaws, windLawsOf } from './wind-laws.ts';
import { type WindLimit, windCriteriaOf, windLimits } from './wind-limits.ts';

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
  /** Its criterion, which no weather changes. */
  readonly massCriterion: Judged;
  readonly runway: RunwayInUse;
  readonly set: FactorSet;
  /** Tables and charts, ready for the readings of many weathers. */
  readonly ready: ReadyData;
  /** By flap setting. */
  readonly calibrations: ReadonlyMap<string, PreparedTable>;
  /** Whether any table or chart of this phase runs along density altitude. */
  readonly readsDensityAltitude: boolean;
  readonly windLaws: WindLaws;
  /** What the tables have no axis for. */
  readonly uncoveredAxes: readonly UncoveredAxis[];
  /** What the manual says of today's surface. */
  readonly ownSurface: OwnSurface;
  /** What the set says of today's surface. */
  readonly surfaceEffect: SurfaceEffect;
  readonly safety: 'of the set' | 'none';
  readonly policies: Policies;
  readonly confirmations: readonly Confirmation[];
  readonly unconfirmed: ReadonlyMap<string, Reason>;
  readonly crosswindLimits: readonly WindLimit[];
  readonly tailwindLimits: readonly WindLimit[];
  readonly windCriteria: ReturnType<typeof windCriteriaOf>;
  readonly notes: readonly Reason[];
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
  const mass_kg = inUnit(request.mass, 'kg');
  const maximumMass = phase === 'takeoff' ? data.masses.maximumTakeoff : data.masses.maximumLanding;
  const table = data[phase].find((each) => each.configuration === configuration);
  const { personalLimits } = request;
  const crosswindLimits = windLimits(data.crosswind, personalLimits?.crosswind);
  const tailwindLimits = windLimits(data.tailwind, personalLimits?.tailwind);
  const set = typeof request.factorSet === 'string' ? factorSets[request.factorSet] : request.factorSet;
  const confirmations = request.policies?.confirmations ?? [];
  const climb = data.climb.find((each) => each.configuration === configuration && each.use === use);
  const modes: ReadingModes = {
    greaterIsWorse: { ...reading, worse: 'greater' },
    lessIsWorse: { ...reading, worse: 'less' },
  };
  const ready = readyData(table, climb, modes);
  const { groundRoll, distance, rateOfClimb } = ready;
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
        const calibration = preparedCalibration(data, each);
        return calibration === undefined ? [] : [[each, calibration] as const];
      }),
    ),
    ready,
    readsDensityAltitude: [groundRoll, distance, rateOfClimb].some((each) => each?.runsAlongDensityAltitude === true),
    mass_kg,
    maximumMass,
    massCriterion: massCriterion({ phase, mass_kg, maximumMass }),
    runway: runwayInUse(request, notes),
    set,
    windLaws: windLawsOf(table),
    uncoveredAxes: uncoveredAxes(phase, table, set),
    ownSurface: ownSurfaceOf(table, request.runway.surface),
    surfaceEffect: surfaceEffect(set[phase], request.runway.surface),
    safety: request.safetyFactor ?? 'of the set',
    policies,
    confirmations,
    unconfirmed: unconfirmedFactors(set, phase, confirmations),
    crosswindLimits,
    tailwindLimits,
    windCriteria: windCriteriaOf(crosswindLimits, tailwindLimits, policies.demonstratedCrosswind),
    notes,
  };
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
    runway.obstacles?.filter((obstacle) => obstacle.end === designator).map(placedObstacle);
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
  const north = northOfWind(request.weather.wind);
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
