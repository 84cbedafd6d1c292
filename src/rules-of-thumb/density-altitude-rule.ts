import { densityAltitude, standardTemperature } from '../atmosphere/index.ts';
import {
  type Celsius,
  type CelsiusDifference,
  type DensityAltitude,
  type Domain,
  degC,
  degCDifference,
  demand,
  type Numbers,
  type PressureAltitude,
} from '../units/index.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';
import { standardTemperatureByRule } from './standard-temperature-rule.ts';

/** Inputs of {@link densityAltitudeByRule}. */
export interface DensityAltitudeByRuleInputs {
  readonly pressureAltitude: PressureAltitude;
  /** How much warmer than standard the air is at its pressure altitude. */
  readonly isaDeviation: CelsiusDifference;
}

/** Inputs of the rule that takes the temperature itself, by way of two degrees for each thousand feet. */
export interface DensityAltitudeFromTemperatureByRuleInputs {
  readonly pressureAltitude: PressureAltitude;
  /** Temperature of the outside air. */
  readonly temperature: Celsius;
}

export const densityAltitudeByRuleDomain = {
  pressureAltitude: { unit: 'ftPA', min: -5000, max: 20000, source: 'library range' },
  isaDeviation: { unit: 'degCDifference', min: -60, max: 60, source: 'library range' },
} satisfies Domain<DensityAltitudeByRuleInputs>;

/**
 * Density altitude by the rule of 120 ft for each degree from standard. The exact slope at standard temperature is
 * 118.6 ft/°C at every pressure altitude, less when it is hot.
 *
 * DA ≈ PA + 120 ΔT: PA the pressure altitude in ft, ΔT the deviation from standard temperature in °C.
 *
 * @param x - `pressureAltitude` −5000 ft to 20 000 ft, `isaDeviation` −60 °C to 60 °C.
 * @returns Density altitude in ft.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record rules-of-thumb.density-altitude
 *
 * @example
 * densityAltitudeByRule({ pressureAltitude: ftPA(2300), isaDeviation: degCDifference(15) }) // => 4100
 */
export function densityAltitudeByRule(x: DensityAltitudeByRuleInputs): DensityAltitude {
  demand('pressureAltitude', x.pressureAltitude, densityAltitudeByRuleDomain.pressureAltitude);
  demand('isaDeviation', x.isaDeviation, densityAltitudeByRuleDomain.isaDeviation);
  const { pressureAltitude: altitude_ft, isaDeviation: deviation_degC }: Numbers<DensityAltitudeByRuleInputs> = x;
  return (altitude_ft + 120 * deviation_degC) as DensityAltitude;
}

const because = 'the air is thinner than it says';
const altitudes = { words: 'a pressure altitude', unit: 'ftPA', min: 0, step: 500 } as const;

/**
 * 120 ft for each degree beside the density altitude.
 *
 * @example
 * ruleOfThumbError(densityAltitudeRule, { pressureAltitude: ftPA(5000), isaDeviation: degCDifference(20) }).difference // ≈ 128 ± 1
 */
export const densityAltitudeRule: RuleOfThumb<DensityAltitudeByRuleInputs> = {
  id: 'density-altitude',
  title: 'A hundred and twenty feet for a degree',
  words: 'Density altitude is pressure altitude and 120 ft for each degree Celsius that the air is above standard.',
  rule: densityAltitudeByRule,
  exact: (x) => {
    const standard_degC: number = standardTemperature({ pressureAltitude: x.pressureAltitude });
    const { isaDeviation: deviation_degC }: Numbers<DensityAltitudeByRuleInputs> = x;
    return densityAltitude({
      pressureAltitude: x.pressureAltitude,
      temperature: degC(standard_degC + deviation_degC),
    });
  },
  unit: 'ftDA',
  errorIn: 'difference',
  domain: {
    pressureAltitude: { ...altitudes, max: 14000 },
    isaDeviation: { words: 'a deviation from standard', unit: 'degCDifference', min: -30, max: 40, step: 1 },
  },
  unsafeSide: 'reads low',
  because,
  unsafeWhere: 'It reads low only within 5 °C below standard, by 2 ft at most.',
  citation: { source: 'density-altitude-article', locator: 'rule of thumb', access: 'read' },
};

/**
 * The same with the temperature, by way of two degrees for each thousand feet, beside the density altitude.
 *
 * @example
 * ruleOfThumbError(densityAltitudeFromTemperatureRule, { pressureAltitude: ftPA(6000), temperature: degC(13) }).rule // => 7200
 */
export const densityAltitudeFromTemperatureRule: RuleOfThumb<DensityAltitudeFromTemperatureByRuleInputs> = {
  id: 'density-altitude-from-temperature',
  title: 'A hundred and twenty feet for a degree, two degrees for a thousand feet',
  words:
    'Take 2 °C for each 1000 ft from 15 °C, then add to pressure altitude 120 ft for each degree that the air is warmer.',
  rule: (x) => {
    const standard_degC: number = standardTemperatureByRule({ pressureAltitude: x.pressureAltitude });
    const { temperature: t_degC }: Numbers<DensityAltitudeFromTemperatureByRuleInputs> = x;
    return densityAltitudeByRule({
      pressureAltitude: x.pressureAltitude,
      isaDeviation: degCDifference(t_degC - standard_degC),
    });
  },
  exact: densityAltitude,
  unit: 'ftDA',
  errorIn: 'difference',
  domain: {
    pressureAltitude: { ...altitudes, max: 10000 },
    temperature: { words: 'a temperature', unit: 'degC', min: -30, max: 40, step: 1 },
  },
  unsafeSide: 'reads low',
  because,
  unsafeWhere: 'It reads low only within 5 °C below standard and below 1000 ft, by 2 ft at most.',
  citation: { source: 'density-altitude-article', locator: 'rule of thumb', access: 'read' },
};
