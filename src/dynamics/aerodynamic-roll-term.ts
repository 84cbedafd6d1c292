import {
  type Domain,
  demand,
  type KilogramsPerCubicMetre,
  type NewtonsPerSquareMetre,
  type Numbers,
  type PerMetrePerSecondSquared,
  type Ratio,
} from '../units/index.ts';

/** Inputs of {@link aerodynamicRollTerm}. */
export interface AerodynamicRollTermInputs {
  /** Density of the air. */
  readonly density: KilogramsPerCubicMetre;
  /** Weight over wing area. */
  readonly wingLoading: NewtonsPerSquareMetre;
  /** Drag coefficient in the attitude of the roll, near the ground. */
  readonly dragCoefficient: Ratio;
  /** Lift coefficient in the attitude of the roll. */
  readonly liftCoefficient: Ratio;
  /** Friction of the wheels, rolling or braked, as a share of the load on them. */
  readonly friction: Ratio;
}

export const aerodynamicRollTermDomain = {
  density: { unit: 'kgPerM3', min: 0.3, max: 1.6, source: 'library range' },
  wingLoading: { unit: 'NPerM2', min: 50, max: 10000, source: 'library range' },
  dragCoefficient: { unit: 'ratio', min: 0, max: 1, source: 'library range' },
  liftCoefficient: { unit: 'ratio', min: 0, max: 4, source: 'library range' },
  friction: { unit: 'ratio', min: 0, max: 1, source: 'library range' },
} satisfies Domain<AerodynamicRollTermInputs>;

/**
 * What the air does to the acceleration of a roll, as a share of the weight for each square of the speed.
 *
 * K_A = −ρ/(2 W/S) (C_D − μ C_L): ρ the density in kg/m³, W/S the wing loading in N/m², C_D and C_L the coefficients in
 * the attitude of the roll, μ the friction. Negative where drag outweighs the relief of the wheels. A braked roll in
 * the source counts the same term with the sign turned.
 *
 * @param x - `density` 0.3 kg/m³ to 1.6 kg/m³, `wingLoading` 50 N/m² to 10 000 N/m², `dragCoefficient` 0 to 1,
 * `liftCoefficient` 0 to 4, `friction` 0 to 1.
 * @returns The term in s²/m².
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record dynamics.aerodynamic-roll-term
 *
 * @example
 * aerodynamicRollTerm({ density: kgPerM3(1.225), wingLoading: NPerM2(600), dragCoefficient: ratio(0.05), liftCoefficient: ratio(0.5), friction: ratio(0.04) }) // ≈ -3.0625e-5 ± 1e-9
 */
export function aerodynamicRollTerm(x: AerodynamicRollTermInputs): PerMetrePerSecondSquared {
  demand('density', x.density, aerodynamicRollTermDomain.density);
  demand('wingLoading', x.wingLoading, aerodynamicRollTermDomain.wingLoading);
  demand('dragCoefficient', x.dragCoefficient, aerodynamicRollTermDomain.dragCoefficient);
  demand('liftCoefficient', x.liftCoefficient, aerodynamicRollTermDomain.liftCoefficient);
  demand('friction', x.friction, aerodynamicRollTermDomain.friction);
  const { density: rho_kgPerM3, wingLoading: loading_NPerM2, friction: mu }: Numbers<AerodynamicRollTermInputs> = x;
  const { dragCoefficient: cd, liftCoefficient: cl }: Numbers<AerodynamicRollTermInputs> = x;
  return ((-rho_kgPerM3 / (2 * loading_NPerM2)) * (cd - mu * cl)) as PerMetrePerSecondSquared;
}
