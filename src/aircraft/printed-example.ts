import type { Measure } from '../units/index.ts';
import type { FuelUnit } from './table.ts';

/** A worked example that the manual prints, by which the transcription of its figures is verified. */
export interface PrintedExample {
  /** Where the manual prints it. */
  readonly locator: string;
  /** The configuration of the data; for a climb progress its name. */
  readonly configuration: string;
  readonly of: 'takeoff' | 'landing' | 'climb' | 'climb progress';
  /** The conditions of the example; the wind is the whole component, without any accountability. */
  readonly at: {
    readonly mass?: Measure<'kg' | 'lb'>;
    /** Where a climb progress begins; `pressureAltitude` is where it leads. */
    readonly from?: Measure<'ftPA'>;
    readonly pressureAltitude?: Measure<'ftPA'>;
    readonly densityAltitude?: Measure<'ftDA'>;
    readonly temperature?: Measure<'degC' | 'degF'>;
    readonly isaDeviation?: Measure<'degCDifference'>;
    /** Positive a headwind, negative a tailwind; calm where not stated. */
    readonly headwind?: Measure<'kt'>;
    /** Positive uphill in the direction of use; level where not stated. */
    readonly slope?: Measure<'percent'>;
  };
  readonly printed: {
    readonly groundRoll?: Measure<'m' | 'ft'>;
    readonly distance?: Measure<'m' | 'ft'>;
    readonly rateOfClimb?: Measure<'ftPerMin'>;
    readonly time?: Measure<'min'>;
    readonly fuel?: Measure<FuelUnit>;
    readonly distanceFlown?: Measure<'NM'>;
  };
  /** The most that a reading may differ, in the printed unit: half the last digit, or what a chart can be read to. */
  readonly tolerance: number;
}
