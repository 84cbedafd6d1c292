import { type Named, named } from '../kernel/criterion.ts';
import { inUnit } from './in-unit.ts';
import type { Obstacle } from './request.ts';

/** An obstacle seen from one end of the runway, with the words in which it is spoken of. */
export interface PlacedObstacle {
  readonly name: string;
  /** From the end of the runway beyond which it stands, in metres. */
  readonly beyond_m: number;
  readonly top_mElevation: number;
  /** From the extended centreline, where stated. */
  readonly offset_m: number | undefined;
  readonly words: Named;
  readonly labels: {
    readonly required: string;
    readonly factored: string;
    readonly unfactored: string;
    readonly lost: string;
  };
}

export function placedObstacle(obstacle: Obstacle): PlacedObstacle {
  const { name, beyond, lateralOffset } = obstacle;
  return {
    name,
    offset_m: lateralOffset === undefined ? undefined : inUnit(lateralOffset, 'm'),
    beyond_m: inUnit(beyond, 'm'),
    top_mElevation: topOf(obstacle) as number,
    words: gradientOver(name),
    labels: {
      required: `gradient required over ${name}`,
      factored: `clearance over ${name}, factored`,
      unfactored: `clearance over ${name}, unfactored`,
      lost: `landing distance lost over ${name}`,
    },
  };
}

/** The elevation of the top in metres; none of an obstacle that states neither it nor ground and height. */
export function topOf({ topElevation, groundElevation, height }: Obstacle): number | undefined {
  if (topElevation !== undefined) return inUnit(topElevation, 'mElevation');
  if (groundElevation === undefined || height === undefined) return undefined;
  return inUnit(groundElevation, 'mElevation') + inUnit(height, 'mHeight');
}

/** The words of the criterion on the climb-out over something. */
export function gradientOver(what: string): Named {
  return named('obstacle', `the gradient over ${what}`, `gradient over ${what}`, 'percent', 'clearance asked');
}
