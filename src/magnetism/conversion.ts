import {
  type Domain,
  demand,
  type MagneticDirection,
  type Numbers,
  type TrueDirection,
  type Variation,
} from '../units/index.ts';

/** Inputs of {@link trueFromMagnetic}. */
export interface TrueFromMagneticInputs {
  readonly direction: MagneticDirection;
  readonly variation: Variation;
}

/** Inputs of {@link magneticFromTrue}. */
export interface MagneticFromTrueInputs {
  readonly direction: TrueDirection;
  readonly variation: Variation;
}

export const trueFromMagneticDomain = {
  direction: { unit: 'degMagnetic', min: 0, max: 360, source: 'compass circle' },
  variation: { unit: 'degEast', min: -180, max: 180, source: 'half circle either way' },
} satisfies Domain<TrueFromMagneticInputs>;

export const magneticFromTrueDomain = {
  direction: { unit: 'degTrue', min: 0, max: 360, source: 'compass circle' },
  variation: { unit: 'degEast', min: -180, max: 180, source: 'half circle either way' },
} satisfies Domain<MagneticFromTrueInputs>;

/**
 * A direction against true north from one against magnetic north.
 *
 * T = M + D: M the magnetic direction and D the variation in degrees, east positive.
 *
 * @param x - `direction` 0° to 360° magnetic, `variation` −180° to 180°, east positive.
 * @returns The direction in degrees true, above 0° up to 360°.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record magnetism.true-from-magnetic
 *
 * @example
 * trueFromMagnetic({ direction: degMagnetic(115), variation: degEast(-3) }) // => 112
 */
export function trueFromMagnetic(x: TrueFromMagneticInputs): TrueDirection {
  demand('direction', x.direction, trueFromMagneticDomain.direction);
  demand('variation', x.variation, trueFromMagneticDomain.variation);
  const { direction: magnetic, variation }: Numbers<TrueFromMagneticInputs> = x;
  return onCompass(magnetic + variation) as TrueDirection;
}

/**
 * A direction against magnetic north from one against true north.
 *
 * M = T − D: T the true direction and D the variation in degrees, east positive.
 *
 * @param x - `direction` 0° to 360° true, `variation` −180° to 180°, east positive.
 * @returns The direction in degrees magnetic, above 0° up to 360°.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record magnetism.magnetic-from-true
 *
 * @example
 * magneticFromTrue({ direction: degTrue(112), variation: degEast(-3) }) // => 115
 */
export function magneticFromTrue(x: MagneticFromTrueInputs): MagneticDirection {
  demand('direction', x.direction, magneticFromTrueDomain.direction);
  demand('variation', x.variation, magneticFromTrueDomain.variation);
  const { direction: trueDirection, variation }: Numbers<MagneticFromTrueInputs> = x;
  return onCompass(trueDirection - variation) as MagneticDirection;
}

/** The same direction above 0° up to 360°: north is 360°. */
function onCompass(angle: number): number {
  const turned = angle % 360;
  return turned <= 0 ? turned + 360 : turned;
}
