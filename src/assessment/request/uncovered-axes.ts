import type { DistanceData, PrintedLaw } from '../../aircraft/index.ts';
import type { FactorSet, SteppedRule } from '../../distance/index.ts';
import type { UnitWord } from '../../units/unit-table.ts';
import type { Reason } from '../result/reason.ts';
import { inUnit } from './in-unit.ts';
import { phaseWords } from './phase-words.ts';

/** A quantity that the tables have no axis for: they hold for one value of it. */
export interface UncoveredAxis {
  readonly quantity: 'mass' | 'elevation' | 'temperature';
  readonly holdsFor: number;
  /** The manual's own law, which comes before the set's rule. */
  readonly law: StraightLaw | undefined;
  readonly rule: SteppedRule | undefined;
  /** Why there is no figure where neither reaches. */
  readonly notCovered: Reason;
}

/** A law of the manual in the units of the kernel. */
export interface StraightLaw {
  readonly change: number;
  readonly per: number;
  readonly upTo: number;
}

/** In the order in which they are corrected for; what a refusal calls the value is its last word. */
const facts = [
  { stated: 'mass', quantity: 'mass', unit: 'kg', per: 'kg', code: 'mass-not-covered', limit: 'limit_kg' },
  {
    stated: 'pressureAltitude',
    quantity: 'elevation',
    unit: 'ftPA',
    per: 'ftPA',
    code: 'elevation-not-covered',
    limit: 'limit_ft',
  },
  {
    stated: 'temperature',
    quantity: 'temperature',
    unit: 'degC',
    per: 'degCDifference',
    code: 'temperature-not-covered',
    limit: 'limit_degC',
  },
] as const;

/** The axes that the tables of one configuration lack. */
export function uncoveredAxes(
  phase: 'takeoff' | 'landing',
  data: DistanceData | undefined,
  set: FactorSet,
): readonly UncoveredAxis[] {
  if (data === undefined) return [];
  const { associatedConditions, corrections } = data;
  return facts.flatMap(({ stated, quantity, unit, per, code, limit }) => {
    const value = associatedConditions[stated];
    if (value === undefined) return [];
    const holdsFor = inUnit(value, unit);
    const parameters = { table: phaseWords[phase], [limit]: holdsFor };
    const law = lawOf(corrections[stated], per, unit);
    return [{ quantity, holdsFor, law, rule: set[phase][quantity], notCovered: { code, parameters } }];
  });
}

function lawOf(
  law: PrintedLaw<UnitWord, UnitWord> | undefined,
  per: UnitWord,
  upTo: UnitWord,
): StraightLaw | undefined {
  return law && { change: law.change.value, per: inUnit(law.per, per), upTo: inUnit(law.upTo, upTo) };
}
