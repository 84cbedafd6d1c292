import type { Changes, Conditions, Prepared } from '../../assessment/index.ts';
import { type AnyAssessment, type AnyRequest, weatherOf } from '../any-request.ts';
import { inUnit } from '../inputs/study-input.ts';
import type { Distribution } from './distribution.ts';
import type { UncertainQuantity } from './propagate.ts';
import { inputUncertainties, type UncertainInputId } from './uncertain-inputs.ts';

/** One uncertain input of this request, with what it is stated as. */
export interface UncertainInput extends UncertainQuantity {
  readonly name: UncertainInputId;
}

/** How each input may differ where the caller says so; `none` leaves it out. */
export type UncertaintiesGiven = { readonly [K in UncertainInputId]?: Distribution | 'none' };

/** The distribution of an input, unless it is left out. */
function distributionOf(id: UncertainInputId, given: UncertaintiesGiven): Distribution | undefined {
  const own = given[id];
  return own === 'none' ? undefined : (own ?? inputUncertainties[id].distribution);
}

/**
 * The uncertain inputs that this request has: no direction where the wind has none, no wind in a calm, no surface where it
 * adds nothing.
 */
export function uncertainInputsOf(
  request: AnyRequest,
  surfaceFactor: number,
  given: UncertaintiesGiven,
): UncertainInput[] {
  const { from_deg, speed_kt, gust_kt, gustReported, temperature_degC, pressure } = weatherOf(request);
  const isCalm = speed_kt === 0;
  const stated: readonly (readonly [UncertainInput['name'], number | undefined])[] = [
    ['windDirection', isCalm || from_deg === 'variable' ? undefined : from_deg],
    ['windSpeed', isCalm ? undefined : speed_kt],
    ['gust', isCalm || !gustReported ? undefined : gust_kt - speed_kt],
    // Counted from the mean, whatever the policy on unreported gusts puts there.
    ['unreportedGust', isCalm || gustReported ? undefined : 0],
    ['temperature', temperature_degC],
    ['pressure', 'qnh_hPa' in pressure ? pressure.qnh_hPa : pressure.qfe_hPa],
    ['mass', inUnit(request.mass, 'kg')],
    ['technique', 1],
    ['surfaceIncrease', surfaceFactor > 1 ? surfaceFactor - 1 : undefined],
    // A difference from what is stated.
    ['runwayLength', 0],
  ];
  return stated.flatMap(([name, value]) => {
    const distribution = distributionOf(name, given);
    return value === undefined || distribution === undefined ? [] : [{ name, value, distribution }];
  });
}

/**
 * The distance of one case in metres, by the prepared assessment; none where it is undetermined there. What a runway is
 * shorter than stated counts as distance needed, so that the result is held against the stated one.
 */
export function distanceModel(
  request: AnyRequest,
  prepared: Prepared<AnyAssessment>,
  inputs: readonly UncertainInput[],
): (values: ArrayLike<number>) => number | undefined {
  const today = weatherOf(request);
  const dewPoint = request.policies?.humidity === 'virtual temperature' ? today.dewPoint_degC : undefined;
  const placeOf = (...ids: UncertainInputId[]) => inputs.findIndex(({ name }) => ids.includes(name));
  // Looked up once: this runs ten thousand times.
  const place = {
    direction: placeOf('windDirection'),
    speed: placeOf('windSpeed'),
    increment: placeOf('gust', 'unreportedGust'),
    temperature: placeOf('temperature'),
    pressure: placeOf('pressure'),
    mass: placeOf('mass'),
    technique: placeOf('technique'),
    surface: placeOf('surfaceIncrease'),
    runway: placeOf('runwayLength'),
  };
  const { from_deg, range_deg, pressure } = today;
  const isQnh = 'qnh_hPa' in pressure;
  const pressure_hPa = isQnh ? pressure.qnh_hPa : pressure.qfe_hPa;
  const changesOf = (values: ArrayLike<number>): Changes => {
    const techniqueFactor = at(values, place.technique, 1);
    if (place.mass < 0) {
      if (place.surface < 0) return { techniqueFactor };
      return { techniqueFactor, surfaceFactor: 1 + at(values, place.surface, 0) };
    }
    const mass_kg = at(values, place.mass, 0);
    if (place.surface < 0) return { mass_kg, techniqueFactor };
    return { mass_kg, techniqueFactor, surfaceFactor: 1 + at(values, place.surface, 0) };
  };
  return (values) => {
    const mean = at(values, place.speed, today.speed_kt);
    const speed_kt = Math.abs(mean);
    const by = from_deg === 'variable' ? 0 : at(values, place.direction, from_deg) - from_deg;
    // A mean below nothing is a wind from the other side.
    const turn = mean < 0 ? by + 180 : by;
    const temperature_degC = at(values, place.temperature, today.temperature_degC);
    const pressureThen = at(values, place.pressure, pressure_hPa);
    const conditions: Conditions = {
      from_deg: from_deg === 'variable' ? from_deg : turnedBy(from_deg, turn),
      speed_kt,
      gust_kt: speed_kt + Math.abs(at(values, place.increment, today.gust_kt - today.speed_kt)),
      gustReported: today.gustReported,
      range_deg: range_deg && { from: turnedBy(range_deg.from, turn), to: turnedBy(range_deg.to, turn) },
      temperature_degC,
      // Moist air stays as far below saturation as reported.
      dewPoint_degC: dewPoint === undefined ? undefined : dewPoint + temperature_degC - today.temperature_degC,
      pressure: isQnh ? { qnh_hPa: pressureThen } : { qfe_hPa: pressureThen },
    };
    const distance_m = prepared.compareDistance(conditions, changesOf(values))?.unroundedValue;
    return distance_m === undefined ? undefined : distance_m - at(values, place.runway, 0);
  };
}

/** The value at a place of the list; what is stated where the input is not uncertain. */
function at(values: ArrayLike<number>, place: number, stated: number): number {
  return place < 0 ? stated : (values[place] as number);
}

/** A direction in (0, 360], turned. */
function turnedBy(direction: number, by: number): number {
  return by === 0 ? direction : (((direction + by) % 360) + 360) % 360 || 360;
}
