import type { ReadResult } from '../documents/index.ts';
import { guarded } from './guarded.ts';
import { airOf, windOf } from './kernel/air-and-wind.ts';
import { breakEvens, type Variations } from './kernel/break-evens.ts';
import type { Climb } from './kernel/climb-out.ts';
import type { ClimbOutObstacle } from './kernel/obstacle-criteria.ts';
import { obstaclesBeside } from './kernel/obstacles-beside.ts';
import { takeoffSafety } from './kernel/safety.ts';
import { callThrough, TraceRecorder } from './kernel/step.ts';
import { surfaceEstimate } from './kernel/surface-estimate.ts';
import { takeoffChain, takeoffFigures } from './kernel/takeoff-kernel.ts';
import { takeoffMarks } from './kernel/takeoff-marks.ts';
import { type TakeoffSituation, withTakeoffSpeeds } from './kernel/takeoff-situation.ts';
import { type Conditions, conditionsOf } from './request/conditions.ts';
import { inUnit } from './request/in-unit.ts';
import { readTakeoffRequest } from './request/read-request.ts';
import type { TakeoffRequest } from './request/request.ts';
import { situationOf } from './request/situation.ts';
import type { SpeedReading } from './request/speeds.ts';
import type { SpeedFound, TakeoffAssessment } from './result/assessment.ts';
import { finished } from './result/finish.ts';
import { speedFound } from './result/present.ts';

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
  return guarded(() => {
    const situation = takeoffSituationOf(read.value);
    return explainTakeoff(read.value, situation, conditionsOf(read.value.weather, situation.policies));
  });
}

/** Settles what the weather does not change. */
export function takeoffSituationOf(request: TakeoffRequest): TakeoffSituation {
  return withTakeoffSpeeds(situationOf(request), takeoffAdditionOf(request));
}

/** The speed addition that a request asks for. */
export function takeoffAdditionOf(request: TakeoffRequest): number {
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
  const { air, wind, chain, safety, judged, climb, obstacles } = figures;
  const braking = request.brakingCoefficient === undefined ? undefined : inUnit(request.brakingCoefficient, 'ratio');
  const marks = takeoffMarks(r, situation, figures, braking);
  return {
    schema: 'groundroll/takeoff-assessment/1',
    request,
    ...climbOutFound(situation, climb, obstacles),
    ...finished(r, situation, conditions, {
      air,
      wind,
      chain,
      judged,
      distance: safety.judged,
      factor: safety.factor,
      available_m: safety.available_m,
      used: [...chain.used, ...safety.used],
      breakEvens: breakEvens(situation, conditions, variationsOf(request, situation, conditions)),
      marks,
      speeds: [...found('lift-off', situation.liftOff), ...found('at 50 ft', situation.atScreen)],
      hazards: [],
      notes: obstaclesBeside(r, situation),
      estimate: figures.estimate ?? surfaceEstimate(r, situation, figures),
      missing: situation.runway.ahead === undefined ? ['obstacles'] : [],
      edges: [situation.liftOff, situation.atScreen],
      judgedAt: (at) => takeoffFigures(callThrough, situation, at).judged,
    }),
  };
}

/** The gradients of the climb-out in figures; nothing where nobody has looked for obstacles. */
function climbOutFound(
  { runway }: TakeoffSituation,
  { gradient }: Climb,
  obstacles: readonly ClimbOutObstacle[],
): Pick<TakeoffAssessment, 'climbOut'> {
  if (runway.ahead === undefined) return {};
  const percent = (value: number) => ({ value, unit: 'percent' as const });
  const required = new Map(obstacles.map((each) => [each.place, percent(each.required_percent)]));
  return {
    climbOut: {
      ...(gradient === undefined ? {} : { achieved: percent(gradient * 100) }),
      obstacles: runway.ahead.map(({ name }, i) => {
        const demanded = required.get(i);
        return { name, ...(demanded === undefined ? {} : { required: demanded }) };
      }),
    },
  };
}

function distanceAt(situation: TakeoffSituation, conditions: Conditions) {
  const air = airOf(callThrough, situation, conditions);
  const wind = windOf(callThrough, situation, conditions);
  return takeoffSafety(callThrough, situation, takeoffChain(callThrough, situation, air, wind.inTables_kt)).judged;
}

function variationsOf(request: TakeoffRequest, situation: TakeoffSituation, conditions: Conditions): Variations {
  const r = callThrough;
  const air = airOf(r, situation, conditions);
  const { inTables_kt } = windOf(r, situation, conditions);
  return {
    wind: (wind_kt) => takeoffSafety(r, situation, takeoffChain(r, situation, air, inTables_kt, { wind_kt })).judged,
    surface: (surfaceFactor) =>
      takeoffSafety(r, situation, takeoffChain(r, situation, air, inTables_kt, { surfaceFactor })).judged,
    mass: (mass_kg) => {
      const heavier = withTakeoffSpeeds({ ...situation, mass_kg }, takeoffAdditionOf(request));
      return takeoffSafety(r, heavier, takeoffChain(r, heavier, air, inTables_kt)).judged;
    },
    temperature: (at) => distanceAt(situation, at),
  };
}

function found(name: string, speed: SpeedReading): SpeedFound[] {
  return speed.ok ? speedFound(name, speed) : [];
}
