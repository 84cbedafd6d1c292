import { type Celsius, type Domain, demand, type Knots, type Numbers } from '../units/index.ts';
import { airTemperature } from './standard-atmosphere-bounds.ts';
import { kappa, kt_mPerS, R_JPerKgK, Ti_K } from './standard-atmosphere-constants.ts';

/** Inputs of {@link speedOfSound}. */
export interface SpeedOfSoundInputs {
  /** Temperature of the air. */
  readonly temperature: Celsius;
}

export const speedOfSoundDomain = { temperature: airTemperature } satisfies Domain<SpeedOfSoundInputs>;

/**
 * Speed of sound in dry air.
 *
 * a = √(κ R T): T the temperature in K, here given in °C, κ = 1.4, R = 287.05287 J/(kg K); a in m/s, here in kt.
 *
 * @param x - `temperature` −80 °C to 60 °C.
 * @returns Speed in kt.
 * @throws {@link DomainError} when the temperature is not within its range.
 * @record atmosphere.speed-of-sound
 *
 * @example
 * speedOfSound({ temperature: degC(15) }) // ≈ 661.4786 ± 0.0001
 */
export function speedOfSound(x: SpeedOfSoundInputs): Knots {
  demand('temperature', x.temperature, speedOfSoundDomain.temperature);
  const { temperature: t_degC }: Numbers<SpeedOfSoundInputs> = x;
  const T_K = t_degC + Ti_K;
  const a_mPerS = Math.sqrt(kappa * R_JPerKgK * T_K);
  return (a_mPerS / kt_mPerS) as Knots;
}
