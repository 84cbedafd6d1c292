import { type Bound, type Domain, demand, demandEach, type Metres, type Ratio, type Untagged } from '../units/index.ts';

/** Inputs of {@link correctedDistance}. */
export interface CorrectedDistanceInputs {
  /** Distance to be corrected: the whole distance or the ground roll, whichever the factors were printed for. */
  readonly distance: Metres;
  /** Correction or safety factors, each a ratio; none leaves the distance as it is. */
  readonly factors: readonly (Ratio | Untagged)[];
}

export const correctedDistanceDomain = {
  distance: { unit: 'm', min: 0, max: 20000, source: 'library range' },
} satisfies Domain<CorrectedDistanceInputs>;

export const distanceFactorBound = { unit: 'ratio', min: 0.2, max: 5, source: 'library range' } satisfies Bound;

// Thirty factors of 5 still give a finite number.
const factorCountBound = { unit: 'factors', min: 0, max: 30, source: 'library range' } satisfies Bound;

/**
 * A distance multiplied by every factor that applies to it; not rounded.
 *
 * D = D₀ k₁ k₂ … kₙ: D₀ the distance in m, k₁ to kₙ the factors. Factors multiply and are never added.
 *
 * @param x - `distance` 0 m to 20 000 m, up to 30 `factors`, each 0.2 to 5 and for the same basis as the distance.
 * @returns The corrected distance in m.
 * @throws {@link DomainError} when a parameter is not within its range; a factor is named by its place, `factors[1]`.
 * @record distance.corrected-distance
 *
 * @example
 * correctedDistance({ distance: m(400), factors: [1.2, 1.1] }) // ≈ 528 ± 0.001
 */
export function correctedDistance(x: CorrectedDistanceInputs): Metres {
  demand('distance', x.distance, correctedDistanceDomain.distance);
  demandEach('factors', x.factors, distanceFactorBound);
  demand('factors.length', x.factors.length, factorCountBound);
  let distance_m: number = x.distance;
  for (let i = 0; i < x.factors.length; i += 1) distance_m *= x.factors[i] as number;
  return distance_m as Metres;
}
