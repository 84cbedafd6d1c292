import { type Domain, demand, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link powerLapse}. */
export interface PowerLapseInputs {
  /** Density of the air over that at sea level in the standard atmosphere. */
  readonly densityRatio: Ratio;
}

export const powerLapseDomain = {
  densityRatio: { unit: 'ratio', min: 0.3, max: 1.3, source: 'library range' },
} satisfies Domain<PowerLapseInputs>;

/**
 * Power of an unsupercharged piston engine at full throttle, as a share of its power at sea level in the standard
 * atmosphere.
 *
 * φ = σ − (1 − σ)/7.55: σ the density ratio. Recalled, not seen in its source; another text, second-hand, takes
 * (σ − C)/(1 − C) with C = 0.12, which is within 0.2 % of this down to σ = 0.7. An answer that uses it must say so.
 *
 * @param x - `densityRatio` 0.3 to 1.3.
 * @returns The share as a ratio; above 1 in air denser than standard.
 * @throws {@link DomainError} when the density ratio is not within its range.
 * @record dynamics.power-lapse
 *
 * @example
 * powerLapse({ densityRatio: ratio(1) }) // => 1
 * powerLapse({ densityRatio: ratio(0.862) }) // ≈ 0.8437 ± 0.0001
 */
export function powerLapse(x: PowerLapseInputs): Ratio {
  demand('densityRatio', x.densityRatio, powerLapseDomain.densityRatio);
  const { densityRatio: sigma }: Numbers<PowerLapseInputs> = x;
  return (sigma - (1 - sigma) / 7.55) as Ratio;
}
