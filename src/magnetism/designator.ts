import {
  type Degrees,
  type Domain,
  DomainError,
  demand,
  type MagneticDirection,
  type Numbers,
} from '../units/index.ts';

/** Inputs of {@link nearestDesignators}. */
export interface NearestDesignatorsInputs {
  /** Magnetic direction of the centreline in the direction of use. */
  readonly direction: MagneticDirection;
}

/** One designator is nearest. */
export interface OneDesignator {
  readonly kind: 'one';
  /** Two digits, `01` to `36`. */
  readonly designator: string;
  /** The direction less ten times the number, −5° to 5°. */
  readonly offset: Degrees;
  /** How the rule behind the number is known: that north is 36 and not 00 is recalled. */
  readonly access: 'read' | 'recalled';
}

/** The direction ends in 5: the authorities round to different sides, so both are given and neither is preferred. */
export interface TwoDesignators {
  readonly kind: 'tie';
  /** The one before the direction, clockwise. */
  readonly first: string;
  /** The one after it. */
  readonly second: string;
  readonly access: 'read' | 'recalled';
}

/** The designators nearest to a direction, after it has been asked how many there are. */
export type NearestDesignators = OneDesignator | TwoDesignators;

export const nearestDesignatorsDomain = {
  direction: { unit: 'degMagnetic', min: 0, max: 360, source: 'compass circle' },
} satisfies Domain<NearestDesignatorsInputs>;

/** A direction that was worked out, 184.99999999999997, is no nearer to 18 than to 19. */
const guard_deg = 1e-9;

/**
 * The runway designators nearest to a magnetic direction: one, or two where the direction ends in 5.
 *
 * n = θ/10 to the nearest whole number, north being 36: θ the magnetic direction of the centreline in degrees. The one
 * painted may still be another: parallel runways are shifted to stay distinct, a runway keeps its designator while the
 * variation drifts, and in northern Canada designators are true. Take the published one wherever it is known.
 *
 * @param x - `direction` 0° to 360° magnetic.
 * @returns By `kind`: `one` with the `designator` as two digits and its `offset` in degrees; `tie` with `first` and
 * `second`, because some authorities round a 5 up, some down, and some either way. Left, right and centre are not a
 * matter of direction.
 * @throws {@link DomainError} when the direction is not within its range.
 * @record magnetism.nearest-designators
 *
 * @example
 * nearestDesignators({ direction: degMagnetic(183) }) // => { kind: 'one', designator: '18', offset: 3, access: 'read' }
 * nearestDesignators({ direction: degMagnetic(185) }) // => { kind: 'tie', first: '18', second: '19', access: 'read' }
 */
export function nearestDesignators(x: NearestDesignatorsInputs): NearestDesignators {
  demand('direction', x.direction, nearestDesignatorsDomain.direction);
  const { direction }: Numbers<NearestDesignatorsInputs> = x;
  const below = Math.floor(direction / 10);
  const above_deg = direction - below * 10;
  if (Math.abs(above_deg - 5) <= guard_deg) {
    const first = below === 0 ? 36 : below;
    const second = below + 1;
    return { kind: 'tie', first: twoDigits(first), second: twoDigits(second), access: accessOf(first, second) };
  }
  const nearest = above_deg < 5 ? below : below + 1;
  const number = nearest === 0 ? 36 : nearest;
  const offset = (direction - nearest * 10) as Degrees;
  return { kind: 'one', designator: twoDigits(number), offset, access: accessOf(number) };
}

/** Inputs of {@link designatorDirection}. */
export interface DesignatorDirectionInputs {
  /** As painted or charted: `09L`, `9L`, `27`. */
  readonly designator: string;
}

/** What a designator says of the direction of its runway: little, and so it is marked as no more than that. */
export interface DesignatorDirection {
  /** 1 to 36. */
  readonly number: number;
  /** The letter that tells parallel runways apart: left, centre, right. */
  readonly side: 'L' | 'C' | 'R' | 'none';
  /** Ten times the number. */
  readonly direction: MagneticDirection;
  /** The directions, clockwise, that are no nearer to another number: 5° to either side. */
  readonly spreadFrom: MagneticDirection;
  readonly spreadTo: MagneticDirection;
  /** Never a survey: a request that uses the direction says so in the same words. */
  readonly directionFrom: 'designator';
}

export const designatorDirectionDomain = {} satisfies Domain<DesignatorDirectionInputs>;

/**
 * The direction for which a runway designator stands, with the spread that its rounding leaves.
 *
 * θ = 10 n ± 5°: n the number of the designator. The true centreline may lie farther off still, by another 5° or so,
 * where the designator is old or was shifted to tell parallel runways apart; a surveyed bearing is always better.
 *
 * @param x - `designator` a number 1 to 36, with or without a leading zero, alone or followed by L, C or R.
 * @returns `number`, `side`, `direction` and its spread in degrees magnetic, above 0° up to 360°.
 * @throws {@link DomainError} with code `not-a-number` for anything that is no designator.
 * @record magnetism.designator-direction
 *
 * @example
 * designatorDirection({ designator: '09L' }) // => { number: 9, side: 'L', direction: 90, spreadFrom: 85, spreadTo: 95, directionFrom: 'designator' }
 * designatorDirection({ designator: '36' }).spreadTo // => 5
 * designatorDirection({ designator: '00' }) // throws designator: 00
 */
export function designatorDirection(x: DesignatorDirectionInputs): DesignatorDirection {
  const parts = typeof x.designator === 'string' ? /^(0?[1-9]|[12]\d|3[0-6])([LCR]?)$/.exec(x.designator) : null;
  if (parts === null) throw notADesignator(x.designator);
  const number = Number(parts[1]);
  const side = (parts[2] || 'none') as DesignatorDirection['side'];
  const direction = number * 10;
  return {
    number,
    side,
    direction: direction as MagneticDirection,
    spreadFrom: (direction - 5) as MagneticDirection,
    spreadTo: (number === 36 ? 5 : direction + 5) as MagneticDirection,
    directionFrom: 'designator',
  };
}

function twoDigits(number: number): string {
  return String(number).padStart(2, '0');
}

function accessOf(...numbers: readonly number[]): 'read' | 'recalled' {
  return numbers.includes(36) ? 'recalled' : 'read';
}

function notADesignator(received: unknown): DomainError {
  return new DomainError({
    code: 'not-a-number',
    parameter: 'designator',
    received: typeof received === 'string' ? received.slice(0, 20) : typeof received,
    unit: 'designator',
    min: '01',
    max: '36',
    source: 'a number, alone or with L, C or R',
  });
}
