import type { Obstacle } from '../../assessment/index.ts';
import { type AnyRequest, endsOf, isTakeoff } from '../any-request.ts';
import { inUnit, plain, type StudyInput } from './study-input.ts';

/** The obstacles that the criteria look at: ahead of a take-off, on the approach of a landing. */
export function obstaclesThatCount(request: AnyRequest): readonly Obstacle[] {
  const { near, far } = endsOf(request);
  const { designator } = isTakeoff(request) ? far : near;
  return request.runway.obstacles?.filter(({ end }) => end === designator) ?? [];
}

function replaced(request: AnyRequest, obstacle: Obstacle, change: Partial<Obstacle>): AnyRequest {
  const obstacles = request.runway.obstacles?.map((each) => (each === obstacle ? { ...each, ...change } : each));
  return { ...request, runway: { ...request.runway, ...(obstacles === undefined ? {} : { obstacles }) } };
}

/** How tall an obstacle stands on its ground; where only the elevation of its top is known, that elevation. */
export function obstacleHeightInput(request: AnyRequest, obstacle: Obstacle): StudyInput {
  const { name, topElevation, height } = obstacle;
  const base = { id: 'obstacleHeight', obstacle: name, changes: 'request' } as const;
  if (topElevation !== undefined) {
    const { unit, value } = topElevation;
    const inThisUnit = (feet: number) => plain(inUnit({ value: feet, unit: 'ftElevation' }, unit));
    return {
      ...base,
      quantity: `top of ${name}`,
      unit,
      today: value,
      min: inThisUnit(-1999),
      max: inThisUnit(14_999),
      at: (top) => replaced(request, obstacle, { topElevation: { value: top, unit } }),
    };
  }
  const { unit, value } = height as NonNullable<typeof height>;
  return {
    ...base,
    quantity: `height of ${name}`,
    unit,
    today: value,
    min: 0,
    max: plain(inUnit({ value: 2999, unit: 'mHeight' }, unit)),
    at: (tall) => replaced(request, obstacle, { height: { value: tall, unit } }),
  };
}

/** How far an obstacle stands beyond the end of the runway. */
export function obstacleDistanceInput(request: AnyRequest, obstacle: Obstacle): StudyInput {
  const { name, beyond } = obstacle;
  const { unit, value } = beyond;
  return {
    id: 'obstacleDistance',
    obstacle: name,
    changes: 'request',
    quantity: `distance of ${name} beyond the end`,
    unit,
    today: value,
    min: 0,
    max: plain(inUnit({ value: 19_999, unit: 'm' }, unit)),
    at: (distance) => replaced(request, obstacle, { beyond: { value: distance, unit } }),
  };
}
