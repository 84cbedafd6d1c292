import { type Domain, demand, type Metres, type Numbers, type Seconds, type TrueAirspeed } from '../units/index.ts';

/** Inputs of {@link rotationDistance}. */
export interface RotationDistanceInputs {
  /** Speed that is held meanwhile: at lift-off, or at touchdown. */
  readonly speed: TrueAirspeed;
  /** Time until the aeroplane leaves the ground, or until the brakes are on. */
  readonly time: Seconds;
}

export const rotationDistanceDomain = {
  speed: { unit: 'ktas', min: 1, max: 300, source: 'library range' },
  time: { unit: 's', min: 0, max: 10, source: 'library range' },
} satisfies Domain<RotationDistanceInputs>;

/**
 * Distance rolled in calm air at a steady speed while the aeroplane is rotated, or before the brakes are on.
 *
 * s = N V: N the time in s and V the true airspeed in m/s. Textbooks take 1 s for a light aeroplane and 3 s for a
 * large one.
 *
 * @param x - `speed` 1 KTAS to 300 KTAS, `time` 0 s to 10 s.
 * @returns The distance in m.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record dynamics.rotation-distance
 *
 * @example
 * rotationDistance({ speed: ktas(52), time: seconds(1) }) // ≈ 26.75 ± 0.01
 */
export function rotationDistance(x: RotationDistanceInputs): Metres {
  demand('speed', x.speed, rotationDistanceDomain.speed);
  demand('time', x.time, rotationDistanceDomain.time);
  const { speed: v_kt, time: n_s }: Numbers<RotationDistanceInputs> = x;
  const v_mps = (v_kt * 1852) / 3600;
  return (n_s * v_mps) as Metres;
}
