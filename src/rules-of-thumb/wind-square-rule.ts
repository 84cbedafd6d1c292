import {
  type Domain,
  demand,
  inconsistent,
  type Knots,
  type Numbers,
  type Ratio,
  type TrueAirspeed,
} from '../units/index.ts';
import { rollOfExample_m } from './roll-of-example.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link rollFactorByWindSquare}. */
export interface RollFactorByWindSquareInputs {
  /** Wind component along the runway: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
  readonly liftOffSpeed: TrueAirspeed;
}

/** Inputs of the comparison, into which the loss of acceleration enters. */
export interface RollInWindInputs {
  /** Wind component along the runway: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
  readonly liftOffSpeed: TrueAirspeed;
  /** Share of the first acceleration that is lost by lift-off, to drag and to falling thrust; 0 for uniform acceleration. */
  readonly accelerationLost: Ratio;
}

export const rollFactorByWindSquareDomain = {
  headwind: { unit: 'kt', min: -50, max: 50, source: 'library range' },
  liftOffSpeed: { unit: 'ktas', min: 15, max: 250, source: 'library range' },
} satisfies Domain<RollFactorByWindSquareInputs>;

/**
 * Factor of the ground roll in wind by the square of the ground speed at lift-off; exact for uniform acceleration.
 *
 * k ≈ (1 − w/V)²: w the headwind and V the lift-off speed in kt.
 *
 * @param x - `headwind` −50 kt to 50 kt and no more than the lift-off speed, `liftOffSpeed` 15 KTAS to 250 KTAS.
 * @returns Ratio of the rolls in wind and in still air.
 * @throws {@link DomainError} when a parameter is not within its range, or the headwind exceeds the lift-off speed.
 * @record rules-of-thumb.roll-factor-by-wind-square
 *
 * @example
 * rollFactorByWindSquare({ headwind: kt(12), liftOffSpeed: ktas(60) }) // ≈ 0.64 ± 1e-9
 */
export function rollFactorByWindSquare(x: RollFactorByWindSquareInputs): Ratio {
  demand('headwind', x.headwind, rollFactorByWindSquareDomain.headwind);
  demand('liftOffSpeed', x.liftOffSpeed, rollFactorByWindSquareDomain.liftOffSpeed);
  const { headwind: w_kt, liftOffSpeed: v_kt }: Numbers<RollFactorByWindSquareInputs> = x;
  if (w_kt > v_kt) refuseWindAboveLiftOff(w_kt, v_kt);
  return ((1 - w_kt / v_kt) ** 2) as Ratio;
}

/**
 * The wind square beside the ground roll from the forces.
 *
 * @example
 * const roll = { headwind: kt(10), liftOffSpeed: ktas(58), accelerationLost: ratio(0.2) }
 * ruleOfThumbError(windSquareRule, roll).percent?.toFixed(1) // => '-1.3'
 * ruleOfThumbError(windSquareRule, { ...roll, accelerationLost: ratio(0) }).side // => 'exact'
 */
export const windSquareRule: RuleOfThumb<RollInWindInputs> = {
  id: 'wind-square',
  title: 'Ground roll by the square of the wind',
  words:
    'A headwind of a tenth of the lift-off speed shortens the roll by 19 %; a tailwind as strong lengthens it by 21 %.',
  rule: (x) => rollFactorByWindSquare({ headwind: x.headwind, liftOffSpeed: x.liftOffSpeed }),
  exact: (x) => {
    const { headwind, liftOffSpeed, accelerationLost }: Numbers<RollInWindInputs> = x;
    demand('accelerationLost', accelerationLost, accelerationLostBound);
    const roll_m = (headwind_kt: number) =>
      rollOfExample_m({ accelerationLost, frictionShare: 0, massRatio: 1, liftOffSpeed_kt: liftOffSpeed, headwind_kt });
    return roll_m(headwind) / roll_m(0);
  },
  unit: 'ratio',
  errorIn: 'percent',
  domain: {
    headwind: { words: 'a wind', unit: 'kt', min: -10, max: 20, step: 1 },
    liftOffSpeed: { words: 'a lift-off speed', unit: 'ktas', min: 40, max: 70, step: 5 },
    accelerationLost: { words: 'a share of acceleration lost', unit: 'ratio', min: 0, max: 0.5, step: 0.05 },
  },
  unsafeSide: 'reads low',
  because: 'the roll is longer than it says',
  unsafeWhere: 'It reads low in every headwind, once acceleration falls off; in a tailwind it reads high.',
  citation: { source: 'faa-phak', locator: 'ch. 11, headwind and take-off distance', access: 'read' },
};

const accelerationLostBound = { unit: 'ratio', min: 0, max: 0.9, source: 'library range' } as const;

function refuseWindAboveLiftOff(received: number, max: number): never {
  const { unit, min } = rollFactorByWindSquareDomain.headwind;
  const source = 'no more than the lift-off speed';
  throw inconsistent('headwind', received, unit, min, max, source);
}
