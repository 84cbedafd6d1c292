import { type Domain, demand, type HeightInMetres, type Metres, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link procedureDesignGradient}. */
export interface ProcedureDesignGradientInputs {
  /** Height of the top of the obstacle over the departure end of the runway. */
  readonly obstacleHeight: HeightInMetres;
  /** Distance of the obstacle from the departure end of the runway. */
  readonly distance: Metres;
}

export const procedureDesignGradientDomain = {
  obstacleHeight: { unit: 'mHeight', min: -1000, max: 9000, source: 'library range' },
  distance: { unit: 'm', min: 10, max: 200000, source: 'library range' },
} satisfies Domain<ProcedureDesignGradientInputs>;

/** Height over the departure end of the runway at which the design gradient starts. */
const start_m = 5;

/** Minimum obstacle clearance for each length of ground. */
const clearance = 0.008;

/**
 * Procedure design gradient of the ICAO that an obstacle on a straight instrument departure asks for.
 *
 * It belongs to the design of instrument procedures and never enters an obstacle criterion of a light aeroplane. The
 * clearance is a fixed 0.8 % of the distance, unlike that of a civil procedure of the United States; the two are never
 * mixed. The start at 5 m was
 * read in Doc 8168, the 0.8 % only as quoted by others.
 *
 * PDG = 0.008 + (h − 5 m) / d: h the top of the obstacle over the departure end of the runway and d its distance from
 * there, both in m.
 *
 * @param x - `obstacleHeight` −1000 m to 9000 m, `distance` 10 m to 200 000 m.
 * @returns The gradient as a ratio; where it is not above 0.033, the standard gradient of 3.3 % stands instead (5.0 % for
 * helicopters).
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.procedure-design-gradient
 *
 * @example
 * procedureDesignGradient({ obstacleHeight: mHeight(105), distance: m(2500) }) // ≈ 0.048 ± 1e-9
 */
export function procedureDesignGradient(x: ProcedureDesignGradientInputs): Ratio {
  demand('obstacleHeight', x.obstacleHeight, procedureDesignGradientDomain.obstacleHeight);
  demand('distance', x.distance, procedureDesignGradientDomain.distance);
  const { obstacleHeight: h_m, distance: d_m }: Numbers<ProcedureDesignGradientInputs> = x;
  return (clearance + (h_m - start_m) / d_m) as Ratio;
}
