import { rateForGradient } from '../flight-path/index.ts';
import {
  type Domain,
  demand,
  type FeetPerMinute,
  type GroundSpeed,
  type Numbers,
  type Percent,
  ratioFromPercent,
} from '../units/index.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link rateOfClimbByRule}. */
export interface RateOfClimbByRuleInputs {
  /** Climb gradient over the ground. */
  readonly gradient: Percent;
  /** Speed over the ground, the wind in it. */
  readonly groundSpeed: GroundSpeed;
}

export const rateOfClimbByRuleDomain = {
  gradient: { unit: 'percent', min: 0, max: 100, source: 'library range' },
  groundSpeed: { unit: 'ktGS', min: 1, max: 300, source: 'library range' },
} satisfies Domain<RateOfClimbByRuleInputs>;

/**
 * Rate of climb for a gradient by the rule that multiplies percent by knots; the exact factor is 1.0127.
 *
 * ROC ≈ γ GS: γ the gradient in percent, GS the ground speed in kt, ROC in ft/min.
 *
 * @param x - `gradient` 0 % to 100 %, `groundSpeed` 1 kt to 300 kt.
 * @returns The rate of climb in ft/min.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record rules-of-thumb.rate-of-climb
 *
 * @example
 * rateOfClimbByRule({ gradient: percent(5), groundSpeed: ktGS(70) }) // => 350
 */
export function rateOfClimbByRule(x: RateOfClimbByRuleInputs): FeetPerMinute {
  demand('gradient', x.gradient, rateOfClimbByRuleDomain.gradient);
  demand('groundSpeed', x.groundSpeed, rateOfClimbByRuleDomain.groundSpeed);
  const { gradient: gradient_percent, groundSpeed: gs_kt }: Numbers<RateOfClimbByRuleInputs> = x;
  return (gradient_percent * gs_kt) as FeetPerMinute;
}

/**
 * Percent times knots beside the rate of climb for a gradient.
 *
 * @example
 * ruleOfThumbError(percentTimesKnotsRule, { gradient: percent(3.3), groundSpeed: ktGS(150) }).percent?.toFixed(2) // => '-1.25'
 */
export const percentTimesKnotsRule: RuleOfThumb<RateOfClimbByRuleInputs> = {
  id: 'percent-times-knots',
  title: 'Percent times knots',
  words: 'The rate of climb for a gradient, in feet per minute, is its percentage times the ground speed in knots.',
  rule: rateOfClimbByRule,
  exact: (x) => rateForGradient({ gradient: ratioFromPercent(x.gradient), groundSpeed: x.groundSpeed }),
  unit: 'ftPerMin',
  errorIn: 'percent',
  domain: {
    gradient: { words: 'a gradient', unit: 'percent', min: 1, max: 15, step: 1 },
    groundSpeed: { words: 'a ground speed', unit: 'ktGS', min: 40, max: 120, step: 5 },
  },
  unsafeSide: 'reads low',
  because: 'the climb is shallower than the gradient asked for',
  unsafeWhere: 'It reads low in every climb.',
  citation: { source: 'gradient-forum', locator: 'percent times knots', access: 'second-hand' },
};
