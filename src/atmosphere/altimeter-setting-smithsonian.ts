import {
  type Domain,
  demand,
  type ElevationInMetres,
  elevationFromMetres,
  type Hectopascals,
  hectopascalsFromInchesOfMercury,
  type InchesOfMercury,
  type Numbers,
} from '../units/index.ts';
import { demandLikelyQnh, isPlainlyLikely } from './likely-qnh.ts';
import { likelyQnh, pressureAtAerodrome } from './standard-atmosphere-bounds.ts';

// Altimeter settings after the Smithsonian tables of 1951, which the weather services of the United States used for
// decades: the pressure is first taken 0.3 hPa lower, and mean sea level has 288 K. They are not the form of ICAO.

/** Inputs of {@link altimeterSettingSmithsonian}, {@link altimeterSettingNoaa} and {@link altimeterSettingMadis}. */
export interface AltimeterSettingInputs {
  /** Pressure at the barometer. */
  readonly stationPressure: Hectopascals;
  /** Elevation of the barometer. */
  readonly stationElevation: ElevationInMetres;
}

/** Inputs of {@link stationPressureSmithsonian}. */
export interface StationPressureSmithsonianInputs {
  readonly altimeterSetting: Hectopascals;
  /** Elevation of the barometer. */
  readonly stationElevation: ElevationInMetres;
}

/** Inputs of {@link altimeterSettingIom19}. */
export interface AltimeterSettingIom19Inputs {
  /** Pressure at the barometer. */
  readonly stationPressure: InchesOfMercury;
  /** Elevation of the barometer. */
  readonly stationElevation: ElevationInMetres;
}

const stationElevation = { unit: 'mElevation', min: -600, max: 4500, source: 'library range' } as const;

export const altimeterSettingDomain = {
  stationPressure: pressureAtAerodrome,
  stationElevation,
} satisfies Domain<AltimeterSettingInputs>;

export const stationPressureSmithsonianDomain = {
  altimeterSetting: likelyQnh,
  stationElevation,
} satisfies Domain<StationPressureSmithsonianInputs>;

export const altimeterSettingIom19Domain = {
  stationPressure: { unit: 'inHg', min: 13.8, max: 35.4, source: 'library range' },
  stationElevation,
} satisfies Domain<AltimeterSettingIom19Inputs>;

/** R a/g0 with R = 287.04749 J/(kg K), the gas constant that the published examples agree with. */
const n = 0.1902595366409528;

/**
 * Altimeter setting from a station pressure, in the Smithsonian form of 1951.
 *
 * A = (p − 0.3) (1 + (P0^n a/T0) Hs/(p − 0.3)^n)^(1/n): p the pressure at the barometer in hPa, Hs its elevation in m,
 * P0 = 1013.25 hPa, a = 0.0065 K/m, T0 = 288 K, n = R a/g0 about 0.190260 with R = 287.04749 J/(kg K). It lies
 * 0.30 hPa below the ICAO form at mean sea level and 0.25 hPa at 5000 ft.
 *
 * @param x - `stationPressure` 466 hPa to 1200 hPa, `stationElevation` −600 m to 4500 m.
 * @returns Altimeter setting in hPa.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the pressure
 * at that elevation stands for a QNH that is not within 850 hPa to 1085 hPa.
 * @record atmosphere.altimeter-setting-smithsonian
 *
 * @example
 * altimeterSettingSmithsonian({ stationPressure: hPa(954.639265), stationElevation: mElevation(500) }) // ≈ 1013 ± 0.001
 */
export function altimeterSettingSmithsonian(x: AltimeterSettingInputs): Hectopascals {
  demandStation(x);
  const { stationPressure: p_hPa, stationElevation: station_m }: Numbers<AltimeterSettingInputs> = x;
  return likely(raised(p_hPa - 0.3, lowering_hPanPerM * station_m, n), x);
}

/**
 * Station pressure from an altimeter setting, in the Smithsonian form of 1951.
 *
 * p = (A^n − (P0^n a/T0) Hs)^(1/n) + 0.3: A the altimeter setting in hPa, Hs the elevation of the barometer in m,
 * P0 = 1013.25 hPa, a = 0.0065 K/m, T0 = 288 K, n = R a/g0 about 0.190260 with R = 287.04749 J/(kg K).
 *
 * @param x - `altimeterSetting` 850 hPa to 1085 hPa, `stationElevation` −600 m to 4500 m.
 * @returns Pressure in hPa; 0.2 hPa to 0.3 hPa above the ICAO form.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.station-pressure-smithsonian
 *
 * @example
 * stationPressureSmithsonian({ altimeterSetting: hPa(1013), stationElevation: mElevation(500) }) // ≈ 954.6393 ± 0.0001
 */
export function stationPressureSmithsonian(x: StationPressureSmithsonianInputs): Hectopascals {
  demand('altimeterSetting', x.altimeterSetting, stationPressureSmithsonianDomain.altimeterSetting);
  demand('stationElevation', x.stationElevation, stationPressureSmithsonianDomain.stationElevation);
  const { altimeterSetting: a_hPa, stationElevation: station_m }: Numbers<StationPressureSmithsonianInputs> = x;
  return ((a_hPa ** n - lowering_hPanPerM * station_m) ** (1 / n) + 0.3) as Hectopascals;
}

/**
 * Altimeter setting from a station pressure, in the Smithsonian form with the constants that NOAA multiplied out.
 *
 * A = (p − 0.3) (1 + 8.42288069e-5 Hs/(p − 0.3)^0.190284)^(1/0.190284): p the pressure at the barometer in hPa, Hs its
 * elevation in m. The constant is 1013.25^0.190284 0.0065/288. It lies 0.30 hPa below the ICAO form at mean sea level and
 * 0.27 hPa at 5000 ft.
 *
 * @param x - `stationPressure` 466 hPa to 1200 hPa, `stationElevation` −600 m to 4500 m.
 * @returns Altimeter setting in hPa.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the pressure
 * at that elevation stands for a QNH that is not within 850 hPa to 1085 hPa.
 * @record atmosphere.altimeter-setting-noaa
 *
 * @example
 * altimeterSettingNoaa({ stationPressure: hPa(954.639), stationElevation: mElevation(500) }) // ≈ 1012.99 ± 0.01
 */
export function altimeterSettingNoaa(x: AltimeterSettingInputs): Hectopascals {
  demandStation(x);
  const { stationPressure: p_hPa, stationElevation: station_m }: Numbers<AltimeterSettingInputs> = x;
  return likely(raised(p_hPa - 0.3, 8.42288069e-5 * station_m, 0.190284), x);
}

/**
 * Altimeter setting from a station pressure, as {@link altimeterSettingNoaa} but with 288.15 K at mean sea level.
 *
 * A = (p − 0.3) (1 + 8.4184960528e-5 Hs/(p − 0.3)^0.190284)^(1/0.190284): p the pressure at the barometer in hPa, Hs its
 * elevation in m. The data system MADIS of NOAA has this constant. It lies 0.30 hPa below the ICAO form at mean sea level
 * and 0.37 hPa at 5000 ft.
 *
 * @param x - `stationPressure` 466 hPa to 1200 hPa, `stationElevation` −600 m to 4500 m.
 * @returns Altimeter setting in hPa.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the pressure
 * at that elevation stands for a QNH that is not within 850 hPa to 1085 hPa.
 * @record atmosphere.altimeter-setting-madis
 *
 * @example
 * altimeterSettingMadis({ stationPressure: hPa(954.639), stationElevation: mElevation(500) }) // ≈ 1012.96 ± 0.01
 */
export function altimeterSettingMadis(x: AltimeterSettingInputs): Hectopascals {
  demandStation(x);
  const { stationPressure: p_hPa, stationElevation: station_m }: Numbers<AltimeterSettingInputs> = x;
  return likely(raised(p_hPa - 0.3, 8.4184960528e-5 * station_m, 0.190284), x);
}

/**
 * Altimeter setting from a station pressure in inches of mercury, as in report 19 on instruments of the WMO.
 *
 * A = (P − 0.01) (1 + 4.30899e-5 Hs/(P − 0.01)^0.190284)^(1/0.190284): P the pressure at the barometer in inHg, Hs its
 * elevation in m. 0.01 inHg is 0.34 hPa where the Smithsonian form in hPa has 0.3; so much it lies below the ICAO form at
 * mean sea level.
 *
 * @param x - `stationPressure` 13.8 inHg to 35.4 inHg, `stationElevation` −600 m to 4500 m.
 * @returns Altimeter setting in inHg.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the pressure
 * at that elevation stands for a QNH that is not within 850 hPa to 1085 hPa.
 * @record atmosphere.altimeter-setting-iom-19
 *
 * @example
 * altimeterSettingIom19({ stationPressure: inHg(28.19), stationElevation: mElevation(500) }) // ≈ 29.912 ± 0.001
 */
export function altimeterSettingIom19(x: AltimeterSettingIom19Inputs): InchesOfMercury {
  demand('stationPressure', x.stationPressure, altimeterSettingIom19Domain.stationPressure);
  demand('stationElevation', x.stationElevation, altimeterSettingIom19Domain.stationElevation);
  const { stationPressure: p_inHg, stationElevation: station_m }: Numbers<AltimeterSettingIom19Inputs> = x;
  const a_inHg = raised(p_inHg - 0.01, 4.30899e-5 * station_m, 0.190284) as InchesOfMercury;
  if (!isPlainlyLikely(hectopascalsFromInchesOfMercury(a_inHg))) {
    demandLikelyQnh('stationPressure', p_inHg, 'inHg', elevationFromMetres(x.stationElevation));
  }
  return a_inHg;
}

/** P0^n a/T0, in hPa^n for each metre: 1013.25^n × 0.0065/288, written out so that no power is taken for a constant. */
const lowering_hPanPerM = 0.00008421454738121187;

/** p (1 + r/p^n)^(1/n). */
function raised(p: number, r: number, exponent: number): number {
  return p * (1 + r / p ** exponent) ** (1 / exponent);
}

function demandStation(x: AltimeterSettingInputs): void {
  demand('stationPressure', x.stationPressure, altimeterSettingDomain.stationPressure);
  demand('stationElevation', x.stationElevation, altimeterSettingDomain.stationElevation);
}

/** The setting, if the pressure that it was found from is likely at its elevation. */
function likely(setting_hPa: number, x: AltimeterSettingInputs): Hectopascals {
  if (!isPlainlyLikely(setting_hPa)) {
    demandLikelyQnh('stationPressure', x.stationPressure, 'hPa', elevationFromMetres(x.stationElevation));
  }
  return setting_hPa as Hectopascals;
}
