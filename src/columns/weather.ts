import type { Conditions, North } from '../assessment/index.ts';
import { demandNames, inconsistent } from '../units/index.ts';
import { at, type PerRow, rowsOf } from './column.ts';

/**
 * Weather row by row, as it is reported. NaN in a column says that the row does not report the figure, as far as a report
 * may leave it out; where it may not, the row is refused.
 */
export interface WeatherColumns<U extends 'degTrue' | 'degMagnetic' = 'degTrue' | 'degMagnetic'> {
  /** Directions the wind blows from, above 0° up to 360°; 0 goes with calm only. None reported: the wind was variable. */
  readonly from: PerRow<U>;
  readonly speed: PerRow<'kt'>;
  /** None reported: by the policy of the request on unreported gusts, the mean by default. */
  readonly gust?: PerRow<'kt'> | undefined;
  /** First and last direction of the range, clockwise. Neither reported: no range. */
  readonly rangeFrom?: PerRow<U> | undefined;
  readonly rangeTo?: PerRow<U> | undefined;
  readonly temperature: PerRow<'degC'>;
  /** None reported: as without the column. */
  readonly dewPoint?: PerRow<'degC'> | undefined;
  /** One of QNH and QFE. */
  readonly qnh?: PerRow<'hPa'> | undefined;
  readonly qfe?: PerRow<'hPa'> | undefined;
}

const wind: readonly (keyof WeatherColumns)[] = ['from', 'speed', 'gust', 'rangeFrom', 'rangeTo'];
const air: readonly (keyof WeatherColumns)[] = ['temperature', 'dewPoint', 'qnh', 'qfe'];

/** How many rows there are, with the masses beside the weather; throws unless all columns agree. */
export function rowsOfWeather(weather: WeatherColumns, north: North, mass: PerRow<'kg'> | undefined): number {
  demandNames('weather', weather, [...wind, ...air]);
  const { from, speed, gust, rangeFrom, rangeTo, temperature, dewPoint, qnh, qfe } = weather;
  if ((qnh === undefined) === (qfe === undefined)) {
    const received = qnh === undefined ? 'neither' : 'both';
    throw inconsistent('weather.qnh, weather.qfe', received, 'columns', 1, 1, 'one of QNH and QFE');
  }
  if ((rangeFrom === undefined) !== (rangeTo === undefined)) {
    throw inconsistent('weather.rangeFrom, weather.rangeTo', 'one', 'columns', 'none', 2, 'a range has two ends');
  }
  return rowsOf({
    'weather.from': { given: from, units: [north] },
    'weather.speed': { given: speed, units: ['kt'] },
    'weather.gust': { given: gust, units: ['kt'] },
    'weather.rangeFrom': { given: rangeFrom, units: [north] },
    'weather.rangeTo': { given: rangeTo, units: [north] },
    'weather.temperature': { given: temperature, units: ['degC'] },
    'weather.dewPoint': { given: dewPoint, units: ['degC'] },
    'weather.qnh': { given: qnh, units: ['hPa'] },
    'weather.qfe': { given: qfe, units: ['hPa'] },
    mass: { given: mass, units: ['kg'] },
  });
}

/** The weather of one row in the figures of a comparison. */
export function conditionsAt(weather: WeatherColumns, row: number, unreportedGustIncrement_kt: number): Conditions {
  const from_deg = at(weather.from, row);
  const speed_kt = at(weather.speed, row);
  const gust_kt = reported(weather.gust, row);
  const dewPoint_degC = reported(weather.dewPoint, row);
  const { qnh, qfe } = weather;
  return {
    from_deg: Number.isNaN(from_deg) ? 'variable' : from_deg,
    speed_kt,
    gust_kt: gust_kt ?? speed_kt + (speed_kt === 0 ? 0 : unreportedGustIncrement_kt),
    gustReported: gust_kt !== undefined,
    range_deg: rangeAt(weather, row),
    temperature_degC: at(weather.temperature, row),
    dewPoint_degC,
    pressure: qnh === undefined ? { qfe_hPa: at(qfe as PerRow<'hPa'>, row) } : { qnh_hPa: at(qnh, row) },
  };
}

/** A range with one end is passed on, and refused with the row. */
function rangeAt({ rangeFrom, rangeTo }: WeatherColumns, row: number): Conditions['range_deg'] {
  if (rangeFrom === undefined || rangeTo === undefined) return undefined;
  const from = at(rangeFrom, row);
  const to = at(rangeTo, row);
  return Number.isNaN(from) && Number.isNaN(to) ? undefined : { from, to };
}

function reported(given: PerRow<string> | undefined, row: number): number | undefined {
  if (given === undefined) return undefined;
  const value = at(given, row);
  return Number.isNaN(value) ? undefined : value;
}
