import { type Degrees, type Domain, demand, type Knots, type Numbers } from '../units/index.ts';
import { exactCrosswind } from './clock-rule.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link crosswindByAnglePlusTwenty}. */
export interface CrosswindByAnglePlusTwentyInputs {
  readonly windSpeed: Knots;
  /** Angle between the wind and the runway, without regard to its side. */
  readonly angle: Degrees;
}

export const crosswindByAnglePlusTwentyDomain = {
  windSpeed: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  angle: { unit: 'deg', min: 1, max: 90, source: 'a wind that is off the runway' },
} satisfies Domain<CrosswindByAnglePlusTwentyInputs>;

/**
 * Crosswind by the rule that adds twenty to the angle and takes the sum as percent.
 *
 * X ≈ W min((φ + 20)/100, 1): W the wind speed in kt, φ the angle between wind and runway in degrees.
 *
 * @param x - `windSpeed` 0 kt to 200 kt, `angle` 1° to 90°; of a wind along the runway the rule says nothing.
 * @returns Crosswind in kt, without its side.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record rules-of-thumb.crosswind-by-angle-plus-twenty
 *
 * @example
 * crosswindByAnglePlusTwenty({ windSpeed: kt(20), angle: degrees(40) }) // ≈ 12 ± 1e-9
 */
export function crosswindByAnglePlusTwenty(x: CrosswindByAnglePlusTwentyInputs): Knots {
  demand('windSpeed', x.windSpeed, crosswindByAnglePlusTwentyDomain.windSpeed);
  demand('angle', x.angle, crosswindByAnglePlusTwentyDomain.angle);
  const { windSpeed: wind_kt, angle: angle_deg }: Numbers<CrosswindByAnglePlusTwentyInputs> = x;
  return (wind_kt * Math.min((angle_deg + 20) / 100, 1)) as Knots;
}

/**
 * Angle plus twenty beside the sine.
 *
 * @example
 * ruleOfThumbError(anglePlusTwentyRule, { windSpeed: kt(20), angle: degrees(50) }).percent?.toFixed(1) // => '-8.6'
 */
export const anglePlusTwentyRule: RuleOfThumb<CrosswindByAnglePlusTwentyInputs> = {
  id: 'angle-plus-twenty',
  title: 'Angle plus twenty for the crosswind',
  words: 'Add twenty to the angle off the runway: that many percent of the wind blow across, all from 80°.',
  rule: crosswindByAnglePlusTwenty,
  exact: exactCrosswind,
  unit: 'kt',
  errorIn: 'percent',
  domain: {
    windSpeed: { words: 'a wind', unit: 'kt', min: 5, max: 40, step: 35 },
    angle: { words: 'an angle off the runway', unit: 'deg', min: 5, max: 90, step: 1 },
  },
  unsafeSide: 'reads low',
  because: 'the crosswind is stronger than it says',
  unsafeWhere: 'It reads low from above 30° to 77°.',
  citation: { source: 'crosswind-rules-forum', locator: 'angle plus 20', access: 'read' },
};
