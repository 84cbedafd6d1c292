import {
  type Degrees,
  type Domain,
  demand,
  type HeightInMetres,
  inconsistent,
  type Metres,
  type Numbers,
} from '../units/index.ts';

/** Inputs of {@link airborneDistanceInArc}. */
export interface AirborneDistanceInArcInputs {
  /** Radius of the arc in which the path is bent upwards. */
  readonly radius: Metres;
  /** Screen height, at which the take-off ends. */
  readonly screenHeight: HeightInMetres;
}

/** The arc from lift-off to the screen height. */
export interface AirborneArc {
  /** Distance over level ground. */
  readonly distance: Metres;
  /** Angle of the path at the screen height. */
  readonly pathAngle: Degrees;
}

/** Inputs of {@link airborneDistance}. */
export interface AirborneDistanceInputs extends AirborneDistanceInArcInputs {
  /** Angle of the climb that follows the arc. */
  readonly climbAngle: Degrees;
}

export const airborneDistanceDomain = {
  radius: { unit: 'm', min: 10, max: 100000, source: 'library range' },
  screenHeight: { unit: 'mHeight', min: 1, max: 100, source: 'library range' },
  climbAngle: { unit: 'deg', min: 0.1, max: 45, source: 'library range' },
} satisfies Domain<AirborneDistanceInputs>;

export const airborneDistanceInArcDomain = {
  radius: airborneDistanceDomain.radius,
  screenHeight: airborneDistanceDomain.screenHeight,
} satisfies Domain<AirborneDistanceInArcInputs>;

/**
 * Airborne distance of a take-off in calm air whose screen height is reached while the path is still bent upwards.
 *
 * θ = arccos(1 − h/R) and s = R sin θ: R the radius of the arc and h the screen height, both in m.
 *
 * @param x - `radius` 10 m to 100 000 m, `screenHeight` 1 m to 100 m and no more than the radius.
 * @returns `distance` over level ground in m and `pathAngle` at the screen height in degrees.
 * @throws {@link DomainError} when a parameter is not within its range, or the arc does not reach the screen height.
 * @record dynamics.airborne-distance-in-arc
 *
 * @example
 * airborneDistanceInArc({ radius: m(430), screenHeight: mHeight(15) }).distance // ≈ 112.6 ± 0.1
 * airborneDistanceInArc({ radius: m(430), screenHeight: mHeight(15) }).pathAngle // ≈ 15.2 ± 0.1
 */
export function airborneDistanceInArc(x: AirborneDistanceInArcInputs): AirborneArc {
  demand('radius', x.radius, airborneDistanceInArcDomain.radius);
  demand('screenHeight', x.screenHeight, airborneDistanceInArcDomain.screenHeight);
  const { radius: r_m, screenHeight: h_m }: Numbers<AirborneDistanceInArcInputs> = x;
  if (h_m > r_m) refuseScreenAboveArc(h_m, r_m);
  // As printed, but without the difference of nearly equal numbers: 1 - cos θ = 2 sin²(θ/2), R sin θ = √(h (2R - h)).
  const theta_rad = 2 * Math.asin(Math.sqrt(h_m / (2 * r_m)));
  const distance = Math.sqrt(h_m * (2 * r_m - h_m));
  return { distance, pathAngle: (theta_rad * 180) / Math.PI } as AirborneArc;
}

/**
 * Airborne distance of a take-off in calm air: an arc up to the climb, then a straight climb to the screen height.
 *
 * s = R sin γ + [h − R (1 − cos γ)]/tan γ; where the arc reaches the screen height first, s = √(R² − (R − h)²): R the
 * radius of the arc and h the screen height in m, γ the angle of the climb in degrees.
 *
 * @param x - `radius` 10 m to 100 000 m, `screenHeight` 1 m to 100 m, `climbAngle` 0.1° to 45°.
 * @returns The airborne distance over level ground in m.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record dynamics.airborne-distance
 *
 * @example
 * airborneDistance({ radius: m(430), screenHeight: mHeight(15), climbAngle: degrees(6) }) // ≈ 165.25 ± 0.01
 * airborneDistance({ radius: m(430), screenHeight: mHeight(15), climbAngle: degrees(20) }) // ≈ 112.6 ± 0.1
 */
export function airborneDistance(x: AirborneDistanceInputs): Metres {
  demand('radius', x.radius, airborneDistanceDomain.radius);
  demand('screenHeight', x.screenHeight, airborneDistanceDomain.screenHeight);
  demand('climbAngle', x.climbAngle, airborneDistanceDomain.climbAngle);
  const { radius: r_m, screenHeight: h_m, climbAngle: gamma_deg }: Numbers<AirborneDistanceInputs> = x;
  const gamma_rad = (gamma_deg * Math.PI) / 180;
  const arcHeight_m = 2 * r_m * Math.sin(gamma_rad / 2) ** 2;
  if (arcHeight_m >= h_m) return Math.sqrt(h_m * (2 * r_m - h_m)) as Metres;
  return (r_m * Math.sin(gamma_rad) + (h_m - arcHeight_m) / Math.tan(gamma_rad)) as Metres;
}

function refuseScreenAboveArc(received: number, max: number): never {
  const { unit, min } = airborneDistanceInArcDomain.screenHeight;
  const source = 'an arc rises by no more than its radius before it is upright';
  throw inconsistent('screenHeight', received, unit, min, max, source);
}
