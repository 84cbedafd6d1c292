import { type Domain, demand, type Kilograms, type Numbers, type Ratio } from '../units/index.ts';
import { rollOfExample_m } from './roll-of-example.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link rollFactorByMassSquare}. */
export interface RollFactorByMassSquareInputs {
  /** Mass to be flown. */
  readonly mass: Kilograms;
  /** Mass for which the roll is known. */
  readonly referenceMass: Kilograms;
}

/** Inputs of the comparison, into which friction and the loss of acceleration enter. */
export interface RollAtMassInputs {
  /** Mass to be flown. */
  readonly mass: Kilograms;
  /** Mass for which the roll is known. */
  readonly referenceMass: Kilograms;
  /** Share of the first acceleration that is lost by lift-off at the reference mass, to drag and to falling thrust. */
  readonly accelerationLost: Ratio;
  /** Share of the static thrust that rolling friction takes at the reference mass. */
  readonly frictionShare: Ratio;
}

const massBound = { unit: 'kg', min: 100, max: 5700, source: 'library range, class B' } as const;

export const rollFactorByMassSquareDomain = {
  mass: massBound,
  referenceMass: massBound,
} satisfies Domain<RollFactorByMassSquareInputs>;

/**
 * Factor of the take-off ground roll at another mass by the square of the mass: the lift-off speed goes with its root, and
 * the acceleration with its inverse as long as nothing but the thrust acts.
 *
 * k ≈ (m/m₀)²: m the mass and m₀ the mass of the known roll in kg.
 *
 * @param x - `mass` and `referenceMass` 100 kg to 5700 kg.
 * @returns Ratio of the rolls.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record rules-of-thumb.roll-factor-by-mass-square
 *
 * @example
 * rollFactorByMassSquare({ mass: kg(840), referenceMass: kg(800) }) // ≈ 1.1025 ± 1e-9
 */
export function rollFactorByMassSquare(x: RollFactorByMassSquareInputs): Ratio {
  demand('mass', x.mass, rollFactorByMassSquareDomain.mass);
  demand('referenceMass', x.referenceMass, rollFactorByMassSquareDomain.referenceMass);
  const { mass: m_kg, referenceMass: m0_kg }: Numbers<RollFactorByMassSquareInputs> = x;
  return ((m_kg / m0_kg) ** 2) as Ratio;
}

/**
 * The mass square beside the ground roll from the forces.
 *
 * @example
 * const roll = { mass: kg(880), referenceMass: kg(800), accelerationLost: ratio(0.2), frictionShare: ratio(0.14) }
 * ruleOfThumbError(massSquareRule, roll).percent?.toFixed(1) // => '-3.0'
 */
export const massSquareRule: RuleOfThumb<RollAtMassInputs> = {
  id: 'mass-square',
  title: 'Ground roll by the square of the mass',
  words: 'A tenth more mass lengthens the ground roll by 21 %.',
  rule: (x) => rollFactorByMassSquare({ mass: x.mass, referenceMass: x.referenceMass }),
  exact: (x) => {
    const { mass, referenceMass, accelerationLost, frictionShare }: Numbers<RollAtMassInputs> = x;
    demand('accelerationLost', accelerationLost, shareBound);
    demand('frictionShare', frictionShare, shareBound);
    const shares = { accelerationLost, frictionShare, liftOffSpeed_kt: 50, headwind_kt: 0 };
    return (
      rollOfExample_m({ ...shares, massRatio: mass / referenceMass }) / rollOfExample_m({ ...shares, massRatio: 1 })
    );
  },
  unit: 'ratio',
  errorIn: 'percent',
  domain: {
    mass: { words: 'a mass', unit: 'kg', min: 640, max: 960, step: 40 },
    referenceMass: { words: 'a mass of the known roll', unit: 'kg', min: 800, max: 800, step: 1 },
    accelerationLost: { words: 'a share of acceleration lost', unit: 'ratio', min: 0, max: 0.5, step: 0.05 },
    frictionShare: { words: 'a share of thrust taken by friction', unit: 'ratio', min: 0, max: 0.3, step: 0.05 },
  },
  unsafeSide: 'reads low',
  because: 'the roll is longer than it says',
  unsafeWhere: 'It reads low whenever the aeroplane is heavier, the more the weaker its thrust.',
  citation: { source: 'faa-phak', locator: 'ch. 11, weight and take-off distance', access: 'read' },
};

const shareBound = { unit: 'ratio', min: 0, max: 0.9, source: 'library range' } as const;
