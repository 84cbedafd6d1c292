import { it } from 'vitest';
import {
  type CalibratedAirspeed,
  type Celsius,
  type CelsiusDifference,
  type DensityAltitude,
  degC,
  degCDifference,
  degEast,
  degF,
  degMagnetic,
  degrees,
  degTrue,
  type Elevation,
  type EquivalentAirspeed,
  type Feet,
  feetFromMetres,
  ft,
  ftDA,
  ftElevation,
  ftHeight,
  ftPA,
  type ftPerMin,
  type GeometricAltitudeInMetres,
  type GeopotentialAltitudeInMetres,
  type GroundSpeed,
  type Height,
  type hPa,
  type IndicatedAirspeed,
  inHg,
  type Kilograms,
  type Knots,
  kcas,
  keas,
  kg,
  kias,
  kt,
  ktas,
  ktGS,
  lb,
  type MagneticDirection,
  type Metres,
  m,
  mElevation,
  measure,
  mGeometric,
  mGeopotential,
  minutes,
  mPA,
  mph,
  mps,
  mpsVertical,
  NM,
  type Percent,
  type PressureAltitude,
  percent,
  ratio,
  type seconds,
  type TrueAirspeed,
  type TrueDirection,
  type Variation,
} from '../../src/units/index.ts';
import { windComponents } from '../../src/wind/index.ts';

// Every line under `@ts-expect-error` must not compile. The same file is compiled against the packed types with the
// newest and the oldest compiler promised (test/package).

it('keeps true and magnetic directions apart', () => {
  // @ts-expect-error a magnetic direction is not a true one
  const a: TrueDirection = degMagnetic(190);
  // @ts-expect-error a true direction is not a magnetic one
  const b: MagneticDirection = degTrue(187);
  // @ts-expect-error a variation is not a direction
  const c: TrueDirection = degEast(-3);
  // @ts-expect-error a direction is not a variation
  const d: Variation = degTrue(3);
  // @ts-expect-error an angle has no north
  const e: TrueDirection = degrees(10);
  return [a, b, c, d, e];
});

it('refuses a true wind against a magnetic runway, and the other way round', () => {
  // @ts-expect-error true wind, magnetic runway
  windComponents({ from: degTrue(190), speed: kt(7), direction: degMagnetic(112) });
  // @ts-expect-error magnetic wind, true runway
  windComponents({ from: degMagnetic(190), speed: kt(7), direction: degTrue(112) });
  windComponents({ from: degTrue(190), speed: kt(7), direction: degTrue(112) });
  windComponents({ from: degMagnetic(190), speed: kt(7), direction: degMagnetic(112) });
});

it('keeps the references of speed apart', () => {
  // @ts-expect-error calibrated is not indicated
  const ias: IndicatedAirspeed = kcas(67);
  // @ts-expect-error indicated is not calibrated
  const cas: CalibratedAirspeed = kias(65);
  // @ts-expect-error calibrated is not equivalent
  const eas: EquivalentAirspeed = kcas(67);
  // @ts-expect-error equivalent is not calibrated
  const cas2: CalibratedAirspeed = keas(66);
  // @ts-expect-error indicated is not true
  const tas: TrueAirspeed = kias(65);
  // @ts-expect-error equivalent is not true
  const tas2: TrueAirspeed = keas(66);
  // @ts-expect-error ground speed is not true airspeed
  const tas3: TrueAirspeed = ktGS(60);
  // @ts-expect-error true airspeed is not ground speed
  const gs: GroundSpeed = ktas(72);
  // @ts-expect-error an airspeed is not the speed of the wind
  const wind: Knots = ktas(72);
  // @ts-expect-error the speed of the wind is not an airspeed
  const tas4: TrueAirspeed = kt(12);
  // @ts-expect-error nor is an airspeed a wind in the components of a wind
  windComponents({ from: degTrue(190), speed: ktas(72), direction: degTrue(112) });
  return [ias, cas, eas, cas2, tas, tas2, tas3, gs, wind, tas4];
});

it('keeps pressure altitude, density altitude, elevation, height and length apart', () => {
  // @ts-expect-error density altitude is not pressure altitude
  const a: PressureAltitude = ftDA(2600);
  // @ts-expect-error pressure altitude is not density altitude
  const b: DensityAltitude = ftPA(1095);
  // @ts-expect-error elevation is not pressure altitude
  const c: PressureAltitude = ftElevation(1200);
  // @ts-expect-error pressure altitude is not elevation
  const d: Elevation = ftPA(1095);
  // @ts-expect-error height is not elevation
  const e: Elevation = ftHeight(50);
  // @ts-expect-error elevation is not height
  const f: Height = ftElevation(1200);
  // @ts-expect-error elevation in metres is not elevation in feet
  const g: Elevation = mElevation(366);
  // @ts-expect-error a length is not a height
  const h: Height = ft(50);
  // @ts-expect-error a height is not a length
  const i: Feet = ftHeight(50);
  // @ts-expect-error a height is not a density altitude
  const j: DensityAltitude = ftHeight(50);
  return [a, b, c, d, e, f, g, h, i, j];
});

it('keeps geopotential, geometric and pressure altitudes apart', () => {
  // @ts-expect-error a geometric altitude is not a geopotential one
  const a: GeopotentialAltitudeInMetres = mGeometric(11019);
  // @ts-expect-error a geopotential altitude is not a geometric one
  const b: GeometricAltitudeInMetres = mGeopotential(11000);
  // @ts-expect-error a pressure altitude is a geopotential one in the standard atmosphere only
  const c: GeopotentialAltitudeInMetres = mPA(11000);
  // @ts-expect-error an elevation is not a geometric altitude of the standard atmosphere
  const d: GeometricAltitudeInMetres = mElevation(366);
  return [a, b, c, d];
});

it('keeps a temperature and a difference of temperatures apart', () => {
  // @ts-expect-error a difference is not a temperature
  const a: Celsius = degCDifference(15);
  // @ts-expect-error a temperature is not a difference
  const b: CelsiusDifference = degC(28);
  // @ts-expect-error Fahrenheit is not Celsius
  const c: Celsius = degF(82);
  return [a, b, c];
});

it('keeps units of one quantity apart', () => {
  // @ts-expect-error metres are not feet
  const a: Feet = m(830);
  // @ts-expect-error feet are not metres
  const b: Metres = ft(1370);
  // @ts-expect-error nautical miles are not metres
  const c: Metres = NM(2);
  // @ts-expect-error miles per hour are not knots
  const d: Knots = mph(15);
  // @ts-expect-error metres per second are not knots
  const e: Knots = mps(5);
  // @ts-expect-error pounds are not kilograms
  const f: Kilograms = lb(2300);
  // @ts-expect-error a ratio is not a percentage
  const g: Percent = ratio(0.019);
  // @ts-expect-error inches of mercury are not hectopascals
  const h: ReturnType<typeof hPa> = inHg(29.92);
  // @ts-expect-error metres per second upwards are not feet per minute
  const i: ReturnType<typeof ftPerMin> = mpsVertical(3.3);
  // @ts-expect-error minutes are not seconds
  const j: ReturnType<typeof seconds> = minutes(10);
  // @ts-expect-error feet go in, not metres
  feetFromMetres(ft(1370));
  return [a, b, c, d, e, f, g, h, i, j];
});

it('refuses to tag a quantity a second time', () => {
  // @ts-expect-error metres are not feet, however they are wrapped
  ft(m(600));
  // @ts-expect-error not even its own unit again
  ft(ft(600));
  // @ts-expect-error an indicated airspeed does not become a true one by a word
  ktas(kias(65));
  // @ts-expect-error nor a magnetic direction a true one
  degTrue(degMagnetic(190));
});

it('refuses a bare number where a quantity is wanted, and anything but a number in a constructor', () => {
  // @ts-expect-error in what unit?
  const a: Feet = 1370;
  // @ts-expect-error in what unit, and against which north?
  windComponents({ from: 190, speed: kt(7), direction: degTrue(112) });
  // @ts-expect-error in what unit?
  windComponents({ from: degTrue(190), speed: 7, direction: degTrue(112) });
  // @ts-expect-error a text is not a number
  ft('1370');
  // @ts-expect-error nothing is not a number
  ft(undefined);
  return a;
});

it('refuses a document whose unit word is not that of the quantity', () => {
  // @ts-expect-error metres under the word of feet
  measure(m(15), 'ft');
  measure(m(15), 'm');
});

it('lets arithmetic of numbers through, and quantities where they belong', () => {
  const length: Metres = m(830);
  const feet: Feet = feetFromMetres(length);
  const sum: number = length + 20;
  const mass: Kilograms = kg(1050);
  const slope: Percent = percent(1.9);
  const north: TrueDirection | MagneticDirection = degTrue(187);
  return [feet, sum, mass, slope, north, degC(28), degCDifference(15), ftPA(1095), ftDA(2600)];
});
