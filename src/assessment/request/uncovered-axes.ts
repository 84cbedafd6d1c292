import type { DistanceData, PrintedLaw } from '../../aircraft/index.ts';
import type { FactorSet, SteppedRule } from '../../distance/index.ts';
import type { UnitWord } from '../../units/unit-table.ts';
import type { Reason } from '../result/reason.ts';
import { inUnit } from './in-unit.ts';

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

/** The axes that the tables of one configuration lack, in the order in which they are corrected for. */
export function uncoveredAxes(
  phase: 'takeoff' | 'landing',
  data: DistanceData | undefined,
  set: FactorSet,
): readonly UncoveredAxis[] {
  if (data === undefined) return [];
  const { associatedConditions: stated, corrections } = data;
  const { mass, elevation, temperature } = set[phase];
  const table = phase === 'takeoff' ? 'take-off' : 'landing';
  const axes: UncoveredAxis[] = [];
  if (stated.mass !== undefined) {
    const limit_kg = inUnit(stated.mass, 'kg');
    axes.push({
      quantity: 'mass',
      holdsFor: limit_kg,
      law: lawOf(corrections.mass, 'kg', 'kg'),
      rule: mass,
      notCovered: { code: 'mass-not-covered', parameters: { table, limit_kg } },
    });
  }
  if (stated.pressureAltitude !== undefined) {
    const limit_ft = inUnit(stated.pressureAltitude, 'ftPA');
    axes.push({
      quantity: 'elevation',
      holdsFor: limit_ft,
      law: lawOf(corrections.pressureAltitude, 'ftPA', 'ftPA'),
      rule: elevation,
      notCovered: { code: 'elevation-not-covered', parameters: { table, limit_ft } },
    });
  }
  if (stated.temperature !== undefined) {
    const limit_degC = inUnit(stated.temperature, 'degC');
    axes.push({
      quantity: 'temperature',
      holdsFor: limit_degC,
      law: lawOf(corrections.temperature, 'degCDifference', 'degC'),
      rule: temperature,
      notCovered: { code: 'temperature-not-covered', parameters: { table, limit_degC } },
    });
  }
  return axes;
}

function lawOf(
  law: PrintedLaw<UnitWord, UnitWord> | undefined,
  per: UnitWord,
  upTo: UnitWord,
): StraightLaw | undefined {
  return law && { change: law.change.value, per: inUnit(law.per, per), upTo: inUnit(law.upTo, upTo) };
}
