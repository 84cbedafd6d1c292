import type { ReadResult } from '../documents/index.ts';
import { DomainError } from '../units/index.ts';
import { explainLanding, landingAdditionOf, landingSituationOf } from './assess-landing.ts';
import { explainTakeoff, takeoffAdditionOf, takeoffSituationOf } from './assess-takeoff.ts';
import { type Changes, demandChanges } from './changes.ts';
import { demandConditions } from './demand-conditions.ts';
import { guarded } from './guarded.ts';
import { type Judged, overall, type Verdict } from './kernel/criterion.ts';
import type { Overrides } from './kernel/distance-chain.ts';
import { judgeLandingDistance, landingFigures } from './kernel/landing-kernel.ts';
import { landingAtMasses } from './kernel/landing-situation.ts';
import { callThrough } from './kernel/step.ts';
import { judgeTakeoffDistance, takeoffFigures } from './kernel/takeoff-kernel.ts';
import { takeoffAtMasses } from './kernel/takeoff-situation.ts';
import { type Conditions, conditionsOf } from './request/conditions.ts';
import { type North, northOf, northOfWind } from './request/north.ts';
import { readLandingRequest, readTakeoffRequest, readWeather } from './request/read-request.ts';
import type { LandingRequest, TakeoffRequest, Weather } from './request/request.ts';
import type { Situation } from './request/situation.ts';
import type { LandingAssessment, TakeoffAssessment } from './result/assessment.ts';

/** The verdicts of one weather, without words. */
export interface Comparison {
  readonly verdict: Verdict;
  readonly criteria: readonly Pick<
    Judged,
    | 'id'
    | 'subject'
    | 'unit'
    | 'limitStatus'
    | 'verdict'
    | 'value'
    | 'limit'
    | 'margin'
    | 'unroundedValue'
    | 'unroundedMargin'
  >[];
  /** Why the conditions were refused, where they were; the verdict is then undetermined. */
  readonly refused?: DomainError['detail'];
}

/** A situation that waits for weathers: the same computation as the full assessment, with and without its working. */
export interface Prepared<T> {
  /** What every wind must be stated against: the north of the wind in the request, or of the runway where it has none. */
  readonly north: North;
  /** Fast: verdicts and figures. */
  compare(conditions: Conditions, changes?: Changes): Comparison;
  /** The distance criterion alone, as `compare` gives it; none where the conditions are refused. */
  compareDistance(conditions: Conditions, changes?: Changes): Comparison['criteria'][number] | undefined;
  /** Explained: the same figures with words and working. */
  assess(weather: Weather): ReadResult<T>;
}

const unchanged: Changes = {};

/**
 * Prepares a take-off for many weathers on one runway with one mass.
 *
 * @param request - a take-off request; its weather is the first of many.
 * @returns the prepared take-off, or the faults of the request.
 *
 * @example
 * prepareTakeoff({ schema: 'groundroll/takeoff-request/1' } as never).ok // => false
 */
export function prepareTakeoff(request: TakeoffRequest): ReadResult<Prepared<TakeoffAssessment>> {
  const read = readTakeoffRequest(request);
  if (!read.ok) return read;
  const situation = takeoffSituationOf(read.value);
  const atMasses = takeoffAtMasses(situation, takeoffAdditionOf(read.value));
  const judge: Judge = (conditions, changes) => {
    const { mass_kg } = changes;
    const loaded = mass_kg === undefined ? situation : atMasses.whole(mass_kg);
    return takeoffFigures(callThrough, loaded, conditions, overridesOf(changes)).judged;
  };
  const judgeDistance: Judge = (conditions, changes) => {
    const { mass_kg } = changes;
    const loaded = mass_kg === undefined ? situation : atMasses.distanceAlone(mass_kg);
    return [judgeTakeoffDistance(loaded, conditions, overridesOf(changes))];
  };
  return {
    ok: true,
    value: {
      north: northOf(read.value),
      compare: (conditions, changes = unchanged) => comparison(conditions, situation, changes, judge),
      compareDistance: (conditions, changes = unchanged) =>
        comparison(conditions, situation, changes, judgeDistance).criteria[0],
      assess: (weather) =>
        again(read.value, weather, readTakeoffRequest, (each) =>
          explainTakeoff(each, situation, conditionsOf(each.weather, situation.policies)),
        ),
    },
  };
}

/**
 * Prepares a landing for many weathers on one runway with one mass.
 *
 * @param request - a landing request; its weather is the first of many.
 * @returns the prepared landing, or the faults of the request.
 *
 * @example
 * prepareLanding({ schema: 'groundroll/landing-request/1' } as never).ok // => false
 */
export function prepareLanding(request: LandingRequest): ReadResult<Prepared<LandingAssessment>> {
  const read = readLandingRequest(request);
  if (!read.ok) return read;
  const situation = landingSituationOf(read.value);
  const addition_kt = landingAdditionOf(read.value);
  const atMass = landingAtMasses(situation);
  const at = (mass_kg: number | undefined) => (mass_kg === undefined ? situation : atMass(mass_kg));
  const judge: Judge = (conditions, changes) =>
    landingFigures(callThrough, at(changes.mass_kg), conditions, addition_kt, overridesOf(changes)).judged;
  const judgeDistance: Judge = (conditions, changes) => [
    judgeLandingDistance(at(changes.mass_kg), conditions, addition_kt, overridesOf(changes)),
  ];
  return {
    ok: true,
    value: {
      north: northOf(read.value),
      compare: (conditions, changes = unchanged) => comparison(conditions, situation, changes, judge),
      compareDistance: (conditions, changes = unchanged) =>
        comparison(conditions, situation, changes, judgeDistance).criteria[0],
      assess: (weather) =>
        again(read.value, weather, readLandingRequest, (each) =>
          explainLanding(each, situation, conditionsOf(each.weather, situation.policies)),
        ),
    },
  };
}

type Judge = (conditions: Conditions, changes: Changes) => readonly Judged[];

const noOverrides: Overrides = {};

/** The factors among the changes; the mass is a matter of the situation. */
function overridesOf({ surfaceFactor, techniqueFactor }: Changes): Overrides {
  if (surfaceFactor === undefined && techniqueFactor === undefined) return noOverrides;
  return { surfaceFactor, techniqueFactor };
}

function comparison(conditions: Conditions, { policies }: Situation, changes: Changes, judge: Judge): Comparison {
  try {
    // Nothing changed is the case of a sweep through weathers.
    if (changes !== unchanged) demandChanges(changes);
    demandConditions(conditions, policies.humidity === 'virtual temperature');
    const criteria = judge(conditions, changes);
    return { verdict: overall(criteria), criteria };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { verdict: 'undetermined', criteria: [], refused: error.detail };
  }
}

/** The request again with another weather, which must state its wind against the same north as the first. */
function again<Q extends TakeoffRequest | LandingRequest, T>(
  request: Q,
  weather: Weather,
  readRequest: (json: unknown) => ReadResult<Q>,
  explain: (request: Q) => T,
): ReadResult<T> {
  const readAgain = readWeather(weather);
  if (!readAgain.ok) return readAgain;
  const first = northOf(request);
  const now = northOfWind(readAgain.value.wind);
  if (now !== undefined && now !== first) {
    return {
      ok: false,
      faults: [
        {
          path: typeof weather.wind.from === 'string' ? 'weather.wind.range' : 'weather.wind.from',
          message: `the take-off or landing is prepared for winds in ${first}, this one is in ${now}`,
        },
      ],
    };
  }
  const read = readRequest({ ...request, weather: readAgain.value });
  return read.ok ? guarded(() => explain(read.value)) : read;
}
