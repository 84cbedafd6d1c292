export {
  type AimingPointDistanceInputs,
  type AimingPointPastThresholdInputs,
  aimingPointDistance,
  aimingPointPastThreshold,
} from './aiming-point.ts';
export { type ApproachDescentLimit, approachDescentLimit } from './approach-descent-limit.ts';
export { type LandingDistanceLostInputs, landingDistanceLost } from './approach-obstacle.ts';
export { type BestAngleSpeedInWindInputs, bestAngleSpeedInWind } from './best-angle-in-wind.ts';
export { bestAngleSpeed, bestRateSpeed } from './best-climb-speeds.ts';
export {
  type AbsoluteCeilingInputs,
  absoluteCeiling,
  type RateAtDensityAltitudeInputs,
  rateAtDensityAltitude,
  type ServiceCeilingInputs,
  serviceCeiling,
} from './ceiling.ts';
export { type ClimbGradientInputs, climbGradient } from './climb-gradient.ts';
export { type CrossoverWindInputs, crossoverWind } from './crossover-wind.ts';
export {
  type GradientAngleInputs,
  type GradientFromAngleInputs,
  gradientAngle,
  gradientFromAngle,
} from './gradient-angle.ts';
export { type HeightAtDistanceInputs, heightAtDistance } from './height-at-distance.ts';
export { type LateralSemiWidthInputs, lateralSemiWidth } from './lateral-semi-width.ts';
export { type LatestPathStartInputs, latestPathStart } from './latest-path-start.ts';
export { type ObstacleClearanceInputs, obstacleClearance } from './obstacle-clearance.ts';
export {
  type PathAngleForClearanceInputs,
  pathAngleForClearance,
  type SteepestPathInputs,
  steepestPath,
} from './path-angle.ts';
export {
  type AltitudeRestrictionGradientInputs,
  altitudeRestrictionGradient,
  type ProcedureClimbGradientInputs,
  procedureClimbGradientCivil,
  procedureClimbGradientMilitary,
} from './procedure-climb-gradient.ts';
export { type ProcedureDesignGradientInputs, procedureDesignGradient } from './procedure-design-gradient.ts';
export { type ProcedureGradientRoundedUpInputs, procedureGradientRoundedUp } from './procedure-gradient-rounding.ts';
export { type RateForGradientInputs, rateForGradient } from './rate-for-gradient.ts';
export { type RateFromThrustInputs, rateFromThrust } from './rate-from-thrust.ts';
export {
  type RateOfDescentAlongPathInputs,
  type RateOfDescentInputs,
  rateOfDescent,
  rateOfDescentAlongPath,
} from './rate-of-descent.ts';
export { type RegulatoryClimbMinimum, regulatoryClimbMinima } from './regulatory-climb-minima.ts';
export { type RequiredGradientInputs, requiredGradient } from './required-gradient.ts';
export { type HeightForSpeedGainInputs, heightForSpeedGain } from './speed-change-height.ts';
export { type StandardProcedureGradient, standardProcedureGradients } from './standard-procedure-gradients.ts';
export { type StillAirGradientInputs, stillAirGradient } from './still-air-gradient.ts';
export type { ThrustAndDragInputs } from './thrust-and-drag.ts';
export { type TimeToClimbInputs, timeToClimb } from './time-to-climb.ts';
