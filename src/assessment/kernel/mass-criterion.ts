import { convert } from '../../units/unit-table.ts';
import { phaseWords } from '../request/phase-words.ts';
import type { Situation } from '../request/situation.ts';
import { atMost, type Judged, named } from './criterion.ts';

/** The mass against its maximum, in the unit in which the data state that; no weather changes it. */
export function massCriterion({
  phase,
  mass_kg,
  maximumMass,
}: Pick<Situation, 'phase' | 'mass_kg' | 'maximumMass'>): Judged {
  const { value: limit, unit } = maximumMass;
  const mass = convert(mass_kg, 'kg', unit) as number;
  const judged = atMost(named('mass', 'mass', `${phaseWords[phase]} mass`, unit, 'limitation'), mass, limit);
  if (judged.verdict === 'within') return judged;
  return { ...judged, reasons: [{ code: 'mass-above-maximum', parameters: { mass, limit, unit } }] };
}
