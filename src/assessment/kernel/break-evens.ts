import { type DistanceData, type PrintedRange, printedRange } from '../../aircraft/index.ts';
import { convert } from '../../units/unit-table.ts';
import type { Conditions } from '../request/conditions.ts';
import { inUnit } from '../request/in-unit.ts';
import type { Situation } from '../request/situation.ts';
import { type BreakEven, breakEven } from './break-even.ts';
import type { Judged } from './criterion.ts';

/** What a distance criterion becomes when one thing changes and everything else stays. */
export interface Variations {
  readonly wind: (wind_kt: number) => Judged;
  readonly surface: (factor: number) => Judged;
  readonly mass: (mass_kg: number) => Judged;
  readonly temperature: (conditions: Conditions) => Judged;
}

/** The four break-evens of a distance criterion, each within the range that the table prints. */
export function breakEvens(situation: Situation, conditions: Conditions, vary: Variations): BreakEven[] {
  const { table, maximumMass, policies } = situation;
  if (table === undefined) return [];
  const found: BreakEven[] = [];
  const lastTailwind_kt = greatestTailwind(table);
  if (lastTailwind_kt > 0) {
    const range = { from: 0, to: lastTailwind_kt };
    found.push(
      breakEven({ quantity: 'tailwind', unit: 'kt', ...range, step: 0.1 }, (knots) => vary.wind(-knots).verdict),
    );
  }
  found.push(
    breakEven(
      { quantity: 'surface factor', unit: 'ratio', from: 1, to: 3, step: 0.001 },
      (factor) => vary.surface(factor).verdict,
    ),
  );
  const mass = printedRange(table.distance, 'mass');
  if (mass !== undefined) {
    const ends = endsOf(mass, 'kg');
    const range = { from: ends.from, to: Math.min(ends.to, inUnit(maximumMass, 'kg')) };
    found.push(breakEven({ quantity: 'mass', unit: 'kg', ...range, step: 1 }, (kg) => vary.mass(kg).verdict));
  }
  const temperature = printedRange(table.distance, 'temperature');
  if (temperature !== undefined) {
    // Below the dew point there is no such air: under the policy of virtual temperature the range starts there.
    const byVirtual = policies.humidity === 'virtual temperature' && conditions.dewPoint_degC !== undefined;
    const { dewPoint_degC, ...dry } = conditions;
    const ends = endsOf(temperature, 'degC');
    const from = byVirtual ? Math.max(ends.from, dewPoint_degC ?? ends.from) : ends.from;
    const at = (degC: number): Conditions => ({
      ...dry,
      dewPoint_degC: byVirtual ? dewPoint_degC : undefined,
      temperature_degC: degC,
    });
    found.push(
      breakEven(
        { quantity: 'temperature', unit: 'degC', from, to: ends.to, step: 1 },
        (degC) => vary.temperature(at(degC)).verdict,
      ),
    );
  }
  return found;
}

function endsOf({ from, to, unit }: PrintedRange, wanted: 'kg' | 'degC'): { from: number; to: number } {
  return { from: convert(from, unit, wanted) as number, to: convert(to, unit, wanted) as number };
}

/** The last tailwind that the manual prints: on an axis of its tables, or in its law. */
function greatestTailwind({ distance, corrections }: DistanceData): number {
  const axis = printedRange(distance, 'headwind');
  if (axis !== undefined) return Math.max(0, -axis.from);
  return corrections.tailwind === undefined ? 0 : inUnit(corrections.tailwind.upTo, 'kt');
}
