import { type Domain, demand, type Metres, type Numbers } from '../units/index.ts';

/** Inputs of {@link lateralSemiWidth}. */
export interface LateralSemiWidthInputs {
  /** Wingspan of the aeroplane. */
  readonly wingspan: Metres;
  /** Distance travelled along the ground from the end of the take-off distance available, or from where the rule says. */
  readonly distance: Metres;
}

export const lateralSemiWidthDomain = {
  wingspan: { unit: 'm', min: 1, max: 100, source: 'library range' },
  distance: { unit: 'm', min: 0, max: 100000, source: 'library range' },
} satisfies Domain<LateralSemiWidthInputs>;

/** From this wingspan on the rule no longer counts from the wing tip. */
const largeSpan_m = 60;

/**
 * Half the width of the strip in which the rule for aeroplanes of performance class B with two or more engines looks for
 * obstacles: one that lies farther from the intended track need not be cleared vertically. Read in a copy of
 * CAT.POL.A.310. For information: no such rule covers an aeroplane with one engine, and the strip never removes an
 * obstacle from an assessment.
 *
 * w = 90 m + 0.125 D, or w = b/2 + 60 m + 0.125 D for a wingspan b below 60 m: D the distance travelled in m.
 *
 * @param x - `wingspan` 1 m to 100 m, `distance` 0 m to 100 000 m.
 * @returns Half the width of the strip in m, to either side of the track.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.lateral-semi-width
 *
 * @example
 * lateralSemiWidth({ wingspan: m(11), distance: m(1000) }) // ≈ 190.5 ± 1e-9
 */
export function lateralSemiWidth(x: LateralSemiWidthInputs): Metres {
  demand('wingspan', x.wingspan, lateralSemiWidthDomain.wingspan);
  demand('distance', x.distance, lateralSemiWidthDomain.distance);
  const { wingspan: b_m, distance: d_m }: Numbers<LateralSemiWidthInputs> = x;
  const atStart_m = b_m < largeSpan_m ? b_m / 2 + 60 : 90;
  return (atStart_m + 0.125 * d_m) as Metres;
}
