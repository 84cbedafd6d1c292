import { type Degrees, type Domain, degTrue, demand, type Knots, type Numbers } from '../units/index.ts';
import { windComponents } from '../wind/index.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link crosswindByClockRule}. */
export interface CrosswindByClockRuleInputs {
  readonly windSpeed: Knots;
  /** Angle between the wind and the runway, without regard to its side. */
  readonly angle: Degrees;
}

export const crosswindByClockRuleDomain = {
  windSpeed: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  angle: { unit: 'deg', min: 0, max: 90, source: 'wind from ahead or from the side' },
} satisfies Domain<CrosswindByClockRuleInputs>;

/**
 * Crosswind by the clock rule: minutes of the hour as degrees of angle. In steps of ten degrees it is the rule of sixths.
 *
 * X ≈ W min(φ/60, 1): W the wind speed in kt, φ the angle between wind and runway in degrees.
 *
 * @param x - `windSpeed` 0 kt to 200 kt, `angle` 0° to 90°.
 * @returns Crosswind in kt, without its side.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record rules-of-thumb.crosswind-by-clock-rule
 *
 * @example
 * crosswindByClockRule({ windSpeed: kt(20), angle: degrees(45) }) // => 15
 * crosswindByClockRule({ windSpeed: kt(18), angle: degrees(20) }) // ≈ 6 ± 1e-9
 */
export function crosswindByClockRule(x: CrosswindByClockRuleInputs): Knots {
  demand('windSpeed', x.windSpeed, crosswindByClockRuleDomain.windSpeed);
  demand('angle', x.angle, crosswindByClockRuleDomain.angle);
  const { windSpeed: wind_kt, angle: angle_deg }: Numbers<CrosswindByClockRuleInputs> = x;
  return (wind_kt * Math.min(angle_deg / 60, 1)) as Knots;
}

/** Crosswind at an angle to the runway, by the components of the wind. */
export function exactCrosswind(x: CrosswindByClockRuleInputs): Knots {
  const { angle: angle_deg }: Numbers<CrosswindByClockRuleInputs> = x;
  return windComponents({ from: degTrue(angle_deg), speed: x.windSpeed, direction: degTrue(0) }).crosswind;
}

/**
 * The clock rule beside the sine.
 *
 * @example
 * ruleOfThumbError(clockRule, { windSpeed: kt(20), angle: degrees(60) }).difference // ≈ 2.68 ± 0.01
 */
export const clockRule: RuleOfThumb<CrosswindByClockRuleInputs> = {
  id: 'clock-rule',
  title: 'Clock rule for the crosswind',
  words: 'The share of the wind that blows across is that of the hour: a quarter at 15°, a half at 30°, all from 60°.',
  rule: crosswindByClockRule,
  exact: exactCrosswind,
  unit: 'kt',
  errorIn: 'percent',
  domain: {
    windSpeed: { words: 'a wind', unit: 'kt', min: 5, max: 40, step: 35 },
    angle: { words: 'an angle off the runway', unit: 'deg', min: 5, max: 90, step: 1 },
  },
  unsafeSide: 'reads low',
  because: 'the crosswind is stronger than it says',
  unsafeWhere: 'It reads low at angles below 30°.',
  citation: { source: 'crosswind-rules-forum', locator: 'clock rule and rule of sixths', access: 'read' },
};
