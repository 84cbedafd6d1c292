import { climbIncrementRecord } from '../aircraft/climb-increment.record.ts';
import { interpolateCellRecord } from '../aircraft/interpolate-cell.record.ts';
import { interpolateCurvesRecord } from '../aircraft/interpolate-curves.record.ts';
import {
  calibratedAirspeedFromEquivalentRecord,
  calibratedAirspeedFromMachRecord,
  calibratedAirspeedFromTrueRecord,
} from '../airspeed/calibrated-airspeed.record.ts';
import {
  compressibilityFactorRecord,
  equivalentAirspeedFromCalibratedRecord,
  equivalentAirspeedFromMachRecord,
  equivalentAirspeedFromTrueRecord,
} from '../airspeed/equivalent-airspeed.record.ts';
import { approachSpeedRecord, gustIncrementRecord } from '../airspeed/gust-addition.record.ts';
import { halfGustIncrementRecord, quarterMeanOrHalfIncrementRecord } from '../airspeed/gust-rules.record.ts';
import {
  calibratedAirspeedFromImpactPressureRecord,
  impactPressureRecord,
} from '../airspeed/impact-pressure.record.ts';
import {
  calibratedAirspeedIncompressibleRecord,
  trueAirspeedIncompressibleRecord,
} from '../airspeed/incompressible.record.ts';
import { loadFactorInTurnRecord } from '../airspeed/load-factor.record.ts';
import { loadFactorAtStallRecord, stallSpeedAtLoadFactorRecord } from '../airspeed/load-factor-speed.record.ts';
import {
  machNumberFromCalibratedRecord,
  machNumberFromEquivalentRecord,
  machNumberFromTrueRecord,
} from '../airspeed/mach-number.record.ts';
import { manoeuvringSpeedRecord } from '../airspeed/manoeuvring-speed.record.ts';
import { stallSpeedMultipleRecord, stallSpeedRecord } from '../airspeed/stall-speed.record.ts';
import {
  trueAirspeedFromEquivalentRecord,
  trueAirspeedFromMachRecord,
  trueAirspeedRecord,
} from '../airspeed/true-airspeed.record.ts';
import { airDensityRecord, humidAirDensityRecord, humidDensityRatioRecord } from '../atmosphere/air-density.record.ts';
import {
  qfeFromQnhRecord,
  qfeFromStationPressureRecord,
  qnhFromPressureAltitudeRecord,
  qnhFromQfeRecord,
  qnhFromStationPressureRecord,
  stationPressureFromQfeRecord,
  stationPressureFromQnhRecord,
} from '../atmosphere/altimeter-setting.record.ts';
import {
  altimeterSettingAsosRecord,
  altimeterSettingAwosRecord,
  stationPressureAwosRecord,
} from '../atmosphere/altimeter-setting-asos.record.ts';
import {
  altimeterSettingIom19Record,
  altimeterSettingMadisRecord,
  altimeterSettingNoaaRecord,
  altimeterSettingSmithsonianRecord,
  stationPressureSmithsonianRecord,
} from '../atmosphere/altimeter-setting-smithsonian.record.ts';
import {
  densityAltitudeFromDensityRecord,
  pressureAltitudeFromPressureRecord,
} from '../atmosphere/altitude-of-air.record.ts';
import {
  coldTemperatureCorrectionHydrostaticRecord,
  coldTemperatureCorrectionRecord,
  tabulatedColdTemperatureCorrectionRecord,
} from '../atmosphere/cold-temperature.record.ts';
import { densityAltitudeRecord, densityRatioRecord } from '../atmosphere/density-altitude.record.ts';
import {
  densityAltitudeNearStandardRecord,
  densityAltitudeNwsRecord,
} from '../atmosphere/density-altitude-forms.record.ts';
import { geometricAltitudeRecord, geopotentialAltitudeRecord } from '../atmosphere/geopotential-altitude.record.ts';
import { humidDensityAltitudeRecord, virtualTemperatureRecord } from '../atmosphere/humid-air.record.ts';
import { dewPointRecord, relativeHumidityRecord } from '../atmosphere/humidity.record.ts';
import { indicatedAltitudeRecord, indicatedHeightRecord } from '../atmosphere/indicated-altitude.record.ts';
import { pressureAltitudeFromQfeRecord, pressureAltitudeRecord } from '../atmosphere/pressure-altitude.record.ts';
import { pressureAltitudeNwsRecord } from '../atmosphere/pressure-altitude-nws.record.ts';
import { speedOfSoundRecord } from '../atmosphere/speed-of-sound.record.ts';
import {
  standardAtmosphereAtGeometricAltitudeRecord,
  standardAtmosphereAtPressureAltitudeRecord,
  standardAtmosphereAtPressureRecord,
  standardAtmosphereRecord,
} from '../atmosphere/standard-atmosphere.record.ts';
import { standardPressureRecord } from '../atmosphere/standard-pressure.record.ts';
import { isaDeviationRecord, standardTemperatureRecord } from '../atmosphere/standard-temperature.record.ts';
import { saturationVapourPressureRecord } from '../atmosphere/vapour-pressure.record.ts';
import {
  saturationVapourPressureBuck1981Record,
  saturationVapourPressureBuck1996Record,
  saturationVapourPressureNwsRecord,
  saturationVapourPressureTetensRecord,
} from '../atmosphere/vapour-pressure-forms.record.ts';
import {
  relativeHumidityWmoRecord,
  saturationVapourPressureOfMoistAirWmoRecord,
  saturationVapourPressureWmoRecord,
} from '../atmosphere/vapour-pressure-wmo.record.ts';
import {
  virtualTemperatureFromMixingRatioRecord,
  virtualTemperatureFromSpecificHumidityRecord,
} from '../atmosphere/virtual-temperature-forms.record.ts';
import { accelerationCheckSpeedRecord } from '../distance/acceleration-check.record.ts';
import { correctedDistanceRecord } from '../distance/corrected-distance.record.ts';
import { distanceForExcessHeightRecord } from '../distance/excess-height.record.ts';
import {
  hydroplaningSpeedAtTouchdownRecord,
  hydroplaningSpeedEarlierHandbookRecord,
  hydroplaningSpeedRecord,
} from '../distance/hydroplaning.record.ts';
import { latestLiftOffRecord } from '../distance/latest-lift-off.record.ts';
import { latestTouchdownPointRecord } from '../distance/latest-touchdown.record.ts';
import { printedLawFactorRecord, slopeFactorRecord, windFactorRecord } from '../distance/linear-factor.record.ts';
import { proRatedFactorRecord } from '../distance/pro-rated-factor.record.ts';
import { latestRejectPointRecord } from '../distance/reject-point.record.ts';
import { rollWithSurfaceRecord } from '../distance/roll-on-surface.record.ts';
import { speedFactorRecord } from '../distance/speed-factor.record.ts';
import { aerodynamicRollTermRecord } from '../dynamics/aerodynamic-roll-term.record.ts';
import { airborneDistanceInArcRecord, airborneDistanceRecord } from '../dynamics/airborne-distance.record.ts';
import { approachDistanceRecord } from '../dynamics/approach-distance.record.ts';
import { brakedRollRecord } from '../dynamics/braked-roll.record.ts';
import { dragCoefficientNearGroundRecord } from '../dynamics/drag-coefficient-near-ground.record.ts';
import { effectiveThrustRecord } from '../dynamics/effective-thrust.record.ts';
import { factorFromRollRatioRecord } from '../dynamics/factor-from-roll-ratio.record.ts';
import { flareDistanceRecord, flareHeightRecord } from '../dynamics/flare.record.ts';
import { flightPathRadiusRecord } from '../dynamics/flight-path-radius.record.ts';
import { groundEffectFactorRecord } from '../dynamics/ground-effect-factor.record.ts';
import { groundRollRecord } from '../dynamics/ground-roll.record.ts';
import { groundRollByIntegrationRecord } from '../dynamics/ground-roll-by-integration.record.ts';
import { groundRollShortFormRecord } from '../dynamics/ground-roll-short-form.record.ts';
import { powerLapseRecord } from '../dynamics/power-lapse.record.ts';
import { rollFromForceTermsRecord } from '../dynamics/roll-from-force-terms.record.ts';
import { rollRatioRecord } from '../dynamics/roll-ratio.record.ts';
import { rotationDistanceRecord } from '../dynamics/rotation-distance.record.ts';
import { aimingPointDistanceRecord, aimingPointPastThresholdRecord } from '../flight-path/aiming-point.record.ts';
import { landingDistanceLostRecord } from '../flight-path/approach-obstacle.record.ts';
import {
  bestAngleSpeedInWindRecord,
  bestAngleSpeedRecord,
  bestRateSpeedRecord,
  rateFromThrustRecord,
} from '../flight-path/best-climb-speeds.record.ts';
import {
  absoluteCeilingRecord,
  rateAtDensityAltitudeRecord,
  serviceCeilingRecord,
  timeToClimbRecord,
} from '../flight-path/ceiling.record.ts';
import { climbGradientRecord } from '../flight-path/climb-gradient.record.ts';
import { crossoverWindRecord } from '../flight-path/crossover-wind.record.ts';
import { gradientAngleRecord, gradientFromAngleRecord } from '../flight-path/gradient-angle.record.ts';
import { heightAtDistanceRecord } from '../flight-path/height-at-distance.record.ts';
import { lateralSemiWidthRecord } from '../flight-path/lateral-semi-width.record.ts';
import { latestPathStartRecord } from '../flight-path/latest-path-start.record.ts';
import { obstacleClearanceRecord } from '../flight-path/obstacle-clearance.record.ts';
import { pathAngleForClearanceRecord, steepestPathRecord } from '../flight-path/path-angle.record.ts';
import {
  altitudeRestrictionGradientRecord,
  procedureClimbGradientCivilRecord,
  procedureClimbGradientMilitaryRecord,
} from '../flight-path/procedure-climb-gradient.record.ts';
import { procedureDesignGradientRecord } from '../flight-path/procedure-design-gradient.record.ts';
import { procedureGradientRoundedUpRecord } from '../flight-path/procedure-gradient-rounding.record.ts';
import { rateForGradientRecord } from '../flight-path/rate-for-gradient.record.ts';
import { rateOfDescentAlongPathRecord, rateOfDescentRecord } from '../flight-path/rate-of-descent.record.ts';
import { requiredGradientRecord } from '../flight-path/required-gradient.record.ts';
import { heightForSpeedGainRecord } from '../flight-path/speed-change-height.record.ts';
import { stillAirGradientRecord } from '../flight-path/still-air-gradient.record.ts';
import { magneticFromTrueRecord, trueFromMagneticRecord } from '../magnetism/conversion.record.ts';
import { designatorDirectionRecord, nearestDesignatorsRecord } from '../magnetism/designator.record.ts';
import { magneticFieldRecord } from '../magnetism/field.record.ts';
import { magneticVariationRecord } from '../magnetism/variation.record.ts';
import { accelerationCheckByRuleRecord } from '../rules-of-thumb/acceleration-check-rule.record.ts';
import { crosswindByAnglePlusTwentyRecord } from '../rules-of-thumb/angle-plus-twenty.record.ts';
import { crosswindByClockRuleRecord } from '../rules-of-thumb/clock-rule.record.ts';
import { densityAltitudeByRuleRecord } from '../rules-of-thumb/density-altitude-rule.record.ts';
import { descentDistanceByRuleRecord } from '../rules-of-thumb/descent-distance-rule.record.ts';
import { rollFactorByMassSquareRecord } from '../rules-of-thumb/mass-square-rule.record.ts';
import { driftByOneInSixtyRecord, trackErrorByOneInSixtyRecord } from '../rules-of-thumb/one-in-sixty.record.ts';
import { pressureAltitudeByInchRuleRecord } from '../rules-of-thumb/pressure-altitude-inch-rule.record.ts';
import { pressureAltitudeByRuleRecord } from '../rules-of-thumb/pressure-altitude-rule.record.ts';
import { rateOfClimbByRuleRecord } from '../rules-of-thumb/rate-of-climb-rule.record.ts';
import { rateOfDescentByRuleRecord } from '../rules-of-thumb/rate-of-descent-rule.record.ts';
import { standardTemperatureByRuleRecord } from '../rules-of-thumb/standard-temperature-rule.record.ts';
import { trueAirspeedByRuleRecord } from '../rules-of-thumb/true-airspeed-rule.record.ts';
import { rollFactorByWindSquareRecord } from '../rules-of-thumb/wind-square-rule.record.ts';
import type { FormulaRecord } from '../sources/index.ts';
import { combinedStandardUncertaintyRecord } from '../study/uncertainty/combined-standard-uncertainty.record.ts';
import { lognormalMomentsRecord } from '../study/uncertainty/lognormal-moments.record.ts';
import { normalDeviateRecord } from '../study/uncertainty/normal-deviate.record.ts';
import { rectangularStandardUncertaintyRecord } from '../study/uncertainty/rectangular-standard-uncertainty.record.ts';
import { windUsedRecord } from '../wind/accountability.record.ts';
import {
  baseToFinalBankRecord,
  baseToFinalTurnRecord,
  baseToFinalVerdictRecord,
} from '../wind/base-to-final-turn.record.ts';
import { circuitLegRecord } from '../wind/circuit-leg.record.ts';
import { windComponentsRecord } from '../wind/components.record.ts';
import { windComponentSpreadRecord } from '../wind/direction-spread.record.ts';
import { groundSpeedRecord } from '../wind/ground-speed.record.ts';
import { headwindAtHeightRecord } from '../wind/headwind-at-height.record.ts';
import { largestWindRecord } from '../wind/largest-wind.record.ts';
import { reportedWindRecord } from '../wind/reported.record.ts';
import { runwayOrderRecord } from '../wind/runway-order.record.ts';
import { bankAroundPointRecord, rateOfTurnRecord, turnRadiusRecord, turnTimeRecord } from '../wind/turn.record.ts';
import { usabilityFactorRecord } from '../wind/usability-factor.record.ts';
import { windTriangleRecord } from '../wind/wind-triangle.record.ts';
import { crabAngleRecord, sideslipAngleRecord, sideslipBankRecord } from '../wind/wing-low.record.ts';

/** Every formula record of the library. */
export const formulaRecords: readonly FormulaRecord[] = [
  magneticVariationRecord,
  magneticFieldRecord,
  nearestDesignatorsRecord,
  designatorDirectionRecord,
  trueFromMagneticRecord,
  magneticFromTrueRecord,
  densityRatioRecord,
  densityAltitudeRecord,
  virtualTemperatureRecord,
  humidDensityAltitudeRecord,
  pressureAltitudeRecord,
  pressureAltitudeFromQfeRecord,
  speedOfSoundRecord,
  standardPressureRecord,
  standardTemperatureRecord,
  isaDeviationRecord,
  saturationVapourPressureRecord,
  standardAtmosphereRecord,
  standardAtmosphereAtGeometricAltitudeRecord,
  standardAtmosphereAtPressureAltitudeRecord,
  standardAtmosphereAtPressureRecord,
  geopotentialAltitudeRecord,
  geometricAltitudeRecord,
  pressureAltitudeFromPressureRecord,
  densityAltitudeFromDensityRecord,
  qnhFromQfeRecord,
  qfeFromQnhRecord,
  qnhFromStationPressureRecord,
  stationPressureFromQnhRecord,
  qfeFromStationPressureRecord,
  stationPressureFromQfeRecord,
  qnhFromPressureAltitudeRecord,
  altimeterSettingAsosRecord,
  altimeterSettingAwosRecord,
  stationPressureAwosRecord,
  altimeterSettingSmithsonianRecord,
  stationPressureSmithsonianRecord,
  altimeterSettingNoaaRecord,
  altimeterSettingMadisRecord,
  altimeterSettingIom19Record,
  indicatedAltitudeRecord,
  indicatedHeightRecord,
  pressureAltitudeNwsRecord,
  densityAltitudeNwsRecord,
  densityAltitudeNearStandardRecord,
  airDensityRecord,
  humidAirDensityRecord,
  humidDensityRatioRecord,
  relativeHumidityRecord,
  dewPointRecord,
  saturationVapourPressureTetensRecord,
  saturationVapourPressureNwsRecord,
  saturationVapourPressureBuck1981Record,
  saturationVapourPressureBuck1996Record,
  saturationVapourPressureWmoRecord,
  saturationVapourPressureOfMoistAirWmoRecord,
  relativeHumidityWmoRecord,
  virtualTemperatureFromSpecificHumidityRecord,
  virtualTemperatureFromMixingRatioRecord,
  coldTemperatureCorrectionRecord,
  tabulatedColdTemperatureCorrectionRecord,
  coldTemperatureCorrectionHydrostaticRecord,
  gustIncrementRecord,
  approachSpeedRecord,
  loadFactorInTurnRecord,
  stallSpeedRecord,
  stallSpeedMultipleRecord,
  stallSpeedAtLoadFactorRecord,
  loadFactorAtStallRecord,
  manoeuvringSpeedRecord,
  halfGustIncrementRecord,
  quarterMeanOrHalfIncrementRecord,
  impactPressureRecord,
  calibratedAirspeedFromImpactPressureRecord,
  machNumberFromCalibratedRecord,
  machNumberFromEquivalentRecord,
  machNumberFromTrueRecord,
  calibratedAirspeedFromMachRecord,
  calibratedAirspeedFromEquivalentRecord,
  calibratedAirspeedFromTrueRecord,
  equivalentAirspeedFromCalibratedRecord,
  equivalentAirspeedFromMachRecord,
  equivalentAirspeedFromTrueRecord,
  compressibilityFactorRecord,
  trueAirspeedRecord,
  trueAirspeedFromEquivalentRecord,
  trueAirspeedFromMachRecord,
  trueAirspeedIncompressibleRecord,
  calibratedAirspeedIncompressibleRecord,
  windComponentsRecord,
  windComponentSpreadRecord,
  reportedWindRecord,
  windUsedRecord,
  groundSpeedRecord,
  windTriangleRecord,
  crabAngleRecord,
  sideslipAngleRecord,
  sideslipBankRecord,
  largestWindRecord,
  runwayOrderRecord,
  usabilityFactorRecord,
  headwindAtHeightRecord,
  turnRadiusRecord,
  rateOfTurnRecord,
  turnTimeRecord,
  bankAroundPointRecord,
  circuitLegRecord,
  baseToFinalTurnRecord,
  baseToFinalBankRecord,
  baseToFinalVerdictRecord,
  accelerationCheckSpeedRecord,
  correctedDistanceRecord,
  distanceForExcessHeightRecord,
  hydroplaningSpeedRecord,
  hydroplaningSpeedAtTouchdownRecord,
  hydroplaningSpeedEarlierHandbookRecord,
  latestLiftOffRecord,
  latestTouchdownPointRecord,
  printedLawFactorRecord,
  slopeFactorRecord,
  windFactorRecord,
  proRatedFactorRecord,
  latestRejectPointRecord,
  rollWithSurfaceRecord,
  speedFactorRecord,
  aimingPointDistanceRecord,
  aimingPointPastThresholdRecord,
  landingDistanceLostRecord,
  bestAngleSpeedRecord,
  bestRateSpeedRecord,
  rateFromThrustRecord,
  bestAngleSpeedInWindRecord,
  absoluteCeilingRecord,
  serviceCeilingRecord,
  rateAtDensityAltitudeRecord,
  timeToClimbRecord,
  climbGradientRecord,
  crossoverWindRecord,
  gradientAngleRecord,
  gradientFromAngleRecord,
  heightAtDistanceRecord,
  lateralSemiWidthRecord,
  latestPathStartRecord,
  obstacleClearanceRecord,
  pathAngleForClearanceRecord,
  steepestPathRecord,
  procedureClimbGradientCivilRecord,
  procedureClimbGradientMilitaryRecord,
  altitudeRestrictionGradientRecord,
  procedureDesignGradientRecord,
  procedureGradientRoundedUpRecord,
  rateForGradientRecord,
  rateOfDescentRecord,
  rateOfDescentAlongPathRecord,
  requiredGradientRecord,
  heightForSpeedGainRecord,
  stillAirGradientRecord,
  aerodynamicRollTermRecord,
  airborneDistanceInArcRecord,
  airborneDistanceRecord,
  approachDistanceRecord,
  brakedRollRecord,
  dragCoefficientNearGroundRecord,
  effectiveThrustRecord,
  factorFromRollRatioRecord,
  flareHeightRecord,
  flareDistanceRecord,
  flightPathRadiusRecord,
  groundEffectFactorRecord,
  groundRollByIntegrationRecord,
  groundRollShortFormRecord,
  groundRollRecord,
  powerLapseRecord,
  rollFromForceTermsRecord,
  rollRatioRecord,
  rotationDistanceRecord,
  climbIncrementRecord,
  densityAltitudeByRuleRecord,
  standardTemperatureByRuleRecord,
  pressureAltitudeByRuleRecord,
  pressureAltitudeByInchRuleRecord,
  trueAirspeedByRuleRecord,
  crosswindByClockRuleRecord,
  crosswindByAnglePlusTwentyRecord,
  trackErrorByOneInSixtyRecord,
  driftByOneInSixtyRecord,
  descentDistanceByRuleRecord,
  rateOfDescentByRuleRecord,
  rateOfClimbByRuleRecord,
  accelerationCheckByRuleRecord,
  rollFactorByWindSquareRecord,
  rollFactorByMassSquareRecord,
  interpolateCellRecord,
  interpolateCurvesRecord,
  combinedStandardUncertaintyRecord,
  lognormalMomentsRecord,
  normalDeviateRecord,
  rectangularStandardUncertaintyRecord,
];
