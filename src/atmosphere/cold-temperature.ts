import {
  type Celsius,
  type Domain,
  demand,
  type Elevation,
  type Height,
  inconsistent,
  type Numbers,
  roundDown,
  roundUp,
} from '../units/index.ts';
import { L_KPerFt, T0_K, Ti_K } from './standard-atmosphere-constants.ts';

// An altimeter set to QNH reads too high in air colder than standard: what it must read more than the height wanted.

/** Inputs of {@link coldTemperatureCorrection} and {@link coldTemperatureCorrectionHydrostatic}. */
export interface ColdTemperatureCorrectionInputs {
  /** Height above the source of the altimeter setting, as a rule the aerodrome. */
  readonly height: Height;
  /** Temperature reported at the source of the altimeter setting. */
  readonly aerodromeTemperature: Celsius;
  /** Elevation of the source of the altimeter setting. */
  readonly aerodromeElevation: Elevation;
}

/** Inputs of {@link tabulatedColdTemperatureCorrection}. */
export interface TabulatedColdTemperatureCorrectionInputs {
  /** Height above the source of the altimeter setting, as a rule the aerodrome. */
  readonly height: Height;
  /** Temperature reported at the source of the altimeter setting. */
  readonly aerodromeTemperature: Celsius;
}

/** The rounded lapse rate of the simple form. */
const l0_degCPerFt = 0.00198;

export const coldTemperatureCorrectionDomain = {
  height: {
    unit: 'ftHeight',
    min: 0,
    max: 5000,
    source: 'PANS-OPS, Doc 8168: within 5 % to 5000 ft',
  },
  aerodromeTemperature: { unit: 'degC', min: -60, max: 30, source: 'library range' },
  aerodromeElevation: {
    unit: 'ftElevation',
    min: -2000,
    max: 10000,
    source: 'PANS-OPS, Doc 8168: within 5 % to 10000 ft; lower end library range',
  },
} satisfies Domain<ColdTemperatureCorrectionInputs>;

export const tabulatedColdTemperatureCorrectionDomain = {
  height: { unit: 'ftHeight', min: 200, max: 5000, source: 'first and last column of the table' },
  aerodromeTemperature: { unit: 'degC', min: -50, max: 10, source: 'first and last row of the table' },
} satisfies Domain<TabulatedColdTemperatureCorrectionInputs>;

/**
 * Cold temperature correction of the altimeter, in the simple form of PANS-OPS.
 *
 * C = H (15 − t0)/(273 + t0 − L0 (H + Hss)/2), t0 = t + L0 Hss: H the height above the source of the altimeter setting
 * in ft, t the temperature there in °C, Hss its elevation in ft, L0 = 0.00198 °C/ft. The altimeter must read H + C above
 * the elevation of the source for the aeroplane to be H above it.
 *
 * @param x - `height` 0 ft to 5000 ft, `aerodromeTemperature` −60 °C to 30 °C and not warmer than standard,
 * `aerodromeElevation` −2000 ft to 10 000 ft.
 * @returns Feet to add, unrounded; within 5 % of the hydrostatic form.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the air is
 * warmer than standard, for which this correction is not made.
 * @record atmosphere.cold-temperature-correction
 *
 * @example
 * coldTemperatureCorrection({ height: ftHeight(1000), aerodromeTemperature: degC(-30), aerodromeElevation: ftElevation(0) }) // ≈ 185.94 ± 0.01
 * coldTemperatureCorrection({ height: ftHeight(1000), aerodromeTemperature: degC(20), aerodromeElevation: ftElevation(0) }) // throws aerodromeTemperature: 20 degC
 */
export function coldTemperatureCorrection(x: ColdTemperatureCorrectionInputs): Height {
  demandAll(x);
  const {
    height: h_ft,
    aerodromeTemperature: t_degC,
    aerodromeElevation: hss_ft,
  }: Numbers<ColdTemperatureCorrectionInputs> = x;
  demandColdAir(t_degC, 15 - l0_degCPerFt * hss_ft);
  return simpleForm_ft(h_ft, t_degC, hss_ft) as Height;
}

/**
 * Cold temperature correction as the ICAO table prints it: the simple form at zero elevation, rounded up to 10 ft.
 *
 * C = 10 ⌈H (15 − t)/(273 + t − L0 H/2)/10⌉: H the height above the source of the altimeter setting in ft, t the
 * temperature there in °C, L0 = 0.00198 °C/ft. The table states no rounding; this one gives every entry of it.
 *
 * @param x - `height` 200 ft to 5000 ft, `aerodromeTemperature` −50 °C to 10 °C.
 * @returns Feet to add, a whole number of tens.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.tabulated-cold-temperature-correction
 *
 * @example
 * tabulatedColdTemperatureCorrection({ height: ftHeight(1000), aerodromeTemperature: degC(-30) }) // => 190
 */
export function tabulatedColdTemperatureCorrection(x: TabulatedColdTemperatureCorrectionInputs): Height {
  demand('height', x.height, tabulatedColdTemperatureCorrectionDomain.height);
  demand('aerodromeTemperature', x.aerodromeTemperature, tabulatedColdTemperatureCorrectionDomain.aerodromeTemperature);
  const { height: h_ft, aerodromeTemperature: t_degC }: Numbers<TabulatedColdTemperatureCorrectionInputs> = x;
  return roundUp(simpleForm_ft(h_ft, t_degC, 0), 10) as Height;
}

/**
 * Cold temperature correction from the hydrostatic equation, for air that is colder than standard by the same at every
 * level.
 *
 * C = D − H, D the root of D − (ΔT/L) ln(1 − L D/Ts) = H: H the height above the source of the altimeter setting in ft,
 * Ts the standard temperature at its elevation in K, ΔT the deviation from it, L = 0.0019812 K/ft.
 *
 * @param x - `height` 0 ft to 5000 ft, `aerodromeTemperature` −60 °C to 30 °C and not warmer than standard,
 * `aerodromeElevation` −2000 ft to 10 000 ft.
 * @returns Feet to add, unrounded.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the air is
 * warmer than standard, for which this correction is not made.
 * @record atmosphere.cold-temperature-correction-hydrostatic
 *
 * @example
 * coldTemperatureCorrectionHydrostatic({ height: ftHeight(1000), aerodromeTemperature: degC(-30), aerodromeElevation: ftElevation(0) }) // ≈ 186.0 ± 0.1
 */
export function coldTemperatureCorrectionHydrostatic(x: ColdTemperatureCorrectionInputs): Height {
  demandAll(x);
  const {
    height: h_ft,
    aerodromeTemperature: t_degC,
    aerodromeElevation: hss_ft,
  }: Numbers<ColdTemperatureCorrectionInputs> = x;
  const Ts_K = T0_K - L_KPerFt * hss_ft;
  demandColdAir(t_degC, Ts_K - Ti_K);
  const deviation_K = t_degC + Ti_K - Ts_K;
  let d_ft = h_ft;
  // Newton's method; the function is all but linear, so that a few steps reach the last digit.
  for (let i = 0; i < 8; i += 1) {
    const T_K = Ts_K - L_KPerFt * d_ft;
    const excess_ft = d_ft - (deviation_K / L_KPerFt) * Math.log(T_K / Ts_K) - h_ft;
    d_ft -= excess_ft / (1 + deviation_K / T_K);
  }
  return (d_ft - h_ft) as Height;
}

function simpleForm_ft(h_ft: number, t_degC: number, hss_ft: number): number {
  const t0_degC = t_degC + l0_degCPerFt * hss_ft;
  return (h_ft * (15 - t0_degC)) / (273 + t0_degC - 0.5 * l0_degCPerFt * (h_ft + hss_ft));
}

function demandAll(x: ColdTemperatureCorrectionInputs): void {
  demand('height', x.height, coldTemperatureCorrectionDomain.height);
  demand('aerodromeTemperature', x.aerodromeTemperature, coldTemperatureCorrectionDomain.aerodromeTemperature);
  demand('aerodromeElevation', x.aerodromeElevation, coldTemperatureCorrectionDomain.aerodromeElevation);
}

function demandColdAir(t_degC: number, standard_degC: number): void {
  if (t_degC <= standard_degC) return;
  const { unit, min } = coldTemperatureCorrectionDomain.aerodromeTemperature;
  const max = roundDown(standard_degC, 0.01);
  throw inconsistent('aerodromeTemperature', t_degC, unit, min, max, 'not warmer than standard');
}
