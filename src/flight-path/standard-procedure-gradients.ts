import type { Access, SourceId } from '../sources/index.ts';
import type { Measure } from '../units/index.ts';

/** The climb gradient that an instrument departure assumes where none is published. */
export interface StandardProcedureGradient {
  /** Unique among all rows. */
  readonly id: string;
  readonly source: SourceId;
  readonly locator: string;
  readonly access: Access;
  readonly gradient: Measure;
  /** Where the gradient starts: a height over the departure end of the runway. */
  readonly startsAt: Measure;
}

/**
 * Standard climb gradients of instrument departures, for comparison with what a procedure asks. Like the procedure
 * gradients themselves they never enter an obstacle criterion of a light aeroplane.
 */
export const standardProcedureGradients: readonly StandardProcedureGradient[] = [
  {
    id: 'united-states',
    source: 'faa-iph',
    locator: 'ch. 1, design criteria; also AIM 5-2-9',
    access: 'read',
    gradient: { value: 200, unit: 'ftPerNM' },
    startsAt: { value: 35, unit: 'ftHeight' },
  },
  {
    id: 'icao',
    source: 'icao-8168',
    locator: 'Vol. II, I-3-2, 2.2.6',
    access: 'read',
    gradient: { value: 3.3, unit: 'percent' },
    startsAt: { value: 5, unit: 'mHeight' },
  },
  {
    id: 'icao-helicopters',
    source: 'icao-8168',
    locator: 'Vol. II, I-3-2, 2.2.6, Category H',
    access: 'read',
    gradient: { value: 5, unit: 'percent' },
    startsAt: { value: 5, unit: 'mHeight' },
  },
];
