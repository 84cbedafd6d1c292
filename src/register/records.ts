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
import type { FormulaRecord } from '../sources/index.ts';
import { windUsedRecord } from '../wind/accountability.record.ts';
import { windComponentsRecord } from '../wind/components.record.ts';
import { groundSpeedRecord } from '../wind/ground-speed.record.ts';
import { reportedWindRecord } from '../wind/reported.record.ts';

/** Every formula record of the library. */
export const formulaRecords: readonly FormulaRecord[] = [
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
];
