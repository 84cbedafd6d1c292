import {
  type Domain,
  demand,
  type Elevation,
  type Hectopascals,
  type Numbers,
  type PressureAltitude,
} from '../units/index.ts';
import {
  demandLikelyQnh,
  demandPressureAltitudeOfLikelyQnh,
  hasPlainlyLikelyRoot,
  isPlainlyLikely,
} from './likely-qnh.ts';
import {
  pressureLower_hPa,
  pressureOfAltitude_hPa,
  pressureOfRoot_hPa,
  rootLower,
  rootOfPressure,
} from './pressure-law.ts';
import {
  elevationOfAerodrome,
  likelyQnh,
  lowerTroposphere,
  pressureAtAerodrome,
} from './standard-atmosphere-bounds.ts';

// The forms of ICAO, after the standard atmosphere. Datum of each pressure: QNH stands at mean sea level, QFE at the
// elevation that it is given for (the aerodrome, or a threshold), a station pressure at the barometer.

/** Inputs of {@link qnhFromQfe}. */
export interface QnhFromQfeInputs {
  /** Pressure at the elevation given. */
  readonly qfe: Hectopascals;
  /** Elevation of the datum of the QFE: the aerodrome's, or that of a threshold. */
  readonly elevation: Elevation;
}

/** Inputs of {@link qfeFromQnh}. */
export interface QfeFromQnhInputs {
  /** Altimeter setting that makes the altimeter show elevation on the ground. */
  readonly qnh: Hectopascals;
  /** Elevation of the datum of the QFE: the aerodrome's, or that of a threshold. */
  readonly elevation: Elevation;
}

/** Inputs of {@link qnhFromStationPressure}. */
export interface QnhFromStationPressureInputs {
  /** Pressure at the barometer. */
  readonly stationPressure: Hectopascals;
  /** Elevation of the barometer. */
  readonly stationElevation: Elevation;
}

/** Inputs of {@link stationPressureFromQnh}. */
export interface StationPressureFromQnhInputs {
  /** Altimeter setting that makes the altimeter show elevation on the ground. */
  readonly qnh: Hectopascals;
  /** Elevation of the barometer. */
  readonly stationElevation: Elevation;
}

/** Inputs of {@link qfeFromStationPressure}. */
export interface QfeFromStationPressureInputs extends QnhFromStationPressureInputs {
  /** Elevation of the datum of the QFE: the aerodrome's, or that of a threshold. */
  readonly elevation: Elevation;
}

/** Inputs of {@link stationPressureFromQfe}. */
export interface StationPressureFromQfeInputs extends QnhFromQfeInputs {
  /** Elevation of the barometer. */
  readonly stationElevation: Elevation;
}

/** Inputs of {@link qnhFromPressureAltitude}. */
export interface QnhFromPressureAltitudeInputs {
  /** What an altimeter set to 1013.25 hPa shows on the ground. */
  readonly pressureAltitude: PressureAltitude;
  /** Elevation of the ground there. */
  readonly elevation: Elevation;
}

export const qnhFromQfeDomain = {
  qfe: pressureAtAerodrome,
  elevation: elevationOfAerodrome,
} satisfies Domain<QnhFromQfeInputs>;

export const qfeFromQnhDomain = {
  qnh: likelyQnh,
  elevation: elevationOfAerodrome,
} satisfies Domain<QfeFromQnhInputs>;

export const qnhFromStationPressureDomain = {
  stationPressure: pressureAtAerodrome,
  stationElevation: elevationOfAerodrome,
} satisfies Domain<QnhFromStationPressureInputs>;

export const stationPressureFromQnhDomain = {
  qnh: likelyQnh,
  stationElevation: elevationOfAerodrome,
} satisfies Domain<StationPressureFromQnhInputs>;

export const qfeFromStationPressureDomain = {
  stationPressure: pressureAtAerodrome,
  stationElevation: elevationOfAerodrome,
  elevation: elevationOfAerodrome,
} satisfies Domain<QfeFromStationPressureInputs>;

export const stationPressureFromQfeDomain = {
  qfe: pressureAtAerodrome,
  elevation: elevationOfAerodrome,
  stationElevation: elevationOfAerodrome,
} satisfies Domain<StationPressureFromQfeInputs>;

export const qnhFromPressureAltitudeDomain = {
  pressureAltitude: lowerTroposphere,
  elevation: elevationOfAerodrome,
} satisfies Domain<QnhFromPressureAltitudeInputs>;

/**
 * QNH from the QFE, in the ICAO form.
 *
 * QNH = P0 ((QFE/P0)^n + L He/T0)^(1/n): QFE in hPa, He the elevation of its datum in ft, P0 = 1013.25 hPa,
 * T0 = 288.15 K, L = 0.0019812 K/ft, n = R L/g0 about 0.190263. Elevation is taken as geopotential.
 *
 * @param x - `qfe` 466 hPa to 1200 hPa, `elevation` −2000 ft to 15 000 ft.
 * @returns QNH in hPa.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the QFE at
 * that elevation stands for a QNH that is not within 850 hPa to 1085 hPa.
 * @record atmosphere.qnh-from-qfe
 *
 * @example
 * qnhFromQfe({ qfe: hPa(970), elevation: ftElevation(1200) }) // ≈ 1013.172 ± 0.001
 * qnhFromQfe({ qfe: hPa(1013.25), elevation: ftElevation(5000) }) // throws qfe: 1013.25 hPa is inconsistent with
 */
export function qnhFromQfe(x: QnhFromQfeInputs): Hectopascals {
  demand('qfe', x.qfe, qnhFromQfeDomain.qfe);
  demand('elevation', x.elevation, qnhFromQfeDomain.elevation);
  const { qfe: qfe_hPa, elevation: elevation_ft }: Numbers<QnhFromQfeInputs> = x;
  const qnh_hPa = pressureLower_hPa(qfe_hPa, elevation_ft);
  if (!isPlainlyLikely(qnh_hPa)) demandLikelyQnh('qfe', qfe_hPa, 'hPa', elevation_ft);
  return qnh_hPa as Hectopascals;
}

/**
 * QFE from the QNH, in the ICAO form.
 *
 * QFE = P0 ((QNH/P0)^n − L He/T0)^(1/n): QNH in hPa, He the elevation of the datum of the QFE in ft, P0 = 1013.25 hPa,
 * T0 = 288.15 K, L = 0.0019812 K/ft, n = R L/g0 about 0.190263. Elevation is taken as geopotential.
 *
 * @param x - `qnh` 850 hPa to 1085 hPa, `elevation` −2000 ft to 15 000 ft.
 * @returns QFE in hPa.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.qfe-from-qnh
 *
 * @example
 * qfeFromQnh({ qnh: hPa(1013.25), elevation: ftElevation(5000) }) // ≈ 843.0726 ± 0.0001
 */
export function qfeFromQnh(x: QfeFromQnhInputs): Hectopascals {
  demand('qnh', x.qnh, qfeFromQnhDomain.qnh);
  demand('elevation', x.elevation, qfeFromQnhDomain.elevation);
  const { qnh: qnh_hPa, elevation: elevation_ft }: Numbers<QfeFromQnhInputs> = x;
  return pressureLower_hPa(qnh_hPa, -elevation_ft) as Hectopascals;
}

/**
 * QNH from a station pressure, in the ICAO form.
 *
 * QNH = P0 ((p/P0)^n + L Hs/T0)^(1/n): p the pressure at the barometer in hPa, Hs the elevation of the barometer in ft,
 * P0 = 1013.25 hPa, T0 = 288.15 K, L = 0.0019812 K/ft, n = R L/g0 about 0.190263. Elevation is taken as geopotential.
 *
 * @param x - `stationPressure` 466 hPa to 1200 hPa, `stationElevation` −2000 ft to 15 000 ft.
 * @returns QNH in hPa.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the pressure
 * at that elevation stands for a QNH that is not within 850 hPa to 1085 hPa.
 * @record atmosphere.qnh-from-station-pressure
 *
 * @example
 * qnhFromStationPressure({ stationPressure: hPa(836.15), stationElevation: ftElevation(5431) }) // ≈ 1020.98 ± 0.05
 */
export function qnhFromStationPressure(x: QnhFromStationPressureInputs): Hectopascals {
  demandStation(x);
  const { stationPressure: p_hPa, stationElevation: station_ft }: Numbers<QnhFromStationPressureInputs> = x;
  const qnh_hPa = pressureLower_hPa(p_hPa, station_ft);
  if (!isPlainlyLikely(qnh_hPa)) demandLikelyQnh('stationPressure', p_hPa, 'hPa', station_ft);
  return qnh_hPa as Hectopascals;
}

/**
 * Station pressure, the pressure at the barometer, from the QNH, in the ICAO form.
 *
 * p = P0 ((QNH/P0)^n − L Hs/T0)^(1/n): QNH in hPa, Hs the elevation of the barometer in ft, P0 = 1013.25 hPa,
 * T0 = 288.15 K, L = 0.0019812 K/ft, n = R L/g0 about 0.190263. Elevation is taken as geopotential.
 *
 * @param x - `qnh` 850 hPa to 1085 hPa, `stationElevation` −2000 ft to 15 000 ft.
 * @returns Pressure in hPa.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record atmosphere.station-pressure-from-qnh
 *
 * @example
 * stationPressureFromQnh({ qnh: hPa(1013), stationElevation: elevationFromMetres(mElevation(1588)) }) // ≈ 836.255 ± 0.001
 */
export function stationPressureFromQnh(x: StationPressureFromQnhInputs): Hectopascals {
  demand('qnh', x.qnh, stationPressureFromQnhDomain.qnh);
  demand('stationElevation', x.stationElevation, stationPressureFromQnhDomain.stationElevation);
  const { qnh: qnh_hPa, stationElevation: station_ft }: Numbers<StationPressureFromQnhInputs> = x;
  return pressureLower_hPa(qnh_hPa, -station_ft) as Hectopascals;
}

/**
 * QFE from a station pressure: from the barometer to the elevation of the aerodrome or of a threshold, ICAO form.
 *
 * QFE = P0 ((p/P0)^n + L (Hs − He)/T0)^(1/n): p the pressure at the barometer in hPa, Hs the elevation of the
 * barometer and He that of the datum of the QFE in ft, P0 = 1013.25 hPa, T0 = 288.15 K, L = 0.0019812 K/ft,
 * n = R L/g0 about 0.190263.
 *
 * @param x - `stationPressure` 466 hPa to 1200 hPa, `stationElevation` and `elevation` −2000 ft to 15 000 ft.
 * @returns QFE in hPa.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the pressure
 * at that elevation stands for a QNH that is not within 850 hPa to 1085 hPa.
 * @record atmosphere.qfe-from-station-pressure
 *
 * @example
 * qfeFromStationPressure({ stationPressure: hPa(970), stationElevation: ftElevation(1230), elevation: ftElevation(1200) }) // ≈ 971.061 ± 0.001
 */
export function qfeFromStationPressure(x: QfeFromStationPressureInputs): Hectopascals {
  demandStation(x);
  demand('elevation', x.elevation, qfeFromStationPressureDomain.elevation);
  const {
    stationPressure: p_hPa,
    stationElevation: station_ft,
    elevation: elevation_ft,
  }: Numbers<QfeFromStationPressureInputs> = x;
  const root = rootOfPressure(p_hPa);
  if (!hasPlainlyLikelyRoot(rootLower(root, station_ft))) {
    demandLikelyQnh('stationPressure', p_hPa, 'hPa', station_ft);
  }
  return pressureOfRoot_hPa(rootLower(root, station_ft - elevation_ft)) as Hectopascals;
}

/**
 * Station pressure from the QFE: from the elevation of the aerodrome or of a threshold to the barometer, ICAO form.
 *
 * p = P0 ((QFE/P0)^n + L (He − Hs)/T0)^(1/n): QFE in hPa, He the elevation of its datum and Hs that of the barometer in
 * ft, P0 = 1013.25 hPa, T0 = 288.15 K, L = 0.0019812 K/ft, n = R L/g0 about 0.190263.
 *
 * @param x - `qfe` 466 hPa to 1200 hPa, `elevation` and `stationElevation` −2000 ft to 15 000 ft.
 * @returns Pressure in hPa.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the QFE at
 * that elevation stands for a QNH that is not within 850 hPa to 1085 hPa.
 * @record atmosphere.station-pressure-from-qfe
 *
 * @example
 * stationPressureFromQfe({ qfe: hPa(970), elevation: ftElevation(1200), stationElevation: ftElevation(1230) }) // ≈ 968.94 ± 0.001
 */
export function stationPressureFromQfe(x: StationPressureFromQfeInputs): Hectopascals {
  demand('qfe', x.qfe, stationPressureFromQfeDomain.qfe);
  demand('elevation', x.elevation, stationPressureFromQfeDomain.elevation);
  demand('stationElevation', x.stationElevation, stationPressureFromQfeDomain.stationElevation);
  const {
    qfe: qfe_hPa,
    elevation: elevation_ft,
    stationElevation: station_ft,
  }: Numbers<StationPressureFromQfeInputs> = x;
  const root = rootOfPressure(qfe_hPa);
  if (!hasPlainlyLikelyRoot(rootLower(root, elevation_ft))) demandLikelyQnh('qfe', qfe_hPa, 'hPa', elevation_ft);
  return pressureOfRoot_hPa(rootLower(root, elevation_ft - station_ft)) as Hectopascals;
}

/**
 * QNH from the pressure altitude that an altimeter shows on the ground, in the ICAO form.
 *
 * QNH = P0 (1 − L (H − He)/T0)^(g0/(R L)): H the pressure altitude and He the elevation in ft, P0 = 1013.25 hPa,
 * T0 = 288.15 K, L = 0.0019812 K/ft, g0/(R L) about 5.255880. Elevation is taken as geopotential.
 *
 * @param x - `pressureAltitude` −5000 ft to 20 000 ft, `elevation` −2000 ft to 15 000 ft.
 * @returns QNH in hPa.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the pressure
 * altitude at that elevation stands for a QNH that is not within 850 hPa to 1085 hPa.
 * @record atmosphere.qnh-from-pressure-altitude
 *
 * @example
 * qnhFromPressureAltitude({ pressureAltitude: ftPA(1200), elevation: ftElevation(1200) }) // => 1013.25
 * qnhFromPressureAltitude({ pressureAltitude: ftPA(1563.794), elevation: ftElevation(1200) }) // ≈ 1000 ± 0.001
 */
export function qnhFromPressureAltitude(x: QnhFromPressureAltitudeInputs): Hectopascals {
  demand('pressureAltitude', x.pressureAltitude, qnhFromPressureAltitudeDomain.pressureAltitude);
  demand('elevation', x.elevation, qnhFromPressureAltitudeDomain.elevation);
  const { pressureAltitude: altitude_ft, elevation: elevation_ft }: Numbers<QnhFromPressureAltitudeInputs> = x;
  const qnh_hPa = pressureOfAltitude_hPa(altitude_ft - elevation_ft);
  if (!isPlainlyLikely(qnh_hPa)) demandPressureAltitudeOfLikelyQnh(altitude_ft, elevation_ft);
  return qnh_hPa as Hectopascals;
}

function demandStation(x: QnhFromStationPressureInputs): void {
  demand('stationPressure', x.stationPressure, qnhFromStationPressureDomain.stationPressure);
  demand('stationElevation', x.stationElevation, qnhFromStationPressureDomain.stationElevation);
}
