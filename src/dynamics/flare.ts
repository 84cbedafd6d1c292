import { type Degrees, type Domain, demand, type HeightInMetres, type Metres, type Numbers } from '../units/index.ts';

/** Inputs of {@link flareHeight} and {@link flareDistance}. */
export interface FlareInputs {
  /** Radius of the arc in which the path is bent to the horizontal. */
  readonly radius: Metres;
  /** Angle of the approach path below the horizontal. */
  readonly pathAngle: Degrees;
}

export const flareDomain = {
  radius: { unit: 'm', min: 10, max: 100000, source: 'library range' },
  pathAngle: { unit: 'deg', min: 0.5, max: 15, source: 'library range' },
} satisfies Domain<FlareInputs>;

/**
 * Height at which the flare begins.
 *
 * h_f = R (1 − cos θ): R the radius of the flare in m, θ the angle of the approach path in degrees.
 *
 * @param x - `radius` 10 m to 100 000 m, `pathAngle` 0.5° to 15°.
 * @returns The height in m over the point of touchdown.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record dynamics.flare-height
 *
 * @example
 * flareHeight({ radius: m(600), pathAngle: degrees(4) }) // ≈ 1.462 ± 0.001
 */
export function flareHeight(x: FlareInputs): HeightInMetres {
  demand('radius', x.radius, flareDomain.radius);
  demand('pathAngle', x.pathAngle, flareDomain.pathAngle);
  const { radius: r_m, pathAngle: theta_deg }: Numbers<FlareInputs> = x;
  const theta_rad = (theta_deg * Math.PI) / 180;
  return (r_m * (1 - Math.cos(theta_rad))) as HeightInMetres;
}

/**
 * Distance over level ground from the beginning of the flare to the touchdown, in calm air.
 *
 * s_f = R sin θ: R the radius of the flare in m, θ the angle of the approach path in degrees.
 *
 * @param x - `radius` 10 m to 100 000 m, `pathAngle` 0.5° to 15°.
 * @returns The distance in m.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record dynamics.flare-distance
 *
 * @example
 * flareDistance({ radius: m(600), pathAngle: degrees(4) }) // ≈ 41.85 ± 0.01
 */
export function flareDistance(x: FlareInputs): Metres {
  demand('radius', x.radius, flareDomain.radius);
  demand('pathAngle', x.pathAngle, flareDomain.pathAngle);
  const { radius: r_m, pathAngle: theta_deg }: Numbers<FlareInputs> = x;
  const theta_rad = (theta_deg * Math.PI) / 180;
  return (r_m * Math.sin(theta_rad)) as Metres;
}
