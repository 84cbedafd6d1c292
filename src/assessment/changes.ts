import { type Bound, demand, demandNames } from '../units/index.ts';

/** What may differ from the prepared request beside the weather; everything else stays. */
export interface Changes {
  readonly mass_kg?: number;
  /** Instead of the factors of manual and set for the surface. */
  readonly surfaceFactor?: number;
  /** How much longer than the manual's figure the pilot takes; 1 where not given. */
  readonly techniqueFactor?: number;
}

const source = 'bounds of a comparison';
const bounds = {
  mass_kg: { unit: 'kg', min: 50, max: 10_000, source },
  surfaceFactor: { unit: 'ratio', min: 1, max: 5, source },
  techniqueFactor: { unit: 'ratio', min: 0.5, max: 3, source },
} satisfies Record<keyof Changes, Bound>;
const names = Object.keys(bounds);

/** Throws unless only what may differ differs, within its bounds. */
export function demandChanges(changes: Changes): void {
  demandNames('changes', changes, names);
  const { mass_kg, surfaceFactor, techniqueFactor } = changes;
  if (mass_kg !== undefined) demand('mass_kg', mass_kg, bounds.mass_kg);
  if (surfaceFactor !== undefined) demand('surfaceFactor', surfaceFactor, bounds.surfaceFactor);
  if (techniqueFactor !== undefined) demand('techniqueFactor', techniqueFactor, bounds.techniqueFactor);
}
