import {
  type Domain,
  demand,
  type Elevation,
  hectopascalsFromInchesOfMercury,
  type InchesOfMercury,
  type Numbers,
} from '../units/index.ts';
import { demandLikelyQnh, isPlainlyLikely } from './likely-qnh.ts';
import { elevationOfAerodrome } from './standard-atmosphere-bounds.ts';

// Altimeter settings of the automatic weather stations of the United States. They are not the form of ICAO.

/** Inputs of {@link altimeterSettingAsos} and {@link altimeterSettingAwos}. */
export interface AutomaticAltimeterSettingInputs {
  /** Pressure at the barometer. */
  readonly stationPressure: InchesOfMercury;
  /** Elevation of the barometer. */
  readonly stationElevation: Elevation;
}

/** Inputs of {@link stationPressureAwos}. */
export interface StationPressureAwosInputs {
  readonly altimeterSetting: InchesOfMercury;
  /** Elevation of the barometer. */
  readonly stationElevation: Elevation;
}

export const automaticAltimeterSettingDomain = {
  stationPressure: { unit: 'inHg', min: 13.8, max: 35.4, source: 'library range' },
  stationElevation: elevationOfAerodrome,
} satisfies Domain<AutomaticAltimeterSettingInputs>;

export const stationPressureAwosDomain = {
  altimeterSetting: { unit: 'inHg', min: 25.1, max: 32.04, source: 'library range' },
  stationElevation: elevationOfAerodrome,
} satisfies Domain<StationPressureAwosInputs>;

const exponent = 0.1903;
/** In inHg^0.1903/ft. */
const perFoot = 1.313e-5;

/**
 * Altimeter setting from a station pressure, in the form of the automated surface observing system (ASOS).
 *
 * A = (P^0.1903 + 1.313e-5 Hs)^5.255: P the pressure at the barometer in inHg, Hs its elevation in ft. The exponents are
 * not reciprocal, so that at zero elevation 28.00 inHg gives 28.002 inHg.
 *
 * @param x - `stationPressure` 13.8 inHg to 35.4 inHg, `stationElevation` −2000 ft to 15 000 ft.
 * @returns Altimeter setting in inHg; about 0.003 inHg above the ICAO form.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the pressure
 * at that elevation stands for a QNH that is not within 850 hPa to 1085 hPa.
 * @record atmosphere.altimeter-setting-asos
 *
 * @example
 * altimeterSettingAsos({ stationPressure: inHg(28), stationElevation: ftElevation(1000) }) // ≈ 29.0426 ± 0.0001
 */
export function altimeterSettingAsos(x: AutomaticAltimeterSettingInputs): InchesOfMercury {
  demandStation(x);
  const { stationPressure: p_inHg, stationElevation: station_ft }: Numbers<AutomaticAltimeterSettingInputs> = x;
  const a_inHg = (p_inHg ** exponent + perFoot * station_ft) ** 5.255;
  demandLikelySetting(a_inHg, p_inHg, station_ft);
  return a_inHg as InchesOfMercury;
}

/**
 * Altimeter setting from a station pressure, in the form of the automated weather observing system (AWOS).
 *
 * A = (P^N + 1.313e-5 Hs)^(1/N): P the pressure at the barometer in inHg, Hs its elevation in ft, N = 0.1903.
 *
 * @param x - `stationPressure` 13.8 inHg to 35.4 inHg, `stationElevation` −2000 ft to 15 000 ft.
 * @returns Altimeter setting in inHg.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the pressure
 * at that elevation stands for a QNH that is not within 850 hPa to 1085 hPa.
 * @record atmosphere.altimeter-setting-awos
 *
 * @example
 * altimeterSettingAwos({ stationPressure: inHg(28), stationElevation: ftElevation(0) }) // ≈ 28 ± 1e-9
 */
export function altimeterSettingAwos(x: AutomaticAltimeterSettingInputs): InchesOfMercury {
  demandStation(x);
  const { stationPressure: p_inHg, stationElevation: station_ft }: Numbers<AutomaticAltimeterSettingInputs> = x;
  const a_inHg = (p_inHg ** exponent + perFoot * station_ft) ** (1 / exponent);
  demandLikelySetting(a_inHg, p_inHg, station_ft);
  return a_inHg as InchesOfMercury;
}

/**
 * Station pressure from an altimeter setting, in the form of the automated weather observing system (AWOS).
 *
 * P = (A^N − 1.313e-5 Hs)^(1/N): A the altimeter setting in inHg, Hs the elevation of the barometer in ft, N = 0.1903.
 *
 * @param x - `altimeterSetting` 25.1 inHg to 32.04 inHg, `stationElevation` −2000 ft to 15 000 ft.
 * @returns Pressure in inHg.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.station-pressure-awos
 *
 * @example
 * stationPressureAwos({ altimeterSetting: inHg(30.2), stationElevation: ftElevation(5045) }) // ≈ 25.094 ± 0.001
 */
export function stationPressureAwos(x: StationPressureAwosInputs): InchesOfMercury {
  demand('altimeterSetting', x.altimeterSetting, stationPressureAwosDomain.altimeterSetting);
  demand('stationElevation', x.stationElevation, stationPressureAwosDomain.stationElevation);
  const { altimeterSetting: a_inHg, stationElevation: station_ft }: Numbers<StationPressureAwosInputs> = x;
  return ((a_inHg ** exponent - perFoot * station_ft) ** (1 / exponent)) as InchesOfMercury;
}

function demandStation(x: AutomaticAltimeterSettingInputs): void {
  demand('stationPressure', x.stationPressure, automaticAltimeterSettingDomain.stationPressure);
  demand('stationElevation', x.stationElevation, automaticAltimeterSettingDomain.stationElevation);
}

function demandLikelySetting(a_inHg: number, p_inHg: number, station_ft: number): void {
  if (isPlainlyLikely(hectopascalsFromInchesOfMercury(a_inHg as InchesOfMercury))) return;
  demandLikelyQnh('stationPressure', p_inHg, 'inHg', station_ft);
}
