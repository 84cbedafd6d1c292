import { type Domain, demand, type FeetPerNauticalMile, type Numbers, roundUp } from '../units/index.ts';

/** Inputs of {@link procedureGradientRoundedUp}. */
export interface ProcedureGradientRoundedUpInputs {
  /** Climb gradient of an instrument departure, unrounded. */
  readonly gradient: FeetPerNauticalMile;
  /** Step to round to: 1 ft/NM or 20 ft/NM, after the document followed. */
  readonly step: FeetPerNauticalMile;
}

export const procedureGradientRoundedUpDomain = {
  gradient: { unit: 'ftPerNM', min: -6000, max: 12000, source: 'library range' },
  step: { unit: 'ftPerNM', min: 1, max: 100, source: 'library range' },
} satisfies Domain<ProcedureGradientRoundedUpInputs>;

/**
 * Climb gradient of an instrument departure as it is published, rounded up.
 *
 * Documents disagree on the step, so it must be chosen: the Instrument Procedures Handbook rounds up to a whole ft/NM,
 * a draft order of 1997 to the next 20 ft/NM. Like the gradients themselves, it never enters an obstacle criterion of a
 * light aeroplane.
 *
 * CG′ = ⌈CG / s⌉ s: CG the gradient and s the step, both in ft/NM; a gradient within 10⁻⁹ of a step stays on it.
 *
 * @param x - `gradient` −6000 ft/NM to 12 000 ft/NM, `step` 1 ft/NM to 100 ft/NM.
 * @returns The gradient in ft/NM, a whole number of steps.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.procedure-gradient-rounded-up
 *
 * @example
 * procedureGradientRoundedUp({ gradient: ftPerNM(328.9), step: ftPerNM(1) }) // => 329
 * procedureGradientRoundedUp({ gradient: ftPerNM(328.9), step: ftPerNM(20) }) // => 340
 */
export function procedureGradientRoundedUp(x: ProcedureGradientRoundedUpInputs): FeetPerNauticalMile {
  demand('gradient', x.gradient, procedureGradientRoundedUpDomain.gradient);
  demand('step', x.step, procedureGradientRoundedUpDomain.step);
  const { gradient: cg_ftPerNM, step: step_ftPerNM }: Numbers<ProcedureGradientRoundedUpInputs> = x;
  return roundUp(cg_ftPerNM, step_ftPerNM) as FeetPerNauticalMile;
}
