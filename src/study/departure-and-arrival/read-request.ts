import {
  type LandingRequest,
  readLandingRequest,
  readTakeoffRequest,
  type TakeoffRequest,
} from '../../assessment/index.ts';
import { type Fault, type ReadResult, readDocument } from '../../documents/index.ts';
import { asGiven } from '../../units/as-given.ts';
import type { Measure } from '../../units/index.ts';
import { inUnit, plain } from '../inputs/study-input.ts';
import { inWords } from '../words.ts';
import type {
  ArrivalThenDepartureRequest,
  DepartureAndArrivalRequest,
  DepartureThenArrivalRequest,
} from './request.ts';
import { departureAndArrivalRequestSchema } from './request-schema.ts';

/** Both requests as they will be assessed, with everything in place. */
export interface BothEnds {
  readonly request: DepartureAndArrivalRequest;
  readonly departure: TakeoffRequest;
  readonly arrival: LandingRequest;
}

/**
 * Reads a request for both ends of a flight, or for in and out of one field: all faults at once, each with its path from
 * the top; never a throw.
 *
 * @example
 * readDepartureAndArrivalRequest({ schema: 'groundroll/takeoff-request/1' }).ok // => false
 */
export function readDepartureAndArrivalRequest(json: unknown): ReadResult<DepartureAndArrivalRequest> {
  const read = readBothEnds(json);
  return read.ok ? { ok: true, value: read.value.request } : read;
}

/** Reads the request and completes the second of the two from the first. */
export function readBothEnds(json: unknown): ReadResult<BothEnds> {
  const read = readDocument(departureAndArrivalRequestSchema, json);
  if (!read.ok) return read;
  const request = read.value as DepartureAndArrivalRequest;
  const faults = request.sequence === 'departure then arrival' ? flightFaults(request) : inAndOutFaults(request);
  const both =
    request.sequence === 'departure then arrival'
      ? { departure: request.departure, arrival: arrivalOf(request) }
      : { departure: departureOf(request), arrival: request.arrival };
  const departure = readTakeoffRequest(both.departure);
  const arrival = readLandingRequest(both.arrival);
  if (departure.ok && arrival.ok && faults.length === 0)
    return { ok: true, value: { request, departure: departure.value, arrival: arrival.value } };
  const first = request.sequence === 'departure then arrival' ? 'departure' : 'arrival';
  const placed = { departure: prefixed('departure', departure), arrival: prefixed('arrival', arrival) };
  // What the second inherits from the first is faulty once, where it stands.
  const stated = request[first === 'departure' ? 'arrival' : 'departure'] as object;
  const own = placed[first === 'departure' ? 'arrival' : 'departure'].filter(
    ({ path, message }) =>
      (path.split(/[.[]/)[1] ?? '') in stated ||
      !placed[first].some((each) => each.message === message && tail(each.path) === tail(path)),
  );
  const inOrder = first === 'departure' ? [...placed.departure, ...own] : [...placed.arrival, ...own];
  return { ok: false, faults: [...faults, ...inOrder] };
}

/** Faults of one end, with their paths from the top. */
export function prefixed(end: 'departure' | 'arrival', read: ReadResult<unknown>): Fault[] {
  if (read.ok) return [];
  return read.faults.map(({ path, message }) => ({ path: path === '' ? end : `${end}.${path}`, message }));
}

/** A path without the end that it stands in. */
function tail(path: string): string {
  return path.replace(/^(departure|arrival)\.?/, '');
}

/** The mass with which the aeroplane arrives, in the unit in which it departs. */
export function landingMass({ departure, fuelBurnt }: DepartureThenArrivalRequest): Measure<'kg' | 'lb'> {
  const { value, unit } = departure.mass;
  return { value: fuelBurnt === undefined ? value : plain(value - inUnit(fuelBurnt, unit)), unit };
}

function arrivalOf(request: DepartureThenArrivalRequest): LandingRequest {
  const { departure, arrival } = request;
  // The mass may be missing from both; the readers of the two then have their word.
  const mass = departure.mass === undefined ? undefined : landingMass(request);
  return {
    performanceData: departure.performanceData,
    ...(mass === undefined ? {} : { mass }),
    ...arrival,
  } as LandingRequest;
}

function departureOf({ arrival, departure, departureTemperature }: ArrivalThenDepartureRequest): TakeoffRequest {
  const { schema: _, configuration: __, approachSpeedAddition: ___, excessHeight: ____, ...shared } = arrival;
  const weather =
    departureTemperature === undefined ? arrival.weather : { ...arrival.weather, temperature: departureTemperature };
  return { ...shared, weather, ...departure };
}

/** What no part can see by itself. */
function flightFaults(request: DepartureThenArrivalRequest): Fault[] {
  const { departure, arrival, fuelBurnt } = request;
  const faults: Fault[] = [];
  if ('departureTemperature' in request) {
    faults.push({
      path: 'departureTemperature',
      message: 'belongs to an arrival then departure; the departure has its weather',
    });
  }
  // Without a mass the reader of the departure has its own word.
  if (departure.mass === undefined) return faults;
  const { unit, value } = departure.mass;
  const landing = landingMass(request);
  if (fuelBurnt !== undefined && landing.value <= 0) {
    faults.push({
      path: 'fuelBurnt',
      message: `${asGiven(fuelBurnt)} is not less than the take-off mass, ${value} ${unit}`,
    });
  }
  const stated = arrival.mass;
  if (stated !== undefined && Math.abs(inUnit(stated, unit) - landing.value) > 0.5) {
    faults.push({
      path: 'arrival.mass',
      message: `${inWords(stated)} is not the take-off mass less the fuel burnt, ${inWords(landing)}; leave it out or state the burn`,
    });
  }
  return [...faults, ...aeroplaneFaults(departure.performanceData, arrival.performanceData, 'arrival')];
}

function inAndOutFaults(request: ArrivalThenDepartureRequest): Fault[] {
  const { departure, arrival, departureTemperature } = request;
  const faults: Fault[] = [];
  if ('fuelBurnt' in request)
    faults.push({ path: 'fuelBurnt', message: 'belongs to a departure then arrival; state the mass of the departure' });
  if ((departure.weather === undefined) === (departureTemperature === undefined)) {
    faults.push({
      path: 'departureTemperature',
      message: 'one of the temperature at the departure and a weather of its own is needed',
    });
  }
  const field = arrival.runway?.aerodrome;
  if (departure.runway !== undefined && departure.runway.aerodrome !== field) {
    faults.push({
      path: 'departure.runway.aerodrome',
      message: `"${departure.runway.aerodrome}" is not the field of the arrival, "${field}"`,
    });
  }
  return [...faults, ...aeroplaneFaults(arrival.performanceData, departure.performanceData, 'departure')];
}

type Data = TakeoffRequest['performanceData'] | undefined;

/** Both ends belong to one aeroplane. */
function aeroplaneFaults(first: Data, second: Data, end: 'departure' | 'arrival'): Fault[] {
  if (first === undefined || second === undefined || first.identity.name === second.identity.name) return [];
  const message = `"${second.identity.name}" is not the aeroplane of the other end, "${first.identity.name}"`;
  return [{ path: `${end}.performanceData.identity.name`, message }];
}
