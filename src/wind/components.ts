import {
  type Domain,
  demand,
  type Knots,
  type MagneticDirection,
  type Numbers,
  type TrueDirection,
} from '../units/index.ts';

/** Uses a north that another parameter has decided, without letting this one widen it. */
export type Same<N> = [N][N extends unknown ? 0 : never];

/** Inputs of {@link windComponents}. */
export interface WindComponentsInputs<N extends TrueDirection | MagneticDirection = TrueDirection | MagneticDirection> {
  /** Direction the wind blows from. */
  readonly from: N;
  /** Speed of the wind. */
  readonly speed: Knots;
  /** Direction of the runway in use, or of the track, against the same north as the wind. */
  readonly direction: Same<N>;
}

/** A wind taken apart along and across a direction. */
export interface WindComponents {
  /** Along the direction: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
  /** Across the direction: positive from the right, negative from the left. */
  readonly crosswind: Knots;
}

export const windComponentsDomain = {
  from: { unit: 'deg', min: 0, max: 360, source: 'compass circle' },
  speed: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  direction: { unit: 'deg', min: 0, max: 360, source: 'compass circle' },
} satisfies Domain<WindComponentsInputs>;

/**
 * Headwind and crosswind component of a wind on a runway or a track.
 *
 * H = W cos(φ − θ), X = W sin(φ − θ): W the wind speed in kt, φ the direction it blows from and θ the direction of
 * the runway, both in degrees against the same north, true or magnetic; a mixture does not compile.
 *
 * @param x - `from` 0° to 360°, `speed` 0 kt to 200 kt, `direction` 0° to 360°.
 * @returns `headwind` in kt, negative when it is a tailwind; `crosswind` in kt, positive from the right.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record wind.components
 *
 * @example
 * windComponents({ from: degMagnetic(140), speed: kt(25), direction: degMagnetic(170) }).headwind // ≈ 21.65 ± 0.01
 * windComponents({ from: degMagnetic(140), speed: kt(25), direction: degMagnetic(170) }).crosswind // ≈ -12.5 ± 0.01
 */
export function windComponents<N extends TrueDirection | MagneticDirection>(
  x: WindComponentsInputs<N>,
): WindComponents {
  demand('from', x.from, windComponentsDomain.from);
  demand('speed', x.speed, windComponentsDomain.speed);
  demand('direction', x.direction, windComponentsDomain.direction);
  const { from, speed: speed_kt, direction }: Numbers<WindComponentsInputs> = x;
  const angle_rad = ((from - direction) * Math.PI) / 180;
  const headwind = speed_kt * Math.cos(angle_rad);
  const crosswind = speed_kt * Math.sin(angle_rad);
  return { headwind, crosswind } as WindComponents;
}
