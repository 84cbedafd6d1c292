import type { Measure, UnitWord } from '../units/index.ts';
import type { Figures } from './figures.ts';
import type { PrintedExample } from './printed-example.ts';
import type { FuelUnit, Table } from './table.ts';

/** How the aeroplane is flown: flap, power and technique belong to every table and to every request. */
export interface Configuration {
  /** A short word of the document's own, by which tables and requests name it. */
  readonly id: string;
  readonly name: string;
  readonly phase: 'takeoff' | 'landing';
  /** The flap setting as the manual names it; calibrations are found by it. */
  readonly flap: string;
  readonly power: string;
  readonly technique: 'normal' | 'short-field' | 'soft-field';
}

/** A stall speed, with the mass it is printed for. */
export interface StallSpeed {
  readonly name: 'V_S0' | 'V_S1';
  readonly flap: string;
  readonly speed: Measure<'kias' | 'kcas'>;
  readonly mass: Measure<'kg' | 'lb'>;
}

/** A speed to be flown that no distance table carries. */
export interface NamedSpeed {
  readonly name: 'V_X' | 'V_Y' | 'V_A' | 'V_FE' | 'V_NO' | 'V_NE';
  readonly flap: string;
  readonly speed: Measure<'kias'>;
}

/** Indicated against calibrated airspeed for one flap setting, both rising. */
export interface Calibration {
  readonly flap: string;
  readonly indicated: { readonly unit: 'kias'; readonly values: readonly number[] };
  readonly calibrated: { readonly unit: 'kcas'; readonly values: readonly number[] };
}

/** What a wind value binds: a limitation binds by the manual, a demonstrated value says what was shown. */
export interface WindValue {
  readonly speed: Measure<'kt' | 'mph' | 'mps'>;
  readonly status: 'limitation' | 'demonstrated';
}

/** What the printed distances already contain; `not stated` is treated as not contained. */
export interface Includes {
  readonly safetyFactor: boolean | 'not stated';
  readonly windAccountability: boolean | 'not stated';
}

/** The conditions the printed figures hold for, where a table has no axis for them. */
export interface AssociatedConditions {
  readonly surface: 'paved';
  readonly surfaceCondition: 'dry';
  readonly slope: Measure<'percent'>;
  /** The greatest mass a table without a mass axis holds for. */
  readonly mass?: Measure<'kg' | 'lb'>;
  /** The highest pressure altitude a table without that axis holds for. */
  readonly pressureAltitude?: Measure<'ftPA'>;
  /** The warmest temperature a table without that axis holds for. */
  readonly temperature?: Measure<'degC' | 'degF'>;
}

/**
 * The manual's own law as it prints it: so many percent for each so much, in a straight line, up to the last value it is
 * printed for. `-10 % for each 9 kt, up to 18 kt` stands here in those very figures.
 */
export interface PrintedLaw<Per extends UnitWord, Last extends UnitWord = Per> {
  /** Negative for what shortens. */
  readonly change: Measure<'percent'>;
  readonly per: Measure<Per>;
  readonly upTo: Measure<Last>;
}

/** A slope law may be printed in percent of the ground roll; it then adds the same metres to roll and distance. */
export interface SlopeLaw extends PrintedLaw<'percent'> {
  readonly percentOf?: 'distance' | 'ground roll';
}

/** The manual's own figure for one surface, in percent of the distance or of the ground roll. */
export interface SurfaceCorrection {
  readonly surface: 'paved' | 'grass' | 'gravel';
  readonly condition: 'dry' | 'wet';
  readonly increase: Measure<'percent'>;
  readonly percentOf: 'distance' | 'ground roll';
}

/** The manual's own corrections; what is absent is taken from the factor set of the request, or has no figure. */
export interface Corrections {
  readonly headwind?: PrintedLaw<'kt'>;
  readonly tailwind?: PrintedLaw<'kt'>;
  /** Above the mass, the pressure altitude or the temperature that the associated conditions state. */
  readonly mass?: PrintedLaw<'kg' | 'lb'>;
  readonly pressureAltitude?: PrintedLaw<'ftPA'>;
  readonly temperature?: PrintedLaw<'degCDifference', 'degC' | 'degF'>;
  readonly surfaces?: readonly SurfaceCorrection[];
  readonly adverseSlope?: SlopeLaw;
  /** What the manual takes off for a slope that helps; used only where the request's policies choose it. */
  readonly favourableSlope?: SlopeLaw;
}

/** What take-off and landing tables have in common. */
export interface DistanceData {
  readonly configuration: string;
  readonly includes: Includes;
  readonly associatedConditions: AssociatedConditions;
  readonly screenHeight: Measure<'ftHeight' | 'mHeight'>;
  /** A chart with a panel of height serves both: the ground roll is read at no height. */
  readonly groundRoll: Figures<'m' | 'ft'>;
  /** Take-off: from the start to the screen height. Landing: from the screen height to the stop. */
  readonly distance: Figures<'m' | 'ft'>;
  readonly corrections: Corrections;
}

/** A take-off table with the speeds that belong to it. */
export interface TakeoffData extends DistanceData {
  readonly liftOffSpeed: Table<'kias'>;
  readonly speedAtScreenHeight: Table<'kias'>;
}

/** A landing table with the approach speed that belongs to it. */
export interface LandingData extends DistanceData {
  readonly approachSpeed: Table<'kias'>;
}

/** Rate of climb with its speed and flap, which come from one table row. */
export interface ClimbData {
  readonly configuration: string;
  /** `initial` begins at the 50 ft point of the take-off; `balked landing` is flown out of a landing. */
  readonly use: 'initial' | 'balked landing';
  readonly flap: string;
  readonly speed: Table<'kias'>;
  readonly rateOfClimb: Figures<'ftPerMin'>;
}

/**
 * Time, fuel and distance to climb, counted from the lowest altitude of the tables, in still air. All three run along
 * pressure altitude, and along mass or the deviation from the standard temperature where the manual does.
 */
export interface ClimbProgressData {
  /** A short word of the document's own. */
  readonly name: string;
  readonly flap: string;
  readonly power: string;
  readonly speed: Table<'kias'>;
  /** The greatest mass that tables without an axis of mass hold for. */
  readonly associatedConditions: { readonly mass?: Measure<'kg' | 'lb'> };
  readonly time: Table<'min'>;
  readonly fuel: Table<FuelUnit>;
  readonly distance: Table<'NM'>;
  /** The manual's own law for air warmer than standard, for tables without an axis of it. */
  readonly aboveStandard?: PrintedLaw<'degCDifference'>;
}

/** What some hazards and notes need to know of the aeroplane itself. */
export interface Airframe {
  readonly wingspan?: Measure<'m' | 'ft'>;
  /** As placarded for the main wheels. */
  readonly mainTyrePressure?: Measure<'psi' | 'hPa'>;
}

/** One aeroplane's figures as its flight manual prints them. */
export interface PerformanceData {
  readonly schema: 'groundroll/performance-data/1';
  readonly identity: { readonly name: string; readonly description?: string };
  readonly provenance: {
    readonly document: string;
    readonly edition: string;
    readonly transcribedBy: string;
    /** YYYY-MM-DD. */
    readonly transcribedOn: string;
    readonly remarks?: string;
  };
  readonly airframe?: Airframe;
  readonly masses: { readonly maximumTakeoff: Measure<'kg' | 'lb'>; readonly maximumLanding: Measure<'kg' | 'lb'> };
  readonly configurations: readonly Configuration[];
  readonly stallSpeeds: readonly StallSpeed[];
  readonly speeds: readonly NamedSpeed[];
  readonly calibrations: readonly Calibration[];
  readonly crosswind: readonly WindValue[];
  readonly tailwind: readonly WindValue[];
  readonly takeoff: readonly TakeoffData[];
  readonly landing: readonly LandingData[];
  readonly climb: readonly ClimbData[];
  readonly climbProgress?: readonly ClimbProgressData[];
  /** Worked examples that the manual prints; `verifyExamples` runs them against these data. */
  readonly examples?: readonly PrintedExample[];
}
