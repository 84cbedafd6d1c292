import type { Fault } from '../documents/index.ts';
import { hectopascalsFromInchesOfMercury, type InchesOfMercury, type Measure } from '../units/index.ts';
import { type Group, type GroupReading, groupFault } from './group.ts';
import type { Absent, Missing } from './metar.ts';

/** Temperature and dew point, which stand in one group. */
export interface TemperatureGroup {
  readonly temperature: Measure<'degC'> | Missing;
  readonly dewPoint: Measure<'degC'> | Missing;
}

/** Wider than any temperature that has been measured at the surface. */
const temperatureBounds = { min: -90, max: 60 };
/** The bounds within which the altimetry of this library works. */
const qnhBounds = { hPa: { min: 850, max: 1085 }, inHg: { min: 25.1, max: 32.04 } };

/**
 * Whether a group is meant as temperature and dew point: two figures about a solidus, a letter O for a zero among them.
 * A visibility in statute miles has a solidus too.
 */
export function isTemperatureLike(text: string): boolean {
  if (/^M?\/\/\/(?:\/\/|M?\d{1,2})$/.test(text)) return true;
  return /^[M+-]{0,2}[\dO]{1,3}\/\S{0,4}$/.test(text) && !text.endsWith('SM');
}

/** Reads a group that is meant as temperature and dew point. */
export function readTemperature(group: Group): GroupReading<TemperatureGroup> {
  const refuse = (problem: string) => ({ ok: false, faults: [groupFault('temperature', group, problem)] }) as const;
  // An American station leaves the place of a missing dew point empty.
  const parts = /^(M?\d{2}|\/\/)\/(M?\d{2}|\/\/|)$/.exec(group.text);
  if (parts === null) return refuse('is not a group of temperature and dew point: tt/tt, M for minus');
  const [temperature, dewPoint] = [parts[1] ?? '', parts[2] ?? ''].map(celsius) as [Celsius, Celsius];
  for (const each of [temperature, dewPoint]) {
    if (each !== 'missing' && (each.value < temperatureBounds.min || each.value > temperatureBounds.max)) {
      return refuse(`has ${each.value} degC, not within ${temperatureBounds.min} to ${temperatureBounds.max} degC`);
    }
  }
  if (temperature !== 'missing' && dewPoint !== 'missing' && dewPoint.value > temperature.value) {
    return refuse(`has a dew point of ${dewPoint.value} degC above the temperature of ${temperature.value} degC`);
  }
  return { ok: true, value: { temperature, dewPoint } };
}

type Celsius = Measure<'degC'> | Missing;

function celsius(digits: string): Celsius {
  if (digits === '//' || digits === '') return 'missing';
  // M00 is a temperature just below zero; to a whole degree it is 0, and never minus zero.
  const value = digits.startsWith('M') ? 0 - Number(digits.slice(1)) : Number(digits);
  return { value, unit: 'degC' };
}

/** Whether a group is meant as a QNH in hectopascals. */
export function isQnhLike(text: string): boolean {
  return text.startsWith('Q');
}

/** Reads a group that is meant as a QNH in hectopascals. */
export function readQnh(group: Group): GroupReading<Measure<'hPa'> | Missing> {
  const refuse = (problem: string) => ({ ok: false, faults: [groupFault('qnh', group, problem)] }) as const;
  if (group.text === 'Q////') return { ok: true, value: 'missing' };
  if (!/^Q\d{4}$/.test(group.text)) return refuse('is not a QNH in hectopascals: Q and four digits');
  const value = Number(group.text.slice(1));
  const { min, max } = qnhBounds.hPa;
  if (value < min || value > max) return refuse(`is not within ${min} to ${max} hPa`);
  return { ok: true, value: { value, unit: 'hPa' } };
}

/** Whether a group is meant as a QNH in inches of mercury. */
export function isAltimeterLike(text: string): boolean {
  return /^A[\d/]/.test(text) || /^A[\dO/]{4}$/.test(text);
}

/** Reads a group that is meant as a QNH in inches of mercury. */
export function readAltimeter(group: Group): GroupReading<Measure<'inHg'> | Missing> {
  const refuse = (problem: string) =>
    ({ ok: false, faults: [groupFault('altimeterSetting', group, problem)] }) as const;
  if (group.text === 'A////') return { ok: true, value: 'missing' };
  if (!/^A\d{4}$/.test(group.text)) return refuse('is not a QNH in inches of mercury: A and four digits');
  const value = Number(group.text.slice(1)) / 100;
  const { min, max } = qnhBounds.inHg;
  if (value < min || value > max) return refuse(`is not within ${min} to ${max} inHg`);
  return { ok: true, value: { value, unit: 'inHg' } };
}

/**
 * Whether two pressures of one report are farther apart than their rounding allows: the Q group is rounded down to a
 * whole hectopascal, or to the nearest, and the A group to a hundredth of an inch, which is a third of a hectopascal.
 */
export function pressureFaults(
  qnh: Measure<'hPa'> | Missing | Absent,
  altimeterSetting: Measure<'inHg'> | Missing | Absent,
): Fault[] {
  if (typeof qnh === 'string' || typeof altimeterSetting === 'string') return [];
  const inches_hPa: number = hectopascalsFromInchesOfMercury(altimeterSetting.value as InchesOfMercury);
  const apart_hPa = inches_hPa - qnh.value;
  if (apart_hPa > -1 && apart_hPa < 1.5) return [];
  const shown = `${altimeterSetting.value} inHg, which is ${inches_hPa.toFixed(1)} hPa`;
  return [{ path: 'altimeterSetting', message: `${shown}, does not agree with the QNH of ${qnh.value} hPa` }];
}
