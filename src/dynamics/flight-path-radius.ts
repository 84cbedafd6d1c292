import {
  type Domain,
  demand,
  type Metres,
  type MetresPerSecondSquared,
  type Numbers,
  type Ratio,
  type TrueAirspeed,
} from '../units/index.ts';

/** Inputs of {@link flightPathRadius}. */
export interface FlightPathRadiusInputs {
  /** Mean speed along the arc. */
  readonly speed: TrueAirspeed;
  /** Load factor in the arc: lift over weight. */
  readonly loadFactor: Ratio;
  /** Acceleration of free fall. */
  readonly gravity: MetresPerSecondSquared;
}

export const flightPathRadiusDomain = {
  speed: { unit: 'ktas', min: 15, max: 300, source: 'library range' },
  loadFactor: { unit: 'ratio', min: 1.01, max: 4, source: 'library range' },
  gravity: { unit: 'mps2', min: 9, max: 10.5, source: 'free fall on the Earth, as textbooks round it' },
} satisfies Domain<FlightPathRadiusInputs>;

/**
 * Radius of the upright arc in which the path is bent upwards after lift-off or in the flare.
 *
 * R = V² / [g (n − 1)]: V the mean true airspeed in m/s, n the load factor, g the acceleration of free fall in m/s².
 * Textbooks take V = 1.15 V_stall and n = 1.19 after lift-off (R = 6.96 V_stall²/g), and V = 1.23 V_stall in the flare
 * with n = 1.2, others n = 1.1.
 *
 * @param x - `speed` 15 KTAS to 300 KTAS, `loadFactor` 1.01 to 4, `gravity` 9 m/s² to 10.5 m/s².
 * @returns The radius in m.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record dynamics.flight-path-radius
 *
 * @example
 * flightPathRadius({ speed: ktas(55), loadFactor: ratio(1.19), gravity: standardGravity }) // ≈ 429.7 ± 0.1
 */
export function flightPathRadius(x: FlightPathRadiusInputs): Metres {
  demand('speed', x.speed, flightPathRadiusDomain.speed);
  demand('loadFactor', x.loadFactor, flightPathRadiusDomain.loadFactor);
  demand('gravity', x.gravity, flightPathRadiusDomain.gravity);
  const { speed: v_kt, loadFactor: n, gravity: g_mps2 }: Numbers<FlightPathRadiusInputs> = x;
  const v_mps = (v_kt * 1852) / 3600;
  return (v_mps ** 2 / (g_mps2 * (n - 1))) as Metres;
}
