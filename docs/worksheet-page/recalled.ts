import { type FactorSet, factorSets, type Surface, type SurfaceEffect, surfaceEffect } from 'groundroll/distance';
import type { PageState } from './state.ts';
import { surfaceOf } from './surface.ts';

/** The factors of the chosen set that today's surface asks for and that the library only recalls. */
export function recalledToday({ values }: PageState): SurfaceEffect['factors'] {
  const sets: Readonly<Record<string, FactorSet>> = factorSets;
  const set = sets[values.factorSet];
  if (set === undefined) return [];
  const rules = set[values.job === 'landing' ? 'landing' : 'takeoff'];
  const { factors } = surfaceEffect(rules, surfaceOf(values) as unknown as Surface);
  return factors.filter(({ access }) => access === 'recalled');
}

/** The same in the address: what was compared holds for these factors, not for those of another surface or set. */
export function namesOfRecalled(state: PageState): string {
  return recalledToday(state)
    .map(({ id }) => id)
    .join(',');
}

/** Whether somebody says to have compared just these factors with a printed edition. */
export function areCompared(state: PageState): boolean {
  const names = namesOfRecalled(state);
  return names !== '' && state.values.compared === names;
}

/** The confirmations of a request. */
export function confirmationsOf(state: PageState): readonly Readonly<Record<string, unknown>>[] {
  if (!areCompared(state)) return [];
  const { comparedEdition: edition, comparedDate: date } = state.values;
  return recalledToday(state).map(({ id: factorId }) => ({ factorId, edition, date }));
}
