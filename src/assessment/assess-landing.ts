import type { LandingData } from '../aircraft/index.ts';
import type { ReadResult } from '../documents/index.ts';
import { version } from '../version.ts';
import { breakEvens, guarded, type Variations } from './assess.ts';
import type { LandingAssessment } from './assessment.ts';
import { type Conditions, conditionsOf } from './conditions.ts';
import { type Judged, overall } from './criterion.ts';
import { directionSpread } from './direction-spread.ts';
import { judgeLandingDistance, type LandingSituation, landingFigures, landingMarks } from './landing-kernel.ts';
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
import { readLandingRequest } from './read-request.ts';
import type { Reason } from './reason.ts';
import type { LandingRequest } from './request.ts';
import { windAdvice } from './shared-criteria.ts';
import { inUnit, situationOf } from './situation.ts';
import { TraceRecorder } from './step.ts';

/**
 * Assesses a landing: the distance needed on this surface, slope and wind with its margin, what obstacles on the
 * approach take off the distance available, the wind against every limit, and the marks on the ground, with the working.
 *
 * It reads the request itself and never throws for what a pilot may enter: a request with faults gives all of them.
 *
 * @param request - a landing request; plain JSON.
 * @returns the assessment, or the faults of the request.
 *
 * @example
 * assessLanding({ schema: 'groundroll/landing-request/1' } as never).ok // => false
 */
export function assessLanding(request: LandingRequest): ReadResult<LandingAssessment> {
  const read = readLandingRequest(request);
  if (!read.ok) return read;
  return guarded(() => explainLanding(read.value, landingSituationOf(read.value), conditionsOf(read.value.weather)));
}

/** Settles what the weather does not change. */
export function landingSituationOf(request: LandingRequest): LandingSituation {
  const situation = situationOf(request);
  return { ...situation, table: situation.table as LandingData | undefined };
}

/** The speed addition that a request asks for; none where the gust increment decides. */
export function landingAdditionOf(request: LandingRequest): number | undefined {
  return request.approachSpeedAddition === undefined ? undefined : inUnit(request.approachSpeedAddition, 'kt');
}

/** The explained assessment of a request that was read without faults. */
export function explainLanding(
  request: LandingRequest,
  situation: LandingSituation,
  conditions: Conditions,
): LandingAssessment {
  const r = new TraceRecorder();
  const addition_kt = landingAdditionOf(request);
  const figures = landingFigures(r, situation, conditions, addition_kt);
  const { air, wind, chain, judged } = figures;
  const marks = landingMarks(r, situation, figures);
  const advice = windAdvice(r, situation, wind, judged);
  const stairs = stairsOf(chain, figures.factor, figures.available_m);
  const distanceAt = (at: Conditions): Judged => judgeLandingDistance(situation, at, addition_kt, {});
  const found = breakEvens(situation, conditions, variationsOf(situation, conditions, addition_kt));
  const surface = found.find(({ quantity }) => quantity === 'surface factor');
  const isOpen = judged.some(({ id, verdict }) => id === 'landing-distance' && verdict === 'undetermined');
  const hint: Reason[] =
    surface?.value !== undefined && isOpen
      ? [{ code: 'break-even-surface', parameters: { factor: surface.value } }]
      : [];
  const { ahead } = situation.runway;
  const noGoAround = (ahead ?? []).length > 0 && situation.climb === undefined;
  const hazards = commonHazards(situation, conditions, wind);
  if (noGoAround) hazards.push({ code: 'hazard-no-go-around', parameters: {} });
  return {
    schema: 'groundroll/landing-assessment/1',
    version,
    request,
    verdict: overall(judged),
    headline: headlineOf(situation, conditions, air, chain, judged, chain.used),
    reasons: worded([...judged.flatMap(({ reasons }) => reasons), ...hint]),
    criteria: judged.map(criterionOf),
    ...(stairs === undefined ? {} : { stairs }),
    breakEvens: found.map(breakEvenFound),
    marks: marks.map(markFound),
    speeds: [...speedFound('approach', figures.approach), ...namedSpeeds(situation)],
    advice: worded(advice),
    hazards: worded(hazards),
    dataNotes: worded([
      ...commonNotes(situation, conditions, air, wind),
      ...directionSpread(situation, conditions, distanceAt),
    ]),
    notAssessed: notAssessed([
      ...(situation.runway.behind === undefined ? ['obstacles'] : []),
      ...(noGoAround ? ['going around over the obstacles ahead'] : []),
    ]),
    limitsOfUse,
    trace: workingOf(r.trace),
  };
}

function variationsOf(
  situation: LandingSituation,
  conditions: Conditions,
  addition_kt: number | undefined,
): Variations {
  return {
    wind: (wind_kt) => judgeLandingDistance(situation, conditions, addition_kt, { wind_kt }),
    surface: (surfaceFactor) => judgeLandingDistance(situation, conditions, addition_kt, { surfaceFactor }),
    mass: (mass_kg) => judgeLandingDistance({ ...situation, mass_kg }, conditions, addition_kt, {}),
    temperature: (at) => judgeLandingDistance(situation, at, addition_kt, {}),
  };
}
