import { type Degrees, type Domain, demand, type HeightInMetres, type Metres, type Numbers } from '../units/index.ts';

/** Inputs of {@link distanceForExcessHeight}. */
export interface DistanceForExcessHeightInputs {
  /** Height at which the threshold is passed, above the height that the landing distance is printed for. */
  readonly excessHeight: HeightInMetres;
  /** Angle of the approach path over the ground below the horizontal. */
  readonly pathAngle: Degrees;
}

export const distanceForExcessHeightDomain = {
  excessHeight: { unit: 'mHeight', min: 0, max: 100, source: 'library range' },
  pathAngle: { unit: 'deg', min: 1, max: 15, source: 'library range' },
} satisfies Domain<DistanceForExcessHeightInputs>;

/**
 * Landing distance that is flown over before the height of the table is reached, when the threshold is passed too high
 * and the path angle is kept.
 *
 * x = Δh / tan γ: Δh the excess height in m, γ the angle of the path over the ground in degrees.
 *
 * @param x - `excessHeight` 0 m to 100 m, `pathAngle` 1° to 15°.
 * @returns The distance along the runway in m.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record distance.excess-height
 *
 * @example
 * distanceForExcessHeight({ excessHeight: mHeight(3.048), pathAngle: degrees(3) }) // ≈ 58.16 ± 0.01
 */
export function distanceForExcessHeight(x: DistanceForExcessHeightInputs): Metres {
  demand('excessHeight', x.excessHeight, distanceForExcessHeightDomain.excessHeight);
  demand('pathAngle', x.pathAngle, distanceForExcessHeightDomain.pathAngle);
  const { excessHeight: h_m, pathAngle: angle_deg }: Numbers<DistanceForExcessHeightInputs> = x;
  return (h_m / Math.tan((angle_deg * Math.PI) / 180)) as Metres;
}
