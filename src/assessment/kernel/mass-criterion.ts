import { convert } from '../../units/unit-table.ts';
import { phaseWords } from '../request/phase-words.ts';
import { atMost, type Judged, named } from './criterion.ts';

/** What of a situation the mass is judged by; no weather changes it. */
interface Loaded {
  readonly phase: 'takeoff' | 'landing';
  readonly mass_kg: number;
  readonly maximumMass: { readonly value: number; readonly unit: 'kg' | 'lb' };
}

/** The mass against its maximum, in the unit in which the data state that. */
export function massCriterion({ phase, mass_kg, maximumMass }: Loaded): Judged {
  const { value: limit, unit } = maximumMass;
  const mass = convert(mass_kg, 'kg', unit) as number;
  const judged = atMost(named('mass', 'mass', `${phaseWords[phase]} mass`, unit, 'limitation'), mass, limit);
  if (judged.verdict === 'within') return judged;
  return { ...judged, reasons: [{ code: 'mass-above-maximum', parameters: { mass, limit, unit } }] };
}
