import { interpolateCellRecord } from '../aircraft/interpolate-cell.record.ts';
import { interpolateCurvesRecord } from '../aircraft/interpolate-curves.record.ts';
import { approachSpeedRecord, gustIncrementRecord } from '../airspeed/gust-addition.record.ts';
import { loadFactorInTurnRecord } from '../airspeed/load-factor.record.ts';
import { stallSpeedMultipleRecord, stallSpeedRecord } from '../airspeed/stall-speed.record.ts';
import { trueAirspeedRecord } from '../airspeed/true-airspeed.record.ts';
import { densityAltitudeRecord, densityRatioRecord } from '../atmosphere/density-altitude.record.ts';
import { humidDensityAltitudeRecord, virtualTemperatureRecord } from '../atmosphere/humid-air.record.ts';
import { pressureAltitudeFromQfeRecord, pressureAltitudeRecord } from '../atmosphere/pressure-altitude.record.ts';
import { speedOfSoundRecord } from '../atmosphere/speed-of-sound.record.ts';
import { standardPressureRecord } from '../atmosphere/standard-pressure.record.ts';
import { isaDeviationRecord, standardTemperatureRecord } from '../atmosphere/standard-temperature.record.ts';
import { saturationVapourPressureRecord } from '../atmosphere/vapour-pressure.record.ts';
import { accelerationCheckSpeedRecord } from '../distance/acceleration-check.record.ts';
import { correctedDistanceRecord } from '../distance/corrected-distance.record.ts';
import { latestLiftOffRecord } from '../distance/latest-lift-off.record.ts';
import { latestTouchdownPointRecord } from '../distance/latest-touchdown.record.ts';
import { slopeFactorRecord, windFactorRecord } from '../distance/linear-factor.record.ts';
import { proRatedFactorRecord } from '../distance/pro-rated-factor.record.ts';
import { latestRejectPointRecord } from '../distance/reject-point.record.ts';
import { rollWithSurfaceRecord } from '../distance/roll-on-surface.record.ts';
import { speedFactorRecord } from '../distance/speed-factor.record.ts';
import { landingDistanceLostRecord } from '../flight-path/approach-obstacle.record.ts';
import { climbGradientRecord } from '../flight-path/climb-gradient.record.ts';
import { latestPathStartRecord } from '../flight-path/latest-path-start.record.ts';
import { obstacleClearanceRecord } from '../flight-path/obstacle-clearance.record.ts';
import { requiredGradientRecord } from '../flight-path/required-gradient.record.ts';
import { heightForSpeedGainRecord } from '../flight-path/speed-change-height.record.ts';
import { magneticFromTrueRecord, trueFromMagneticRecord } from '../magnetism/conversion.record.ts';
import { magneticVariationRecord } from '../magnetism/variation.record.ts';
import type { FormulaRecord } from '../sources/index.ts';
import { windUsedRecord } from '../wind/accountability.record.ts';
import { windComponentsRecord } from '../wind/components.record.ts';
import { groundSpeedRecord } from '../wind/ground-speed.record.ts';
import { reportedWindRecord } from '../wind/reported.record.ts';

/** Every formula record of the library. */
export const formulaRecords: readonly FormulaRecord[] = [
  magneticVariationRecord,
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
  gustIncrementRecord,
  approachSpeedRecord,
  loadFactorInTurnRecord,
  stallSpeedRecord,
  stallSpeedMultipleRecord,
  trueAirspeedRecord,
  windComponentsRecord,
  reportedWindRecord,
  windUsedRecord,
  groundSpeedRecord,
  accelerationCheckSpeedRecord,
  correctedDistanceRecord,
  latestLiftOffRecord,
  latestTouchdownPointRecord,
  slopeFactorRecord,
  windFactorRecord,
  proRatedFactorRecord,
  latestRejectPointRecord,
  rollWithSurfaceRecord,
  speedFactorRecord,
  landingDistanceLostRecord,
  climbGradientRecord,
  latestPathStartRecord,
  obstacleClearanceRecord,
  requiredGradientRecord,
  heightForSpeedGainRecord,
  interpolateCellRecord,
  interpolateCurvesRecord,
];
