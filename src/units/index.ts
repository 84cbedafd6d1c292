export { type FeetPerSecondSquared, ftPerS2, type MetresPerSecondSquared, mps2 } from './acceleration.ts';
export {
  type Degrees,
  type DegreesPerYear,
  degLatitude,
  degLongitude,
  degPerYear,
  degrees,
  degreesFromRadians,
  type Latitude,
  type Longitude,
  type Radians,
  radians,
  radiansFromDegrees,
} from './angle.ts';
export { type DegreesPerSecond, degPerS, type RadiansPerSecond, radPerS } from './angular-speed.ts';
export { m2, type SquareMetres } from './area.ts';
export { type DecimalYear, decimalYear, decimalYearFromDate } from './date.ts';
export {
  type KilogramsPerCubicMetre,
  kgPerM3,
  type SlugsPerCubicFoot,
  slugPerFt3,
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
export { type Bound, type Domain, demand, demandEach } from './domain.ts';
export { DomainError, type DomainErrorDetail } from './domain-error.ts';
export { type KilogramsPerMetre, kgPerM, type Newtons, newtons } from './force.ts';
export {
  type FormatOptions,
  formatAcrossRunway,
  formatAlongRunway,
  formatNumber,
  formatQuantity,
  formatSlope,
  formatValue,
} from './format.ts';
export {
  type PerFootPerSecondSquared,
  type PerMetrePerSecondSquared,
  s2PerFt2,
  s2PerM2,
} from './inverse-speed-squared.ts';
export {
  type DensityAltitude,
  type Elevation,
  type ElevationInMetres,
  elevationFromMetres,
  elevationInMetresFromFeet,
  type Feet,
  feetFromMetres,
  feetFromNauticalMiles,
  ft,
  ftDA,
  ftElevation,
  ftHeight,
  ftPA,
  type Height,
  type HeightInMetres,
  heightFromMetres,
  heightInMetresFromFeet,
  type Kilometres,
  kilometresFromMetres,
  km,
  type Metres,
  m,
  mElevation,
  metresFromFeet,
  metresFromKilometres,
  metresFromNauticalMiles,
  mHeight,
  mPA,
  type NauticalMiles,
  NM,
  nauticalMilesFromFeet,
  nauticalMilesFromMetres,
  type PressureAltitude,
  type PressureAltitudeInMetres,
  pressureAltitudeFromMetres,
  pressureAltitudeInMetresFromFeet,
} from './length.ts';
export {
  type Nanotesla,
  type NanoteslaPerYear,
  nanotesla,
  nanoteslaPerYear,
} from './magnetic-field.ts';
export {
  type Kilograms,
  kg,
  kilogramsFromPounds,
  lb,
  type Pounds,
  poundsFromKilograms,
} from './mass.ts';
export { type Measure, measure, quantityOf } from './measure.ts';
export {
  type FeetPerHectopascal,
  ftPerHPa,
  type Hectopascals,
  hectopascalsFromInchesOfMercury,
  hectopascalsFromInchesOfWater,
  hPa,
  type InchesOfMercury,
  type InchesOfWater,
  inchesOfMercuryFromHectopascals,
  inchesOfWaterFromHectopascals,
  inH2O,
  inHg,
  type PoundsPerSquareInch,
  psi,
} from './pressure.ts';
export {
  type FeetPerNauticalMile,
  feetPerNauticalMileFromRatio,
  ftPerNM,
  type Percent,
  percent,
  percentFromRatio,
  type Ratio,
  ratio,
  ratioFromFeetPerNauticalMile,
  ratioFromPercent,
} from './ratio.ts';
export { roundDown, roundUp } from './rounding.ts';
export {
  type CalibratedAirspeed,
  type EquivalentAirspeed,
  ftPerSTAS,
  type GroundSpeed,
  type IndicatedAirspeed,
  type Knots,
  kcas,
  keas,
  kias,
  knotsFromMetresPerSecond,
  knotsFromMilesPerHour,
  kt,
  ktas,
  ktGS,
  type MetresPerSecond,
  type MilesPerHour,
  metresPerSecondFromKnots,
  milesPerHourFromKnots,
  mph,
  mps,
  mpsTAS,
  type TrueAirspeed,
  type TrueAirspeedInFeetPerSecond,
  type TrueAirspeedInMetresPerSecond,
  trueAirspeedFromMetresPerSecond,
  trueAirspeedInMetresPerSecondFromKnots,
} from './speed.ts';
export type { Numbers, Quantity, Tag, UnitOf, Untagged } from './tag.ts';
export {
  type Celsius,
  type CelsiusDifference,
  celsiusFromFahrenheit,
  celsiusFromKelvin,
  degC,
  degCDifference,
  degF,
  type Fahrenheit,
  fahrenheitFromCelsius,
  type Kelvin,
  kelvin,
  kelvinFromCelsius,
} from './temperature.ts';
export {
  type Minutes,
  minutes,
  minutesFromSeconds,
  type Seconds,
  seconds,
  secondsFromMinutes,
} from './time.ts';
export type { UnitWord } from './unit-table.ts';
export {
  type ClimbInMetresPerSecond,
  climbInMetresPerSecondFromFeetPerMinute,
  type FeetPerMinute,
  feetPerMinuteFromMetresPerSecond,
  ftPerMin,
  mpsVertical,
} from './vertical-speed.ts';
export { type Litres, litres, litresFromUsGallons, type USGallons, usGallons, usGallonsFromLitres } from './volume.ts';
export { lbfPerFt2, type NewtonsPerSquareMetre, NPerM2, type PoundsForcePerSquareFoot } from './wing-loading.ts';
