import {
  assessLanding,
  assessTakeoff,
  type LandingAssessment,
  limitsOfUse,
  type Sentence,
  type TakeoffAssessment,
  type Verdict,
  verdictInWords,
} from '../../assessment/index.ts';
import type { ReadResult } from '../../documents/index.ts';
import { asGiven, decimalsGiven } from '../../units/as-given.ts';
import { version } from '../../version.ts';
import { type StudySentence, studySentence } from '../sentences.ts';
import { capital, inWords, overallVerdict } from '../words.ts';
import { type BothEnds, prefixed, readBothEnds } from './read-request.ts';
import type { DepartureAndArrivalRequest } from './request.ts';

/** Both ends of a flight, or in and out of one field, each with its whole assessment. */
export interface DepartureAndArrivalAssessment {
  readonly schema: 'groundroll/departure-and-arrival-assessment/1';
  readonly version: string;
  readonly request: DepartureAndArrivalRequest;
  /** Any outside is outside; else any undetermined is undetermined; else within. */
  readonly verdict: Verdict;
  /** In the order in which they are flown. */
  readonly sentences: readonly (StudySentence | Sentence)[];
  readonly departure: TakeoffAssessment;
  readonly arrival: LandingAssessment;
  readonly notAssessed: readonly string[];
  readonly limitsOfUse: readonly string[];
}

/**
 * Assesses both ends of a flight: a take-off, then a landing with the mass less the fuel burnt. Or in and out of the same
 * field: a landing now, then a take-off later at another temperature.
 *
 * It reads the request itself and never throws for what a pilot may enter: a request with faults gives all of them.
 *
 * @param request - a request for both; plain JSON. What the second leaves out is that of the first.
 * @returns both assessments with an overall verdict, or the faults of the request.
 *
 * @example
 * assessDepartureAndArrival({ schema: 'groundroll/departure-and-arrival-request/1' } as never).ok // => false
 */
export function assessDepartureAndArrival(
  request: DepartureAndArrivalRequest,
): ReadResult<DepartureAndArrivalAssessment> {
  const read = readBothEnds(request);
  if (!read.ok) return read;
  const departure = assessTakeoff(read.value.departure);
  if (!departure.ok) return { ok: false, faults: prefixed('departure', departure) };
  const arrival = assessLanding(read.value.arrival);
  if (!arrival.ok) return { ok: false, faults: prefixed('arrival', arrival) };
  const verdict = overallVerdict([departure.value.verdict, arrival.value.verdict]);
  return {
    ok: true,
    value: {
      schema: 'groundroll/departure-and-arrival-assessment/1',
      version,
      request: read.value.request,
      verdict,
      sentences: sentencesOf(read.value, verdict, departure.value, arrival.value),
      departure: departure.value,
      arrival: arrival.value,
      notAssessed: [between[read.value.request.sequence]],
      limitsOfUse,
    },
  };
}

const between = {
  'departure then arrival': 'the flight between: route, fuel in reserve, another aerodrome to land at',
  'arrival then departure': 'the stay between: wind, surface and load may change with the temperature',
} as const;

function sentencesOf(
  { request, departure, arrival }: BothEnds,
  verdict: Verdict,
  takeoff: TakeoffAssessment,
  landing: LandingAssessment,
): (StudySentence | Sentence)[] {
  const out = `take-off on ${departure.runwayInUse} at ${departure.runway.aerodrome}`;
  const down = `landing on ${arrival.runwayInUse} at ${arrival.runway.aerodrome}`;
  const isFlight = request.sequence === 'departure then arrival';
  const [first, second] = isFlight ? [out, down] : [down, out];
  const { mass: landed } = arrival;
  // Less a burn in another unit it may have a long tail.
  const landingMass = inWords(landed, decimalsGiven(landed.value) === 0 ? 1 : 0.1, 'up');
  const masses = { takeoff: asGiven(departure.mass), landing: landingMass };
  const head = studySentence('both-ends', { first: capital(first), second, verdict: verdictInWords(verdict) });
  const verdicts = [takeoff, landing].map(({ headline }) => headline[0] as Sentence);
  if (request.sequence === 'departure then arrival') {
    const { fuelBurnt } = request;
    const mass =
      fuelBurnt === undefined
        ? studySentence('mass-without-burn', masses)
        : studySentence('mass-less-burn', { ...masses, burn: asGiven(fuelBurnt) });
    return [head, mass, ...verdicts];
  }
  const { departureTemperature } = request;
  const trap = landing.verdict === 'within' && takeoff.verdict !== 'within';
  return [
    head,
    studySentence(request.departure.mass === undefined ? 'mass-of-departure-kept' : 'mass-of-departure', masses),
    ...(departureTemperature === undefined
      ? []
      : [
          studySentence('departure-temperature', {
            now: asGiven(arrival.weather.temperature),
            later: asGiven(departureTemperature),
          }),
        ]),
    ...verdicts.reverse(),
    ...(trap ? [studySentence('in-but-not-out', { verdict: verdictInWords(takeoff.verdict) })] : []),
  ];
}
