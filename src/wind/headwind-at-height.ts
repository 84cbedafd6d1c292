import type { Citation } from '../sources/index.ts';
import {
  type Domain,
  demand,
  type HeightInMetres,
  inconsistent,
  type Knots,
  type Numbers,
  type Ratio,
} from '../units/index.ts';

/** An exponent of the power law of the wind near the ground, with where it stands. */
export interface WindProfileExponent {
  readonly exponent: Ratio;
  readonly citation: Citation;
}

/** The exponent by which flight testers reduce a wind to the height of the wing: a convention, not a measured figure. */
export const flightTestWindExponent: WindProfileExponent = {
  // One seventh, written out so that nothing is computed when the module is loaded.
  exponent: 0.14285714285714285 as Ratio,
  citation: {
    source: 'flight-test-wind-note',
    locator: 'wind at the height of the wing, 1/7 power law',
    access: 'read',
  },
};

/** Inputs of {@link headwindAtHeight}. */
export interface HeadwindAtHeightInputs {
  /** Headwind at the height of the sensor. */
  readonly headwind: Knots;
  /** Height of the sensor above the ground, commonly 10 m. */
  readonly sensorHeight: HeightInMetres;
  /** Height asked for, no higher than the sensor. */
  readonly height: HeightInMetres;
  /** Exponent of the power law; {@link flightTestWindExponent} holds that of flight tests. */
  readonly exponent: Ratio;
}

export const headwindAtHeightDomain = {
  headwind: { unit: 'kt', min: 0, max: 200, source: 'a tailwind is not reduced' },
  sensorHeight: { unit: 'mHeight', min: 1, max: 30, source: 'library range' },
  height: { unit: 'mHeight', min: 1, max: 30, source: 'library range' },
  exponent: { unit: 'ratio', min: 0.05, max: 0.5, source: 'library range' },
} satisfies Domain<HeadwindAtHeightInputs>;

/**
 * Approximate headwind nearer to the ground than the sensor that measured it: one reason why only part of a reported
 * headwind is counted on. It informs. A share of the headwind contains it already, so that the two are not applied
 * together, and no tailwind and no crosswind is ever reduced by it.
 *
 * H = H_s (h / h_s)^p: H_s the headwind in kt at the height h_s of the sensor, h the height in m, p the exponent, 1/7 by
 * the convention of flight tests. Over rough ground the wind falls off faster.
 *
 * @param x - `headwind` 0 kt to 200 kt, `sensorHeight` 1 m to 30 m, `height` from 1 m to that of the sensor, `exponent`
 * 0.05 to 0.5.
 * @returns The headwind at the height in kt.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the height is
 * above the sensor.
 * @record wind.headwind-at-height
 *
 * @example
 * const { exponent } = flightTestWindExponent
 * headwindAtHeight({ headwind: kt(15), sensorHeight: mHeight(10), height: mHeight(2), exponent }) // ≈ 11.92 ± 0.01
 */
export function headwindAtHeight(x: HeadwindAtHeightInputs): Knots {
  demand('headwind', x.headwind, headwindAtHeightDomain.headwind);
  demand('sensorHeight', x.sensorHeight, headwindAtHeightDomain.sensorHeight);
  demand('height', x.height, headwindAtHeightDomain.height);
  demand('exponent', x.exponent, headwindAtHeightDomain.exponent);
  const {
    headwind: headwind_kt,
    sensorHeight: sensor_m,
    height: height_m,
    exponent,
  }: Numbers<HeadwindAtHeightInputs> = x;
  if (height_m > sensor_m) refuseAboveSensor(height_m, sensor_m);
  return (headwind_kt * (height_m / sensor_m) ** exponent) as Knots;
}

function refuseAboveSensor(received: number, max: number): never {
  const source = 'no headwind is credited beyond the one measured';
  const { unit, min } = headwindAtHeightDomain.height;
  throw inconsistent('height', received, unit, min, max, source);
}
