import type { Fault, ReadResult } from '../../documents/index.ts';
import type { Metar, MetarObservation } from '../../weather-report/index.ts';
import { readWeather } from './read-request.ts';
import type { ReportedWind, Weather } from './request.ts';

/**
 * The weather of a request from a METAR or SPECI that was read: the same figures in the same units, nothing added.
 *
 * A wind, a temperature and a pressure are needed, and what the report lacks is a fault; a dew point is left out where
 * it lacks one. A missing direction becomes `not reported`, for which an assessment counts the full speed against the
 * pilot. Where a report has both pressures, that in hectopascals is taken, which is rounded down. What the bounds of a
 * request do not admit is a fault too.
 *
 * @param metar - as `readMetar` of `groundroll/weather-report` gives it.
 * @returns the `weather` of a request, or everything that stands in the way.
 *
 * @example
 * const read = readMetar('METAR ZZZZ 141350Z 19007G17KT 9999 26/16 Q1006');
 * const weather = read.ok ? weatherFromMetar(read.value) : read;
 * weather.ok && weather.value.qnh // => { value: 1006, unit: 'hPa' }
 */
export function weatherFromMetar(metar: Metar): ReadResult<Weather> {
  if (metar.kind === 'nil') return { ok: false, faults: [{ path: '', message: 'the report is NIL: no observation' }] };
  const { temperature, dewPoint, qnh, altimeterSetting } = metar;
  const faults: Fault[] = [];
  const wind = windOf(metar, faults);
  if (typeof temperature === 'string') faults.push(lack('temperature', 'temperature', temperature));
  const pressure = typeof qnh === 'string' ? altimeterSetting : qnh;
  if (typeof pressure === 'string') faults.push(lack('qnh', 'QNH', qnh === 'absent' ? pressure : 'missing'));
  if (wind === undefined || faults.length > 0) return { ok: false, faults };
  const weather = { wind, temperature, ...(typeof dewPoint === 'string' ? {} : { dewPoint }), qnh: pressure };
  return readWeather(weather);
}

function windOf({ wind }: MetarObservation, faults: Fault[]): ReportedWind | undefined {
  if (wind === 'calm') {
    return { source: 'METAR', from: { value: 0, unit: 'degTrue' }, speed: { value: 0, unit: 'kt' } };
  }
  if (typeof wind === 'string') {
    faults.push(lack('wind', 'wind', wind));
    return undefined;
  }
  const { from, speed, gust, range } = wind;
  if (speed === 'missing') {
    faults.push(lack('wind.speed', 'wind speed', speed));
    return undefined;
  }
  return {
    source: 'METAR',
    from: from === 'missing' ? 'not reported' : from,
    speed,
    ...(gust === 'absent' ? {} : { gust }),
    ...(typeof range === 'string' ? {} : { range }),
  };
}

function lack(path: string, name: string, state: 'missing' | 'absent'): Fault {
  const words = state === 'missing' ? 'has solidi in its place' : 'has no such group';
  return { path, message: `no ${name}: the report ${words}` };
}
