import type { Obstacle, RunwayEnd } from '../../assessment/index.ts';
import type { Measure } from '../../units/index.ts';
import { type AnyRequest, endsOf, isTakeoff } from '../any-request.ts';
import { inUnit, plain, type StudyInput } from './study-input.ts';

/** Length and slope in metres and as a ratio, uphill positive in the direction of use. */
function shapeOf(request: AnyRequest) {
  const { near, far } = endsOf(request);
  const length_m = inUnit(request.runway.length, 'm');
  const near_m = inUnit(near.elevation, 'mElevation');
  const far_m = inUnit(far.elevation, 'mElevation');
  return { near, far, length_m, near_m, far_m, slope: (far_m - near_m) / length_m };
}

/**
 * The runway with another length or slope. The higher end stays where it is, so that the pressure altitude does not
 * change; the lower end moves, and with it what stands beyond it. Every declared distance follows the length.
 */
function reshaped(request: AnyRequest, to: { readonly length_m?: number; readonly slope?: number }): AnyRequest {
  const { runway } = request;
  const { near, far, near_m, far_m, ...today } = shapeOf(request);
  const { length_m = today.length_m, slope = today.slope } = to;
  const higher_m = Math.max(near_m, far_m);
  const rise_m = slope * length_m;
  const moved = new Map<RunwayEnd, number>([
    [near, plain(rise_m >= 0 ? higher_m - rise_m : higher_m)],
    [far, plain(rise_m >= 0 ? higher_m : higher_m + rise_m)],
  ]);
  const longer_m = length_m - today.length_m;
  const ends = runway.ends.map((end) => ({
    ...end,
    elevation: { value: moved.get(end) as number, unit: 'mElevation' as const },
    ...(end.declaredDistances === undefined
      ? {}
      : {
          declaredDistances: Object.fromEntries(
            Object.entries(end.declaredDistances).map(([key, distance]) => [key, lengthened(distance, longer_m)]),
          ),
        }),
  })) as unknown as [RunwayEnd, RunwayEnd];
  const raised = (obstacle: Obstacle): Obstacle => {
    const by_m =
      obstacle.end === near.designator ? (moved.get(near) as number) - near_m : (moved.get(far) as number) - far_m;
    return raisedObstacle(obstacle, by_m);
  };
  return {
    ...request,
    runway: {
      ...runway,
      length: { value: plain(inUnit({ value: length_m, unit: 'm' }, runway.length.unit)), unit: runway.length.unit },
      ends,
      ...(runway.obstacles === undefined ? {} : { obstacles: runway.obstacles.map(raised) }),
    },
  };
}

function lengthened<U extends 'm' | 'ft'>({ value, unit }: Measure<U>, by_m: number): Measure<U> {
  return { value: plain(value + inUnit({ value: by_m, unit: 'm' }, unit)), unit };
}

function raisedObstacle(obstacle: Obstacle, by_m: number): Obstacle {
  const { topElevation, groundElevation } = obstacle;
  const raise = (elevation: NonNullable<typeof topElevation>) =>
    ({ value: plain(inUnit(elevation, 'mElevation') + by_m), unit: 'mElevation' }) as const;
  return {
    ...obstacle,
    ...(topElevation === undefined ? {} : { topElevation: raise(topElevation) }),
    ...(groundElevation === undefined ? {} : { groundElevation: raise(groundElevation) }),
  };
}

/** The length of the runway with every declared distance; the slope, and what stands beyond the ends, stay as they are. */
export function runwayLengthInput(request: AnyRequest): StudyInput {
  const { length } = request.runway;
  const { length_m, near, far } = shapeOf(request);
  const displaced = [near, far].map(({ displacedThreshold }) =>
    displacedThreshold === undefined ? 0 : inUnit(displacedThreshold, 'm'),
  );
  const declared = [near, far].flatMap(({ declaredDistances }) =>
    Object.values(declaredDistances ?? {}).map((distance) => inUnit(distance as Measure<'m' | 'ft'>, 'm')),
  );
  const lineUp_m = lineUpOf(request);
  // No shorter than leaves something of every declared distance, and of the run after lining up.
  const least_m = Math.max(
    50,
    ...displaced.map((metres) => metres + 1),
    ...declared.map((metres) => length_m - metres + 1),
    length_m - runOf(request) + lineUp_m + 1,
  );
  const inThisUnit = (metres: number) => plain(inUnit({ value: metres, unit: 'm' }, length.unit));
  return {
    id: 'runwayLength',
    changes: 'request',
    quantity: 'runway length',
    unit: length.unit,
    today: length.value,
    min: inThisUnit(least_m),
    max: inThisUnit(5999),
    at: (value) => reshaped(request, { length_m: inUnit({ value, unit: length.unit }, 'm') }),
  };
}

function lineUpOf(request: AnyRequest): number {
  return isTakeoff(request) && request.lineUpLoss !== undefined ? inUnit(request.lineUpLoss, 'm') : 0;
}

/** The take-off run available of the end in use. */
function runOf(request: AnyRequest): number {
  return inUnit(endsOf(request).near.declaredDistances?.TORA ?? request.runway.length, 'm');
}

/** The slope in percent, uphill positive in the direction of use. */
export function slopeInput(request: AnyRequest): StudyInput {
  return {
    id: 'slope',
    changes: 'request',
    quantity: 'slope, uphill in the direction of use',
    unit: 'percent',
    today: plain(shapeOf(request).slope * 100),
    min: -9.9,
    max: 9.9,
    at: (slope) => reshaped(request, { slope: slope / 100 }),
  };
}

/** Runway used up in lining up; a landing has none. */
export function lineUpLossInput(request: AnyRequest): StudyInput | undefined {
  if (!isTakeoff(request)) return undefined;
  const unit = request.lineUpLoss?.unit ?? 'm';
  const inThisUnit = (metres: number) => plain(inUnit({ value: metres, unit: 'm' }, unit));
  return {
    id: 'lineUpLoss',
    changes: 'request',
    quantity: 'line-up loss',
    unit,
    today: request.lineUpLoss?.value ?? 0,
    min: 0,
    max: inThisUnit(Math.min(499, runOf(request) - 1)),
    at: (value) => ({ ...request, lineUpLoss: { value, unit } }),
  };
}
