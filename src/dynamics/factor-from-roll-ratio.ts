import { type Domain, demand, type Metres, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link factorFromRollRatio}. */
export interface FactorFromRollRatioInputs {
  /** Ground roll on the surface asked about over the known ground roll. */
  readonly ratio: Ratio;
  /** The known ground roll. */
  readonly groundRoll: Metres;
  /** The known distance to 50 ft, the ground roll in it. */
  readonly distance: Metres;
}

export const factorFromRollRatioDomain = {
  ratio: { unit: 'ratio', min: 0, max: 100, source: 'library range' },
  groundRoll: { unit: 'm', min: 1, max: 20000, source: 'library range' },
  distance: { unit: 'm', min: 1, max: 20000, source: 'library range' },
} satisfies Domain<FactorFromRollRatioInputs>;

/**
 * What a ratio of ground rolls is as a factor on the distance to 50 ft, the airborne distance being the same.
 *
 * k = 1 + (r − 1) s / d: r the ratio, s the known ground roll and d the known distance, both in m.
 *
 * @param x - `ratio` 0 to 100, `groundRoll` and `distance` 1 m to 20 000 m.
 * @returns The correction factor on the total distance.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record dynamics.factor-from-roll-ratio
 *
 * @example
 * factorFromRollRatio({ ratio: ratio(1.4), groundRoll: m(200), distance: m(400) }) // ≈ 1.2 ± 1e-12
 */
export function factorFromRollRatio(x: FactorFromRollRatioInputs): Ratio {
  demand('ratio', x.ratio, factorFromRollRatioDomain.ratio);
  demand('groundRoll', x.groundRoll, factorFromRollRatioDomain.groundRoll);
  demand('distance', x.distance, factorFromRollRatioDomain.distance);
  const { ratio: r, groundRoll: s_m, distance: d_m }: Numbers<FactorFromRollRatioInputs> = x;
  return (1 + ((r - 1) * s_m) / d_m) as Ratio;
}
