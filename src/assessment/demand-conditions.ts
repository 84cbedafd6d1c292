import { type Bound, demand, demandObject, inconsistent } from '../units/index.ts';
import type { Conditions } from './request/conditions.ts';
import { isBetween } from './request/is-between.ts';

const source = 'bounds of a request';
const bounds = {
  direction: { unit: 'deg', min: 0, max: 360, source },
  speed_kt: { unit: 'kt', min: 0, max: 100, source },
  gust_kt: { unit: 'kt', min: 0, max: 100, source },
  temperature_degC: { unit: 'degC', min: -40, max: 50, source },
  qnh_hPa: { unit: 'hPa', min: 850, max: 1085, source },
  qfe_hPa: { unit: 'hPa', min: 500, max: 1085, source },
  northWind: { unit: 'deg', min: 1e-9, max: 360, source: '0 is reported for calm only; north is 360' },
} satisfies Record<string, Bound>;

/** The same bounds as the reader of a request holds, for figures that come straight from a program. */
export function demandConditions(conditions: Conditions, needsDewPoint: boolean): void {
  demandObject('conditions', conditions);
  const { from_deg, speed_kt, gust_kt, range_deg, temperature_degC, dewPoint_degC, pressure } = conditions;
  demand('speed_kt', speed_kt, bounds.speed_kt);
  demand('gust_kt', gust_kt, bounds.gust_kt);
  // Gusts over a mean of nothing are no calm either.
  const direction = speed_kt > 0 || gust_kt > 0 ? bounds.northWind : bounds.direction;
  if (from_deg !== 'variable') demand('from_deg', from_deg, direction);
  if (range_deg !== undefined) demandRange(range_deg, from_deg, direction);
  demand('temperature_degC', temperature_degC, bounds.temperature_degC);
  if (needsDewPoint || dewPoint_degC !== undefined) {
    demand('dewPoint_degC', dewPoint_degC as number, { ...bounds.temperature_degC, max: temperature_degC });
  }
  demandObject('pressure', pressure);
  if (!('qfe_hPa' in pressure)) demand('qnh_hPa', pressure.qnh_hPa, bounds.qnh_hPa);
  else if (!('qnh_hPa' in pressure)) demand('qfe_hPa', pressure.qfe_hPa, bounds.qfe_hPa);
  else throw inconsistent('pressure', 'both', 'keys', 1, 1, 'one of QNH and QFE, by its own key');
}

type Range = NonNullable<Conditions['range_deg']>;

/** As the reader of a report has it: both ends are directions, and what is reported lies between them, clockwise. */
function demandRange(range: Range, from_deg: Conditions['from_deg'], direction: Bound): void {
  demandObject('range_deg', range);
  const { from, to } = range;
  demand('range_deg.from', from, direction);
  demand('range_deg.to', to, direction);
  if (from_deg !== 'variable' && !isBetween(from_deg, from, to))
    throw inconsistent('from_deg', from_deg, 'deg', from, to, 'within the range reported, clockwise');
}
