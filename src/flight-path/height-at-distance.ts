import {
  type Domain,
  demand,
  type FeetPerMinute,
  type GroundSpeed,
  type HeightInMetres,
  type Metres,
  type Numbers,
} from '../units/index.ts';

/** Inputs of {@link heightAtDistance}. */
export interface HeightAtDistanceInputs {
  /** Rate of climb at the speed flown. */
  readonly rateOfClimb: FeetPerMinute;
  /** Speed over the ground at the speed flown, the wind in it. */
  readonly groundSpeed: GroundSpeed;
  /** Distance along the ground. */
  readonly distance: Metres;
}

export const heightAtDistanceDomain = {
  rateOfClimb: { unit: 'ftPerMin', min: -3000, max: 6000, source: 'library range' },
  groundSpeed: { unit: 'ktGS', min: 1, max: 300, source: 'library range' },
  distance: { unit: 'm', min: 0, max: 100000, source: 'library range' },
} satisfies Domain<HeightAtDistanceInputs>;

/**
 * Height gained over a distance along the ground; asked for V_X and for V_Y in the same wind, it tells which of them
 * passes an obstacle the higher.
 *
 * h = (ROC / GS) d: ROC the rate of climb given in ft/min, GS the ground speed given in kt, both taken in m/s, d the
 * distance in m.
 *
 * @param x - `rateOfClimb` −3000 ft/min to 6000 ft/min, `groundSpeed` 1 kt to 300 kt, `distance` 0 m to 100 000 m.
 * @returns The height gained in m; negative in a descent.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.height-at-distance
 *
 * @example
 * heightAtDistance({ rateOfClimb: ftPerMin(600), groundSpeed: ktGS(50), distance: m(1000) }) // ≈ 118.5 ± 0.1
 */
export function heightAtDistance(x: HeightAtDistanceInputs): HeightInMetres {
  demand('rateOfClimb', x.rateOfClimb, heightAtDistanceDomain.rateOfClimb);
  demand('groundSpeed', x.groundSpeed, heightAtDistanceDomain.groundSpeed);
  demand('distance', x.distance, heightAtDistanceDomain.distance);
  const { rateOfClimb: roc_ftPerMin, groundSpeed: gs_kt, distance: d_m }: Numbers<HeightAtDistanceInputs> = x;
  const roc_mps = (roc_ftPerMin * 0.3048) / 60;
  const gs_mps = (gs_kt * 1852) / 3600;
  return ((roc_mps / gs_mps) * d_m) as HeightInMetres;
}
