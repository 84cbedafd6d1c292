export {
  type AccelerationCheckByRuleInputs,
  type AccelerationCheckInWindInputs,
  accelerationCheckByRule,
  seventyPercentRule,
} from './acceleration-check-rule.ts';
export {
  anglePlusTwentyRule,
  type CrosswindByAnglePlusTwentyInputs,
  crosswindByAnglePlusTwenty,
} from './angle-plus-twenty.ts';
export { type CrosswindByClockRuleInputs, clockRule, crosswindByClockRule } from './clock-rule.ts';
export {
  type DensityAltitudeByRuleInputs,
  type DensityAltitudeFromTemperatureByRuleInputs,
  densityAltitudeByRule,
  densityAltitudeFromTemperatureRule,
  densityAltitudeRule,
} from './density-altitude-rule.ts';
export {
  type DescentDistanceByRuleInputs,
  descentDistanceByRule,
  threeHundredFeetRule,
} from './descent-distance-rule.ts';
export { type GustRuleCost, type GustRuleCostsInputs, gustRuleCosts } from './gust-rule-costs.ts';
export {
  massSquareRule,
  type RollAtMassInputs,
  type RollFactorByMassSquareInputs,
  rollFactorByMassSquare,
} from './mass-square-rule.ts';
export {
  type DriftByOneInSixtyInputs,
  driftByOneInSixty,
  oneInSixtyDriftRule,
  oneInSixtyTrackRule,
  type TrackErrorByOneInSixtyInputs,
  trackErrorByOneInSixty,
} from './one-in-sixty.ts';
export {
  type PressureAltitudeByInchRuleInputs,
  pressureAltitudeByInchRule,
  thousandFeetRule,
} from './pressure-altitude-inch-rule.ts';
export {
  type PressureAltitudeByRuleInputs,
  type PressureAltitudeOfRuleInputs,
  pressureAltitudeByRule,
  thirtyFeetRule,
  twentyEightFeetRule,
  twentySevenFeetRule,
} from './pressure-altitude-rule.ts';
export { percentTimesKnotsRule, type RateOfClimbByRuleInputs, rateOfClimbByRule } from './rate-of-climb-rule.ts';
export {
  fiveTimesGroundSpeedRule,
  type RateOfDescentByRuleInputs,
  rateOfDescentByRule,
} from './rate-of-descent-rule.ts';
export {
  type ComparedRange,
  type RuleOfThumb,
  type RuleOfThumbError,
  type RuleOfThumbExtreme,
  type RuleOfThumbSide,
  ruleOfThumbError,
  ruleOfThumbInWords,
  type WorstRuleOfThumbError,
  worstRuleOfThumbError,
} from './rule-of-thumb.ts';
export { rulesOfThumb } from './rules.ts';
export {
  type StandardTemperatureByRuleInputs,
  standardTemperatureByRule,
  twoDegreesRule,
} from './standard-temperature-rule.ts';
export {
  incompressibleRule,
  lessThanTwoPercentRule,
  type TrueAirspeedByRuleInputs,
  type TrueAirspeedInStandardAirInputs,
  trueAirspeedByRule,
  twoPercentRule,
} from './true-airspeed-rule.ts';
export {
  type RollFactorByWindSquareInputs,
  type RollInWindInputs,
  rollFactorByWindSquare,
  windSquareRule,
} from './wind-square-rule.ts';
