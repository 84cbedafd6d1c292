import type { Fault } from '../../documents/index.ts';
import { convert } from '../../units/unit-table.ts';
import { isBetween } from './is-between.ts';
import type { Weather } from './request.ts';

const northOfSource = {
  METAR: 'degTrue',
  TAF: 'degTrue',
  'FAA tower': 'degMagnetic',
  'FAA ATIS': 'degMagnetic',
} as const;

/** What is wrong with a weather report by itself. */
export function weatherFaults(weather: Weather): Fault[] {
  const faults: Fault[] = [];
  const { wind, temperature, dewPoint, qnh, qfe } = weather;
  const speed = convert(wind.speed.value, wind.speed.unit, 'kt') as number;
  const gust = wind.gust === undefined ? speed : (convert(wind.gust.value, wind.gust.unit, 'kt') as number);
  if (wind.gust !== undefined && gust < speed) {
    faults.push({
      path: 'wind.gust',
      message: `${wind.gust.value} ${wind.gust.unit} is below the mean, ${wind.speed.value} ${wind.speed.unit}`,
    });
  }
  const directions = [
    ...(typeof wind.from === 'string' ? [] : [{ path: 'wind.from', measure: wind.from }]),
    ...(wind.range === undefined
      ? []
      : [
          { path: 'wind.range.from', measure: wind.range.from },
          { path: 'wind.range.to', measure: wind.range.to },
        ]),
  ];
  if (
    typeof wind.from !== 'string' &&
    wind.range !== undefined &&
    !isBetween(wind.from.value, wind.range.from.value, wind.range.to.value)
  ) {
    const { from, to } = wind.range;
    faults.push({
      path: 'wind.from',
      message: `${wind.from.value} is not between ${from.value} and ${to.value}, clockwise`,
    });
  }
  const reported: string | undefined = northOfSource[wind.source as keyof typeof northOfSource];
  for (const { path, measure } of directions) {
    // Gusts over a mean of nothing are no calm: their direction is unknown, not north.
    if (measure.value === 0 && Math.max(speed, gust) > 0) {
      const blows = speed > 0 ? `${speed} kt` : `gusting ${gust} kt`;
      faults.push({
        path,
        message: `0 ${measure.unit} is reported for calm only; north is 360, and this wind is ${blows}`,
      });
    }
    if (reported !== undefined && measure.unit !== reported) {
      faults.push({ path, message: `a wind from ${wind.source} is in ${reported}, not in ${measure.unit}` });
    } else if (measure.unit !== directions[0]?.measure.unit) {
      faults.push({ path, message: `${measure.unit} beside ${directions[0]?.measure.unit} in one report` });
    }
  }
  if ((qnh === undefined) === (qfe === undefined))
    faults.push({ path: 'qnh', message: 'one of qnh and qfe is needed, by its own key' });
  if (
    dewPoint !== undefined &&
    (convert(dewPoint.value, dewPoint.unit, 'degC') as number) >
      (convert(temperature.value, temperature.unit, 'degC') as number)
  ) {
    faults.push({
      path: 'dewPoint',
      message: `${dewPoint.value} ${dewPoint.unit} is above the temperature, ${temperature.value} ${temperature.unit}`,
    });
  }
  return faults;
}
