export {
  type DensityAltitudeInputs,
  type DensityRatioInputs,
  densityAltitude,
  densityRatio,
} from './density-altitude.ts';
export { type HumidAirInputs, humidDensityAltitude, virtualTemperature } from './humid-air.ts';
export {
  type PressureAltitudeFromQfeInputs,
  type PressureAltitudeInputs,
  pressureAltitude,
  pressureAltitudeFromQfe,
} from './pressure-altitude.ts';
export { type SpeedOfSoundInputs, speedOfSound } from './speed-of-sound.ts';
export { type StandardPressureInputs, standardPressure } from './standard-pressure.ts';
export {
  type IsaDeviationInputs,
  isaDeviation,
  type StandardTemperatureInputs,
  standardTemperature,
} from './standard-temperature.ts';
export { type SaturationVapourPressureInputs, saturationVapourPressure } from './vapour-pressure.ts';
