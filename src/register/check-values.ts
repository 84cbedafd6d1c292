import climbIncrement from '../aircraft/climb-increment.check-values.json' with { type: 'json' };
import interpolateCell from '../aircraft/interpolate-cell.check-values.json' with { type: 'json' };
import calibratedAirspeed from '../airspeed/calibrated-airspeed.check-values.json' with { type: 'json' };
import equivalentAirspeed from '../airspeed/equivalent-airspeed.check-values.json' with { type: 'json' };
import gustAddition from '../airspeed/gust-addition.check-values.json' with { type: 'json' };
import gustRules from '../airspeed/gust-rules.check-values.json' with { type: 'json' };
import impactPressure from '../airspeed/impact-pressure.check-values.json' with { type: 'json' };
import incompressible from '../airspeed/incompressible.check-values.json' with { type: 'json' };
import loadFactor from '../airspeed/load-factor.check-values.json' with { type: 'json' };
import loadFactorSpeed from '../airspeed/load-factor-speed.check-values.json' with { type: 'json' };
import machNumber from '../airspeed/mach-number.check-values.json' with { type: 'json' };
import manoeuvringSpeed from '../airspeed/manoeuvring-speed.check-values.json' with { type: 'json' };
import stallSpeed from '../airspeed/stall-speed.check-values.json' with { type: 'json' };
import trueAirspeed from '../airspeed/true-airspeed.check-values.json' with { type: 'json' };
import airDensity from '../atmosphere/air-density.check-values.json' with { type: 'json' };
import altimeterSetting from '../atmosphere/altimeter-setting.check-values.json' with { type: 'json' };
import altimeterSettingAsos from '../atmosphere/altimeter-setting-asos.check-values.json' with { type: 'json' };
import altimeterSettingSmithsonian from '../atmosphere/altimeter-setting-smithsonian.check-values.json' with {
  type: 'json',
};
import altitudeOfAir from '../atmosphere/altitude-of-air.check-values.json' with { type: 'json' };
import coldTemperature from '../atmosphere/cold-temperature.check-values.json' with { type: 'json' };
import densityAltitude from '../atmosphere/density-altitude.check-values.json' with { type: 'json' };
import densityAltitudeForms from '../atmosphere/density-altitude-forms.check-values.json' with { type: 'json' };
import geopotentialAltitude from '../atmosphere/geopotential-altitude.check-values.json' with { type: 'json' };
import humidAir from '../atmosphere/humid-air.check-values.json' with { type: 'json' };
import indicatedAltitude from '../atmosphere/indicated-altitude.check-values.json' with { type: 'json' };
import pressureAltitude from '../atmosphere/pressure-altitude.check-values.json' with { type: 'json' };
import pressureAltitudeNws from '../atmosphere/pressure-altitude-nws.check-values.json' with { type: 'json' };
import speedOfSound from '../atmosphere/speed-of-sound.check-values.json' with { type: 'json' };
import standardAtmosphereComputed from '../atmosphere/standard-atmosphere-computed.check-values.json' with {
  type: 'json',
};
import standardAtmosphereFeet from '../atmosphere/standard-atmosphere-feet.check-values.json' with { type: 'json' };
import standardAtmosphereIcao7488 from '../atmosphere/standard-atmosphere-icao-7488.check-values.json' with {
  type: 'json',
};
import standardAtmosphereIso2533 from '../atmosphere/standard-atmosphere-iso-2533.check-values.json' with {
  type: 'json',
};
import standardAtmosphereUs1976 from '../atmosphere/standard-atmosphere-us-1976.check-values.json' with {
  type: 'json',
};
import standardPressure from '../atmosphere/standard-pressure.check-values.json' with { type: 'json' };
import standardTemperature from '../atmosphere/standard-temperature.check-values.json' with { type: 'json' };
import standardTemperatureDeviation from '../atmosphere/standard-temperature-deviation.check-values.json' with {
  type: 'json',
};
import vapourPressure from '../atmosphere/vapour-pressure.check-values.json' with { type: 'json' };
import vapourPressureForms from '../atmosphere/vapour-pressure-forms.check-values.json' with { type: 'json' };
import vapourPressureWmo from '../atmosphere/vapour-pressure-wmo.check-values.json' with { type: 'json' };
import virtualTemperatureForms from '../atmosphere/virtual-temperature-forms.check-values.json' with { type: 'json' };
import accelerationCheckSpeed from '../distance/acceleration-check.check-values.json' with { type: 'json' };
import correctedDistance from '../distance/corrected-distance.check-values.json' with { type: 'json' };
import hydroplaning from '../distance/hydroplaning.check-values.json' with { type: 'json' };
import linearFactor from '../distance/linear-factor.check-values.json' with { type: 'json' };
import proRatedFactor from '../distance/pro-rated-factor.check-values.json' with { type: 'json' };
import speedFactor from '../distance/speed-factor.check-values.json' with { type: 'json' };
import aerodynamicRollTerm from '../dynamics/aerodynamic-roll-term.check-values.json' with { type: 'json' };
import airborneDistance from '../dynamics/airborne-distance.check-values.json' with { type: 'json' };
import approachDistance from '../dynamics/approach-distance.check-values.json' with { type: 'json' };
import dragCoefficientNearGround from '../dynamics/drag-coefficient-near-ground.check-values.json' with {
  type: 'json',
};
import flare from '../dynamics/flare.check-values.json' with { type: 'json' };
import flightPathRadius from '../dynamics/flight-path-radius.check-values.json' with { type: 'json' };
import groundEffectFactor from '../dynamics/ground-effect-factor.check-values.json' with { type: 'json' };
import groundRoll from '../dynamics/ground-roll.check-values.json' with { type: 'json' };
import groundRollByIntegration from '../dynamics/ground-roll-by-integration.check-values.json' with { type: 'json' };
import groundRollShortForm from '../dynamics/ground-roll-short-form.check-values.json' with { type: 'json' };
import rollFromForceTerms from '../dynamics/roll-from-force-terms.check-values.json' with { type: 'json' };
import rotationDistance from '../dynamics/rotation-distance.check-values.json' with { type: 'json' };
import aimingPoint from '../flight-path/aiming-point.check-values.json' with { type: 'json' };
import landingDistanceLost from '../flight-path/approach-obstacle.check-values.json' with { type: 'json' };
import bestClimbSpeeds from '../flight-path/best-climb-speeds.check-values.json' with { type: 'json' };
import ceiling from '../flight-path/ceiling.check-values.json' with { type: 'json' };
import climbGradient from '../flight-path/climb-gradient.check-values.json' with { type: 'json' };
import crossoverWind from '../flight-path/crossover-wind.check-values.json' with { type: 'json' };
import gradientAngle from '../flight-path/gradient-angle.check-values.json' with { type: 'json' };
import heightAtDistance from '../flight-path/height-at-distance.check-values.json' with { type: 'json' };
import obstacleClearance from '../flight-path/obstacle-clearance.check-values.json' with { type: 'json' };
import pathAngle from '../flight-path/path-angle.check-values.json' with { type: 'json' };
import procedureClimbGradient from '../flight-path/procedure-climb-gradient.check-values.json' with { type: 'json' };
import procedureDesignGradient from '../flight-path/procedure-design-gradient.check-values.json' with { type: 'json' };
import procedureGradientRounding from '../flight-path/procedure-gradient-rounding.check-values.json' with {
  type: 'json',
};
import rateForGradient from '../flight-path/rate-for-gradient.check-values.json' with { type: 'json' };
import rateOfDescent from '../flight-path/rate-of-descent.check-values.json' with { type: 'json' };
import requiredGradient from '../flight-path/required-gradient.check-values.json' with { type: 'json' };
import northConversion from '../magnetism/conversion.check-values.json' with { type: 'json' };
import nearestDesignators from '../magnetism/designator.check-values.json' with { type: 'json' };
import magneticField from '../magnetism/field.check-values.json' with { type: 'json' };
import magneticVariation from '../magnetism/variation.check-values.json' with { type: 'json' };
import accelerationCheckRule from '../rules-of-thumb/acceleration-check-rule.check-values.json' with { type: 'json' };
import anglePlusTwenty from '../rules-of-thumb/angle-plus-twenty.check-values.json' with { type: 'json' };
import clockRule from '../rules-of-thumb/clock-rule.check-values.json' with { type: 'json' };
import densityAltitudeRule from '../rules-of-thumb/density-altitude-rule.check-values.json' with { type: 'json' };
import descentDistanceRule from '../rules-of-thumb/descent-distance-rule.check-values.json' with { type: 'json' };
import massSquareRule from '../rules-of-thumb/mass-square-rule.check-values.json' with { type: 'json' };
import pressureAltitudeInchRule from '../rules-of-thumb/pressure-altitude-inch-rule.check-values.json' with {
  type: 'json',
};
import pressureAltitudeRule from '../rules-of-thumb/pressure-altitude-rule.check-values.json' with { type: 'json' };
import rateOfClimbRule from '../rules-of-thumb/rate-of-climb-rule.check-values.json' with { type: 'json' };
import rateOfDescentRule from '../rules-of-thumb/rate-of-descent-rule.check-values.json' with { type: 'json' };
import standardTemperatureRule from '../rules-of-thumb/standard-temperature-rule.check-values.json' with {
  type: 'json',
};
import trueAirspeedRule from '../rules-of-thumb/true-airspeed-rule.check-values.json' with { type: 'json' };
import windSquareRule from '../rules-of-thumb/wind-square-rule.check-values.json' with { type: 'json' };
import type { CheckValue } from '../sources/index.ts';
import combinedStandardUncertainty from '../study/uncertainty/combined-standard-uncertainty.check-values.json' with {
  type: 'json',
};
import baseToFinalTurn from '../wind/base-to-final-turn.check-values.json' with { type: 'json' };
import circuitLeg from '../wind/circuit-leg.check-values.json' with { type: 'json' };
import windComponents from '../wind/components.check-values.json' with { type: 'json' };
import headwindAtHeight from '../wind/headwind-at-height.check-values.json' with { type: 'json' };
import largestWind from '../wind/largest-wind.check-values.json' with { type: 'json' };
import reportedWind from '../wind/reported.check-values.json' with { type: 'json' };
import turn from '../wind/turn.check-values.json' with { type: 'json' };
import usabilityFactor from '../wind/usability-factor.check-values.json' with { type: 'json' };
import windTriangle from '../wind/wind-triangle.check-values.json' with { type: 'json' };
import wingLow from '../wind/wing-low.check-values.json' with { type: 'json' };

// An imported JSON widens every unit word to a text; the files are held to their schema by the tests.
const files: readonly { readonly checkValues: readonly unknown[] }[] = [
  magneticVariation,
  magneticField,
  nearestDesignators,
  northConversion,
  densityAltitude,
  humidAir,
  pressureAltitude,
  speedOfSound,
  standardPressure,
  standardTemperature,
  vapourPressure,
  airDensity,
  altimeterSetting,
  altimeterSettingAsos,
  altimeterSettingSmithsonian,
  altitudeOfAir,
  coldTemperature,
  densityAltitudeForms,
  geopotentialAltitude,
  indicatedAltitude,
  pressureAltitudeNws,
  standardAtmosphereComputed,
  standardAtmosphereFeet,
  standardAtmosphereIcao7488,
  standardAtmosphereIso2533,
  standardAtmosphereUs1976,
  standardTemperatureDeviation,
  vapourPressureForms,
  vapourPressureWmo,
  virtualTemperatureForms,
  gustAddition,
  loadFactor,
  stallSpeed,
  loadFactorSpeed,
  manoeuvringSpeed,
  gustRules,
  impactPressure,
  machNumber,
  calibratedAirspeed,
  equivalentAirspeed,
  trueAirspeed,
  incompressible,
  windComponents,
  reportedWind,
  windTriangle,
  wingLow,
  largestWind,
  usabilityFactor,
  headwindAtHeight,
  turn,
  circuitLeg,
  baseToFinalTurn,
  accelerationCheckSpeed,
  correctedDistance,
  hydroplaning,
  linearFactor,
  proRatedFactor,
  speedFactor,
  landingDistanceLost,
  climbGradient,
  obstacleClearance,
  requiredGradient,
  aimingPoint,
  bestClimbSpeeds,
  ceiling,
  crossoverWind,
  gradientAngle,
  heightAtDistance,
  pathAngle,
  procedureClimbGradient,
  procedureDesignGradient,
  procedureGradientRounding,
  rateForGradient,
  rateOfDescent,
  aerodynamicRollTerm,
  airborneDistance,
  approachDistance,
  dragCoefficientNearGround,
  flare,
  flightPathRadius,
  groundEffectFactor,
  groundRollByIntegration,
  groundRollShortForm,
  groundRoll,
  rollFromForceTerms,
  rotationDistance,
  climbIncrement,
  accelerationCheckRule,
  anglePlusTwenty,
  clockRule,
  densityAltitudeRule,
  descentDistanceRule,
  massSquareRule,
  pressureAltitudeInchRule,
  pressureAltitudeRule,
  rateOfClimbRule,
  rateOfDescentRule,
  standardTemperatureRule,
  trueAirspeedRule,
  windSquareRule,
  interpolateCell,
  combinedStandardUncertainty,
];

/** Every published check value of the library. */
export const checkValues = files.flatMap((file) => file.checkValues) as readonly CheckValue[];
