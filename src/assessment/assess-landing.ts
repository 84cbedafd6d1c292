import type { ReadResult } from '../documents/index.ts';
import { guarded } from './guarded.ts';
import { approachPathOf } from './kernel/approach-path.ts';
import { breakEvens, type Variations } from './kernel/break-evens.ts';
import { judgeLandingDistance, landingFigures } from './kernel/landing-kernel.ts';
import { landingMarks } from './kernel/landing-marks.ts';
import { type LandingSituation, landingAtMasses, withApproachSpeeds } from './kernel/landing-situation.ts';
import type { Mark } from './kernel/mark.ts';
import { obstaclesBeside } from './kernel/obstacles-beside.ts';
import { callThrough, TraceRecorder } from './kernel/step.ts';
import { type Conditions, conditionsOf } from './request/conditions.ts';
import { inUnit } from './request/in-unit.ts';
import { readLandingRequest } from './request/read-request.ts';
import type { LandingRequest } from './request/request.ts';
import { situationOf } from './request/situation.ts';
import type { LandingAssessment } from './result/assessment.ts';
import { finished } from './result/finish.ts';
import { speedFound } from './result/present.ts';

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
  return guarded(() => {
    const situation = landingSituationOf(read.value);
    return explainLanding(read.value, situation, conditionsOf(read.value.weather, situation.policies));
  });
}

/** Settles what the weather does not change. */
export function landingSituationOf(request: LandingRequest): LandingSituation {
  const { excessHeight } = request;
  return withApproachSpeeds(situationOf(request), excessHeight === undefined ? 0 : inUnit(excessHeight, 'mHeight'));
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
  const { ahead, behind } = situation.runway;
  const noGoAround = (ahead ?? []).length > 0 && situation.climb === undefined;
  const path = approachPathOf(r, situation, figures);
  const marks = landingMarks(r, situation, figures);
  return {
    schema: 'groundroll/landing-assessment/1',
    request,
    ...finished(r, situation, conditions, {
      ...figures,
      breakEvens: breakEvens(situation, conditions, variationsOf(situation, conditions, addition_kt)),
      marks: [...path.marks, ...marks],
      speeds: figures.approach.ok ? speedFound('approach', figures.approach.flown) : [],
      hazards: [
        ...path.hazards,
        ...(noGoAround ? [{ code: 'hazard-no-go-around', parameters: {} } as const] : []),
        ...(commitsBeforeThreshold(marks)
          ? [{ code: 'hazard-commits-before-threshold', parameters: {} } as const]
          : []),
      ],
      notes: [...path.notes, ...obstaclesBeside(r, situation)],
      estimate: undefined,
      missing: [
        ...(behind === undefined ? ['obstacles'] : []),
        ...(noGoAround ? ['going around over the obstacles ahead'] : []),
      ],
      judgedAt: (at) => landingFigures(callThrough, situation, at, addition_kt).judged,
      edges: [figures.approach],
    }),
  };
}

/** On a runway with one way out the decision to land falls on the approach. */
function commitsBeforeThreshold(marks: readonly Mark[]): boolean {
  const goAround = marks.find(({ id }) => id === 'latest-go-around-point');
  if (goAround === undefined) return false;
  return goAround.at_m === undefined ? goAround.reason?.code === 'mark-none-obstacles' : goAround.at_m <= 0;
}

function variationsOf(
  situation: LandingSituation,
  conditions: Conditions,
  addition_kt: number | undefined,
): Variations {
  const atMass = landingAtMasses(situation);
  return {
    wind: (wind_kt) => judgeLandingDistance(situation, conditions, addition_kt, { wind_kt }),
    surface: (surfaceFactor) => judgeLandingDistance(situation, conditions, addition_kt, { surfaceFactor }),
    mass: (mass_kg) => judgeLandingDistance(atMass(mass_kg), conditions, addition_kt, {}),
    temperature: (at) => judgeLandingDistance(situation, at, addition_kt, {}),
  };
}
