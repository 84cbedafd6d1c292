import {
  type DensityAltitude,
  type Domain,
  demand,
  type FeetPerMinute,
  inconsistent,
  type Minutes,
  type Numbers,
} from '../units/index.ts';

/** Inputs of {@link timeToClimb}. */
export interface TimeToClimbInputs {
  /** Rate of climb at a density altitude of zero. */
  readonly rateAtZero: FeetPerMinute;
  /** Density altitude at which no rate of climb is left. */
  readonly absoluteCeiling: DensityAltitude;
  /** Density altitude at which the climb starts. */
  readonly from: DensityAltitude;
  /** Density altitude at which it ends: no lower than the start, and below the absolute ceiling. */
  readonly to: DensityAltitude;
}

export const timeToClimbDomain = {
  rateAtZero: { unit: 'ftPerMin', min: 1, max: 10000, source: 'library range' },
  absoluteCeiling: { unit: 'ftDA', min: 100, max: 60000, source: 'library range' },
  from: { unit: 'ftDA', min: -5000, max: 60000, source: 'library range' },
  to: { unit: 'ftDA', min: -5000, max: 60000, source: 'library range' },
} satisfies Domain<TimeToClimbInputs>;

/** The absolute ceiling itself is never reached; the climb ends at least this far below it. */
const belowCeiling_ft = 1;

/**
 * Time to climb of an aeroplane whose rate of climb falls linearly with density altitude to its absolute ceiling.
 *
 * t = (H/R₀) ln[(H − h₁) / (H − h₂)]: H the absolute ceiling, h₁ the start and h₂ the end of the climb, all in ft of density
 * altitude, R₀ the rate of climb at a density altitude of zero in ft/min. A model for one mass and configuration, no
 * substitute for the manual's own time, fuel and distance to climb.
 *
 * @param x - `rateAtZero` 1 ft/min to 10 000 ft/min, `absoluteCeiling` 100 ft to 60 000 ft of density altitude, `from`
 * and `to` −5000 ft to 60 000 ft of density altitude, `to` no lower than `from` and 1 ft or more below the ceiling.
 * @returns The time in minutes.
 * @throws {@link DomainError} when a parameter is not within its range, the climb ends lower than it starts, or it ends
 * at the absolute ceiling or above.
 * @record flight-path.time-to-climb
 *
 * @example
 * timeToClimb({ rateAtZero: ftPerMin(600), absoluteCeiling: ftDA(15000), from: ftDA(1000), to: ftDA(6000) }) // ≈ 11.046 ± 0.001
 */
export function timeToClimb(x: TimeToClimbInputs): Minutes {
  demand('rateAtZero', x.rateAtZero, timeToClimbDomain.rateAtZero);
  demand('absoluteCeiling', x.absoluteCeiling, timeToClimbDomain.absoluteCeiling);
  demand('from', x.from, timeToClimbDomain.from);
  demand('to', x.to, timeToClimbDomain.to);
  const { rateAtZero: r0_ftPerMin, absoluteCeiling: top_ft, from: h1_ft, to: h2_ft }: Numbers<TimeToClimbInputs> = x;
  if (h2_ft < h1_ft || h2_ft > top_ft - belowCeiling_ft) refuseEnd(h2_ft, h1_ft, top_ft - belowCeiling_ft);
  return ((top_ft / r0_ftPerMin) * Math.log((top_ft - h1_ft) / (top_ft - h2_ft))) as Minutes;
}

function refuseEnd(received: number, min: number, max: number): never {
  const { unit } = timeToClimbDomain.to;
  const source = 'the climb ends above its start and below the absolute ceiling';
  throw inconsistent('to', received, unit, min, max, source);
}
