import { type Domain, demand, inconsistent, type Metres, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link rollWithSurface}. */
export interface RollWithSurfaceInputs {
  /** Ground roll before the surface or slope is counted. */
  readonly groundRoll: Metres;
  /** Whole distance to or from the screen height before the surface or slope is counted. */
  readonly distance: Metres;
  /** Correction factor of the surface or slope on the whole distance. */
  readonly factor: Ratio;
}

export const rollWithSurfaceDomain = {
  groundRoll: { unit: 'm', min: 0, max: 20000, source: 'library range' },
  distance: { unit: 'm', min: 0, max: 20000, source: 'library range' },
  factor: { unit: 'ratio', min: 1, max: 5, source: 'library range, adverse factors only' },
} satisfies Domain<RollWithSurfaceInputs>;

/**
 * Ground roll when a surface or slope factor is printed for the whole distance: all of the increment is rolled.
 *
 * R = R₀ + (k − 1) D₀: R₀ the ground roll and D₀ the whole distance without the surface, in m, k the factor.
 *
 * @param x - `groundRoll` and `distance` 0 m to 20 000 m, the roll no longer than the distance; `factor` 1 to 5.
 * @returns The ground roll on the surface in m.
 * @throws {@link DomainError} when a parameter is not within its range, or the roll is longer than the distance.
 * @record distance.roll-with-surface
 *
 * @example
 * rollWithSurface({ groundRoll: m(300), distance: m(500), factor: ratio(1.2) }) // ≈ 400 ± 0.001
 */
export function rollWithSurface(x: RollWithSurfaceInputs): Metres {
  demand('groundRoll', x.groundRoll, rollWithSurfaceDomain.groundRoll);
  demand('distance', x.distance, rollWithSurfaceDomain.distance);
  demand('factor', x.factor, rollWithSurfaceDomain.factor);
  const { groundRoll: roll_m, distance: distance_m, factor }: Numbers<RollWithSurfaceInputs> = x;
  if (roll_m > distance_m) refuseLongRoll(roll_m, distance_m);
  return (roll_m + (factor - 1) * distance_m) as Metres;
}

function refuseLongRoll(received: number, max: number): never {
  const source = 'the roll is part of the distance';
  throw inconsistent('groundRoll', received, 'm', 0, max, source);
}
