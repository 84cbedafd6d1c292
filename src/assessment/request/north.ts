import type { LandingRequest, ReportedWind, TakeoffRequest } from './request.ts';

/** What a direction is stated against. */
export type North = 'degTrue' | 'degMagnetic';

/** The north of a reported wind; none where the report has no direction at all. */
export function northOfWind({ from, range }: ReportedWind): North | undefined {
  return typeof from === 'string' ? range?.from.unit : from.unit;
}

/** The north of the runway; both ends are stated against one. */
export function northOfRunway({ runway }: TakeoffRequest | LandingRequest): North {
  return runway.ends[0].direction.unit;
}

/** The north that a request is worked in: that of its wind, else that of its runway. */
export function northOf(request: TakeoffRequest | LandingRequest): North {
  return northOfWind(request.weather.wind) ?? northOfRunway(request);
}
