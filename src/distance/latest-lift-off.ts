import { type Domain, demand, type Metres, type Numbers } from '../units/index.ts';

/** Inputs of {@link latestLiftOff}. */
export interface LatestLiftOffInputs {
  /** Take-off distance available. */
  readonly distanceAvailable: Metres;
  /** Airborne distance, from lift-off to 50 ft. */
  readonly airborneDistance: Metres;
}

export const latestLiftOffDomain = {
  distanceAvailable: { unit: 'm', min: 0, max: 20000, source: 'library range' },
  airborneDistance: { unit: 'm', min: 0, max: 20000, source: 'library range' },
} satisfies Domain<LatestLiftOffInputs>;

/**
 * Farthest point of lift-off from which 50 ft is still reached by the end of the take-off distance available.
 *
 * x = D − A: D the take-off distance available and A the airborne distance to 50 ft, in m.
 *
 * @param x - `distanceAvailable` and `airborneDistance` 0 m to 20 000 m.
 * @returns The distance of the point from the start of the roll in m; negative when there is no such point.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record distance.latest-lift-off
 *
 * @example
 * latestLiftOff({ distanceAvailable: m(700), airborneDistance: m(240) }) // => 460
 */
export function latestLiftOff(x: LatestLiftOffInputs): Metres {
  demand('distanceAvailable', x.distanceAvailable, latestLiftOffDomain.distanceAvailable);
  demand('airborneDistance', x.airborneDistance, latestLiftOffDomain.airborneDistance);
  const { distanceAvailable: available_m, airborneDistance: airborne_m }: Numbers<LatestLiftOffInputs> = x;
  return (available_m - airborne_m) as Metres;
}
