export { type AerodynamicRollTermInputs, aerodynamicRollTerm } from './aerodynamic-roll-term.ts';
export {
  type AirborneArc,
  type AirborneDistanceInArcInputs,
  type AirborneDistanceInputs,
  airborneDistance,
  airborneDistanceInArc,
} from './airborne-distance.ts';
export { type ApproachDistanceInputs, approachDistance } from './approach-distance.ts';
export { type BrakedRoll, type BrakedRollInputs, brakedRoll } from './braked-roll.ts';
export { type DragCoefficientNearGroundInputs, dragCoefficientNearGround } from './drag-coefficient-near-ground.ts';
export { type EffectiveThrustInputs, effectiveThrust } from './effective-thrust.ts';
export { type FactorFromRollRatioInputs, factorFromRollRatio } from './factor-from-roll-ratio.ts';
export { type FlareInputs, flareDistance, flareHeight } from './flare.ts';
export { type FlightPathRadiusInputs, flightPathRadius } from './flight-path-radius.ts';
export {
  type BrakingSurface,
  brakingFriction,
  type Friction,
  type FrictionFigure,
  type RollingSurface,
  rollingFriction,
} from './friction.ts';
export { type GroundEffectFactorInputs, groundEffectFactor } from './ground-effect-factor.ts';
export { type GroundRoll, type GroundRollInputs, groundRoll } from './ground-roll.ts';
export { groundRollByIntegration } from './ground-roll-by-integration.ts';
export { type GroundRollShortFormInputs, groundRollShortForm } from './ground-roll-short-form.ts';
export { type PowerLapseInputs, powerLapse } from './power-lapse.ts';
export { type RollFromForceTermsInputs, rollFromForceTerms } from './roll-from-force-terms.ts';
export { type RollRatio, type RollRatioInputs, rollRatio } from './roll-ratio.ts';
export { type RotationDistanceInputs, rotationDistance } from './rotation-distance.ts';
export { standardGravity } from './standard-gravity.ts';
