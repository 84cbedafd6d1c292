import { policyDefaults, type ReportedWind } from '../../assessment/index.ts';
import { type AnyRequest, endsOf, weatherOf } from '../any-request.ts';
import { inUnit, plain, type StudyInput } from './study-input.ts';

const greatest_kt = 100;

/** A direction in (0, 360]. */
export function turned(direction: number, by: number): number {
  return plain((((direction + by) % 360) + 360) % 360) || 360;
}

/** The mean wind; the gust stays as far above it as it is today, the directions stay. */
export function windSpeedInput(request: AnyRequest): StudyInput {
  const { wind } = request.weather;
  const { unit, value } = wind.speed;
  const increment = wind.gust === undefined ? 0 : inUnit(wind.gust, unit) - value;
  const at = (speed: number): AnyRequest => ({
    ...request,
    weather: {
      ...request.weather,
      wind: {
        ...wind,
        speed: { value: speed, unit },
        ...(wind.gust === undefined ? {} : { gust: { value: speed + increment, unit } }),
      },
    },
  });
  return {
    id: 'windSpeed',
    changes: 'weather',
    quantity: wind.gust === undefined ? 'wind speed' : 'wind speed with its gusts',
    unit,
    today: value,
    // A calm that is reported with a direction other than 0 is still read.
    min: 0,
    max: plain(inUnit({ value: greatest_kt - 0.01, unit: 'kt' }, unit) - increment),
    at,
  };
}

/** The gust above an unchanged mean; where none is reported, the one that the policy on unreported gusts uses. */
export function gustInput(request: AnyRequest): StudyInput {
  const { wind } = request.weather;
  const { unit, value: mean } = wind.speed;
  return {
    id: 'gust',
    changes: 'weather',
    quantity: 'gust',
    unit,
    today: plain(inUnit(wind.gust ?? { value: weatherOf(request).gust_kt, unit: 'kt' }, unit)),
    min: mean,
    max: plain(inUnit({ value: greatest_kt - 0.01, unit: 'kt' }, unit)),
    at: (gust) => ({
      ...request,
      weather: { ...request.weather, wind: { ...wind, gust: { value: gust, unit } } },
    }),
  };
}

/** The reported direction, with its range turned alike; none for a wind without a direction, or for a calm. */
export function windDirectionInput(request: AnyRequest): StudyInput | undefined {
  const { wind } = request.weather;
  if (typeof wind.from === 'string' || wind.speed.value === 0) return undefined;
  const { from, range } = wind;
  const turn = (direction: typeof from, by: number) => ({ ...direction, value: turned(direction.value, by) });
  return {
    id: 'windDirection',
    changes: 'weather',
    quantity: 'wind direction',
    unit: from.unit,
    today: from.value,
    min: from.value - 180,
    max: from.value + 180,
    at: (direction) => {
      const by = direction - from.value;
      const turnedRange = range && { from: turn(range.from, by), to: turn(range.to, by) };
      return {
        ...request,
        weather: {
          ...request.weather,
          wind: { ...wind, from: turn(from, by), ...(turnedRange === undefined ? {} : { range: turnedRange }) },
        },
      };
    },
  };
}

/** A steady wind from so many degrees off the direction of the runway, in place of the reported one. */
function steadyWind(request: AnyRequest, off_deg: number, speed_kt: number): AnyRequest {
  const { direction } = endsOf(request).near;
  const speed = { value: speed_kt, unit: 'kt' } as const;
  const wind: ReportedWind = {
    source: 'observed',
    from: { value: turned(direction.value, off_deg), unit: direction.unit },
    speed,
    // Said, so that no policy on unreported gusts adds to it.
    gust: speed,
  };
  return { ...request, weather: { ...request.weather, wind } };
}

/**
 * The tailwind that counts, as the tailwind criterion and the break-even have it: the share that the policy asks for of
 * a steady wind from straight behind, which stands in place of the reported wind.
 */
export function tailwindInput(request: AnyRequest): StudyInput {
  const { tailwindShare } = request.policies ?? {};
  const share = tailwindShare?.value ?? policyDefaults.tailwindShare.default;
  return {
    id: 'tailwind',
    // Its direction is against the north of the runway, which may not be that of the reported wind.
    changes: 'request',
    quantity: 'tailwind used',
    unit: 'kt',
    today: undefined,
    min: 0,
    max: 30,
    at: (used) => steadyWind(request, 180, used / share),
  };
}

/** A steady wind straight across the runway, in place of the reported one. */
export function crosswindInput(request: AnyRequest): StudyInput {
  return {
    id: 'crosswind',
    // Its direction is against the north of the runway, which may not be that of the reported wind.
    changes: 'request',
    quantity: 'steady crosswind',
    unit: 'kt',
    today: undefined,
    min: 0,
    max: 60,
    at: (speed) => steadyWind(request, 90, speed),
  };
}

/** A steady wind along the runway, a headwind positive, in place of the reported one. */
export function alongRunway(request: AnyRequest, headwind_kt: number): AnyRequest {
  return steadyWind(request, headwind_kt >= 0 ? 0 : 180, Math.abs(headwind_kt));
}
