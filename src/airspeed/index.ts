export {
  type ApproachSpeedInputs,
  approachSpeed,
  type GustIncrementInputs,
  gustIncrement,
} from './gust-addition.ts';
export { type LoadFactorInTurnInputs, loadFactorInTurn } from './load-factor.ts';
export {
  type StallSpeedInputs,
  type StallSpeedMultipleInputs,
  stallSpeed,
  stallSpeedMultiple,
} from './stall-speed.ts';
export { type TrueAirspeedInputs, trueAirspeed } from './true-airspeed.ts';
