import type { LandingRequest, TakeoffRequest } from '../../assessment/index.ts';
import type { Measure } from '../../units/index.ts';

/** Both ends of a flight: a take-off, then a landing of the same aeroplane. */
export interface DepartureThenArrivalRequest {
  readonly schema: 'groundroll/departure-and-arrival-request/1';
  readonly sequence: 'departure then arrival';
  readonly departure: TakeoffRequest;
  /** What is left out here is that of the departure: the performance data, and the mass, less the fuel burnt. */
  readonly arrival: Omit<LandingRequest, 'performanceData' | 'mass'> &
    Partial<Pick<LandingRequest, 'performanceData' | 'mass'>>;
  /** Between the two. Where it is not stated none is burnt, and the result says so. */
  readonly fuelBurnt?: Measure<'kg' | 'lb'>;
}

/** In and out of the same field: a landing now, and a departure later, when it may be warmer. */
export interface ArrivalThenDepartureRequest {
  readonly schema: 'groundroll/departure-and-arrival-request/1';
  readonly sequence: 'arrival then departure';
  readonly arrival: LandingRequest;
  /** What is left out here is that of the arrival; the end of the runway in use and the temperature are stated. */
  readonly departure: Partial<TakeoffRequest> & Pick<TakeoffRequest, 'schema' | 'runwayInUse'>;
  /** Of the air at the departure; the rest of the weather is that of the arrival. Not beside a weather of its own. */
  readonly departureTemperature?: Measure<'degC' | 'degF'>;
}

/** Two assessments that belong together; plain JSON. */
export type DepartureAndArrivalRequest = DepartureThenArrivalRequest | ArrivalThenDepartureRequest;
