export { type Bound, type Domain, demand } from './domain.ts';
export { DomainError, type DomainErrorDetail } from './domain-error.ts';
export {
  degLatitude,
  degLongitude,
  degrees,
  degreesFromRadians,
  radians,
  radiansFromDegrees,
  type Degrees,
  type Latitude,
  type Longitude,
  type Radians,
} from './angle.ts';
export {
  kgPerM3,
  type KilogramsPerCubicMetre,
} from './density.ts';
export {
  degEast,
  degEastPerYear,
  degMagnetic,
  degTrue,
  type MagneticDirection,
  type TrueDirection,
  type Variation,
  type VariationChange,
} from './direction.ts';
export {
  NM,
  elevationFromMetres,
  elevationInMetresFromFeet,
  feetFromMetres,
  feetFromNauticalMiles,
  ft,
  ftDA,
  ftElevation,
  ftHeight,
  ftPA,
  heightFromMetres,
  heightInMetresFromFeet,
  kilometresFromMetres,
  km,
  m,
  mElevation,
  mHeight,
  metresFromFeet,
  metresFromKilometres,
  metresFromNauticalMiles,
  nauticalMilesFromFeet,
  nauticalMilesFromMetres,
  type DensityAltitude,
  type Elevation,
  type ElevationInMetres,
  type Feet,
  type Height,
  type HeightInMetres,
  type Kilometres,
  type Metres,
  type NauticalMiles,
  type PressureAltitude,
} from './length.ts';
export {
  nanotesla,
  type Nanotesla,
} from './magnetic-field.ts';
export {
  kg,
  kilogramsFromPounds,
  lb,
  poundsFromKilograms,
  type Kilograms,
  type Pounds,
} from './mass.ts';
export {
  hPa,
  hectopascalsFromInchesOfMercury,
  inHg,
  inchesOfMercuryFromHectopascals,
  type Hectopascals,
  type InchesOfMercury,
} from './pressure.ts';
export {
  feetPerNauticalMileFromRatio,
  ftPerNM,
  percent,
  percentFromRatio,
  ratio,
  ratioFromFeetPerNauticalMile,
  ratioFromPercent,
  type FeetPerNauticalMile,
  type Percent,
  type Ratio,
} from './ratio.ts';
export {
  kcas,
  keas,
  kias,
  knotsFromMetresPerSecond,
  knotsFromMilesPerHour,
  kt,
  ktGS,
  ktas,
  metresPerSecondFromKnots,
  milesPerHourFromKnots,
  mph,
  mps,
  type CalibratedAirspeed,
  type EquivalentAirspeed,
  type GroundSpeed,
  type IndicatedAirspeed,
  type Knots,
  type MetresPerSecond,
  type MilesPerHour,
  type TrueAirspeed,
} from './speed.ts';
export {
  celsiusFromFahrenheit,
  celsiusFromKelvin,
  degC,
  degCDifference,
  degF,
  fahrenheitFromCelsius,
  kelvin,
  kelvinFromCelsius,
  type Celsius,
  type CelsiusDifference,
  type Fahrenheit,
  type Kelvin,
} from './temperature.ts';
export {
  minutes,
  minutesFromSeconds,
  seconds,
  secondsFromMinutes,
  type Minutes,
  type Seconds,
} from './time.ts';
export {
  climbInMetresPerSecondFromFeetPerMinute,
  feetPerMinuteFromMetresPerSecond,
  ftPerMin,
  mpsVertical,
  type ClimbInMetresPerSecond,
  type FeetPerMinute,
} from './vertical-speed.ts';
export type { Numbers, Quantity, Tag, UnitOf, Untagged } from './tag.ts';
export {
  type FormatOptions,
  formatAcrossRunway,
  formatAlongRunway,
  formatNumber,
  formatQuantity,
  formatSlope,
} from './format.ts';
export { type Measure, measure, quantityOf } from './measure.ts';
export { roundDown, roundUp } from './rounding.ts';
export type { UnitWord } from './unit-table.ts';
export { type DecimalYear, decimalYear, decimalYearFromDate } from './date.ts';
