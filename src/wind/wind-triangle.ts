import {
  type Degrees,
  type Domain,
  demand,
  type GroundSpeed,
  inconsistent,
  type Knots,
  type MagneticDirection,
  type Numbers,
  type TrueAirspeed,
  type TrueDirection,
} from '../units/index.ts';
import { type Same, windComponents } from './components.ts';

/** Inputs of {@link windTriangle}. */
export interface WindTriangleInputs<N extends TrueDirection | MagneticDirection = TrueDirection | MagneticDirection> {
  /** Direction the wind blows from. */
  readonly from: N;
  /** Speed of the wind. */
  readonly speed: Knots;
  /** Track to be made good, against the same north as the wind. */
  readonly track: Same<N>;
  readonly trueAirspeed: TrueAirspeed;
}

/** What it takes to keep a track in a wind. */
export interface WindTriangle<N extends TrueDirection | MagneticDirection = TrueDirection | MagneticDirection> {
  /** From the track to the heading: positive to the right, into a wind from the right. */
  readonly windCorrectionAngle: Degrees;
  /** From the heading to the track, the other way: positive where the wind carries the aeroplane to the right. */
  readonly drift: Degrees;
  /** Above 0° up to 360°, against the same north as the wind. */
  readonly heading: N;
  readonly groundSpeed: GroundSpeed;
}

export const windTriangleDomain = {
  from: { unit: 'deg', min: 0, max: 360, source: 'compass circle' },
  speed: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  track: { unit: 'deg', min: 0, max: 360, source: 'compass circle' },
  trueAirspeed: { unit: 'ktas', min: 10, max: 500, source: 'library range' },
} satisfies Domain<WindTriangleInputs>;

/**
 * Heading, drift and ground speed that keep a track in a wind.
 *
 * Wind correction angle α = arcsin(X / V), heading = track + α, drift = −α, ground speed V_G = V cos α − H: V the true
 * airspeed, H = W cos(φ − θ) and X = W sin(φ − θ) the wind along and across the track in kt, φ the direction the wind
 * of speed W blows from and θ the track, both against the same north.
 *
 * @param x - `from` and `track` 0° to 360°, `speed` 0 kt to 200 kt, `trueAirspeed` 10 KTAS to 500 KTAS.
 * @returns `windCorrectionAngle` and `drift` in degrees, to the right positive; `heading` above 0° up to 360°;
 * `groundSpeed` in kt, above zero.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the wind across
 * the track exceeds the true airspeed or leaves no ground speed.
 * @record wind.triangle
 *
 * @example
 * windTriangle({ from: degTrue(230), speed: kt(15), track: degTrue(270), trueAirspeed: ktas(70) }).heading // ≈ 262.08 ± 0.01
 * windTriangle({ from: degTrue(230), speed: kt(15), track: degTrue(270), trueAirspeed: ktas(70) }).groundSpeed // ≈ 57.84 ± 0.01
 * windTriangle({ from: degTrue(360), speed: kt(45), track: degTrue(90), trueAirspeed: ktas(40) }) // throws trueAirspeed: 40 ktas is inconsistent with 45 to 500 ktas
 */
export function windTriangle<N extends TrueDirection | MagneticDirection>(x: WindTriangleInputs<N>): WindTriangle<N> {
  demand('track', x.track, windTriangleDomain.track);
  demand('trueAirspeed', x.trueAirspeed, windTriangleDomain.trueAirspeed);
  const { from, speed } = x as WindTriangleInputs;
  const { track: track_deg, trueAirspeed: v_kt }: Numbers<WindTriangleInputs> = x;
  const wind = windComponents({ from, speed, direction: x.track as TrueDirection | MagneticDirection });
  const { headwind: headwind_kt, crosswind: crosswind_kt }: Numbers<typeof wind> = wind;
  if (Math.abs(crosswind_kt) > v_kt) {
    refuseSpeed(v_kt, Math.abs(crosswind_kt), 'the wind across the track is held by the true airspeed');
  }
  const angle_rad = Math.asin(crosswind_kt / v_kt);
  const angle_deg = (angle_rad * 180) / Math.PI;
  const groundSpeed = v_kt * Math.cos(angle_rad) - headwind_kt;
  if (groundSpeed <= 0) refuseSpeed(v_kt, speed, 'the wind leaves a ground speed');
  const heading = onCompass(track_deg + angle_deg);
  return { windCorrectionAngle: angle_deg, drift: 0 - angle_deg, heading, groundSpeed } as WindTriangle<N>;
}

/** The same direction above 0° up to 360°: north is 360°. */
export function onCompass(angle_deg: number): number {
  const turned = angle_deg % 360;
  return turned <= 0 ? turned + 360 : turned;
}

function refuseSpeed(received: number, min: number, source: string): never {
  const { unit, max } = windTriangleDomain.trueAirspeed;
  throw inconsistent('trueAirspeed', received, unit, min, max, source);
}
