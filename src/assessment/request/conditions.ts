import { inUnit } from './in-unit.ts';
import type { Policies } from './policies.ts';
import type { Weather } from './request.ts';

/** The weather of the hour in plain figures. */
export interface Conditions {
  readonly from_deg: number | 'variable';
  readonly speed_kt: number;
  /** Where none is reported, by the policy on unreported gusts; the mean by default. */
  readonly gust_kt: number;
  readonly gustReported: boolean;
  readonly range_deg: { readonly from: number; readonly to: number } | undefined;
  readonly temperature_degC: number;
  readonly dewPoint_degC: number | undefined;
  readonly pressure: { readonly qnh_hPa: number } | { readonly qfe_hPa: number };
}

/** Puts a weather report into plain figures. */
export function conditionsOf(weather: Weather, { unreportedGust }: Pick<Policies, 'unreportedGust'>): Conditions {
  const { wind, temperature, dewPoint, qnh, qfe } = weather;
  const speed_kt = inUnit(wind.speed, 'kt');
  const { range } = wind;
  return {
    from_deg: typeof wind.from === 'string' ? 'variable' : wind.from.value,
    speed_kt,
    gust_kt:
      wind.gust === undefined
        ? speed_kt + (unreportedGust === 'mean' || speed_kt === 0 ? 0 : 10)
        : inUnit(wind.gust, 'kt'),
    gustReported: wind.gust !== undefined,
    range_deg: range === undefined ? undefined : { from: range.from.value, to: range.to.value },
    temperature_degC: inUnit(temperature, 'degC'),
    dewPoint_degC: dewPoint === undefined ? undefined : inUnit(dewPoint, 'degC'),
    pressure: qnh === undefined ? { qfe_hPa: inUnit(qfe as never, 'hPa') } : { qnh_hPa: inUnit(qnh, 'hPa') },
  };
}
