import type { Fault, ReadResult } from '../documents/index.ts';
import { type AnyRequest, assessAny, isTakeoff } from './any-request.ts';
import { obstacleHeightInput, obstaclesThatCount } from './inputs/obstacles.ts';
import { inUnit, plain } from './inputs/study-input.ts';
import {
  crosswindQuestion,
  massQuestion,
  runwayLengthQuestion,
  surfaceFactorQuestion,
  tailwindQuestion,
  temperatureQuestion,
} from './questions.ts';
import { type Question, type SolvedLimit, solve } from './solve.ts';

/** Reads the request for its faults, then solves. */
function solved(request: AnyRequest, question: (request: AnyRequest) => Question): ReadResult<SolvedLimit> {
  const assessed = assessAny(request);
  return assessed.ok ? { ok: true, value: solve(question(assessed.value.request)) } : assessed;
}

/**
 * The greatest mass at which every criterion is within limits, with everything else as the request says; up to the
 * maximum mass. A break-even of the assessment looks at the distance alone, so this may be less.
 *
 * @param request - a take-off or a landing request; its mass is replaced.
 * @returns the limit, rounded down to 1 kg or 1 lb, or the faults of the request.
 *
 * @example
 * performanceLimitedMass({ schema: 'groundroll/takeoff-request/1' } as never).ok // => false
 */
export function performanceLimitedMass(request: AnyRequest): ReadResult<SolvedLimit> {
  return solved(request, massQuestion);
}

/**
 * The highest temperature at which every criterion is within limits; over the temperatures that the manual prints.
 *
 * @param request - a take-off or a landing request; its temperature is replaced. A reported dew point is left out, unless
 *   the tables are read at the virtual temperature.
 * @returns the limit, rounded down to 1 °C or 1 °F, or the faults of the request.
 *
 * @example
 * highestTemperature({ schema: 'groundroll/takeoff-request/1' } as never).ok // => false
 */
export function highestTemperature(request: AnyRequest): ReadResult<SolvedLimit> {
  return solved(request, temperatureQuestion);
}

/**
 * The greatest tailwind at which every criterion is within limits, as the tailwind criterion counts it: with the share
 * that the policy asks for. A steady wind from straight behind stands in place of the reported wind.
 *
 * @param request - a take-off or a landing request; its wind is replaced.
 * @returns the limit, rounded down to 0.1 kt and up to the manual's last printed tailwind, or the faults of the request.
 *
 * @example
 * greatestTailwind({ schema: 'groundroll/landing-request/1' } as never).ok // => false
 */
export function greatestTailwind(request: AnyRequest): ReadResult<SolvedLimit> {
  return solved(request, tailwindQuestion);
}

/**
 * The greatest crosswind at which every criterion is within limits. A steady wind from straight across stands in place
 * of the reported wind, so there is no headwind in it.
 *
 * @param request - a take-off or a landing request; its wind is replaced.
 * @returns the limit, rounded down to 1 kt, or the faults of the request.
 *
 * @example
 * greatestCrosswind({ schema: 'groundroll/landing-request/1' } as never).ok // => false
 */
export function greatestCrosswind(request: AnyRequest): ReadResult<SolvedLimit> {
  return solved(request, crosswindQuestion);
}

/**
 * The shortest runway on which every criterion is within limits. Every declared distance follows the length; the slope
 * stays, and so does what stands beyond each end, seen from that end.
 *
 * @param request - a take-off or a landing request; its runway is lengthened or shortened, between 50 m and 3 000 m.
 * @returns the limit, rounded up to 1 m or 1 ft, or the faults of the request.
 *
 * @example
 * shortestRunway({ schema: 'groundroll/takeoff-request/1' } as never).ok // => false
 */
export function shortestRunway(request: AnyRequest): ReadResult<SolvedLimit> {
  return solved(request, runwayLengthQuestion);
}

/**
 * The greatest factor that the surface may cost with every criterion within limits, whatever the manual and the factor
 * set say of the surface of the request.
 *
 * @param request - a take-off or a landing request; its surface is replaced.
 * @returns the limit, rounded down to 0.001 and searched from 1 to 3, or the faults of the request.
 *
 * @example
 * greatestSurfaceFactor({ schema: 'groundroll/takeoff-request/1' } as never).ok // => false
 */
export function greatestSurfaceFactor(request: AnyRequest): ReadResult<SolvedLimit> {
  return solved(request, surfaceFactorQuestion);
}

/**
 * How tall a named obstacle may be with every criterion within limits: its height on its ground, or the elevation of its
 * top where the request states that.
 *
 * @param request - a take-off or a landing request whose runway lists the obstacle.
 * @param name - the obstacle by its name in the list.
 * @returns the limit, rounded down to 1 m or 1 ft and searched up to 300 m, or the faults of the request; a name that
 *   belongs to none or to several is one of them, and so is that of an obstacle on which no criterion depends, because it
 *   stands beyond the other end.
 *
 * @example
 * tallestObstacle({ schema: 'groundroll/takeoff-request/1' } as never, 'pines').ok // => false
 */
export function tallestObstacle(request: AnyRequest, name: string): ReadResult<SolvedLimit> {
  const assessed = assessAny(request);
  if (!assessed.ok) return assessed;
  const read = assessed.value.request;
  const named = read.runway.obstacles?.filter((each) => each.name === name) ?? [];
  const [obstacle] = named;
  if (obstacle === undefined || named.length > 1) {
    const fault: Fault = {
      path: 'runway.obstacles',
      message: `${named.length === 0 ? 'none' : named.length} of the obstacles listed ${named.length > 1 ? 'are' : 'is'} named "${name}"`,
    };
    return { ok: false, faults: [fault] };
  }
  if (!obstaclesThatCount(read).includes(obstacle)) {
    const phase = isTakeoff(read) ? 'take-off' : 'landing';
    const message = `"${name}" stands beyond the ${obstacle.end} end: no criterion of a ${phase} on ${read.runwayInUse} depends on it`;
    return { ok: false, faults: [{ path: 'runway.obstacles', message }] };
  }
  const input = obstacleHeightInput(read, obstacle);
  const metres = (from: 'mHeight' | 'mElevation', value: number) => plain(inUnit({ value, unit: from }, input.unit));
  if (obstacle.topElevation === undefined)
    return { ok: true, value: solve({ request: read, input, favourable: 0, adverse: metres('mHeight', 300) }) };
  // Counted from the end of the runway beyond which it stands.
  const end = read.runway.ends.find(({ designator }) => designator === obstacle.end);
  const foot = end === undefined ? 0 : inUnit(end.elevation, 'mElevation');
  return {
    ok: true,
    value: solve({
      request: read,
      input,
      favourable: metres('mElevation', foot),
      adverse: metres('mElevation', foot + 300),
    }),
  };
}
