import { type Domain, demand, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link dragCoefficientNearGround}. */
export interface DragCoefficientNearGroundInputs {
  /** Drag coefficient without lift, clean. */
  readonly zeroLiftDrag: Ratio;
  /** What the undercarriage and the flaps add to it. */
  readonly gearDrag: Ratio;
  /** Viscous drag due to lift, k₁: the part that does not fade near the ground. */
  readonly viscousDragFactor: Ratio;
  /** Span efficiency of the wing. */
  readonly spanEfficiency: Ratio;
  /** Aspect ratio of the wing: span squared over area. */
  readonly aspectRatio: Ratio;
  /** Share of the lift-induced drag that is left near the ground. */
  readonly groundEffectFactor: Ratio;
  /** Lift coefficient in the attitude of the roll. */
  readonly liftCoefficient: Ratio;
}

export const dragCoefficientNearGroundDomain = {
  zeroLiftDrag: { unit: 'ratio', min: 0, max: 0.5, source: 'library range' },
  gearDrag: { unit: 'ratio', min: 0, max: 0.5, source: 'library range' },
  viscousDragFactor: { unit: 'ratio', min: 0, max: 0.2, source: 'library range' },
  spanEfficiency: { unit: 'ratio', min: 0.4, max: 1.2, source: 'library range' },
  aspectRatio: { unit: 'ratio', min: 1, max: 40, source: 'library range' },
  groundEffectFactor: { unit: 'ratio', min: 0, max: 1, source: 'none of the induced drag to all of it' },
  liftCoefficient: { unit: 'ratio', min: 0, max: 4, source: 'library range' },
} satisfies Domain<DragCoefficientNearGroundInputs>;

/**
 * Drag coefficient of an aeroplane that rolls or flies close to the ground.
 *
 * C_D = C_D0 + ΔC_D0 + (k₁ + φ/(π e AR)) C_L²: C_D0 the drag coefficient without lift, ΔC_D0 what undercarriage and
 * flaps add, k₁ the viscous drag due to lift, φ the ground-effect factor, e the span efficiency, AR the aspect ratio.
 *
 * @param x - `zeroLiftDrag` 0 to 0.5, `gearDrag` 0 to 0.5, `viscousDragFactor` 0 to 0.2, `spanEfficiency` 0.4 to 1.2,
 * `aspectRatio` 1 to 40, `groundEffectFactor` 0 to 1, `liftCoefficient` 0 to 4.
 * @returns The drag coefficient as a ratio.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record dynamics.drag-coefficient-near-ground
 *
 * @example
 * dragCoefficientNearGround({ zeroLiftDrag: ratio(0.03), gearDrag: ratio(0.01), viscousDragFactor: ratio(0), spanEfficiency: ratio(0.8), aspectRatio: ratio(7), groundEffectFactor: ratio(0.7), liftCoefficient: ratio(0.5) }) // ≈ 0.04995 ± 0.00001
 */
export function dragCoefficientNearGround(x: DragCoefficientNearGroundInputs): Ratio {
  demand('zeroLiftDrag', x.zeroLiftDrag, dragCoefficientNearGroundDomain.zeroLiftDrag);
  demand('gearDrag', x.gearDrag, dragCoefficientNearGroundDomain.gearDrag);
  demand('viscousDragFactor', x.viscousDragFactor, dragCoefficientNearGroundDomain.viscousDragFactor);
  demand('spanEfficiency', x.spanEfficiency, dragCoefficientNearGroundDomain.spanEfficiency);
  demand('aspectRatio', x.aspectRatio, dragCoefficientNearGroundDomain.aspectRatio);
  demand('groundEffectFactor', x.groundEffectFactor, dragCoefficientNearGroundDomain.groundEffectFactor);
  demand('liftCoefficient', x.liftCoefficient, dragCoefficientNearGroundDomain.liftCoefficient);
  const { zeroLiftDrag: cd0, gearDrag, viscousDragFactor: k1 }: Numbers<DragCoefficientNearGroundInputs> = x;
  const { spanEfficiency: e, aspectRatio, groundEffectFactor: phi }: Numbers<DragCoefficientNearGroundInputs> = x;
  const { liftCoefficient: cl }: Numbers<DragCoefficientNearGroundInputs> = x;
  return (cd0 + gearDrag + (k1 + phi / (Math.PI * e * aspectRatio)) * cl ** 2) as Ratio;
}
