export { type LandingDistanceLostInputs, landingDistanceLost } from './approach-obstacle.ts';
export { type ClimbGradientInputs, climbGradient } from './climb-gradient.ts';
export { type LatestPathStartInputs, latestPathStart } from './latest-path-start.ts';
export { type ObstacleClearanceInputs, obstacleClearance } from './obstacle-clearance.ts';
export { type RequiredGradientInputs, requiredGradient } from './required-gradient.ts';
export { type HeightForSpeedGainInputs, heightForSpeedGain } from './speed-change-height.ts';
