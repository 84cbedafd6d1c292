import { seventyPercentRule } from './acceleration-check-rule.ts';
import { anglePlusTwentyRule } from './angle-plus-twenty.ts';
import { clockRule } from './clock-rule.ts';
import { densityAltitudeFromTemperatureRule, densityAltitudeRule } from './density-altitude-rule.ts';
import { threeHundredFeetRule } from './descent-distance-rule.ts';
import { massSquareRule } from './mass-square-rule.ts';
import { oneInSixtyDriftRule, oneInSixtyTrackRule } from './one-in-sixty.ts';
import { thousandFeetRule } from './pressure-altitude-inch-rule.ts';
import { thirtyFeetRule, twentyEightFeetRule, twentySevenFeetRule } from './pressure-altitude-rule.ts';
import { percentTimesKnotsRule } from './rate-of-climb-rule.ts';
import { fiveTimesGroundSpeedRule } from './rate-of-descent-rule.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';
import { twoDegreesRule } from './standard-temperature-rule.ts';
import { incompressibleRule, lessThanTwoPercentRule, twoPercentRule } from './true-airspeed-rule.ts';
import { windSquareRule } from './wind-square-rule.ts';

/**
 * Every rule of thumb of the library, beside what it approximates. None of them ever enters an assessment.
 *
 * @example
 * rulesOfThumb.filter((rule) => worstRuleOfThumbError(rule).unsafe === undefined).map(({ id }) => id) // => ['two-degrees', 'three-hundred-feet']
 */
export const rulesOfThumb: readonly RuleOfThumb[] = [
  densityAltitudeRule,
  densityAltitudeFromTemperatureRule,
  twoDegreesRule,
  thirtyFeetRule,
  twentyEightFeetRule,
  twentySevenFeetRule,
  thousandFeetRule,
  twoPercentRule,
  lessThanTwoPercentRule,
  incompressibleRule,
  clockRule,
  anglePlusTwentyRule,
  oneInSixtyTrackRule,
  oneInSixtyDriftRule,
  threeHundredFeetRule,
  fiveTimesGroundSpeedRule,
  percentTimesKnotsRule,
  seventyPercentRule,
  windSquareRule,
  massSquareRule,
];
