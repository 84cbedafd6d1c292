export {
  type AirDensityInputs,
  airDensity,
  type HumidAirDensityInputs,
  type HumidDensityRatioInputs,
  humidAirDensity,
  humidDensityRatio,
} from './air-density.ts';
export {
  type QfeFromQnhInputs,
  type QfeFromStationPressureInputs,
  type QnhFromPressureAltitudeInputs,
  type QnhFromQfeInputs,
  type QnhFromStationPressureInputs,
  qfeFromQnh,
  qfeFromStationPressure,
  qnhFromPressureAltitude,
  qnhFromQfe,
  qnhFromStationPressure,
  type StationPressureFromQfeInputs,
  type StationPressureFromQnhInputs,
  stationPressureFromQfe,
  stationPressureFromQnh,
} from './altimeter-setting.ts';
export {
  type AutomaticAltimeterSettingInputs,
  altimeterSettingAsos,
  altimeterSettingAwos,
  type StationPressureAwosInputs,
  stationPressureAwos,
} from './altimeter-setting-asos.ts';
export {
  type AltimeterSettingInputs,
  type AltimeterSettingIom19Inputs,
  altimeterSettingIom19,
  altimeterSettingMadis,
  altimeterSettingNoaa,
  altimeterSettingSmithsonian,
  type StationPressureSmithsonianInputs,
  stationPressureSmithsonian,
} from './altimeter-setting-smithsonian.ts';
export {
  type DensityAltitudeFromDensityInputs,
  densityAltitudeFromDensity,
  type PressureAltitudeFromPressureInputs,
  pressureAltitudeFromPressure,
} from './altitude-of-air.ts';
export {
  type ColdTemperatureCorrectionInputs,
  coldTemperatureCorrection,
  coldTemperatureCorrectionHydrostatic,
  type TabulatedColdTemperatureCorrectionInputs,
  tabulatedColdTemperatureCorrection,
} from './cold-temperature.ts';
export {
  type DensityAltitudeInputs,
  type DensityRatioInputs,
  densityAltitude,
  densityRatio,
} from './density-altitude.ts';
export {
  type DensityAltitudeNearStandardInputs,
  type DensityAltitudeNwsInputs,
  densityAltitudeNearStandard,
  densityAltitudeNws,
} from './density-altitude-forms.ts';
export {
  type GeometricAltitudeInputs,
  type GeopotentialAltitudeInputs,
  geometricAltitude,
  geopotentialAltitude,
} from './geopotential-altitude.ts';
export { type HumidAirInputs, humidDensityAltitude, virtualTemperature } from './humid-air.ts';
export { type DewPointInputs, dewPoint, type RelativeHumidityInputs, relativeHumidity } from './humidity.ts';
export {
  type IndicatedAltitudeInputs,
  type IndicatedHeightInputs,
  indicatedAltitude,
  indicatedHeight,
} from './indicated-altitude.ts';
export {
  type PressureAltitudeFromQfeInputs,
  type PressureAltitudeInputs,
  pressureAltitude,
  pressureAltitudeFromQfe,
} from './pressure-altitude.ts';
export { type PressureAltitudeNwsInputs, pressureAltitudeNws } from './pressure-altitude-nws.ts';
export { type SpeedOfSoundInputs, speedOfSound } from './speed-of-sound.ts';
export {
  type StandardAir,
  type StandardAtmosphereAtGeometricAltitudeInputs,
  type StandardAtmosphereAtPressureAltitudeInputs,
  type StandardAtmosphereAtPressureInputs,
  type StandardAtmosphereInputs,
  standardAtmosphere,
  standardAtmosphereAtGeometricAltitude,
  standardAtmosphereAtPressure,
  standardAtmosphereAtPressureAltitude,
} from './standard-atmosphere.ts';
export { type StandardPressureInputs, standardPressure } from './standard-pressure.ts';
export {
  type IsaDeviationInputs,
  isaDeviation,
  type StandardTemperatureInputs,
  standardTemperature,
} from './standard-temperature.ts';
export { type SaturationVapourPressureInputs, saturationVapourPressure } from './vapour-pressure.ts';
export {
  saturationVapourPressureBuck1981,
  saturationVapourPressureBuck1996,
  saturationVapourPressureNws,
  saturationVapourPressureTetens,
  type VapourPressureInputs,
} from './vapour-pressure-forms.ts';
export {
  type RelativeHumidityWmoInputs,
  relativeHumidityWmo,
  type SaturationVapourPressureOfMoistAirWmoInputs,
  type SaturationVapourPressureWmoInputs,
  saturationVapourPressureOfMoistAirWmo,
  saturationVapourPressureWmo,
} from './vapour-pressure-wmo.ts';
export {
  type VirtualTemperatureFromMixingRatioInputs,
  type VirtualTemperatureFromSpecificHumidityInputs,
  virtualTemperatureFromMixingRatio,
  virtualTemperatureFromSpecificHumidity,
} from './virtual-temperature-forms.ts';
