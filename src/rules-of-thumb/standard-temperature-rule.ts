import { standardTemperature } from '../atmosphere/index.ts';
import { type Celsius, type Domain, demand, type Numbers, type PressureAltitude } from '../units/index.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link standardTemperatureByRule}. */
export interface StandardTemperatureByRuleInputs {
  readonly pressureAltitude: PressureAltitude;
}

export const standardTemperatureByRuleDomain = {
  pressureAltitude: { unit: 'ftPA', min: -5000, max: 36089, source: 'troposphere of the ICAO standard atmosphere' },
} satisfies Domain<StandardTemperatureByRuleInputs>;

/**
 * Standard temperature by the rule of two degrees for each thousand feet; exactly 1.9812 °C.
 *
 * T ≈ 15 − 2 PA/1000: PA the pressure altitude in ft, T in °C.
 *
 * @param x - `pressureAltitude` −5000 ft to 36 089 ft.
 * @returns Temperature in °C.
 * @throws {@link DomainError} when the pressure altitude is not within its range.
 * @record rules-of-thumb.standard-temperature
 *
 * @example
 * standardTemperatureByRule({ pressureAltitude: ftPA(3500) }) // => 8
 */
export function standardTemperatureByRule(x: StandardTemperatureByRuleInputs): Celsius {
  demand('pressureAltitude', x.pressureAltitude, standardTemperatureByRuleDomain.pressureAltitude);
  const { pressureAltitude: altitude_ft }: Numbers<StandardTemperatureByRuleInputs> = x;
  return (15 - (2 * altitude_ft) / 1000) as Celsius;
}

/**
 * Two degrees for a thousand feet beside the standard temperature.
 *
 * @example
 * ruleOfThumbError(twoDegreesRule, { pressureAltitude: ftPA(10000) }).difference // ≈ -0.19 ± 0.005
 */
export const twoDegreesRule: RuleOfThumb<StandardTemperatureByRuleInputs> = {
  id: 'two-degrees',
  title: 'Two degrees for a thousand feet',
  words: 'Standard temperature is 15 °C at mean sea level and 2 °C less for each 1000 ft.',
  rule: standardTemperatureByRule,
  exact: standardTemperature,
  unit: 'degC',
  errorIn: 'difference',
  domain: {
    pressureAltitude: { words: 'a pressure altitude', unit: 'ftPA', min: 0, max: 14000, step: 500 },
  },
  unsafeSide: 'reads high',
  because: 'the air then seems less above standard than it is, and the density altitude lower',
  unsafeWhere: 'It reads high only below mean sea level.',
  citation: { source: 'density-altitude-article', locator: 'rule of thumb', access: 'read' },
};
