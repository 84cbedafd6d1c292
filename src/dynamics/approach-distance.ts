import {
  type Degrees,
  type Domain,
  demand,
  type HeightInMetres,
  inconsistent,
  type Metres,
  type Numbers,
} from '../units/index.ts';

/** Inputs of {@link approachDistance}. */
export interface ApproachDistanceInputs {
  /** Screen height from which the landing is counted. */
  readonly screenHeight: HeightInMetres;
  /** Height at which the flare begins. */
  readonly flareHeight: HeightInMetres;
  /** Angle of the approach path below the horizontal. */
  readonly pathAngle: Degrees;
}

export const approachDistanceDomain = {
  screenHeight: { unit: 'mHeight', min: 1, max: 100, source: 'library range' },
  flareHeight: { unit: 'mHeight', min: 0, max: 100, source: 'library range' },
  pathAngle: { unit: 'deg', min: 0.5, max: 15, source: 'library range' },
} satisfies Domain<ApproachDistanceInputs>;

/**
 * Distance over level ground from the screen height to the beginning of the flare.
 *
 * s_a = (h − h_f) / tan θ: h the screen height and h_f the height at which the flare begins, in m; θ the angle of the
 * approach path in degrees.
 *
 * @param x - `screenHeight` 1 m to 100 m, `flareHeight` 0 m to 100 m and no higher than the screen, `pathAngle` 0.5° to
 * 15°.
 * @returns The distance in m.
 * @throws {@link DomainError} when a parameter is not within its range, or the flare begins above the screen.
 * @record dynamics.approach-distance
 *
 * @example
 * approachDistance({ screenHeight: mHeight(15), flareHeight: mHeight(1.5), pathAngle: degrees(4) }) // ≈ 193.06 ± 0.01
 */
export function approachDistance(x: ApproachDistanceInputs): Metres {
  demand('screenHeight', x.screenHeight, approachDistanceDomain.screenHeight);
  demand('flareHeight', x.flareHeight, approachDistanceDomain.flareHeight);
  demand('pathAngle', x.pathAngle, approachDistanceDomain.pathAngle);
  const { screenHeight: h_m, flareHeight: hf_m, pathAngle: theta_deg }: Numbers<ApproachDistanceInputs> = x;
  if (hf_m > h_m) refuseFlareAboveScreen(hf_m, h_m);
  const theta_rad = (theta_deg * Math.PI) / 180;
  return ((h_m - hf_m) / Math.tan(theta_rad)) as Metres;
}

function refuseFlareAboveScreen(received: number, max: number): never {
  const { unit, min } = approachDistanceDomain.flareHeight;
  const source = 'the flare begins below the screen';
  throw inconsistent('flareHeight', received, unit, min, max, source);
}
