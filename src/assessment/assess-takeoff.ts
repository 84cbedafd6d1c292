import type { ReadResult } from '../documents/index.ts';
import { version } from '../version.ts';
import { airOf, windOf } from './air-and-wind.ts';
import { breakEvens, guarded, type Variations } from './assess.ts';
import type { TakeoffAssessment } from './assessment.ts';
import { type Conditions, conditionsOf } from './conditions.ts';
import { overall } from './criterion.ts';
import { directionSpread } from './direction-spread.ts';
import { limitsOfUse, notAssessed } from './limits-of-use.ts';
import {
  breakEvenFound,
  commonHazards,
  commonNotes,
  criterionOf,
  headlineOf,
  markFound,
  namedSpeeds,
  speedFound,
  stairsOf,
  worded,
  workingOf,
} from './present.ts';
import { readTakeoffRequest } from './read-request.ts';
import type { Reason } from './reason.ts';
import type { TakeoffRequest } from './request.ts';
import { takeoffSafety } from './safety.ts';
import { windAdvice } from './shared-criteria.ts';
import { inUnit, situationOf } from './situation.ts';
import { callThrough, TraceRecorder } from './step.ts';
import { type TakeoffSituation, takeoffChain, takeoffFigures, withTakeoffSpeeds } from './takeoff-kernel.ts';
import { takeoffMarks } from './takeoff-marks.ts';

/**
 * Assesses a take-off: the distance needed on this surface, slope and wind with its margin, the climb-out over the
 * obstacles, crosswind and tailwind against every limit, and the marks on the ground, with the working.
 *
 * It reads the request itself and never throws for what a pilot may enter: a request with faults gives all of them.
 *
 * @param request - a take-off request; plain JSON.
 * @returns the assessment, or the faults of the request.
 *
 * @example
 * assessTakeoff({ schema: 'groundroll/takeoff-request/1' } as never).ok // => false
 */
export function assessTakeoff(request: TakeoffRequest): ReadResult<TakeoffAssessment> {
  const read = readTakeoffRequest(request);
  if (!read.ok) return read;
  return guarded(() => explainTakeoff(read.value, takeoffSituationOf(read.value), conditionsOf(read.value.weather)));
}

/** Settles what the weather does not change. */
export function takeoffSituationOf(request: TakeoffRequest): TakeoffSituation {
  return withTakeoffSpeeds(situationOf(request), additionOf(request));
}

function additionOf(request: TakeoffRequest): number {
  return request.liftOffSpeedAddition === undefined ? 0 : inUnit(request.liftOffSpeedAddition, 'kt');
}

/** The explained assessment of a request that was read without faults. */
export function explainTakeoff(
  request: TakeoffRequest,
  situation: TakeoffSituation,
  conditions: Conditions,
): TakeoffAssessment {
  const r = new TraceRecorder();
  const figures = takeoffFigures(r, situation, conditions);
  const { air, wind, chain, safety, judged } = figures;
  const braking = request.brakingCoefficient === undefined ? undefined : inUnit(request.brakingCoefficient, 'ratio');
  const marks = takeoffMarks(r, situation, figures, braking);
  const advice = windAdvice(r, situation, wind, judged);
  const stairs = stairsOf(chain, safety.factor, safety.available_m);
  const spread = directionSpread(situation, conditions, (at) => distanceAt(situation, at));
  const found = breakEvens(situation, conditions, variationsOf(request, situation, conditions));
  const surface = found.find(({ quantity }) => quantity === 'surface factor');
  const hint: Reason[] =
    surface?.value !== undefined && safety.judged.verdict === 'undetermined'
      ? [{ code: 'break-even-surface', parameters: { factor: surface.value } }]
      : [];
  return {
    schema: 'groundroll/takeoff-assessment/1',
    version,
    request,
    verdict: overall(judged),
    headline: headlineOf(situation, conditions, air, chain, judged, [...chain.used, ...safety.used]),
    reasons: worded([...judged.flatMap(({ reasons }) => reasons), ...hint]),
    criteria: judged.map(criterionOf),
    ...(stairs === undefined ? {} : { stairs }),
    breakEvens: found.map(breakEvenFound),
    marks: marks.map(markFound),
    speeds: [
      ...speedFound('lift-off', situation.liftOff),
      ...speedFound('at 50 ft', situation.atScreen),
      ...namedSpeeds(situation),
    ],
    advice: worded(advice),
    hazards: worded(commonHazards(situation, conditions, wind)),
    dataNotes: worded([...commonNotes(situation, conditions, air, wind), ...spread]),
    notAssessed: notAssessed(situation.runway.ahead === undefined ? ['obstacles'] : []),
    limitsOfUse,
    trace: workingOf(r.trace),
  };
}

function distanceAt(situation: TakeoffSituation, conditions: Conditions) {
  const air = airOf(callThrough, situation, conditions);
  const wind = windOf(callThrough, situation, conditions);
  return takeoffSafety(callThrough, situation, takeoffChain(callThrough, situation, air, wind.used_kt)).judged;
}

function variationsOf(request: TakeoffRequest, situation: TakeoffSituation, conditions: Conditions): Variations {
  const r = callThrough;
  const air = airOf(r, situation, conditions);
  const { used_kt } = windOf(r, situation, conditions);
  return {
    wind: (wind_kt) => takeoffSafety(r, situation, takeoffChain(r, situation, air, used_kt, { wind_kt })).judged,
    surface: (surfaceFactor) =>
      takeoffSafety(r, situation, takeoffChain(r, situation, air, used_kt, { surfaceFactor })).judged,
    mass: (mass_kg) => {
      const heavier = withTakeoffSpeeds({ ...situation, mass_kg }, additionOf(request));
      return takeoffSafety(r, heavier, takeoffChain(r, heavier, air, used_kt)).judged;
    },
    temperature: (at) => distanceAt(situation, at),
  };
}
