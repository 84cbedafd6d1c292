import { type Domain, demand, type Metres, type Numbers } from '../units/index.ts';

/** Inputs of {@link latestTouchdownPoint}. */
export interface LatestTouchdownPointInputs {
  /** Landing distance available. */
  readonly distanceAvailable: Metres;
  /** Ground roll after touchdown, corrected for wind. */
  readonly groundRoll: Metres;
  /** All increments of surface, slope and speed, which lie on the ground. */
  readonly increments: Metres;
}

export const latestTouchdownPointDomain = {
  distanceAvailable: { unit: 'm', min: 0, max: 20000, source: 'library range' },
  groundRoll: { unit: 'm', min: 0, max: 20000, source: 'library range' },
  increments: { unit: 'm', min: 0, max: 20000, source: 'library range' },
} satisfies Domain<LatestTouchdownPointInputs>;

/**
 * Farthest point of touchdown from which the aeroplane still stops within the landing distance available.
 *
 * x = L − (R + ΔR): L the landing distance available, R the ground roll corrected for wind and ΔR the increments of
 * surface, slope and speed, in m. No safety factor is in it.
 *
 * @param x - `distanceAvailable`, `groundRoll` and `increments` 0 m to 20 000 m.
 * @returns The distance of the point from the landing threshold in m; negative when there is no such point.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record distance.latest-touchdown-point
 *
 * @example
 * latestTouchdownPoint({ distanceAvailable: m(650), groundRoll: m(220), increments: m(80) }) // => 350
 */
export function latestTouchdownPoint(x: LatestTouchdownPointInputs): Metres {
  demand('distanceAvailable', x.distanceAvailable, latestTouchdownPointDomain.distanceAvailable);
  demand('groundRoll', x.groundRoll, latestTouchdownPointDomain.groundRoll);
  demand('increments', x.increments, latestTouchdownPointDomain.increments);
  const { distanceAvailable, groundRoll, increments }: Numbers<LatestTouchdownPointInputs> = x;
  return (distanceAvailable - (groundRoll + increments)) as Metres;
}
