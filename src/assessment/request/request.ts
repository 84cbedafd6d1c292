import type { PerformanceData } from '../../aircraft/index.ts';
import type { FactorSet, FactorSetId, Surface } from '../../distance/index.ts';
import type { Measure } from '../../units/index.ts';
import type { Confirmation } from './policies.ts';

/** Declared distances of one runway direction; where one is not published, the runway's length stands in. */
export interface DeclaredDistances {
  readonly TORA?: Measure<'m' | 'ft'>;
  readonly TODA?: Measure<'m' | 'ft'>;
  readonly ASDA?: Measure<'m' | 'ft'>;
  readonly LDA?: Measure<'m' | 'ft'>;
}

/** One end of the runway: the designator painted there, and what holds for using the runway from there. */
export interface RunwayEnd {
  readonly designator: string;
  /** Bearing of the runway used from this end. */
  readonly direction: Measure<'degTrue' | 'degMagnetic'>;
  /** `designator` where no bearing is known and the painted number stands in; shown as such, with its spread. */
  readonly directionFrom?: 'survey' | 'designator';
  /** Elevation of the surface at this end. */
  readonly elevation: Measure<'ftElevation' | 'mElevation'>;
  readonly declaredDistances?: DeclaredDistances;
  /** From this end to a displaced landing threshold. */
  readonly displacedThreshold?: Measure<'m' | 'ft'>;
}

/** An obstacle beyond one end of the runway. */
export interface Obstacle {
  readonly name: string;
  /** The designator painted at the end beyond which it stands. */
  readonly end: string;
  /** How far beyond that end. */
  readonly beyond: Measure<'m' | 'ft' | 'NM'>;
  /** Elevation of its top; or of the ground it stands on, with its height. */
  readonly topElevation?: Measure<'ftElevation' | 'mElevation'>;
  readonly groundElevation?: Measure<'ftElevation' | 'mElevation'>;
  readonly height?: Measure<'ftHeight' | 'mHeight'>;
  /** From the extended centreline, to either side. It is stated in the result and takes nothing away: assessed as on the centreline. */
  readonly lateralOffset?: Measure<'m' | 'ft'>;
}

/** The runway as it lies, for use from either end. */
export interface Runway {
  readonly aerodrome: string;
  /** The highest point of the aerodrome, to which QNH is related; the higher end where not stated. */
  readonly aerodromeElevation?: Measure<'ftElevation' | 'mElevation'>;
  readonly length: Measure<'m' | 'ft'>;
  readonly surface: Surface;
  readonly ends: readonly [RunwayEnd, RunwayEnd];
  /** An empty list says that there are none; a missing one that nobody has looked. */
  readonly obstacles?: readonly Obstacle[];
}

/** A wind as reported. */
export interface ReportedWind {
  /** Who reports it: this settles the north for METAR and TAF (true) and FAA tower and ATIS (magnetic). */
  readonly source: 'METAR' | 'TAF' | 'FAA tower' | 'FAA ATIS' | 'ICAO ATIS' | 'observed';
  /** Where it blows from; `variable` (VRB), or `not reported`. */
  readonly from: Measure<'degTrue' | 'degMagnetic'> | 'variable' | 'not reported';
  readonly speed: Measure<'kt' | 'mph' | 'mps'>;
  readonly gust?: Measure<'kt' | 'mph' | 'mps'>;
  /** The directions between which it varies, clockwise. */
  readonly range?: {
    readonly from: Measure<'degTrue' | 'degMagnetic'>;
    readonly to: Measure<'degTrue' | 'degMagnetic'>;
  };
}

/** The weather of the hour. */
export interface Weather {
  readonly wind: ReportedWind;
  readonly temperature: Measure<'degC' | 'degF'>;
  readonly dewPoint?: Measure<'degC' | 'degF'>;
  /** One of the two pressures, each by its own key. */
  readonly qnh?: Measure<'hPa' | 'inHg'>;
  readonly qfe?: Measure<'hPa' | 'inHg'>;
}

/** The magnetic variation at the aerodrome, charted or from the caller's own model. */
export interface VariationGiven {
  readonly value: Measure<'degEast'>;
  /** Where it comes from, with its date: `chart, 2026`. */
  readonly source: string;
}

/** Choices that differ from the defaults in `policyDefaults`. */
export interface PoliciesGiven {
  readonly headwindShare?: Measure<'ratio'>;
  readonly tailwindShare?: Measure<'ratio'>;
  readonly demonstratedCrosswind?: 'limit' | 'information';
  readonly favourableSlope?: 'no credit' | 'of the manual';
  readonly favourableEdge?: 'read-at-edge' | 'refuse';
  readonly betweenPrintedValues?: 'interpolate' | 'next-worse';
  readonly humidity?: 'information' | 'virtual temperature';
  readonly unreportedGust?: 'mean' | 'mean plus 10 kt';
  readonly speedAdditionInDistance?: 'paid for' | 'ignored';
  readonly verticalClearance?: Measure<'ftHeight' | 'mHeight'>;
  readonly approachClearance?: Measure<'ftHeight' | 'mHeight'>;
  readonly approachAngle?: Measure<'deg'>;
  readonly reactionTime?: Measure<'s'>;
  readonly firstPrinciples?: 'information' | 'more adverse';
  /** For factors that the library only recalls. */
  readonly confirmations?: readonly Confirmation[];
}

/** What both requests ask. */
export interface RequestBase {
  readonly performanceData: PerformanceData;
  readonly mass: Measure<'kg' | 'lb'>;
  /** May be absent only where the data have a single configuration for the phase. */
  readonly configuration?: string;
  readonly runway: Runway;
  /** The designator painted at the end from which the runway is used. */
  readonly runwayInUse: string;
  readonly weather: Weather;
  /** Needed where the wind and the runway are stated against different norths. */
  readonly variation?: VariationGiven;
  /** A set of the library by its word, or the user's own as data. */
  readonly factorSet: FactorSetId | FactorSet;
  /** `none` must be chosen; the headline then says so. */
  readonly safetyFactor?: 'of the set' | 'none';
  readonly personalLimits?: { readonly crosswind?: Measure<'kt'>; readonly tailwind?: Measure<'kt'> };
  readonly policies?: PoliciesGiven;
}

/** Everything that a take-off assessment needs. */
export interface TakeoffRequest extends RequestBase {
  readonly schema: 'groundroll/takeoff-request/1';
  /** Runway used up in lining up. */
  readonly lineUpLoss?: Measure<'m' | 'ft'>;
  /** Above the manual's lift-off speed; lengthens the ground roll. */
  readonly liftOffSpeedAddition?: Measure<'kt'>;
  /** Braking coefficient of the surface, for the latest reject point; there is no default. */
  readonly brakingCoefficient?: Measure<'ratio'>;
}

/** Everything that a landing assessment needs. */
export interface LandingRequest extends RequestBase {
  readonly schema: 'groundroll/landing-request/1';
  /** Above the published approach speed; half the gust increment where not stated. */
  readonly approachSpeedAddition?: Measure<'kt'>;
  /** By how much the threshold is passed above the height that the landing distance is printed for. */
  readonly excessHeight?: Measure<'ftHeight' | 'mHeight'>;
}
