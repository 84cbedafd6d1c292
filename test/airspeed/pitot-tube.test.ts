import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  calibratedAirspeedFromMach,
  calibratedAirspeedFromTrue,
  equivalentAirspeedFromCalibrated,
  impactPressure,
  machNumberFromCalibrated,
  trueAirspeed,
} from '../../src/airspeed/index.ts';
import {
  degC,
  ftPA,
  inchesOfWaterFromHectopascals,
  kcas,
  knotsFromMilesPerHour,
  ktas,
  mph,
  ratio,
} from '../../src/units/index.ts';

// A second computation of the airspeeds, sharing nothing with the first: the energy of the air that the pitot tube
// stops, in SI units, solved by halving. Air brought to rest keeps its enthalpy (c_p T + V²/2) and, without friction,
// its entropy (T^c_p / p^R).
const c_p = 3.5 * 287.05287;
const gasConstant = 287.05287;
const metresPerSecond = (knots: number) => knots * (1852 / 3600);

/** Pressure in the pitot tube, Pa, of a speed in m/s through air of a pressure and a temperature. */
function pitotPressure(speed: number, pressure: number, kelvins: number): number {
  const stagnation = kelvins + speed ** 2 / (2 * c_p);
  return pressure * Math.exp((c_p / gasConstant) * Math.log(stagnation / kelvins));
}

/** Static pressure, Pa, at a geopotential height in m, by small steps of the hydrostatic equation from mean sea level. */
function staticPressure(height: number): number {
  const steps = 400;
  const step = height / steps;
  let logarithm = 0;
  for (let i = 0; i < steps; i += 1) {
    // Simpson's rule over each step of d(ln p) = -g dh / (R T).
    const slope = (h: number) => -9.80665 / (gasConstant * (288.15 - 0.0065 * h));
    const h = i * step;
    logarithm += (step / 6) * (slope(h) + 4 * slope(h + step / 2) + slope(h + step));
  }
  return 101325 * Math.exp(logarithm);
}

/** The argument at which a rising function has a value, by halving. */
function solved(value: number, low: number, high: number, of: (x: number) => number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 200 && b - a > 0; i += 1) {
    const middle = (a + b) / 2;
    if (middle === a || middle === b) break;
    if (of(middle) < value) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** True airspeed in kt that puts the same impact pressure on the tube as a calibrated airspeed does at mean sea level. */
function trueFromPitot(calibrated_kt: number, altitude_ft: number, t_degC: number): number {
  const impact = pitotPressure(metresPerSecond(calibrated_kt), 101325, 288.15) - 101325;
  const pressure = staticPressure(altitude_ft * 0.3048);
  return solved(impact, 0, 700, (v_kt) => pitotPressure(metresPerSecond(v_kt), pressure, t_degC + 273.15) - pressure);
}

describe('airspeeds from the energy of the stopped air', () => {
  const altitudes = [-4000, 0, 1500, 5000, 9000, 14000, 22000, 30000, 36000];
  const speeds = [20, 45, 60, 75, 100, 140, 200, 240];
  const temperatures = [-55, -20, 15, 45];

  it.each(altitudes)('agree at %d ft: true from calibrated', (altitude) => {
    for (const v of speeds) {
      for (const t of temperatures) {
        const ours: number = trueAirspeed({
          calibratedAirspeed: kcas(v),
          pressureAltitude: ftPA(altitude),
          temperature: degC(t),
        });
        const theirs = trueFromPitot(v, altitude, t);
        expect(Math.abs(ours / theirs - 1), `${v} kt, ${t} °C: ${theirs}`).toBeLessThan(1e-9);
      }
    }
  });

  it.each(altitudes)('agree at %d ft: calibrated from true', (altitude) => {
    const pressure = staticPressure(altitude * 0.3048);
    for (const v of [30, 80, 130, 210, 320, 480]) {
      for (const t of temperatures) {
        const impact = pitotPressure(metresPerSecond(v), pressure, t + 273.15) - pressure;
        const theirs = solved(impact, 0, 700, (c) => pitotPressure(metresPerSecond(c), 101325, 288.15) - 101325);
        const air = { pressureAltitude: ftPA(altitude), temperature: degC(t) };
        const ours: number = calibratedAirspeedFromTrue({ trueAirspeed: ktas(v), ...air });
        expect(Math.abs(ours / theirs - 1), `${v} kt, ${t} °C: ${theirs}`).toBeLessThan(1e-9);
      }
    }
  });
});

const lines = (file: string) =>
  fs
    .readFileSync(new URL(file, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(',').map(Number));

describe('the computed table of airspeeds', () => {
  // airspeeds-computed.csv: another program's ten digits, with R from 1.225 kg/m³ (1.5e-8 from the rounded constant).
  const rows = lines('./airspeeds-computed.csv');

  it('has 320 rows in the troposphere', () => {
    expect(rows).toHaveLength(320);
  });

  it('agrees with every conversion', () => {
    for (const row of rows) {
      const [altitude = 0, calibrated = 0, mach = 0, equivalent = 0, trueSpeed = 0, impact = 0, kelvins = 0] = row;
      const calibratedAirspeed = kcas(calibrated);
      const pressureAltitude = ftPA(altitude);
      const temperature = degC(kelvins - 273.15);
      const close = (ours: number, theirs: number) =>
        expect(Math.abs(ours / theirs - 1), row.join(' ')).toBeLessThan(3e-8);
      close(machNumberFromCalibrated({ calibratedAirspeed, pressureAltitude }), mach);
      close(equivalentAirspeedFromCalibrated({ calibratedAirspeed, pressureAltitude }), equivalent);
      close(trueAirspeed({ calibratedAirspeed, pressureAltitude, temperature }), trueSpeed);
      close(impactPressure({ calibratedAirspeed }) * 100, impact);
    }
  });
});

describe('the published table of impact pressures against miles per hour', () => {
  // impact-pressure-mph.csv: NASA RP-1046, tables A19 and A27, as quoted by owners of a home-built aeroplane
  // (second-hand). 60 mph is left out: 1.77501 inH2O is printed as 1.77.
  const rows = lines('./impact-pressure-mph.csv').filter(([speed]) => speed !== 60);

  it('is reproduced to its last digit', () => {
    expect(rows).toHaveLength(36);
    for (const [speed = 0, printed = 0] of rows) {
      const calibrated: number = knotsFromMilesPerHour(mph(speed));
      const ours: number = inchesOfWaterFromHectopascals(impactPressure({ calibratedAirspeed: kcas(calibrated) }));
      expect(Math.abs(ours - printed), `${speed} mph: ${ours}`).toBeLessThanOrEqual(0.005);
    }
  });
});

describe('the published altitudes at which a calibrated airspeed is a Mach number', () => {
  // A training article prints the nearest flight level: 310 kt and Mach 0.78 at FL280, 270 kt and Mach 0.70 at FL290.
  it.each([
    [310, 0.78, 28000],
    [270, 0.7, 29000],
  ])('%d kt and Mach %d are equal within 500 ft of %d ft', (calibrated, mach, printed) => {
    const calibratedOf = (altitude: number): number =>
      calibratedAirspeedFromMach({ machNumber: ratio(mach), pressureAltitude: ftPA(altitude) });
    // At one Mach number the calibrated airspeed falls with the altitude.
    expect(calibratedOf(printed - 500)).toBeGreaterThan(calibrated);
    expect(calibratedOf(printed + 500)).toBeLessThan(calibrated);
  });
});
