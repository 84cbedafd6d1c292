import type { AnyRequest } from '../any-request.ts';
import { inUnit, plain, type StudyInput } from './study-input.ts';

/**
 * The temperature of the air. The reported dew point stays where the tables are read at the virtual temperature;
 * elsewhere it informs only and is left out, so that air colder than it can be asked about.
 */
export function temperatureInput(request: AnyRequest): StudyInput {
  const { weather, policies } = request;
  const { unit, value } = weather.temperature;
  const { dewPoint, ...dry } = weather;
  const isHumid = policies?.humidity === 'virtual temperature' && dewPoint !== undefined;
  const inThisUnit = (degC: number) => plain(inUnit({ value: degC, unit: 'degC' }, unit));
  return {
    id: 'temperature',
    changes: 'weather',
    quantity: 'temperature',
    unit,
    today: value,
    min: isHumid ? plain(inUnit(dewPoint, unit)) : inThisUnit(-40),
    max: inThisUnit(50),
    at: (temperature) => ({
      ...request,
      weather: { ...(isHumid ? weather : dry), temperature: { value: temperature, unit } },
    }),
  };
}

/** QNH or QFE, whichever the request states. */
export function pressureInput(request: AnyRequest): StudyInput {
  const { weather } = request;
  const { qnh, qfe } = weather;
  const key = qnh === undefined ? 'qfe' : 'qnh';
  const { value, unit } = (qnh ?? qfe) as NonNullable<typeof qnh>;
  const inThisUnit = (hPa: number) => plain(inUnit({ value: hPa, unit: 'hPa' }, unit));
  return {
    id: 'pressure',
    changes: 'weather',
    quantity: key.toUpperCase(),
    unit,
    today: value,
    // A unit's own bound is rounded to six digits by the reader; a little inside of it is inside in every unit.
    min: inThisUnit(key === 'qnh' ? 850.01 : 500.01),
    max: inThisUnit(1084.99),
    at: (pressure) => ({ ...request, weather: { ...weather, [key]: { value: pressure, unit } } }),
  };
}
